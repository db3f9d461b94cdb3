"""One tub: by hand, its ends, and what added acid and salts do to the vapour."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.job.acid_day.strength.noun import Ends
from farwall.job.acid_day.strength.tub import Tub, figures_of, mixtures
from farwall.units import L_PER_US_FL_OZ, l_from_gal


def tub(**told):
    usual = {
        "water_l": 1.0,
        "stain_l": 1.0,
        "acid_l": 0.0,
        "percent": Ends(10.0, 10.0),
        "density_kg_l": 1.15,
        "start_c": 20.0,
        "salts": {},
    }
    return Tub(**usual | told)


@pytest.mark.common_practice
def test_trade_figure_no_source_32_fl_oz_on_4_gallons_of_one_to_one():
    """By hand: 2 gal of 10 % at 1.15 kg/L, 2 gal of water, 32 fl oz of 31.45 % at 1.16 kg/L.

    0.8706 kg and 0.3453 kg of HCl in 8.706 + 7.557 + 1.098 kg: 5.35 % without the acid, 7.00 %
    with it; 1.2159 kg over 36.458 g/mol in 16.088 L: 2.073 mol/L.
    """
    gallons = l_from_gal(2)
    found = figures_of(
        tub(water_l=gallons, stain_l=gallons, acid_l=32 * L_PER_US_FL_OZ), l_per_m2=0.2
    )
    assert found.cut_percent.low == pytest.approx(5.35, abs=0.01)
    assert found.tub_percent.low == pytest.approx(7.00, abs=0.02)
    assert found.mol_per_l.high == pytest.approx(2.073, rel=0.005)
    assert found.mol_per_m2.low == pytest.approx(0.2 * 2.073, rel=0.005)
    assert 0 < found.shrinks_ml_per_l.high < 2
    assert found.times_by_acid is not None
    assert 2 < found.times_by_acid.low < 3


def test_a_film_of_the_trade_by_hand():
    """0.20 mm of 1:1 from 10 % at about 1.1 kg/L is about 1.5 mol/L and 0.3 mol/m²."""
    found = figures_of(tub(density_kg_l=1.1), l_per_m2=0.2)
    assert found.mol_per_l.low == pytest.approx(1.5, rel=0.02)
    assert found.mol_per_m2.low == pytest.approx(0.3, rel=0.02)


def test_what_the_sheet_leaves_open_opens_the_range():
    found = figures_of(tub(percent=Ends(5, 20), density_kg_l=None), l_per_m2=0.2)
    assert len(mixtures(tub(percent=Ends(5, 20), density_kg_l=None))) == 4
    assert found.tub_percent.high > 3 * found.tub_percent.low
    assert found.tub_c.low == 20
    assert found.tub_c.high > 23
    assert found.over_liquid_ppm.high > 10 * found.over_liquid_ppm.low


@given(st.floats(0, 38), st.floats(0.1, 5), st.floats(0, 5), st.floats(0, 0.5))
def test_acid_is_kept_and_added_acid_makes_a_weaker_mix_stronger(percent, stain, water, acid):
    made = tub(
        percent=Ends(percent, percent), stain_l=stain, water_l=water, acid_l=acid, start_c=15.0
    )
    (mixed,) = mixtures(made)
    added = mixed.whole.hcl_kg - stain * 1.15 * percent / 100
    assert added == pytest.approx(acid * 0.3145 * 1.159, rel=2e-3, abs=1e-9)
    found = figures_of(made, l_per_m2=0.2)
    if acid > 0.001 and percent < 31:
        assert found.tub_percent.low >= found.cut_percent.low


def test_salts_are_listed_or_nothing_is_guessed():
    assert figures_of(tub(), l_per_m2=0.2).times_by_salts is None
    assert figures_of(tub(salts={"other": Ends(5, 9)}), l_per_m2=0.2).times_by_salts is None
    found = figures_of(tub(salts={"iron(III) chloride": Ends(5, 30)}), l_per_m2=0.2)
    assert found.times_by_salts is not None
    assert 1 < found.times_by_salts.low < found.times_by_salts.high
    too_much = {"iron(III) chloride": Ends(5, 100), "calcium chloride": Ends(5, 100)}
    assert figures_of(tub(salts=too_much, water_l=0.0), l_per_m2=0.2).times_by_salts is None


def test_neat_stain_is_not_warmed_by_water():
    found = figures_of(tub(water_l=0.0), l_per_m2=0.2)
    assert found.tub_c == Ends(20, 20)
    assert found.tub_percent.low == pytest.approx(10)
    assert found.heat_kj_per_l.high == pytest.approx(0, abs=1e-9)
