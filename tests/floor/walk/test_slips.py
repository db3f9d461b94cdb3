import pytest

from farwall.floor.walk.slips import likelihood, slips_of
from farwall.units import M_PER_FT, M_PER_IN


def near(found, wanted):
    return any(abs(one - wanted) < 1e-6 for one in found)


def test_a_foot_either_way_is_a_way_of_misreading_in_feet():
    found = slips_of(12 * M_PER_FT + 6 * M_PER_IN, us=True)
    assert near(found, M_PER_FT)
    assert near(found, -M_PER_FT)


def test_feet_changed_about_and_six_for_nine():
    found = slips_of(12 * M_PER_FT + 6 * M_PER_IN, us=True)
    assert near(found, (12 - 21) * M_PER_FT)  # 21 was meant
    assert near(found, -3 * M_PER_IN)  # 9 was meant, the tape upside down


def test_digits_changed_about_in_metres():
    found = slips_of(3.81, us=False)
    assert near(found, 3.81 - 3.18)
    assert near(found, 3.81 - 8.31)


def test_nothing_is_misread_from_a_length_below_nothing():
    assert all(0.2 - one > 0 for one in slips_of(0.2, us=True))


def test_a_known_way_is_likelier_than_an_odd_size_beside_it():
    known = slips_of(12 * M_PER_FT, us=True)
    assert likelihood(M_PER_FT, 0.005, known) > 2 * likelihood(0.22, 0.005, known)


def test_densities_add_up_to_one():
    known = slips_of(3.81, us=False)
    step = 0.001
    total = sum(likelihood(k * step, 0.02, known) * step for k in range(-9000, 9000))
    assert total == pytest.approx(1.0, abs=0.02)
