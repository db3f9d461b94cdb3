"""Page 1: the evening before and the morning; what is mixed and bought, and the gates."""

from __future__ import annotations

from typing import Any

from farwall.facts.numbered import stain_named
from farwall.facts.plan import FloorPatch, Mix, Plan
from farwall.job.go.say import in_short
from farwall.papers.run_sheet import lists
from farwall.papers.run_sheet.buying import Buying, Container, UsualRule
from farwall.papers.run_sheet.names import coat_name, numbers
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, plan_clock
from farwall.papers.words import listed, room_names, volume

_SAID_ON_THIS_PAGE = (
    "The sheet of",
    "Acid into",
    "Goggles",
    "Eyewash",
    "Nobody works",
    "Open time",
)
"""Beginnings of cautions whose words stand on this page already."""


def before_page(
    plan: Plan, buying: Buying, *, job_name: str, units: Units, notes: str
) -> dict[str, Any]:
    """What the first page says, in words ready to be set."""
    clock = plan_clock(plan, units)
    return {
        "title": plain(job_name),
        "under": f"{clock.day()}, first stroke {clock.time(0)}",
        "go": plain(in_short(plan.go, reasons=True)) if plan.go is not None else "",
        "no": plan.go is not None and plan.go.verdict == "no",
        "evening": list(lists.EVENING),
        "morning": list(lists.morning(units)),
        "carry": list(lists.CARRY),
        "mixes": [_mix_row(plan, mix, units) for mix in plan.mixes],
        "with_acid": any(mix.acid_l > 0 for mix in plan.mixes),
        "buy": _buy_words(plan, buying, units),
        "gate": _gate_words(plan, buying),
        "beside": [plain(line) for line in _beside_the_gate(plan, buying, units)],
        "cautions": [plain(c) for c in plan.cautions if not c.startswith(_SAID_ON_THIS_PAGE)],
        "warnings": [plain(warning) for warning in plan.warnings],
        "notes": plain(notes),
        "patches": [_patch_row(plan, one) for one in plan.patches],
    }


def _patch_row(plan: Plan, patch: FloorPatch) -> list[str]:
    """Name and room of a patch, what is done with it, what the owner is shown and signs."""
    room = room_names(plan, [patch.room])[0]
    return [
        plain(f"{patch.kind.capitalize()} {patch.id}, {room}."),
        plain(patch.what),
        plain(patch.disclosure),
    ]


def _mix_row(plan: Plan, mix: Mix, units: Units) -> list[str]:
    number = numbers(plan)
    fields = [str(number.get(field_id, field_id)) for field_id in mix.fields]
    total = mix.stain_l + mix.water_l + mix.acid_l
    return [
        plain(coat_name(plan, mix.coat)),
        mix.cut,
        volume(mix.water_l, units),
        volume(mix.stain_l, units),
        volume(mix.acid_l, units) if mix.acid_l > 0 else "none",
        volume(total, units),
        f"{_runs(fields)}{_inside(plan, mix)}",
    ]


def _inside(plan: Plan, mix: Mix) -> str:
    """Where in its field a mix is made, for one made at a look."""
    look = next((one for one in plan.looks if one.band == mix.before_band), None)
    if not mix.before_band or look is None:
        return ""
    order = {band.id: band.order for field in plan.fields for band in field.bands}
    return f", after band {order.get(look.after, look.after)}"


def _runs(fields: list[str]) -> str:
    """`1 to 5` for a full row of numbers, else `1, 3, 4`."""
    if len(fields) > 2 and all(f.isdigit() for f in fields):
        first, last = int(fields[0]), int(fields[-1])
        if [int(f) for f in fields] == list(range(first, last + 1)):
            return f"{first} to {last}"
    return ", ".join(fields)


def _buy_words(plan: Plan, buying: Buying, units: Units) -> str:
    if not buying.containers:
        return ""
    said = listed([_container(plan, one, units) for one in buying.containers if one.count])
    cost = f": {listed(buying.costs)}" if buying.costs else ""
    boxed = " Box all lots of one stain before the first mix." if buying.boxed else ""
    return f"Buy {said}{cost}.{boxed}"


def _container(plan: Plan, one: Container, units: Units) -> str:
    price = f" at {one.price}" if one.price else ""
    number, unit = volume(one.size_l, units, both=False).split()
    return plain(f"{one.count} × {float(number):g} {unit} {stain_named(plan, one.stain)}{price}")


def _gate_words(plan: Plan, buying: Buying) -> list[str]:
    if not any(field.id in buying.gates for field in plan.fields):
        return []
    gate = (
        "The gate: begin a field only with at least the amount on its page in tanks and tub; "
        "if short, mix more at the stop line."
    )
    return [gate + _so_it_lasts(buying)]


def _beside_the_gate(plan: Plan, buying: Buying, units: Units) -> list[str]:
    """What is good to know but decides nothing: later mixes, and what habit would have mixed."""
    words = []
    coats = [mix.coat for mix in plan.mixes]
    if len(set(coats)) < len(coats):
        words.append(
            "The later mix of a coat is made at the stop line before its first field and boxed "
            "with what is left."
        )
    if plan.looks:
        words.append(
            "The last field is begun without a reserve and looked into: what the looks on the "
            "helper's page say is mixed while it is sprayed, and boxed."
        )
    if buying.usual_rule:
        rules = [_usual_words(plan, rule, units) for rule in buying.usual_rule]
        words.append(
            "The usual rule, one extra gallon on five or six (common practice, no source), would "
            f"mix {listed(rules)}."
        )
    return words


def _so_it_lasts(buying: Buying) -> str:
    if buying.certainty_percent is None:
        return ""
    return (
        f" So it runs dry inside a field in {100 - buying.certainty_percent:.2g} of 100 such jobs."
    )


def _usual_words(plan: Plan, rule: UsualRule, units: Units) -> str:
    low, high = volume(rule.low_l, units), volume(rule.high_l, units)
    chances = f"{100 * rule.chance_dry_low:.2g} to {100 * rule.chance_dry_high:.2g}"
    return f"{low} to {high} for {coat_name(plan, rule.coat)} and run dry in {chances} of 100"
