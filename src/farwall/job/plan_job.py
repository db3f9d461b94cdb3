"""The main use case: a job's facts in, the day's plan out. Pure, no file, no clock.

facts → pieces and seams → fields → order → sweeps on the clock → mix → plan.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta, timezone
from functools import cache, partial

import rfc8785

from farwall.air.weather import Forecast, WeatherFile
from farwall.facts.default_table import STARTS_AT
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.plain import plain
from farwall.facts.plan import (
    PLAN_VERSION,
    Clock,
    Field,
    OpenTime,
    Plan,
    PlanFloor,
    PlanInputs,
    Remedy,
)
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.floor.nouns import Floor
from farwall.floor.thresholds import join_thresholds
from farwall.job.cautions import cautions_for
from farwall.job.go import go_of_plan
from farwall.job.go.cuts import hold_cuts
from farwall.job.lasting import Lasting, lasting_of
from farwall.job.site import heater_warnings
from farwall.job.slab_words import slab_warnings, weather_grounds, weather_warnings
from farwall.job.waits import Waits
from farwall.mix.plan import FieldNeed, plan_mixes
from farwall.spray.fields import Pieces, Sweeps, cut_into_fields
from farwall.spray.order import Order, order_fields
from farwall.spray.plan_coat import plan_coat
from farwall.spray.verdict import CoatFacts, Judge
from farwall.spray.world import World, build_world

_NEXT_MORNING_MIN = 24 * 60.0
"""When a coat is not sure to dry within the day, the next one waits for the same hour tomorrow."""


@dataclass(frozen=True)
class _Ground:
    """The floor of the job and how long things last on it."""

    settled: SettledJob
    floor: Floor
    world: World
    lasting: Lasting


def plan_job(
    job: Job,
    *,
    weather: WeatherFile | Forecast | None = None,
    order: Sequence[str] = (),
    thorough: bool = False,
) -> Plan:
    """The plan of the whole job.

    weather: hours for slab and air, pulled by the readings of the survey.
    order: room ids whose order the user insists on (else the job's wish, else
    the best that was found). thorough: seek younger edges in every field, also
    where plain bands hold. Raises `Unanswerable` when no order lets
    everybody out or a room has no way in.
    """
    settled = settle(job, starts_at=_stand_in(weather))
    floor = join_thresholds(job.floor)
    ground = _Ground(settled, floor, build_world(floor, job.exits), lasting_of(settled, weather))
    wanted = tuple(order) or job.wishes.order
    laid, sweeps = _laid_out(ground, wanted)
    fields, clocks = _coats(ground, laid, sweeps, thorough=thorough)
    fields = hold_cuts(fields, job)
    mixed = plan_mixes(
        [FieldNeed(field.id, field.coat, _litres(field)) for field in fields], settled
    )
    inputs = _inputs(job, settled, floor)
    return Plan(
        version=PLAN_VERSION,
        job=job.name or job.id,
        inputs_hash=hash_of(plain(inputs)),
        starts_at=settled.starts_at,
        inputs=inputs,
        fields=fields,
        mixes=mixed.mixes,
        clocks=clocks,
        cautions=cautions_for(settled),
        grounds=(*weather_grounds(ground.lasting, settled.grounds), *mixed.grounds),
        buying=mixed.buying,
        warnings=(*settled.warnings, *mixed.warnings, *_warnings(job, weather, ground)),
        go=go_of_plan(job, fields),
    )


def _stand_in(weather: WeatherFile | Forecast | None) -> str:
    """The start when the job tells none: with weather a mild month, on the file's own clock."""
    if weather is None:
        return STARTS_AT
    if isinstance(weather, Forecast):
        return weather.starts_at.isoformat()
    clock = timezone(timedelta(hours=weather.place.utc_offset_h))
    return datetime(2001, 5, 15, 8, tzinfo=clock).isoformat()


def hash_of(inputs: object) -> str:
    """SHA-256 of the canonical JSON (RFC 8785) of `inputs`, in hex."""
    return hashlib.sha256(rfc8785.dumps(inputs)).hexdigest()  # type: ignore[arg-type]


