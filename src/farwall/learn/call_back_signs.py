"""How much a sign weighs for the cause of a call-back: counted from call-backs that were closed.

A kind of sign is worth what the odds of a cause rise by when it speaks for it, in doublings: the
chance p that it speaks for the cause that was found, over the chance q that it speaks for one that
was not. Both are Beta numbers that are counted up; the weight is log2(p / q) of their means, and
never below nothing, so that one more sign for a cause never lowers its place.

Before any call-back: q is 0.1 and p is 0.1 times 2 to the guessed weight, each worth eight
call-backs; so that without any the weights are the guesses. Both are guesses of ours.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

from farwall.evidence import Rank
from farwall.facts.call_back_signs import WEIGHTS
from farwall.facts.closed import CallBack, ClosedJob
from farwall.facts.lessons import SignWeight
from farwall.learn.quantiles import beta

BY_CHANCE = 0.1
"""How often a sign speaks for a cause that it was not."""
WORTH_CALLS = 8.0
_ENDS = (0.1, 0.9)


def sign_weights(jobs: Sequence[ClosedJob], counts: Mapping[str, float]) -> tuple[SignWeight, ...]:
    """A weight for each kind of sign that a closed call-back told of; counts: what a job is worth
    after forgetting, by its id."""
    told = [(counts[job.id], one) for job in jobs for one in job.called_back if one.cause]
    kinds = [kind for kind in WEIGHTS if any(kind in one.for_it for _, one in told)]
    return tuple(_weight(kind, told) for kind in kinds)


def _weight(kind: str, told: Sequence[tuple[float, CallBack]]) -> SignWeight:
    known = [(much, one) for much, one in told if kind in one.for_it]
    calls = math.fsum(much for much, _ in known)
    hits = math.fsum(much * one.for_it[kind] for much, one in known)
    strays = math.fsum(much * one.for_others.get(kind, 0.0) for much, one in known)
    p = _counted(BY_CHANCE * 2 ** WEIGHTS[kind], hits, calls)
    q = _counted(BY_CHANCE, strays, calls)
    low, high = (
        _doublings(beta(a, *p), beta(b, *q)) for a, b in zip(_ENDS, reversed(_ENDS), strict=True)
    )
    n = len(known)
    return SignWeight(
        kind=kind, weight=_doublings(p[0] / sum(p), q[0] / sum(q)), low=low, high=high,
        guess=WEIGHTS[kind], call_backs=n, rank=Rank.LEARNED.value,
        source=f"learned from {n} closed {'call-back' if n == 1 else 'call-backs'}",
    )  # fmt: skip


def _counted(before: float, yes: float, calls: float) -> tuple[float, float]:
    """The two numbers of a Beta: for and against, with what was believed before."""
    return WORTH_CALLS * before + yes, WORTH_CALLS * (1 - before) + calls - yes


def _doublings(p: float, q: float) -> float:
    return max(0.0, math.log2(p / q))
