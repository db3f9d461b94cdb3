"""A coat in a few pictures: the floor at telling moments, one after the other."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.facts.plan import Plan
from farwall.job.moments import Moment, moment_at, telling_moments
from farwall.papers.drawing import marks
from farwall.papers.drawing.edge_marks import edge_key
from farwall.papers.drawing.frame import frame_for
from farwall.papers.drawing.moment_view import ARROW, age_colour, draw_moment, sun_at
from farwall.papers.drawing.scene import Storey, storeys
from farwall.papers.drawing.sheet import outward
from farwall.papers.drawing.sun_marks import sun_key, sun_pattern
from farwall.papers.drawing.walls import OUTER_WALL_M
from farwall.papers.ink import DANGER, LINE, PAPER, SOFT
from farwall.papers.lettering import SCREEN_LETTERING, Lettering, clipped, text_width
from farwall.papers.svg import Svg, number
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.papers.words import listed, room_names, volume
from farwall.phrasebook import told

_GAP = 18.0
_LINES = 3
_STEPS = 6
_ASIDE = 0.5
_MARK_M = 0.6
"""What the mark of a person takes to each side, on a house of the usual size."""
NOTHING = "Nothing of this coat can be sprayed as things stand"


def film_strip_svg(
    plan: Plan,
    *,
    coat: str | None = None,
    minutes: Sequence[float] = (),
    units: Units = "us",
    width: float = 960.0,
    height: float = 900.0,
    lettering: Lettering = SCREEN_LETTERING,
    ground: str | None = PAPER,
) -> str:
    """The moments of a coat as SVG text; where nothing of it can be sprayed, the word for that.

    `coat` is the first one unless named, `minutes` six telling ones unless
    given. Each picture says the time, the share of the floor that is sprayed,
    what is in the tank, and the age of the live edge against its budget. Sizes
    as in `floor_svg`: `width` wide and at most about `height` high.
    """
    chosen = coat if coat is not None else next((f.coat for f in plan.fields), "")
    moments = [moment_at(plan, chosen, at) for at in minutes or telling_moments(plan, chosen)]
    svg = Svg(width=width, height=height, family=lettering.family, ident="strip")
    clock = plan_clock(plan, units)
    if moments:
        svg.raw(marks.hatch_pattern(svg.ident, ink=SOFT))
        svg.raw(sun_pattern(svg.ident))
        svg.height = _lay(svg, plan, moments, units=units, lettering=lettering, clock=clock)
    else:
        svg.height = 4 * lettering.head
        svg.text((0, 2.4 * lettering.head), NOTHING, lettering.head, anchor="start", fill=DANGER)
    if ground is not None:
        back = f'<rect width="{number(width)}" height="{number(svg.height)}" fill="{ground}"/>'
        svg.parts.insert(0, back)
    said = listed([f"{clock.time(m.minute)} {_share(m)}" for m in moments]) or NOTHING
    return svg.document(title=f"{len(moments)} moments of {chosen}", description=f"{said}.")


def _lay(
    svg: Svg,
    plan: Plan,
    moments: Sequence[Moment],
    *,
    units: Units,
    lettering: Lettering,
    clock: WallClock,
) -> float:
    """Draw all pictures in the grid that shows them largest; returns the height used."""
    grounds = storeys(plan)
    bounds = _around(grounds, moments)
    across, down = bounds[2] - bounds[0], bounds[3] - bounds[1]
    words = lettering.body * 1.5 + lettering.small * 1.35 * (_LINES - 1) + 4
    foot = lettering.small * 3

    west, east = _beside(grounds)

    def scale(columns: int) -> float:
        rows = -(-len(moments) // columns)
        wide = (svg.width - _GAP * (columns - 1)) / columns - west - east
        high = (svg.height - foot - _GAP * (rows - 1)) / rows - words
        return min(wide / across, high / down)

    columns = max(range(1, len(moments) + 1), key=scale)
    wide = (svg.width - _GAP * (columns - 1)) / columns
    high = scale(columns) * down
    bottom = 0.0
    for k, moment in enumerate(moments):
        left, top = (k % columns) * (wide + _GAP), (k // columns) * (high + words + _GAP)
        place = (left, top)
        _head(svg, plan, moment, place, width=wide, units=units, lettering=lettering, clock=clock)
        frame = frame_for(
            bounds, left=left + west, top=top + words, width=scale(columns) * across, height=high
        )
        ground = _storey_of(moment, grounds)
        draw_moment(svg, plan, ground, moment, frame, units=units, lettering=lettering)
        bottom = max(bottom, top + words + high)
    sunny = any(sun_at(plan, one, m.minute) for m in moments for one in grounds)
    _key(svg, bottom + foot * 0.8, lettering, sunny=sunny)
    return bottom + foot


def _beside(grounds: Sequence[Storey]) -> tuple[float, float]:
    """Room at the left and the right for the arrows of ways out that lie there."""
    sides = [outward(way, ground.floor)[0] for ground in grounds for way in ground.ways_out]
    return (
        ARROW if any(dx < -_ASIDE for dx in sides) else 0.0,
        ARROW if any(dx > _ASIDE for dx in sides) else 0.0,
    )


def _around(
    grounds: Sequence[Storey], moments: Sequence[Moment]
) -> tuple[float, float, float, float]:
    """The box that holds every storey with its outer walls, and who waits outside of them. [m]"""
    boxes = [
        ground.floor.buffer(OUTER_WALL_M + 0.05, join_style="mitre").bounds for ground in grounds
    ]
    boxes += [
        (x - _MARK_M, y - _MARK_M, x + _MARK_M, y + _MARK_M)
        for moment in moments
        for x, y in (person.at for person in moment.people)
    ]
    west, south, east, north = zip(*boxes, strict=True)
    return min(west), min(south), max(east), max(north)


def _storey_of(moment: Moment, grounds: Sequence[Storey]) -> Storey:
    field = moment.field or moment.done[-1]
    return next((g for g in grounds if set(field.rooms) & set(g.room_by_id)), grounds[0])


def _share(moment: Moment) -> str:
    return f"{100 * moment.sprayed_share:.0f} % sprayed"


def _head(
    svg: Svg,
    plan: Plan,
    moment: Moment,
    at: tuple[float, float],
    *,
    width: float,
    units: Units,
    lettering: Lettering,
    clock: WallClock,
) -> None:
    """Time and place in bold, then what is sprayed and carried, then the edge."""
    x, y = at
    y += lettering.body
    time = clock.time(moment.minute)
    svg.text((x, y), time, lettering.body, anchor="start", bold=True)
    if moment.field is not None:
        beyond = text_width(time, lettering.body, bold=True) * lettering.widen + 8
        rooms = listed(room_names(plan, moment.field.rooms))
        rooms = clipped(rooms, (width - beyond) / lettering.widen, lettering.body)
        svg.text((x + beyond, y), rooms, lettering.body, anchor="start")
    y += lettering.small * 1.45
    carried = _carried(moment, units)
    if text_width(told(carried), lettering.small) * lettering.widen > width:
        carried = _carried(moment, units, both=False)
    svg.text((x, y), carried, lettering.small, anchor="start")
    svg.text((x, y + lettering.small * 1.35), _edge_words(moment), lettering.small, anchor="start")


def _carried(moment: Moment, units: Units, *, both: bool = True) -> str:
    return f"{_share(moment)}, {volume(moment.tank_l, units, both=both)} in the tank"


def _edge_words(moment: Moment) -> str:
    if moment.edge is None or moment.field is None:
        return "no live edge"
    lives = moment.field.open_time_min.low
    return f"live edge {moment.edge.age_min:.1f} min old, lives {lives:.1f}"


def _key(svg: Svg, row: float, lettering: Lettering, *, sunny: bool) -> None:
    """What hatch, ramp and the strong line stand for; the sun too, where there is some."""
    size, x = lettering.small, 0.0
    words = ["just sprayed", "an edge's life ago", "sprayed, keep off", "live edge"]
    wide = sum(text_width(word, size) for word in [*words, *(["sun"] if sunny else [])])
    taken = wide * lettering.widen + 14 + 16 * _STEPS + 28 * (3 if sunny else 2)
    # Where words are long the gaps give way, to no less than 6.
    gap = min(max((svg.width - taken) / (3 if sunny else 2), 6.0), 20.0)
    x = _told(svg, (x, row), words[0], lettering) + 7
    for k in range(_STEPS):
        svg.element(
            "rect", x=x, y=row - size * 0.8, width=16, height=size * 0.9,
            fill=age_colour(k / (_STEPS - 1), 1.0), stroke=LINE, stroke_width=0.4,
        )  # fmt: skip
        x += 16
    x = _told(svg, (x + 7, row), words[1], lettering) + gap
    svg.element(
        "rect", x=x, y=row - size * 0.8, width=22, height=size * 0.9,
        fill=f"url(#{svg.ident}-{marks.HATCH})", stroke=LINE, stroke_width=0.5,
    )  # fmt: skip
    x = _told(svg, (x + 28, row), words[2], lettering) + gap
    edge_key(svg, (x, row - size * 0.35), 22)
    x = _told(svg, (x + 28, row), words[3], lettering) + gap
    if sunny:
        _told(svg, (sun_key(svg, (x, row), size=size) + 6, row), "sun", lettering)


def _told(svg: Svg, at: tuple[float, float], word: str, lettering: Lettering) -> float:
    """Write a word of the key; returns where it ends."""
    svg.text(at, word, lettering.small, anchor="start", fill=SOFT)
    return at[0] + text_width(word, lettering.small) * lettering.widen
