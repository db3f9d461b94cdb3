"""The solar position algorithm against the worked example of its report [reda-andreas-2004].

17 October 2003, 12:30:30 at UTC-7; 39.742476 N, 105.1786 W, 1830.14 m, 820 mbar, 11 °C, ΔT 67 s.
"""

from datetime import datetime, timedelta, timezone

import pytest

from farwall.air.sun import sun_at

MOMENT = datetime(2003, 10, 17, 12, 30, 30, tzinfo=timezone(timedelta(hours=-7)))


def test_reda_andreas_2004_worked_example_of_zenith_and_azimuth():
    """Tolerance: half of the last printed digit."""
    sun = sun_at(
        [MOMENT],
        latitude_deg=39.742476,
        longitude_deg=-105.1786,
        elevation_m=1830.14,
        pressure_pa=82_000.0,
        air_c=11.0,
        delta_t_s=67.0,
    )
    assert 90.0 - sun.elevation_deg[0] == pytest.approx(50.11162, abs=5e-6)
    assert sun.azimuth_deg[0] == pytest.approx(194.34024, abs=5e-6)
