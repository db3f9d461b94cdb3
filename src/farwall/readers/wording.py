"""Faults that pydantic finds in a file, said in plain words with a next step."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from typing import Any

from farwall.errors import Mistake
from farwall.near_word import near_word
from farwall.readers.json_text import Place, place_text
from farwall.readers.twins import Twin

Written = Mapping[Place, tuple[Place, Twin]]

_UNITS = {
    "_lb_1000ft2_24h": "lb/(1,000 ft²·24 h)",
    "_ug_m2_s": "µg/(m²·s)",
    "_mg_m3": "mg/m³",
    "_mg_l": "mg/L",
    "_kg_m2": "kg/m²",
    "_gal_ft2": "gal/ft²",
    "_lb_ft2": "lb/ft²",
    "_lb": "lb",
    "_l_per_m2": "L/m²",
    "_kg": "kg",
    "_lb_per_yd3": "lb/yd³",
    "_kg_m3": "kg/m³",
    "_fl_oz_per_gal": "fl oz/gal",
    "_ml_per_l": "mL/L",
    "_fl_oz": "fl oz",
    "_ml": "mL",
    "_de": "CIEDE2000",
    "_lightness": "L of CIELAB",
    "_ft2_per_gal": "ft²/gal",
    "_lb_per_gal": "lb/gal",
    "_m2_per_l": "m²/L",
    "_m2_min": "m²/min",
    "_ft2_min": "ft²/min",
    "_ft_min": "ft/min",
    "_gal_min": "gal/min",
    "_l_min": "L/min",
    "_m_min": "m/min",
    "_kg_l": "kg/L",
    "_percent": "%",
    "_m_s": "m/s",
    "_mph": "mph",
    "_days": "days",
    "_min": "minutes",
    "_gal": "gal",
    "_deg": "°",
    "_kw": "kW",
    "_ft2": "ft²",
    "_m2": "m²",
    "_ft": "ft",
    "_in": "in",
    "_c": "°C",
    "_f": "°F",
    "_m": "m",
    "_l": "L",
    "_s": "s",
    "_h": "h",
    "_ph": "pH",
    "_k": "K",
}

_BOUNDS = {
    "greater_than": ("gt", "more than"),
    "greater_than_equal": ("ge", "at least"),
    "less_than": ("lt", "less than"),
    "less_than_equal": ("le", "at most"),
}

_UNQUOTE = "Take the quotes away."

_SHAPES = {"line": "two points, [[x, y], [x, y]]", "polygon": "rings of points [x, y] in metres"}


def unit_of(key: str) -> str:
    """The unit that a key carries in its name, as people write it; empty when it has none."""
    padded = "_" + key.removesuffix("_low").removesuffix("_high")
    return next((unit for ending, unit in _UNITS.items() if padded.endswith(ending)), "")


def shown(value: object, *, most: int = 40) -> str:
    """A JSON value short enough for a sentence."""
    text = json.dumps(value, ensure_ascii=False, default=str)
    return text if len(text) <= most else f"{text[:most]}…"


def beyond(place: Place, value: float, word: str, bound: float, written: Written) -> Mistake:
    """A figure beyond a bound, told in the unit in which the user wrote it."""
    if place in written:
        place, twin = written[place]
        value, bound = twin.from_key(value), twin.from_key(bound)
    unit = unit_of(str(place[-1])) if place else ""
    unit = f" {unit}" if unit else ""
    what = f"{value:.6g}{unit} is out of range: it must be {word} {bound:.4g}{unit}."
    return Mistake(place_text(place), what, "Check the figure and its unit.")


def in_words(errors: Iterable[Mapping[str, Any]], written: Written) -> list[Mistake]:
    """One mistake for each fault, those of one outline or line told together."""
    mistakes: dict[Mistake, None] = {}
    drawn: dict[Place, int] = {}
    for error in errors:
        place: Place = tuple(error["loc"])
        shape = next((i for i, step in enumerate(place) if step in _SHAPES), None)
        if shape is not None and len(place) > shape + 1 and place[shape + 1] != "type":
            drawn[place[: shape + 1]] = drawn.get(place[: shape + 1], 0) + 1
        else:
            mistakes[_in_words(place, error, written)] = None
    for place, count in drawn.items():
        mistakes[_misdrawn(place, count)] = None
    return list(mistakes)


def _misdrawn(place: Place, count: int) -> Mistake:
    many = f"{count} of its points are" if count > 1 else "One of its points is"
    if count == 1 and place[-1] == "polygon":
        many = "Its coordinates are"
    return Mistake(
        place_text(place),
        f"{many} not written as they should be.",
        f"A {place[-1]} is {_SHAPES[str(place[-1])]}; plain numbers, no heights.",
    )


def _in_words(place: Place, error: Mapping[str, Any], written: Written) -> Mistake:
    kind, value, ctx = error["type"], error.get("input"), error.get("ctx", {})
    if kind in _BOUNDS and isinstance(value, int | float):
        bound, word = _BOUNDS[kind]
        return beyond(place, value, word, ctx[bound], written)
    if place in written:
        place = written[place][0]
    where = place_text(place)
    if kind == "missing":
        remedy = _ADD.get(place, "Add it.")
        return Mistake(place_text(place[:-1]), f"`{place[-1]}` is missing.", remedy)
    if place == ("exits",) and kind == "too_short":
        return Mistake(where, "A job needs a way out.", _ADD[place])
    if kind == "literal_error":
        return _not_one_of(where, value, str(ctx.get("expected", "")))
    what, remedy = _EXPECTED.get(kind, (str(error["msg"]) + ":", ""))
    if kind in {"float_type", "int_type"} and isinstance(value, str):
        remedy = _UNQUOTE if _looks_like_a_number(value) else remedy
    return Mistake(where, what.format(value=shown(value), **ctx), remedy)


_ADD: dict[Place, str] = {
    ("version",): 'Add "version": 1.',
    ("floor",): "`farwall job PLAN --out JOB.json` takes it from a drawing.",
    ("exits",): 'Name an outside opening: [{"id": "out", "opening": "front-door"}].',
}

_EXPECTED = {
    "string_type": ("Text is expected here, not {value}.", "Put it in quotes."),
    "float_type": ("A number is expected here, not {value}.", "Write a plain number."),
    "int_type": ("A whole number is expected here, not {value}.", "Write a whole number."),
    "bool_type": ("true or false is expected here, not {value}.", "Write true or false."),
    "tuple_type": ("A list is expected here, not {value}.", "Write [ … ]."),
    "dict_type": ("An object is expected here, not {value}.", "Write {{ … }}."),
    "dataclass_type": ("An object is expected here, not {value}.", "Write { … }."),
    "string_too_short": ("This text is empty.", "Give it at least one letter."),
    "string_too_long": (
        "This text is too long: at most {max_length} characters.",
        "Shorten it.",
    ),
    "too_short": ("The list needs at least {min_length}, and has {actual_length}.", "Add to it."),
    "too_long": ("The list may hold {max_length}, and has more.", "Shorten it."),
}


def _looks_like_a_number(text: str) -> bool:
    try:
        float(text)
    except ValueError:
        return False
    return True


def _not_one_of(where: str, value: object, expected: str) -> Mistake:
    known = [word.strip("'") for word in expected.replace(" or ", ", ").split(", ")]
    if isinstance(value, str) and value in known:
        return Mistake(where, f"A number is expected here, not {shown(value)}.", _UNQUOTE)
    near = near_word(value, known) if isinstance(value, str) else None
    choices = ", ".join(known)
    remedy = f'Did you mean "{near}"? Known: {choices}.' if near else f"Known: {choices}."
    return Mistake(where, f"{shown(value)} is not known here.", remedy)
