"""What is uncertain on the day: each input's range, its rank and source, and how to narrow it.

A range is taken as log-normal about its likely value, its low and high ends as the
5 % and 95 % points (a guess: common practice tells ends, not shares). Below and above the
likely value it has its own width.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Literal

from farwall.air.clocks import REPEAT_HIGH, REPEAT_LOW
from farwall.evidence import Rank
from farwall.facts import default_table as table
from farwall.facts.settled import SettledJob
from farwall.mix.need import log_variance
from farwall.nouns import dataclass

Input = Literal["open time", "spray rate", "thirst", "tank pauses", "walking pace"]

Z_95 = 1.6448536269514722
"""95 % point of the standard normal."""
TOLD = 0.85
"""A value that the job tells is met on the day between this share of it and its inverse: guess."""


OWN = math.inf
"""A width that leaves each range its own."""


@dataclass(frozen=True)
class Spread:
    """How far an input's factor strays from 1: log-widths below and above, and what they rest on.

    `measured` are the widths that are left once somebody has measured it here, in the
    words of `what_to_do`; without such words it is as narrow as it gets.
    """

    below: float
    above: float
    rank: str
    source: str
    measured: tuple[float, float] | None = None
    what_to_do: str = ""

    def widths(self, below: float, above: float) -> tuple[float, float]:
        """Those of a range that has its own: narrowed to these, or replaced by learned ones."""
        if self.rank == Rank.LEARNED.value:
            return self.below, self.above
        return min(below, self.below), min(above, self.above)

    def cut(self) -> Spread:
        """The same input once measured here."""
        if self.measured is None:
            return self
        return Spread(*self.measured, Rank.MEASURED.value, "if measured here")


def width(low: float, likely: float, high: float) -> tuple[float, float]:
    """Log-widths of a range whose ends are 5 % and 95 % points; all above 0."""
    return math.log(likely / low) / Z_95, math.log(high / likely) / Z_95


_RATE = "tools.spray_m2_min"
_TOLD = width(TOLD, 1.0, 1 / TOLD)
_TIMED = width(REPEAT_LOW, 1.0, REPEAT_HIGH)
_DO: dict[str, str] = {
    "tools.spray_m2_min": "Time yourself over a measured floor with water",
    "tools.walk_m_min": "Time a walk of known length with a full tank on",
    "tools.refill_min": "Time three fillings at the tub",
    "tools.swap_min": "Time three swaps of the tank",
}


def spreads_of(
    settled: SettledJob, learned: Mapping[Input, Spread] | None = None
) -> dict[Input, Spread]:
    """The spread of every input of this job; `learned` ones replace those of practice and guess."""
    pause = "tools.swap_min" if settled.job.crew.helper else "tools.refill_min"
    found: dict[Input, Spread] = {
        "open time": _open_time(settled),
        "spray rate": _tool(settled, "tools.spray_m2_min"),
        "thirst": _thirst(settled),
        "tank pauses": _tool(settled, pause),
        "walking pace": _tool(settled, "tools.walk_m_min"),
    }
    return {**found, **(learned or {})}


def _tool(settled: SettledJob, name: str) -> Spread:
    ground = next((one for one in settled.grounds if one.name == name), None)
    default = table.TOOLS[name.removeprefix("tools.")]
    if name == _RATE and settled.spray_rate_spread is not None and ground is not None:
        wide = settled.spray_rate_spread
        return Spread(wide, wide, Rank.LEARNED.value, ground.source)
    told = ground is not None and ground.rank not in {Rank.PRACTICE.value, Rank.GUESS.value}
    if told or default.low is None or default.high is None:
        return Spread(*_TOLD, Rank.GUESS.value, "told by the job; its spread a guess")
    widths = width(default.low, default.usual, default.high)
    return Spread(*widths, default.rank.value, default.source, _TOLD, _DO[name])


def _open_time(settled: SettledJob) -> Spread:
    """Each room and hour has its own widths, from the clocks; here only how they narrow."""
    timed = all(coat.sample and coat.sample.sheen_loss_min for coat in settled.coats)
    if timed:
        return Spread(OWN, OWN, Rank.MEASURED.value, "sample timed on this slab")
    rank, do = Rank.PRACTICE.value, "Time the sheen loss on your sample"
    return Spread(OWN, OWN, rank, table.PRACTICE, _TIMED, do)


def _thirst(settled: SettledJob) -> Spread:
    wide = max(math.sqrt(log_variance(coat.spread_percent)) for coat in settled.coats)
    sampled = math.sqrt(log_variance(table.SPREAD_SAMPLED_PERCENT.usual))
    if any(coat.field_share is not None for coat in settled.coats):
        return Spread(wide, wide, Rank.LEARNED.value, "learned from closed jobs")
    if wide <= sampled + 1e-9:
        return Spread(wide, wide, Rank.GUESS.value, "sampled here; its spread a guess")
    do = "Spray a square of known size on your sample from a measured cup"
    return Spread(wide, wide, Rank.GUESS.value, table.OUR_GUESS, (sampled, sampled), do)
