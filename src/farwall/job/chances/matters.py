"""Which input moves the outcome most, and what measuring it would do, both reckoned.

The outcome of a day is its worst age over open time, of all edges of the job. The share of an
input is the part of the variance of its logarithm that goes when the job's own draw of
that input is known (first-order share, by means over equally likely bins). What
measuring it would do is the same days played again with that input's spread cut to what is
left once it is measured, its likely value being right.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

import numpy as np

from farwall.facts.plan import Mattering
from farwall.job.chances.drawn_days import Floats
from farwall.job.chances.spreads import Input, Spread
from farwall.job.chances.words import share_words

if TYPE_CHECKING:
    from farwall.job.chances.chances import Outcome, Play

_BINS = 50
_WORTH = 0.05
"""Less than this share of the range is not worth the work."""
_RARE = 0.005


def matters_most(
    play: Play, base: Outcome, spreads: Mapping[Input, Spread]
) -> tuple[Mattering, ...]:
    """Every input with its share, the largest first."""
    outcome = _log_worst(base)
    found = []
    for name, spread in spreads.items():
        share = sum(first_order(normal, outcome) for normal in play.drawn.job[name])
        cut = spread.cut()
        then = base
        if cut is not spread:
            then = play.worst({**spreads, name: cut}, base.telling)
        dies = float((then.shares > 1).any(axis=0).mean())
        found.append(
            Mattering(
                input=name,
                share=round(min(max(share, 0.0), 1.0), 4),
                rank=spread.rank,
                source=spread.source,
                what_to_do=_words(spread, base, then),
                any_edge_dies=round(dies, 6),
            )
        )
    return tuple(sorted(found, key=lambda one: -one.share))


def first_order(normal: Floats, outcome: Floats, *, bins: int = _BINS) -> float:
    """The part of the variance of `outcome` that the mean over bins of `normal` explains.

    The scatter of the bins' own means is taken off, so that it is about 0 for an input without
    any bearing; it may come out a little below.
    """
    whole = float(outcome.var())
    count = len(outcome)
    bins = min(bins, count // 4)
    if whole <= 0 or bins < 2:
        return 0.0
    order = np.argsort(normal, kind="stable")
    groups = np.array_split(outcome[order], bins)
    means = np.array([group.mean() for group in groups])
    sizes = np.array([len(group) for group in groups])
    between = float((sizes * (means - outcome.mean()) ** 2).sum()) / count
    within = whole - between
    return (between - within * (bins - 1) / (count - bins)) / whole


def _log_worst(outcome: Outcome) -> Floats:
    return np.asarray(np.log(np.maximum(outcome.shares.max(axis=0), 1e-9)))


def _range(outcome: Outcome) -> float:
    """From the 5 % to the 95 % point of the worst age over open time, in logarithms."""
    low, high = np.quantile(_log_worst(outcome), [0.05, 0.95])
    return float(high - low)


def _words(spread: Spread, base: Outcome, then: Outcome) -> str:
    """What to do about an input, and what it would do; empty where it would do nothing."""
    if not spread.what_to_do:
        return ""
    whole = _range(base)
    less = 1 - _range(then) / whole if whole > 0 else 0.0
    now = float((base.shares > 1).any(axis=0).mean())
    after = float((then.shares > 1).any(axis=0).mean())
    if less < _WORTH:
        return f"{spread.what_to_do}: it would hardly change anything here."
    told = f"{spread.what_to_do}: it would {_cut(less)} the range of what edges have to spare"
    if now >= _RARE and after < now:
        told += f", and an edge would die on {share_words(after)} of days, not {share_words(now)}"
    return f"{told}."


def _cut(less: float) -> str:
    for least, words in ((0.7, "take most off"), (0.42, "halve"), (0.28, "take a third off"),
                         (0.2, "take a quarter off")):  # fmt: skip
        if less >= least:
            return words
    return f"take {100 * less:.0f} % off"
