"""Figures of a log: the units of the job first, each kind by hand."""

import pytest

from farwall.job.story.figures import coverage, figure, litres_told

BY_HAND = [
    ("litres", 3.785411784, "1.0 gal", "3.8 L"),
    ("celsius", 20.0, "68 °F", "20 °C"),
    ("m_s", 0.3, "59 ft/min", "0.3 m/s"),
    ("metres", 3.048, "10 ft", "3.0 m"),
    ("l_min", 3.785411784, "1.00 gal/min", "3.8 L/min"),
    ("m2", 10.0, "108 ft²", "10.0 m²"),
    ("spot_m2", 0.37, "4.0 ft²", "0.37 m²"),
    ("kg", 0.45359237, "1.00 lb", "0.454 kg"),
    ("place_m", 0.3048, "1.0 ft", "0.30 m"),
]
"""A gallon is 3.785411784 L, a foot 0.3048 m, a pound 0.45359237 kg, all by definition."""


@pytest.mark.parametrize(("kind", "value", "american", "metric"), BY_HAND)
def test_a_job_reads_its_own_units_first(kind, value, american, metric):
    assert figure(kind, value, us=True) == f"{american} ({metric})"
    assert figure(kind, value, us=False) == f"{metric} ({american})"


def test_what_both_measure_alike_is_told_once():
    assert figure("minutes", 4.5, us=True) == figure("minutes", 4.5, us=False) == "4.5 min"
    assert figure("count", 3, us=True) == "3"


def test_coverage_by_hand():
    """200 ft² a gallon is 18.58 m² on 3.785 L."""
    one = 3.785411784 / (200 * 0.09290304)
    assert coverage(one) == "200 ft²/gal (0.204 L/m²)"
    assert coverage(one, us=False) == "0.204 L/m² (200 ft²/gal)"


def test_litres_of_a_sentence_have_gallons_first_in_a_job_in_feet():
    said = "Coat 1: 13.4 L are told to be left, and only 11.1 L were mixed (2.0 gal (7.6 L))."
    told = litres_told(said, us=True)
    assert told.startswith(
        "Coat 1: 3.5 gal (13.4 L) are told to be left, and only 2.9 gal (11.1 L)"
    )
    assert told.endswith("(2.0 gal (7.6 L)).")
    assert litres_told(said, us=False) == said.replace("2.0 gal (7.6 L)", "7.6 L (2.0 gal)")
