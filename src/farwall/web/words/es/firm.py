"""Palabras que comparten las pantallas de la empresa."""

from __future__ import annotations

WORDS = {
    "way-days": "Días",
    "way-van": "Camioneta",
    "way-lessons": "Lo aprendido",
    "way-book": "Libro",
    "firm-day": "{weekday} {day} {month}",
    "firm-date": "{day} {month} {year}",
    "firm-month-1": "ene",
    "firm-month-2": "feb",
    "firm-month-3": "mar",
    "firm-month-4": "abr",
    "firm-month-5": "may",
    "firm-month-6": "jun",
    "firm-month-7": "jul",
    "firm-month-8": "ago",
    "firm-month-9": "sep",
    "firm-month-10": "oct",
    "firm-month-11": "nov",
    "firm-month-12": "dic",
    "firm-and": " y ",
}
