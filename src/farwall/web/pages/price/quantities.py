"""The list of quantities on its page: by what it is for, each line with range, rule and rank."""

from __future__ import annotations

from typing import Any

from farwall.evidence import rank_words
from farwall.facts.numbered import numbered
from farwall.facts.quantities import Quantities, Quantity, Share
from farwall.job.office import Office, OfficeGround
from farwall.job.office.quantities.basis import amount_said, figure, in_units
from farwall.job.office.quantities.said import HEADS
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, speaking, told
from farwall.web.words import said

Json = dict[str, Any]


def quantities_shown(ground: OfficeGround, office: Office) -> Json:
    """What the template of the part is given."""
    found = office.quantities
    with speaking(LANGUAGE.get(), names_in(ground.plan)):
        return {
            "parts": parts_shown(found, ground),
            "warnings": [told(one) for one in found.warnings],
        }


def parts_shown(found: Quantities, ground: OfficeGround) -> list[Json]:
    """By moment: its key and its lines."""
    return [
        {"moment": moment, "lines": [_line(one, found.units, ground) for one in own]}
        for moment in HEADS
        if (own := [one for one in found.lines if one.moment == moment])
    ]


def _line(one: Quantity, units: str, ground: OfficeGround) -> Json:
    return {
        "id": one.id, "on": one.on, "told": one.told, "name": what_shown(one),
        "kept": one.kind in {"stain", "sealer"} and bool(one.of),
        "ready": amount_said(one.ready, one.unit, units),
        "range": _range(one, units), "rule": told(one.rule),
        "rank": told(rank_words(one.rank, one.source)),
        "ruled": "" if one.ruled is None else amount_said(one.ruled, one.unit, units),
        "lots": ", ".join(one.lots),
        "shares": [_share(each, one, units, ground) for each in one.shares],
    }  # fmt: skip


def what_shown(one: Quantity) -> str:
    """What a line is called: names of the job as they are, all else in the page's language."""
    if one.kind == "stain" or (one.kind == "sealer" and one.of):
        return one.what
    word = told(one.what)
    return word if word[1:2].isupper() else word[:1].upper() + word[1:]


def _range(one: Quantity, units: str) -> str:
    """Likely, low to high; empty where there is no range."""
    if one.told or one.low == one.likely == one.high == one.ready:
        return ""
    low, likely, high = (
        figure(in_units(each, one.unit, units)[0]) for each in (one.low, one.likely, one.high)
    )
    if low == high == likely:
        return said("price-quantities-likely", likely=likely)
    return said("price-quantities-range", likely=likely, low=low, high=high)


def _share(each: Share, one: Quantity, units: str, ground: OfficeGround) -> Json:
    return {
        "of": _share_of(each, ground),
        "likely": amount_said(each.likely, one.unit, units),
        "ready": amount_said(each.ready, one.unit, units),
    }


def _share_of(each: Share, ground: OfficeGround) -> str:
    """The rooms of a field, with its coat; a room; or what else it is for."""
    rooms = ground.job.floor.room_by_id
    if each.room:
        return rooms[each.room].label if each.room in rooms else each.room
    if each.field:
        fields = (one for one in ground.plan.fields if one.id == each.field)
        inside = next((one.rooms for one in fields), ())
        names = ", ".join(rooms[one].label if one in rooms else one for one in inside)
        return f"{_coat(each, ground)}: {names}" if each.coat else names
    return _coat(each, ground) if each.coat else told(each.of)


def _coat(each: Share, ground: OfficeGround) -> str:
    return told(f"coat {numbered(ground.plan, each.coat)}")
