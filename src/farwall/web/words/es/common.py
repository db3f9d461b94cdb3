"""Palabras que comparten todas las pantallas."""

from __future__ import annotations

WORDS = {
    "lang": "es",
    "farwall": "Farwall",
    "ways": "De pantalla en pantalla",
    "way-houses": "Casas",
    "leave": "Salir",
    "skip": "Ir al piso",
    "weekday-0": "lun",
    "weekday-1": "mar",
    "weekday-2": "mié",
    "weekday-3": "jue",
    "weekday-4": "vie",
    "weekday-5": "sáb",
    "weekday-6": "dom",
    "month-1": "enero",
    "month-2": "febrero",
    "month-3": "marzo",
    "month-4": "abril",
    "month-5": "mayo",
    "month-6": "junio",
    "month-7": "julio",
    "month-8": "agosto",
    "month-9": "septiembre",
    "month-10": "octubre",
    "month-11": "noviembre",
    "month-12": "diciembre",
}
