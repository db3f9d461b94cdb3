"""The draws: laws of sums that have an answer of their own, and what drives a spread."""

import math
from itertools import combinations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.price.risk import DRAWS, FEWER, Costs, Event, Factor, Part, _even, outcome

END = 1.6448536269514722


def test_ten_thousand_draws_take_every_slice_of_every_figure_once():
    assert DRAWS >= 10_000
    for draws in (DRAWS, FEWER):
        even = _even(draws, 40)
        assert np.array_equal(np.sort(even[:, 17]), (np.arange(draws) + 0.5) / draws)


def test_no_two_figures_hang_together():
    """0.01 and 0.03 are a hundredth or so of what a real tie would be; chance alone gives 0.01."""
    for draws, most in ((DRAWS, 0.01), (FEWER, 0.03)):
        even = _even(draws, 40)
        tied = np.corrcoef(even.T) - np.eye(40)
        assert np.abs(tied).max() < most


def test_a_few_boxes_of_any_two_figures_hold_their_share():
    """Sixteen boxes a pair; a box holds 1/16 within a tenth of that."""
    even = _even(DRAWS, 12)
    for a, b in combinations(range(12), 2):
        counts, _, _ = np.histogram2d(even[:, a], even[:, b], bins=4, range=[[0, 1], [0, 1]])
        assert np.abs(counts / DRAWS * 16 - 1).max() < 0.1


def test_one_log_normal_amount_has_its_own_points_by_hand():
    """ln-sd = ln(high/likely)/1.645; the 90 % point is likely × e^(1.2816 sd), mean × e^(sd²/2)."""
    found = outcome(Costs((Part("work", 100 / 1.8, 100, 180),)))
    sd = math.log(1.8) / END
    assert found.median == pytest.approx(100, rel=1e-3)
    assert found.high == pytest.approx(100 * math.exp(1.2815515655 * sd), rel=1e-3)
    assert found.low == pytest.approx(100 * math.exp(-1.2815515655 * sd), rel=1e-3)
    assert found.mean == pytest.approx(100 * math.exp(sd * sd / 2), rel=2e-3)


def test_the_three_told_figures_are_kept():
    """Nine in ten between the ends, half on either side of the likely one, skewed as told."""
    found = outcome(Costs((Part("work", 90, 100, 300),)))
    share = np.mean((found.totals >= 90) & (found.totals <= 300))
    assert share == pytest.approx(0.9, abs=1e-3)
    assert np.mean(found.totals < 100) == pytest.approx(0.5, abs=1e-3)


def test_a_sum_of_independent_parts_adds_variance_by_hand():
    parts = tuple(Part(f"p{n}", 50, 100, 200) for n in range(4))
    sd = math.log(2) / END
    variance = 100**2 * math.exp(sd**2) * (math.exp(sd**2) - 1)
    assert np.var(outcome(Costs(parts)).totals) == pytest.approx(4 * variance, rel=0.03)


def test_parts_of_one_house_spread_further_than_parts_of_their_own():
    def wide(common):
        parts = tuple(Part(f"p{n}", 50, 100, 200, common=common) for n in range(6))
        found = outcome(Costs(parts))
        return found.high - found.low

    assert wide("the house") > 1.3 * wide("")


def test_an_event_costs_its_chance_times_its_cost_on_the_average():
    """4 % of 900 at all times is 36; 10,007 draws hit within one draw of the chance."""
    costs = Costs((Part("work", 1000, 1000, 1000),), events=(Event("colour", 0.04, 900, 900, 900),))
    found = outcome(costs)
    assert found.mean - 1000 == pytest.approx(36, abs=0.2)
    assert costs.likely == 1000
    assert found.above(1000) == pytest.approx(0.04, abs=1e-3)


def test_first_order_shares_of_a_sum_by_hand():
    """Log-normal amounts of 100 and 300 with one spread: variances as 1 to 9, so 10 and 90 %."""
    found = outcome(Costs((Part("small", 80, 100, 125), Part("large", 240, 300, 375))))
    shares = {one.name: one.share for one in found.drives}
    assert shares["large"] == pytest.approx(0.9, abs=0.02)
    assert shares["small"] == pytest.approx(0.1, abs=0.02)
    assert [one.name for one in found.drives] == ["large", "small"]


def test_the_share_of_an_event_is_its_own_variance_by_hand():
    """p (1 - p) c² beside another of the same: half each."""
    events = (Event("a", 0.2, 500, 500, 500), Event("b", 0.2, 500, 500, 500))
    found = outcome(Costs((Part("work", 10, 10, 10),), events=events))
    assert [one.share for one in found.drives] == pytest.approx([0.5, 0.5], abs=0.02)


def test_a_factor_multiplies_its_parts_alone():
    factor = Factor("an hour", 2, 2, 2)
    parts = (Part("work", 10, 10, 10, times=("an hour",)), Part("paint", 5, 5, 5))
    costs = Costs(parts, (factor,))
    assert costs.likely == outcome(costs).mean == 25


AMOUNTS = st.tuples(*[st.floats(0, 1e5)] * 3).map(sorted)


@given(st.lists(AMOUNTS, min_size=1, max_size=8), st.floats(0, 1))
def test_points_stand_in_order_and_nothing_is_below_nothing(amounts, chance):
    parts = tuple(Part(f"p{n}", *one, common="h") for n, one in enumerate(amounts))
    event = Event("e", chance, *amounts[0])
    found = outcome(Costs(parts, events=(event,)), draws=FEWER, drives=False)
    assert 0 <= found.low <= found.median <= found.high
    assert np.all(found.totals >= 0)


def test_the_same_question_gives_the_same_bytes():
    costs = Costs((Part("work", 50, 100, 200, common="h"),), events=(Event("e", 0.1, 1, 2, 3),))
    assert outcome(costs).totals.tobytes() == outcome(costs).totals.tobytes()


@pytest.mark.parametrize(
    "costs",
    [
        Costs((Part("turned", 5, 4, 6),)),
        Costs((Part("below", -1, 4, 6),)),
        Costs((), events=(Event("sure", 1.2, 1, 1, 1),)),
    ],
)
def test_ends_that_are_no_range_are_refused(costs):
    with pytest.raises(ValueError, match=r"no range|no chance"):
        outcome(costs)


def test_what_a_sure_event_costs_has_its_own_two_sides_by_hand():
    """Low a half, high four times what is likely: the 90 % point is likely x 4^(1.2816 / 1.6449),
    the 10 % point likely / 2^(1.2816 / 1.6449). With the ends swapped it would be turned about."""
    found = outcome(Costs((), events=(Event("rain", 1.0, 50, 100, 400),)))
    power = 1.2815515655 / END
    assert found.median == pytest.approx(100, rel=1e-3)
    assert found.high == pytest.approx(100 * 4**power, rel=1e-3)
    assert found.low == pytest.approx(100 / 2**power, rel=1e-3)
