"""Small plans built by hand, step by step, with no help from the solver or the checker.

A `Day` is told like a story: who walks where, fills what, sprays which strip.
It keeps the clock and the litres; `plan()` gives the content of a plan.json.
Local frames: a room is swept from the top down, its way out at the bottom.
"""

from __future__ import annotations

import hashlib
import itertools
import math
from collections.abc import Callable, Iterable
from copy import deepcopy
from dataclasses import dataclass, field
from typing import Any

import rfc8785
import shapely
from shapely import box

Plan = dict[str, Any]
Point = tuple[float, float]
Frame = Callable[[float, float], Point]

STAND_M = 0.3
TANK_L, SPRAY_M2_MIN, WALK_M_MIN, REFILL_MIN, SWAP_MIN, REACH_M = 7.5, 2.4, 40.0, 3.0, 0.5, 1.9
L_PER_M2 = 0.2
OPEN_LOW_MIN = 12.0


def upright(x: float, y: float) -> Point:
    return (x, y)


def turned(degrees: float, *, dx: float = 0.0, dy: float = 0.0) -> Frame:
    """A frame turned about the origin, then moved."""
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    return lambda x, y: (round(c * x - s * y + dx, 9), round(s * x + c * y + dy, 9))


def polygon(shape: shapely.Polygon, frame: Frame = upright) -> dict[str, Any]:
    rings = [shape.exterior, *shape.interiors]
    rounded = [[[round(v, 4) for v in frame(x, y)] for x, y in ring.coords] for ring in rings]
    return {"type": "Polygon", "coordinates": rounded}


@dataclass
class House:
    """A floor drawn in the local frame; `frame` turns all of it into the plan's."""

    rooms: dict[str, shapely.Polygon]
    frame: Frame = upright
    openings: list[dict[str, Any]] = field(default_factory=list)
    exits: list[dict[str, str]] = field(default_factory=list)
    fixtures: list[dict[str, Any]] = field(default_factory=list)
    saw_cuts: list[dict[str, Any]] = field(default_factory=list)

    def opening(
        self,
        name: str,
        kind: str,
        start: Point,
        end: Point,
        rooms: Iterable[str],
        *,
        threshold: shapely.Polygon | None = None,
        way_out: bool = True,
    ) -> None:
        line = [list(self.frame(*start)), list(self.frame(*end))]
        entry = {"id": name, "kind": kind, "line": line, "rooms": list(rooms)}
        entry["width_m"] = math.dist(start, end)
        entry["threshold"] = polygon(threshold, self.frame) if threshold else None
        self.openings.append(entry)
        if kind == "outside" and way_out:
            self.exits.append({"id": f"exit {name}", "opening": name})

    def fixture(self, kind: str, shape: shapely.Polygon) -> None:
        entry = {"kind": kind, "id": kind, "polygon": polygon(shape, self.frame)}
        self.fixtures.append(entry)

    def saw_cut(self, name: str, *line: Point) -> None:
        self.saw_cuts.append({"id": name, "line": [list(self.frame(*p)) for p in line]})


