"""A quantity of a firm and its parts: the normal-inverse-gamma step, on a tree, in closed form.

The model. The firm's own value θ₀ is normal about common practice; that of each part (a finish, a
person, a plant) is normal about the value of the part it belongs to; a job tells its part's
value with normal error of variance σ². All variances but σ² are in units of it, so that a
parent counts for its part as much as `pull` jobs; σ² itself is inverse-gamma. Then everything
follows exactly: with Q the precision of all parts together before, D the weights of the jobs on
the diagonal and V = (Q + D)⁻¹,

    θ = V (Q·practice + Σ pᵢ yᵢ),  a = a₀ + n/2,  b = b₀ + ½ (Σ pᵢ (yᵢ − θ)² + (θ − θ₀)ᵀQ(θ − θ₀))

and each θ is Student with 2a degrees of freedom and scale √(b/a · V). For one part this is the
published normal-inverse-gamma step (Gelman and others, Bayesian Data Analysis, 3rd ed., section
3.3; Murphy 2007, from memory); a test holds it to that and to sums over a grid.

Odd jobs. Jobs have longer tails than a normal number: a job's error is taken as Student with
`TAIL` degrees, so that a far one weighs less (its weight is the mean of the mixing variable), and
with the chance `ODD` it tells nothing (a wrong entry, a spilled tub), spread evenly over
what can be thought of. How far it is off is judged by what the other jobs tell.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

from farwall.nouns import dataclass

Array = npt.NDArray[np.float64]
Whole = npt.NDArray[np.intp]

TAIL = 5.0
"""Degrees of freedom of a job's error: a guess, kept after the tuning half of the bench."""
ODD = 1 / 30
"""Chance that a job's figure tells nothing of the quantity: a guess."""
_STEPS = 24


@dataclass(frozen=True)
class Prior:
    """What is believed before any job.

    mean: common practice. job: standard deviation between jobs. strength: for how many jobs the
    belief in that counts. firm: standard deviation of the firm's own value about practice;
    parts: of a part about what it belongs to, one for each level below the firm. odd_width: over
    what range an odd figure may lie. All in the unit of the values, mostly a logarithm.
    """

    mean: float
    job: float
    firm: float
    parts: tuple[float, ...] = ()
    strength: float = 9.0
    odd_width: float = 2 * math.log(20.0)


@dataclass(frozen=True)
class Fit:
    """The belief after the jobs, one row for each part.

    mean: of each part's own value. own: its variance over σ². scale: √(b/a). degrees: 2a.
    shares: weight of each job (columns) in the mean of each part (rows). kept: the weight
    of each job, 0 to 1, after odd ones were told apart.
    """

    paths: tuple[tuple[str, ...], ...]
    mean: Array
    own: Array
    scale: float
    degrees: float
    shares: Array
    kept: Array
    b: float

    def at(self, path: tuple[str, ...]) -> int:
        """The row of a part; of the nearest part above it that is known when it is new."""
        while path not in self.paths:
            path = path[:-1]
        return self.paths.index(path)


def parts_of(paths: Sequence[tuple[str, ...]]) -> tuple[tuple[str, ...], ...]:
    """All parts named and those they belong to, the firm `()` first."""
    found = {path[:length] for path in paths for length in range(len(path) + 1)} | {()}
    return tuple(sorted(found, key=lambda one: (len(one), one)))


