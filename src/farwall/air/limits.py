"""When the slab says no: too hot, too cold, or not drinking.

A slab outside these limits is not a faster or a slower clock. It is a no,
with its reason and what would make it a yes.
"""

from __future__ import annotations

from typing import Literal

from farwall.errors import Unanswerable
from farwall.evidence import Rank
from farwall.nouns import dataclass
from farwall.units import c_from_f, f_from_c

COLDEST_C, HOTTEST_C = c_from_f(50), c_from_f(85)
GOOD_C = (c_from_f(55), c_from_f(80))
LONGEST_DROP_S = 60.0
TIGHT_DROP_S = 20.0
_HAIR = 1e-6


@dataclass(frozen=True)
class GoNoGo:
    """`yes`, `care` (it may be done, mind the reason) or `no`, with reason and remedies."""

    word: Literal["yes", "care", "no"]
    reason: str = ""
    remedies: tuple[str, ...] = ()
    rank: Rank = Rank.PRACTICE
    source: str = "common-practice"


_YES = GoNoGo("yes")


def slab_verdict(*, surface_c: float, us: bool = False) -> GoNoGo:
    """Whether a slab at this temperature may be stained.

    surface_c: measured on the slab, the sun patch too [°C]. Below 50 °F (10 °C)
    or above 85 °F (29.4 °C) is a no; 50-55 and 80-85 °F ask for care. Source:
    common practice, no source; makers' sheets go from 50 to 90 °F, and win.
    us: °F is said first, as in a job in feet.
    """
    here = f"The slab is {in_both(surface_c, us=us)}"
    coldest, hottest, good = (in_both(one, us=us) for one in (COLDEST_C, HOTTEST_C, GOOD_C[1]))
    if surface_c < COLDEST_C - _HAIR:
        return GoNoGo(
            "no",
            f"{here}, below {coldest}: stain reacts and dries too slowly and unevenly there.",
            (
                "Warm the house for a day or two and measure the slab again, not the air.",
                "Make sure the ground below is not frozen.",
            ),
        )
    if surface_c > HOTTEST_C + _HAIR:
        return GoNoGo(
            "no",
            f"{here}, above {hottest}: the edge dries before the next band reaches it.",
            (
                "Spray at the coolest hour, and keep the sun off the slab from the day before.",
                "Do not shut the air out to gain time: the fumes need it.",
            ),
        )
    if surface_c < GOOD_C[0] - _HAIR:
        return GoNoGo("care", f"{here}: slow, expect longer waits.")
    if surface_c > GOOD_C[1] + _HAIR:
        return GoNoGo("care", f"{here}: fast, best is below {good}.")
    return _YES


def in_both(value_c: float, *, us: bool) -> str:
    """A temperature in °C and °F, that of the reader first: `82 °F (27.8 °C)`.

    A tenth of a degree Celsius, for a degree Fahrenheit is about half of one.
    """
    celsius, fahrenheit = f"{value_c:.1f} °C", f"{f_from_c(value_c):.0f} °F"
    return f"{fahrenheit} ({celsius})" if us else f"{celsius} ({fahrenheit})"


def drop_verdict(*, drop_s: float) -> GoNoGo:
    """Whether a slab that takes a drop in this time may be stained.

    drop_s: seconds until a drop has gone in, the slowest of the room [s]. More
    than 60 s is a no [astm-f3191 for the minute, common practice for stain].
    """
    if drop_s > LONGEST_DROP_S:
        return GoNoGo(
            "no",
            f"A drop stands {drop_s:g} s, more than a minute: this slab does not take stain yet.",
            ("Clean, sand or strip, and try the drop again; then a full sample.",),
            Rank.PRACTICE,
            "astm-f3191",
        )
    if drop_s > TIGHT_DROP_S:
        return GoNoGo("care", f"A drop takes {drop_s:g} s: tight, sand first and try again.")
    return _YES


def insist(verdict: GoNoGo) -> None:
    """Raises `Unanswerable` with reason and remedies when the verdict is no."""
    if verdict.word == "no":
        raise Unanswerable(verdict.reason, remedies=verdict.remedies)
