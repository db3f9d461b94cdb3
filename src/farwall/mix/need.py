"""How much mix a floor needs: the likely amount, and the reserve that makes it certain."""

from __future__ import annotations

import math
from statistics import NormalDist

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Need:
    """Litres: the median need, what is added for certainty, and their sum."""

    likely_l: float
    reserve_l: float

    @property
    def mix_l(self) -> float:
        """What to mix, litres."""
        return self.likely_l + self.reserve_l


def need(
    *, area_m2: float, m2_per_l: float, spread_percent: float, certainty_percent: float
) -> Need:
    """The mix [L] that covers a floor with the certainty asked for.

    The need is taken as log-normal: its median is area/coverage, its
    coefficient of variation `spread_percent`; then mix = median·exp(z·σ) with
    σ² = ln(1 + cv²). Source: [log-normal]; that the need of a floor follows
    this law is a guess of ours.

    Raises Refused for an area or coverage that is not above 0, a negative
    spread, or a certainty outside 50 to below 100 %.
    """
    mistakes = [
        Mistake(name, f"{value:g} is no {name}.", "Give a number above 0.")
        for name, value in (("area_m2", area_m2), ("m2_per_l", m2_per_l))
        if not 0 < value < math.inf
    ]
    if not 0 <= spread_percent < math.inf:
        mistakes.append(Mistake("spread_percent", f"{spread_percent:g} is no spread.", "Try 20."))
    if not 50 <= certainty_percent < 100:
        what = f"{certainty_percent:g} is not from 50 to below 100."
        mistakes.append(Mistake("certainty_percent", what, "Try 99."))
    if mistakes:
        raise Refused(*mistakes)
    likely_l = area_m2 / m2_per_l
    z = NormalDist().inv_cdf(certainty_percent / 100)
    factor = math.exp(z * math.sqrt(log_variance(spread_percent)))
    return Need(likely_l, likely_l * (factor - 1))


def log_variance(spread_percent: float) -> float:
    """σ² of the logarithm of a log-normal amount whose coefficient of variation is the spread."""
    return math.log1p((spread_percent / 100) ** 2)
