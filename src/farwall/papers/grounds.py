"""What a plan rests on, in the words and units of the person who reads it."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from farwall.evidence import rank_words
from farwall.facts.plan import Ground
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.papers.words import coverage_words, degrees_words, length, volume
from farwall.units import ft2_from_m2, ft_from_m

Saying = Callable[[float, Units], str]


def _spray_rate(value: float, units: Units) -> str:
    return f"{ft2_from_m2(value):.0f} ft²/min" if units == "us" else f"{value:.1f} m²/min"


def _walk(value: float, units: Units) -> str:
    return f"{ft_from_m(value):.0f} ft/min" if units == "us" else f"{value:.0f} m/min"


def _air(value: float, units: Units) -> str:
    return f"{ft_from_m(value) * 60:.0f} ft/min" if units == "us" else f"{value:.2f} m/s"


_BY_UNIT: dict[str, Saying] = {
    "L": lambda value, units: volume(value, units, both=False),
    "m": lambda value, units: length(value, units, both=False),
    "m2/min": _spray_rate,
    "m2/L": coverage_words,
    "C": degrees_words,
    "m/min": _walk,
    "m/s": _air,
    "min": lambda value, _: f"{value:g} min",
    "s": lambda value, _: f"{value:g} s",
    "%": lambda value, _: f"{value:g} %",
}

_NAMES = {
    "tools.tank_l": "tank",
    "tools.band_m": "band width",
    "tools.spray_m2_min": "spray rate",
    "tools.walk_m_min": "walking",
    "tools.refill_min": "a refill",
    "tools.swap_min": "swapping a tank",
    "tools.overlap_m": "wet overlap",
    "tools.reach_m": "reach of the wand",
    "tools.tip_l_min": "flow of the tip, a minute",
    "survey.slab_c": "slab",
    "survey.air_c": "air",
    "survey.rh_percent": "humidity of the air",
    "survey.air_speed_m_s": "draught",
    "survey.drop_s": "a drop goes in after",
    "survey.finish": "finish of the slab",
    "wishes.certainty_percent": "certainty that the mix lasts",
    "wishes.spread_percent": "spread of what the slab drinks",
    "starts_at": "start",
}

_WEIGHT = (
    "edge", "open time", "coverage", "spray rate", "swapping", "a refill", "slab", "a drop",
    "spread", "tank", "band width",
)  # fmt: skip
_LEFT_OUT = frozenset({"starts_at", "stains", "coats"})
"""Shown elsewhere on the sheet."""


@dataclass(frozen=True)
class GroundWords:
    """One ground as a reader wants it."""

    name: str
    value: str
    told: str


def ground_words(ground: Ground, units: Units, *, coats: Sequence[str] = ()) -> GroundWords:
    """A ground with its name in plain words and its value in the user's units."""
    told = rank_words(ground.rank, ground.source)
    return GroundWords(_name(ground.name, coats), ground_value(ground, units), told)


def weightiest(
    grounds: Sequence[Ground], *, units: Units, most: int, coats: Sequence[str] = ()
) -> list[GroundWords]:
    """The grounds that decide the day, weightiest first, at most `most` of them."""
    kept = [g for g in grounds if g.name not in _LEFT_OUT and not g.name.startswith("container")]
    told = [ground_words(g, units, coats=coats) for g in kept]
    return sorted(told, key=lambda words: _weight(words.name))[:most]


def _weight(name: str) -> int:
    return next((k for k, word in enumerate(_WEIGHT) if name.startswith(word)), len(_WEIGHT))


def _name(name: str, coats: Sequence[str]) -> str:
    if name in _NAMES:
        return _NAMES[name]
    parts = name.split(".")
    if len(parts) == 3 and parts[0] == "coats" and parts[2] == "m2_per_l":
        coat = str(coats.index(parts[1]) + 1) if parts[1] in coats else parts[1]
        return f"coverage, coat {coat}"
    return name.replace("_", " ").replace(".", ", ")


def ground_value(ground: Ground, units: Units) -> str:
    """The value alone, in the user's units; what is no number as it stands."""
    say = _BY_UNIT.get(ground.unit)
    try:
        number = float(ground.value)
    except ValueError:
        number = None
    if say is None or number is None:
        return f"{ground.value} {ground.unit}".strip()
    return say(number, units)
