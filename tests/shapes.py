"""The awkward shapes, named once: small invented floors, metres, one way out each.

Every one is a `Place`: a floor and its exits. Import them from here, do not draw them again.
"""

from dataclasses import dataclass
from math import cos, pi, sin

import shapely

from farwall.floor.geometry import PolygonGeometry, polygon_geometry
from farwall.floor.nouns import Exit, Fixture, Floor, Opening, OpeningKind, Room

Line = tuple[tuple[float, float], tuple[float, float]]


@dataclass(frozen=True)
class Place:
    """A floor with its ways out."""

    floor: Floor
    exits: tuple[Exit, ...]


def box(x0: float, y0: float, x1: float, y1: float) -> PolygonGeometry:
    """An upright rectangle."""
    return polygon_geometry(shapely.box(x0, y0, x1, y1))


def poly(*points: tuple[float, float], holes: tuple[shapely.Polygon, ...] = ()) -> PolygonGeometry:
    """A polygon by its corners."""
    return polygon_geometry(shapely.Polygon(points, [hole.exterior.coords for hole in holes]))


def door(
    name: str,
    line: Line,
    *rooms: str,
    kind: OpeningKind = "door",
    threshold: PolygonGeometry | None = None,
) -> Opening:
    """An opening as wide as its line."""
    width = float(shapely.LineString(line).length)
    return Opening(name, kind, line, rooms, round(width, 4), threshold)


def outside(name: str, line: Line, room: str) -> Opening:
    """A way out through a wall."""
    return door(name, line, room, kind="outside")


def place(rooms: list[Room], openings: list[Opening], fixtures: tuple[Fixture, ...] = ()) -> Place:
    """A floor whose outside openings are all exits."""
    exits = [Exit(f"exit-{o.id}", o.id) for o in openings if o.kind == "outside"]
    return Place(Floor(tuple(rooms), tuple(openings), fixtures), tuple(exits))


PLAIN_ROOM = place(
    [Room("room", box(0, 0, 4, 3), "Room")], [outside("front", ((1, 0), (2, 0)), "room")]
)

TWO_ROOMS = place(
    [Room("front", box(0, 0, 4, 3), "Front room"), Room("back", box(0, 3, 4, 6), "Back room")],
    [
        outside("way-out", ((1, 0), (1.9, 0)), "front"),
        door("between", ((2, 3), (2.8, 3)), "front", "back"),
    ],
)

WALLED_ROOMS = place(
    # Rooms end at the faces of a wall 0.12 m deep; its door carries the floor under it.
    [Room("front", box(0, 0, 4, 3), "Front"), Room("back", box(0, 3.12, 4, 6), "Back")],
    [
        Opening("way-out", "outside", ((1, -0.08), (1.9, -0.08)), ("front",), 0.9,
                box(1, -0.16, 1.9, 0)),
        Opening("between", "door", ((2, 3.06), (2.8, 3.06)), ("front", "back"), 0.8,
                box(2, 3, 2.8, 3.12)),
    ],
)  # fmt: skip

L_HALL = place(
    [
        Room("hall", poly((0, 0), (6, 0), (6, 1.2), (1.2, 1.2), (1.2, 5), (0, 5)), "L-hall"),
        Room("bed", box(1.2, 1.2, 6, 5), "Bedroom"),
    ],
    [
        outside("front", ((6, 0.1), (6, 1.0)), "hall"),
        door("bed-door", ((1.2, 3), (1.2, 3.8)), "hall", "bed"),
    ],
)

ISLAND_KITCHEN = place(
    [Room("kitchen", box(0, 0, 5, 4), "Kitchen")],
    [outside("patio", ((0, 1), (0, 2.8)), "kitchen")],
    (Fixture("island", box(1.8, 1.5, 3.2, 2.4), "island"),),
)

_ROUND = shapely.Polygon(
    [(3 + 0.9 * cos(i * pi / 32), 3 + 0.9 * sin(i * pi / 32)) for i in range(64)]
)
ROUND_STAIR = place(
    [Room("hall", poly((0, 0), (6, 0), (6, 6), (0, 6), holes=(_ROUND,)), "Stair hall")],
    [outside("front", ((2, 0), (3, 0)), "hall")],
)

SLIVER_CLOSET = place(
    [Room("room", box(0, 0, 4, 3), "Room"), Room("closet", box(4, 0.5, 4.45, 2.9), "Closet")],
    [
        outside("front", ((1, 0), (2, 0)), "room"),
        door("closet-door", ((4, 1), (4, 1.6)), "room", "closet"),
    ],
)

FLOOR_WITH_A_HOLE = place(
    [
        Room(
            "ring",
            poly((0, 0), (7, 0), (7, 5), (0, 5), holes=(shapely.box(2.5, 2, 4.5, 3),)),
            "Round the chimney",
        )
    ],
    [outside("front", ((0, 2), (0, 3)), "ring")],
)

AWKWARD = {
    "plain room": PLAIN_ROOM,
    "two rooms": TWO_ROOMS,
    "walled rooms": WALLED_ROOMS,
    "L-hall": L_HALL,
    "island kitchen": ISLAND_KITCHEN,
    "round stair": ROUND_STAIR,
    "sliver closet": SLIVER_CLOSET,
    "floor with a hole": FLOOR_WITH_A_HOLE,
}
