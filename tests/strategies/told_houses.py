"""Small invented houses of box rooms, and how they are written in the formats of models.

Rooms stand in a grid with walls of one depth between them; a door in the middle of a shared wall
joins some, one leads outside. Written as gbXML, IndoorGML and GeoJSON they must come back the same.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import Any

from hypothesis import strategies as st

Box = tuple[float, float, float, float]
Point = tuple[float, float]


@dataclass(frozen=True)
class Door:
    """A door by its two ends, at the middle of the wall; `rooms` are two, or one for outside."""

    id: str
    rooms: tuple[str, ...]
    ends: tuple[Point, Point]


@dataclass(frozen=True)
class House:
    """Rooms by their boxes [m], doors, and the depth of all walls [m]."""

    rooms: dict[str, Box]
    doors: tuple[Door, ...]
    wall_m: float
    tall_m: float = 2.5


@st.composite
def told_houses(draw: st.DrawFn, *, walls: tuple[float, ...] = (0.1, 0.24)) -> House:
    """Houses of one to nine rooms."""
    wall = draw(st.sampled_from(walls))
    sides = st.integers(15, 60).map(lambda d: d / 10)
    columns = draw(st.lists(sides, min_size=1, max_size=3))
    rows = draw(st.lists(sides, min_size=1, max_size=3))
    rooms = {
        f"r{i}{j}": _box(columns, rows, i, j, wall)
        for i in range(len(columns))
        for j in range(len(rows))
    }
    doors = []
    for i in range(len(columns)):
        for j in range(len(rows)):
            for di, dj in ((1, 0), (0, 1)):
                other = f"r{i + di}{j + dj}"
                if other in rooms and draw(st.booleans()):
                    doors.append(_door(len(doors), f"r{i}{j}", other, rooms, wall))
    x0, y0, x1, _ = rooms["r00"]
    at = (x0 + x1) / 2
    out = Door("d-out", ("r00",), ((at - 0.45, y0 - wall / 2), (at + 0.45, y0 - wall / 2)))
    return House(rooms, (*doors, out), wall)


def _box(columns: list[float], rows: list[float], i: int, j: int, wall: float) -> Box:
    x = sum(columns[:i]) + i * wall
    y = sum(rows[:j]) + j * wall
    return round(x, 3), round(y, 3), round(x + columns[i], 3), round(y + rows[j], 3)


def _door(number: int, one: str, other: str, rooms: dict[str, Box], wall: float) -> Door:
    ax0, ay0, ax1, ay1 = rooms[one]
    bx0 = rooms[other][0]
    if bx0 >= ax1:
        x, y = ax1 + wall / 2, (ay0 + ay1) / 2
        return Door(f"d{number}", (one, other), ((x, y - 0.4), (x, y + 0.4)))
    x, y = (ax0 + ax1) / 2, ay1 + wall / 2
    return Door(f"d{number}", (one, other), ((x - 0.4, y), (x + 0.4, y)))


def shell(box: Box, tall: float) -> list[list[tuple[float, float, float]]]:
    """The six faces of a box room, normals outward."""
    x0, y0, x1, y1 = box
    ring = [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]
    floor = [(x, y, 0.0) for x, y in reversed(ring)]
    top = [(x, y, tall) for x, y in ring]
    sides = [
        [(*a, 0.0), (*b, 0.0), (*b, tall), (*a, tall)]
        for a, b in zip(ring, ring[1:] + ring[:1], strict=True)
    ]
    return [floor, top, *sides]


def as_gbxml(house: House, *, unit: str = "Meters", per_m: float = 1.0) -> bytes:
    """The house as gbXML; `per_m` units to a metre."""
    spaces = "".join(
        f'<Space id="{name}"><Name>Room {name}</Name><ShellGeometry><ClosedShell>'
        + "".join(_poly_loop(face, per_m) for face in shell(box, house.tall_m))
        + "</ClosedShell></ShellGeometry></Space>"
        for name, box in house.rooms.items()
    )
    surfaces = "".join(_surface(door, per_m) for door in house.doors)
    return (
        f'<gbXML lengthUnit="{unit}" areaUnit="SquareMeters" xmlns="http://www.gbxml.org/schema">'
        f'<Campus id="c"><Building id="b">{spaces}</Building>{surfaces}</Campus></gbXML>'
    ).encode()


def _surface(door: Door, per_m: float) -> str:
    (x1, y1), (x2, y2) = door.ends
    face = [(x1, y1, 0.0), (x2, y2, 0.0), (x2, y2, 2.0), (x1, y1, 2.0)]
    kind = "InteriorWall" if len(door.rooms) > 1 else "ExteriorWall"
    sides = "".join(f'<AdjacentSpaceId spaceIdRef="{room}"/>' for room in door.rooms)
    return (
        f'<Surface id="s-{door.id}" surfaceType="{kind}">{sides}'
        f'<Opening id="{door.id}" openingType="NonSlidingDoor"><PlanarGeometry>'
        f"{_poly_loop(face, per_m)}</PlanarGeometry></Opening></Surface>"
    )


def _poly_loop(face: list[tuple[float, float, float]], per_m: float) -> str:
    points = "".join(
        "<CartesianPoint>"
        + "".join(f"<Coordinate>{value * per_m:.6f}</Coordinate>" for value in point)
        + "</CartesianPoint>"
        for point in face
    )
    return f"<PolyLoop>{points}</PolyLoop>"


def as_indoorgml(house: House, *, prefix: str = "core") -> bytes:
    """The house as IndoorGML; doors are cells of their own, as deep as the wall."""
    cells, states, ways = "", "", ""
    for name, box in house.rooms.items():
        cells += _cell(prefix, "CellSpace", name, f"Room {name}", shell(box, house.tall_m))
        states += _state(prefix, name)
    for door in house.doors:
        kind = "ConnectionSpace" if len(door.rooms) > 1 else "AnchorSpace"
        cells += _cell("nav", kind, door.id, door.id, shell(_deep(door, house.wall_m), 2.0))
        states += _state(prefix, door.id)
        for room in door.rooms:
            ways += (
                f'<{prefix}:transitionMember><{prefix}:Transition gml:id="t-{door.id}-{room}">'
                f'<{prefix}:connects xlink:href="#s-{room}"/>'
                f'<{prefix}:connects xlink:href="#s-{door.id}"/>'
                f"</{prefix}:Transition></{prefix}:transitionMember>"
            )
    return (
        f'<{prefix}:IndoorFeatures xmlns:{prefix}="http://www.opengis.net/indoorgml/1.0/core" '
        'xmlns:nav="http://www.opengis.net/indoorgml/1.0/navigation" '
        'xmlns:gml="http://www.opengis.net/gml/3.2" '
        'xmlns:xlink="http://www.w3.org/1999/xlink">'
        f"<{prefix}:PrimalSpaceFeatures>{cells}</{prefix}:PrimalSpaceFeatures>"
        f"{states}{ways}</{prefix}:IndoorFeatures>"
    ).encode()


def _state(prefix: str, name: str) -> str:
    return (
        f'<{prefix}:State gml:id="s-{name}"><{prefix}:duality xlink:href="#{name}"/>'
        f"</{prefix}:State>"
    )


def _deep(door: Door, wall: float) -> Box:
    (x1, y1), (x2, y2) = door.ends
    half = wall / 2
    if x1 == x2:
        return x1 - half, y1, x1 + half, y2
    return x1, y1 - half, x2, y1 + half


def _cell(
    prefix: str, kind: str, own: str, name: str, faces: list[list[tuple[float, float, float]]]
) -> str:
    polygons = "".join(
        "<gml:surfaceMember><gml:Polygon><gml:exterior><gml:LinearRing><gml:posList>"
        + " ".join(f"{v:.6f}" for point in [*face, face[0]] for v in point)
        + "</gml:posList></gml:LinearRing></gml:exterior></gml:Polygon></gml:surfaceMember>"
        for face in faces
    )
    return (
        f'<core:cellSpaceMember xmlns:core="http://www.opengis.net/indoorgml/1.0/core">'
        f'<{prefix}:{kind} gml:id="{own}"><gml:name>{name}</gml:name><core:cellSpaceGeometry>'
        f"<core:Geometry3D><gml:Solid><gml:exterior><gml:Shell>{polygons}</gml:Shell></gml:exterior>"
        "</gml:Solid></core:Geometry3D></core:cellSpaceGeometry>"
        f'<core:duality xlink:href="#s-{own}"/>'
        f"</{prefix}:{kind}></core:cellSpaceMember>"
    )


def as_geojson(house: House, *, origin: Point = (8.0, 47.0), per_degree: Point = (1, 1)) -> bytes:
    """The house as GeoJSON in degrees about `origin`, doors as areas as deep as the wall."""

    def at(x: float, y: float) -> list[float]:
        return [origin[0] + x / per_degree[0], origin[1] + y / per_degree[1], 0.0]

    def area(box: Box) -> dict[str, Any]:
        x0, y0, x1, y1 = box
        ring = [at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1), at(x0, y0)]
        return {"type": "Polygon", "coordinates": [ring]}

    features = [
        {
            "type": "Feature",
            "properties": {"id": name, "indoor": "room", "name": f"Room {name}", "level": "0"},
            "geometry": area(box),
        }
        for name, box in house.rooms.items()
    ]
    features += [
        {
            "type": "Feature",
            "properties": {"id": door.id, "type": "door", "level": 0},
            "geometry": area(_deep(door, house.wall_m)),
        }
        for door in house.doors
    ]
    return json.dumps({"type": "FeatureCollection", "features": features}).encode()
