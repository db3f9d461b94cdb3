"""What is believed of a slab's thirst, and how each sprayed field sharpens it.

The model. A field whose likely need is q litres takes V = q·exp(μ + ε). μ is
the job's own thirst, the same for all its fields in one coat; ε is the
field's own, drawn anew for each. Both are normal with mean 0 before anything
was sprayed, and together they have the spread that the job states:
σ² + τ² = ln(1 + cv²), of which the share `FIELD_SHARE` is τ². Seeing V tells
ln(V/q) = μ + ε, so that the belief in μ stays normal and is updated exactly
(a normal mean with known noise: conjugate).

The sum of several fields, given μ, is a sum of log-normals; it is taken as
log-normal with the same mean and variance (Fenton and Wilkinson's fit, from
memory). With τ below 0.12 the fit is within the Monte-Carlo noise of our
tests. Source: [log-normal]; that slabs behave so, and the share, are
[house-guess], to be replaced by what closed jobs teach.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from statistics import NormalDist

from farwall.mix.need import log_variance
from farwall.nouns import dataclass

FIELD_SHARE = 0.2
"""Share of the variance that belongs to a field and not to the job: our guess."""

READ_L = 0.15
"""One standard deviation of reading a tank or a tub in wet gloves. Rank: guess."""

_NORMAL = NormalDist()


@dataclass(frozen=True)
class Thirst:
    """Belief in μ (mean, variance of the logarithm) and the variance of each field's ε."""

    mean: float
    variance: float
    field_variance: float

    def after(self, *, likely_l: float, used_l: float) -> Thirst:
        """The belief after a field of `likely_l` has taken `used_l` litres; both above 0."""
        if self.variance == 0:
            return self
        seen = math.log(used_l / likely_l)
        weight = self.variance / (self.variance + self.field_variance)
        mean = self.mean + weight * (seen - self.mean)
        return Thirst(mean, self.variance * (1 - weight), self.field_variance)

    @property
    def factor(self) -> float:
        """Median of litres taken over litres planned, as now believed."""
        return math.exp(self.mean)

    def enough_l(self, likely_l: float, *, chance_dry: float) -> float:
        """Litres that a field needs more of only with the chance `chance_dry` (0 to 1)."""
        z = _NORMAL.inv_cdf(1 - chance_dry)
        return likely_l * math.exp(self.mean + z * math.sqrt(self.variance + self.field_variance))

    def total(self, likely_l: Sequence[float]) -> tuple[float, float]:
        """Mean and standard deviation of the logarithm of what all these fields take."""
        growth = math.exp(self.field_variance)
        mean = math.fsum(likely_l) * math.sqrt(growth)
        variance = math.fsum(one * one for one in likely_l) * growth * (growth - 1)
        spread = math.log1p(variance / (mean * mean))
        return self.mean + math.log(mean) - spread / 2, math.sqrt(self.variance + spread)

    def chance_enough(self, likely_l: Sequence[float], litres: float) -> float:
        """Chance (0 to 1) that `litres` cover all these fields together."""
        mean, deviation = self.total(likely_l)
        if deviation == 0:
            return 1.0 if math.log(litres) >= mean else 0.0
        return _NORMAL.cdf((math.log(litres) - mean) / deviation)

    def enough_for_all_l(self, likely_l: Sequence[float], *, chance_dry: float) -> float:
        """Litres that all these fields together exceed only with the chance `chance_dry`."""
        mean, deviation = self.total(likely_l)
        return math.exp(mean + _NORMAL.inv_cdf(1 - chance_dry) * deviation)


def first_belief(spread_percent: float, *, field_share: float = FIELD_SHARE) -> Thirst:
    """The belief before anything was sprayed; the spread is that of one field's need [%]."""
    variance = log_variance(spread_percent)
    return Thirst(0.0, variance * (1 - field_share), variance * field_share)


def inside(belief: Thirst, *, done_l: float, used_l: float) -> Thirst:
    """The belief of what is left of an open field, from what its first part has used.

    `belief` is that of the field's start. Half of a field's own variance is taken to lie between
    its parts (a guess); the other half its first part has told. `done_l` is what was planned.
    """
    parts = belief.field_variance / 2
    read = 2 * (READ_L / done_l) ** 2
    whole = Thirst(belief.mean, belief.variance + parts, parts / 2 + read)
    learned = whole.after(likely_l=done_l, used_l=used_l)
    return Thirst(learned.mean, learned.variance, parts)
