"""The kinds of quantity that jobs teach: common practice of each, and how firms and jobs spread.

The middle and the ends of practice are those of `facts.default_table`, `days.practice` and
`air.waits`. How a spread parts into firm, part and job is a guess; the guesses were kept after
the tuning half of the bench.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Literal

from farwall.air.learned import Spread
from farwall.air.waits import DRY_DOWN, NEUTRALISE, OPEN_TIME, OPEN_TIME_SPREAD, RECOAT, SEALER
from farwall.evidence import Rank
from farwall.facts import default_table as table
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.learn.tree import Prior
from farwall.nouns import dataclass

Scale = Literal["factor", "steps"]

COVERAGE = ("coverage of coat 1", "coverage of later coats")
SPRAY_RATE = "spray rate"
TASK_HOURS = "hours to "
CLOCK = "clock: "
RINSES = "rinses until clean"
COLOUR = "colour against the sample"
CONSUMPTION = ("litres over planned, sampled", "litres over planned, not sampled")
CALL_BACKS = "call-backs"
STRENGTH = (
    "stain strength, long waves", "stain strength, middle waves", "stain strength, short waves",
)  # fmt: skip
"""K/S that a litre of stain on a square metre adds, by channel of `colour.channels`."""

_END = 1.6448536269514722
"""95 % point of the standard normal: low and high of practice are taken as 5 and 95 %, as
`job.chances` takes them. A guess."""
_FIRM, _PART = 0.4, 0.3
"""Of the variance that practice shows, the share of the firm and of a part of it: a guess."""
ROOMS_WATCHED = 2.0
"""Rooms of a job in which one wait is watched: a guess."""
_BETWEEN_FIRMS = 0.25
"""Share of a clock's spread between floors that is the firm's own: a guess."""


@dataclass(frozen=True)
class Kind:
    """One kind of quantity: its unit, how its values are told apart, what is believed before.

    levels: what its parts are called, from wide to narrow.
    """

    what: str
    unit: str
    prior: Prior
    rank: Rank
    source: str
    levels: tuple[str, ...] = ()
    scale: Scale = "factor"

    def seen(self, value: float) -> float:
        """A value as the sums need it: its logarithm, or itself where the unit is steps."""
        return math.log(value) if self.scale == "factor" else value

    def told(self, value: float) -> float:
        """The reverse of `seen`."""
        return math.exp(value) if self.scale == "factor" else value


def spread_prior(low: float, usual: float, high: float, *, levels: int) -> Prior:
    """What a range of practice says: its middle, and its width between firm, parts and jobs."""
    variance = (math.log(high / low) / 2 / _END) ** 2
    part = _PART / levels if levels else 0.0
    return Prior(
        mean=math.log(usual),
        job=math.sqrt(variance * (1 - _FIRM - (_PART if levels else 0.0))),
        firm=math.sqrt(variance * _FIRM),
        parts=(math.sqrt(variance * part),) * levels,
    )


def _of_default(what: str, default: table.Default, *levels: str) -> Kind:
    low, high = default.low or default.usual, default.high or default.usual
    prior = spread_prior(low, default.usual, high, levels=len(levels))
    return Kind(what, default.unit, prior, default.rank, default.source, levels)


def _clock(name: str, spread: Spread) -> Kind:
    """A firm's factor on the usual wait: floors and rooms spread as the clock's own model says.

    A job tells the mean of the rooms that were watched, mostly one or two.
    """
    prior = Prior(
        mean=0.0,
        job=math.sqrt(spread.floor**2 * (1 - _BETWEEN_FIRMS) + spread.room**2 / ROOMS_WATCHED),
        firm=spread.floor * math.sqrt(_BETWEEN_FIRMS),
    )
    return Kind(CLOCK + name, "times the usual", prior, Rank.GUESS, OUR_GUESS)


TYPICAL_HOURS: dict[str, tuple[float, float, float]] = {
    "protect": (3.2, 4.4, 5.6),
    "clean": (8.0, 12.0, 16.0),
    "mask": (4.8, 6.6, 8.4),
    "coat": (3.0, 4.5, 6.0),
    "judge": (1.0, 1.5, 2.0),
    "neutralise": (4.0, 5.6, 7.2),
    "rinse": (6.0, 8.4, 10.8),
    "seal": (4.5, 6.0, 7.5),
    "finish": (1.5, 2.0, 2.5),
    "hand-over": (3.0, 4.0, 5.0),
}
"""Hours of all hands on a typical floor of 1,500 ft²: lines of common practice (no source), parted
as `days.practice` parts them; neutralising and rinsing two to three, a guess."""

OTHER_FLOORS = 1.6
"""How much wider hours spread than practice's ends: those are of one typical floor. A guess."""


def _hours(task: str) -> Kind:
    low, usual, high = TYPICAL_HOURS[task]
    prior = spread_prior(
        usual * (low / usual) ** OTHER_FLOORS,
        usual,
        usual * (high / usual) ** OTHER_FLOORS,
        levels=0,
    )
    return Kind(TASK_HOURS + task, "h on 1,500 ft²", prior, Rank.PRACTICE, PRACTICE)


def _rinses() -> Kind:
    """Rinses are counted whole: rounding adds the variance of an even number within one."""
    prior = spread_prior(3, 4, 6, levels=1)
    whole = math.sqrt(prior.job**2 + 1 / 12 / 4**2)
    return Kind(RINSES, "rinses", replace(prior, job=whole), Rank.PRACTICE, PRACTICE, ("finish",))


def _strength(what: str) -> Kind:
    """Ten, of whatever stain: the middle and the spread of `colour.prior`. How a stain differs
    from slab to slab, and how a firm's stains hang together, are guesses."""
    prior = Prior(mean=math.log(10.0), job=0.25, firm=0.4, parts=(1.2,))
    return Kind(what, "K/S of 1 L/m²", prior, Rank.GUESS, OUR_GUESS, ("stain",))


def _consumption(what: str, default: table.Default) -> Kind:
    job = math.sqrt(math.log1p((default.usual / 100) ** 2))
    prior = Prior(mean=0.0, job=job * math.sqrt(0.75), firm=job * 0.5, strength=8.0)
    return Kind(what, "times planned", prior, Rank.GUESS, OUR_GUESS)


KINDS: dict[str, Kind] = {
    one.what: one
    for one in (
        _of_default(COVERAGE[0], table.FIRST_COAT_M2_PER_L, "finish", "drops"),
        _of_default(COVERAGE[1], table.LATER_COAT_M2_PER_L, "finish", "drops"),
        _of_default(SPRAY_RATE, table.TOOLS["spray_m2_min"], "person"),
        *(_clock(wait.name, wait.spread) for wait in (RECOAT, NEUTRALISE, DRY_DOWN, SEALER)),
        _clock(OPEN_TIME, OPEN_TIME_SPREAD),
        *(_hours(task) for task in TYPICAL_HOURS),
        _rinses(),
        Kind(
            COLOUR,
            "steps darker",
            Prior(mean=0.0, job=0.55, firm=0.3, parts=(0.4,), odd_width=8.0),
            Rank.GUESS,
            OUR_GUESS,
            ("plant",),
            "steps",
        ),
        _consumption(CONSUMPTION[0], table.SPREAD_SAMPLED_PERCENT),
        _consumption(CONSUMPTION[1], table.SPREAD_UNSAMPLED_PERCENT),
        *map(_strength, STRENGTH),
    )
}
