"""How much parts of one job differ: rooms about their floor, fields about their coat.

Squares of what each differs by, free of their own mean, tell a variance that is inverse-gamma (the
published step for a known mean, as in `learn.tree`): a = a₀ + ½ Σ free, b = b₀ + ½ Σ squares.
Single far ones weigh less, as there.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

from farwall.learn.tree import ODD, TAIL
from farwall.nouns import dataclass

STRENGTH = 8.0
"""For how many differences the guess counts: a guess."""
_STEPS = 16
_ODD_WIDTH = 2 * math.log(20.0)


@dataclass(frozen=True)
class Within:
    """The belief in a variance after the jobs, and each job's weight and mean square."""

    a: float
    b: float
    shares: Mapping[str, tuple[float, float]]

    @property
    def sd(self) -> float:
        """The standard deviation that is likely."""
        return math.sqrt(self.b / self.a)


def within(
    offs: Mapping[str, Sequence[tuple[Sequence[float], float]]],
    guess: float,
    counts: Mapping[str, float],
) -> Within:
    """The belief after jobs that told groups of differences, each with how many are free of it."""
    a0 = STRENGTH / 2
    b0 = a0 * guess**2
    sd, told = guess, _sums(offs, guess, counts)
    for _ in range(_STEPS):
        told = _sums(offs, sd, counts)
        a = a0 + sum(free for free, _ in told.values()) / 2
        b = b0 + sum(squares for _, squares in told.values()) / 2
        sd = math.sqrt(b / a)
    a = a0 + math.fsum(free for free, _ in told.values()) / 2
    b = b0 + math.fsum(squares for _, squares in told.values()) / 2
    shares = {
        job: (free / 2 / a, squares / free) for job, (free, squares) in told.items() if free > 0
    }
    return Within(a, b, shares)


def _sums(
    offs: Mapping[str, Sequence[tuple[Sequence[float], float]]],
    sd: float,
    counts: Mapping[str, float],
) -> dict[str, tuple[float, float]]:
    """Free differences and weighted squares of each job."""
    found = {}
    for job, groups in offs.items():
        free_of, squares = 0.0, 0.0
        for group, free in groups:
            part = free / len(group)
            for off in group:
                kept, tail = _weight(off, sd * math.sqrt(part))
                free_of += counts[job] * kept * part
                squares += counts[job] * kept * tail * off**2
        found[job] = (free_of, squares)
    return found


def _weight(off: float, wide: float) -> tuple[float, float]:
    far = (off / wide) ** 2
    constant = math.exp(math.lgamma((TAIL + 1) / 2) - math.lgamma(TAIL / 2))
    constant /= math.sqrt(TAIL * math.pi)
    ordinary = (1 - ODD) * constant * (1 + far / TAIL) ** (-(TAIL + 1) / 2) / wide
    return ordinary / (ordinary + ODD / _ODD_WIDTH), (TAIL + 1) / (TAIL + far)
