"""What is seen of a line on the floor by somebody who stands at the main window.

Sight goes over the floor of the window's room and on through cased and wide openings; a leaf and a
wall end it, things that stand on the slab do not. Light comes in low by the same window: a line
along the view lies in it like a scratch along a brush, one across it shows over its whole length.
So a place counts as the sine of the angle between view and line.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from math import dist, floor

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor, Window
from farwall.nouns import dataclass

OPEN_TO_SIGHT = frozenset({"cased", "wide"})
USUAL_GLASS_M = 1.2
"""Height of glass where the drawing gives none. Rank: guess."""
AT_WALL_M = 0.6
"""A window farther than this from every room lights none."""
STEPS = 4
"""Sight is told in quarters: finer than anybody judges it, and sums of it stay exact."""
_EYES = 5
_STEP_M, _FEWEST, _MOST = 0.15, 5, 25
_INTO_ROOM_M = 0.05
_SHORT_M = 0.03
_HAIR_M, _JOINT_M = 0.0005, 0.011

_Places = npt.NDArray[np.float64]


@dataclass(frozen=True)
class MainWindow:
    """The window by which a floor is looked at, and the room it lights."""

    window: Window
    room: str


def main_window(told: Floor, *, glass_m: float = USUAL_GLASS_M) -> MainWindow | None:
    """The window told as `main`; else the largest by area of glass in the largest room with one.

    glass_m: height of the glass of a window that has none told [m]. The first of several alike.
    None where no window lies at a room of `told`.
    """
    lit = [(one, room) for one in told.windows if (room := _room_of(one, told))]
    if not lit:
        return None
    chosen = [pair for pair in lit if pair[0].main] or lit
    area = {room.id: room.polygon.shape.area for room in told.rooms}
    most = max(area[room] for _, room in chosen)
    largest = [pair for pair in chosen if area[pair[1]] == most]
    window, room = max(largest, key=lambda pair: _glass_m2(pair[0], glass_m))
    return MainWindow(window, room)


def _glass_m2(window: Window, glass_m: float) -> float:
    return dist(*window.line) * (glass_m if window.height_m is None else window.height_m)


def _room_of(window: Window, told: Floor) -> str:
    line = shapely.LineString(window.line)
    near = {room.id: float(room.polygon.shape.distance(line)) for room in told.rooms}
    room = window.room or min(near, key=near.__getitem__, default="")
    return room if near.get(room, np.inf) <= AT_WALL_M else ""


@dataclass(frozen=True)
class View:
    """The floor as it is seen from its main window; rooms touch at their openings."""

    floor: Floor
    main: MainWindow

    def share(self, line: Sequence[Point]) -> float:
        """How much of a line is seen, 0 to 1 in quarters: 1 lies whole and square to the view."""
        places, ways = _along(line)
        steps = places[None, :, :] - self._eyes[:, None, :]
        far = np.maximum(np.hypot(steps[..., 0], steps[..., 1]), 1e-9)
        ends = self._eyes[:, None, :] + steps * (np.maximum(far - _SHORT_M, 0.0) / far)[..., None]
        starts = np.broadcast_to(self._eyes[:, None, :], ends.shape)
        rays = shapely.linestrings(np.stack([starts, ends], axis=2))
        seen = shapely.covers(self._open, rays)
        across = np.abs(steps[..., 0] * ways[:, 1] - steps[..., 1] * ways[:, 0]) / far
        part = float(np.where(seen, across, 0.0).max(axis=0).mean())
        return floor(part * STEPS + 0.5) / STEPS

    @cached_property
    def _open(self) -> BaseGeometry:
        """Floor over which sight goes: rooms a hair apart, joined where nothing stands between."""
        rooms = [
            shapely.buffer(room.polygon.shape, -_HAIR_M, join_style="mitre")
            for room in self.floor.rooms
        ]
        joints = [
            shapely.LineString(one.line).buffer(_JOINT_M, cap_style="flat")
            for one in self.floor.openings
            if one.kind in OPEN_TO_SIGHT
        ]
        whole = shapely.union_all([*rooms, *joints])
        shapely.prepare(whole)
        return whole

    @cached_property
    def _eyes(self) -> _Places:
        """Places along the glass, a step into the room."""
        room = self.floor.room_by_id[self.main.room].polygon.shape
        inner = shapely.buffer(room, -_INTO_ROOM_M, join_style="mitre")
        glass = shapely.LineString(self.main.window.line)
        along = glass.interpolate((np.arange(_EYES) + 0.5) / _EYES, normalized=True)
        nearest = shapely.shortest_line(along, inner)
        return np.array([one.coords[-1] for one in nearest], dtype=float)


def _along(line: Sequence[Point]) -> tuple[_Places, _Places]:
    """Places along a line, evenly, and which way it runs at each (length 1)."""
    chord = shapely.LineString(line)
    count = min(max(round(chord.length / _STEP_M), _FEWEST), _MOST)
    at = (np.arange(count) + 0.5) / count * chord.length
    places = shapely.get_coordinates(shapely.line_interpolate_point(chord, at))
    hair = min(1e-3, chord.length / count / 4)
    before = shapely.get_coordinates(shapely.line_interpolate_point(chord, at - hair))
    after = shapely.get_coordinates(shapely.line_interpolate_point(chord, at + hair))
    ways = after - before
    return places, ways / np.maximum(np.hypot(ways[:, 0], ways[:, 1]), 1e-12)[:, None]
