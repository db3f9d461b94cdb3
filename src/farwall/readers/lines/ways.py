"""Turns portals into openings, windows and ways out, with the room on each side."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import field
from math import cos, pi, sin

import shapely

from farwall.facts.reading import Note
from farwall.floor.nouns import OpeningKind
from farwall.nouns import dataclass
from farwall.readers.lines.portals import Portal
from farwall.readers.lines.rooms import Sorted, share_along
from farwall.readers.lines.signs import Signs

_PROBE_M = 0.05
_NARROWEST_EXIT_M = 0.6
_WALLED_SHARE = 0.9
_RAYS = 32
_FAR_M = 100.0
_SIGHT_M = 12.0


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


def find_ways(
    portals: Sequence[Portal],
    signs: Sequence[Signs],
    faces: Sorted,
    lines: Sequence[shapely.LineString],
) -> Ways:
    """Each portal as an opening or a window; portals that lead nowhere are listed as left.

    `lines` are all lines that close rooms: what lies between them unclosed is not outside.
    """
    ways = Ways()
    inside = _Unclosed(lines, faces)
    for portal, sign in zip(portals, signs, strict=True):
        sides = [_side(portal, which, faces, inside) for which in (0, 1)]
        rooms = tuple(side for side in sides if isinstance(side, int))
        if not rooms:
            continue
        if "shut" in sides:
            what = (
                f"An opening {portal.width_m:.2f} m wide leads from a room into a wall or a shaft."
            )
            ways.left.append(Note("opening-nowhere", what, portal.middle))
        elif "unclosed" in sides and not sign.window:
            what = (
                f"An opening {portal.width_m:.2f} m wide leads to floor that no walls close: it is "
                "neither outside nor a room that could be read."
            )
            ways.left.append(Note("opening-to-unclosed", what, portal.middle))
        elif sign.window:
            ways.windows.append(Way("outside", portal, rooms, sign))
        else:
            _add(ways, portal, rooms, sign)
    return ways


class _Unclosed:
    """The floor inside the house that no walls close: not a room, and not outside either."""

    def __init__(self, lines: Sequence[shapely.LineString], faces: Sorted) -> None:
        self._outdoors = [found.shape for found in faces.outdoors]
        self._labels = [shapely.Point(label.at) for label in faces.lost_labels]
        self._tree = shapely.STRtree(list(lines))

    def holds(self, probe: shapely.Point) -> bool:
        """Whether a point has walls nearly all round, or is in sight of a room name lost."""
        if any(shape.intersects(probe) for shape in self._outdoors):
            return False
        return self._walled_share(probe) >= _WALLED_SHARE or any(
            map(self._sees(probe), self._labels)
        )

    def _walled_share(self, probe: shapely.Point) -> float:
        """How much of the horizon round a point is wall."""
        x, y = float(probe.x), float(probe.y)
        turns = [2 * pi * (step + 0.5) / _RAYS for step in range(_RAYS)]
        ends = [(x + _FAR_M * cos(turn), y + _FAR_M * sin(turn)) for turn in turns]
        rays = [shapely.LineString([(x, y), end]) for end in ends]
        hit, _ = self._tree.query(rays, predicate="intersects")
        return len(set(hit.tolist())) / _RAYS

    def _sees(self, probe: shapely.Point) -> Callable[[shapely.Point], bool]:
        def sees(label: shapely.Point) -> bool:
            sight = shapely.LineString([probe, label])
            return sight.length < _SIGHT_M and not len(self._tree.query(sight, "intersects"))

        return sees


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


def _side(portal: Portal, which: int, faces: Sorted, inside: _Unclosed) -> int | str:
    """What lies on one side: a room's place in the list, `outside`, `shut` or `unclosed`."""
    face = portal.faces[which]
    near = faces.tree.query(shapely.LineString(face), "dwithin", 0.01)
    shares = [(share_along(faces.rim(int(i)), face), -int(i)) for i in near]
    if shares and max(shares)[0] > 0.5 and not portal.thin:
        return -max(shares)[1]
    probe = shapely.Point(portal.beyond(which, _PROBE_M))
    inside_of = sorted(int(i) for i in faces.tree.query(probe, "intersects"))
    if inside_of:
        return inside_of[0]
    if any(shaft.intersects(probe) for shaft in faces.shafts):
        return "shut"
    return "unclosed" if inside.holds(probe) else "outside"


def is_exit(way: Way) -> bool:
    """Whether a person could leave through it."""
    return way.kind == "outside" and way.portal.width_m >= _NARROWEST_EXIT_M
