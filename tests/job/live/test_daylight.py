"""Sunset by short formulas against the sun of the tool's own sun positions."""

from datetime import datetime, timedelta, timezone

import pytest

from farwall.air.sun import sun_at
from farwall.job.live.daylight import sunset


@pytest.mark.parametrize("latitude", [-35.0, 0.0, 40.0, 60.0])
@pytest.mark.parametrize("day", ["2026-01-10", "2026-03-20", "2026-06-21", "2026-10-30"])
def test_the_sun_stands_at_the_horizon_within_ten_minutes(latitude, day):
    """Ten minutes: short formulas from memory; as seen through the air it sets at 0 degrees."""
    noon = datetime.fromisoformat(f"{day}T12:00").replace(tzinfo=timezone(timedelta(hours=-7)))
    found = sunset(noon, latitude_deg=latitude, longitude_deg=-105.0)
    around = [found - timedelta(minutes=10), found + timedelta(minutes=10)]
    before, after = sun_at(around, latitude_deg=latitude, longitude_deg=-105.0).elevation_deg
    assert before > 0 > after
    assert found.utcoffset() == noon.utcoffset()


def test_where_the_sun_does_not_set_there_is_no_sunset():
    noon = datetime.fromisoformat("2026-06-21T12:00+00:00")
    assert sunset(noon, latitude_deg=75.0, longitude_deg=20.0) is None
