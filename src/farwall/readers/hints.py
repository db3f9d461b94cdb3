"""What a person tells beside a file so that it can be read: of the drawing, or of its photo."""

from __future__ import annotations

from dataclasses import asdict, replace
from typing import Any, Literal

from farwall.floor.geometry import Point
from farwall.nouns import dataclass


@dataclass(frozen=True)
class KnownLength:
    """Two places in a picture [px, from its upper left], and how far apart they are [m]."""

    start: Point
    end: Point
    length_m: float


@dataclass(frozen=True)
class Hints:
    """All that can be told; readers take what concerns them.

    `scale_m_per_unit` [m]: one unit of the drawing. Of a picture: a millimetre of paper where
    `paper_mm` tells the size of the sheet, else a pixel of the flattened picture. `corners` [px,
    from the upper left of the picture as it is shown]: of the sheet, clockwise from the one that
    is its upper left. `paper_mm`: two sides of the sheet. `page`: of a PDF, from 1; with 0 the one
    with the most walls.
    `floors`: `shell` where a model's floor polygons lie beside its walls and the floors of its
    shells are wanted instead.
    """

    scale_m_per_unit: float | None = None
    corners: tuple[Point, ...] = ()
    paper_mm: tuple[float, float] | None = None
    length: KnownLength | None = None
    page: int = 0
    floors: Literal["polygon", "shell"] = "polygon"


def with_scale(hints: Hints | None, scale_m_per_unit: float | None) -> Hints:
    """The hints, with a scale that was told beside them."""
    told = hints or Hints()
    return told if scale_m_per_unit is None else replace(told, scale_m_per_unit=scale_m_per_unit)


def hints_json(hints: Hints) -> dict[str, Any]:
    """The hints as JSON values."""
    return asdict(hints)


def hints_from(told: Any) -> Hints:
    """The hints that `hints_json` wrote."""
    length = told["length"]
    return Hints(
        scale_m_per_unit=told["scale_m_per_unit"],
        corners=tuple((float(x), float(y)) for x, y in told["corners"]),
        paper_mm=tuple(told["paper_mm"]) if told["paper_mm"] else None,
        length=KnownLength(tuple(length["start"]), tuple(length["end"]), length["length_m"])
        if length
        else None,
        page=told["page"],
        floors="shell" if told["floors"] == "shell" else "polygon",
    )
