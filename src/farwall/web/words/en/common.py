"""Words that every screen shares."""

from __future__ import annotations

WORDS = {
    "lang": "en",
    "farwall": "Farwall",
    "ways": "From screen to screen",
    "way-houses": "Houses",
    "leave": "Leave",
    "skip": "To the floor",
    "weekday-0": "Mon",
    "weekday-1": "Tue",
    "weekday-2": "Wed",
    "weekday-3": "Thu",
    "weekday-4": "Fri",
    "weekday-5": "Sat",
    "weekday-6": "Sun",
}
