"""Hypothesis strategies for floors: houses of upright rooms between walls, all rooms reachable.

`houses()` gives a `House`: rooms at their inner wall faces, doors with the floor under them,
and at least one way out. `floors()` gives the same with some turned and shifted.
"""

from dataclasses import dataclass
from itertools import accumulate, pairwise

import shapely
from hypothesis import strategies as st
from shapely.affinity import rotate

from farwall.floor.geometry import PolygonGeometry, polygon_geometry
from farwall.floor.nouns import Exit, Floor, Opening, OpeningKind, Room

Spot = tuple[int, int]
OUTSIDE: Spot = (-1, -1)


@dataclass(frozen=True)
class Passage:
    """A way through a wall: between which cells, its kind, its rectangle in the wall."""

    cells: tuple[Spot, Spot]
    kind: OpeningKind
    x0: float
    y0: float
    x1: float
    y1: float

    @property
    def upright(self) -> bool:
        """Whether the wall it is in runs up the sheet."""
        return self.cells[0][1] == self.cells[1][1] and self.cells[1] != OUTSIDE

    @property
    def seam(self) -> tuple[tuple[float, float], tuple[float, float]]:
        """The line in the middle of the wall."""
        if self.upright:
            x = (self.x0 + self.x1) / 2
            return (x, self.y0), (x, self.y1)
        y = (self.y0 + self.y1) / 2
        return (self.x0, y), (self.x1, y)

    @property
    def width(self) -> float:
        """Its clear width."""
        (ax, ay), (bx, by) = self.seam
        return abs(bx - ax) + abs(by - ay)


@dataclass(frozen=True)
class House:
    """Columns and rows of rooms [m] with walls of one depth between and around them."""

    columns: tuple[float, ...]
    rows: tuple[float, ...]
    wall: float
    passages: tuple[Passage, ...]

    def box(self, cell: Spot) -> tuple[float, float, float, float]:
        """The inner wall faces of a room."""
        column, row = cell
        x0, y0 = _starts(self.columns, self.wall)[column], _starts(self.rows, self.wall)[row]
        return x0, y0, x0 + self.columns[column], y0 + self.rows[row]

    @property
    def cells(self) -> list[Spot]:
        """All rooms."""
        return [(c, r) for c in range(len(self.columns)) for r in range(len(self.rows))]

    def floor(self) -> Floor:
        """The floor with thresholds in its openings."""
        rooms = tuple(Room(name(c), _geometry(*self.box(c)), f"Room {name(c)}") for c in self.cells)
        openings = tuple(_opening(i, p) for i, p in enumerate(self.passages))
        return Floor(rooms, openings)

    def exits(self) -> tuple[Exit, ...]:
        """One for each way out."""
        ways = [i for i, p in enumerate(self.passages) if p.kind == "outside"]
        return tuple(Exit(f"exit-{i}", f"o{i}") for i in ways)


def name(cell: Spot) -> str:
    """The id of a room."""
    return f"r{cell[0]}{cell[1]}"


def _starts(sizes: tuple[float, ...], wall: float) -> list[float]:
    return [round(start, 4) for start in accumulate((s + wall for s in sizes), initial=0.0)]


def _geometry(x0: float, y0: float, x1: float, y1: float) -> PolygonGeometry:
    return polygon_geometry(shapely.box(x0, y0, x1, y1))


def _opening(index: int, passage: Passage) -> Opening:
    (ax, ay), (bx, by) = passage.seam
    rooms = tuple(name(cell) for cell in passage.cells if cell != OUTSIDE)
    line = ((round(ax, 4), round(ay, 4)), (round(bx, 4), round(by, 4)))
    threshold = _geometry(passage.x0, passage.y0, passage.x1, passage.y1)
    return Opening(f"o{index}", passage.kind, line, rooms, round(passage.width, 4), threshold)


def _sizes(most: int) -> st.SearchStrategy[tuple[float, ...]]:
    size = st.integers(min_value=24, max_value=120).map(lambda n: n * 0.05)
    return st.lists(size, min_size=1, max_size=most).map(tuple)


@st.composite
def houses(draw: st.DrawFn, *, most: int = 3) -> House:
    """Houses of up to `most` by `most` rooms, every room reachable from a way out."""
    columns, rows = draw(_sizes(most)), draw(_sizes(most))
    wall = draw(st.sampled_from([0.1, 0.12, 0.15, 0.2]))
    bare = House(columns, rows, wall, ())
    kinds = st.sampled_from(["door", "cased"])
    passages = [_way_out(bare, draw(st.integers(0, len(columns) - 1)))]
    for first, second in _neighbours(bare):
        # The first row and every column are always joined: a tree that reaches all rooms.
        needed = first[1] == second[1] == 0 or first[0] == second[0]
        if needed or draw(st.booleans()):
            passages.append(_through(bare, first, second, draw(kinds), draw(st.floats(0.1, 0.9))))
    return House(columns, rows, wall, tuple(passages))


def _neighbours(house: House) -> list[tuple[Spot, Spot]]:
    sideways = [((a, r), (b, r)) for a, b in pairwise(range(len(house.columns)))
                for r in range(len(house.rows))]  # fmt: skip
    upwards = [((c, a), (c, b)) for a, b in pairwise(range(len(house.rows)))
               for c in range(len(house.columns))]  # fmt: skip
    return sideways + upwards


def _through(house: House, first: Spot, second: Spot, kind: OpeningKind, where: float) -> Passage:
    x0, y0, x1, y1 = house.box(first)
    if first[1] == second[1]:
        low, high = _gap(y0, y1, where)
        return Passage((first, second), kind, x1, low, round(x1 + house.wall, 4), high)
    low, high = _gap(x0, x1, where)
    return Passage((first, second), kind, low, y1, high, round(y1 + house.wall, 4))


def _way_out(house: House, column: int) -> Passage:
    x0, y0, x1, _ = house.box((column, 0))
    low, high = _gap(x0, x1, 0.5)
    return Passage(((column, 0), OUTSIDE), "outside", low, round(y0 - house.wall, 4), high, y0)


def _gap(low: float, high: float, where: float) -> tuple[float, float]:
    """A door 0.8 m wide, or as wide as the wall allows, with 0.1 m left at each side."""
    width = min(0.8, high - low - 0.3)
    start = low + 0.1 + where * (high - low - 0.2 - width)
    return round(start, 3), round(round(start, 3) + width, 4)


@st.composite
def floors(draw: st.DrawFn) -> tuple[Floor, tuple[Exit, ...]]:
    """Floors of houses, some turned by any angle, with their exits."""
    house = draw(houses())
    turn = draw(st.sampled_from([0.0, 0.0, 30.0, 45.0, 7.3, 90.0]))
    return turned(house.floor(), turn), house.exits()


def turned(floor: Floor, degrees: float) -> Floor:
    """The same floor turned about the origin."""

    def polygon(geometry: PolygonGeometry | None) -> PolygonGeometry | None:
        return geometry and polygon_geometry(rotate(geometry.shape, degrees, origin=(0, 0)))

    def line(ends: tuple[tuple[float, float], tuple[float, float]]) -> tuple:
        moved = rotate(shapely.LineString(ends), degrees, origin=(0, 0))
        return tuple((round(x, 4), round(y, 4)) for x, y in moved.coords)

    rooms = tuple(Room(r.id, polygon(r.polygon), r.name) for r in floor.rooms)
    openings = tuple(
        Opening(o.id, o.kind, line(o.line), o.rooms, o.width_m, polygon(o.threshold))
        for o in floor.openings
    )
    return Floor(rooms, openings)