@dataclass
class Day:
    """A day on one floor: the clock and place of everybody, and what they did."""

    house: House
    sprayers: int = 1
    helper: bool = False
    coats: tuple[tuple[str, str], ...] = (("one", "1:1"),)
    tools: dict[str, float] = field(default_factory=dict)
    l_per_m2: float = L_PER_M2
    fields: list[Plan] = field(default_factory=list)
    clocks: list[Plan] = field(default_factory=list)
    now: dict[str, float] = field(default_factory=dict)
    places: dict[str, Point] = field(default_factory=dict)

    def begin(
        self,
        name: str,
        rooms: Iterable[str],
        way_out: str,
        *,
        coat: str = "one",
        stops: Iterable[tuple[str, str, Point, Point]] = (),
        open_low_min: float = OPEN_LOW_MIN,
    ) -> None:
        """What follows belongs to this field."""
        frame = self.house.frame
        self.fields.append(
            {
                "id": name,
                "coat": coat,
                "rooms": list(rooms),
                "exit": way_out,
                "order": 1 + sum(f["coat"] == coat for f in self.fields),
                "verdict": "fits",
                "remedies": [],
                "equivalent_front_m": 1.0,
                "bound_m": 1.0,
                "open_time_min": {"low": open_low_min, "likely": 20.0, "high": 30.0},
                "bands": [],
                "refills": [],
                "walks": [],
                "stop_lines": [
                    {"id": i, "kind": kind, "line": [list(frame(*a)), list(frame(*b))]}
                    for i, kind, a, b in stops
                ],
            }
        )

    def stand(self, x: float, y: float, *, who: str = "sprayer", at_min: float = 0.0) -> None:
        """Somebody begins the day here."""
        self.places[who] = self.house.frame(x, y)
        self.now[who] = at_min

    def wait(self, until_min: float, *, who: str = "sprayer") -> None:
        self.now[who] = max(self.now[who], until_min)

    def walk(self, *points: Point, who: str = "sprayer") -> None:
        """A walk from where the person stands through local points."""
        self._walk([self.house.frame(*p) for p in points], who)

    def _walk(self, points: list[Point], who: str) -> None:
        path = [[*self.places[who], self.now[who]]]
        for point in points:
            length = math.dist(self.places[who], point)
            self.now[who] += length / WALK_M_MIN
            self.places[who] = point
            path.append([*point, self.now[who]])
        self.fields[-1]["walks"].append({"who": who, "path": path})

    def fill(self, litres: float, *, who: str = "sprayer", by: str = "") -> None:
        """A refill where the sprayer stands; a helper swaps and goes on from then."""
        minutes = SWAP_MIN if by.startswith("helper") else REFILL_MIN
        at_min = max(self.now[who], self.now.get("helper", 0.0)) if by else self.now[who]
        self.fields[-1]["refills"].append(
            {
                "at_min": at_min,
                "minutes": minutes,
                "at": list(self.places[who]),
                "litres": litres,
                "by": by or who,
            }
        )
        self.now[who] = at_min + minutes
        if by:
            self.now["helper"] = at_min + minutes

    def spray(
        self,
        shape: shapely.Polygon,
        *points: Point,
        who: str = "sprayer",
        overlap_l: float = 0.0,
        minutes: float | None = None,
    ) -> None:
        """A band sprayed at the full rate along local points, after a straight walk there."""
        frame, bands = self.house.frame, self.fields[-1]["bands"]
        way = [frame(*p) for p in points]
        if math.dist(self.places[who], way[0]) > 1e-9:
            self._walk(way[:1], who)
        lasts = minutes or (shape.area + overlap_l / self.l_per_m2) / SPRAY_M2_MIN
        lengths = [math.dist(a, b) for a, b in itertools.pairwise(way)]
        path, clock = [[*way[0], self.now[who]]], self.now[who]
        for point, length in zip(way[1:], lengths, strict=True):
            clock += lasts * length / sum(lengths)
            path.append([*point, clock])
        bands.append(
            {
                "id": f"{self.fields[-1]['id']}{len(bands) + 1}",
                "order": 0,
                "sprayer": 2 if who == "sprayer 2" else 1,
                "polygon": polygon(shape, frame),
                "path": path,
                "litres": shape.area * self.l_per_m2 + overlap_l,
                "start_min": path[0][2],
                "end_min": path[-1][2],
            }
        )
        self.now[who], self.places[who] = clock, way[-1]

    def strips(self, shape: shapely.Polygon, count: int, *, who: str = "sprayer") -> None:
        """A box in `count` strips from the top down; the floor goes on below it."""
        x0, y0, x1, y1 = shape.bounds
        high = (y1 - y0) / count
        for index in range(count):
            top = y1 - index * high
            y = top - high - STAND_M
            ends = [(x0 + STAND_M, y), (x1 - STAND_M, y)]
            here = self.places[who]
            ends.sort(key=lambda p: math.dist(here, self.house.frame(*p)))
            self.spray(box(x0, top - high, x1, top), *ends, who=who)

    def close(
        self,
        shape: shapely.Polygon,
        door_x: float,
        *,
        who: str = "sprayer",
        sill: shapely.Polygon | None = None,
        half_m: float = 0.8,
    ) -> None:
        """The strip along the wall of the way out: its sides from inside, its middle from beyond.

        `sill` is floor in the depth of the wall that belongs to the middle.
        """
        x0, y0, x1, y1 = shape.bounds
        y = (y0 + y1) / 2
        left, right = max(x0, door_x - half_m), min(x1, door_x + half_m)
        self._side(x0, left, shape, y, who)
        self._side(x1, right, shape, y, who)
        middle = box(left, y0, right, y1)
        out = y0
        if sill is not None:
            middle, out = shapely.union(middle, sill), sill.bounds[1]
        self.walk((door_x, y), (door_x, out - STAND_M), who=who)
        x_left, x_right = (door_x - 0.2, door_x + 0.2) if half_m > 0.5 else (door_x, door_x + 0.05)
        self.spray(middle, (x_left, out - STAND_M), (x_right, out - STAND_M), who=who)

    def _side(self, far: float, near: float, shape: shapely.Polygon, y: float, who: str) -> None:
        """Pieces of at most 1.2 m from the far end to the near one, each from beside it."""
        _, y0, _, y1 = shape.bounds
        count = math.ceil(abs(near - far) / 1.2 - 1e-9)
        for index in range(count):
            a = far + (near - far) * index / count
            b = far + (near - far) * (index + 1) / count
            step = math.copysign(STAND_M, near - far)
            stand = b + step
            self.spray(
                box(min(a, b), y0, max(a, b), y1), (stand, y), (stand + step / 6, y), who=who
            )

    def clock(self, coat: str, low: float, likely: float | None, high: float | None) -> None:
        self.clocks.append(
            {
                "coat": coat,
                "name": "dry to recoat",
                "low_min": low,
                "likely_min": likely,
                "high_min": high,
                "rank": "guess",
                "source": "",
            }
        )

    def plan(self) -> Plan:
        """The whole plan, its derived figures reckoned slowly and plainly."""
        fields = deepcopy(self.fields)
        for entry in fields:
            _derive(entry, self.house)
        inputs = {
            "floor": {
                "rooms": [
                    {"id": k, "name": k, "storey": "", "polygon": polygon(v, self.house.frame)}
                    for k, v in self.house.rooms.items()
                ]
            },
            "openings": self.house.openings,
            "exits": self.house.exits,
            "fixtures": self.house.fixtures,
            "saw_cuts": self.house.saw_cuts,
            "crew": {"sprayers": self.sprayers, "helper": self.helper, "second_adult": True},
            "tools": {
                "tank_l": TANK_L,
                "band_m": 1.0,
                "spray_m2_min": SPRAY_M2_MIN,
                "walk_m_min": WALK_M_MIN,
                "refill_min": REFILL_MIN,
                "swap_min": SWAP_MIN,
                "overlap_m": 0.2,
                "reach_m": REACH_M,
                **self.tools,
            },
            "coats": [{"id": i, "stain": f"stain {i}", "cut": cut} for i, cut in self.coats],
            "l_per_m2": {i: self.l_per_m2 for i, _ in self.coats},
        }
        return rehashed(
            {
                "version": 1,
                "job": "by hand",
                "inputs_hash": "",
                "starts_at": "2026-05-04T08:00:00-06:00",
                "inputs": deepcopy(inputs),
                "fields": fields,
                "mixes": [_mix(coat, cut, fields) for coat, cut in self.coats],
                "clocks": self.clocks,
                "cautions": [],
            }
        )


