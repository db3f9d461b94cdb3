"""Words on a drawing: each takes its place, and none lies on another.

The board knows what is taken. A word is offered places, best first; the
first free one is taken. What finds no place says so, and the caller falls
back to a shorter word, a leader line or a key.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import field
from functools import cached_property

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.papers.lettering import LINE_HEIGHT, text_width

Box = tuple[float, float, float, float]
"""left, top, right, bottom, in units of the drawing."""

_AIR = 1.5
_ASCENT = 0.76
_ASK_AT_MOST = 500
_SQUARE = 32.0


@dataclass(frozen=True)
class Words:
    """Lines of one size, centred under each other; the first may be a bold head of its own size."""

    lines: tuple[str, ...]
    size: float
    bold: bool = False
    head: str = ""
    head_size: float = 0.0
    widen: float = 1.0

    @cached_property
    def width(self) -> float:
        """Width of the widest line."""
        widths = [text_width(line, self.size, bold=self.bold) for line in self.lines]
        if self.head:
            widths.append(text_width(self.head, self.head_size, bold=True))
        return max(widths, default=0.0) * self.widen

    @cached_property
    def height(self) -> float:
        """Height of all lines."""
        return len(self.lines) * self.size * LINE_HEIGHT + (
            self.head_size * LINE_HEIGHT if self.head else 0.0
        )

    def baselines(self, centre: Point) -> list[tuple[Point, str, float, bool]]:
        """Where each line stands when the middle of the words lies at `centre`."""
        top = centre[1] - self.height / 2
        found: list[tuple[Point, str, float, bool]] = []
        rows = [(self.head, self.head_size, True)] if self.head else []
        rows += [(line, self.size, self.bold) for line in self.lines]
        for line, size, bold in rows:
            found.append(
                ((centre[0], top + size * (_ASCENT + (LINE_HEIGHT - 1) / 2)), line, size, bold)
            )
            top += size * LINE_HEIGHT
        return found

    def box(self, centre: Point) -> Box:
        """The space taken when the middle of the words lies at `centre`."""
        return (
            centre[0] - self.width / 2 - _AIR,
            centre[1] - self.height / 2,
            centre[0] + self.width / 2 + _AIR,
            centre[1] + self.height / 2,
        )


@dataclass
class Board:
    """The drawing's space, and what of it is taken."""

    page: Box
    taken: list[Box] = field(default_factory=list)
    _by_square: dict[tuple[int, int], list[Box]] = field(default_factory=dict, init=False)
    """What is taken by the squares of the drawing that it touches: a word asks only near it."""
    _sorted: int = field(default=0, init=False)
    """So many of `taken` lie in their squares."""

    def free(self, box: Box) -> bool:
        """Whether a box lies on the page and on nothing taken."""
        left, top, right, bottom = box
        page = self.page
        if left < page[0] or top < page[1] or right > page[2] or bottom > page[3]:
            return False
        self._sort()
        for square in _squares(box):
            for x0, y0, x1, y1 in self._by_square.get(square, ()):
                if left < x1 and right > x0 and top < y1 and bottom > y0:
                    return False
        return True

    def give_back(self, kept: int) -> None:
        """Free again all that was taken after the first `kept`."""
        del self.taken[kept:]
        self._by_square.clear()
        self._sorted = 0

    def _sort(self) -> None:
        for box in self.taken[self._sorted :]:
            for square in _squares(box):
                self._by_square.setdefault(square, []).append(box)
        self._sorted = len(self.taken)

    def boxes_on(self, shape: BaseGeometry) -> np.ndarray:
        """All taken boxes that a shape of the drawing meets, as shapes."""
        west, north, east, south = shape.bounds
        taken = np.array(self.taken or np.empty((0, 4)))
        near = (taken[:, 0] <= east) & (taken[:, 2] >= west)
        near &= (taken[:, 1] <= south) & (taken[:, 3] >= north)
        boxes = shapely.box(*taken[near].T)
        return np.asarray(boxes[shapely.intersects(boxes, shape)])

    def take(self, box: Box) -> None:
        """Mark a box as taken."""
        self.taken.append(box)

    def take_line(self, points: Sequence[Point], half_width: float = 1.5) -> None:
        """Mark a polyline as taken, in small boxes along it."""
        line = shapely.LineString(points) if len(points) > 1 else None
        if line is None:
            return
        step = 4 * half_width
        places = np.minimum(step * np.arange(int(line.length // step) + 2), line.length)
        at = shapely.get_coordinates(shapely.line_interpolate_point(line, places))
        boxes = np.hstack([at - half_width, at + half_width])
        self.taken += [(x0, y0, x1, y1) for x0, y0, x1, y1 in boxes.tolist()]

    def place(self, words: Words, centres: Iterable[Point]) -> Point | None:
        """The first centre where the words are free; it is taken. None when there is none."""
        for centre in centres:
            box = words.box(centre)
            if self.free(box):
                self.take(box)
                return centre
        return None

    def place_inside(
        self, words: Words, shape: BaseGeometry, *, near: Point | None = None
    ) -> Point | None:
        """Place words wholly inside a shape of the drawing, as near to `near` (or its middle)."""
        return self.place(words, centres_inside(words, shape, near=near))


def _squares(box: Box) -> Iterator[tuple[int, int]]:
    """The squares of the drawing that a box touches."""
    left, top, right, bottom = (int(edge // _SQUARE) for edge in box)
    return itertools.product(range(left, right + 1), range(top, bottom + 1))


def centres_inside(
    words: Words, shape: BaseGeometry, *, near: Point | None = None, inset: float = 0.0
) -> list[Point]:
    """Centres at which the words lie wholly inside the shape, nearest to its middle first."""
    half_w, half_h = words.width / 2 + _AIR + inset, words.height / 2 + inset
    left, top, right, bottom = shape.bounds
    if right - left < 2 * half_w or bottom - top < 2 * half_h:
        return []
    step = max(2.0, np.sqrt((right - left) * (bottom - top) / _ASK_AT_MOST))
    goal = near or middle_of(shape)
    xs = _steps(left + half_w, right - half_w, goal[0], step)
    ys = _steps(top + half_h, bottom - half_h, goal[1], step)
    cx, cy = (axis.ravel() for axis in np.meshgrid(xs, ys))
    boxes = shapely.box(cx - half_w, cy - half_h, cx + half_w, cy + half_h)
    shapely.prepare(shape)
    inside = shapely.contains(shape, boxes)
    cx, cy = cx[inside], cy[inside]
    order = np.argsort((cx - goal[0]) ** 2 + (cy - goal[1]) ** 2, kind="stable")
    return [(float(cx[k]), float(cy[k])) for k in order]


def clear_of(shape: BaseGeometry, words: Words, centres: Sequence[Point]) -> list[Point]:
    """The centres at which the words do not touch a shape of the drawing, in their order."""
    if not centres:
        return []
    shapely.prepare(shape)
    boxes = shapely.box(*np.array([words.box(centre) for centre in centres]).T)
    touched = shapely.intersects(shape, boxes).tolist()
    return [centre for centre, touches in zip(centres, touched, strict=True) if not touches]


def _steps(low: float, high: float, goal: float, step: float) -> np.ndarray:
    """Places from low to high, the goal itself among them when it lies between."""
    start = min(max(goal, low), high)
    below = np.arange(start, low - 1e-9, -step)[1:]
    above = np.arange(start, high + 1e-9, step)
    return np.concatenate([above, below])


def middle_of(shape: BaseGeometry) -> Point:
    """The middle of the roomiest part of a shape; the mean point where that lies well inside."""
    parts = [part for part in shapely.get_parts(shape).tolist() if part.area > 0]
    largest = max(parts, key=lambda part: part.area, default=None)
    if largest is None:
        return (shape.representative_point().x, shape.representative_point().y)
    mean = largest.centroid
    circle = shapely.maximum_inscribed_circle(largest, tolerance=max(largest.length / 400, 1e-3))
    if largest.contains(mean) and largest.boundary.distance(mean) > 0.8 * circle.length:
        return (mean.x, mean.y)
    return (circle.coords[0][0], circle.coords[0][1])


def ring_around(
    centre: Point, *, start: float, step: float, rings: int, spokes: int = 16
) -> list[Point]:
    """Places around a centre, the nearest ring first, to look for free space outward."""
    angles = 2 * np.pi * np.arange(spokes) / spokes
    ways = np.column_stack([np.cos(angles), -np.sin(angles)])
    radii = start + step * np.arange(rings)
    places = np.array(centre) + (radii[:, None, None] * ways).reshape(-1, 2)
    return [(x, y) for x, y in places.tolist()]
