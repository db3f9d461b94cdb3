"""The sun through a job's windows: patches by room and half hour of any day of the plan.

A patch is all floor that the sun reaches at some moment of its half hour, looked at every ten
minutes and drawn out from look to look, under a clear sky: decisions hold to the safe end, and a
typical year's clouds are no forecast. Whoever knows better covers the window, or leaves it out.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import field
from datetime import datetime, timedelta
from functools import cached_property
from itertools import pairwise

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.air.foretold import Foretold
from farwall.air.patches import Glazing, Ground, by_room, glazing_at, ground_of, lit
from farwall.air.sun import Sun, absorbed_w_m2, sun_at
from farwall.air.weather import WeatherFile
from farwall.facts import default_table as table
from farwall.facts.job import Job
from farwall.facts.sunlight import SunPatch
from farwall.floor.geometry import polygon_geometry, polygons_of
from farwall.floor.nouns import Floor, Window
from farwall.floor.thresholds import join_thresholds
from farwall.nouns import dataclass

LOOK_MIN, STEP_MIN = 10, 30
SUNNY_SHARE = 0.05
"""A patch over less of a room's floor than this does not decide when the room is sprayed; its
edges are held to it all the same. Rank: guess."""
_AT_WALL_M = 0.6
_DAY_MIN = 24 * 60
_PATCH_DIGITS = 3
_WINDS = ("north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west")


@dataclass(frozen=True)
class Pane:
    """A window that lets sun in: its id or number, the room it lights, its geometry."""

    name: str
    room: str
    storey: str
    glazing: Glazing
    looks: str
    """The quarter of the sky that it looks at."""


@dataclass(frozen=True)
class Sunlight:
    """Where the sun falls on the floor of a job, for any minute of its plan."""

    starts_at: datetime
    latitude_deg: float
    longitude_deg: float
    north_deg: float
    panes: tuple[Pane, ...]
    grounds: dict[str, Ground]
    """By storey."""
    _days: dict[int, tuple[SunPatch, ...]] = field(default_factory=dict, compare=False)

    def patches(self, from_min: float, to_min: float) -> tuple[SunPatch, ...]:
        """Patches that lie somewhere between two minutes of the plan."""
        first, last = self.day_of(from_min), self.day_of(to_min)
        return tuple(
            patch
            for day in range(first, last + 1)
            for patch in self.day(day)
            if patch.from_min <= to_min and patch.to_min > from_min
        )

    def day(self, number: int) -> tuple[SunPatch, ...]:
        """All patches of a day, 0 being that of the start, by time and room."""
        if number not in self._days:
            self._days[number] = tuple(self._of_day(number))
        return self._days[number]

    def share(self, room: str, from_min: float, to_min: float) -> float:
        """Largest part of a room's floor that lies in the sun in a half hour between these."""
        area: dict[float, float] = {}
        for patch in self.patches(from_min, to_min):
            if patch.room == room:
                area[patch.from_min] = area.get(patch.from_min, 0.0) + patch.polygon.shape.area
        return max(area.values(), default=0.0) / max(self._floor(room).area, 1e-9)

    def sunny(self, room: str, from_min: float, to_min: float) -> bool:
        """Whether enough of a room lies in the sun to decide when it is sprayed."""
        return self.share(room, from_min, to_min) >= SUNNY_SHARE

    def panes_of(self, room: str, from_min: float, to_min: float) -> tuple[Pane, ...]:
        """The windows whose sun reaches this room at some moment between two minutes."""
        minutes = np.arange(from_min, to_min + LOOK_MIN, LOOK_MIN)
        sun = self.sun([self.starts_at + timedelta(minutes=float(one)) for one in minutes])
        return tuple(
            pane
            for pane in self.panes
            if any(room in by_room(light, self.grounds[pane.storey])
                   for light in self.light(pane, sun))
        )  # fmt: skip

    def sun(self, moments: Sequence[datetime]) -> Sun:
        """The sun at these moments over this place."""
        return sun_at(moments, latitude_deg=self.latitude_deg, longitude_deg=self.longitude_deg)

    def light(self, pane: Pane, sun: Sun) -> list[BaseGeometry]:
        """What a window lights at each of these moments. [m]"""
        bearing = self.north_deg + sun.azimuth_deg
        return lit(pane.glazing, self.grounds[pane.storey], sun.elevation_deg, bearing)

    @cached_property
    def _midnight_min(self) -> float:
        midnight = self.starts_at.replace(hour=0, minute=0, second=0, microsecond=0)
        return (midnight - self.starts_at).total_seconds() / 60

    def day_of(self, minute: float) -> int:
        """The day of the plan that a minute falls in, 0 being that of the start."""
        return int((minute - self._midnight_min) // _DAY_MIN)

    def _floor(self, room: str) -> BaseGeometry:
        return next(one.rooms[room] for one in self.grounds.values() if room in one.rooms)

    def _of_day(self, number: int) -> list[SunPatch]:
        begins = self._midnight_min + number * _DAY_MIN
        minutes = begins + np.arange(0, _DAY_MIN + 1, LOOK_MIN)
        sun = self.sun([self.starts_at + timedelta(minutes=float(one)) for one in minutes])
        seen = [
            [by_room(light, self.grounds[pane.storey]) for light in self.light(pane, sun)]
            for pane in self.panes
        ]
        looks = STEP_MIN // LOOK_MIN
        found = []
        for first in range(0, len(minutes) - 1, looks):
            last = first + looks
            flux = max(
                absorbed_w_m2(float(sun.direct_w_m2[n]), float(sun.elevation_deg[n]))
                for n in range(first, last + 1)
            )
            swept: dict[str, list[BaseGeometry]] = {}
            for each in seen:
                for room, shape in self._swept(each[first : last + 1]):
                    swept.setdefault(room, []).append(shape)
            for room, shapes in swept.items():
                found += [
                    SunPatch(
                        room,
                        round(float(minutes[first]), 4),
                        round(float(minutes[last]), 4),
                        polygon_geometry(part, decimals=_PATCH_DIGITS),
                        round(flux, 1),
                    )
                    for part in polygons_of(shapely.union_all(shapes))
                ]
        return found

    def _swept(
        self, looks: Sequence[dict[str, list[shapely.Polygon]]]
    ) -> Iterator[tuple[str, BaseGeometry]]:
        """What one window's light sweeps in each room: the hull from one look to the next."""
        for before, after in pairwise(looks):
            for room in dict.fromkeys([*before, *after]):
                parts = shapely.MultiPolygon([*before.get(room, ()), *after.get(room, ())])
                moved = parts.convex_hull if room in before and room in after else parts
                yield room, shapely.intersection(moved, self._floor(room))


def sunlight_of(job: Job, weather: object | None = None) -> Sunlight | None:
    """The sun of a job; None where a window, north, the place or the start is not told."""
    where = place_of(job, weather)
    start, north = job.starts_at, job.floor.north_deg
    if where is None or start is None or north is None:
        return None
    starts_at = datetime.fromisoformat(start)
    floor = join_thresholds(job.floor)
    panes = panes_of(floor)
    if starts_at.tzinfo is None or not panes:
        return None
    return Sunlight(starts_at, *where, north, panes, _grounds(floor))


def place_of(job: Job, weather: object | None) -> tuple[float, float] | None:
    """Latitude and longitude: as told, else those of the weather file. [degrees]"""
    told = job.place.latitude_deg, job.place.longitude_deg
    if told[0] is not None and told[1] is not None:
        return told[0], told[1]
    if isinstance(weather, WeatherFile | Foretold) and weather.place is not None:
        return weather.place.latitude_deg, weather.place.longitude_deg
    return None


def missing_for_sun(job: Job, weather: object | None = None) -> tuple[str, ...]:
    """What a job with bare windows still has to tell before the sun can be reckoned."""
    if not any(not window.covered for window in job.floor.windows):
        return ()
    lacks = []
    if job.floor.north_deg is None:
        lacks.append("floor.north_deg")
    if place_of(job, weather) is None:
        lacks.append("place.latitude_deg and place.longitude_deg")
    if job.starts_at is None:
        lacks.append("starts_at")
    return tuple(lacks)


def panes_of(floor: Floor) -> tuple[Pane, ...]:
    """The windows that let sun in, defaults filled; those far from every room are left out."""
    shapes = {room.id: room.polygon.shape for room in floor.rooms}
    found = []
    for number, window in enumerate(floor.windows):
        line = shapely.LineString(window.line)
        rooms = sorted(shapes, key=lambda one: float(shapes[one].distance(line)))
        room = window.room or next(iter(rooms), "")
        if window.covered or room not in shapes or shapes[room].distance(line) > _AT_WALL_M:
            continue
        glazing = _glazing(window, shapes[room])
        looks = _looks(glazing, floor.north_deg or 0.0)
        storey = floor.room_by_id[room].storey
        found.append(Pane(window.id or str(number), room, storey, glazing, looks))
    return tuple(found)


def _glazing(window: Window, room: BaseGeometry) -> Glazing:
    def filled(told: float | None, default: table.Default) -> float:
        return default.usual if told is None else told

    return glazing_at(
        window.line,
        room,
        sill_m=filled(window.sill_m, table.SILL_M),
        height_m=filled(window.height_m, table.WINDOW_HEIGHT_M),
        reveal_m=filled(window.reveal_m, table.REVEAL_M),
    )


def _looks(glazing: Glazing, north_deg: float) -> str:
    bearing = np.degrees(np.arctan2(glazing.outward[0], glazing.outward[1])) - north_deg
    return _WINDS[int(((bearing % 360) + 22.5) // 45) % 8]


def _grounds(floor: Floor) -> dict[str, Ground]:
    grounds = {}
    for storey in dict.fromkeys(room.storey for room in floor.rooms):
        rooms: dict[str, BaseGeometry] = {
            room.id: room.polygon.shape for room in floor.rooms if room.storey == storey
        }
        ways = [
            one.line
            for one in floor.openings
            if one.kind != "outside" and any(room in rooms for room in one.rooms)
        ]
        grounds[storey] = ground_of(rooms, ways)
    return grounds
