"""A unit that somebody typed behind a number: `8 in`, `0.5 gpm`, `67F`, `1,500 sq ft`, `45%`."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable

_ALIKE = (
    "ft feet foot pie pies", "in inch inches pulg pulgada pulgadas",
    "m metre metres meter meters metro metros", "gal gals gallon gallons galon galones usgal",
    "l lt litre litres liter liters litro litros", "min mins minute minutes minuto minutos",
    "s sec secs second seconds seg segundo segundos", "h hr hrs hour hours hora horas",
    "days day d dia dias", "% percent pct porciento", "f degf", "c degc",
    "deg degree degrees grado grados", "ft2 sqft sf squarefeet squarefoot", "m2 sqm",
    "lb lbs pound pounds libra libras", "kg kgs kilo kilos", "ml millilitres milliliters",
    "gal/min gpm", "l/min lpm", "ft/min fpm", "ft2/gal sqft/gal",
)  # fmt: skip
"""Spellings of one unit, the first for all of them; without accents, dots, spaces and the degree's
circle."""
_FIRST = {one: line.split()[0] for line in _ALIKE for one in line.split()}
_TOLD = re.compile(r"([-+−]?(?:\d[\d.,]*|[.,]\d+))\s*([^\d\s].*)?", re.DOTALL)


def parted(text: str) -> tuple[str, str]:
    """The number of a text and the unit behind it, in the spelling of `unit_of`.

    The unit is empty where none is told; the number is the whole text where it begins with none.
    """
    found = _TOLD.fullmatch(text.replace("\u00a0", " ").strip())
    return (text.strip(), "") if found is None else (found[1], unit_of(found[2] or ""))


def unit_of(text: str) -> str:
    """A unit in one spelling: `gallons per minute`, `gal/min` and `gpm` are one."""
    plain = unicodedata.normalize("NFKD", text.lower().replace("°", ""))
    plain = "".join(one for one in plain if not unicodedata.combining(one))
    plain = re.sub(r"\bper\b", "/", plain)
    plain = re.sub(r"[\s.]+", "", plain)
    plain = _FIRST.get(plain, plain)
    return "/".join(_FIRST.get(one, one) for one in plain.split("/"))


def without(text: str, units: Iterable[str]) -> str:
    """The number alone where one of these units stands behind it; else the text as it is."""
    number, unit = parted(text)
    return number if unit and unit in {unit_of(one) for one in units} else text.strip()
