"""The belief in a slab's thirst: exact updating, and the sum of fields."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.mix.thirst import Thirst, first_belief

amounts = st.floats(0.1, 100)
spreads = st.floats(1, 60)


def test_the_two_variances_make_up_the_spread_that_was_told():
    belief = first_belief(20)
    # Hand-worked: ln(1 + 0.2^2) = 0.0392207.
    assert belief.variance + belief.field_variance == pytest.approx(0.0392207, abs=1e-7)
    assert belief.field_variance == pytest.approx(0.0078441, abs=1e-7)


def test_one_thirsty_field_moves_the_belief_by_the_share_of_the_job():
    belief = Thirst(0.0, 0.04, 0.01).after(likely_l=10.0, used_l=12.0)
    # Hand-worked: weight 0.04/0.05 = 0.8; mean 0.8 ln 1.2 = 0.145857; variance 0.04 x 0.2.
    assert belief.mean == pytest.approx(0.145857, abs=1e-6)
    assert belief.variance == pytest.approx(0.008)
    assert belief.factor == pytest.approx(math.exp(0.145857), abs=1e-5)


@given(spreads, st.lists(st.tuples(amounts, amounts), min_size=1, max_size=6))
def test_the_order_of_the_fields_does_not_matter_to_the_belief(spread, seen):
    forth, back = first_belief(spread), first_belief(spread)
    for likely, used in seen:
        forth = forth.after(likely_l=likely, used_l=used)
    for likely, used in reversed(seen):
        back = back.after(likely_l=likely, used_l=used)
    assert forth.mean == pytest.approx(back.mean, abs=1e-9)
    assert forth.variance == pytest.approx(back.variance, rel=1e-9)


@given(spreads, st.lists(amounts, min_size=1, max_size=6))
def test_what_was_seen_only_ever_sharpens_the_belief(spread, seen):
    belief = first_belief(spread)
    for likely in seen:
        sharper = belief.after(likely_l=likely, used_l=likely * 1.3)
        assert sharper.variance < belief.variance
        belief = sharper


@given(spreads, amounts, st.floats(0.001, 0.4))
def test_enough_for_one_is_enough_for_a_list_of_one(spread, likely, chance):
    belief = first_belief(spread)
    enough = belief.enough_l(likely, chance_dry=chance)
    assert belief.enough_for_all_l([likely], chance_dry=chance) == pytest.approx(enough, rel=1e-9)
    assert belief.chance_enough([likely], enough) == pytest.approx(1 - chance, abs=1e-9)


@pytest.mark.parametrize("spread", [15, 25, 40])
def test_the_fitted_sum_agrees_with_drawn_sums(spread):
    belief, fields = first_belief(spread), [1.0, 2.0, 7.0]
    rng = np.random.default_rng(7)
    job = rng.normal(0, math.sqrt(belief.variance), size=(400_000, 1))
    own = rng.normal(0, math.sqrt(belief.field_variance), size=(400_000, 3))
    taken = (np.array(fields) * np.exp(job + own)).sum(axis=1)
    for chance in (0.5, 0.1, 0.01):
        enough = belief.enough_for_all_l(fields, chance_dry=chance)
        # Three standard errors of the drawn share, and 2 % of it for the fit.
        noise = 3 * math.sqrt(chance * (1 - chance) / 400_000) + 0.02 * chance
        assert (taken > enough).mean() == pytest.approx(chance, abs=noise)


def test_without_any_spread_the_need_is_the_need():
    belief = first_belief(0)
    assert belief.enough_l(5.0, chance_dry=0.01) == 5.0
    assert belief.after(likely_l=5.0, used_l=9.0) == belief
    assert belief.chance_enough([2.0, 3.0], 5.1) == 1.0
    assert belief.chance_enough([2.0, 3.0], 4.9) == 0.0
