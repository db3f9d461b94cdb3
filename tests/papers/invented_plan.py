"""Invented plans for the papers' tests: a small house, and awkward ones.

Nothing here is a solver's work: rooms are cut into straight strips, paths run
along them, ages are a plain sum. Names and figures are invented.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace

import shapely

from farwall.facts.job import Crew
from farwall.facts.plan import (
    PLAN_VERSION,
    Band,
    Clock,
    Field,
    Ground,
    Mix,
    OpenTime,
    Plan,
    PlanCoat,
    PlanFloor,
    PlanInputs,
    PlanTools,
    Refill,
    Remedy,
    StopLine,
    TimedPoint,
    Verdict,
    Walk,
)
from farwall.floor.geometry import Point, polygon_geometry, polygons_of
from farwall.floor.nouns import Exit, Fixture, Opening, Room, SawCut
from farwall.spray.remedies.offer import PRICES

WALL_M = 0.12
TOOLS = PlanTools(
    tank_l=7.57,
    band_m=1.2,
    spray_m2_min=2.3,
    walk_m_min=40.0,
    refill_min=3.0,
    swap_min=0.5,
    overlap_m=0.2,
    reach_m=1.5,
)
OPEN_TIME = OpenTime(
    low=8.0, likely=12.0, high=16.0, rank="measured here", source="closet sample, half of 16 min"
)


def box_room(room_id: str, name: str, x0: float, y0: float, x1: float, y1: float) -> Room:
    return Room(id=room_id, name=name, polygon=polygon_geometry(shapely.box(x0, y0, x1, y1)))


def door(
    opening_id: str, rooms: tuple[str, ...], line: tuple[Point, Point], kind: str = "door"
) -> Opening:
    """An opening with the floor in the depth of its wall as threshold."""
    (x0, y0), (x1, y1) = line
    half = WALL_M / 2
    across = (half, 0.0) if abs(x1 - x0) < abs(y1 - y0) else (0.0, half)
    sill = shapely.box(
        min(x0, x1) - across[0], min(y0, y1) - across[1],
        max(x0, x1) + across[0], max(y0, y1) + across[1],
    )  # fmt: skip
    return Opening(
        id=opening_id,
        kind=kind,  # type: ignore[arg-type]
        line=line,
        rooms=rooms,
        width_m=max(abs(x1 - x0), abs(y1 - y0)),
        threshold=polygon_geometry(sill) if len(rooms) == 2 else None,
    )


@dataclass(frozen=True)
class Sweep:
    """Rooms of one field in the order they are sprayed, each towards a compass letter."""

    rooms: tuple[tuple[str, str], ...]
    exit: str
    stop_lines: tuple[str, ...] = ()
    verdict: Verdict = "fits"
    remedies: tuple[Remedy, ...] = ()
    peak_age_min: float = 6.2


@dataclass
class _Clockwork:
    """Time and tank as they run on while bands are laid."""

    at_min: float = 0.0
    tank_l: float = 0.0
    bands: list[Band] = field(default_factory=list)
    refills: list[Refill] = field(default_factory=list)
    walks: list[Walk] = field(default_factory=list)


_STEP = {"n": (0.0, 1.0), "s": (0.0, -1.0), "e": (1.0, 0.0), "w": (-1.0, 0.0)}


def strips(floor: shapely.Geometry, towards: str, band_m: float) -> list[shapely.Polygon]:
    """The floor cut square to the way out, farthest strip first."""
    x0, y0, x1, y1 = floor.bounds
    dx, dy = _STEP[towards]
    length = (x1 - x0) if dx else (y1 - y0)
    count = max(1, round(length / band_m))
    step = length / count
    found: list[shapely.Polygon] = []
    for k in range(count):
        low, high = k * step, (k + 1) * step
        if dx:
            a, b = (x0 + low, x0 + high) if dx > 0 else (x1 - high, x1 - low)
            strip = shapely.box(a, y0, b, y1)
        else:
            a, b = (y0 + low, y0 + high) if dy > 0 else (y1 - high, y1 - low)
            strip = shapely.box(x0, a, x1, b)
        found += polygons_of(shapely.intersection(floor, strip))
    return found


def _band_path(
    strip: shapely.Polygon,
    floor: shapely.Geometry,
    towards: str,
    backwards: bool,
    start_min: float,
    end_min: float,
) -> tuple[TimedPoint, ...]:
    x0, y0, x1, y1 = strip.bounds
    dx, dy = _STEP[towards]
    inset = 0.3
    fx0, fy0, fx1, fy1 = floor.bounds
    if dx:
        x = min(max((x1 if dx > 0 else x0) + dx * inset, fx0 + inset), fx1 - inset)
        ends = [(x, y0 + inset), (x, y1 - inset)]
    else:
        y = min(max((y1 if dy > 0 else y0) + dy * inset, fy0 + inset), fy1 - inset)
        ends = [(x0 + inset, y), (x1 - inset, y)]
    if backwards:
        ends.reverse()
    (ax, ay), (bx, by) = ends
    return ((ax, ay, start_min), (bx, by, end_min))


def _lay(
    clockwork: _Clockwork,
    floor: shapely.Geometry,
    towards: str,
    field_id: str,
    tools: PlanTools,
    l_per_m2: float,
    helper: bool,
    door_at: Point,
) -> None:
    for strip in strips(floor, towards, tools.band_m):
        litres = strip.area * l_per_m2
        if clockwork.tank_l < litres:
            _refill(clockwork, tools, helper, door_at)
        start = clockwork.at_min
        end = start + strip.area / tools.spray_m2_min
        number = len(clockwork.bands) + 1
        clockwork.bands.append(
            Band(
                id=f"{field_id}-b{number}",
                order=number,
                sprayer=1,
                polygon=polygon_geometry(strip),
                path=_band_path(strip, floor, towards, number % 2 == 0, start, end),
                litres=litres,
                start_min=start,
                end_min=end,
            )
        )
        clockwork.tank_l -= litres
        clockwork.at_min = end + 0.1


def _refill(clockwork: _Clockwork, tools: PlanTools, helper: bool, door_at: Point) -> None:
    if not clockwork.bands:
        clockwork.tank_l = tools.tank_l
        return
    here = clockwork.bands[-1].path[-1][:2]
    minutes = tools.swap_min if helper else tools.refill_min
    at = here if helper else door_at
    start = clockwork.at_min
    added = tools.tank_l - clockwork.tank_l
    clockwork.refills.append(
        Refill(
            at_min=start, minutes=minutes, at=at, litres=added, by="helper" if helper else "sprayer"
        )
    )
    who = "helper" if helper else "sprayer"
    clockwork.walks.append(
        Walk(
            who=who,
            path=((*door_at, start - 0.4), (*here, start))
            if helper
            else ((*here, start), (*door_at, start + 0.3), (*here, start + minutes)),
        )
    )
    clockwork.tank_l = tools.tank_l
    clockwork.at_min = start + minutes


def _field_of(
    sweep: Sweep,
    number: int,
    coat: PlanCoat,
    start_min: float,
    rooms: dict[str, Room],
    openings: dict[str, Opening],
    exits: dict[str, Exit],
    fixtures: tuple[Fixture, ...],
    tools: PlanTools,
    l_per_m2: float,
    helper: bool,
) -> Field:
    field_id = f"f{number}"
    way = openings[exits[sweep.exit].opening if sweep.exit in exits else sweep.exit]
    door_at = ((way.line[0][0] + way.line[1][0]) / 2, (way.line[0][1] + way.line[1][1]) / 2)
    dry = shapely.union_all([fixture.polygon.shape for fixture in fixtures])
    clockwork = _Clockwork(at_min=start_min)
    own = {room_id for room_id, _ in sweep.rooms}
    stops = tuple(
        StopLine(id=stop, kind="door", line=openings[stop].line) for stop in sweep.stop_lines
    )
    taken: set[str] = set()
    for room_id, towards in sweep.rooms:
        floor: shapely.Geometry = shapely.difference(rooms[room_id].polygon.shape, dry)
        for opening in openings.values():
            between = len(set(opening.rooms)) == 2 and set(opening.rooms) <= own
            if (
                between
                and room_id in opening.rooms
                and opening.threshold
                and opening.id not in taken
            ):
                floor = shapely.union(floor, opening.threshold.shape)
                taken.add(opening.id)
        _lay(clockwork, floor, towards, field_id, tools, l_per_m2, helper, door_at)
    end = clockwork.bands[-1].end_min
    leave = Walk(who="sprayer", path=(clockwork.bands[-1].path[-1], (*door_at, end + 0.2)))
    return Field(
        id=field_id,
        coat=coat.id,
        rooms=tuple(room_id for room_id, _ in sweep.rooms),
        exit=sweep.exit,
        area_m2=sum(band.polygon.shape.area for band in clockwork.bands),
        order=number,
        start_min=start_min,
        end_min=end,
        verdict=sweep.verdict,
        remedies=sweep.remedies,
        equivalent_front_m=4.9,
        bound_m=4.2,
        peak_age_min=sweep.peak_age_min,
        open_time_min=OPEN_TIME,
        bands=tuple(clockwork.bands),
        refills=tuple(clockwork.refills),
        walks=(*clockwork.walks, leave),
        stop_lines=stops,
    )


def plan_of(
    *,
    name: str,
    rooms: tuple[Room, ...],
    openings: tuple[Opening, ...],
    exits: tuple[Exit, ...],
    sweeps: tuple[Sweep, ...],
    fixtures: tuple[Fixture, ...] = (),
    saw_cuts: tuple[SawCut, ...] = (),
    coats: tuple[PlanCoat, ...] = (PlanCoat(id="1", stain="ochre-brown", cut="1:1"),),
    helper: bool = True,
    tools: PlanTools = TOOLS,
    starts_at: str = "2026-03-12T08:00:00-06:00",
    pause_min: float = 4.0,
) -> Plan:
    """A whole invented plan: every sweep in every coat, with mixes, clocks and grounds."""
    l_per_m2 = {coat.id: 0.2 if k == 0 else 0.14 for k, coat in enumerate(coats)}
    fields: list[Field] = []
    at = 0.0
    for coat_number, coat in enumerate(coats):
        if coat_number:
            at += 125.0
        for sweep in sweeps:
            fields.append(
                _field_of(
                    sweep, len(fields) + 1, coat, at,
                    {room.id: room for room in rooms},
                    {opening.id: opening for opening in openings},
                    {exit_.id: exit_ for exit_ in exits},
                    fixtures, tools, l_per_m2[coat.id], helper,
                )
            )  # fmt: skip
            at = fields[-1].end_min + pause_min
    return Plan(
        version=PLAN_VERSION,
        job=name,
        inputs_hash="5f0c7d1e" * 8,
        starts_at=starts_at,
        inputs=PlanInputs(
            floor=PlanFloor(rooms=rooms),
            openings=openings,
            exits=exits,
            fixtures=fixtures,
            saw_cuts=saw_cuts,
            crew=Crew(sprayers=1, helper=helper),
            tools=tools,
            coats=coats,
            l_per_m2=l_per_m2,
        ),
        fields=tuple(fields),
        mixes=_mixes(fields, coats),
        clocks=tuple(_clocks(coats)),
        cautions=(
            "The sheet of the stain in hand wins over this one.",
            "Added acid: none planned. If you add any, the maker's sheet no longer covers the mix.",
        ),
        grounds=GROUNDS,
        buying=_buying(fields, coats),
    )


GROUNDS = (
    Ground("coats.1.m2_per_l", "5.03", "m2/L", "measured here", "sample closet-1"),
    Ground("tools.spray_m2_min", "2.3", "m2/min", "common practice", "common-practice"),
    Ground("tools.swap_min", "0.5", "min", "guess", "house-guess"),
    Ground("survey.slab_c", "19", "C", "measured here", "told as survey.slab_c"),
    Ground("wishes.spread_percent", "15", "%", "guess", "house-guess"),
    Ground("survey.finish", "trowel", "", "measured here", "told as survey.finish"),
)


def _mixes(fields: list[Field], coats: tuple[PlanCoat, ...]) -> tuple[Mix, ...]:
    mixes = []
    for k, coat in enumerate(coats):
        mine = [f for f in fields if f.coat == coat.id]
        total = sum(band.litres for f in mine for band in f.bands) * 1.25
        part = 1.0 / (1.0 + float(coat.cut.split(":")[1]))
        mixes.append(
            Mix(
                id=f"mix {k + 1}",
                coat=coat.id,
                cut=coat.cut,
                stain_l=total * part,
                water_l=total * (1 - part),
                acid_l=0.0,
                fields=tuple(f.id for f in mine),
            )
        )
    return tuple(mixes)


def _clocks(coats: tuple[PlanCoat, ...]) -> list[Clock]:
    return [
        Clock(
            coat=coat.id,
            name="dry to recoat" if k + 1 < len(coats) else "dry to neutralise",
            low_min=75.0 + 30 * k,
            likely_min=120.0 + 30 * k,
            high_min=205.0 + 40 * k,
            rank="published",
            source="evaporation relation, ±40 %, corrected by the closet sample",
        )
        for k, coat in enumerate(coats)
    ]


def _buying(fields: list[Field], coats: tuple[PlanCoat, ...]) -> dict[str, object]:
    gates = []
    for f in fields:
        need = sum(band.litres for band in f.bands)
        starts = [{"factor": k, "start_l": need * 1.45 * k} for k in (1.0, 1.2, 1.5)]
        gates.append(
            {
                "field": f.id,
                "coat": f.coat,
                "likely_l": need,
                "start_l": need * 1.45,
                "starts": starts,
            }
        )
    return {
        "certainty_percent": 99.0,
        "stains": [
            {
                "stain": coat.stain,
                "currency": "USD",
                "containers": [{"size_l": 3.785411784, "count": 3 - k, "price": "58.00"}],
                "cost": f"{58 * (3 - k)}.00",
                "boxed": True,
                "lots": [],
            }
            for k, coat in enumerate(coats)
        ],
        "gates": gates,
        "usual_rule": [
            {
                "coat": coat.id,
                "likely_l": 19.0,
                "low_l": 22.2,
                "high_l": 22.8,
                "chance_dry_low": 0.13,
                "chance_dry_high": 0.16,
            }
            for coat in coats
        ],
    }


# The small house --------------------------------------------------------------------------------

SMALL_ROOMS = (
    box_room("r1", "Bed 1", 0.0, 5.5, 4.0, 9.2),
    box_room("r2", "Bath 1", 4.12, 7.0, 6.0, 9.2),
    box_room("r3", "Closet", 4.12, 5.5, 6.0, 6.88),
    box_room("r4", "Hall", 0.0, 4.1, 6.0, 5.38),
    box_room("r5", "Bed 2", 0.0, 0.0, 3.6, 3.98),
    box_room("r6", "Bath 2", 3.72, 1.9, 6.0, 3.98),
    box_room("r7", "Laundry", 3.72, 0.0, 6.0, 1.78),
    box_room("r8", "Great room", 6.12, 0.0, 13.0, 9.2),
)
SMALL_OPENINGS = (
    door("d1", ("r1", "r4"), ((1.4, 5.44), (2.25, 5.44))),
    door("d2", ("r2", "r3"), ((4.6, 6.94), (5.35, 6.94))),
    door("d3", ("r3", "r4"), ((4.4, 5.44), (5.2, 5.44))),
    door("d4", ("r5", "r4"), ((1.6, 4.04), (2.45, 4.04))),
    door("d5", ("r6", "r4"), ((4.2, 4.04), (5.0, 4.04))),
    door("d6", ("r7", "r6"), ((4.4, 1.84), (5.2, 1.84))),
    door("d7", ("r4", "r8"), ((6.06, 4.25), (6.06, 5.2))),
    door("d8", ("r8",), ((13.06, 0.8), (13.06, 1.75)), "outside"),
)
SMALL_FIXTURES = (
    Fixture(kind="island", id="x1", polygon=polygon_geometry(shapely.box(8.6, 4.0, 10.8, 4.9))),
    Fixture(kind="tub", id="x2", polygon=polygon_geometry(shapely.box(4.12, 8.45, 5.6, 9.2))),
    Fixture(kind="cabinet", id="x3", polygon=polygon_geometry(shapely.box(6.12, 8.55, 10.0, 9.2))),
)
SMALL_SWEEPS = (
    Sweep((("r1", "s"),), "d1", ("d1",), peak_age_min=4.4),
    Sweep((("r5", "n"),), "d4", ("d4",), peak_age_min=4.1),
    Sweep((("r7", "n"), ("r6", "n")), "d5", ("d5",), peak_age_min=3.0),
    Sweep((("r2", "s"), ("r3", "s"), ("r4", "e")), "d7", ("d1", "d4", "d5", "d7"), "helper"),
    Sweep((("r8", "s"),), "e1", ("d7",), "helper", peak_age_min=6.2),
)
TWO_COATS = (
    PlanCoat(id="1", stain="ochre-brown", cut="1:1"),
    PlanCoat(id="2", stain="walnut", cut="1:2"),
)


def small_house(*, coats: tuple[PlanCoat, ...] = TWO_COATS, name: str = "Quince Lane 3") -> Plan:
    """Eight rooms, a great room with an island, two coats, a helper, a refill, stop lines."""
    return plan_of(
        name=name,
        rooms=SMALL_ROOMS,
        openings=SMALL_OPENINGS,
        exits=(Exit(id="e1", opening="d8"),),
        fixtures=SMALL_FIXTURES,
        sweeps=SMALL_SWEEPS,
        coats=coats,
    )


def renamed(plan: Plan, names: dict[str, str]) -> Plan:
    """The same plan with other room names."""
    rooms = tuple(
        replace(room, name=names.get(room.id, room.name)) for room in plan.inputs.floor.rooms
    )
    return replace(plan, inputs=replace(plan.inputs, floor=PlanFloor(rooms=rooms)))


def long_names() -> Plan:
    """Names as an open plan gives them, and names full of marks that mean something elsewhere."""
    return renamed(
        small_house(name="Quince Lane 3 <&> #1 $9 *new* _wing_ @site [B]"),
        {
            "r8": "Kitchen + Great room + Dining room + Entry + Hall",
            "r3": "Walk-in closet and linen store",
            "r2": '<Bath> & "shower" #1',
            "r1": "Bed *1* _west_ $9 @home [x] \\ `raw`",
            "r7": "Laundry/Utility/Mud room",
        },
    )


def many_bands() -> Plan:
    """One long room of thirty narrow bands."""
    return plan_of(
        name="Thirty bands",
        rooms=(box_room("r1", "Long gallery", 0, 0, 18.0, 4.0),),
        openings=(door("d1", ("r1",), ((18.06, 1.0), (18.06, 2.0)), "outside"),),
        exits=(Exit(id="e1", opening="d1"),),
        sweeps=(Sweep((("r1", "e"),), "e1"),),
        tools=replace(TOOLS, band_m=0.6),
    )


def _remedy(code: str, what: str, age_min: float, *, more_min: float = 0.0) -> Remedy:
    return Remedy(
        code,
        what,
        age_min,
        works=True,
        margin_min=round(8.0 - age_min, 1),
        more_min=more_min,
        more_l=0.0,
        price=PRICES[code],
    )


def refused() -> Plan:
    """The great room cannot be done by this crew in these conditions."""
    plan = small_house()
    no = tuple(
        replace(
            f,
            verdict="cannot",
            peak_age_min=11.3,
            remedies=(
                _remedy("hour", "Start at 7:00: the sun reaches the floor at 10:20.", 7.6),
                _remedy("two", "Spray with two people.", 5.9, more_min=-9.0),
                _remedy("stop-line", "Saw a cut from the island to the east wall.", 6.4),
            ),
        )
        if "r8" in f.rooms
        else f
        for f in plan.fields
    )
    return replace(plan, fields=no)


def big_house() -> Plan:
    """Fourteen rooms and fourteen fields along a corridor, each in two coats; tiny closets."""
    rooms: list[Room] = []
    openings: list[Opening] = []
    sweeps: list[Sweep] = []
    x = 0.0
    widths = (3.6, 0.7, 3.2, 2.0, 3.8, 0.6, 2.6)
    for k, width in enumerate(widths):
        for side, (y0, y1) in enumerate(((1.62, 5.2), (-3.7, 0.0))):
            room_id = f"r{2 * k + side + 1}"
            deep = 0.9 if width < 1 else (y1 - y0)
            low, high = (y0, y0 + deep) if side == 0 else (y1 - deep, y1)
            label = f"{'Closet' if width < 1 else 'Room'} {2 * k + side + 1}"
            rooms.append(box_room(room_id, label, x, low, x + width, high))
            gap = 1.56 if side == 0 else 0.06
            middle = x + width / 2
            half = min(0.42, width / 2 - 0.08)
            line = ((middle - half, gap), (middle + half, gap))
            openings.append(door(f"d{room_id}", (room_id, "hall"), line))
            sweeps.append(
                Sweep(((room_id, "s" if side == 0 else "n"),), f"d{room_id}", (f"d{room_id}",))
            )
        x += width + WALL_M
    rooms.append(box_room("hall", "Hall", 0.0, 0.12, x - WALL_M, 1.5))
    openings.append(door("dout", ("hall",), ((x - 0.06, 0.4), (x - 0.06, 1.3)), "outside"))
    sweeps.append(Sweep((("hall", "e"),), "e1", tuple(o.id for o in openings[:-1])))
    return plan_of(
        name="Fourteen doors",
        rooms=tuple(rooms),
        openings=tuple(openings),
        exits=(Exit(id="e1", opening="dout"),),
        sweeps=tuple(sweeps),
        coats=TWO_COATS,
    )
