"""The chain of a house begun on each date: by hand on mild days, and what can only slow it."""

import numpy as np
import pytest

from farwall.air.conditions import Conditions
from farwall.air.sealers import BY_TYPE, UNKNOWN
from farwall.job.year_chain import allowed, days_to_seal, next_at
from farwall.job.year_hours import seal_hours, stain_hours

MILD = Conditions()
ACRYLIC = BY_TYPE["water acrylic"]


def chain(hours, limits=ACRYLIC, end="likely"):
    free = allowed(stain_hours(hours), seal_hours(hours, limits))
    return days_to_seal(hours, free, limits, end=end)


def test_mild_days_by_hand():
    """By hand, an acrylic. Work 8-18. Cleaning and masking 9 + 4 h: to Tuesday 11:00. Coat 1 of
    2 h to 13:00, 2 h to 15:00, coat 2 to 17:00. Dwell 8 h: 1:00, rinsing 8 h on Wednesday, 8 to
    16:00. Dry-down 24 h: Thursday 16:00, sealer 2 h to 18:00; 3 h, so coat 2 on Friday 8:00: the
    fifth day."""
    assert chain([MILD] * 24 * 30) == pytest.approx(5.0)


def test_a_sealer_that_waits_twelve_hours_is_no_sooner():
    mild = [MILD] * 24 * 30
    assert (chain(mild, UNKNOWN) >= chain(mild)).all()
    assert (chain(mild, end="high") > chain(mild)).all()


def test_a_cold_spell_puts_off_what_is_begun_before_it():
    """Ten cold days from the 11th: a house begun on the 10th waits for their end."""
    cold = Conditions(4.0, 4.0, 50.0)
    hours = [MILD] * 24 * 10 + [cold] * 24 * 10 + [MILD] * 24 * 20
    found, mild = chain(hours), chain([MILD] * 24 * 40)
    assert found[0] == mild[0]
    assert found[9] >= 10 + 3
    assert (found >= mild).all()
    assert found[25] == mild[25]


def test_a_year_too_cold_never_ends():
    assert np.isnan(chain([Conditions(5.0, 5.0, 50.0)] * 24 * 90)).all()


def test_the_next_that_is_fine_by_hand():
    fine = np.array([False, True, False, False, True, False])
    assert next_at(fine)[:5].tolist() == [1, 1, 4, 4, 4]
    assert next_at(fine)[5] > len(fine)


def test_a_later_beginning_is_never_sealed_sooner():
    rng = np.random.default_rng(7)
    hours = [
        Conditions(15 + 6 * np.sin(n / 80), 15 + 8 * np.sin(n / 80 + 0.3), 30 + 60 * rng.random())
        for n in range(24 * 60)
    ]
    found = chain(hours)
    ends = np.arange(60) + found
    known = ends[~np.isnan(ends)]
    assert len(known) > 20
    assert (np.diff(known) >= 0).all()
