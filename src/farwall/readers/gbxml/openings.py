"""Doors, passages, air surfaces and windows of gbXML, with the spaces on both sides."""

from __future__ import annotations

from collections import Counter
from dataclasses import field
from math import dist

from farwall.facts.reading import Note
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.gbxml.shapes import Loop, foot_of, height_of, loop_of, seam_of, upright_line
from farwall.readers.gbxml.units import Units
from farwall.readers.told.doorways import Line
from farwall.readers.told.levels import part_at
from farwall.readers.told.nouns import ToldOpening, ToldSpace, ToldWindow
from farwall.readers.xml_text import Node

_DOORS = {"nonslidingdoor", "slidingdoor", "door"}
_WINDOWS = {"fixedwindow", "operablewindow"}
_SKYLIGHTS = {"fixedskylight", "operableskylight"}
_OUTSIDE = {"exteriorwall", "undergroundwall", "roof", "shade"}
_LOW_M, _BELOW_M = 1.5, -0.6
"""A window this tall whose foot is at the floor, or a little below, may be a door (guess)."""


@dataclass
class Ways:
    """Openings and windows, what was left of them, and what a person must say."""

    openings: list[ToldOpening] = field(default_factory=list)
    windows: list[ToldWindow] = field(default_factory=list)
    left: list[Note] = field(default_factory=list)
    asks: list[Note] = field(default_factory=list)
    flat: Counter[str] = field(default_factory=Counter)
    low: list[tuple[str, Point]] = field(default_factory=list)


@dataclass(frozen=True)
class _Wall:
    """A surface: its element, its id, and the known rooms on its sides."""

    node: Node
    id: str
    spaces: tuple[list[ToldSpace], ...]

    def sides(self, corners: Loop) -> tuple[ToldSpace, ...]:
        """The rooms on both sides of an opening, for a space may have rooms on several levels."""
        if not corners:
            return tuple(pieces[0] for pieces in self.spaces)
        middle = tuple(sum(corner[i] for corner in corners) / len(corners) for i in (0, 1))
        at = middle[0], middle[1]
        return tuple(part_at(pieces, foot_of(corners), at) for pieces in self.spaces)

    @property
    def kind(self) -> str:
        return self.node.get("surfaceType").lower()


def ways_of(root: Node, units: Units, pieces: dict[str, list[ToldSpace]]) -> Ways:
    """All openings of all surfaces, and the surfaces of air between rooms."""
    ways = Ways()
    for place, surface in enumerate(root.walk("Surface")):
        told = (side.get("spaceIdRef") for side in surface.all("AdjacentSpaceId"))
        sides = tuple(pieces[own] for own in told if own in pieces)[:2]
        wall = _Wall(surface, surface.get("id") or f"surface-{place + 1}", sides)
        if wall.kind == "air":
            _air(wall, units, ways)
        for index, opening in enumerate(surface.all("Opening")):
            own = opening.get("id") or f"{wall.id}-{index + 1}"
            _opening(own, opening, wall, units, ways)
    if ways.low:
        names = ", ".join(own for own, _ in ways.low[:5]) + (" …" if len(ways.low) > 5 else "")
        what = f"{len(ways.low)} windows reach down to the floor; each may be a door: {names}"
        ways.left.append(Note("window-to-the-floor", what, ways.low[0][1]))
    for kind, count in sorted(ways.flat.items()):
        ways.left.append(Note("not-read", f"{count} × {kind} left aside."))
    return ways


def _opening(own: str, opening: Node, wall: _Wall, units: Units, ways: Ways) -> None:
    kind = opening.get("openingType").lower()
    seam, corners = seam_of(opening, wall.node, units)
    if kind in _SKYLIGHTS:
        ways.flat["skylight"] += 1
    elif kind in _WINDOWS:
        _window(own, seam, corners, wall, ways)
    elif kind not in _DOORS and kind != "air":
        ways.flat[f"opening of the kind {kind or 'that is not told'}"] += 1
    elif seam is None and corners:
        ways.flat["door or passage that lies flat"] += 1
    else:
        ways.openings.append(_told(own, seam, corners, wall, leaf=kind in _DOORS))


def _told(own: str, seam: Line | None, corners: Loop, wall: _Wall, *, leaf: bool) -> ToldOpening:
    foot = foot_of(corners) if corners else None
    sides = wall.sides(corners)
    outside: bool | None = False
    if len(sides) < 2:
        outside = True if len(sides) == 1 and wall.kind in _OUTSIDE else None
    return ToldOpening(
        own,
        seam,
        leaf=leaf,
        relations=tuple(room.id for room in sides),
        storey=sides[0].storey if sides else "",
        width_m=round(dist(*seam), 4) if seam else None,
        height_m=round(height_of(corners), 4) if corners else None,
        said_outside=outside,
        foot_m=foot,
    )


def _window(own: str, seam: Line | None, corners: Loop, wall: _Wall, ways: Ways) -> None:
    if seam is None:
        ways.flat["window that lies flat or nowhere"] += 1
        return
    foot, tall = foot_of(corners), height_of(corners)
    room = next(iter(wall.sides(corners)), None)
    sill = foot - room.floor_m if room is not None and room.floor_m is not None else None
    if sill is not None and _BELOW_M < sill < 0.1 and tall > _LOW_M:
        ways.low.append((own, seam[0]))
    ways.windows.append(
        ToldWindow(
            seam,
            max(round(sill, 4), 0.0) if sill is not None else None,
            round(tall, 4),
            room.storey if room else "",
            room.id if room else "",
        )
    )


def _air(wall: _Wall, units: Units, ways: Ways) -> None:
    """A surface of air: open from one room to the other, with no leaf; or a hole in a floor."""
    planar = wall.node.first("PlanarGeometry")
    corners = (loop_of(planar, units) if planar is not None else None) or []
    sides = wall.sides(corners)
    if len({room.id for room in sides}) < 2:
        ways.flat["air surface with less than two rooms"] += 1
        return
    seam = upright_line(corners) if corners else None
    names = " and ".join(f"“{room.name}”" for room in sides)
    where = ((seam[0][0] + seam[1][0]) / 2, (seam[0][1] + seam[1][1]) / 2) if seam else None
    if corners and seam is None:
        what = f"{names} are open to each other through the floor: a stair or a void."
        ways.left.append(Note("open-through-floor", what, (corners[0][0], corners[0][1])))
    else:
        ways.openings.append(_told(wall.id, seam, corners, wall, leaf=False))
    what = f"Only air parts {names}. Are they one room, to be sprayed as one?"
    ways.asks.append(Note("one-room", what, where))
