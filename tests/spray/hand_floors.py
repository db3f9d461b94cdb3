"""Floors and tools with round figures, for sweeps that are worked out by hand.

The awkward shapes are those of `tests.shapes`; here are the plain ones whose sums go on one line.
"""

from __future__ import annotations

from collections.abc import Callable

import shapely
from shapely.geometry.base import BaseGeometry
from tests.shapes import Place, box, door, outside, place, poly

from farwall.facts.job import Coat, Crew, Job, Stain, Survey, Tools
from farwall.facts.plan import PlanTools
from farwall.floor.geometry import PolygonGeometry, polygon_geometry
from farwall.floor.nouns import Fixture, Floor, Opening, Room, SawCut
from farwall.floor.thresholds import join_thresholds
from farwall.spray.building import build_world
from farwall.spray.sweeps import Sweeps
from farwall.spray.world import Seam, World

ROUND = PlanTools(
    tank_l=40.0,
    band_m=1.0,
    spray_m2_min=3.0,
    walk_m_min=60.0,
    refill_min=3.0,
    swap_min=0.5,
    overlap_m=0.0,
    reach_m=1.9,
)
"""Bands of 1 m at 3 m² a minute, no overlap, a metre of walk in a second."""

ROOMY_TANK = Tools(
    tank_l=40.0, band_m=1.0, spray_m2_min=3.0, walk_m_min=60.0, refill_min=3.0, swap_min=0.5
)


def world(of: Place, *cuts: SawCut) -> World:
    """Pieces, seams and outside of a place, with saw cuts if any."""
    floor = of.floor
    if cuts:
        floor = Floor(floor.rooms, floor.openings, floor.fixtures, cuts)
    return build_world(join_thresholds(floor), of.exits)


def seam(of: World, opening: str, piece: str = "") -> Seam:
    """The seam of an opening (that one at `piece` where there are several)."""
    return next(s for s in of.seams if s.id == opening and piece in {"", s.a, s.b})


def sweeps(of: World, tools: PlanTools = ROUND, *, l_per_m2: float = 0.2) -> Sweeps:
    """A cache of sweeps for a crew without a helper."""
    return Sweeps(of, tools, l_per_m2, helper=False)


def job(of: Place, *cuts: SawCut, **facts: object) -> Job:
    """A job of one coat on this place; `facts` are further parts of the job."""
    floor = of.floor
    if cuts:
        floor = Floor(floor.rooms, floor.openings, floor.fixtures, cuts)
    told: dict[str, object] = {
        "stains": (Stain("sand"),),
        "coats": (Coat("one", "sand", "1:1", m2_per_l=5.0),),
        "tools": ROOMY_TANK,
        "survey": Survey(slab_c=21.0, air_c=21.0),
        "crew": Crew(),
        **facts,
    }
    return Job(version=1, floor=floor, exits=of.exits, **told)


def hall(length: float, width: float, *, door_m: float | None = None) -> Place:
    """A hall along x with its way out in the middle of the end wall at x = 0."""
    half = (door_m or width) / 2
    line = ((0.0, width / 2 - half), (0.0, width / 2 + half))
    return place([Room("hall", box(0, 0, length, width), "Hall")], [outside("end", line, "hall")])


def row(*widths: float, depth: float = 3.0, kind: str = "door") -> Place:
    """Rooms a, b, c… side by side along x, doors of 0.8 m between them, way out of a at x = 0."""
    rooms, openings, x = [], [], 0.0
    for number, width in enumerate(widths):
        name = chr(ord("a") + number)
        rooms.append(Room(name, box(x, 0, x + width, depth), f"Room {name}"))
        line = ((x, 1.0), (x, 1.8))
        if number:
            before = chr(ord("a") + number - 1)
            openings.append(door(f"{before}{name}", line, before, name, kind=kind))
        else:
            openings.append(outside("front", line, name))
        x += width
    return place(rooms, openings)


L_ROOM = place(
    [Room("ell", poly((0, 0), (6, 0), (6, 2), (2, 2), (2, 6), (0, 6)), "Ell")],
    [outside("front", ((6, 0.5), (6, 1.5)), "ell")],
)

