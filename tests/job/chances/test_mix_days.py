"""The gate's policy on drawn days, against the gate itself day by day."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.job.chances.mix_days import log_width, runs_short
from farwall.mix.gate import budget, mix_now_l, morning_l
from farwall.mix.thirst import first_belief


def by_the_gate(likely_l, drunk, *, belief, chances):
    """One day by the gate's own plain sums."""
    have = morning_l(likely_l, belief=belief, chances=chances)
    short = False
    for number, litres in enumerate(likely_l):
        rest = likely_l[number:]
        have += mix_now_l(have, rest, belief=belief, chances=chances[number:])
        taken = litres * drunk[number]
        short = short or taken > have
        have = max(have - taken, 0.0)
        belief = belief.after(likely_l=litres, used_l=taken)
    return short


litres = st.lists(st.floats(0.5, 20), min_size=1, max_size=6)


@given(litres, st.integers(0, 2**32), st.floats(5, 40), st.floats(0.01, 0.2))
def test_every_day_goes_as_the_gate_says(likely_l, seed, spread, chance_dry):
    belief = first_belief(spread)
    chances = budget(chance_dry, len(likely_l))
    normal = np.random.default_rng(seed).standard_normal((len(likely_l), 30))
    drunk = np.exp(log_width(belief) * normal)
    found = runs_short(likely_l, drunk, belief=belief, chances=chances)
    expected = [
        by_the_gate(likely_l, day, belief=belief, chances=chances) for day in drunk.T.tolist()
    ]
    assert found.tolist() == expected


def test_one_field_runs_short_as_often_as_its_budget_allows():
    """Closed form: one log-normal need, mixed to its 99 % point: 1 %, within 4 standard errors."""
    belief = first_belief(20.0)
    drunk = np.exp(log_width(belief) * np.random.default_rng(7).standard_normal((1, 100_000)))
    found = runs_short([5.0], drunk, belief=belief, chances=(0.01,)).mean()
    assert found == pytest.approx(0.01, abs=4 * math.sqrt(0.01 * 0.99 / 100_000))


def test_a_job_of_many_fields_stays_within_the_budget_of_the_job():
    """By the union bound it runs short no more often than the job's 5 %, whatever the fields."""
    belief, fields = first_belief(20.0), [3.0, 1.0, 6.0, 2.0, 9.0]
    rng = np.random.default_rng(11)
    common, own = rng.standard_normal(40_000), rng.standard_normal((5, 40_000))
    drunk = np.exp(math.sqrt(belief.variance) * common + math.sqrt(belief.field_variance) * own)
    found = runs_short(fields, drunk, belief=belief, chances=budget(0.05, 5)).mean()
    assert 0.005 < found < 0.05 + 4 * math.sqrt(0.05 / 40_000)
