"""The masking on the page: the plan with its film, room by room, what it takes and why."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any, TypedDict

from markupsafe import Markup

from farwall.evidence import rank_words
from farwall.job.office import Office, OfficeGround
from farwall.job.office.masking import Masked, MaskFigure
from farwall.job.office.masking.reckon import masked_in
from farwall.job.office.masking.rules import FILM_LOW_M, STAGES
from farwall.papers.lettering import SCREEN_LETTERING, Lettering
from farwall.papers.masking.drawing import masking_svg
from farwall.papers.masking.measures import run, spread, tall
from farwall.papers.masking.words import item_told, stands_out
from farwall.papers.wall_clock import Units
from farwall.papers.words import listed, names_in
from farwall.phrasebook import LANGUAGE, speaking
from farwall.phrasebook import told as in_tongue
from farwall.web.people.roles import CHANGE
from farwall.web.people.who import who_asks
from farwall.web.words import said


class _Drawn(TypedDict):
    width: float
    height: float
    lettering: Lettering


DRAWN: _Drawn = {"width": 920.0, "height": 660.0, "lettering": SCREEN_LETTERING}
"""How the plan is drawn on the page, and where a click on it is read."""
_INLINE = re.compile(r' style="[^"]*"')
"""A page of ours carries no style of its own; `price.css` says the same of figures."""


def masking_shown(ground: OfficeGround, office: Office) -> dict[str, Any]:
    """What the template of the part is given."""
    masked, units = office.masked, ground.job.wishes.units
    with speaking(LANGUAGE.get(), names_in(ground.plan)):
        picture = masking_svg(ground.plan, masked, units=units, **DRAWN)
        return {
            "head": _head(masked, units),
            "film": _film(masked, units),
            "picture": Markup(_INLINE.sub("", picture)),
            "warnings": [in_tongue(one) for one in masked.warnings],
            "rule": in_tongue(STAGES[masked.stage].words),  # type: ignore[index]
            "rooms": [_room(masked, n, units) for n in range(len(masked.rooms))],
            "all": (run(masked.wall_m, units), str(masked.jambs), str(masked.corners)),
            "left_out": _left_out(ground, masked),
            "items": _items(masked),
            "may_change": (asks := who_asks()) is not None and asks.may(CHANGE),
            "figures": [_figure(one, units) for one in masked.figures],
            "lengths": [
                said("price-masking-length", tall=tall(high, units), long=run(long, units))
                for high, long in masked.film_lengths_m
            ],
            "stages": _stages(ground, masked, units),
        }


def _head(masked: Masked, units: Units) -> str:
    return said(
        "price-masking-head", wall=run(masked.wall_m, units),
        jambs=_many("jambs", masked.jambs), dams=_many("dams", masked.dams),
    )  # fmt: skip


def _many(key: str, n: int) -> str:
    return said(f"price-masking-{key}-1") if n == 1 else said(f"price-masking-{key}", n=n)


def _film(masked: Masked, units: Units) -> str:
    film, tape = masked.figures[:2]
    ranged = film.low < film.likely
    return said(
        "price-masking-film" if ranged else "price-masking-film-one",
        area=spread(film.likely, units), low=spread(film.low, units), at=tall(FILM_LOW_M, units),
        least=run(tape.low, units), tape=run(tape.likely, units),
    )  # fmt: skip


def _room(masked: Masked, n: int, units: Units) -> dict[str, str]:
    one = masked.rooms[n]
    return {
        "number": str(one.number), "name": Markup.escape(one.name),
        "tall": tall(one.film_m, units) if one.film_m else said("price-masking-none"),
        "long": run(one.wall_m, units), "jambs": str(one.jambs or ""),
        "corners": str(one.corners or ""), "more": stands_out(one, units),
    }  # fmt: skip


def _left_out(ground: OfficeGround, masked: Masked) -> str:
    names = [ground.job.floor.room_by_id[one].label for one in masked.not_masked]
    return said("price-masking-left-out", rooms=listed(names)) if names else ""


def _items(masked: Masked) -> list[dict[str, str]]:
    names = {one.room: one.name for one in masked.rooms}
    return [
        {"what": in_tongue(item_told(one)), "where": Markup.escape(names.get(one.room, one.room)),
         "note": Markup.escape(one.note),
         "place": "there" if one.at is not None else ""}
        for one in masked.items
    ]  # fmt: skip


def _figure(one: MaskFigure, units: Units) -> dict[str, str]:
    def much(value: float) -> str:
        if not one.unit:
            return f"{value:.0f}"
        return spread(value, units) if one.unit == "m2" else run(value, units)

    low, high = much(one.low), much(one.high)
    return {
        "what": said(f"price-masking-of-{one.name.replace(' ', '-')}"),
        "much": low if low == high else f"{low.split()[0]}–{high}",
        "rule": in_tongue(one.rule),
        "rank": in_tongue(rank_words(one.rank, one.source)),
    }


def _stages(ground: OfficeGround, masked: Masked, units: Units) -> list[str]:
    """What the same house takes at the other stages of the build."""
    job, lines = ground.job, []
    for stage in STAGES:
        if stage == masked.stage:
            continue
        wished = replace(job.supplies.masking, stage=stage)
        other = masked_in(replace(job, supplies=replace(job.supplies, masking=wished)))
        named = said(f"pick-mask-stage-{stage.replace(' ', '-')}")
        lines.append(said(
            "price-masking-stage", stage=named[:1].upper() + named[1:],
            wall=run(other.wall_m, units), film=spread(other.film_m2, units),
            tape=run(other.tape_m, units),
        ))  # fmt: skip
    return lines
