"""Heats: the table at its points, its first slope, and the smooth curve beside it."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid import heat
from farwall.errors import Refused


def test_thin_acid_follows_debye_and_hueckel():
    """Held out by the table's own slope at its thinnest points: its rounding is 0.0005 kJ."""
    root = np.sqrt(0.00278)
    assert heat.heat_of_dilution_kj_mol(0.00278) == pytest.approx(1.986 * root, rel=0.05)
    assert heat.heat_of_dilution_kj_mol(0) == 0


@given(st.floats(0, 55), st.floats(0.001, 0.5))
def test_more_heat_the_stronger(molality, more):
    assert heat.heat_of_dilution_kj_mol(molality + more) > heat.heat_of_dilution_kj_mol(molality)


def test_the_smooth_curve_passes_the_table_within_0_7_percent():
    """Its apparent enthalpy by Gibbs and Duhem: n·apparent = acid + water's share."""
    molal = np.array([1, 2, 3, 4, 5, 6, 8, 10, 15, 20.0])
    acid, water = heat.partial_heats_j_mol(molal)
    apparent = (acid * molal + water * 1000 / 18.015) / molal / 1000
    table = [heat.heat_of_dilution_kj_mol(m) for m in molal]
    assert np.abs(apparent / table - 1).max() < 0.007


def test_water_in_strong_acid_loses_heat():
    acid, water = heat.partial_heats_j_mol(np.array([0.5, 5.0, 15.0]))
    assert (water < 0).all()
    assert (np.diff(acid) > 0).all()


def test_heat_capacity_falls_with_strength():
    points = [heat.heat_capacity_kj_kg_k(p) for p in range(0, 39, 2)]
    assert points == sorted(points, reverse=True)
    assert heat.heat_capacity_kj_kg_k(0) == pytest.approx(4.182)


def test_heat_capacity_of_thin_acid_agrees_with_another_correlation_within_1_percent():
    """Laliberté 2009, HCl to 6.5 %, at 5 % and 20 °C, worked by hand.

    α = -0.0162261·20 + 0.7601456·e^0.2 - 0.2517937·0.05 = 0.5913; of the acid itself
    -1.443734·e^α - 0.0853888·0.05^-0.373972 = -2.870 kJ/(kg·K); 0.95·4.182 - 0.05·2.870 = 3.829.
    """
    assert heat.heat_capacity_kj_kg_k(5) == pytest.approx(3.829, rel=0.01)


def test_partial_heat_capacities_add_up_to_that_of_the_solution():
    """At 30 %: on 1 kg of water 11.755 mol; a parabola through a table of two figures, 1 %."""
    molal = np.asarray(11.7552)
    acid, water = heat.partial_heat_capacities_j_mol_k(molal)
    whole = (4182 + 11.7552 * acid + 1000 / 18.015 * water) / (1000 / 0.7)
    assert whole == pytest.approx(heat.heat_capacity_kj_kg_k(30), rel=0.01)


def test_outside_the_tables_is_refused():
    for molality in (-0.1, 56, float("nan")):
        with pytest.raises(Refused, match="outside the table"):
            heat.heat_of_dilution_kj_mol(molality)
    with pytest.raises(Refused, match="outside the table"):
        heat.heat_capacity_kj_kg_k(38.1)
