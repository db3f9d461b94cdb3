"""What the front of the seal sheet says of sealer, test patch, barriers and air, in sentences."""

from __future__ import annotations

import re
from collections.abc import Sequence

from farwall.air.sealers import margin_words
from farwall.facts.plan import Plan
from farwall.job.seal_day.airing import ASK
from farwall.job.seal_day.noun import Sealing
from farwall.papers.seal_moments import moment_at
from farwall.papers.seal_words import coat_fields, coat_named
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, WallClock
from farwall.papers.words import area, length, listed, room_names
from farwall.units import cfm_from_m3_min, f_from_c

VERDICT_WORDS = {
    "no": "No: nothing is sealed as it stands.",
    "go with": "Go, once what is listed is done and looked at.",
    "go": "Go.",
}
BEFORE = (
    "Even light colour all over, no dark islands; meter back at its reading before the cleaning.",
    "pH of the rinsed floor and white rag in every room, as the sealer's sheet wants them.",
    "Test patch taped, torn and scratched: nothing lifted, nothing white.",
    (
        "Slab read at five spots, the coldest counts: within the sealer's limits, 3 K (5 °F) or "
        "more above the dew point, not falling."
    ),
    "Vacuumed, then a dry dark glove: no powder. Joints dry and empty.",
    "Roller or pad washed, spun and picked clean of lint; same one in every room.",
    "Sealer of one lot, or lots boxed; stirred, never shaken.",
    "Every way in barred and signed; pets, children and trades out.",
)
LABEL, USUAL = "the sealer's label", "its type's usual, until the label is read"
SOLVENT = (
    "Solvent, or it may be: before a can is opened all flames and pilot lights are out, and no "
    "switch, plug or power tool is touched until the vapour is gone. All cautions follow."
)

_KEY = re.compile(r"; watch\.\w+\.$")
_FOR_PAPER = {
    ASK: "How much air is needed cannot be said: grams of solvent a litre and its limit in air are "
    "told from the sheet.",
    "`farwall go` lists the tests to do.": "The page Go or no-go lists the tests to do.",
    "Two sprayers side by side": "Two people side by side",
    "each with a full tank": "each with a full tray",
    "swaps full tanks": "swaps full trays",
}
"""What is said elsewhere by words of the tool, or of spraying."""


def for_paper(words: str) -> str:
    """The words for who holds a paper and lays a sealer: no key of a file, no command, no tank."""
    words = _KEY.sub(".", words.strip())
    for said, here in _FOR_PAPER.items():
        words = words.replace(said, here)
    return words


def under(plan: Plan, sealing: Sealing, units: Units, clock: WallClock) -> str:
    """Day, sealer, coats and floor, in one line."""
    first = coat_fields(plan, sealing.coats[0].coat)
    name = sealing.sealer.name or sealing.sealer.type or "a sealer nobody named"
    floor = area(sum(one.area_m2 for one in first), units)
    count = len(sealing.coats)
    return plain(f"{clock.day()} · {name} · {count} coat{'s' * (count != 1)} · {floor}")


def limits(sealing: Sealing, units: Units) -> str:
    """What slab and air the sealer bears; the user's unit first."""
    one = sealing.sealer
    least, most = (_both(value, units) for value in (one.least_slab_c, one.most_slab_c))
    margin = margin_words(one.least_margin_k, us=units == "us")
    return (
        f"Slab {least} to {most}, {margin} or more above the dew point for six hours on, "
        f"not falling, air at most {one.most_rh_percent:g} %."
    )


def _both(value_c: float, units: Units) -> str:
    degrees = [f"{f_from_c(value_c):.0f} °F", f"{value_c:.0f} °C"]
    first, second = degrees if units == "us" else reversed(degrees)
    return f"{first} ({second})"


def patch(plan: Plan, sealing: Sealing, units: Units, clock: WallClock) -> list[str]:
    """Where the test patch goes, when it is laid and tried, and how."""
    one = sealing.test_patch
    room = listed(room_names(plan, (one.room,)))
    hours = f"{one.wait_low_h:g} h"
    if one.wait_high_h != one.wait_low_h:
        hours = f"{one.wait_low_h:g} to {one.wait_high_h:g} h"
    return [
        (
            f"{length(one.side_m, units)} square in {room}, as far from its way in as it goes: "
            f"laid by {moment_at(one.lay_by, clock)}, tried {moment_at(one.try_at, clock)} "
            f"({hours}, {one.rank})."
        ),
        one.how,
    ]


def with_care(reasons: Sequence[str]) -> str:
    """What is to be minded of the hours of a coat, a sentence each."""
    first, *more = reasons or ("",)
    rest = "".join(f" {one[:1].upper()}{one[1:]}." for one in more)
    return f"With care: {first}.{rest}" if first else ""


def barriers(sealing: Sealing, clock: WallClock) -> list[str]:
    """Each way in: from when it is barred, and when socks and shoes may go there."""
    return [
        f"{one.exit}: barred from {moment_at(one.from_at, clock)}, socks "
        f"{moment_at(one.socks_at, clock)}, shoes {moment_at(one.shoes_at, clock)}."
        for one in sealing.barriers
    ]


def air(sealing: Sealing) -> list[str]:
    """How much air carries the solvent off, and what that figure leaves out."""
    told = []
    for one in sealing.air:
        if one.air_changes_per_h is None:
            return [for_paper(each) for each in one.warnings]
        flow = one.flow_m3_h or 0.0
        told.append(
            f"{coat_named(one.coat)}: {one.air_changes_per_h:g} air changes an hour "
            f"({flow:,.0f} m³/h, {cfm_from_m3_min(flow / 60):,.0f} cfm) keep the mean at the limit "
            f"({one.rank}; {one.release_g_min:g} g/min given off)."
        )
    return [*told, *(sealing.air[0].warnings if sealing.air else ())]
