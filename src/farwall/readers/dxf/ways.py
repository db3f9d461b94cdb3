"""Turns portals into openings, windows and ways out, with the room on each side."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

import shapely

from farwall.facts.reading import Note
from farwall.floor.geometry import Point
from farwall.floor.nouns import OpeningKind
from farwall.readers.dxf.portals import Portal
from farwall.readers.dxf.rooms import Sorted, side_share
from farwall.readers.dxf.signs import Signs

_PROBE_M = 0.05
_NARROWEST_EXIT_M = 0.6


@dataclass(frozen=True)
class Way:
    """An opening before it has ids: `rooms` are places in the list of rooms."""

    kind: OpeningKind
    portal: Portal
    rooms: tuple[int, ...]
    signs: Signs


@dataclass
class Ways:
    """All openings and windows, and what is unsure about them."""

    openings: list[Way] = field(default_factory=list)
    windows: list[Way] = field(default_factory=list)
    left: list[Note] = field(default_factory=list)


def find_ways(portals: Sequence[Portal], signs: Sequence[Signs], faces: Sorted) -> Ways:
    """Each portal as an opening or a window; portals that lead nowhere are listed as left."""
    ways = Ways()
    for portal, sign in zip(portals, signs, strict=True):
        sides = [_side(portal, which, faces) for which in (0, 1)]
        rooms = tuple(side for side in sides if isinstance(side, int))
        if not rooms:
            continue
        if "shut" in sides:
            what = (
                f"An opening {portal.width_m:.2f} m wide leads from a room into a wall or a shaft."
            )
            ways.left.append(Note("opening-nowhere", what, portal.middle))
        elif sign.window:
            ways.windows.append(Way("outside", portal, rooms, sign))
        else:
            _add(ways, portal, rooms, sign)
    return ways


def _add(ways: Ways, portal: Portal, rooms: tuple[int, ...], signs: Signs) -> None:
    kind = _kind(portal, rooms, signs)
    way = Way(kind, portal, rooms, signs)
    ways.openings.append(way)
    if kind == "outside" and not signs.leaf and signs.code_says != "door":
        what = (
            f"A gap {portal.width_m:.2f} m wide in an outside wall has neither leaf nor glass "
            "drawn: taken for a way out. Look at the place."
        )
        ways.left.append(Note("way-out-unsure", what, portal.middle))
    elif kind == "cased" and signs.code_says == "door":
        what = (
            f"The opening lettered {signs.code_text} has a door's size but no leaf drawn: taken as "
            "cased. With a leaf a seam could hide under it."
        )
        ways.left.append(Note("no-leaf", what, portal.middle))


def _kind(portal: Portal, rooms: tuple[int, ...], signs: Signs) -> OpeningKind:
    if len(rooms) == 1:
        return "outside"
    if signs.leaf:
        return "door"
    return "cased" if portal.found_by == "head" else "wide"


def _side(portal: Portal, which: int, faces: Sorted) -> int | str:
    """What lies on one side: the place of a room in the list, `outside`, or `shut`."""
    face = portal.faces[which]
    shares = [(side_share(room.shape, face), -index) for index, room in enumerate(faces.rooms)
              if room.shape.distance(shapely.LineString(face)) < 0.01]  # fmt: skip
    if shares and max(shares)[0] > 0.5:
        return -max(shares)[1]
    probe = shapely.Point(_beyond(portal, which))
    for index, room in enumerate(faces.rooms):
        if room.shape.intersects(probe):
            return index
    if any(shaft.intersects(probe) for shaft in faces.shafts):
        return "shut"
    return "outside"


def _beyond(portal: Portal, which: int) -> Point:
    """A point just off the middle of one face, away from the seam."""
    (a, b), (mx, my) = portal.faces[which], portal.middle
    fx, fy = (a[0] + b[0]) / 2, (a[1] + b[1]) / 2
    reach = portal.depth_m / 2
    return fx + (fx - mx) / reach * _PROBE_M, fy + (fy - my) / reach * _PROBE_M


def is_exit(way: Way) -> bool:
    """Whether a person could leave through it."""
    return way.kind == "outside" and way.portal.width_m >= _NARROWEST_EXIT_M
