"""Quantities in words, in the user's units first and the other beside."""

from __future__ import annotations

import re
from collections.abc import Sequence

from farwall.facts.defaults import DEFAULT_STAINS
from farwall.facts.plan import Plan
from farwall.floor.short_labels import short_labels
from farwall.papers.wall_clock import Units
from farwall.phrasebook import LANGUAGE
from farwall.units import (
    f_from_c,
    feet_and_inches,
    ft2_from_m2,
    ft2_per_gal_from_m2_per_l,
    gal_from_l,
    length_words,
    measures_own_first,
)

_BEFORE_UNIT = re.compile(
    r"(?<=[\d½]) (?=(?:gal|L|mL|ft²|m²|ft³|m³|ft|m|mm|min|h|s|lb|kg|g|mg|°F|°C|K|%|ppm|cfm|gpm|mph"
    r"|am|pm)"
    r"(?![\w²³]))"
)
_HALF_DAY = re.compile(r"(?<=\d) ([ap])\. m\.")
_WHOLE_HOURS_MIN = 600


def volume(litres: float, units: Units, *, both: bool = True) -> str:
    """`1.25 gal (4.7 L)`, or the other way round."""
    gallons, metric = f"{_gallons(litres)} gal", f"{_litres(litres)} L"
    first, second = (gallons, metric) if units == "us" else (metric, gallons)
    return f"{first} ({second})" if both else first


def _gallons(litres: float) -> str:
    value = gal_from_l(litres)
    return f"{value:.2f}" if value < 10 else f"{value:.1f}"


def _litres(litres: float) -> str:
    return f"{litres:.2f}" if litres < 1 else f"{litres:.1f}"


def unbroken(text: str) -> str:
    """The text with each number tied to its unit or half of the day: no line ends between them."""
    return _HALF_DAY.sub("\u00a0\\1.\u00a0m.", _BEFORE_UNIT.sub("\u00a0", text))


def own_first(text: str, units: Units) -> str:
    """A sentence that tells a measure both ways, the reader's own first: `60 °F (16 °C)` is told as
    `16 °C (60 °F)` where units are metric. Other words are left as they are."""
    return measures_own_first(text, us=units == "us")


def area(area_m2: float, units: Units) -> str:
    """`214 ft²` or `19.9 m²`."""
    return f"{ft2_from_m2(area_m2):,.0f} ft²" if units == "us" else f"{area_m2:,.1f} m²"


def length(length_m: float, units: Units, *, both: bool = True) -> str:
    """`3' 4" (1.02 m)` or `1.02 m (3' 4")`."""
    if both:
        return length_words(length_m, us=units == "us")
    return feet_and_inches(length_m) if units == "us" else f"{length_m:.2f} m"


def minutes(value: float) -> str:
    """`6.2 min`; from two hours on `2 h 5 min`, from ten on `31 h`: no clock is surer."""
    if value < 120:
        return f"{value:.1f} min" if value < 20 else f"{value:.0f} min"
    if value >= _WHOLE_HOURS_MIN:
        return f"{value / 60:.0f} h"
    hours, rest = divmod(round(value), 60)
    return f"{hours} h {rest} min" if rest else f"{hours} h"


def listed(items: Sequence[str], *, last: str = " and ") -> str:
    """`a, b and c`; `a, b y c` on a Spanish paper."""
    if last == " and " and LANGUAGE.get() == "es":
        last = " y "
    if len(items) <= 1:
        return "".join(items)
    return ", ".join(items[:-1]) + last + items[-1]


def names_in(plan: Plan) -> frozenset[str]:
    """What people call the rooms, stains, coats and openings of a plan: no language changes it."""
    pieces = {word for room in plan.inputs.floor.rooms for word in _pieces(room.label)}
    return whole_names_in(plan) | pieces


def whole_names_in(plan: Plan) -> frozenset[str]:
    """The same without the lines that a label breaks into: where nothing is drawn, `room` is a
    word of ours and no half of `Great room`."""
    inputs = plan.inputs
    rooms = {word for room in inputs.floor.rooms for word in (room.id, room.label)}
    coats = {word for coat in inputs.coats for word in (coat.id, coat.stain)}
    # Names that Farwall gave where the job tells no stains are words of ours, and are translated.
    stains = set(plan.stain_names.values()) - {stain.name for stain in DEFAULT_STAINS}
    lines = {one.id for one in inputs.openings} | {one.id for one in inputs.saw_cuts}
    return frozenset(rooms | coats | stains | lines | {plan.job})


def _pieces(label: str) -> list[str]:
    """A label and the lines that it may be broken into."""
    words = label.split()[:8]
    ends = [(k, n) for k in range(len(words)) for n in range(k + 1, len(words) + 1)]
    return [label, *(" ".join(words[k:n]) for k, n in ends)]


def short_room_names(plan: Plan, room_ids: Sequence[str]) -> list[str]:
    """The same for short: of an open-plan room with several names the first of them."""
    label = short_labels(plan.inputs.floor.rooms)
    return [label.get(room_id, room_id) for room_id in room_ids]


def room_names(plan: Plan, room_ids: Sequence[str]) -> list[str]:
    """What people call these rooms; an id that the plan does not know stands for itself."""
    label = {room.id: room.label for room in plan.inputs.floor.rooms}
    return [label.get(room_id, room_id) for room_id in room_ids]


def coverage_words(m2_per_l: float, units: Units) -> str:
    """How far a litre of mix goes: `180 ft²/gal` or `4.4 m²/L`."""
    if units == "us":
        return f"{ft2_per_gal_from_m2_per_l(m2_per_l):.0f} ft²/gal"
    return f"{m2_per_l:.1f} m²/L"


def degrees_words(celsius: float, units: Units) -> str:
    """`78 °F` or `26 °C`."""
    return f"{f_from_c(celsius):.0f} °F" if units == "us" else f"{celsius:.0f} °C"
