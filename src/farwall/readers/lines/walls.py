"""The walls with every way through them found and closed."""

from __future__ import annotations

import shapely

from farwall.nouns import dataclass
from farwall.readers.lines.bounds import Bounds, line, lines_of
from farwall.readers.lines.faces import Nets
from farwall.readers.lines.gaps import end_caps, line_portals
from farwall.readers.lines.heads import head_portals, shut_portals
from farwall.readers.lines.jambs import Jambs, corner_portals, jamb_portals
from farwall.readers.lines.portals import Portal
from farwall.readers.lines.sheet import Sheet
from farwall.readers.lines.swings import door_swings


@dataclass(frozen=True)
class Walls:
    """All lines that close rooms, the portals in them, and the lines cut where they cross."""

    lines: list[shapely.LineString]
    portals: list[Portal]
    net: shapely.Geometry


def find_walls(sheet: Sheet, bounds: Bounds) -> Walls:
    """The closed walls of a sheet in metres: heads first, then jambs, corners, single lines."""
    lines, nets = lines_of(bounds.closing), Nets()
    swings = door_swings(sheet)
    portals = head_portals(bounds)
    walls = lines_of(bounds.strong)
    caps = end_caps(nets.of([*walls, *_outlines(portals)]))
    lines += [line(cap) for cap in caps]
    portals += shut_portals(lines, nets, swings, portals)
    jambs = Jambs(bounds, caps)
    portals += jamb_portals(bounds, jambs, portals)
    portals += corner_portals(bounds, jambs, swings, portals)
    portals += line_portals([*lines, *_outlines(portals)], nets, bounds, swings, portals)
    closing = [*lines, *_outlines(portals)]
    return Walls(closing, portals, nets.of(closing))


def _outlines(portals: list[Portal]) -> list[shapely.LineString]:
    return [side for portal in portals for side in portal.outline]
