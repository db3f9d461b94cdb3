"""Palabras que comparten todas las pantallas."""

from __future__ import annotations

WORDS = {
    "lang": "es",
    "farwall": "Farwall",
    "ways": "De pantalla en pantalla",
    "way-houses": "Casas",
    "leave": "Salir",
    "skip": "Al piso",
    "weekday-0": "lun.",
    "weekday-1": "mar.",
    "weekday-2": "mié.",
    "weekday-3": "jue.",
    "weekday-4": "vie.",
    "weekday-5": "sáb.",
    "weekday-6": "dom.",
}
