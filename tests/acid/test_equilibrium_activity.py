"""Activity coefficients: by hand, and against the published mean coefficient of salt."""

import pytest

from farwall.acid.equilibrium_activity import gammas
from farwall.acid.equilibrium_constants import constants


def test_thin_water_acts_as_it_is():
    assert list(gammas(0.0, 0.0, constants(25.0))) == pytest.approx([1.0] * 11)


def test_hydrogen_at_a_tenth_by_hand():
    """log10 γ = -0.5108·0.31623/(1 + 0.32866·9·0.31623) = -0.16153/1.93538 = -0.08346."""
    assert gammas(0.1, 0.0, constants(25.0)).h == pytest.approx(10**-0.08346, rel=1e-4)


@pytest.mark.parametrize(("molal", "printed"), [(0.1, 0.778), (0.5, 0.681), (1.0, 0.657)])
def test_salt_robinson_and_stokes_from_memory(molal, printed):
    """Mean coefficient of NaCl at 25 °C, Robinson and Stokes 1959, appendix 8.10, from memory.
    Chloride has the row of potassium here, so its mean with sodium is ours to 3 %."""
    at = gammas(molal, 2 * molal, constants(25.0))
    chloride = 10 ** (-0.5108 * molal**0.5 / (1 + 0.32866 * 3.5 * molal**0.5) + 0.015 * molal)
    assert (at.na * chloride) ** 0.5 == pytest.approx(printed, rel=0.03)


def test_water_is_less_where_much_is_dissolved_by_hand():
    assert gammas(1.0, 2.0, constants(25.0)).water == pytest.approx(1 - 0.034)
