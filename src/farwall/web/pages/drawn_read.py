"""What the drawing screen posts, by its shape; whether it makes a house the job's reader says."""

from __future__ import annotations

import json
from math import isfinite
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.web.pages.drawn import KEYS, LISTS

Json = dict[str, Any]
MOST_DRAWN_BYTES = 2_000_000
MOST_THINGS = 4000
"""More things than any house has. Rank: guess."""


def drawn_from(text: str) -> Json:
    """What was posted, with the five lists. Raises Refused with every mistake of its shape."""
    try:
        told = json.loads(text, parse_constant=_no_constant)
    except (ValueError, RecursionError):
        raise Refused(Mistake("", "what was sent is no drawing.", "Load the page again.")) from None
    if not isinstance(told, dict):
        raise Refused(Mistake("", "what was sent is no drawing.", "Load the page again."))
    mistakes: list[Mistake] = []
    found: Json = {}
    for name in (*LISTS, "exits"):
        found[name] = list(_things(name, told.get(name), mistakes))
    if mistakes:
        raise Refused(*mistakes)
    return found


def _things(name: str, told: Any, mistakes: list[Mistake]) -> list[Json]:
    where = name if name == "exits" else f"floor.{name}"
    if not isinstance(told, list) or len(told) > MOST_THINGS:
        mistakes.append(Mistake(where, "this is no list of things.", "Load the page again."))
        return []
    found = []
    for place, one in enumerate(told):
        if not isinstance(one, dict) or not isinstance(one.get("id"), str) or not one["id"]:
            mistakes.append(Mistake(f"{where}[{place}]", "this thing has no id."))
            continue
        found.append({key: value for key, value in one.items() if key in KEYS[name]})
    return found


def _no_constant(name: str) -> float:
    raise ValueError(name)


def placed_at(value: Any) -> tuple[float, float] | None:
    """A point of plain values, or None."""
    pair = isinstance(value, list) and len(value) == 2
    if pair and all(isinstance(x, int | float) and not isinstance(x, bool) for x in value):
        x, y = float(value[0]), float(value[1])
        return (x, y) if isfinite(x) and isfinite(y) else None
    return None
