"""The solar position algorithm against the worked example of its report [reda-andreas-2004].

17 October 2003, 12:30:30 at UTC-7; 39.742476 N, 105.1786 W, 1830.14 m, 820 mbar, 11 °C. Its ΔT is
67 s, ours 69 s: in 2 s the sun's declination moves by 0.00001 degrees.
"""

from datetime import datetime, timedelta, timezone

import pytest

from farwall.air.sun import sun_at

MOMENT = datetime(2003, 10, 17, 12, 30, 30, tzinfo=timezone(timedelta(hours=-7)))


def test_reda_andreas_2004_worked_example_of_zenith_and_azimuth():
    """Tolerance: 0.00003°, three of the last printed digit, for the other ΔT."""
    sun = sun_at(
        [MOMENT],
        latitude_deg=39.742476,
        longitude_deg=-105.1786,
        elevation_m=1830.14,
        pressure_pa=82_000.0,
        air_c=11.0,
    )
    assert 90.0 - sun.elevation_deg[0] == pytest.approx(50.11162, abs=3e-5)
    assert sun.azimuth_deg[0] == pytest.approx(194.34024, abs=3e-5)
