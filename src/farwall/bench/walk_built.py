"""Walls as they are built: each one line, turned and pushed a little, its faces not quite even."""

from __future__ import annotations

from math import hypot, radians, tan
from random import Random

from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor, Room

HALF_M = 0.06
SKEW_DEG, SHIFT_M, FACE_M = 0.2, 0.003, 0.002


class Chance:
    """Normal draws that come out the same in every version of Python."""

    def __init__(self, seed: str) -> None:
        self.next = Random(seed).random

    def normal(self, sigma: float) -> float:
        """Sum of twelve uniform draws less six: near enough to normal, within six sigma."""
        return sigma * (sum(self.next() for _ in range(12)) - 6.0)

    def among(self, count: int) -> int:
        """A whole number from 0, below count."""
        return int(self.next() * count)


class Built:
    """The walls of a floor as built: each line turned and pushed a little."""

    def __init__(self, floor: Floor, chance: Chance, *, rough: float) -> None:
        spans: dict[tuple[str, int], list[list[float]]] = {}
        for room in floor.rooms:
            for one, two, out in edges_of(room):
                axis, place, span = _line(one, two, out)
                spans.setdefault((axis, place), []).append(span)
        self.lines: dict[tuple[str, int], list[tuple[float, float, float, float]]] = {}
        self.faces: dict[tuple[str, int, int, int], float] = {}
        self.chance = chance
        for key in sorted(spans):
            for low, high in _joined(spans[key]):
                turned = tan(radians(chance.normal(rough * SKEW_DEG)))
                self.lines.setdefault(key, []).append((low, high, turned, chance.normal(SHIFT_M)))

    def face(self, one: Point, two: Point, out: Point, at: float) -> float:
        """Where the face of an edge lies across, at a place along it [m]."""
        axis, place, span = _line(one, two, out)
        middle = sum(span) / 2
        number, (low, high, turned, shift) = min(
            enumerate(self.lines[axis, place]),
            key=lambda each: max(each[1][0] - middle, middle - each[1][1]),
        )
        side = int(out[0] + out[1])
        key = (axis, place, number, side)
        if key not in self.faces:
            self.faces[key] = self.chance.normal(FACE_M)
        nominal = one[0] if axis == "x" else one[1]
        return nominal + shift + turned * (at - (low + high) / 2) + self.faces[key]


def edges_of(room: Room) -> list[tuple[Point, Point, Point]]:
    """Edges of a room walked clockwise, each with its outward side."""
    ring = list(reversed(room.polygon.coordinates[0][:-1]))
    found = []
    for k, one in enumerate(ring):
        two = ring[(k + 1) % len(ring)]
        length = hypot(two[0] - one[0], two[1] - one[1])
        along = (two[0] - one[0]) / length, (two[1] - one[1]) / length
        found.append((one, two, (round(-along[1]) + 0.0, round(along[0]) + 0.0)))
    return found


def _line(one: Point, two: Point, out: Point) -> tuple[str, int, list[float]]:
    """Axis, whole centimetre of the middle of the wall, and the stretch along it."""
    if abs(one[0] - two[0]) < 1e-9:
        return "x", round((one[0] + out[0] * HALF_M) * 100), sorted((one[1], two[1]))
    return "y", round((one[1] + out[1] * HALF_M) * 100), sorted((one[0], two[0]))


def _joined(spans: list[list[float]]) -> list[tuple[float, float]]:
    found: list[list[float]] = []
    for low, high in sorted(spans):
        if found and low <= found[-1][1] + 3 * HALF_M:
            found[-1][1] = max(found[-1][1], high)
        else:
            found.append([low, high])
    return [(low, high) for low, high in found]
