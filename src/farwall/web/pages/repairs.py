"""What an import mended or left open, each with what can be done about it on the floor.

An offer is a pair of acts of the drawing screen: `yes` keeps or does what the reader proposes, `no`
undoes or contradicts it. Where nothing can be done it can only be said to be seen.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from farwall.facts.plain import plain
from farwall.floor.geometry import Point
from farwall.job.repairs import ACTS, Acts
from farwall.nouns import dataclass
from farwall.web.words import said

Json = dict[str, Any]
READING = "reading"
"""Kind of document: what was mended and left when a house was brought, and what was answered."""


@dataclass(frozen=True)
class Offer:
    """Keys of the words of both answers; the acts behind them are those of `job.repairs`."""

    yes: str = "repair-seen"
    no: str = ""


SEEN = Offer()
_UNIT = Offer("repair-unit-right", "repair-unit-wrong")
OFFERS: Mapping[str, Offer] = {
    "gap-closed": Offer("repair-joined", "repair-gap-open"),
    "name-guessed": Offer("repair-name-right", "repair-name-other"),
    "label-lost": Offer("repair-room-here", "repair-no-room"),
    "outside-slab": Offer("repair-stays-out", "repair-is-room"),
    "closed-shape": Offer("repair-left-out", "repair-is-room"),
    "room-unsound": Offer("repair-room-here", "repair-no-room"),
    "shelves": Offer("repair-sprayed", "repair-kept-dry"),
    "overhang": Offer("repair-sprayed", "repair-kept-dry"),
    "casework-unclear": Offer("repair-sprayed", "repair-kept-dry"),
    "symbol": Offer("repair-kept-dry", "repair-sprayed"),
    "fixtures-to-check": Offer("repair-all-stand", "repair-strike"),
    "way-out-unsure": Offer("repair-way-out", "repair-no-way-out"),
    "no-leaf": Offer("repair-no-leaf", "repair-has-leaf"),
    "opening-nowhere": Offer("repair-no-opening", "repair-opening-here"),
    "opening-to-unclosed": Offer("repair-no-opening", "repair-opening-here"),
    "stair": Offer("repair-kept-dry", "repair-sprayed"),
    "way-out": Offer("repair-put-way-out"),
    "tracing": Offer("repair-trace"),
    "unit-overruled": _UNIT,
    "unit-found": _UNIT,
    "scale-told": _UNIT,
    "scale-doubted": _UNIT,
    "scales-differ": _UNIT,
    "dimension-doubted": _UNIT,
    "unit-doubted": _UNIT,
    "scale": Offer("", "repair-unit-choose"),
    "one-room": Offer("repair-one-room", "repair-two-rooms"),
    "room-parted": Offer("repair-two-rooms", "repair-one-room"),
    "room-in-pieces": Offer("repair-two-rooms", "repair-one-room"),
    "no-way-in": Offer("repair-opening-here", "repair-no-opening"),
    "door-unplaced": Offer("repair-opening-here", "repair-no-opening"),
    "opening-unsound": Offer("repair-opening-here", "repair-no-opening"),
    "opening-one-side": Offer("repair-opening-here", "repair-no-opening"),
    "window-to-the-floor": Offer("repair-opening-here", "repair-no-opening"),
    "open-edge": Offer("repair-nothing-there", "repair-opening-here"),
    "door-placed": Offer("repair-lies-there", "repair-lies-elsewhere"),
    "perhaps-outdoors": Offer("repair-in-house", "repair-strike-room"),
    "region-as-room": Offer("repair-in-house", "repair-strike-room"),
    "stairs-as-rooms": Offer("repair-in-house", "repair-strike-room"),
    "not-walked": Offer("repair-left-out", "repair-is-room"),
    "no-way-out": Offer("repair-put-way-out"),
}
"""By the codes of the readers that have acts; any other code can only be seen."""
UNITS = {"in": 0.0254, "ft": 0.3048, "mm": 0.001, "cm": 0.01, "m": 1.0}
"""Metres a unit of a drawing, by definition [nist-hb44]."""


def reading_document(notes: Mapping[str, Sequence[Any]], *, unit: str, facts: int) -> Json:
    """The document that keeps what an import found: lists of notes by `mended`, `left`, `asks`."""
    return {
        "facts": facts,
        "unit": unit,
        "notes": [
            {
                "list": name,
                "code": one.code,
                "what": one.what,
                "where": _where(one.where),
                "shape": None if one.shape is None else plain(one.shape),
            }
            for name, found in notes.items()
            for one in found
        ],
        "answers": {},
    }


def _where(at: Point | None) -> list[float] | None:
    return None if at is None else [float(at[0]), float(at[1])]


def offers_told(document: Json | None) -> list[Json]:
    """The notes of a reading with the words and acts of their answers."""
    if document is None:
        return []
    found = []
    for number, one in enumerate(document["notes"]):
        offer, acts = OFFERS.get(one["code"], SEEN), ACTS.get(one["code"], Acts())
        found.append({
            "number": str(number), "code": one["code"], "what": one["what"], "at": one["where"],
            "shape": one.get("shape"),
            "yes": said(offer.yes) if offer.yes else "", "yes_act": acts.yes if offer.yes else "",
            "no": said(offer.no) if offer.no else "", "no_act": acts.no if offer.no else "",
            "answer": document["answers"].get(str(number), ""),
        })  # fmt: skip
    return found


def answered(document: Json, told: Any) -> Json:
    """The document with what was answered; anything that is no answer is passed over."""
    if not isinstance(told, dict):
        return document
    numbers = {str(number) for number in range(len(document["notes"]))}
    answers = {
        str(number): answer
        for number, answer in told.items()
        if str(number) in numbers and answer in ("yes", "no")
    }
    return {**document, "answers": answers}
