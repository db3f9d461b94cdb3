"""Slots: what is open when, and half days."""

import numpy as np
from tests.days.shop import MONDAY, steady

from farwall.days.clock import PER_DAY, half_day, half_days, site_clock
from farwall.days.hours import mild, with_rain


def test_weekends_and_days_of_other_trades_are_shut():
    clock = site_clock(mild(MONDAY, 7), shut_days={1})
    worked = clock.open["any"].reshape(7, PER_DAY).any(axis=1)
    assert worked.tolist() == [True, False, True, True, True, False, False]


def test_stain_may_run_on_into_the_evening_and_sealer_may_not():
    clock = site_clock(mild(MONDAY, 1))
    last = {place: int(np.flatnonzero(allowed)[-1]) for place, allowed in clock.open.items()}
    assert last["coat"] == last["rinse"] == 18 * 4 + 1
    assert last["seal"] == last["any"] == 17 * 4 - 1


def test_a_cold_slab_lets_no_stain_down_but_masking_goes_on():
    clock = site_clock(steady(45, 50, days=2))
    assert not clock.open["coat"].any()
    assert clock.open["any"].any()


def test_waits_run_at_the_pace_of_the_hours_by_hand():
    """On a wet day a film dries at 0.4: 60 mild minutes take 150, which is 10 slots."""
    clock = site_clock(with_rain(mild(MONDAY, 2), [0]))
    assert int(clock.until("film", np.array([40]), 60.0)[0]) == 50


def test_half_days_part_at_noon_and_early_mornings_belong_to_none():
    assert half_day(47) == 0
    assert half_day(48) == 1
    assert list(half_days(40, 49)) == [0, 1]
    assert list(half_days(60, PER_DAY + 30)) == [1]
    assert list(half_days(60, PER_DAY + 31)) == [1, 2]
