"""A look at the floor as a form takes it: up to six spots, or what a photo said, as one entry."""

from __future__ import annotations

import math
from collections.abc import Mapping
from statistics import fmean, stdev

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.web.words import said

SPOTS = 6
AXES = ("l", "a", "b")
_MOST = {"l": (0.0, 100.0), "a": (-150.0, 150.0), "b": (-150.0, 150.0)}
PASSED = ("state", "room", "coat", "light", "day", "time", "id", "file", "error_de")


@dataclass(frozen=True)
class Spot:
    """One spot of the form: its number, and what stands in its three fields."""

    number: int
    typed: tuple[str, str, str]


def spots_typed(form: Mapping[str, str]) -> tuple[Spot, ...]:
    """All spots as they were typed, empty ones too."""
    return tuple(
        Spot(n, (form.get(f"l{n}", ""), form.get(f"a{n}", ""), form.get(f"b{n}", "")))
        for n in range(1, SPOTS + 1)
    )


def passed(form: Mapping[str, str]) -> dict[str, str]:
    """What is kept as it was typed."""
    return {key: form[key] for key in PASSED if form.get(key)}


def has_spots(form: Mapping[str, str]) -> bool:
    """Whether anything was typed about a spot."""
    return any(one.strip() for spot in spots_typed(form) for one in spot.typed)


def as_entry(form: Mapping[str, str]) -> dict[str, str]:
    """What the form says as the fields of a `colour-seen`: mean, spots, spread between them.

    Raises Refused with every spot that is half told or no number, and where none is told.
    """
    found: list[tuple[float, float, float]] = []
    wrong: list[Mistake] = []
    for spot in spots_typed(form):
        if not any(one.strip() for one in spot.typed):
            continue
        values = [_number(one, axis) for one, axis in zip(spot.typed, AXES, strict=True)]
        known = [one for one in values if one is not None]
        if len(known) == len(AXES):
            found.append((known[0], known[1], known[2]))
        else:
            where = said("colour-next-spot", n=spot.number)
            wrong.append(Mistake(where, said("colour-next-spot-wrong")))
    if not found and not wrong:
        wrong.append(Mistake(said("colour-next-spots"), said("colour-next-spots-none")))
    if wrong:
        raise Refused(*wrong)
    told = passed(form)
    mean = [fmean(one[n] for one in found) for n in range(3)]
    told |= {
        "lightness": f"{mean[0]:.2f}", "lab_a": f"{mean[1]:.2f}", "lab_b": f"{mean[2]:.2f}",
        "spots": str(len(found)),
    }  # fmt: skip
    if len(found) > 1:
        told["spread_lightness"] = f"{stdev(one[0] for one in found):.2f}"
    return told


def _number(text: str, axis: str) -> float | None:
    low, high = _MOST[axis]
    try:
        value = float(text.strip().replace(",", "."))
    except ValueError:
        return None
    return value if math.isfinite(value) and low <= value <= high else None
