"""Windows of a floor in words, and one more put into the wall of a room that looks a given way."""

from __future__ import annotations

import math
from itertools import pairwise

import shapely

from farwall.facts.job import Job
from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor, Room, Window
from farwall.papers.words import length
from farwall.web.words import said

WINDS = ("N", "NE", "E", "SE", "S", "SW", "W", "NW")
_WALL_M = 0.4
"""A wall with floor of another room this near behind it is no outside wall. Guess."""
_TURN_DEG = 46.0
"""A wall looks the way that is asked for when it is no further off than half a quarter."""


def window_title(job: Job, n: int) -> str:
    """`5' 0" wide, in Kitchen, facing south-west`; without the wind where north is not told."""
    window = job.floor.windows[n]
    room = _room_of(window, job.floor)
    (ax, ay), (bx, by) = window.line
    width = length(math.hypot(bx - ax, by - ay), job.wishes.units, both=False)
    label = room.label if room is not None else ""
    if job.floor.north_deg is None or room is None:
        return said("window-title-plain", width=width, room=label)
    wind = said(f"way-{wind_of(window.line, room, job.floor.north_deg)}")
    return said("window-title", width=width, room=label, way=wind)


def wind_of(line: tuple[Point, Point], room: Room, north_deg: float) -> str:
    """The one of `WINDS` that a window in the wall of a room looks at."""
    bearing = (_outward_deg(line, room) - north_deg) % 360
    return WINDS[int((bearing + 22.5) // 45) % 8]


def window_line(job: Job, room: Room, wind: str, width_m: float) -> tuple[Point, Point] | None:
    """Where a window would lie: in the longest outside wall of a room that looks there.

    None where no such wall is long enough, or north is not told.
    """
    if job.floor.north_deg is None:
        return None
    wanted = (WINDS.index(wind) * 45.0 + job.floor.north_deg) % 360
    others = shapely.union_all([
        one.polygon.shape.buffer(_WALL_M) for one in job.floor.rooms
        if one.id != room.id and one.storey == room.storey
    ])  # fmt: skip
    best: shapely.LineString | None = None
    ring = room.polygon.coordinates[0]
    for first, last in pairwise(ring):
        off = abs((_outward_deg((first, last), room) - wanted + 180) % 360 - 180)
        if first == last or off > _TURN_DEG:
            continue
        for part in shapely.get_parts(shapely.LineString([first, last]).difference(others)):
            if part.length >= width_m and (best is None or part.length > best.length):
                best = part
    if best is None:
        return None
    ends = [best.interpolate(best.length / 2 + side * width_m / 2) for side in (-1, 1)]
    (ax, ay), (bx, by) = ((round(one.x, 4), round(one.y, 4)) for one in ends)
    return (ax, ay), (bx, by)


def _outward_deg(line: tuple[Point, Point], room: Room) -> float:
    """Degrees clockwise from up of the side of a wall that is away from the room."""
    (ax, ay), (bx, by) = line
    nx, ny = by - ay, ax - bx
    size = math.hypot(nx, ny) or 1.0
    probe = shapely.Point((ax + bx) / 2 + 0.3 * nx / size, (ay + by) / 2 + 0.3 * ny / size)
    if room.polygon.shape.distance(probe) < 0.05:
        nx, ny = -nx, -ny
    return math.degrees(math.atan2(nx, ny)) % 360


def _room_of(window: Window, floor: Floor) -> Room | None:
    if window.room:
        return floor.room_by_id.get(window.room)
    line = shapely.LineString(window.line)
    return min(floor.rooms, key=lambda one: float(one.polygon.shape.distance(line)), default=None)
