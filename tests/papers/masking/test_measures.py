"""Lengths and areas that a masker reads: thousands are told apart, as everywhere else."""

import pytest

from farwall.papers.masking.measures import run, spread


@pytest.mark.parametrize(
    ("units", "long", "wide"),
    [("us", "3,281 ft", "10,764 ft²"), ("metric", "1000.0 m", "1,000 m²")],
)
def test_thousands_are_told_apart(units, long, wide):
    assert run(1000.0, units) == long
    assert spread(1000.0, units) == wide
