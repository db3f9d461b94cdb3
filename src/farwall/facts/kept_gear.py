"""Gear that serves many jobs: how many each thing lasts, so that a price takes its share of it.

Only of sprayers and their seals do finishers tell how long they last [common-practice]; the rest
is a guess until the firm tells its own (`supplies.lasts`).
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.supplies import Supplies
from farwall.facts.van import SprayerKind
from farwall.nouns import dataclass

SPRAYER_LASTS: Mapping[SprayerKind, tuple[int, int]] = MappingProxyType(
    {"cheap": (1, 2), "acid-proof": (10, 30)}
)
"""Jobs until the seals go, low and high: common practice, no source."""
TOLD_IN_JOB = "told in the job"


@dataclass(frozen=True)
class Life:
    """Jobs that a thing lasts, low, likely, high, 1 or more; how far that can be trusted."""

    low: float
    likely: float
    high: float
    rank: Rank
    source: str

    @property
    def ends(self) -> tuple[float, float, float]:
        """A job's share over its likely share: low where it lasts long, high where it does not."""
        return (self.likely / self.high, 1.0, self.likely / self.low)


_LOW, _HIGH = SPRAYER_LASTS["acid-proof"]
_GOOD = Life(_LOW, 17, _HIGH, Rank.PRACTICE, PRACTICE)
"""A good one, flushed daily. 17: the geometric middle of 10 and 30, for a share of a job is asked
for; our own."""
LIVES: Mapping[str, Life] = MappingProxyType({
    "sprayer": _GOOD,
    "seals": _GOOD,
    "spare-wand": Life(10, 17, 30, Rank.GUESS, OUR_GUESS),
    "spare-tip": Life(5, 10, 20, Rank.GUESS, OUR_GUESS),
    "eyewash": Life(20, 40, 100, Rank.GUESS, OUR_GUESS),
    "spill-kit": Life(5, 15, 40, Rank.GUESS, OUR_GUESS),
    "goggles": Life(5, 10, 20, Rank.GUESS, OUR_GUESS),
    "boots": Life(10, 20, 40, Rank.GUESS, OUR_GUESS),
})  # fmt: skip
"""By the id of its line in the list of quantities. A spare wand is worn as the sprayer's own is."""


def lives_of(supplies: Supplies) -> dict[str, Life]:
    """What lasts how long in this job: the firm's own figure wins; none where gear is priced whole.

    A line whose own figure is 1 job is used up by it, and priced whole.
    """
    if supplies.kept_gear == "whole":
        return {}
    own = {
        id_: Life(jobs, jobs, jobs, Rank.MEASURED, TOLD_IN_JOB)
        for id_, jobs in supplies.lasts.items()
    }
    return {**LIVES, **own}
