"""Draws floors corner by corner, without a geometry library: the same digits on every machine."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import cos, pi, radians, sin

from farwall.bench.nouns import Shape
from farwall.floor.geometry import DECIMALS, Point, PolygonGeometry, Ring
from farwall.floor.nouns import Exit, Fixture, Floor, Opening, OpeningKind, Room

Line = tuple[Point, Point]
Corners = Sequence[Point]


def rounded(point: Point) -> Point:
    """A point to a tenth of a millimetre, no minus before a nought."""
    return (round(point[0], DECIMALS) + 0.0, round(point[1], DECIMALS) + 0.0)


def ring(corners: Corners, *, clockwise: bool = False) -> Ring:
    """A closed ring that begins at the first corner; counter-clockwise unless told otherwise."""
    points = [rounded(point) for point in corners]
    closed = [*points, points[0]]
    twice = sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in pairwise(closed))
    return tuple(closed if (twice < 0) == clockwise else closed[::-1])


def polygon(corners: Corners, holes: Sequence[Corners] = ()) -> PolygonGeometry:
    """A polygon by its corners, with holes by theirs. [m]"""
    return PolygonGeometry((ring(corners), *(ring(hole, clockwise=True) for hole in holes)))


def box(x0: float, y0: float, x1: float, y1: float) -> list[Point]:
    """The corners of an upright rectangle. [m]"""
    return [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]


def arc(
    centre: Point, radius_m: float, from_deg: float, to_deg: float, *, legs: int
) -> list[Point]:
    """The points of an arc in `legs` chords, both ends with it."""
    x, y = centre
    step = (to_deg - from_deg) / legs
    turns = [radians(from_deg + step * leg) for leg in range(legs + 1)]
    return [(x + radius_m * cos(turn), y + radius_m * sin(turn)) for turn in turns]


def round_of(centre: Point, radius_m: float, corners: int) -> list[Point]:
    """A regular polygon, its first corner to the right of the centre."""
    return arc(centre, radius_m, 0.0, 360.0, legs=corners)[:-1]


def turned(points: Corners, degrees: float) -> list[Point]:
    """Points turned about the origin, counter-clockwise."""
    c, s = cos(degrees * pi / 180), sin(degrees * pi / 180)
    return [(x * c - y * s, x * s + y * c) for x, y in points]


def opening(
    name: str,
    kind: OpeningKind,
    line: Sequence[Point],
    *rooms: str,
    threshold: PolygonGeometry | None = None,
) -> Opening:
    """An opening as wide as its line, between two rooms or out of one."""
    one, two = rounded(line[0]), rounded(line[1])
    width = ((two[0] - one[0]) ** 2 + (two[1] - one[1]) ** 2) ** 0.5
    return Opening(name, kind, (one, two), rooms, round(width, DECIMALS), threshold)


def shape(
    name: str,
    corners: Corners,
    way_out: Sequence[Point],
    *,
    holes: Sequence[Corners] = (),
    dry: Sequence[tuple[str, Corners]] = (),
) -> Shape:
    """One room with one way out; `dry` names what stands on its slab."""
    return rooms_shape(name, {"room": polygon(corners, holes)}, [], way_out, "room", dry=dry)


def rooms_shape(
    name: str,
    rooms: dict[str, PolygonGeometry],
    inner: Sequence[Opening],
    way_out: Sequence[Point],
    out_of: str,
    *,
    dry: Sequence[tuple[str, Corners]] = (),
) -> Shape:
    """Rooms joined by `inner` openings, with one way out of the room `out_of`."""
    floor = Floor(
        tuple(Room(key, outline) for key, outline in rooms.items()),
        (*inner, opening("way-out", "outside", way_out, out_of)),
        tuple(
            Fixture(kind, polygon(corners), f"{kind}-{number}")
            for number, (kind, corners) in enumerate(dry, start=1)
        ),
    )
    return Shape(name, floor, Exit("out", "way-out"))
