"""Species at a given acidity: carbonate by hand, and the search for carbon dioxide is a root."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid.equilibrium_activity import gammas
from farwall.acid.equilibrium_constants import constants
from farwall.acid.equilibrium_species import Mix, Totals

AMOUNT = st.floats(0, 4)


def mix(totals, *, held=None, cap=None, strength=0.1):
    at = constants(25.0)
    return Mix(totals, at, gammas(strength, 0.2, at), held, cap)


def test_half_is_bicarbonate_at_the_first_constant_by_hand():
    """In thin water at pH = pK 6.352 carbon dioxide and bicarbonate are as many."""
    found = mix(Totals(carbon=0.001), strength=0.0).species(10**-6.35186)
    assert found.co2 == pytest.approx(found.hco3, rel=0.005)
    assert found.co2 + found.hco3 == pytest.approx(0.001, rel=1e-3)


@given(AMOUNT, AMOUNT, AMOUNT, st.floats(-16, 1))
def test_carbon_and_calcium_add_up_at_any_acidity(sodium, calcium, carbon, log_h):
    found = mix(Totals(sodium=sodium, calcium=calcium, carbon=carbon)).species(10**log_h)
    assert found.carbon() + found.calcite == pytest.approx(carbon, rel=1e-9, abs=1e-12)
    held = found.ca + found.cahco3 + found.caco3 + found.caoh + found.lime + found.calcite
    assert held == pytest.approx(calcium, rel=1e-9, abs=1e-12)
    assert min(found) >= 0


@given(AMOUNT, AMOUNT, AMOUNT, st.floats(-15, 0), st.floats(0.01, 1))
def test_charge_rises_with_acidity(sodium, calcium, carbon, log_h, step):
    """What lets the search be bracketed."""
    totals = Totals(sodium=sodium, calcium=calcium, carbon=carbon)
    for way in ({}, {"cap": 0.034}, {"held": 1.4e-5}):
        at = mix(totals, **way)
        less, more = (at.species(10**x).charge(totals) for x in (log_h, log_h + step))
        assert more >= less - 1e-9 * max(1, abs(less))


def test_no_more_carbon_dioxide_than_the_cap():
    assert mix(Totals(carbon=1.0), cap=0.034).species(1e-3).co2_activity == pytest.approx(0.034)
