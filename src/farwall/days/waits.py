"""What each step of the chain waits for: the floor's own clocks (`air.waits`), told in ranges.

The usual minutes, what hurries them and how far they spread have their one
home in `air.waits`; here they are only put before the steps that they hold
back, with the windows that may not be missed: a dwell, the next coat of stain
within a day, the sealer's own wait for its next coat as its label has it.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache

from farwall.air import waits as floor
from farwall.air.learned import Factor, Spread, factor
from farwall.air.sealers import BY_TYPE, SealerLimits
from farwall.days.nouns import Pace, Wait
from farwall.evidence import Rank, Span

HOUR_MIN = 60.0
USUAL_SEALER = BY_TYPE["water acrylic"]
"""Taken for an invented house that names no sealer; a job hands its own limits over."""
PACE: dict[str, Pace] = {
    floor.CLEANED.name: "film",
    floor.RECOAT.name: "film",
    floor.NEUTRALISE.name: "film",
    floor.DRY_DOWN.name: "slab",
    floor.SEALER.name: "sealer",
    floor.FINISHED.name: "sealer",
}
"""Which pace of an hour hurries a wait: the same relation as under its clock."""
LABEL = "the sealer's own wait for the next coat"

Worth = Callable[[floor.Wait, int], Span]
"""What has to pass of a wait after a coat of stain (from 1), in minutes of the mild day."""


def spanned(
    wait: floor.Wait, found: Factor | None = None, *, m2_per_l: float | None = None, jobs: int = 0
) -> Span:
    """What has to pass of a wait: low, likely, high minutes of the mild day.

    found: what this floor taught, else the usual spread. m2_per_l: coverage of the coat that
    dries, else the usual one. jobs: so many closed jobs taught the factor.
    """
    by = found or _usual(wait.spread)
    worth = floor.worth_min(wait, m2_per_l=m2_per_l)
    rank, source = Rank.PRACTICE, wait.source
    if by.seen:
        times = "once" if by.seen == 1 else f"{by.seen} times"
        rank, source = Rank.LEARNED, f"{source}, watched {times} on this floor"
    # Unwatched the median is 1; the grid of `air.learned` comes near it, and a slot is a step.
    likely = by.likely if by.seen or jobs else 1.0
    if jobs:
        rank = Rank.LEARNED
        source = f"{source}, learned from {jobs} {'job' if jobs == 1 else 'jobs'}"
    return Span(worth * by.low, worth * likely, worth * by.high, rank, source)


def usual_waits(coats: int, seal_coats: int = 2) -> dict[str, tuple[Wait, ...]]:
    """The waits of a floor that nobody watched, at usual coverage, by the step they hold back."""
    return waits_of(coats, seal_coats, lambda wait, _: spanned(wait), USUAL_SEALER)


def waits_of(
    coats: int, seal_coats: int, worth: Worth, sealer: SealerLimits
) -> dict[str, tuple[Wait, ...]]:
    """The waits before each step, by its id; a step that waits for nothing is left out.

    A finish is laid over sealer at any age (common practice: it is renewed yearly), so only the
    least wait of the sealer holds for it.
    """

    def of(wait: floor.Wait, coat: int, longest_min: float | None = None) -> Wait:
        return Wait(wait.name, worth(wait, coat), PACE[wait.name], longest_min)

    found: dict[str, tuple[Wait, ...]] = {"mask": (of(floor.CLEANED, 1),)}
    for n in range(2, coats + 1):
        found[f"coat-{n}"] = (of(floor.RECOAT, n - 1, floor.RECOAT.longest_min),)
    found["neutralise"] = (_dwell(), of(floor.NEUTRALISE, coats))
    found["seal-1"] = (of(floor.DRY_DOWN, coats),)
    for n in range(2, seal_coats + 1):
        found[f"seal-{n}"] = (of(floor.SEALER, coats), _label(sealer, sealer.recoat_to_h))
    found["finish"] = (of(floor.SEALER, coats), _label(sealer, None))
    found["hand-over"] = (of(floor.FINISHED, coats),)
    return found


@cache
def _usual(spread: Spread) -> Factor:
    return factor(spread)


def _dwell() -> Wait:
    told = floor.DWELL
    span = Span(told.low_min, told.usual_min, told.high_min, told.rank, told.source)
    return Wait(told.name, span, "clock", told.high_min)


def _label(sealer: SealerLimits, longest_h: float | None) -> Wait:
    least = sealer.recoat_from_h * HOUR_MIN
    span = Span(least, least, least, sealer.rank, f"{sealer.name}: {sealer.source}")
    return Wait(LABEL, span, "clock", None if longest_h is None else longest_h * HOUR_MIN)
