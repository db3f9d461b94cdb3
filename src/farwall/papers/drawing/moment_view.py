"""The floor at one moment: wet bands by age, the live edge, who stands where."""

from __future__ import annotations

from collections.abc import Callable

from farwall.facts.plan import Field, Plan
from farwall.facts.sunlight import SunPatch
from farwall.job.moments import Moment
from farwall.papers.drawing import marks
from farwall.papers.drawing.board import Board
from farwall.papers.drawing.edge_marks import draw_edge
from farwall.papers.drawing.frame import Frame
from farwall.papers.drawing.scene import Scene, Storey, way_of
from farwall.papers.drawing.sheet import (
    Sheet,
    draw_openings,
    draw_stop_lines,
    draw_walls,
    outward,
)
from farwall.papers.drawing.sun_marks import draw_sun
from farwall.papers.ink import INK, LINE, PAPER, RAMP, WHITE
from farwall.papers.lettering import Lettering
from farwall.papers.svg import Svg
from farwall.papers.wall_clock import Units

ARROW = 11.0
"""How far the arrow of a way out reaches to either side of it, in units of the drawing."""


def draw_moment(
    svg: Svg,
    plan: Plan,
    storey: Storey,
    moment: Moment,
    frame: Frame,
    *,
    units: Units,
    lettering: Lettering,
    under: Callable[[Sheet], None] | None = None,
) -> None:
    """Draw one moment into a frame; the hatches of `marks` and `sun_marks` must be there.

    under: draws what lies on the bare floor below all else.
    """
    fields = tuple(
        f for f in plan.fields if f.coat == moment.coat and set(f.rooms) & set(storey.room_by_id)
    )
    page = (0.0, 0.0, svg.width, svg.height)
    sheet = Sheet(plan, Scene(storey, fields), svg, frame, Board(page), lettering, units, page)
    sheet.fill(storey.floor, fill=WHITE)
    if under is not None:
        under(sheet)
    for field in moment.done:
        if field in fields and field.verdict != "cannot":
            _keep_off(sheet, field)
    lives = moment.field.open_time_min.low if moment.field else 0.0
    for part in moment.wet:
        sheet.fill(part.shape, fill=age_colour(part.age_min, lives), stroke=PAPER, stroke_width=0.4)
    draw_sun(svg, frame, sun_at(plan, storey, moment.minute))
    for thing in storey.fixtures:
        marks.fixture(svg, frame.path(thing.polygon.shape))
    draw_walls(sheet)
    draw_openings(sheet)
    draw_stop_lines(sheet)
    if moment.edge is not None and moment.field in fields:
        draw_edge(sheet, moment.edge.line)
    if moment.field in fields:
        _way(sheet, moment.field)
    for person in moment.people:
        ahead = frame.at(person.ahead) if person.ahead else None
        _person(sheet, frame.at(person.at), ahead, helper=person.who.startswith("helper"))


def sun_at(plan: Plan, storey: Storey, minute: float) -> list[SunPatch]:
    """The patches of sun on a storey at a minute of the plan."""
    patches = plan.sun.patches if plan.sun is not None else ()
    return [
        patch
        for patch in patches
        if patch.from_min <= minute < patch.to_min and patch.room in storey.room_by_id
    ]


def age_colour(age_min: float, lives_min: float) -> str:
    """The ramp's colour for wet floor: just sprayed darkest, an edge's whole life ago lightest."""
    share = min(age_min / lives_min, 1.0) if lives_min > 0 else 0.0
    return RAMP[round((1 - share) * (len(RAMP) - 1))]


def _keep_off(sheet: Sheet, field: Field) -> None:
    floor = sheet.scene.storey.floor_of(field)
    sheet.fill(floor, fill=f"url(#{sheet.svg.ident}-{marks.HATCH})", stroke=LINE, stroke_width=0.5)


def _way(sheet: Sheet, field: Field | None) -> None:
    """A short arrow out by the way that the sprayer leaves the field."""
    way = way_of(sheet.plan, field) if field is not None else None
    if field is None or way is None:
        return
    dx, dy = outward(way, sheet.scene.storey.floor_of(field))
    (x0, y0), (x1, y1) = (sheet.frame.at(point) for point in way.line)
    x, y = (x0 + x1) / 2, (y0 + y1) / 2
    marks.arrow(sheet.svg, [(x - ARROW * dx, y - ARROW * dy), (x + ARROW * dx, y + ARROW * dy)])


def _person(
    sheet: Sheet, at: tuple[float, float], ahead: tuple[float, float] | None, *, helper: bool
) -> None:
    if helper:
        sheet.svg.element(
            "circle", cx=at[0], cy=at[1], r=4, fill=WHITE, stroke=INK, stroke_width=1.3
        )
        return
    marks.person(sheet.svg, at, ahead, small=True)
