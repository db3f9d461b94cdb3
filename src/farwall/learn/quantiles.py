"""Ends of ranges, by scipy, which is loaded only when somebody asks."""

from __future__ import annotations

import math
from statistics import NormalDist

from farwall.learn.tree import TAIL

_NORMAL = NormalDist()

GATE_POINT = 0.99
"""The gate reckons with a normal number; it gets the spread whose 99 % point is the true one."""


def student(share: float, degrees: float) -> float:
    """The point below which a Student number lies with the chance `share` (0 to 1)."""
    from scipy.special import stdtrit

    return float(stdtrit(degrees, share))


def reach(share: float, degrees: float) -> float:
    """How many spreads the next value may lie off: by a job's long tail, and by a spread that is
    itself only known with so many degrees of freedom."""
    return student(share, TAIL) * math.sqrt(student(share, degrees) / normal(share))


def normal(share: float) -> float:
    """The same of a standard normal number."""
    return _NORMAL.inv_cdf(share)


def beta(share: float, yes: float, no: float) -> float:
    """The same of a beta number."""
    from scipy.special import betaincinv

    return float(betaincinv(yes, no, share))


def variance(share: float, a: float, b: float) -> float:
    """The same of an inverse-gamma number with shape a and scale b."""
    from scipy.special import gammaincinv

    return float(b / gammaincinv(a, 1 - share))
