"""What every drawing of whole storeys shares: their place on the sheet, and names in rooms."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Plan
from farwall.nouns import dataclass
from farwall.papers.drawing.board import Board, Words
from farwall.papers.drawing.floor_foot import EDGE
from farwall.papers.drawing.frame import frame_for
from farwall.papers.drawing.scene import Scene, Storey
from farwall.papers.drawing.sheet import WAY_OUT, Sheet, outward
from farwall.papers.drawing.walls import OUTER_WALL_M
from farwall.papers.lettering import Lettering, text_width
from farwall.papers.svg import Svg
from farwall.papers.wall_clock import Units

_ARROW = 26.0
_LEAST_FLOOR = 40.0


@dataclass(frozen=True)
class Manner:
    """In which units and type a drawing is written, and the space it has."""

    units: Units
    lettering: Lettering
    width: float
    height: float


def stacked(
    storeys: Sequence[Storey],
    ident: str,
    manner: Manner,
    draw: Callable[[Svg, Storey], None],
    *,
    between: float,
) -> Svg:
    """One drawing of storeys one above the other, each with its share of the height.

    draw: draws one storey, and sets the height that it used.
    """
    share = (manner.height - between * (len(storeys) - 1)) / max(len(storeys), 1)
    family = manner.lettering.family
    svg = Svg(width=manner.width, height=manner.height, family=family, ident=ident)
    top = 0.0
    for k, storey in enumerate(storeys):
        part = Svg(width=manner.width, height=share, family=family, ident=f"{ident}{k}")
        draw(part, storey)
        svg.below(part, top)
        top += part.height + between
    svg.height = max(top - between, 1.0)
    return svg


def storey_sheet(
    svg: Svg, plan: Plan, scene: Scene, *, units: Units, lettering: Lettering, foot: float
) -> Sheet:
    """A sheet for a whole storey, with room for the words at its ways out.

    foot: what is kept free below it. Sets the drawing's height to what the storey uses.
    """
    floor = scene.storey.floor
    bounds = floor.buffer(OUTER_WALL_M, join_style="mitre").bounds
    beside = text_width(WAY_OUT, lettering.body, bold=True) + _ARROW
    above = lettering.body * 1.7
    sides = [outward(opening, floor) for opening in scene.storey.ways_out]
    left = beside if any(dx < -0.5 for dx, _ in sides) else EDGE
    right = beside if any(dx > 0.5 for dx, _ in sides) else EDGE
    top = above if any(dy < -0.5 for _, dy in sides) else EDGE
    low = above if any(dy > 0.5 for _, dy in sides) else EDGE
    frame = frame_for(
        bounds,
        left=left,
        top=top,
        width=svg.width - left - right,
        height=max(svg.height - top - low - foot, _LEAST_FLOOR),
    )
    svg.height = top + (bounds[3] - bounds[1]) * frame.scale + low
    page = (0.0, 0.0, svg.width, svg.height)
    return Sheet(plan, scene, svg, frame, Board(page), lettering, units, page)


def name_or_key(
    sheet: Sheet, place: BaseGeometry, ways: Iterable[Words], mark: Words, keyed: str
) -> None:
    """The first way to say a name that lies free inside `place`; else its mark, and the key.

    keyed: what the key says of the mark.
    """
    for words in ways:
        centre = sheet.board.place_inside(words, place)
        if centre is not None:
            sheet.write(words, centre, cased=True)
            return
    centre = sheet.board.place_inside(mark, place)
    if centre is not None:
        sheet.write(mark, centre, cased=True)
    else:
        point = place.representative_point()
        sheet.write_near(mark, (point.x, point.y), rings=60)
    sheet.key.append(keyed)


def letter_of(count: int) -> str:
    """a, b, … z, aa, bb: the mark of a room whose name stands in the key."""
    letters = "abcdefghijklmnopqrstuvwxyz"
    return letters[count % 26] * (count // 26 + 1)
