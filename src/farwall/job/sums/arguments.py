"""From what a caller wrote to what a sum needs: keys, twins of units, ranges; faults together."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from fractions import Fraction
from math import isfinite

from farwall.air.conditions import SENSE
from farwall.errors import Mistake, Refused
from farwall.job.sums.noun import Argument, Bounds, Given, Sum
from farwall.job.sums.unit_table import UNITS, converted
from farwall.near_word import near_word

Load = Callable[[str], object]

TEMPERATURE = {"c": "C", "f": "F", "k": "K"}
PERCENT = {"percent": "%"}
SPEED = {"m_s": "m/s", "km_h": "km/h", "mph": "mph", "ft_min": "ft/min"}
PRESSURE = {"pa": "Pa", "hpa": "hPa", "kpa": "kPa", "inhg": "inHg", "psi": "psi"}
HEIGHT = {"m": "m", "ft": "ft"}
FILM = {"mm": "mm", "um": "um", "mil": "mil", "in": "in"}
COVERAGE = {"m2_per_l": "m2/L", "ft2_per_gal": "ft2/US gal"}
AREA = {"m2": "m2", "ft2": "ft2"}
VOLUME = {"l": "L", "ml": "mL", "gal": "US gal", "qt": "US qt", "fl_oz": "US fl oz"}
SECONDS = {"s": "s", "min": "min"}
MINUTES = {"min": "min", "s": "s", "h": "h"}
ADDED = {"ml_per_l": "mL/L", "fl_oz_per_gal": "US fl oz/US gal"}
DENSITY = {"kg_l": "kg/L", "g_ml": "g/mL", "lb_gal": "lb/US gal", "kg_m3": "kg/m3"}

LONGEST_TEXT, LONGEST_NUMBER, GREATEST = 4096, 60, 1e100
MOST_IN_A_LIST = 10_000


def given(asked: Sum, raw: Mapping[str, object], *, load: Load | None = None) -> Given:
    """The arguments of `asked`, checked and in SI.

    raw: keys and values as a caller wrote them, texts or numbers. load: what
    the door makes of a file's name. Raises `Refused` with every mistake:
    unknown keys with the nearest known one, twins given together, texts that
    are no numbers, values out of range, what is missing.
    """
    by_key = {key: one for one in asked.arguments for key in one.keys}
    mistakes: list[Mistake] = []
    values: dict[str, object] = {}
    first_said: dict[str, str] = {}
    for key, value in raw.items():
        argument = by_key.get(key)
        if argument is None:
            mistakes.append(_unknown(key, by_key))
        elif argument.key in first_said:
            told = f"{first_said[argument.key]} says the same thing."
            mistakes.append(Mistake(key, told, "Give one of them."))
        else:
            first_said[argument.key] = key
            try:
                values[argument.key] = (
                    _numbers(argument, key, value)
                    if argument.several and argument.units
                    else _value(argument, key, value, load)
                )
            except Refused as refused:
                mistakes.extend(refused.mistakes)
    mistakes.extend(_missing(asked, first_said))
    if mistakes:
        raise Refused(*mistakes, about=f"The sum {asked.name} cannot be done with this.")
    return Given(values)


def _numbers(argument: Argument, key: str, value: object) -> tuple[float, ...]:
    """The members of a list of quantities, in SI; every one that is none is told."""
    mistakes: list[Mistake] = []
    found = []
    for text in _texts(key, value):
        try:
            found.append(_value(replace(argument, several=False), key, text, None))
        except Refused as refused:
            mistakes.extend(refused.mistakes)
    if mistakes:
        raise Refused(*mistakes)
    return tuple(one for one in found if isinstance(one, float))


def _missing(asked: Sum, said: Mapping[str, str]) -> list[Mistake]:
    told = [
        Mistake(one.key, "This is needed.", f"Give {' or '.join(one.keys)}=….")
        for one in asked.arguments
        if one.needed and one.key not in said
    ]
    for group in asked.one_of:
        here = [said[key] for key in group if key in said]
        keys = [key for one in asked.arguments if one.key in group for key in one.keys]
        if not here:
            told.append(Mistake("", "Something to start from is missing.", _one_of(keys)))
        elif len(here) > 1:
            told.append(Mistake(" and ".join(here), "Only one of these can be given.", ""))
    return told


def _one_of(keys: Sequence[str]) -> str:
    return f"Give one of {', '.join(keys)}."


def _unknown(key: str, known: Mapping[str, Argument]) -> Mistake:
    near = near_word(key, known)
    remedy = f"Did you mean {near}?" if near else f"It knows {', '.join(known)}."
    return Mistake(key[:60], "This sum knows no such argument.", remedy)


def _value(argument: Argument, key: str, value: object, load: Load | None) -> object:
    if argument.several:
        return _texts(key, value)
    if argument.loaded:
        return _loaded(key, _text(key, value), load)
    if argument.units is None and argument.bounds is None:
        return _choice(argument, key, _text(key, value))
    exact = _fraction(key, value)
    unit_name = argument.keys[key]
    if argument.units is not None and unit_name is not None:
        own = UNITS[unit_name]
        canonical = next(iter(argument.units.values()))
        exact = _moved(key, exact, unit_name, canonical)
        _held(argument, key, float(exact), own.name, canonical)
    else:
        _held(argument, key, float(exact), "", "")
    return float(exact)


def _texts(key: str, value: object) -> tuple[str, ...]:
    """The members of a list without the spaces around them; one of a number, none of no text."""
    if isinstance(value, str):
        value = value.split(",") if value.strip() else []
    elif isinstance(value, int | float) and not isinstance(value, bool):
        value = [value]
    if not isinstance(value, list) or len(value) > MOST_IN_A_LIST:
        raise Refused(Mistake(key, "It is no list that can be used.", "Join texts by commas."))
    return tuple(_text(key, one).strip() for one in value)


def _loaded(key: str, text: str, load: Load | None) -> object:
    if load is None:
        raise Refused(Mistake(key, "No file can be opened from here.", ""))
    try:
        return load(text)
    except Refused as refused:
        raise Refused(Mistake(key, refused.about), *refused.mistakes) from None


def _moved(key: str, value: Fraction, source: str, target: str) -> Fraction:
    try:
        return converted(value, UNITS[source], UNITS[target])
    except Refused as refused:
        raise Refused(*(Mistake(key, one.what, one.remedy) for one in refused.mistakes)) from None


def _held(argument: Argument, key: str, value: float, own: str, canonical: str) -> None:
    bounds = argument.bounds
    if bounds is None or bounds.hold(value):
        return
    raise Refused(Mistake(key, f"It must be {_range(bounds, own, canonical)}.", ""))


def _range(bounds: Bounds, own: str, canonical: str) -> str:
    def in_own(value: float) -> str:
        if own == canonical or not own:
            return f"{value:g}"
        return f"{float(converted(Fraction(value), UNITS[canonical], UNITS[own])):.6g}"

    unit = f" {own}" if own not in {"", "1"} else ""
    low = f"above {in_own(bounds.low)}" if bounds.above else f"at least {in_own(bounds.low)}"
    if not isfinite(bounds.high):
        return f"{low}{unit}"
    return f"{low} and at most {in_own(bounds.high)}{unit}"


def _choice(argument: Argument, key: str, text: str) -> str:
    if argument.choices and text not in argument.choices:
        raise Refused(
            Mistake(key, f'"{text[:40]}" is none of the choices.', _one_of(argument.choices))
        )
    return text


def _text(key: str, value: object) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    if not isinstance(value, str | int | float) or not 0 < len(str(value)) <= LONGEST_TEXT:
        raise Refused(Mistake(key, "It is not a text that can be used.", "Write a short text."))
    return str(value)


def _fraction(key: str, value: object) -> Fraction:
    if isinstance(value, str):
        text = value.strip()
        if len(text) > LONGEST_NUMBER:
            raise Refused(Mistake(key, "A number of that many figures is not read.", "Round it."))
        if "," in text:
            raise Refused(Mistake(key, f'"{text[:40]}" has a comma.', "Write it like 1234.5."))
    elif isinstance(value, int | float) and not isinstance(value, bool):
        text = repr(value)
    else:
        raise Refused(Mistake(key, "It is not a number.", "Write it like 21 or 21.5."))
    try:
        near = float(text)
    except (ValueError, OverflowError):
        raise Refused(
            Mistake(key, f'"{text[:40]}" is not a number.', "Write it like 21 or 21.5.")
        ) from None
    if not isfinite(near) or abs(near) > GREATEST:
        raise Refused(Mistake(key, f'"{text[:40]}" is beyond any number here.', ""))
    # A fraction of 1e-999999999 would fill the machine; to every sum here it is nothing.
    return Fraction(text) if abs(near) > 1 / GREATEST else Fraction(0)


def sensible(name: str) -> Bounds:
    """The bounds that `air.conditions` sets for one of its values, as those of an argument."""
    low, high, _ = SENSE[name]
    return Bounds(low, high)
