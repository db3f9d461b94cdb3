"""Small invented houses as jobs: one to six rooms, doors, ways out, islands, saw cuts, closets.

`house(seed)` is always the same for the same seed; `houses` draws seeds for hypothesis.
Rectangles are split until there are rooms enough; walls have no thickness or 10 cm of it,
with or without a drawn threshold; two rooms are sometimes one, in the shape of an L.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import pairwise
from random import Random
from typing import Any

import shapely
from hypothesis import strategies as st
from shapely import box

Job = dict[str, Any]

Side = tuple[tuple[float, ...], tuple[float, ...]]

DOOR_M, JAMB_M, CLOSET_M = 0.8, 0.08, 0.7


@dataclass
class _House:
    dice: Random
    wall_m: float
    rooms: dict[str, shapely.Polygon] = field(default_factory=dict)
    openings: list[dict[str, Any]] = field(default_factory=list)
    exits: list[dict[str, str]] = field(default_factory=list)
    fixtures: list[dict[str, Any]] = field(default_factory=list)
    saw_cuts: list[dict[str, Any]] = field(default_factory=list)


def house(seed: int) -> Job:
    """The job of one small house, in the plain values of a job.json."""
    dice = Random(seed)
    made = _House(dice, wall_m=dice.choice([0.0, 0.0, 0.1]))
    cells = _cells(dice)
    made.rooms = {
        f"r{number}": _inner(cell, made.wall_m / 2) for number, cell in enumerate(cells, start=1)
    }
    _join_some(made)
    _doors(made)
    _ways_out(made)
    _islands(made)
    _saw_cut(made)
    return _job(made)


houses = st.integers(0, 2**32).map(house)


def _cells(dice: Random) -> list[shapely.Polygon]:
    wide, deep = dice.uniform(2.2, 9.0), dice.uniform(2.2, 7.0)
    cells = [box(0, 0, round(wide, 2), round(deep, 2))]
    for _ in range(dice.randint(0, 5)):
        cells.sort(key=lambda cell: -cell.area)
        if cells[0].area < 6:
            break
        cells[:1] = _split(cells[0], dice)
    return cells


def _split(cell: shapely.Polygon, dice: Random) -> list[shapely.Polygon]:
    """A cell in two: in the middle somewhere, or a closet off one side."""
    x0, y0, x1, y1 = cell.bounds
    across = x1 - x0 >= y1 - y0
    low, high = (x0, x1) if across else (y0, y1)
    span = high - low
    deep = CLOSET_M if dice.random() < 0.2 else span * dice.uniform(0.35, 0.65)
    at = round(low + deep, 2)
    if across:
        return [box(x0, y0, at, y1), box(at, y0, x1, y1)]
    return [box(x0, y0, x1, at), box(x0, at, x1, y1)]


def _inner(cell: shapely.Polygon, margin_m: float) -> shapely.Polygon:
    x0, y0, x1, y1 = cell.bounds
    return _rounded_box(x0 + margin_m, y0 + margin_m, x1 - margin_m, y1 - margin_m)


def _rounded_box(x0: float, y0: float, x1: float, y1: float) -> shapely.Polygon:
    return box(round(x0, 4), round(y0, 4), round(x1, 4), round(y1, 4))


def _join_some(made: _House) -> None:
    """Two touching rooms become one, sometimes, where the outcome is one simple shape."""
    if made.wall_m or len(made.rooms) < 3 or made.dice.random() < 0.6:
        return
    for one, other in _pairs(made):
        whole = shapely.union(made.rooms[one], made.rooms[other]).simplify(0)
        if whole.geom_type == "Polygon" and len(whole.exterior.coords) == 7:
            made.rooms[one] = whole
            del made.rooms[other]
            return


def _pairs(made: _House) -> list[tuple[str, str]]:
    names = sorted(made.rooms)
    return [(a, b) for i, a in enumerate(names) for b in names[i + 1 :]]


def _shared(made: _House, one: str, other: str) -> shapely.LineString | None:
    """The longest straight line between two rooms, in the middle of their wall."""
    lines = [
        line
        for side in pairwise(made.rooms[one].exterior.coords)
        for facing in pairwise(made.rooms[other].exterior.coords)
        if (line := _between(side, facing, made.wall_m)) is not None
    ]
    return max(lines, key=lambda line: line.length, default=None)


def _between(side: Side, facing: Side, wall_m: float) -> shapely.LineString | None:
    """The line midway between two sides that face each other across a wall."""
    for axis in (0, 1):
        (a, b), (c, d) = ([end[axis] for end in ends] for ends in (side, facing))
        if abs(a - b) + abs(c - d) > 1e-6 or abs(abs(a - c) - wall_m) > 1e-3:
            continue
        spans = [sorted(end[1 - axis] for end in ends) for ends in (side, facing)]
        low, high = max(span[0] for span in spans), min(span[1] for span in spans)
        if high > low:
            middle = (a + c) / 2
            ends = [(middle, low), (middle, high)]
            return shapely.LineString(ends if axis == 0 else [(y, x) for x, y in ends])
    return None


def _doors(made: _House) -> None:
    """Every room is reached from the first; some more doors make rings."""
    ways = {pair: _shared(made, *pair) for pair in _pairs(made)}
    ways = {pair: line for pair, line in ways.items() if _holds_a_door(line, made)}
    order = sorted(ways)
    made.dice.shuffle(order)
    reached = {sorted(made.rooms)[0]}
    for _ in made.rooms:
        for pair in order:
            if len(reached & set(pair)) == 1:
                _door(made, pair, ways[pair])
                reached |= set(pair)
    for pair in order:
        if made.dice.random() < 0.15 and not any(o["rooms"] == list(pair) for o in made.openings):
            _door(made, pair, ways[pair])
    for lost in set(made.rooms) - reached:
        del made.rooms[lost]


def _holds_a_door(line: shapely.LineString | None, made: _House) -> bool:
    return line is not None and line.length >= DOOR_M + 2 * JAMB_M + made.wall_m


def _door(made: _House, pair: tuple[str, str], line: shapely.LineString) -> None:
    kind = made.dice.choice(["door", "door", "door", "cased", "wide"])
    width = line.length - 2 * JAMB_M - made.wall_m if kind == "wide" else DOOR_M
    ends = _within(line, width, made.dice)
    sill = None
    if made.wall_m:
        sill = shapely.buffer(shapely.LineString(ends), made.wall_m / 2, cap_style="flat")
    made.openings.append(_opening(f"d{len(made.openings) + 1}", kind, ends, list(pair), sill))


def _within(line: shapely.LineString, width: float, dice: Random) -> list[tuple[float, float]]:
    """The two ends of an opening of this width somewhere on a line."""
    play = (line.length - width) / 2 - JAMB_M
    middle = line.length / 2 + (dice.uniform(-play, play) if play > 0 else 0.0)
    ends = (line.interpolate(middle - width / 2), line.interpolate(middle + width / 2))
    return [(round(p.x, 4), round(p.y, 4)) for p in ends]


def _opening(
    name: str,
    kind: str,
    ends: list[tuple[float, float]],
    rooms: list[str],
    sill: shapely.Polygon | None = None,
) -> dict[str, Any]:
    made = {"id": name, "kind": kind, "line": [list(p) for p in ends], "rooms": rooms}
    if sill is not None:
        made["threshold"] = _geometry(sill)
    return made


def _ways_out(made: _House) -> None:
    """One or two doors in outer walls, and perhaps one more that is no way out."""
    whole = shapely.union_all(list(made.rooms.values()))
    gap = made.wall_m / 2 + 1e-3
    outer = shapely.buffer(shapely.buffer(whole, gap, join_style="mitre"), -gap, join_style="mitre")
    edge = outer.boundary.buffer(1e-3)
    places = []
    for name in sorted(made.rooms):
        for ends in pairwise(made.rooms[name].exterior.coords):
            side = shapely.LineString(ends)
            if side.length >= 0.9 + 2 * JAMB_M and edge.covers(side):
                places.append((name, side))
    made.dice.shuffle(places)
    for number, (name, side) in enumerate(places[: made.dice.choice([1, 1, 1, 2, 3])], start=1):
        ends = _within(side, 0.9, made.dice)
        made.openings.append(_opening(f"out{number}", "outside", ends, [name]))
        if number < 3:
            made.exits.append({"id": f"x{number}", "opening": f"out{number}"})


def _islands(made: _House) -> None:
    for name in sorted(made.rooms):
        x0, y0, x1, y1 = made.rooms[name].bounds
        roomy = min(x1 - x0, y1 - y0) > 3.0 and len(made.rooms[name].exterior.coords) == 5
        if roomy and made.dice.random() < 0.5:
            x, y = (x0 + x1) / 2, (y0 + y1) / 2
            wide, deep = (x1 - x0) / 2 - 1.1, (y1 - y0) / 2 - 1.1
            shape = _rounded_box(x - wide, y - deep, x + wide, y + deep)
            island = {"id": f"island {name}", "kind": "island", "polygon": _geometry(shape)}
            made.fixtures.append(island)


def _saw_cut(made: _House) -> None:
    """A cut from wall to wall through the largest plain room."""
    plain = [n for n in sorted(made.rooms) if len(made.rooms[n].exterior.coords) == 5]
    if not plain or made.dice.random() < 0.6:
        return
    x0, y0, x1, y1 = made.rooms[max(plain, key=lambda n: made.rooms[n].area)].bounds
    share = made.dice.uniform(0.35, 0.65)
    if x1 - x0 >= y1 - y0:
        x = round(x0 + share * (x1 - x0), 3)
        line = [[x, y0], [x, y1]]
    else:
        y = round(y0 + share * (y1 - y0), 3)
        line = [[x0, y], [x1, y]]
    made.saw_cuts.append({"id": "cut", "line": line})


def _geometry(shape: shapely.Polygon) -> dict[str, Any]:
    oriented = shapely.orient_polygons(shape)
    rings = [oriented.exterior, *oriented.interiors]
    return {
        "type": "Polygon",
        "coordinates": [[[round(x, 4), round(y, 4)] for x, y in ring.coords] for ring in rings],
    }


def _job(made: _House) -> Job:
    dice = made.dice
    coats = [{"id": "c1", "stain": "s1", "cut": "1:1"}]
    if dice.random() < 0.25:
        coats.append({"id": "c2", "stain": "s2", "cut": "1:3"})
    return {
        "version": 1,
        "floor": {
            "rooms": [{"id": n, "polygon": _geometry(s)} for n, s in made.rooms.items()],
            "openings": made.openings,
            "fixtures": made.fixtures,
            "saw_cuts": made.saw_cuts,
        },
        "exits": made.exits,
        "stains": [{"id": coat["stain"]} for coat in coats],
        "coats": coats,
        "crew": {"sprayers": 1, "helper": dice.random() < 0.5},
        "tools": {
            "tank_l": round(dice.uniform(2.5, 9.0), 2),
            "band_m": round(dice.uniform(0.8, 1.3), 2),
            "spray_m2_min": round(dice.uniform(1.8, 3.7), 2),
        },
    }
