"""Words that the firm's own screens share."""

from __future__ import annotations

WORDS = {
    "way-days": "Days",
    "way-van": "Van",
    "way-lessons": "Lessons",
    "way-book": "Book",
    "firm-day": "{weekday} {day} {month}",
    "firm-date": "{day} {month} {year}",
    "firm-month-1": "Jan",
    "firm-month-2": "Feb",
    "firm-month-3": "Mar",
    "firm-month-4": "Apr",
    "firm-month-5": "May",
    "firm-month-6": "Jun",
    "firm-month-7": "Jul",
    "firm-month-8": "Aug",
    "firm-month-9": "Sep",
    "firm-month-10": "Oct",
    "firm-month-11": "Nov",
    "firm-month-12": "Dec",
    "firm-and": " and ",
}
