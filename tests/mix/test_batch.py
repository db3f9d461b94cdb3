"""One batch: volumes, strength, and what is refused."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.mix.batch import (
    ADDED_ACID_WARNINGS,
    CHROMATE_UNKNOWN,
    OXIDISER_UNKNOWN,
    TRADE_ACID_KG_L,
    TRADE_ACID_PERCENT,
    fills,
    make_batch,
)
from farwall.mix.cut import Cut
from farwall.units import gal_from_l, l_from_gal

EVEN = Cut(1, 1)
cuts = st.builds(Cut, st.integers(1, 9).map(float), st.integers(0, 20).map(float))
amounts = st.floats(0.1, 500)


@pytest.mark.common_practice
def test_two_gallons_of_stain_and_two_of_water_make_the_first_four():
    batch = make_batch(cut=EVEN, total_l=l_from_gal(4))
    assert gal_from_l(batch.stain_l) == pytest.approx(2)
    assert gal_from_l(batch.water_l) == pytest.approx(2)


@pytest.mark.common_practice
def test_four_gallons_of_stain_at_one_to_one_are_eight_gallons_mixed():
    assert gal_from_l(make_batch(cut=EVEN, stain_l=l_from_gal(4)).total_l) == pytest.approx(8)


@pytest.mark.common_practice
def test_eight_fluid_ounces_of_added_acid_a_gallon_by_hand():
    """Hand-worked: 8 fl oz/gal = 62.5 mL/L; 10 L of cut mix take 0.625 L on top. A stain of 10 %
    at 1.15 kg/L: (0.1 x 5.75 + 0.3145 x 0.725) / (5.75 + 5 + 0.725) = 6.998 %."""
    batch = make_batch(
        cut=EVEN,
        total_l=10,
        acid_ml_per_l=62.5,
        stain_hcl_percent=(10, 10),
        stain_density_kg_l=1.15,
        chromate=False,
    )
    assert batch.acid_l == pytest.approx(0.625)
    assert batch.total_l == pytest.approx(10.625)
    assert batch.hcl_percent_low == pytest.approx(6.998, abs=1e-3)
    assert batch.hcl_percent_high == batch.hcl_percent_low


def test_trade_acid_is_the_twenty_degree_row_of_the_baume_table():
    """20 degrees Baumé: 31.45 % HCl; 145/(145 - 20) = 1.16 exactly."""
    assert TRADE_ACID_PERCENT.value == 31.45
    assert TRADE_ACID_KG_L.value == pytest.approx(145 / (145 - 20))


def test_dilution_alone_by_hand():
    """Hand-worked: 20 % at 1.3 kg/L cut 1:2 is 0.26 / (1.3 + 2) = 7.879 %."""
    batch = make_batch(cut=Cut(1, 2), total_l=9, stain_hcl_percent=(20, 20), stain_density_kg_l=1.3)
    assert batch.hcl_percent_high == pytest.approx(7.879, abs=1e-3)


def test_added_acid_always_comes_with_its_three_warnings():
    known = make_batch(cut=EVEN, total_l=4, acid_ml_per_l=1, chromate=False, oxidiser=False)
    unknown = make_batch(cut=EVEN, total_l=4, acid_ml_per_l=1)
    assert known.warnings == ADDED_ACID_WARNINGS
    assert len(ADDED_ACID_WARNINGS) == 3
    assert unknown.warnings == (*ADDED_ACID_WARNINGS, CHROMATE_UNKNOWN, OXIDISER_UNKNOWN)
    assert make_batch(cut=EVEN, total_l=4).warnings == ()


def test_no_acid_is_added_where_the_sheet_names_chromate():
    with pytest.raises(Refused, match="chromate"):
        make_batch(cut=EVEN, total_l=4, acid_ml_per_l=1, chromate=True)
    assert make_batch(cut=EVEN, total_l=4, chromate=True).acid_l == 0


def test_no_acid_is_added_where_the_sheet_names_an_oxidiser():
    with pytest.raises(Refused, match="chlorine"):
        make_batch(cut=EVEN, total_l=4, acid_ml_per_l=1, oxidiser=True)
    with pytest.raises(Refused) as both:
        make_batch(cut=EVEN, total_l=4, acid_ml_per_l=1, oxidiser=True, chromate=True)
    assert len(both.value.mistakes) == 2
    assert make_batch(cut=EVEN, total_l=4, oxidiser=True).warnings == ()


def test_a_strength_that_no_sheet_gave_is_not_made_up():
    batch = make_batch(cut=EVEN, total_l=4, acid_ml_per_l=60, chromate=False)
    assert batch.hcl_percent_low is None
    assert batch.hcl_percent_high is None


@pytest.mark.parametrize(
    "amounts", [{}, {"total_l": 4, "stain_l": 2}, {"total_l": 0}, {"stain_l": -1},
                {"total_l": math.inf}, {"stain_l": math.nan}]
)  # fmt: skip
def test_one_amount_above_nothing_is_asked_for(amounts):
    with pytest.raises(Refused):
        make_batch(cut=EVEN, **amounts)


@given(cuts, amounts)
def test_total_and_stain_are_two_ways_to_the_same_batch(cut, total_l):
    by_total = make_batch(cut=cut, total_l=total_l)
    by_stain = make_batch(cut=cut, stain_l=by_total.stain_l)
    assert by_stain.water_l == pytest.approx(by_total.water_l, rel=1e-9, abs=1e-12)
    assert by_total.total_l == pytest.approx(total_l, rel=1e-9)
    assert by_total.stain_l / by_total.total_l == pytest.approx(cut.stain_share, rel=1e-9)


@given(cuts, amounts, st.floats(1, 20), st.floats(0, 100))
def test_a_mix_is_never_stronger_than_the_strongest_thing_in_it(cut, total_l, percent, acid):
    batch = make_batch(
        cut=cut,
        total_l=total_l,
        acid_ml_per_l=acid,
        stain_hcl_percent=(percent / 2, percent),
        chromate=False,
    )
    strongest = max(percent, 31.45 if acid else 0)
    assert 0 < batch.hcl_percent_low <= batch.hcl_percent_high <= strongest * (1 + 1e-12)


@given(amounts, st.floats(1, 20))
def test_tanks_hold_the_whole_batch_and_none_is_overfull(litres, tank_l):
    tanks = fills(litres, tank_l)
    assert math.fsum(tanks) == pytest.approx(litres, rel=1e-6)
    assert all(0 < tank <= tank_l * (1 + 1e-9) for tank in tanks)
    assert all(tank == tank_l for tank in tanks[:-1])
