"""One coat over the whole house: its fields in order, on the clock, each with its verdict."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

import numpy as np
import shapely

from farwall.errors import Unanswerable
from farwall.facts.plan import Field, OpenTime, PlanTools, StopLine, Walk
from farwall.floor.geometry import Point
from farwall.spray.dry import DryGround
from farwall.spray.fields import COMFORT, Pieces
from farwall.spray.order import Order, Step
from farwall.spray.refills import Flow
from farwall.spray.routes import nearest_on
from farwall.spray.schedule import Day, Timed, route, time_sweep, timed_path
from farwall.spray.sweep import Sweep
from farwall.spray.sweeper import Sweeper
from farwall.spray.verdict import NARROWER, Case, CoatFacts, Judge
from farwall.spray.world import BODY_M, Seam, World

_BASE_OUT_M = 1.3
_HOPE = 1.2


def plan_coat(
    world: World,
    order: Order,
    sweeper_of: Callable[[Step], Sweeper],
    coat: CoatFacts,
    judge: Judge,
    *,
    begins_min: float,
    first_number: int,
) -> tuple[Field, ...]:
    """The fields of one coat in order, from `begins_min` on."""
    sweepers = [sweeper_of(step) for step in order.steps]
    sweeps = [sweeper.sweep(coat.tools, thorough=coat.thorough) for sweeper in sweepers]
    base = base_point(world, order.steps[-1].exit)
    day = Day(begins_min, base, 0.0, DryGround.of(world), base, begins_min)
    owner = {piece: step.pieces for step in order.steps for piece in step.pieces}
    fields = []
    for index, (step, planned) in enumerate(zip(order.steps, sweeps, strict=True)):
        sweeper = sweepers[index]
        ahead = sum(each.wetted_m2 for each in sweeps[index:]) * coat.l_per_m2
        flow = Flow(coat.id, coat.l_per_m2, coat.helper, coat.tools, ahead)
        field_id = f"{coat.id}.{index + 1}"
        lasting = coat.open_time(step.pieces, day.minute)
        sweep, timed, after = _fitting(
            Case(world, step, sweeper, planned, coat, day), flow, lasting, field_id
        )
        verdict, remedies = judge.verdict(
            Case(world, step, sweeper, sweep, coat, day), timed, lasting
        )
        fields.append(
            Field(
                id=field_id,
                coat=coat.id,
                rooms=_rooms(world, step.pieces),
                exit=step.exit.exit or step.exit.id,
                area_m2=round(sum(band.polygon.shape.area for band in timed.bands), 4),
                order=first_number + index,
                start_min=timed.bands[0].start_min,
                end_min=timed.bands[-1].end_min,
                verdict=verdict,
                remedies=remedies,
                equivalent_front_m=round(sweep.front.equivalent_m, 3),
                bound_m=round(sweep.strongest_bound_m if coat.thorough else sweep.bound_m, 3),
                peak_age_min=timed.peak_age_min,
                open_time_min=lasting,
                band_m=round(sweep.depth_m, 3),
                bands=timed.bands,
                refills=timed.refills,
                walks=timed.walks,
                stop_lines=stop_lines(world, step.pieces, owner),
            )
        )
        day = after
    return _last_walk_out(fields, day, coat.tools)


def _fitting(case: Case, flow: Flow, lasting: OpenTime, field_id: str) -> tuple[Sweep, Timed, Day]:
    """The field on the clock, its bands as wide as they can be without losing the edge.

    Where the plainest sweep leaves little margin, the plain one with the shortest
    front is tried; where that loses the edge, better ones are sought, then narrower bands,
    which leave younger edges for more walking and overlap. Where none fits, the
    best at full width stands and the verdict says no.
    """
    timed, after = time_sweep(case.sweep, case.day, flow, field_id=field_id)
    best = case.sweep, timed, after
    if lasting.low <= 0 or timed.peak_age_min <= COMFORT * lasting.low:
        return best
    other = case.sweeper.shortest(case.coat.tools)
    if other is not case.sweep:
        timed, after = time_sweep(other, case.day, flow, field_id=field_id)
        if timed.peak_age_min < best[1].peak_age_min:
            best = other, timed, after
    if best[1].peak_age_min <= lasting.low:
        return best
    for share in (1.0, *NARROWER):
        tools = replace(case.coat.tools, band_m=case.coat.tools.band_m * share)
        try:
            laid = case.sweeper.laid(tools, thorough=True)
            if laid.longest_wait_min > _HOPE * lasting.low:
                continue
            sweep = case.sweeper.sweep(tools, thorough=True)
            more = (sweep.wetted_m2 - case.sweep.wetted_m2) * flow.l_per_m2
            thirst = replace(flow, still_to_spray_l=flow.still_to_spray_l + more)
            timed, after = time_sweep(sweep, case.day, thirst, field_id=field_id)
        except Unanswerable:
            continue
        if timed.peak_age_min <= lasting.low:
            return sweep, timed, after
        if share == 1.0 and timed.peak_age_min < best[1].peak_age_min:
            best = sweep, timed, after
    return best


def _rooms(world: World, pieces: Pieces) -> tuple[str, ...]:
    return tuple(dict.fromkeys(world.pieces[name].room for name in sorted(pieces)))


def stop_lines(world: World, pieces: Pieces, owner: dict[str, Pieces]) -> tuple[StopLine, ...]:
    """Every seam at which this field ends on purpose."""
    lines = []
    for seam in world.seams:
        inside = (seam.a in pieces) + (seam.b in pieces)
        if inside == 1 and (not seam.b or owner.get(seam.other(_in(seam, pieces))) != pieces):
            line = tuple((round(x, 4), round(y, 4)) for x, y in seam.line)
            lines.append(StopLine(seam.id, seam.kind, line))  # type: ignore[arg-type]
    return tuple(lines)


def _in(seam: Seam, pieces: Pieces) -> str:
    return seam.a if seam.a in pieces else seam.b


def base_point(world: World, seam: Seam) -> Point:
    """Where the tub and the spare tank stand: outside, a step beyond the way out."""
    (x0, y0), (x1, y1) = seam.line[0], seam.line[-1]
    normal = np.array([y1 - y0, x0 - x1]) / max(float(np.hypot(x1 - x0, y1 - y0)), 1e-9)
    middle = np.array([(x0 + x1) / 2, (y0 + y1) / 2])
    inside = world.pieces[seam.a].shape
    out = max((1, -1), key=lambda s: inside.distance(shapely.Point(middle + s * 0.5 * normal)))
    yard = shapely.intersection(
        world.standing, shapely.buffer(world.outside, -BODY_M, join_style="mitre")
    )
    place = nearest_on(yard, tuple((middle + out * _BASE_OUT_M * normal).tolist()))
    return (round(place[0], 4), round(place[1], 4))


def _last_walk_out(fields: Sequence[Field], day: Day, tools: PlanTools) -> tuple[Field, ...]:
    """The fields with the sprayer's walk off the floor added to the last one."""
    if np.hypot(day.at[0] - day.base[0], day.at[1] - day.base[1]) < 0.001:
        return tuple(fields)
    path = timed_path(route(day.free, day.at, day.base), day.minute, tools.walk_m_min)
    last = replace(fields[-1], walks=(*fields[-1].walks, Walk("sprayer", path)))
    return (*fields[:-1], last)
