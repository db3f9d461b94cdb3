"""Pictures of a room: its points by letter, and its floor from above with the marks by number."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import shapely

from farwall.floor.geometry import Point, polygons_of
from farwall.floor.nouns import Floor
from farwall.nouns import dataclass
from farwall.papers.drawing.frame import path_data
from farwall.papers.ink import INK, LINE, SOFT, WHITE
from farwall.papers.svg import number
from farwall.papers.xml_text import escape, quoteattr

_WIDE, _HIGH, _EDGE = 620.0, 520.0, 16.0
_TAG, _CLEAR = 9.0, 6.0


@dataclass(frozen=True)
class Drawn:
    """A mark on the picture: what is written at it, how its outline is drawn.

    look: `asked` a line, `said` a thick line, `beside` dotted: a crack or a joint.
    """

    tag: str
    at: Point
    outline: tuple[Point, ...]
    look: str


@dataclass(frozen=True)
class Above:
    """A picture of the floor from above: its address, its left and top edge on the plan, size."""

    picture: str
    left_m: float
    top_m: float
    wide_m: float
    high_m: float


@dataclass(frozen=True)
class _Frame:
    left_m: float
    top_m: float
    scale: float
    wide: float
    high: float

    def at(self, place: Point) -> Point:
        return (
            _EDGE + (place[0] - self.left_m) * self.scale,
            _EDGE + (self.top_m - place[1]) * self.scale,
        )

    def line(self, points: Sequence[Point]) -> str:
        return "M" + " ".join("{},{}".format(*map(number, self.at(one))) for one in points)

    def path(self, ring: Sequence[Point]) -> str:
        return f"{self.line(ring)}Z"


def points_svg(floor: Floor, room: str, letters: Sequence[tuple[str, Point]], told: str) -> str:
    """The room with its points by letter; each letter can be taken in hand by the script."""
    frame = _frame(floor, room, 420.0, 360.0)
    parts = [_head(frame, told), *_room(frame, floor, room, WHITE)]
    points = [frame.at(place) for _, place in letters]
    taken: list[Point] = []
    for (letter, _), (x, y) in zip(letters, points, strict=True):
        lx, ly = _beside(frame, (x, y), points, taken)
        taken.append((lx, ly))
        parts.append(
            f'<g class="landmark" data-letter="{letter}">'
            f'<circle cx="{number(x)}" cy="{number(y)}" r="3" fill="{INK}"/>'
            f'{_cased(lx, ly, letter, 14)}</g>'
        )  # fmt: skip
    return "".join([*parts, "</svg>"])


def _beside(
    frame: _Frame, at: Point, points: Sequence[Point], taken: Sequence[Point]
) -> Point:  # fmt: skip
    """Where the letter of a point stands: inside the room, over no other letter and no point.

    Above it, below, aslant, then to either side, where a wall runs; where nothing is free, where
    least lies under it.
    """
    x, y = at
    inner = min(max(x, 1.6 * _EDGE), frame.wide - 1.6 * _EDGE)
    above = y - 8 if y > 2 * _EDGE else y + 19
    places = [(inner, above), (inner, y + 19)]
    places += [(x + a, y + b) for b in (-8, 19, 5) for a in (-13, 13)]

    def under(place: Point) -> int:
        left, top, right, low = place[0] - 7, place[1] - 12, place[0] + 7, place[1] + 2
        out = not (_EDGE <= place[0] <= frame.wide - _EDGE and top > 2 and low < frame.high - 2)
        letters = sum(abs(place[0] - a) < 15 and abs(place[1] - b) < 15 for a, b in taken)
        dots = sum(left - 3 < a < right + 3 and top - 3 < b < low + 3 for a, b in points)
        return 100 * out + 10 * letters + dots

    return min(places, key=under)


def marks_svg(
    floor: Floor, room: str, above: Above, *, marks: Sequence[Drawn], told: str
) -> str:  # fmt: skip
    """The floor of the room from above, as the photo shows it, and the marks with their numbers."""
    frame = _frame(floor, room, _WIDE, _HIGH)
    parts = [_head(frame, told, frame)]
    x, y = frame.at((above.left_m, above.top_m))
    parts.append(
        f'<image href={quoteattr(above.picture)} x="{number(x)}" y="{number(y)}" '
        f'width="{number(above.wide_m * frame.scale)}" '
        f'height="{number(above.high_m * frame.scale)}" preserveAspectRatio="none"/>'
    )
    parts += _room(frame, floor, room, "none")
    parts += [line for one in marks for line in _outline(frame, one)]
    taken: list[Point] = []
    for one in marks:
        parts.append(_tag(frame, one, taken))
    return "".join([*parts, "</svg>"])


def _frame(floor: Floor, room: str, most_wide: float, most_high: float) -> _Frame:
    x0, y0, x1, y1 = floor.room_by_id[room].polygon.shape.bounds
    scale = min(
        (most_wide - 2 * _EDGE) / max(x1 - x0, 0.1), (most_high - 2 * _EDGE) / max(y1 - y0, 0.1)
    )
    return _Frame(x0, y1, scale, (x1 - x0) * scale + 2 * _EDGE, (y1 - y0) * scale + 2 * _EDGE)


def _head(frame: _Frame, told: str, placed: _Frame | None = None) -> str:
    data = ""
    if placed is not None:
        data = (
            f' data-left="{placed.left_m - _EDGE / placed.scale:.4f}" '
            f'data-top="{placed.top_m + _EDGE / placed.scale:.4f}" data-scale="{placed.scale:.4f}"'
        )
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {number(frame.wide)} '
        f'{number(frame.high)}" role="img" aria-label={quoteattr(told)}{data}>'
    )


def _room(frame: _Frame, floor: Floor, room: str, fill: str) -> Iterator[str]:
    shape = floor.room_by_id[room].polygon
    path = "".join(frame.path(ring) for ring in shape.coordinates)
    for one in floor.fixtures:
        for part in polygons_of(one.polygon.shape.intersection(shape.shape)):
            ring = shapely.get_coordinates(part.exterior).tolist()
            yield f'<path d="{frame.path(ring)}" fill="{WHITE}" stroke="{SOFT}" stroke-width="1"/>'
    for cut in floor.saw_cuts:
        inside = shapely.LineString(cut.line).intersection(shape.shape)
        for each in shapely.get_parts(inside).tolist():
            if isinstance(each, shapely.LineString) and not each.is_empty:
                line = frame.line(shapely.get_coordinates(each).tolist())
                yield f'<path d="{line}" fill="none" stroke="{SOFT}" stroke-width="1"/>'
    yield (
        f'<path d="{path}" fill="{fill}" stroke="{INK}" stroke-width="2.4" '
        'stroke-linejoin="round" fill-rule="evenodd"/>'
    )
    for opening in floor.openings:
        if room in opening.rooms:
            line = frame.line(opening.line)
            yield f'<path d="{line}" fill="none" stroke="{LINE}" stroke-width="4"/>'


_LOOKS = {"asked": ("1.6", ""), "said": ("3", ""), "beside": ("1.4", ' stroke-dasharray="2 3"')}


def _outline(frame: _Frame, one: Drawn) -> Iterator[str]:
    """Ink cased in white: seen on light floor and on dark, in colour and in grey."""
    wide, dashes = _LOOKS[one.look]
    if len(one.outline) < 3:
        x, y = map(number, frame.at(one.at))
        yield f'<circle cx="{x}" cy="{y}" r="7" fill="none" stroke="{WHITE}" stroke-width="5"/>'
        yield (
            f'<circle cx="{x}" cy="{y}" r="7" fill="none" stroke="{INK}" '
            f'stroke-width="{wide}"{dashes}/>'
        )
        return
    # Drawn clear of the mark, so that whoever judges it sees the floor there.
    shape = shapely.make_valid(shapely.Polygon([frame.at(p) for p in one.outline])).buffer(_CLEAR)
    path = path_data(shape)
    yield (
        f'<path d="{path}" fill="none" stroke="{WHITE}" stroke-width="{float(wide) + 3:g}" '
        'stroke-opacity=".85" stroke-linejoin="round"/>'
    )
    yield (
        f'<path d="{path}" fill="none" stroke="{INK}" stroke-width="{wide}" '
        f'stroke-linejoin="round"{dashes}/>'
    )


def _tag(frame: _Frame, one: Drawn, taken: list[Point]) -> str:
    """The number beside the mark, where no other number stands."""
    spots = [frame.at(p) for p in one.outline] or [frame.at(one.at)]
    x0, x1 = min(x for x, _ in spots), max(x for x, _ in spots)
    y0, y1 = min(y for _, y in spots), max(y for _, y in spots)
    mx, my = frame.at(one.at)
    gap = _TAG + 4
    places = [(x1 + gap, my), (x0 - gap, my), (mx, y0 - gap), (mx, y1 + gap),
              (x1 + gap, y0 - gap), (x0 - gap, y1 + gap), (mx, my)]  # fmt: skip
    inside = [
        (x, y) for x, y in places
        if _TAG < x < frame.wide - _TAG and _TAG < y < frame.high - _TAG
    ] or [(mx, my)]  # fmt: skip
    free = next(
        (
            p
            for p in inside
            if all((p[0] - x) ** 2 + (p[1] - y) ** 2 > 4 * _TAG**2 for x, y in taken)
        ),
        inside[0],
    )
    taken.append(free)
    return _cased(free[0], free[1] + 4.5, one.tag, 14)


def _cased(x: float, y: float, text: str, size: int) -> str:
    return (
        f'<text x="{number(x)}" y="{number(y)}" font-size="{size}" font-weight="600" fill="{INK}" '
        f'stroke="{WHITE}" stroke-width="4" stroke-linejoin="round" paint-order="stroke" '
        f'text-anchor="middle">{escape(text)}</text>'
    )
