"""Constants against values that other places print; temperatures outside are refused."""

import pytest
from tests.acid.phreeqc import ph_of

from farwall.acid.equilibrium import equilibrium
from farwall.acid.equilibrium_constants import constants
from farwall.acid.equilibrium_species import Totals
from farwall.errors import Unanswerable


def test_at_25_degrees_they_are_what_textbooks_print():
    """pK of water 13.995, of carbonic acid 6.352 and 10.329, Henry 1.468, calcite 8.480."""
    at = constants(25.0)
    found = [at.water, at.carbonic, at.bicarbonate, at.henry, at.calcite]
    assert found == pytest.approx([-13.995, -6.352, -10.329, -1.468, -8.480], abs=0.001)
    assert at.debye_a == pytest.approx(0.5095, abs=0.002)


@pytest.mark.parametrize(
    ("temperature_c", "printed"),
    [(5, 13.207), (10, 13.003), (15, 12.810), (20, 12.627), (25, 12.454), (30, 12.289),
     (35, 12.133), (40, 11.984)],
)  # fmt: skip
def test_saturated_lime_is_the_buffer_of_bates_from_memory(temperature_c, printed):
    """pH of calcium hydroxide saturated at 25 °C, R. G. Bates, Determination of pH, 1973, table of
    NBS standards, from memory. Ours is saturated at its own temperature: lime dissolves better in
    the cold, which is worth 0.03 at 5 °C; the rest of 0.05 is the activity of hydroxide."""
    found = equilibrium(Totals(calcium=0.1), temperature_c=temperature_c)
    assert found.lime > 0.07
    assert found.ph == pytest.approx(printed, abs=0.05)


@pytest.mark.parametrize("temperature_c", [5, 15, 30, 40])
@pytest.mark.parametrize(
    "totals",
    [
        Totals(hcl=0.1, sodium=0.11, carbon=0.11),
        Totals(hcl=0.05, ammonia=0.08),
        Totals(sodium=0.2, carbon=0.1),
        Totals(hcl=0.02, calcium=0.05, carbon=0.05),
    ],
)
@pytest.mark.parametrize("co2", ["closed", "1atm", "open"])
def test_other_temperatures_agree_with_phreeqc(temperature_c, totals, co2):
    found = equilibrium(totals, co2=co2, temperature_c=temperature_c, air_ppm=10**2.62)
    theirs, _ = ph_of(totals, co2=co2, temperature_c=temperature_c)
    assert found.ph == pytest.approx(theirs, abs=0.05)


@pytest.mark.parametrize("temperature_c", [-0.1, 50.1, float("nan")])
def test_other_temperatures_are_refused(temperature_c):
    with pytest.raises(Unanswerable, match="No constants"):
        constants(temperature_c)
