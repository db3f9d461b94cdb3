"""Lengths and numbers as they are said: `twelve foot six and a half`, `doce pies seis y media`.

What a speech recogniser writes, digits and words mixed, English and Spanish. Pure.
"""

from __future__ import annotations

import re
import unicodedata
from fractions import Fraction

from farwall.units import M_PER_FT, M_PER_IN

_ONES = {
    "zero": 0, "oh": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7,
    "eight": 8, "nine": 9, "ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14,
    "fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18, "nineteen": 19,
    "cero": 0, "un": 1, "uno": 1, "una": 1, "dos": 2, "tres": 3, "cuatro": 4, "cinco": 5,
    "seis": 6, "siete": 7, "ocho": 8, "nueve": 9, "diez": 10, "once": 11, "doce": 12, "trece": 13,
    "catorce": 14, "quince": 15, "dieciseis": 16, "diecisiete": 17, "dieciocho": 18,
    "diecinueve": 19, "veinte": 20, "veintiun": 21, "veintiuno": 21, "veintiuna": 21,
    "veintidos": 22, "veintitres": 23, "veinticuatro": 24, "veinticinco": 25, "veintiseis": 26,
    "veintisiete": 27, "veintiocho": 28, "veintinueve": 29,
}  # fmt: skip
_TENS = {
    "twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80,
    "ninety": 90, "treinta": 30, "cuarenta": 40, "cincuenta": 50, "sesenta": 60, "setenta": 70,
    "ochenta": 80, "noventa": 90,
}  # fmt: skip
_HUNDREDS = {
    "hundred": 100, "cien": 100, "ciento": 100, "doscientos": 200, "trescientos": 300,
    "cuatrocientos": 400, "quinientos": 500, "seiscientos": 600, "setecientos": 700,
    "ochocientos": 800, "novecientos": 900,
}  # fmt: skip
_PARTS = {
    "half": 2, "halves": 2, "quarter": 4, "quarters": 4, "eighth": 8, "eighths": 8,
    "sixteenth": 16, "sixteenths": 16, "medio": 2, "media": 2, "cuarto": 4, "cuartos": 4,
    "octavo": 8, "octavos": 8, "dieciseisavo": 16, "dieciseisavos": 16,
}  # fmt: skip
_UNITS = {
    "foot": "ft", "feet": "ft", "ft": "ft", "pie": "ft", "pies": "ft", "'": "ft",
    "inch": "in", "inches": "in", "in": "in", "pulgada": "in", "pulgadas": "in", "pulg": "in",
    '"': "in", "metre": "m", "metres": "m", "meter": "m", "meters": "m", "metro": "m",
    "metros": "m", "m": "m", "centimetre": "cm", "centimetres": "cm", "centimeter": "cm",
    "centimeters": "cm", "centimetro": "cm", "centimetros": "cm", "cm": "cm", "millimetre": "mm",
    "millimetres": "mm", "millimeter": "mm", "millimeters": "mm", "milimetro": "mm",
    "milimetros": "mm", "mm": "mm",
}  # fmt: skip
_M = {"ft": M_PER_FT, "in": M_PER_IN, "m": 1.0, "cm": 0.01, "mm": 0.001}
_NEXT = {"ft": "in", "m": "cm", "in": "", "cm": "mm", "mm": ""}
_AND = {"and", "y", "con", "a", "an", "-"}
_POINT = {"point", "punto", "coma"}
_GLYPHS = {
    "½": " 1/2",
    "¼": " 1/4",
    "¾": " 3/4",
    "⅛": " 1/8",
    "⅜": " 3/8",
    "⅝": " 5/8",
    "⅞": " 7/8",
}
_TOKEN = re.compile(r"\d+/\d+|\d+(?:\.\d+)?|[a-z]+|['\"]|-")
_MOST_LETTERS = 120


def spoken_words(text: str) -> list[str]:
    """Small words, digits and marks without accents; a decimal comma is a point."""
    told = text
    for glyph, plain in _GLYPHS.items():
        told = told.replace(glyph, plain)
    told = re.sub("[’′`\u00b4\u2018]", "'", told).replace("''", '"')
    told = re.sub(r"[”″“]", '"', told)
    told = unicodedata.normalize("NFKD", told.lower())
    told = "".join(one for one in told if not unicodedata.combining(one))
    told = re.sub(r"(?<=\d),(?=\d)", ".", told)
    return _TOKEN.findall(told[:_MOST_LETTERS])