def _laid_out(ground: _Ground, wanted: Sequence[str]) -> tuple[Order, Sweeps]:
    """Fields and their order, the same for every coat: judged by the tightest coat."""
    settled = ground.settled
    tools, crew = settled.tools, settled.job.crew
    thirst = max(settled.l_per_m2.values())
    sweeps = Sweeps(ground.world, tools, thirst, crew.helper)

    @cache
    def in_hour(pieces: Pieces, hour: int) -> float:
        rooms = _rooms(ground.world, pieces)
        ends = [ground.lasting.open_time(rooms, coat, 60.0 * hour).low for coat in settled.coats]
        return max(min(ends), 0.01)

    def budget(pieces: Pieces, at_min: float = 0.0) -> float:
        return in_hour(pieces, int(at_min // 60) if ground.lasting.hours else 0)

    cut = cut_into_fields(sweeps, budget)
    while True:
        order = order_fields(cut.fields, sweeps, budget, wanted=wanted)
        walked = [sweeps.walked(step.pieces, step.exit) for step in order.steps]
        if all(walked):
            return order, sweeps


def _warnings(job: Job, weather: WeatherFile | Forecast | None, ground: _Ground) -> tuple[str, ...]:
    world = ground.world
    found = [
        *weather_warnings(job, weather, ground.lasting.starts_at),
        *slab_warnings(ground.lasting),
        *heater_warnings(job),
    ]
    if isinstance(weather, WeatherFile) and job.starts_at is None:
        found.append(
            "The job tells no start: the weather of 15 May, 8:00, was taken. Put starts_at into "
            "the job, such as 2026-05-15T08:00:00-06:00."
        )
    found.extend(
        f"Nothing can stop at the saw cut {cut or 'without a name'}: it does not run from wall to "
        "wall, or it ends in a doorway."
        for cut in world.unused_cuts
    )
    if job.crew.sprayers > 1:
        found.append(
            "Two sprayers are on the crew; this plan lays out the work of one. Where a field needs "
            "two, it says so: both then work side by side on the same band."
        )
    if not job.crew.second_adult and not job.crew.helper:
        found.append("Nobody works alone: a second adult has to be within call.")
    return tuple(found)


def _litres(field: Field) -> float:
    return sum(band.litres for band in field.bands)


def _rooms(world: World, pieces: Pieces) -> tuple[str, ...]:
    return tuple(sorted({world.pieces[name].room for name in pieces}))


def _coats(
    ground: _Ground, order: Order, sweeps: Sweeps, *, thorough: bool
) -> tuple[tuple[Field, ...], tuple[Clock, ...]]:
    begins = 0.0
    fields: list[Field] = []
    clocks: list[Clock] = []
    others: list[Clock] = []
    waits = Waits(ground.lasting)
    for coat in ground.settled.coats:
        done = plan_coat(
            ground.world,
            order,
            lambda step: sweeps.sweeper(step.pieces, step.exit),
            _coat_facts(ground, coat, thorough=thorough),
            Judge(ground.floor, ground.settled.job.exits, partial(_refused, ground)),
            begins_min=begins,
            first_number=len(fields) + 1,
        )
        fields.extend(done)
        last = coat is ground.settled.coats[-1]
        clock = waits.dry(coat, done[-1].end_min, last=last)
        clocks.append(clock)
        others.append(waits.open_time(coat, done[0].start_min))
        begins = _next_coat(begins, done, clock)
    others.extend(waits.after(ground.settled.coats[-1], fields[-1].end_min, clocks[-1]))
    return tuple(fields), (*clocks, *others)


def _refused(ground: _Ground, pieces: Pieces, at_min: float) -> tuple[Remedy, ...]:
    """Why these pieces may not be stained at that minute, and what would change it."""
    refused = ground.lasting.refusal(_rooms(ground.world, pieces), at_min)
    if refused is None:
        return ()
    words = (refused.reason, *refused.remedies)
    return tuple(Remedy("conditions", word) for word in words)


def _coat_facts(ground: _Ground, coat: SettledCoat, *, thorough: bool) -> CoatFacts:
    settled = ground.settled

    def lasting(pieces: Pieces, at_min: float) -> OpenTime:
        return ground.lasting.open_time(_rooms(ground.world, pieces), coat, at_min)

    return CoatFacts(
        coat.id, coat.l_per_m2, settled.job.crew.helper, settled.tools, lasting, thorough
    )


def _next_coat(begins: float, done: Sequence[Field], clock: Clock) -> float:
    """When the next coat may begin: at the late end of drying, or tomorrow at the same hour."""
    last = max(walk.path[-1][2] for field in done for walk in field.walks)
    if clock.high_min is None or last + clock.high_min > _NEXT_MORNING_MIN:
        return begins + _NEXT_MORNING_MIN
    return round(last + clock.high_min, 1)


def _inputs(job: Job, settled: SettledJob, floor: Floor) -> PlanInputs:
    return PlanInputs(
        floor=PlanFloor(floor.rooms),
        openings=floor.openings,
        exits=job.exits,
        fixtures=floor.fixtures,
        saw_cuts=floor.saw_cuts,
        crew=job.crew,
        tools=settled.tools,
        coats=tuple(coat.coat for coat in settled.coats),
        l_per_m2={coat.id: round(coat.l_per_m2, 6) for coat in settled.coats},
    )


__all__ = ["hash_of", "plan_job"]
