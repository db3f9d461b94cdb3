"""Prices and sizes as they are written: 1,290.50, 1.290,50 €, 5 gal, box of 100. Pure."""

from __future__ import annotations

import re
from decimal import Decimal, InvalidOperation

from farwall.facts.van import Unit
from farwall.nouns import dataclass
from farwall.readers.price_list.words import bare
from farwall.units import KG_PER_LB, L_PER_US_FL_OZ, L_PER_US_GAL, M_PER_FT

SIGNS = {"€": "EUR", "£": "GBP", "US$": "USD", "MX$": "MXN", "C$": "CAD"}
MOST = Decimal(10_000_000)
PLACES = 4


class NotRead(ValueError):
    """A cell that is no amount or size; its words say why."""


@dataclass(frozen=True)
class Size:
    """What one container holds."""

    size: float
    unit: Unit


_NAMES: tuple[tuple[str, Unit, float], ...] = (
    ("gal gals gallon gallons galon galones", "l", L_PER_US_GAL),
    ("qt qts quart quarts cuarto cuartos", "l", L_PER_US_GAL / 4),
    ("pt pint pints pinta pintas", "l", L_PER_US_GAL / 8),
    ("floz", "l", L_PER_US_FL_OZ),
    ("l lt lts liter liters litre litres litro litros", "l", 1.0),
    ("ml mililitro mililitros", "l", 0.001),
    ("ft foot feet lf pie pies", "m", M_PER_FT),
    ("yd yds yard yards yarda yardas", "m", 3 * M_PER_FT),
    ("m meter meters metre metres metro metros", "m", 1.0),
    ("lb lbs pound pounds libra libras", "kg", KG_PER_LB),
    ("kg kilo kilos kilogram kilograms", "kg", 1.0),
    ("g gram grams gramo gramos", "kg", 0.001),
    ("each ea pc pcs piece pieces pza pzas pieza piezas unidad unidades", "count", 1.0),
    ("un und ct count pair pairs par pares pr unit units", "count", 1.0),
)
_UNITS = {name: (unit, factor) for names, unit, factor in _NAMES for name in names.split()}
PACKS = frozenset({
    "roll", "rolls", "rollo", "rollos", "box", "boxes", "caja", "cajas", "pack", "packs",
    "paquete", "paquetes", "case", "bag", "bolsa", "set", "kit",
})  # fmt: skip
_NUMBER = r"\d/\d|\d[\d.,]*(?:\s\d/\d)?|\.\d+"
_SIZED = re.compile(
    rf"({_NUMBER})\s*[-]?\s*(fl\.?\s*oz\.?|oz\.?|us\s+gal[a-z]*|[a-zñó]+)?", re.IGNORECASE
)
_BARE_NUMBER = re.compile(r"[\d.,]+")


def decimal_comma(texts: list[str]) -> bool:
    """Whether figures of a file have a comma before their cents: 60,00 or 1.290,50."""
    commas = sum(bool(re.search(r"\d,\d{1,2}(?!\d)", one)) for one in texts)
    points = sum(bool(re.search(r"\d\.\d{1,2}(?!\d)", one)) for one in texts)
    return commas > points


def number(text: str, *, comma: bool) -> Decimal:
    """A figure, with its thousands set off or not. Raises NotRead."""
    found = text.replace("\u00a0", "").replace("\u202f", "").replace(" ", "").replace("'", "")
    dot, com = found.rfind("."), found.rfind(",")
    if dot >= 0 and com >= 0:
        cents = "," if com > dot else "."
    elif com >= 0:
        whole = re.fullmatch(r"\d{1,3}(,\d{3})+", found)
        cents = "." if whole and (not comma or found.count(",") > 1) else ","
    else:
        whole = re.fullmatch(r"\d{1,3}(\.\d{3})+", found)
        cents = "," if whole and (comma or found.count(".") > 1) else "."
    plain = found.replace("." if cents == "," else ",", "").replace(",", ".")
    try:
        value = Decimal(plain)
    except InvalidOperation:
        raise NotRead(f"“{text[:30]}” is no number") from None
    if not value.is_finite() or not 0 <= value <= MOST:
        raise NotRead(f"“{text[:30]}” is out of range")
    return value


