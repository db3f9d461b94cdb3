"""Floors with every noun: houses on one or two storeys, fixtures, cuts, windows, steps, north.

Names and ids hold whatever a person may type: accents, quotes, brackets, line ends, marks that a
drawing format reads as commands.
"""

from __future__ import annotations

from dataclasses import replace

from hypothesis import strategies as st
from tests.strategies.floors import House, floors, houses
from tests.strategies.jobs import box

from farwall.facts.reading import Reading, Stated, Step, Storey
from farwall.floor.geometry import Point, PolygonGeometry
from farwall.floor.nouns import Fixture, Floor, Opening, Room, SawCut, Window

ODD = [
    "",
    'Baño & "sala" <1>',
    "%%uBED^J",
    "\\U+0041\\P{x}",
    "a\nb\tc",
    "'; --",
    "間取り",
    "]]>",
    " x ",
]
names = st.sampled_from(ODD) | st.text(
    st.characters(codec="utf-8", exclude_characters="\x00"), max_size=300
)
figures = st.floats(0.01, 50.0)
maybe = st.none() | figures


@st.composite
def wholes(draw: st.DrawFn) -> Reading:
    """A reading in metres with all that a file can tell."""
    floor, exits = draw(floors())
    storeys = ()
    if draw(st.booleans()):
        above = draw(houses(most=2))
        floor, storeys = _two_storeys(floor, above, draw(names.filter(bool)))
    rooms = tuple(replace(room, name=draw(names)) for room in floor.rooms)
    floor = replace(
        floor,
        rooms=rooms,
        fixtures=tuple(draw(_fixture(room)) for room in rooms if draw(st.booleans())),
        saw_cuts=tuple(draw(_cut(room)) for room in rooms if draw(st.booleans())),
        windows=tuple(draw(_window(room)) for room in rooms if draw(st.booleans())),
        north_deg=draw(st.none() | st.floats(-180, 360)),
    )
    picked = [room for room in rooms if draw(st.booleans())]
    return Reading(
        "DXF", "m", "m", 1.0, floor, exits, storeys,
        stated={r.id: Stated(draw(figures), draw(_kinds), draw(names)) for r in picked},
        ceilings_m={r.id: draw(figures) for r in picked},
        levels_m={r.id: draw(st.floats(-5, 5)) for r in picked},
        fixture_storeys={f.id: "low" for f in floor.fixtures if f.id and storeys},
        steps=tuple(Step(_across(r), draw(figures)) for r in picked),
    )  # fmt: skip


_kinds = st.sampled_from(["net", "gross", "wall-centre", "size-text"])


def _two_storeys(ground: Floor, above: House, name: str) -> tuple[Floor, tuple[Storey, ...]]:
    """A second storey over the first: the same places in plan, other ids."""
    upper = above.floor()
    lower = tuple(replace(room, storey="low") for room in ground.rooms)
    rooms = tuple(Room(f"up-{r.id}", r.polygon, r.name, "up") for r in upper.rooms)
    openings = tuple(
        Opening(
            f"up-{o.id}",
            o.kind,
            o.line,
            tuple(f"up-{room}" for room in o.rooms),
            o.width_m,
            o.threshold,
        )
        for o in upper.openings
    )
    floor = replace(ground, rooms=lower + rooms, openings=ground.openings + openings)
    return floor, (Storey("low", name, 0.0), Storey("up", "", 2.7))


def _corner(room: Room) -> Point:
    spot = room.polygon.shape.representative_point()
    return float(spot.x), float(spot.y)


def _across(room: Room) -> tuple[Point, Point]:
    x, y = _corner(room)
    return (x, y), (x + 1 / 3, y + 0.1)


@st.composite
def _fixture(draw: st.DrawFn, room: Room) -> Fixture:
    x, y = _corner(room)
    outer = box(x, y, draw(st.floats(0.3, 1.0)), 0.6)
    hole = box(x + 0.1, y + 0.1, 0.1, 0.2).coordinates[0][::-1]
    rings = (*outer.coordinates, hole) if draw(st.booleans()) else outer.coordinates
    ident = draw(st.sampled_from(["", f"fx-{room.id}"]))
    return Fixture(draw(names.filter(bool)), PolygonGeometry(rings), ident)


@st.composite
def _cut(draw: st.DrawFn, room: Room) -> SawCut:
    start, end = _across(room)
    line = (start, end, (end[0], end[1] + draw(figures)))
    return SawCut(
        line[: draw(st.sampled_from([2, 3]))], draw(st.sampled_from(["", f"c-{room.id}"]))
    )


@st.composite
def _window(draw: st.DrawFn, room: Room) -> Window:
    return Window(
        _across(room), draw(maybe), draw(maybe), draw(names), draw(st.sampled_from(["", room.id])),
        draw(maybe), draw(st.booleans()), draw(st.booleans()),
    )  # fmt: skip
