"""The gate with a spread that closed jobs taught: how often a day runs short, and what is left.

A firm closes twenty jobs, one record in thirty of them wrong; its next jobs are mixed by the gate,
once with what was learned and once with the guesses, and take what their slabs truly take.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from farwall.bench.learn_firms import Closed, closed_jobs, firm
from farwall.facts.default_table import CERTAINTY_PERCENT, SPREAD_SAMPLED_PERCENT
from farwall.learn.kinds import CONSUMPTION
from farwall.learn.lessons import lessons_of
from farwall.mix.gate import budget, mix_now_l, morning_l
from farwall.mix.thirst import FIELD_SHARE, Thirst, first_belief
from farwall.nouns import dataclass

AFTER_JOBS, DAYS = 20, 40


@dataclass(frozen=True)
class GateScore:
    """Many days with one rule.

    short_percent: of days on which the mix runs short inside a field · left_percent: mix left over
    of what was likely · mixes, spread_percent given to the gate: all in the mean.
    """

    rule: str
    days: int
    short_percent: float
    left_percent: float
    mixes: float
    spread_percent: float


@dataclass(frozen=True)
class _Day:
    short: bool
    left_share: float
    mixes: int


def score_gate(seeds: Sequence[int]) -> tuple[GateScore, GateScore]:
    """The days of these firms after their first twenty jobs: by lessons, and by the guesses."""
    guess = first_belief(SPREAD_SAMPLED_PERCENT.usual, field_share=FIELD_SHARE)
    learned, guessed, spreads = [], [], []
    for seed in seeds:
        closed = list(closed_jobs(firm(seed), count=AFTER_JOBS + DAYS))
        lessons = lessons_of([one.job for one in closed[:AFTER_JOBS]])
        lesson = lessons.named(CONSUMPTION[0])
        assert lesson.spread_percent is not None
        assert lesson.field_share is not None
        belief = first_belief(lesson.spread_percent, field_share=lesson.field_share)
        spreads.append(lesson.spread_percent)
        for one in closed[AFTER_JOBS:]:
            learned.append(_day(one, belief))
            guessed.append(_day(one, guess))
    return (
        _score("learned from 20 jobs", learned, math.fsum(spreads) / len(spreads)),
        _score("the guesses", guessed, SPREAD_SAMPLED_PERCENT.usual),
    )


def _day(one: Closed, belief: Thirst) -> _Day:
    """A day by the gate's policy, its fields taking what they truly take."""
    likely = [field.planned_l or 0.0 for field in one.job.sprayed]
    chances = budget(1 - CERTAINTY_PERCENT.usual / 100, len(likely))
    have_l = morning_l(likely, belief=belief, chances=chances)
    mixes, short = 1, False
    for number, litres in enumerate(likely):
        more_l = mix_now_l(have_l, likely[number:], belief=belief, chances=chances[number:])
        mixes += more_l > 0
        used_l = litres * one.true_thirst[number]
        have_l += more_l - used_l
        if have_l < 0:
            short, have_l = True, 0.0
        belief = belief.after(likely_l=litres, used_l=used_l)
    return _Day(short, have_l / math.fsum(likely), mixes)


def _score(rule: str, days: Sequence[_Day], spread_percent: float) -> GateScore:
    count = len(days)
    return GateScore(
        rule,
        count,
        100 * sum(one.short for one in days) / count,
        100 * math.fsum(one.left_share for one in days) / count,
        sum(one.mixes for one in days) / count,
        spread_percent,
    )
