"""Sun on the floor in small pictures, an hour each: what lies in it in the half hour from then."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import shapely

from farwall.facts.plan import Plan
from farwall.facts.sunlight import SunPatch
from farwall.floor.nouns import Floor, Opening, Room, Window
from farwall.nouns import dataclass
from farwall.papers.drawing.frame import Frame, frame_for
from farwall.papers.drawing.sun_marks import (
    draw_sun,
    draw_windows,
    north_arrow,
    sun_key,
    sun_pattern,
)
from farwall.papers.drawing.walls import OUTER_WALL_M, wall_mass
from farwall.papers.ink import INK, PAPER, SOFT, WHITE
from farwall.papers.lettering import SCREEN_LETTERING, Lettering, clipped
from farwall.papers.svg import Svg, number
from farwall.papers.wall_clock import Units
from farwall.papers.words import area, listed

MOST_PICTURES = 12
KEY = "sun reaches it in the half hour from then, under a clear sky"
_HOUR_MIN, _GAP, _NORTH = 60.0, 18.0, 13.0


@dataclass(frozen=True)
class SunScene:
    """What the pictures show: one storey, its windows, the patches of a day."""

    rooms: tuple[Room, ...]
    openings: tuple[Opening, ...]
    windows: tuple[Window, ...]
    north_deg: float
    patches: tuple[SunPatch, ...]

    @property
    def floor(self) -> shapely.geometry.base.BaseGeometry:
        """All its rooms in one shape. [m]"""
        return shapely.union_all([room.polygon.shape for room in self.rooms])


def scenes_of(floor: Floor, patches: Sequence[SunPatch]) -> list[SunScene]:
    """One scene for each storey that the sun reaches."""
    found = []
    for storey in dict.fromkeys(room.storey for room in floor.rooms):
        rooms = tuple(room for room in floor.rooms if room.storey == storey)
        ids = {room.id for room in rooms}
        own = tuple(patch for patch in patches if patch.room in ids)
        ground = shapely.union_all([room.polygon.shape for room in rooms]).buffer(0.6)
        windows = tuple(
            window for window in floor.windows if ground.intersects(shapely.LineString(window.line))
        )
        ways = tuple(one for one in floor.openings if ids & set(one.rooms))
        if own:
            found.append(SunScene(rooms, ways, windows, floor.north_deg or 0.0, own))
    return found


def scenes_of_plan(plan: Plan) -> list[SunScene]:
    """The same from a plan: the patches of its first day of sun; none where none was reckoned."""
    if plan.sun is None or not plan.sun.patches:
        return []
    first = plan.sun.patches[0].from_min
    day = [patch for patch in plan.sun.patches if patch.from_min < first + 18 * _HOUR_MIN]
    inputs = plan.inputs
    floor = Floor(
        inputs.floor.rooms, inputs.openings, windows=plan.sun.windows, north_deg=plan.sun.north_deg
    )
    return scenes_of(floor, day)


def sun_svg(
    scenes: Sequence[SunScene],
    *,
    time: Callable[[float], str],
    full_hour_min: float,
    units: Units = "us",
    width: float = 960.0,
    height: float = 900.0,
    lettering: Lettering = SCREEN_LETTERING,
    ground: str | None = PAPER,
) -> str:
    """The hours with sun as SVG text; where there are more than a dozen, every second one.

    time: a minute as words of the clock on the wall. full_hour_min: any minute on which an hour
    of that clock begins. Sizes as in `film_strip_svg`.
    """
    shown = [(scene, hour) for scene in scenes for hour in _hours(scene, full_hour_min)]
    svg = Svg(width=width, height=height, family=lettering.family, ident="sun")
    if shown:
        svg.raw(sun_pattern(svg.ident))
        svg.height = _lay(svg, shown, time=time, units=units, lettering=lettering)
    else:
        svg.height = 4 * lettering.head
        svg.text((0, 2.4 * lettering.head), "No sun falls on this floor on that day",
                 lettering.head, anchor="start")  # fmt: skip
    if ground is not None:
        back = f'<rect width="{number(width)}" height="{number(svg.height)}" fill="{ground}"/>'
        svg.parts.insert(0, back)
    told = "; ".join(f"{time(hour)} {_told(scene, hour, units)}" for scene, hour in shown)
    return svg.document(title="Sun on the floor", description=f"{told or 'no sun'}.")


def _hours(scene: SunScene, full_hour_min: float) -> list[float]:
    found = sorted(
        {
            patch.from_min
            for patch in scene.patches
            if abs((patch.from_min - full_hour_min + 30) % _HOUR_MIN - 30) < 1e-6
        }
    )
    return found if len(found) <= MOST_PICTURES else found[::2]


def _at(scene: SunScene, hour: float) -> list[SunPatch]:
    return [patch for patch in scene.patches if patch.from_min == hour]


def _told(scene: SunScene, hour: float, units: Units) -> str:
    """Rooms in the sun with the size of their patches, the largest first."""
    sizes: dict[str, float] = {}
    for patch in _at(scene, hour):
        sizes[patch.room] = sizes.get(patch.room, 0.0) + patch.polygon.shape.area
    label = {room.id: room.label for room in scene.rooms}
    rows = sorted(sizes, key=lambda room: -sizes[room])
    return listed([f"{label[room]} {area(sizes[room], units)}" for room in rows])


def _lay(
    svg: Svg,
    shown: Sequence[tuple[SunScene, float]],
    *,
    time: Callable[[float], str],
    units: Units,
    lettering: Lettering,
) -> float:
    """Draw all pictures in the grid that shows them largest; returns the height used."""
    boxes = [
        scene.floor.buffer(OUTER_WALL_M + 0.05, join_style="mitre").bounds for scene, _ in shown
    ]
    west, south, east, north = zip(*boxes, strict=True)
    bounds = (min(west), min(south), max(east), max(north))
    across, down = bounds[2] - bounds[0], bounds[3] - bounds[1]
    words, foot = lettering.body * 1.5 + lettering.small * 1.5 + 4, lettering.small * 3 + 2 * _NORTH

    def scale(columns: int) -> float:
        rows = -(-len(shown) // columns)
        wide = (svg.width - _GAP * (columns - 1)) / columns
        high = (svg.height - foot - _GAP * (rows - 1)) / rows - words
        return float(min(wide / across, high / down))

    columns = max(range(1, len(shown) + 1), key=scale)
    wide, high = (svg.width - _GAP * (columns - 1)) / columns, scale(columns) * down
    bottom = 0.0
    for k, (scene, hour) in enumerate(shown):
        left, top = (k % columns) * (wide + _GAP), (k // columns) * (high + words + _GAP)
        y = top + lettering.body
        svg.text((left, y), time(hour), lettering.body, anchor="start", bold=True)
        told = clipped(_told(scene, hour, units), wide / lettering.widen, lettering.small)
        svg.text((left, y + lettering.small * 1.45), told, lettering.small, anchor="start")
        frame = frame_for(
            bounds, left=left, top=top + words, width=scale(columns) * across, height=high
        )
        _draw(svg, frame, scene, hour)
        bottom = max(bottom, top + words + high)
    row = bottom + foot * 0.6
    north_arrow(svg, (_NORTH + 4, row), shown[0][0].north_deg, size=_NORTH * 0.75)
    x = sun_key(svg, (3 * _NORTH + 8, row + lettering.small * 0.35), size=lettering.small)
    svg.text((x + 7, row + lettering.small * 0.35), KEY, lettering.small, anchor="start", fill=SOFT)
    return bottom + foot


def _draw(svg: Svg, frame: Frame, scene: SunScene, hour: float) -> None:
    svg.element("path", d=frame.path(scene.floor), fill_rule="evenodd", fill=WHITE)
    draw_sun(svg, frame, _at(scene, hour))
    mass = wall_mass(scene.rooms, scene.openings)
    svg.element("path", d=frame.path(mass), fill_rule="evenodd", fill=INK)
    for opening in scene.openings:
        if opening.kind in {"door", "outside"}:
            svg.line([frame.at(point) for point in opening.line], stroke=INK, stroke_width=0.8)
    draw_windows(svg, frame, scene.windows)
