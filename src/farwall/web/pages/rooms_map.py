"""A map of a floor: its rooms with a word in each, some of them hatched."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Literal

import shapely

from farwall.floor.nouns import Floor, Room
from farwall.nouns import dataclass
from farwall.papers.ink import DANGER, INK, SOFT, WHITE
from farwall.papers.svg import number
from farwall.papers.xml_text import escape, quoteattr

_WIDTHS = (("wide", 640.0, 400.0), ("narrow", 358.0, 420.0))
"""Class, width and height of the drawing for a desk and for a phone."""
_EDGE, _LINE = 4.0, 16.0
_LETTER = 0.55
"""Width of a letter in sizes of its type, about."""


@dataclass(frozen=True)
class InRoom:
    """What a map says in a room: words under its name, `strong` ones in ink, how it is hatched."""

    words: str = ""
    strong: bool = False
    hatch: Literal["", "tight", "shut"] = ""


def rooms_map(floor: Floor, said_in: Mapping[str, InRoom]) -> str:
    """The map as SVG, a drawing for each storey; empty for a floor without rooms.

    said_in: by the id of a room; a room that it does not name has its own name alone.
    """
    storeys = dict.fromkeys(room.storey for room in floor.rooms)
    return "\n".join(
        f'<div class="{name}">{_drawn(said_in, rooms, f"{name}{n}", wide, high)}</div>'
        for n, one in enumerate(storeys)
        for rooms in [[room for room in floor.rooms if room.storey == one]]
        for name, wide, high in _WIDTHS
    )


def _drawn(
    said_in: Mapping[str, InRoom], rooms: list[Room], which: str, most_wide: float, most_high: float
) -> str:
    x0, y0, x1, y1 = shapely.total_bounds([room.polygon.shape for room in rooms]).tolist()
    scale = min(
        (most_wide - 2 * _EDGE) / max(x1 - x0, 0.1), (most_high - 2 * _EDGE) / max(y1 - y0, 0.1)
    )
    wide, high = (x1 - x0) * scale + 2 * _EDGE, (y1 - y0) * scale + 2 * _EDGE

    def at(x: float, y: float) -> tuple[float, float]:
        return (x - x0) * scale + _EDGE, (y1 - y) * scale + _EDGE

    each = {room.id: said_in.get(room.id, InRoom()) for room in rooms}
    told = "; ".join(
        f"{room.label}: {each[room.id].words}" if each[room.id].words else room.label
        for room in rooms
    )
    parts = [
        (
            f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {number(wide)} {number(high)}" '
            f'role="img" aria-label={quoteattr(told)} width="{number(wide)}">'
        ),
        (
            f'<defs><pattern id="tight{which}" width="9" height="9" patternUnits="userSpaceOnUse" '
            f'patternTransform="rotate(45)"><path d="M0 0V9" stroke="{SOFT}" stroke-width="1"/>'
            f'</pattern><pattern id="shut{which}" width="7" height="7" '
            f'patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V7M0 0H7" '
            f'stroke="{DANGER}" stroke-width="1"/></pattern></defs>'
        ),
    ]
    for room in rooms:
        path = "".join(
            "M" + "L".join(f"{number(x)} {number(y)}" for x, y in (at(*p) for p in ring)) + "Z"
            for ring in room.polygon.coordinates
        )
        hatch = each[room.id].hatch
        fill = f"url(#{hatch}{which})" if hatch else WHITE
        parts.append(
            f'<path d="{path}" fill="{fill}" stroke="{INK}" stroke-width="2.4" '
            'stroke-linejoin="round" fill-rule="evenodd"/>'
        )
    for room in rooms:
        shape = room.polygon.shape
        middle = shape.centroid
        inside = shape.buffer(-0.3).contains(middle)
        point = middle.coords[0] if inside else shapely.maximum_inscribed_circle(shape).coords[0]
        box = room.polygon.shape.bounds
        parts += _lettered(
            each[room.id], room, at(*point), (box[2] - box[0]) * scale, (box[3] - box[1]) * scale
        )
    return "".join([*parts, "</svg>"])


def _lettered(
    said_in: InRoom, room: Room, at: tuple[float, float], wide: float, high: float
) -> Iterator[str]:
    """The room's name and its words where they have room; the picture's label has all of them."""
    x, y = at
    fits = len(room.label) * _LETTER * 12 < wide - 6 and high > 2 * _LINE + 4
    words, strong = said_in.words, said_in.strong
    cased = f'stroke="{WHITE}" stroke-width="4" paint-order="stroke" text-anchor="middle"'
    if fits:
        yield (
            f'<text x="{number(x)}" y="{number(y - 3)}" font-size="12" fill="{SOFT}" {cased}>'
            f"{escape(room.label)}</text>"
        )
    if words and len(words) * _LETTER * 14 < wide:
        down = _LINE - 3 if fits else 5
        yield (
            f'<text x="{number(x)}" y="{number(y + down)}" font-size="{14 if strong else 12}" '
            f'font-weight="{600 if strong else 400}" fill="{INK if strong else SOFT}" {cased}>'
            f"{escape(words)}</text>"
        )