HALL_OF_THREE = place(
    # A hall with three rooms above it and the only way out in its left end.
    [
        Room("hall", box(0, 0, 9, 1.5), "Hall"),
        Room("left", box(0, 1.5, 3, 4.5), "Left"),
        Room("middle", box(3, 1.5, 6, 4.5), "Middle"),
        Room("right", box(6, 1.5, 9, 4.5), "Right"),
    ],
    [
        outside("front", ((0, 0.3), (0, 1.2)), "hall"),
        door("left-door", ((1, 1.5), (1.8, 1.5)), "hall", "left"),
        door("middle-door", ((4, 1.5), (4.8, 1.5)), "hall", "middle"),
        door("right-door", ((7, 1.5), (7.8, 1.5)), "hall", "right"),
    ],
)

TWO_WAYS_OUT = place(
    # Two open rooms, the right one larger, joined by a door.
    [Room("small", box(0, 0, 4, 4), "Small"), Room("large", box(4, 0, 10, 4), "Large")],
    [
        outside("west", ((0, 1.5), (0, 2.4)), "small"),
        outside("east", ((10, 1.5), (10, 2.4)), "large"),
        door("between", ((4, 1.5), (4, 2.3)), "small", "large"),
    ],
)

CLOSET_BEHIND_A_GAP = place(
    # A closet whose door is narrower than a person: sprayed from the room.
    [Room("room", box(0, 0, 4, 3), "Room"), Room("closet", box(4, 0.5, 4.7, 1.7), "Closet")],
    [
        outside("front", ((1, 0), (2, 0)), "room"),
        door("gap", ((4, 0.9), (4, 1.35)), "room", "closet"),
    ],
)

TINY_ROOM = place(
    [Room("room", box(0, 0, 3, 3), "Room"), Room("meter", box(3, 1, 3.8, 1.625), "Meter closet")],
    [
        outside("front", ((1, 0), (2, 0)), "room"),
        door("meter-door", ((3, 1.0), (3, 1.6)), "room", "meter"),
    ],
)

BLOCKED_DOOR = place(
    # A tub stands in the only doorway of the back room.
    [Room("front", box(0, 0, 4, 3), "Front"), Room("back", box(0, 3, 4, 6), "Back")],
    [
        outside("way-out", ((1, 0), (1.9, 0)), "front"),
        door("between", ((2, 3), (2.8, 3)), "front", "back"),
    ],
    (Fixture("tub", box(1.8, 2.4, 3.0, 3.6), "tub"),),
)

SPLIT_BY_A_COUNTER = place(
    # A counter from wall to wall parts the room; both parts have a way out.
    [Room("shop", box(0, 0, 8, 3), "Shop")],
    [outside("west", ((0, 1), (0, 2)), "shop"), outside("east", ((8, 1), (8, 2)), "shop")],
    (Fixture("counter", box(3.7, 0, 4.3, 3), "counter"),),
)

LARGE_HALL = place(
    [Room("hall", box(0, 0, 16, 10), "Hall")], [outside("gate", ((7, 0), (9, 0)), "hall")]
)


def without_opening(of: Place, name: str) -> Place:
    """The same place with one opening walled up."""
    openings = tuple(o for o in of.floor.openings if o.id != name)
    exits = tuple(e for e in of.exits if e.opening != name)
    return Place(Floor(of.floor.rooms, openings, of.floor.fixtures, of.floor.saw_cuts), exits)


def moved(of: Place, by: Callable[[BaseGeometry], BaseGeometry]) -> Place:
    """The same place with every coordinate put through `by`, an affine map of shapely shapes."""

    def line(ends: tuple[tuple[float, float], ...]) -> tuple[tuple[float, float], ...]:
        shape = by(shapely.LineString(ends))
        return tuple((round(x, 4) + 0.0, round(y, 4) + 0.0) for x, y in shape.coords)

    def polygon(geometry: PolygonGeometry | None) -> PolygonGeometry | None:
        return geometry and polygon_geometry(by(geometry.shape))

    floor = of.floor
    rooms = tuple(Room(r.id, polygon(r.polygon), r.name) for r in floor.rooms)
    openings = tuple(
        Opening(o.id, o.kind, line(o.line), o.rooms, o.width_m, polygon(o.threshold))
        for o in floor.openings
    )
    fixtures = tuple(Fixture(f.kind, polygon(f.polygon), f.id) for f in floor.fixtures)
    cuts = tuple(SawCut(line(c.line), c.id) for c in floor.saw_cuts)
    return Place(Floor(rooms, openings, fixtures, cuts), of.exits)
