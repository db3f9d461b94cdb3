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
    "month-1": "January",
    "month-2": "February",
    "month-3": "March",
    "month-4": "April",
    "month-5": "May",
    "month-6": "June",
    "month-7": "July",
    "month-8": "August",
    "month-9": "September",
    "month-10": "October",
    "month-11": "November",
    "month-12": "December",
}
