"""One house by the quarter of an hour: laws, a brute oracle, and what the trade says."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.days.shop import MONDAY, steady

from farwall.days.chain import links, walk
from farwall.days.clock import PER_DAY, site_clock
from farwall.days.hours import mild, with_rain
from farwall.days.nouns import MILD_HOUR, Ahead
from farwall.days.practice import chain
from farwall.days.work_hours import TYPICAL_M2
from farwall.evidence import Rank

MORNING = 30


def walked(ahead, *, people=2, area_m2=TYPICAL_M2, start=MORNING, hold=None):
    steps = links(chain(2), site_clock(ahead), area_m2=area_m2, people=people)
    return walk(steps, start, hold=hold or {})


def by_id(ahead, **rest):
    return {one.step.id: one for one in walked(ahead, **rest)}


def hour_of(slot):
    return slot % PER_DAY / 4


@pytest.mark.common_practice
def test_a_mild_week_falls_out_as_the_trade_tells_it_no_source():
    """No source: clean, two coats, neutralise, a day or two to dry, seal, hand over; 4-5 days."""
    steps = by_id(mild(MONDAY, 14))
    days = {name: one.start // PER_DAY + 1 for name, one in steps.items()}
    assert days["clean"] == 1
    assert days["mask"] == days["coat-1"] == days["coat-2"] == 2
    assert days["neutralise"] == 3
    assert days["seal-1"] - days["neutralise"] in {1, 2}
    assert days["hand-over"] == 5
    assert 10 <= hour_of(steps["coat-1"].start) <= 12
    assert 13 <= hour_of(steps["coat-2"].start) <= 15.5


@pytest.mark.common_practice
def test_at_50_f_the_second_coat_slips_towards_evening_no_source():
    """No source: at about 50 °F a coat is not dry after three hours."""
    steps = by_id(steady(50, 45))
    dry = (steps["coat-2"].ready - steps["coat-1"].end) / 4
    assert dry > 3
    assert steps["coat-2"].start // PER_DAY == steps["coat-1"].start // PER_DAY
    assert 16 <= hour_of(steps["coat-2"].start) <= 18


@pytest.mark.common_practice
def test_in_high_summer_the_second_coat_is_down_far_earlier_no_source():
    """No source: far quicker in heat; here the warmest slab that may be stained, dry air."""
    hot, even, cold = (by_id(one) for one in (steady(84, 25), mild(MONDAY, 14), steady(50, 45)))
    waits = [one["coat-2"].ready - one["coat-1"].end for one in (hot, even, cold)]
    assert waits[0] <= waits[1] - 3
    assert waits[1] <= waits[2] - 6
    assert hot["hand-over"].end < even["hand-over"].end < cold["hand-over"].end


def test_no_chain_fits_where_the_slab_is_always_too_cold():
    steps = links(chain(2), site_clock(steady(45, 50)), area_m2=100, people=2)
    assert walk(steps, MORNING, hold={}) is None


def test_a_dwell_does_not_run_over_a_weekend():
    for day in range(5):
        found = by_id(mild(MONDAY, 28), start=day * PER_DAY + MORNING)
        assert found["neutralise"].start - found["coat-2"].end <= PER_DAY


def test_sealer_held_back_comes_later_and_keeps_its_window_of_recoating():
    plain, held = by_id(mild(MONDAY, 28)), by_id(mild(MONDAY, 28), hold={"seal-1": PER_DAY})
    assert held["seal-1"].start >= plain["seal-1"].ready + PER_DAY
    assert held["seal-2"].start - held["seal-1"].end <= PER_DAY


def test_a_rinse_longer_than_a_day_is_parted_and_not_begun_in_the_last_hours():
    found = by_id(mild(MONDAY, 40), area_m2=260)["neutralise"]
    assert found.end // PER_DAY > found.start // PER_DAY
    assert hour_of(found.start) <= 16.5


weather = st.lists(
    st.sampled_from(
        [MILD_HOUR, replace(MILD_HOUR, film=0.4, slab=0.6, sealer=0.6, seal=False),
         replace(MILD_HOUR, coat=False, film=1.8)]
    ),
    min_size=5, max_size=8,
)  # fmt: skip


@settings(max_examples=40)
@given(weather, st.integers(0, 4))
def test_the_first_start_that_can_be_done_is_found_and_no_earlier_end_exists(days, day):
    """Against every start of every step, tried one by one."""
    hours = tuple(one for one in [*days, *[MILD_HOUR] * 9] for _ in range(24))
    clock = site_clock(Ahead(MONDAY, hours, Rank.GUESS, "a test"))
    steps = links(chain(1), clock, area_m2=60, people=2)
    start = day * PER_DAY + MORNING
    found = walk(steps, start, hold={})
    best = _searched(steps, start)
    assert (found[-1].end if found else None) == best


def _searched(steps, start):
    """The earliest end of the chain begun at `start`, over every start of every later step."""
    count = len(steps[0].first) - 1
    best = np.full(count + 1, np.inf)
    for n in range(len(steps) - 1, -1, -1):
        here = np.full(count + 1, np.inf)
        for begin in range(count):
            end = int(steps[n].ends[begin])
            if end > count:
                continue
            if n == len(steps) - 1:
                here[begin] = end
                continue
            ready, latest = int(steps[n + 1].ready[end]), int(steps[n + 1].latest[end])
            here[begin] = best[ready : latest + 1].min(initial=np.inf)
        best = here
    return None if np.isinf(best[start]) else int(best[start])


@given(st.integers(0, 9), st.integers(0, 9))
def test_a_later_start_never_ends_earlier(one, other):
    chain_of = links(chain(2), site_clock(mild(MONDAY, 40)), area_m2=140, people=2)
    early, late = (walk(chain_of, day * PER_DAY + MORNING, hold={}) for day in sorted((one, other)))
    if early and late:
        assert early[-1].end <= late[-1].end


def test_rain_on_a_day_never_brings_a_house_forward():
    dry = walked(mild(MONDAY, 28))[-1].end
    for day in range(9):
        rained = walked(with_rain(mild(MONDAY, 28), [day]))
        assert rained is None or rained[-1].end >= dry
