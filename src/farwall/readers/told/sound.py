"""What can be reckoned with: numbers that are numbers, and an origin that is near.

A model may stand at map coordinates, a thousand kilometres from its origin; sums with such figures
lose the tenths of a millimetre that a floor is kept in.
"""

from __future__ import annotations

from dataclasses import replace
from math import dist, isfinite

import numpy as np
import shapely
from shapely.affinity import translate

from farwall.facts.reading import Note
from farwall.floor.geometry import Point, polygon_geometry
from farwall.nouns import dataclass
from farwall.readers.told.nouns import Told, ToldFixture, ToldOpening, ToldSpace, ToldWindow

FAR_M = 1000.0
"""A model that reaches farther from its origin than this is moved to it."""
_LARGEST_M = 1e7
_SHORTEST_M = 0.05


@dataclass(frozen=True)
class Sound:
    """A told model of finite numbers near the origin, and what was done for it."""

    told: Told
    mended: list[Note]
    left: list[Note]


def made_sound(told: Told) -> Sound:
    """The model without what has no place, near its origin; what fell out is named."""
    left: list[Note] = []
    spaces = tuple(s for s in told.spaces if _shaped(s.shape))
    for space in told.spaces:
        if not _shaped(space.shape):
            what = f"“{space.name or space.id}” has no outline that could be read: no floor of it."
            left.append(Note("room-unsound", what))
    openings = tuple(_placed(opening, left) for opening in told.openings)
    windows = tuple(w for w in told.windows if _is_line(w.line))
    fixtures = tuple(f for f in told.fixtures if _shaped(f.shape))
    lost = len(told.windows) - len(windows) + len(told.fixtures) - len(fixtures)
    if lost:
        left.append(Note("not-read", f"{lost} × window or fixture without a place passed over."))
    whole = replace(told, spaces=tuple(map(_with_sure_heights, spaces)), openings=openings,
                    windows=windows, fixtures=fixtures)  # fmt: skip
    corner = _corner(whole)
    if corner is None:
        return Sound(whole, [], left)
    what = (
        f"The model lies far from its origin; the point {corner[0]:.0f} m right and "
        f"{corner[1]:.0f} m up in it was made the origin."
    )
    return Sound(_moved(whole, corner), [Note("origin-moved", what, (0.0, 0.0))], left)


def _shaped(shape: shapely.Polygon) -> bool:
    if shape.is_empty:
        return False
    coords = shapely.get_coordinates(shape)
    return bool(np.isfinite(coords).all() and np.abs(coords).max() < _LARGEST_M)


def _is_line(line: tuple[Point, Point]) -> bool:
    flat = [*line[0], *line[1]]
    sure = all(isfinite(value) and abs(value) < _LARGEST_M for value in flat)
    return sure and dist(*line) >= _SHORTEST_M


def _placed(opening: ToldOpening, left: list[Note]) -> ToldOpening:
    if opening.seam is None or _is_line(opening.seam):
        return opening
    what = f"The place of opening “{opening.id}” is no line that could be read."
    left.append(Note("opening-unsound", what))
    return replace(opening, seam=None)


def _with_sure_heights(space: ToldSpace) -> ToldSpace:
    def sure(value: float | None) -> float | None:
        return value if value is not None and isfinite(value) else None

    return replace(space, floor_m=sure(space.floor_m), height_m=sure(space.height_m))


def _corner(told: Told) -> Point | None:
    shapes = [space.shape for space in told.spaces]
    if not shapes:
        return None
    bounds = shapely.total_bounds(np.array(shapes, dtype=object))
    if np.abs(bounds).max() <= FAR_M:
        return None
    return float(np.floor(bounds[0])), float(np.floor(bounds[1]))


def _moved(told: Told, corner: Point) -> Told:
    def at(point: Point) -> Point:
        return point[0] - corner[0], point[1] - corner[1]

    def line(ends: tuple[Point, Point]) -> tuple[Point, Point]:
        return at(ends[0]), at(ends[1])

    def note(told_note: Note) -> Note:
        where = None if told_note.where is None else at(told_note.where)
        shape = told_note.shape
        if shape is not None:
            shape = polygon_geometry(shifted(shape.shape))
        return replace(told_note, where=where, shape=shape)

    def shifted(shape: shapely.Polygon) -> shapely.Polygon:
        moved = translate(shape, -corner[0], -corner[1])
        return moved if isinstance(moved, shapely.Polygon) else shape

    def opening(one: ToldOpening) -> ToldOpening:
        return one if one.seam is None else replace(one, seam=line(one.seam))

    def window(one: ToldWindow) -> ToldWindow:
        return replace(one, line=line(one.line))

    def fixture(one: ToldFixture) -> ToldFixture:
        return replace(one, shape=shifted(one.shape))

    return replace(
        told,
        spaces=tuple(replace(space, shape=shifted(space.shape)) for space in told.spaces),
        openings=tuple(map(opening, told.openings)),
        windows=tuple(map(window, told.windows)),
        fixtures=tuple(map(fixture, told.fixtures)),
        mended=tuple(map(note, told.mended)),
        left=tuple(map(note, told.left)),
        asks=tuple(map(note, told.asks)),
    )
