"""Hours until the gas has left: a closed form, by hand, and what buffers."""

from itertools import pairwise
from math import log

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid.bases import BASES
from farwall.acid.equilibrium import equilibrium
from farwall.acid.equilibrium_species import Totals
from farwall.acid.gas_leaving import hours_until, transfer_m_h
from farwall.acid.neutralise import water_after
from farwall.errors import Refused

SOUR = Totals(hcl=0.1)


def test_sour_water_follows_the_closed_form_by_hand():
    """In acid all carbon is gas: t = d/k·ln((1 - a)/(p - a)), here 0.3/0.0207·ln(1/0.0996)."""
    found = hours_until(SOUR, 0.1, depth_m=0.3)
    assert found == pytest.approx(
        0.3 / transfer_m_h(20) * log((1 - 425e-6) / (0.1 - 425e-6)), rel=1e-4
    )
    assert found == pytest.approx(33.4, abs=0.5)


@given(st.floats(0.002, 0.9), st.floats(0.05, 1.0))
def test_time_goes_with_depth_and_adds_up(left_atm, depth_m):
    whole = hours_until(SOUR, left_atm, depth_m=depth_m)
    assert hours_until(SOUR, left_atm, depth_m=2 * depth_m) == pytest.approx(2 * whole)
    assert hours_until(SOUR, left_atm / 1.5, depth_m=depth_m) > whole > 0


def test_bicarbonate_left_over_holds_the_gas_back():
    just, more = (
        hours_until(water_after(BASES["NaHCO3"], 0.1, share), 0.01, depth_m=0.3)
        for share in (1.0, 1.2)
    )
    assert more > just


def test_cold_water_lets_it_go_more_slowly():
    assert transfer_m_h(5) < transfer_m_h(20) == pytest.approx(0.0207, rel=0.01)


def test_no_time_has_passed_in_fresh_fizz_and_the_airs_own_is_never_quite_reached():
    assert hours_until(SOUR, 1.0, depth_m=0.3) == 0
    with pytest.raises(Refused, match="between"):
        hours_until(SOUR, 425e-6, depth_m=0.3)


def test_the_root_of_six_hundred_over_the_schmidt_number_by_hand():
    """By hand at 5 °C: 1911.1 - 590.55 + 86.32 - 5.17 = 1401.7; the root of 600 / 1401.7 is 0.6543,
    so 0.01354 m/h."""
    assert transfer_m_h(5) == pytest.approx(0.013543, abs=2e-6)


def test_what_bicarbonate_holds_back_is_summed_as_finely_as_need_be():
    """The same integral in 300 even steps of log pressure, straight between them."""
    totals = water_after(BASES["NaHCO3"], 0.1, 1.5)

    def held(atm):
        found = equilibrium(totals, co2="open", temperature_c=20.0, air_ppm=atm * 1e6)
        return found.dissolved_carbon, found.species.co2

    at_air = held(425e-6)[1]
    course = [held(10 ** (-2 * n / 300)) for n in range(301)]
    hours = sum(
        (carbon - less) / ((gas + below) / 2 - at_air)
        for (carbon, gas), (less, below) in pairwise(course)
    ) * 0.3 / transfer_m_h(20)  # fmt: skip
    assert hours_until(totals, 0.01, depth_m=0.3) == pytest.approx(hours, rel=0.01)
