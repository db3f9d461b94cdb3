"""How likely a slip of a certain size is: readings are misread in ways of their own.

A foot too many or too few, a ten of inches, two digits changed about, 6 for 9 on a tape upside
down, the beginning of the tape at 1 ft. Which ways there are is common practice among who reads a
tape (no source); how often each is, is a guess. Any other size: normal about 0.
"""

from __future__ import annotations

from functools import lru_cache
from math import exp, pi, sqrt

from farwall.units import M_PER_FT, M_PER_IN

BROAD_M = 0.3
"""Standard deviation of a slip of no known way, a guess."""
_KNOWN = 0.4
"""Share of slips that are of a known way, a guess."""
_ROUND_M = 0.004


@lru_cache(maxsize=4096)
def slips_of(length_m: float, *, us: bool) -> tuple[float, ...]:
    """By how much a reading of this length may be too long (above 0) or too short [m]."""
    found: set[float] = set()
    if us:
        eighths = round(length_m / M_PER_IN * 8)
        feet, rest = divmod(eighths, 96)
        inches, part = divmod(rest, 8)
        others = {(feet + 1, inches), (feet - 1, inches), (feet, inches + 1), (feet, inches - 1),
                  (feet, inches + 10), (feet, inches - 10)}  # fmt: skip
        others |= {(int(other), inches) for other in _mixed(str(feet))}
        others |= {(feet, int(other)) for other in _mixed(str(inches)) if int(other) < 12}
        others |= {(inches, feet)} if feet < 12 else set()
        for ft, inch in others:
            found.add(length_m - (ft * M_PER_FT + (inch + part / 8) * M_PER_IN))
    else:
        centimetres = round(length_m * 100)
        rest_m = length_m - centimetres / 100
        for other in _mixed(str(centimetres)):
            found.add(length_m - int(other) / 100 - rest_m)
        found |= {1.0, -1.0, 0.1, -0.1}
    return tuple(sorted(one for one in found if abs(one) > 0.015 and length_m - one > 0))


def _mixed(digits: str) -> set[str]:
    """The same digits, two neighbours changed about, or a 6 for a 9."""
    found = set()
    for k in range(len(digits) - 1):
        found.add(digits[:k] + digits[k + 1] + digits[k] + digits[k + 2 :])
    for k, digit in enumerate(digits):
        if digit in "69":
            found.add(digits[:k] + ("9" if digit == "6" else "6") + digits[k + 1 :])
    return found - {digits}


def likelihood(slip_m: float, sigma_m: float, known_m: tuple[float, ...]) -> float:
    """How well a slip, found to sigma, fits what slips are: its density [1/m]."""
    broad = normal(slip_m, sqrt(sigma_m**2 + BROAD_M**2))
    if not known_m:
        return broad
    wide = sqrt(sigma_m**2 + _ROUND_M**2)
    sharp = sum(normal(slip_m - one, wide) for one in known_m) / len(known_m)
    return (1.0 - _KNOWN) * broad + _KNOWN * sharp


def normal(miss: float, sigma: float) -> float:
    """Density of the normal distribution about 0 [1/m], never quite 0."""
    return exp(-0.5 * min((miss / sigma) ** 2, 1400.0)) / (sigma * sqrt(2 * pi))
