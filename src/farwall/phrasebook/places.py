"""What may stand in the place of a pattern: a quantity, a name, an address in a file, a phrase.

A quantity is numbers with their units and the few words between them; its numbers and unit
symbols stay, its words are said in Spanish. A name stays as it is, and is none where it reads like
English words of the book: then the sentence is not taken apart there.
"""

from __future__ import annotations

import re
from collections.abc import Set
from functools import cache

HOLE = "\ue000"
"""A private letter that any place takes: by it the book itself is looked through."""

_UNITS = [
    "min", "h", "s", "d", "gal", "L", "m", "ft", "in", "ft²", "m²", "mm", "cm", "°F", "°C", "%",
    "oz", "fl", "lb", "lbs", "kg", "g", "USD", "EUR", "CAD", "gpm", "ppm", "Pa",
    "K", "mg/m³", "kg/m²", "kg/(m²·h)", "kg/m²h", "W/m²", "ft²/min", "m²/min", "ft²/gal", "m²/L",
    "m²/l", "ft/min", "m/min", "m/s", "L/min", "gal/min", "mph", "lb/ft²h", "g/L", "GB", "MB",
    "KB", "°",
]  # fmt: skip
_WORDS = {
    "to": "a", "and": "y", "or": "o", "by": "por", "minutes": "minutos", "minute": "minuto",
    "hours": "horas", "hour": "hora", "days": "días", "day": "día", "seconds": "segundos",
    "second": "segundo", "weeks": "semanas", "week": "semana", "months": "meses", "month": "mes",
    "inches": "pulgadas", "inch": "pulgada", "feet": "pies", "foot": "pie", "gallons": "galones",
    "gallon": "galón", "litres": "litros", "litre": "litro", "metres": "metros", "metre": "metro",
    "degrees": "grados", "Mon": "lun.", "Tue": "mar.", "Wed": "mié.", "Thu": "jue.", "Fri": "vie.",
    "Sat": "sáb.", "Sun": "dom.", "lun.": "lun.", "mar.": "mar.", "mié.": "mié.", "jue.": "jue.",
    "vie.": "vie.", "sáb.": "sáb.", "dom.": "dom.", "y": "y", "o": "o", "día": "día",
    "the day before": "el día anterior", "days before": "días antes",
    "am": "a. m.", "pm": "p. m.", "a. m.": "a. m.", "p. m.": "p. m.",
    "Jan": "ene", "Feb": "feb", "Mar": "mar", "Apr": "abr", "May": "may", "Jun": "jun",
    "Jul": "jul", "Aug": "ago", "Sep": "sep", "Oct": "oct", "Nov": "nov", "Dec": "dic",
}  # fmt: skip
_NUMBER = (
    r"[-+\N{MINUS SIGN}×~<>≤≥]?[$€]?\d(?:[\d.,:/×–-]*\d)?(?:e[-+]?\d+)?(?:[½¼¾⅛⅜⅝⅞])?|[½¼¾⅛⅜⅝⅞]|"
    + HOLE
)
_MARKS = r"['\"\N{PRIME}\N{DOUBLE PRIME}()%]"
_UNIT = "|".join(re.escape(one) for one in sorted(_UNITS, key=len, reverse=True))
_WORD = "|".join(re.escape(one) for one in sorted(_WORDS, key=len, reverse=True))
_SPANISH_DAY = r"lun\.|mar\.|mié\.|jue\.|vie\.|sáb\.|dom\.|día"
_PIECE = (
    rf"(?:{_NUMBER}|a(?= (?:\d|{_SPANISH_DAY}))|(?:{_UNIT})(?![\w²³/])|(?:{_WORD})(?!\w)|{_MARKS})"
)
QUANTITY = rf"(?:{_PIECE})(?:,? ?{_PIECE})*"
_QUANTITY = re.compile(QUANTITY)
_COUNTED = re.compile(rf"\d|[½¼¾⅛⅜⅝⅞]|{HOLE}")
_SPOKEN = re.compile(rf"(?<!\w)(?:{_WORD})(?!\w)")

CITED = re.compile(r"[A-Z][\w-]+(?: (?:and )?[A-Z][\w-]+)* (?:18|19|20)\d\d|[A-Z]{3,} [A-Z]\d+")
"""A text by its author and year, a standard by its number."""

ADDRESS = rf"(?:[\w./*-]+|\[[^\]]*\]|{HOLE})+"

PATH = rf"(?:[\w-]+(?:\[[^\]]*\]|[./][\w*-]+)+|{HOLE})"

_TWO_POINTS = re.compile(r"( [ap]\. m\.)\.(?!\.)")
_SMALL = frozenset({
    "the", "is", "are", "it", "its", "with", "not", "in", "on", "that", "be", "was", "were",
    "has", "have", "than", "from", "at", "for", "this", "which", "who", "what", "when", "where",
    "no", "so", "as", "an", "a", "if", "until", "before", "after", "while", "there", "will",
    "would", "may", "must", "can",
})  # fmt: skip
_OF_NAMES = frozenset({
    "room", "rooms", "bath", "hall", "closet", "entry", "kitchen", "pantry", "office", "stair",
    "porch", "garage", "main", "back", "front", "guest", "half", "wall", "lower", "upper",
    "and", "of", "brown", "red", "green", "blue", "ochre", "stain", "island", "tub", "cabinet",
})  # fmt: skip


def quantity_in_spanish(text: str) -> str | None:
    """Numbers and units with the words between them; None for anything else."""
    if not _QUANTITY.fullmatch(text) or not _COUNTED.search(text):
        return None
    return _SPOKEN.sub(lambda found: _WORDS[found[0]], text)


def one_point(text: str) -> str:
    """A sentence that ends with `p. m.` has no second point."""
    return _TWO_POINTS.sub(r"\1", text)


@cache
def _one_of(names: frozenset[str]) -> str:
    """Any of them, counted or not: `Hall`, `4 × Closet`."""
    one = "|".join(re.escape(name) for name in sorted(names, key=len, reverse=True))
    return rf"(?:\d+ × )?(?:{one})"


@cache
def _row_of(names: frozenset[str]) -> re.Pattern[str]:
    one = _one_of(names)
    return re.compile(rf"{one}(?:(?:, | and | y | or ){one})*")


def names_in_spanish(text: str, names: frozenset[str]) -> str | None:
    """Names that are known, one or more in a row, kept with `y` for and; None for anything else."""
    if text in names:
        return text
    if not names or not _row_of(names).fullmatch(text):
        return None
    pieces = re.split(rf"({_one_of(names)})", text)
    return "".join(
        {" and ": " y ", " or ": " o "}.get(piece, piece) for piece in pieces if piece is not None
    )


def name_in_spanish(text: str, words: Set[str]) -> str | None:
    """A name that is not known, as it is; None where English words stand in it.

    words: those of the book's English, in small letters.
    """
    if text != text.strip() or len(text) > 120 or re.search(r"[.;!?] |: ", text):
        return None
    for word in re.findall(r"[^\W\d_]+", text):
        small = word.lower()
        if small in _SMALL or (word == small and small in words and small not in _OF_NAMES):
            return None
    return re.sub(r" and (?=\S+(?: \S+){0,4}$)", " y ", text)