def fit(
    values: Sequence[float],
    paths: Sequence[tuple[str, ...]],
    prior: Prior,
    *,
    counts: Sequence[float] | None = None,
    unended: Sequence[bool] | None = None,
    robust: bool = True,
) -> Fit:
    """The belief after jobs with these values, each about the part at its path.

    counts: what a job counts for, 0 to 1 (forgetting); 1 when left out. unended: the value is
    only known to be greater; its place is taken by what it is then expected to be. robust
    False: plain normal errors, the published step.
    """
    parts = parts_of(paths)
    at = np.array([parts.index(path) for path in paths], dtype=np.intp)
    told = np.array(values, dtype=np.float64)
    count = np.ones_like(told) if counts is None else np.array(counts, dtype=np.float64)
    over = np.zeros(len(told), dtype=bool) if unended is None else np.array(unended, dtype=bool)
    before = _before(parts, prior)
    a0 = prior.strength / 2
    b0 = a0 * prior.job**2
    kept, tails = np.ones_like(told), np.ones_like(told)
    scale, seen = prior.job, told
    if robust and len(told):
        kept, tails = _weights(told - _middle(told, count, prior.mean), _first_scale(prior), prior)
    for _ in range(_STEPS if robust or over.any() else 1):
        weight = count * kept * tails
        variance, mean = _step(before, prior.mean, at, seen, weight)
        off = seen - mean[at]
        away = mean - prior.mean
        a = a0 + float(np.sum(count * kept)) / 2
        b = b0 + 0.5 * (float(np.sum(weight * off**2)) + float(away @ before @ away))
        scale = math.sqrt(b / a)
        leverage = np.clip(weight * variance[at, at], 0.0, 0.999)
        left = off / (1 - leverage)
        # What the others say of the spread: the sum of squares without this job, in closed form.
        rest = np.maximum(b - 0.5 * weight * off * left, 0.25 * b0)
        alone = np.sqrt(rest / np.maximum(a - count * kept / 2, a0))
        wide = alone * np.sqrt(1 + variance[at, at] / (1 - leverage))
        if over.any():
            seen = np.where(over, _beyond(told, seen - left, wide), told)
        if robust:
            kept, tails = _weights(left, wide, prior)
    weight = count * kept * tails
    variance, mean = _step(before, prior.mean, at, seen, weight)
    information = weight * (TAIL + 1) / (TAIL + 3) if robust else weight
    own = np.diag(np.linalg.inv(before + np.diag(_gathered(at, information, len(parts)))))
    return Fit(parts, mean, own, scale, 2 * a, variance[:, at] * weight[None, :], kept * tails, b)


def _before(parts: Sequence[tuple[str, ...]], prior: Prior) -> Array:
    """Precision of all parts together before any job, in units of the job's."""
    q = np.zeros((len(parts), len(parts)))
    q[0, 0] = (prior.job / prior.firm) ** 2
    for row, path in enumerate(parts[1:], 1):
        pull = (prior.job / prior.parts[len(path) - 1]) ** 2
        above = parts.index(path[:-1])
        q[row, row] += pull
        q[above, above] += pull
        q[row, above] -= pull
        q[above, row] -= pull
    return q


def _gathered(at: Whole, weight: Array, parts: int) -> Array:
    return np.bincount(at, weights=weight, minlength=parts).astype(np.float64)


def _step(before: Array, mean: float, at: Whole, seen: Array, weight: Array) -> tuple[Array, Array]:
    """Variance (over σ²) and mean of all parts after the jobs."""
    parts = len(before)
    variance = np.asarray(np.linalg.inv(before + np.diag(_gathered(at, weight, parts))))
    away = variance @ _gathered(at, weight * (seen - mean), parts)
    return variance.astype(np.float64), np.asarray(mean + away)


def _first_scale(prior: Prior) -> Array:
    return np.array(math.sqrt(prior.job**2 + sum(one**2 for one in prior.parts)))


def _middle(values: Array, count: Array, practice: float) -> float:
    """Weighted median of the values, practice counted among them as one."""
    every, weights = np.append(values, practice), np.append(count, 1.0)
    order = np.argsort(every, kind="stable")
    reached = np.cumsum(weights[order])
    low = int(np.searchsorted(reached, reached[-1] / 2))
    high = int(np.searchsorted(reached, reached[-1] / 2, side="right"))
    return float(every[order[low]] + every[order[min(high, len(every) - 1)]]) / 2


def _weights(off: Array, wide: Array, prior: Prior) -> tuple[Array, Array]:
    """Chance of each job to be none of the odd ones, and its weight by the long tail."""
    far = (off / wide) ** 2
    constant = math.exp(math.lgamma((TAIL + 1) / 2) - math.lgamma(TAIL / 2))
    constant /= math.sqrt(TAIL * math.pi)
    ordinary = (1 - ODD) * constant * (1 + far / TAIL) ** (-(TAIL + 1) / 2) / wide
    odd = ODD / prior.odd_width
    return ordinary / (ordinary + odd), (TAIL + 1) / (TAIL + far)


def _beyond(least: Array, middle: Array, wide: Array) -> Array:
    """What a normal number is expected to be when it is known to be greater than `least`."""
    z = np.clip((least - middle) / wide, -8.0, 8.0)
    tail = np.array([0.5 * math.erfc(one / math.sqrt(2)) for one in z])
    hazard = np.exp(-0.5 * z**2) / math.sqrt(2 * math.pi) / tail
    return np.asarray(np.maximum(middle + wide * hazard, least))