@dataclass(frozen=True)
class Price:
    """An amount, and the currency that stands with it, empty for none."""

    amount: Decimal
    currency: str


def price(cell: str | Decimal, *, comma: bool) -> Price:
    """A price with or without its sign. Raises NotRead."""
    if isinstance(cell, Decimal):
        return Price(_placed(cell, str(cell)), "")
    text, currency = cell.strip(), ""
    for sign, code in SIGNS.items():
        if sign in text:
            text, currency = text.replace(sign, ""), code
    code_found = re.search(r"\b([A-Z]{3})\b", text)
    if code_found:
        currency, text = code_found[1], text.replace(code_found[1], "")
    text = text.replace("$", "").strip()
    if not text:
        raise NotRead("it has no price")
    if not re.fullmatch(r"[\d.,'\s\u00a0\u202f]+", text):
        raise NotRead(f"“{cell.strip()[:30]}” is no price")
    return Price(_placed(number(text, comma=comma), cell), currency)


def _placed(value: Decimal, text: str) -> Decimal:
    if not value.is_finite() or not 0 <= value <= MOST:
        raise NotRead(f"“{text[:30]}” is no price")
    return round(value, PLACES)


def size_in(text: str, wanted: tuple[Unit, ...], *, comma: bool) -> Size | None:
    """The first size in a text that is of a unit wanted; None where there is none."""
    found: list[Size] = []
    for match in _SIZED.finditer(text.casefold()):
        unit = _unit_of(match[2] or "", wanted)
        if unit is not None:
            value = float(_fraction(match[1], comma=comma)) * unit[1]
            if value > 0:
                found.append(Size(round(value, 9), unit[0]))
    fitting = [one for one in found if one.unit in wanted]
    return fitting[0] if fitting else None


def _fraction(text: str, *, comma: bool) -> Decimal:
    whole, _, part = text.strip().rpartition(" ")
    if "/" in part:
        over, under = part.split("/")
        more = Decimal(over) / Decimal(under) if under != "0" else Decimal(0)
        return (number(whole, comma=comma) if whole else Decimal(0)) + more
    try:
        return number(text.strip(".,"), comma=comma)
    except NotRead:
        return Decimal(0)


def _unit_of(word: str, wanted: tuple[Unit, ...]) -> tuple[Unit, float] | None:
    name = bare(word).replace(" ", "").removeprefix("us")
    if name == "oz":
        return ("kg", KG_PER_LB / 16) if "kg" in wanted else ("l", L_PER_US_FL_OZ)
    return _UNITS.get(name)


def whole_size(
    size: str | Decimal, unit: str, name: str, wanted: tuple[Unit, ...], *, comma: bool
) -> Size:
    """What one of a row holds, from its size, its unit, else its name. Raises NotRead."""
    if isinstance(size, str) and (found := size_in(size, wanted, comma=comma)):
        return found
    figure = _figure(size, comma=comma)
    told = _unit_of(unit, wanted) if unit else None
    if told is not None and told[0] in wanted:
        return Size(round(float(figure or 1) * told[1], 9), told[0])
    if unit and (found := size_in(unit, wanted, comma=comma)):
        return found
    words = set(bare(f"{size} {unit}").split())
    if "count" in wanted and words & PACKS and figure:
        return Size(float(figure), "count")
    if found := size_in(name, wanted, comma=comma):
        return found
    if wanted == ("count",) or ("count" in wanted and not unit and not figure):
        return Size(float(figure or 1), "count")
    how = {"l": "gal, qt or L", "m": "ft, yd or m", "kg": "lb or kg", "count": "each"}
    raise NotRead(f"how much is in one is not said; add its size in {how[wanted[0]]}")


def _figure(cell: str | Decimal, *, comma: bool) -> Decimal | None:
    if isinstance(cell, Decimal):
        return cell if cell.is_finite() and 0 < cell <= MOST else None
    match = _BARE_NUMBER.search(cell)
    if match is None:
        return None
    value = _fraction(match[0], comma=comma)
    return value or None
