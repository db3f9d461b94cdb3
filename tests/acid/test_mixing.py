"""Pouring together: mass, acid and heat are kept, in whatever order and in whatever portions."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid.mixing import Poured, together
from farwall.errors import Refused

PARTS = st.lists(
    st.builds(Poured, st.floats(0.01, 50), st.floats(0, 38), st.floats(5, 35)),
    min_size=1,
    max_size=5,
)


@given(PARTS)
def test_mass_acid_and_heat_are_kept(parts):
    whole = together(parts).whole
    assert whole.mass_kg == pytest.approx(sum(p.mass_kg for p in parts))
    assert whole.hcl_kg == pytest.approx(sum(p.hcl_kg for p in parts))
    kept = sum(p.enthalpy_kj for p in parts)
    assert whole.enthalpy_kj == pytest.approx(kept, abs=1e-9 * (1 + abs(kept)), rel=1e-9)


@given(PARTS, st.randoms(use_true_random=False))
def test_the_order_of_pouring_changes_nothing(parts, chance):
    other = list(parts)
    chance.shuffle(other)
    one, two = together(parts), together(other)
    assert two.whole.hcl_percent == pytest.approx(one.whole.hcl_percent)
    assert two.whole.temperature_c == pytest.approx(one.whole.temperature_c, abs=1e-7)
    assert two.heat_kj == pytest.approx(one.heat_kj, abs=1e-6)


@given(PARTS)
def test_one_after_the_other_is_the_same_as_all_at_once(parts):
    tub = parts[0]
    for part in parts[1:]:
        tub = together([tub, part]).whole
    at_once = together(parts).whole
    assert tub.hcl_percent == pytest.approx(at_once.hcl_percent, abs=1e-9)
    assert tub.temperature_c == pytest.approx(at_once.temperature_c, abs=1e-7)


@given(PARTS, st.floats(0.05, 0.95))
def test_a_split_batch_sums_to_the_whole(parts, share):
    left = together([Poured(p.mass_kg * share, p.hcl_percent, p.temperature_c) for p in parts])
    right = together(
        [Poured(p.mass_kg * (1 - share), p.hcl_percent, p.temperature_c) for p in parts]
    )
    whole = together(parts)
    assert left.heat_kj + right.heat_kj == pytest.approx(whole.heat_kj, abs=1e-6)
    assert left.whole.volume_l + right.whole.volume_l == pytest.approx(whole.whole.volume_l)
    assert left.shrinks_l + right.shrinks_l == pytest.approx(whole.shrinks_l, abs=1e-9)


@given(st.lists(st.floats(0.01, 50), min_size=2, max_size=5))
def test_the_strongest_acid_poured_together_is_no_stronger(masses_kg):
    parts = [Poured(mass, 38.0, 20.0) for mass in masses_kg]
    assert together(parts).whole.hcl_percent == pytest.approx(38.0)
    assert together(parts).whole.hcl_percent <= 38.0


@given(st.floats(0.1, 10), st.floats(1, 38), st.floats(0.1, 10))
def test_acid_and_water_of_one_warmth_get_warmer_and_never_cooler(acid, percent, water):
    mixed = together([Poured(water, 0, 20), Poured(acid, percent, 20)])
    assert mixed.whole.temperature_c > 20
    assert mixed.heat_kj > 0


def test_two_kilograms_by_hand():
    """1 kg of 31.45 % into 1 kg of water, both 25 °C.

    8.6264 mol; 12.584 mol/kg becomes 5.1180: by the table (10: 10.24, 15: 15.40; 5: 5.318,
    5.5506: 5.841) straight between, 12.907 less 5.430 = 7.48 kJ/mol, 64.5 kJ. Over 2 kg at about
    3.18 kJ/(kg·K): 10.1 K. The curve in the tool is not straight: 3 %.
    """
    mixed = together([Poured(1, 0, 25), Poured(1, 31.45, 25)])
    assert mixed.whole.hcl_percent == pytest.approx(15.725)
    assert mixed.heat_kj == pytest.approx(64.5, rel=0.03)
    assert mixed.whole.temperature_c - 25 == pytest.approx(10.1, rel=0.04)


def test_plain_water_of_two_warmths_meets_in_the_middle():
    mixed = together([Poured(1, 0, 10), Poured(3, 0, 30)])
    assert mixed.whole.temperature_c == pytest.approx(25)
    assert mixed.heat_kj == pytest.approx(0)


def test_every_fault_is_told_at_once():
    with pytest.raises(Refused) as refused:
        together([Poured(0, 10, 20), Poured(1, 50, 20)])
    assert [m.where for m in refused.value.mistakes] == ["part 1", "part 2"]
    with pytest.raises(Refused, match="Nothing was poured"):
        together([])
