"""The beam and the sun's place against the library's own, loaded as a whole."""

import subprocess
import sys

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.clear_sky import clear_beam_w_m2, position


@given(st.floats(0.0, 90.0), st.floats(60_000.0, 105_000.0))
def test_the_beam_is_that_of_the_library_at_every_height_and_pressure(elevation_deg, pressure_pa):
    clearsky = pytest.importorskip("pvlib.clearsky")
    theirs = clearsky.simplified_solis(np.array([elevation_deg]), pressure=pressure_pa)["dni"]
    ours = clear_beam_w_m2(np.array([elevation_deg]), pressure_pa=pressure_pa)
    assert ours == pytest.approx(theirs, rel=1e-12, abs=1e-9)


def test_a_higher_sun_has_a_stronger_beam_and_thicker_air_takes_more():
    high = clear_beam_w_m2(np.linspace(0, 90, 91), pressure_pa=101_325.0)
    assert (np.diff(high) >= 0).all()
    thin, thick = (clear_beam_w_m2(np.array([30.0]), pressure_pa=p) for p in (75_000.0, 101_325.0))
    assert thin > thick


def test_the_suns_place_is_that_of_the_library():
    spa = pytest.importorskip("pvlib.spa")
    asked = (np.array([1.78e9, 1.79e9]), 40.0, -105.0, 0.0, 1013.25, 12.0, 69.0, 0.5667)
    for ours, theirs in zip(position().solar_position(*asked), spa.solar_position(*asked),
                            strict=True):  # fmt: skip
        assert np.array_equal(ours, theirs)


def test_a_first_sun_loads_no_data_frames():
    """In a process of its own: what else a run has loaded does not matter."""
    asked = (
        "import sys; from datetime import UTC, datetime; from farwall.air.sun import sun_at; "
        "sun_at([datetime(2026, 6, 21, tzinfo=UTC)], latitude_deg=40.0, longitude_deg=0.0); "
        "assert 'pandas' not in sys.modules and 'pvlib' not in sys.modules"
    )
    subprocess.run([sys.executable, "-c", asked], check=True)
