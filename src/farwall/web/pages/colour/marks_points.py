"""Points of a room that a person can find in its photo, and what the form tells of them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from math import hypot, isfinite
from string import ascii_uppercase

import shapely

from farwall.errors import Mistake, Refused
from farwall.floor.geometry import Point, Ring
from farwall.floor.nouns import Floor
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.readers.floor_photo.nouns import Pair, TargetAt
from farwall.web.pages.colour.marks_places import place_of, place_told
from farwall.web.words import said

_APART_M, _BESIDE_M = 0.12, 0.05
_MOST_DEG = 1e6
MOST = len(ascii_uppercase)
TARGET = ("target_x", "target_y", "target_deg")


@dataclass(frozen=True)
class Landmark:
    """A point of the plan with its letter; kind: corner, jamb, cut or fixture."""

    letter: str
    kind: str
    at: Point


def landmarks(floor: Floor, room: str) -> tuple[Landmark, ...]:
    """Corners of the room, jambs, ends and bends of saw cuts, corners of fixtures; at most 26."""
    shape = floor.room_by_id[room].polygon.shape.buffer(_BESIDE_M)
    found: list[tuple[str, Point]] = []
    for kind, at in _every(floor, room):
        if kind != "corner" and not shape.contains(shapely.Point(at)):
            continue
        if all(hypot(at[0] - x, at[1] - y) > _APART_M for _, (x, y) in found):
            found.append((kind, at))
    return tuple(
        Landmark(letter, kind, at)
        for letter, (kind, at) in zip(ascii_uppercase, found[:MOST], strict=False)
    )


def begun(
    marks: Sequence[Landmark], pairs: Sequence[Pair], target: TargetAt | None, file_px: float,
    units: Units = "metric",
) -> dict[str, str]:  # fmt: skip
    """The fields of the form, in points of the picture as it is shown; empty where not told.

    units: those of the places on the plan.
    """
    told = dict.fromkeys((f"{one.letter}_{axis}" for one in marks for axis in "xy"), "")
    for pair in pairs:
        near = next((one for one in marks if _there(one.at, pair.floor)), None)
        if near is not None:
            for axis, value in zip("xy", pair.photo, strict=True):
                told[f"{near.letter}_{axis}"] = f"{value / file_px:.0f}"
    places = ("", "", "")
    if target:
        x, y = (place_told(value, units) for value in target.at)
        places = (x, y, f"{target.direction_deg:g}")
    return told | dict(zip(TARGET, places, strict=True))


def pairs_told(
    marks: Sequence[Landmark], told: Mapping[str, str], file_px: float
) -> tuple[Pair, ...]:  # fmt: skip
    """The points that were set, in points of the file. Raises Refused with every mistake."""
    pairs: list[Pair] = []
    mistakes: list[Mistake] = []
    for one in marks:
        x, y = (told.get(f"{one.letter}_{axis}", "").strip() for axis in "xy")
        if not x and not y:
            continue
        try:
            px, py = (float(text.replace(",", ".")) for text in (x, y))
        except ValueError:
            px = py = float("nan")
        if isfinite(px) and isfinite(py) and abs(px) < 1e6 and abs(py) < 1e6:
            pairs.append(Pair((px * file_px, py * file_px), one.at, one.letter))
        else:
            mistakes.append(Mistake(one.letter, said("marks-no-place")))
    if mistakes:
        raise Refused(*mistakes)
    return tuple(pairs)


def target_told(told: Mapping[str, str], units: Units = "metric") -> TargetAt | None:
    """Where the target lies, None where nothing was told. Raises Refused."""
    texts = [told.get(key, "").strip() for key in TARGET]
    if not any(texts):
        return None
    x, y = (place_of(text, units) for text in texts[:2])
    try:
        direction = float(texts[2].replace(",", ".").removesuffix("°"))
    except ValueError:
        direction = float("nan")
    if x is None or y is None or not abs(direction) < _MOST_DEG:
        raise Refused(Mistake(said("marks-target"), said("marks-target-three")))
    return TargetAt((x, y), direction)


def _every(floor: Floor, room: str) -> Iterator[tuple[str, Point]]:
    for ring in floor.room_by_id[room].polygon.coordinates:
        yield from (("corner", at) for at in _corners(ring))
    for opening in floor.openings:
        if room in opening.rooms:
            yield from (("jamb", at) for at in opening.line)
    for cut in floor.saw_cuts:
        yield from (("cut", at) for at in cut.line)
    for fixture in floor.fixtures:
        yield from (("fixture", at) for at in _corners(fixture.polygon.coordinates[0]))


def _corners(ring: Ring) -> Iterator[Point]:
    points = ring[:-1] if ring and ring[0] == ring[-1] else ring
    for n, at in enumerate(points):
        if _bends(points[n - 1], at, points[(n + 1) % len(points)]):
            yield at


def _bends(before: Point, at: Point, after: Point) -> bool:
    """Whether a corner can be seen there: no point on a straight wall."""
    ax, ay = at[0] - before[0], at[1] - before[1]
    bx, by = after[0] - at[0], after[1] - at[1]
    long = hypot(ax, ay) * hypot(bx, by)
    return long > 0 and abs(ax * by - ay * bx) / long > 0.1


def _there(a: Point, b: Point) -> bool:
    return hypot(a[0] - b[0], a[1] - b[1]) < 0.002
