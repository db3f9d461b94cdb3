"""Until when there is light, for a crew that judges wet edges by eye: sunset within ten minutes.

Declination and the equation of time by their usual short formulas [from-memory], horizon at
-0.83 degrees. A test holds it to the sun of `air.sun`. Pure, and quick enough for every tap.
"""

from __future__ import annotations

import math
from datetime import UTC, datetime, timedelta

_HORIZON = math.radians(-0.833)


def sunset(day: datetime, *, latitude_deg: float, longitude_deg: float) -> datetime | None:
    """The moment of sunset on the day of `day` (with offset), in that offset.

    None where the sun does not set or does not rise on that day. North and east positive.
    """
    number = day.timetuple().tm_yday
    declination = math.radians(23.45) * math.sin(2 * math.pi * (284 + number) / 365)
    b = 2 * math.pi * (number - 81) / 364
    equation_min = 9.87 * math.sin(2 * b) - 7.53 * math.cos(b) - 1.5 * math.sin(b)
    latitude = math.radians(latitude_deg)
    cosine = (math.sin(_HORIZON) - math.sin(latitude) * math.sin(declination)) / (
        math.cos(latitude) * math.cos(declination)
    )
    if not -1 < cosine < 1:
        return None
    minutes = 720 + 4 * math.degrees(math.acos(cosine)) - 4 * longitude_deg - equation_min
    noon_utc = datetime(day.year, day.month, day.day, tzinfo=UTC)
    return (noon_utc + timedelta(minutes=minutes)).astimezone(day.tzinfo)