def spoken_length_m(text: str, *, us: bool = True) -> float | None:
    """Metres of a length that was said or typed; None when the words are none.

    us: a bare number is feet, else metres; after feet a bare number is inches, after metres
    centimetres (two digits) or millimetres (three). What may be two things is refused: a half after
    feet alone, one digit after metres alone.
    """
    words = spoken_words(text)
    if not words:
        return None
    total, at, last = 0.0, 0, ""
    while at < len(words):
        if words[at] in _AND and at:
            at += 1
            continue
        told = _number(words, at)
        if told is None:
            return None
        value, next_at, part_only = told
        next_at = _past_fillers(words, next_at)
        unit = _UNITS.get(words[next_at], "") if next_at < len(words) else ""
        step = _unit_for(unit, last, value, part_only=part_only, us=us)
        if not step or (last and _M[step] > _M[last]):
            return None
        total += value * _M[step]
        last = step
        at = next_at + (1 if unit else 0)
    return total if last and total > 0 else None


def _past_fillers(words: list[str], at: int) -> int:
    """The place of a unit behind `half AN inch`, `an eighth OF AN inch`; else the place given."""
    end = at
    while end < len(words) and words[end] in {"a", "an", "of", "de"}:
        end += 1
    return end if end < len(words) and words[end] in _UNITS else at


def _unit_for(unit: str, last: str, value: float, *, part_only: bool, us: bool) -> str:
    """The unit of a number: as said, else what follows the unit before."""
    if unit:
        return unit
    if part_only and last == "ft":  # A HALF may be six inches or half of one: not guessed
        return "" if value == 0.5 else "in"
    if part_only and last:  # six inches AND A HALF: of the unit before
        return last
    if not last:
        return "ft" if us else "m"
    if last == "m":  # `three metres five` may be 3.05 or 3.5: not guessed
        return "mm" if value >= 100 else "cm" if value >= 10 else ""
    return _NEXT[last]


def spoken_count(text: str) -> int | None:
    """A whole number from 1 that was said or typed, such as the number of a wall; else None."""
    words = spoken_words(text)
    whole, end = _whole(words, 0)
    return int(whole) if words and end == len(words) and whole == int(whole) >= 1 else None


def _number(words: list[str], at: int) -> tuple[float, int, bool] | None:
    """A number from a place on: its value, where it ends, whether it is a part of one alone."""
    whole, end = _whole(words, at)
    if end == at:
        part, end = _part(words, at)
        return (part, end, True) if end > at else None
    if end < len(words) and words[end] in _POINT:
        digits, end = _digits(words, end + 1)
        if not digits:
            return None
        return float(f"{whole:g}.{digits}"), end, False
    if end < len(words) and words[end] in _PARTS:  # three eighths
        return (whole / _PARTS[words[end]], end + 1, True) if whole else None
    part, after = _part(words, end + (end < len(words) and words[end] in _AND))
    if after > end + 1 or (after == end + 1 and "/" in words[end]):
        return whole + part, after, False
    return whole, end, False


def _whole(words: list[str], at: int) -> tuple[float, int]:
    """Digits, or words of a number up to 999."""
    if at < len(words) and re.fullmatch(r"\d+(\.\d+)?", words[at]):
        return float(words[at]), at + 1
    value, start, room = 0, at, 1000
    while at < len(words):
        word = words[at]
        if word == "hundred" and 0 < value < 10:
            value, room = value * 100, 100
        elif word in _HUNDREDS and room > 100 and word != "hundred":
            value, room = _HUNDREDS[word], 100
        elif word in _TENS and room > 10:
            value, room = value + _TENS[word], 10
        elif word in _ONES and room > 1:
            small = _ONES[word]
            if small >= 10 and room <= 10:
                break
            value, room = value + small, 1
            if at + 1 < len(words) and words[at + 1] == "hundred":
                at += 1
                continue
        elif word in {"y", "and"} and at > start and room in (10, 100) and _small(words, at + 1):
            at += 1
            continue
        else:
            break
        at += 1
    return float(value), at


def _small(words: list[str], at: int) -> bool:
    """Whether a number below ten follows that is no count of parts."""
    if at >= len(words) or words[at] not in _ONES or _ONES[words[at]] >= 10:
        return False
    return at + 1 >= len(words) or words[at + 1] not in _PARTS


def _part(words: list[str], at: int) -> tuple[float, int]:
    """`1/2`, `half`, `a half`, `three eighths`."""
    if at >= len(words):
        return 0.0, at
    if "/" in words[at]:
        above, below = (int(one) for one in words[at].split("/"))
        return (float(Fraction(above, below)), at + 1) if below else (0.0, at)
    start = at
    if words[at] in _AND:
        at += 1
    if at < len(words) and words[at] in _PARTS:
        return 1.0 / _PARTS[words[at]], at + 1
    count, end = _whole(words, at)
    if end > at and end < len(words) and words[end] in _PARTS:
        return count / _PARTS[words[end]], end + 1
    return 0.0, start


def _digits(words: list[str], at: int) -> tuple[str, int]:
    """Digits behind a point: `eight one`, `ochenta y uno`, `81`."""
    found = ""
    while at < len(words):
        if words[at].isdigit():
            found, at = found + words[at], at + 1
            continue
        whole, end = _whole(words, at)
        if end == at:
            break
        found, at = found + f"{whole:g}", end
    return found, at
