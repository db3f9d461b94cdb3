"""Looks into the last field: a line on its page, and the helper's page of what to mix."""

from __future__ import annotations

from typing import Any

from farwall.facts.look import Look, LookIf
from farwall.facts.plan import Field, Plan
from farwall.papers.run_sheet.names import coat_words, field_rooms, numbers
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.papers.words import volume

_SET_OUT = (
    "Before the field is begun set out at the tub: stain opened, water in its pail, jug, stirrer. "
    "Same lot and same cut as what is in the tub."
)
_DO = (
    "Read tub and tanks together as soon as the band is done. Enough to go on: say so, and look "
    "again after the next band. Less: mix what the table says, water first, while the sprayer "
    "sprays; pour all that is left in the tub into it, stir, and fill tanks from that."
)
_LATE = (
    "the batch would come fresh against a wet edge. Spray to the next line that hides a "
    "seam, and begin the new mix behind it."
)
_GROWS = (
    "One table for a slab as thirsty as planned, one for a slab that drank more before this field: "
    "take the one nearest to what the field was begun on."
)
_FACTORS = (1.0, 1.2)
_MOST_COLUMNS = 8


def look_points(plan: Plan, field: Field, clock: WallClock) -> list[str]:
    """What stands on the page of a field that is looked into; nothing for any other."""
    looks = [look for look in plan.looks if look.field == field.id]
    if not looks:
        return []
    order = {band.id: band.order for band in field.bands}
    first, last = looks[0], looks[-1]
    after = f"band {_after(first, order)}"
    if last is not first:
        after = f"bands {_after(first, order)} to {_after(last, order)}"
    return [f"Look into the tub after {after}, from {clock.time(first.at_min)}: the helper's page."]


def looks_page(plan: Plan, *, units: Units) -> dict[str, Any] | None:
    """The helper's page: for each field that is looked into, a table; None where none is."""
    if not plan.looks:
        return None
    clock, number = plan_clock(plan, units), numbers(plan)
    fields = [one for one in plan.fields if any(look.field == one.id for look in plan.looks)]
    return {
        "title": "The helper: looks into the tub",
        "lines": [_SET_OUT, _DO, _GROWS],
        "late": _LATE,
        "fields": [_field(plan, one, clock, units, number[one.id]) for one in fields],
    }


def _field(
    plan: Plan, field: Field, clock: WallClock, units: Units, number: object
) -> dict[str, Any]:
    looks = [look for look in plan.looks if look.field == field.id]
    order = {band.id: band.order for band in field.bands}
    tables = [
        _table(looks, at, order, clock, units)
        for at, one in enumerate(looks[0].ifs)
        if one.factor in _FACTORS
    ]
    return {
        "name": plain(f"Field {number}, {field_rooms(plan, field)}"),
        "coat": plain(coat_words(plan, field.coat)),
        "tables": [table for table in tables if table["rows"]],
    }


def _table(
    looks: list[Look], at: int, order: dict[str, int], clock: WallClock, units: Units
) -> dict[str, Any]:
    """Rows of looks, columns of what is left; cells say what to mix."""
    told = [(look, look.ifs[at]) for look in looks if at < len(look.ifs)]
    lefts = sorted({round(row.left_l, 4) for _, one in told for row in one.rows})[-_MOST_COLUMNS:]
    said = told[0][1]
    return {
        "begun": f"Begun on {volume(said.begin_l, units)}",
        "columns": ["after band", "go on with", *[f"{_short(left, units)} left" for left in lefts]],
        "unit": "gal" if units == "us" else "L",
        "rows": [
            [
                f"{_after(look, order)}, {clock.time(look.at_min)}",
                _short(one.go_on_l, units),
                *[_cell(one, left, units) for left in lefts],
            ]
            for look, one in told
        ],
    }


def _cell(one: LookIf, left_l: float, units: Units) -> str:
    if left_l >= one.go_on_l:
        return "go on"
    if left_l < one.keep_l:
        return "late"
    rows = {round(row.left_l, 4): row.mix_l for row in one.rows}
    return _short(rows[left_l], units) if left_l in rows else ""


def _short(litres: float, units: Units) -> str:
    return volume(litres, units, both=False).rsplit(" ", 1)[0]


def _after(look: Look, order: dict[str, int]) -> int | str:
    return order.get(look.after, look.after)