def rehashed(plan: Plan) -> Plan:
    """The same plan with the hash of its inputs made right."""
    plan["inputs_hash"] = hashlib.sha256(rfc8785.dumps(plan["inputs"])).hexdigest()
    return plan


def _derive(entry: Plan, house: House) -> None:
    bands = entry["bands"]
    bands.sort(key=lambda band: band["start_min"])
    for number, band in enumerate(bands, start=1):
        band["order"] = number
    entry["area_m2"] = sum(shape_of(band).area for band in bands)
    entry["start_min"] = bands[0]["start_min"]
    entry["end_min"] = max(band["end_min"] for band in bands)
    entry["peak_age_min"] = sampled_peak(entry, house)


def shape_of(entry: Plan) -> shapely.Polygon:
    rings = entry["polygon"]["coordinates"]
    return shapely.Polygon(rings[0], rings[1:])


def _mix(coat: str, cut: str, fields: list[Plan]) -> Plan:
    own = [entry for entry in fields if entry["coat"] == coat]
    litres = 1.1 * sum(band["litres"] for entry in own for band in entry["bands"])
    stain, water = (float(part) for part in cut.split(":"))
    return {
        "id": f"mix {coat}",
        "coat": coat,
        "cut": cut,
        "stain_l": litres * stain / (stain + water),
        "water_l": litres * water / (stain + water),
        "acid_l": 0.0,
        "fields": [entry["id"] for entry in own],
    }


def sampled_peak(entry: Plan, house: House, *, step_m: float = 0.004) -> float:
    """The oldest edge of a field, from points every few millimetres along each border."""
    walls = _walls(house)
    bands = entry["bands"]
    shapes = [shape_of(band) for band in bands]
    peak = 0.0
    for index, one in enumerate(shapes):
        for other in range(index):
            border = shapely.intersection(one.boundary, shapely.buffer(shapes[other], 2e-4))
            border = shapely.difference(border, walls)
            if border.length < 0.05:
                continue
            for x, y in shapely.get_coordinates(shapely.segmentize(border, step_m)).tolist():
                first = _moment(bands[index]["path"], x, y)
                second = _moment(bands[other]["path"], x, y)
                peak = max(peak, abs(first - second))
    return peak


def _walls(house: House) -> shapely.Geometry:
    edges = []
    for shape in house.rooms.values():
        rings = polygon(shape, house.frame)["coordinates"]
        edges.append(shapely.Polygon(rings[0], rings[1:]).boundary)
    ways = [shapely.LineString(o["line"]).buffer(1e-3, cap_style="flat") for o in house.openings]
    ways += [
        shape_of({"polygon": o["threshold"]}).buffer(1e-3) for o in house.openings if o["threshold"]
    ]
    return shapely.difference(shapely.union_all(edges), shapely.union_all(ways)).buffer(3e-4)


def _moment(path: list[list[float]], x: float, y: float) -> float:
    """When a path is nearest to a point."""
    best, moment = math.inf, 0.0
    for (ax, ay, at), (bx, by, bt) in itertools.pairwise(path):
        square = (bx - ax) ** 2 + (by - ay) ** 2
        share = ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square
        share = min(max(share, 0.0), 1.0)
        gap = math.hypot(ax + share * (bx - ax) - x, ay + share * (by - ay) - y)
        if gap < best:
            best, moment = gap, at + share * (bt - at)
    return moment
