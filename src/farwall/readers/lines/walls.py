"""The walls with every way through them found and closed."""

from __future__ import annotations

from dataclasses import dataclass

import shapely

from farwall.readers.lines.bounds import Bounds, line, lines_of
from farwall.readers.lines.gaps import end_caps, line_portals
from farwall.readers.lines.heads import head_portals, shut_portals
from farwall.readers.lines.jambs import corner_portals, jamb_portals
from farwall.readers.lines.portals import Portal
from farwall.readers.lines.sheet import Sheet
from farwall.readers.lines.swings import door_swings


@dataclass(frozen=True)
class Walls:
    """All lines that close rooms, and the portals in them."""

    lines: list[shapely.LineString]
    portals: list[Portal]


def find_walls(sheet: Sheet, bounds: Bounds) -> Walls:
    """The closed walls of a sheet in metres: heads first, then jambs, corners, single lines."""
    lines = lines_of(bounds.closing)
    swings = door_swings(sheet)
    portals = head_portals(bounds)
    walls = lines_of(bounds.strong)
    caps = end_caps([*walls, *_outlines(portals)])
    lines += [line(cap) for cap in caps]
    portals += shut_portals(lines, swings, portals)
    portals += jamb_portals(bounds, caps, portals)
    portals += corner_portals(bounds, caps, swings, portals)
    portals += line_portals([*lines, *_outlines(portals)], bounds, swings, portals)
    return Walls([*lines, *_outlines(portals)], portals)


def _outlines(portals: list[Portal]) -> list[shapely.LineString]:
    return [side for portal in portals for side in portal.outline]
