"""One line on a field's page: the bands that the plan takes beside those that it could take."""

from __future__ import annotations

from farwall.facts.plan import Choice, Field
from farwall.papers.wall_clock import Units
from farwall.papers.words import volume

_NAMES = {"best": "The best bands", "plain": "Plain straight bands"}
_SAME_MIN, _SAME_L = 0.05, 0.02


def choice_line(field: Field, units: Units) -> list[str]:
    """The other choice in one sentence; nothing where there is none or it is the same."""
    mine = [one for one in field.choices if one.chosen]
    rest = [one for one in field.choices if not one.chosen]
    if not mine or not rest:
        return []
    own, other = mine[0], rest[0]
    if _alike(own, other):
        return ["These are plain straight bands: none better were found."]
    margin = other.margin_min
    edge = f"edge {other.peak_age_min:.1f} min, "
    edge += f"{margin:.1f} min to spare" if margin >= 0 else f"{-margin:.1f} min too many"
    parts = [edge, f"{other.bands} bands", _more(other.minutes - own.minutes)]
    litres = other.litres - own.litres
    if abs(litres) >= _SAME_L:
        parts.append(f"{volume(abs(litres), units)} {'more' if litres > 0 else 'less'}")
    return [f"{_NAMES[other.name]} instead: {', '.join(parts)}."]


def _more(minutes: float) -> str:
    if abs(minutes) < _SAME_MIN:
        return "as long"
    return f"{abs(minutes):.1f} min {'more' if minutes > 0 else 'less'}"


def _alike(one: Choice, other: Choice) -> bool:
    return one.bands == other.bands and one.peak_age_min == other.peak_age_min
