"""What the usual rule would have mixed: one extra gallon on five or six, all at once."""

from __future__ import annotations

import math
from collections.abc import Sequence

from farwall.mix.thirst import Thirst
from farwall.nouns import dataclass

EXTRA_LOW, EXTRA_HIGH = 1 / 6, 1 / 5
"""One extra gallon on six, one on five: common practice, no source [common-practice]."""


@dataclass(frozen=True)
class UsualRule:
    """Litres the rule mixes for a coat (on six, on five) and its chances of running dry, 0 to 1."""

    coat: str
    likely_l: float
    low_l: float
    high_l: float
    chance_dry_low: float
    chance_dry_high: float


def usual_rule(likely_l: Sequence[float], *, coat: str, belief: Thirst) -> UsualRule:
    """What the rule mixes for the fields of one coat, and how often that runs dry inside one.

    The rule mixes once. When all the fields together take more, the tub is
    empty inside a field: there is no other place for it to be.
    """
    planned = math.fsum(likely_l)
    low, high = planned * (1 + EXTRA_LOW), planned * (1 + EXTRA_HIGH)
    return UsualRule(
        coat,
        planned,
        low,
        high,
        chance_dry_low=1 - belief.chance_enough(likely_l, high),
        chance_dry_high=1 - belief.chance_enough(likely_l, low),
    )
