"""Words that the papers of a seal day share."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from farwall.facts.plan import Field, Plan
from farwall.papers.run_sheet.field_points import field_points
from farwall.papers.wall_clock import Units, WallClock
from farwall.papers.words import listed, volume
from farwall.units import gal_from_l

VERDICTS = {
    "fits": "fits",
    "helper": "with the helper",
    "two": "two who lay",
    "stop-line": "one more stop line",
    "cannot": "NO",
}


def coat_fields(plan: Plan, coat: str) -> list[Field]:
    """The fields of a coat in their order."""
    return sorted((one for one in plan.fields if one.coat == coat), key=lambda one: one.order)


def coat_span(plan: Plan, coat: str, clock: WallClock) -> str:
    """From the first stroke of a coat to its last, by the clock."""
    fields = coat_fields(plan, coat)
    return clock.span(fields[0].start_min, max(one.end_min for one in fields))


def cans(containers: Sequence[Mapping[str, object]], units: Units) -> str:
    """`2 × 1 gal and 1 × 5 gal`."""
    told = []
    for one in sorted(containers, key=lambda can: -float(str(can["size_l"]))):
        size = float(str(one["size_l"]))
        words = f"{gal_from_l(size):.3g} gal" if units == "us" else f"{size:.3g} L"
        told.append(f"{one['count']} × {words}")
    return listed(told)


def opened(containers: Sequence[Mapping[str, object]], units: Units) -> str:
    """What to open, or that the last coat left enough."""
    return f"open {cans(containers, units)}" if containers else "nothing more to open"


_OF_SEALING = (
    ("two full tanks", "two full trays"), ("Two full tanks", "Two full trays"),
    ("a full tank", "a full tray"), ("Full tank", "Full tray"),
    ("full spare tank", "full spare tray"), ("one tank lasts", "one tray lasts"),
    ("fills tanks", "fills trays"), ("the helper brings it", "the helper brings the tray"),
    ("fetch it ", "fetch the tray "), ("One sprays", "One lays"),
    ("second sprayer", "second hand"),
)  # fmt: skip
"""Words of a field that is sprayed, and those of one that is laid."""


def points(plan: Plan, field: Field, units: Units, clock: WallClock) -> list[str]:
    """Trays and stop lines, in the order in which they are wanted."""
    return [_of_sealing(one) for one in field_points(plan, field, units, clock)]


def _of_sealing(words: str) -> str:
    for sprayed, laid in _OF_SEALING:
        words = words.replace(sprayed, laid)
    return words


def start_only(litres: float, units: Units) -> str:
    """The gate of a field."""
    return f"start only with {volume(litres, units)} in tray and opened cans"


def coat_named(coat: str) -> str:
    """`Coat 1`."""
    return coat.replace("seal-", "Coat ")
