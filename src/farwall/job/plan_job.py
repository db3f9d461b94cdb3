"""The main use case: a job's facts in, the day's plan out. Pure, no file, no clock.

facts → pieces and seams → fields → order → sweeps on the clock → mix → plan.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta, timezone
from functools import cache, partial

import numpy as np
import rfc8785
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.air.weather import WeatherFile
from farwall.beside import Beside, at_once
from farwall.evidence import Rank, Span
from farwall.facts.default_table import STARTS_AT
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.plain import plain
from farwall.facts.plan import (
    PLAN_VERSION,
    Chances,
    Clock,
    Field,
    Plan,
    PlanFloor,
    PlanInputs,
    Remedy,
    RoomOpenTime,
)
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.floor.nouns import Floor
from farwall.floor.thresholds import join_thresholds
from farwall.job.cautions import cautions_for
from farwall.job.chances import Stretch, chances_of
from farwall.job.lasting import Lasting, lasting_of
from farwall.job.other_facts import OtherFacts
from farwall.job.proof import proof_of
from farwall.job.sun_advice import sun_grounds, sun_on_floor, sun_warnings
from farwall.mix.plan import FieldNeed, plan_mixes
from farwall.spray.fields import COMFORT, Budget, Cut, Pieces, Sweeps, cut_into_fields
from farwall.spray.lives import Lives
from farwall.spray.order import BudgetAt, Order, Step, order_fields
from farwall.spray.plain_bands import wish_for
from farwall.spray.plan_coat import LaidField, plan_coat
from farwall.spray.verdict import CoatFacts, Judge, Otherwise, Places
from farwall.spray.world import World, build_world

_NEXT_MORNING_MIN = 24 * 60.0
"""When a coat is not sure to dry within the day, the next one waits for the same hour tomorrow."""


_SEED_DIGITS = 12
"""Hexadecimal digits of the inputs' hash that make the seed: a whole number in any JSON."""


@dataclass(frozen=True)
class JobGround:
    """The floor of a job and how long things last on it."""

    settled: SettledJob
    floor: Floor
    world: World
    lasting: Lasting
    others: OtherFacts


@dataclass(frozen=True)
class LaidOut:
    """Fields and their order, and what they were weighed by."""

    cut: Cut
    order: Order
    sweeps: Sweeps
    budget: Callable[..., float]
    """Minutes an edge may wait in a field of these pieces, begun at this minute (else 0)."""


def plan_job(
    job: Job,
    *,
    weather: WeatherFile | None = None,
    order: Sequence[str] = (),
    thorough: bool = False,
    cut: Callable[[Sweeps, Budget], Cut] = cut_into_fields,
    beside: Beside = at_once,
) -> Plan:
    """The plan of the whole job.

    weather: an hourly file for slab and air where the survey has no readings.
    order: room ids whose order the user insists on (else the job's wish, else
    the best that was found). thorough: seek younger edges in every field, also
    where plain bands hold. cut: another rule of what is sprayed in one go, for the
    bench's habits of the trade. beside: begins half of the sweeps beside the other
    half. Raises `Unanswerable` when no order lets everybody out or a room has no
    way in.
    """
    ground = ground_of(job, weather)
    wanted = tuple(order) or job.wishes.order
    laid = laid_out(ground, wanted, cut, beside=beside)
    return planned(job, ground, laid, weather=weather, asked=bool(wanted), thorough=thorough)


def planned(
    job: Job,
    ground: JobGround,
    laid: LaidOut,
    *,
    weather: WeatherFile | None = None,
    asked: bool | None = None,
    thorough: bool = False,
) -> Plan:
    """The plan of a job whose fields and order are settled. Raises as `plan_job` does.

    asked: whether the order was insisted on; by the job's own wish when left out.
    """
    settled, floor = ground.settled, ground.floor
    done, clocks = _coats(ground, laid.order, laid.sweeps, thorough=thorough)
    fields = tuple(one.field for one in done)
    mixed = plan_mixes(
        [FieldNeed(field.id, field.coat, _litres(field)) for field in fields], settled
    )
    sun = sun_on_floor(ground.lasting, done, floor)
    inputs = _inputs(job, settled, floor)
    inputs_hash = hash_of(plain(inputs))
    return Plan(
        version=PLAN_VERSION,
        job=job.name or job.id,
        inputs_hash=inputs_hash,
        starts_at=settled.starts_at,
        inputs=inputs,
        fields=fields,
        mixes=mixed.mixes,
        clocks=clocks,
        cautions=cautions_for(settled),
        grounds=(*settled.grounds, *mixed.grounds, *sun_grounds(job, sun)),
        buying=mixed.buying,
        warnings=(
            *settled.warnings,
            *mixed.warnings,
            *_warnings(job, weather, ground.world),
            *_resting(job, fields),
            *_unheld(job, fields),
            *sun_warnings(job, weather, sun),
        ),
        chances=_chances(ground, done, int(inputs_hash[:_SEED_DIGITS], 16)),
        proof=proof_of(
            laid.cut, laid.order, asked=bool(job.wishes.order) if asked is None else asked
        ),
        sun=sun,
    )


def ground_of(job: Job, weather: WeatherFile | None) -> JobGround:
    """The floor of a job, its gaps filled, and how long things last on it."""
    settled = settle(job, starts_at=_stand_in(weather))
    floor = join_thresholds(job.floor)
    lasting = lasting_of(settled, weather)
    others = OtherFacts(job, settled, weather, lasting)
    return JobGround(settled, floor, build_world(floor, job.exits), lasting, others)


def _stand_in(weather: WeatherFile | None) -> str:
    """The start when the job tells none: with weather a mild month, on the file's own clock."""
    if weather is None:
        return STARTS_AT
    clock = timezone(timedelta(hours=weather.place.utc_offset_h))
    return datetime(2001, 5, 15, 8, tzinfo=clock).isoformat()


def hash_of(inputs: object) -> str:
    """SHA-256 of the canonical JSON (RFC 8785) of `inputs`, in hex."""
    return hashlib.sha256(rfc8785.dumps(inputs)).hexdigest()  # type: ignore[arg-type]


def laid_out(
    ground: JobGround,
    wanted: Sequence[str] = (),
    cut_by: Callable[[Sweeps, Budget], Cut] = cut_into_fields,
    *,
    beside: Beside = at_once,
) -> LaidOut:
    """Fields and their order, the same for every coat: judged by the tightest coat.

    Raises `Unanswerable` as `plan_job` does.
    """
    settled = ground.settled
    tools, crew = settled.tools, settled.job.crew
    thirst = max(settled.l_per_m2.values())
    sweeps = Sweeps(ground.world, tools, thirst, crew.helper, beside=beside)

    @cache
    def in_hour(pieces: Pieces, hour: int) -> float:
        """What the oldest edge may wait, so that each room's own part of it may wait there."""
        rooms = _rooms(ground.world, pieces)
        if ground.lasting.refusal(rooms, 60.0 * hour) is not None:
            return 0.01
        low = {
            room: min(_low(ground, room, coat, hour) for coat in settled.coats) for room in rooms
        }
        if len(set(low.values())) == 1:
            return max(min(low.values()), 0.01)
        parts = sweeps.room_parts(pieces)
        return max(min(low[room] / max(parts.get(room, 1.0), 1e-3) for room in rooms), 0.01)

    def budget(pieces: Pieces, at_min: float = 0.0) -> float:
        changes = ground.lasting.hours or ground.lasting.sunlight
        return in_hour(pieces, int(at_min // 60) if changes else 0)

    cut = cut_by(sweeps, budget)
    while True:
        order = order_fields(cut.fields, sweeps, budget, wanted=wanted)
        walked = [sweeps.walked(step.pieces, step.exit) for step in order.steps]
        if all(walked):
            _level_the_tightest(order, sweeps, budget)
            return LaidOut(cut, order, sweeps, budget)


def _low(ground: JobGround, room: str, coat: SettledCoat, hour: int) -> float:
    return ground.lasting.shortest((room,), coat, 60.0 * hour).low


def _level_the_tightest(order: Order, sweeps: Sweeps, budget: BudgetAt) -> None:
    """Begin to level the field that needs most of its budget: a later coat may ask for it."""

    def share(step: Step) -> float:
        return sweeps.age_min(step.pieces, step.exit) / budget(step.pieces, 0.0)

    tightest = max(order.steps, key=share)
    if share(tightest) > COMFORT:
        sweeps.sweeper(tightest.pieces, tightest.exit).begin_levelling(sweeps.beside)


def _warnings(job: Job, weather: WeatherFile | None, world: World) -> tuple[str, ...]:
    found = []
    if weather is not None and job.starts_at is None:
        found.append(
            "The job tells no start: the weather of 15 May, 8:00, was taken. Put starts_at into "
            "the job, such as 2026-05-15T08:00:00-06:00."
        )
    found.extend(
        f"Nothing can stop at the saw cut {cut or 'without a name'}: it does not run from wall to "
        "wall, or it ends in a doorway."
        for cut in world.unused_cuts
    )
    if not job.crew.second_adult and not job.crew.helper:
        found.append("Nobody works alone: a second adult has to be within call.")
    return tuple(found)


def _resting(job: Job, fields: Sequence[Field]) -> list[str]:
    """Where two are on the crew and one of them has nothing to spray."""
    if job.crew.sprayers < 2:
        return []
    alone = sum(all(band.sprayer == 1 for band in field.bands) for field in fields)
    if not alone:
        return []
    words = (
        f"One sprays and the other rests or fills tanks in {alone} of {len(fields)} fields: two "
        "have no room there, or are no quicker and leave no younger edge."
    )
    return [words]


def _unheld(job: Job, fields: Sequence[Field]) -> Iterator[str]:
    """Wishes for plain bands that a field cannot have, and those that name no field or room."""
    wishes = job.wishes
    for field in fields:
        wish = wish_for(wishes.bands, wishes.bands_in, field.id, field.rooms)
        if wish == "best" or any(one.name == "plain" and one.chosen for one in field.choices):
            continue
        plain = [one for one in field.choices if one.name == "plain"]
        why = (
            f"their edge would be {-plain[0].margin_min:.1f} min too old"
            if plain
            else "nobody can walk them there"
        )
        yield f"Field {field.id} keeps the best bands, though plain ones are wished for: {why}."
    known = {field.id for field in fields} | {room for field in fields for room in field.rooms}
    for name in sorted(set(wishes.bands_in) - known):
        yield f"wishes.bands_in names {name!r}, which is no field and no room of this plan."


def _litres(field: Field) -> float:
    return sum(band.litres for band in field.bands)


def _rooms(world: World, pieces: Pieces) -> tuple[str, ...]:
    return tuple(sorted({world.pieces[name].room for name in pieces}))


def _coats(
    ground: JobGround, order: Order, sweeps: Sweeps, *, thorough: bool
) -> tuple[tuple[LaidField, ...], tuple[Clock, ...]]:
    begins = 0.0
    fields: list[LaidField] = []
    clocks: list[Clock] = []
    places = Places(ground.floor, ground.settled.job.exits)
    for coat in ground.settled.coats:
        done = plan_coat(
            ground.world,
            order,
            lambda step: sweeps.sweeper(step.pieces, step.exit),
            _coat_facts(ground, coat, thorough=thorough),
            _judge(ground, coat, places),
            begins_min=begins,
            first_number=len(fields) + 1,
        )
        fields.extend(done)
        own = [one.field for one in done]
        clock = ground.lasting.dry(coat, own[-1].end_min)
        clocks.append(clock)
        begins = _next_coat(begins, own, clock)
    clocks[-1] = replace(clocks[-1], name="dry to neutralise")
    return tuple(fields), tuple(clocks)


def _chances(ground: JobGround, laid: Sequence[LaidField], seed: int) -> Chances | None:
    """The day drawn many times, by a generator made from `seed`; None where two spray.

    A drawn day replays one band after the other, and two sprayers do theirs at once.
    """
    if any(band.sprayer == 2 for one in laid for band in one.field.bands):
        return None
    coats = {coat.id: coat for coat in ground.settled.coats}

    def life_of(coat: str, entry: RoomOpenTime) -> Span:
        if entry.low <= 0:
            return Span(0.0, 0.0, 0.0, Rank.PRACTICE, "common-practice")
        span = ground.lasting.believed(entry.room, coats[coat], entry.from_min)
        own = ground.lasting.open_time((entry.room,), coats[coat], entry.from_min)
        part = entry.likely / own.likely if entry.polygon is not None and own.likely else 1.0
        likely, high = (None if end is None else part * end for end in (span.likely, span.high))
        return Span(part * span.low, likely, high, span.rank, span.source)

    x, y, _ = next(walk.path[-1] for one in reversed(laid) for walk in reversed(one.field.walks))
    return chances_of(
        [Stretch(one.field, one.moments, one.lives) for one in laid],
        ground.settled,
        life_of,
        np.random.default_rng(seed),
        seed=seed,
        tub=(x, y),
    )


def _judge(ground: JobGround, coat: SettledCoat, places: Places) -> Judge:
    """Who weighs the fields of one coat."""

    def others(pieces: Pieces, at_min: float, peak_min: float) -> Sequence[Otherwise]:
        rooms = _rooms(ground.world, pieces)
        return ground.others.for_field(rooms, coat, at_min, peak_min)

    return Judge(
        ground.floor,
        ground.settled.job.exits,
        partial(_refused, ground),
        others,
        partial(ground.others.cost, coat),
        places,
    )


def _refused(ground: JobGround, pieces: Pieces, at_min: float) -> tuple[Remedy, ...]:
    """Why these pieces may not be stained at that minute, and what would change it."""
    refused = ground.lasting.refusal(_rooms(ground.world, pieces), at_min)
    if refused is None:
        return ()
    words = (refused.reason, *refused.remedies)
    return tuple(Remedy("conditions", word) for word in words)


def _coat_facts(ground: JobGround, coat: SettledCoat, *, thorough: bool) -> CoatFacts:
    settled = ground.settled

    @cache
    def floors_of(pieces: Pieces) -> dict[str, BaseGeometry]:
        own = [ground.world.pieces[name] for name in sorted(pieces)]
        return {
            room: shapely.union_all([piece.shape for piece in own if piece.room == room])
            for room in _rooms(ground.world, pieces)
        }

    def lives(pieces: Pieces, from_min: float, to_min: float) -> Lives:
        floors = floors_of(pieces)
        return Lives(ground.lasting.open_times(tuple(floors), coat, from_min, to_min), floors)

    crew, wishes = settled.job.crew, settled.job.wishes
    return CoatFacts(
        coat.id,
        coat.l_per_m2,
        crew.helper,
        settled.tools,
        lives,
        thorough,
        crew.sprayers,
        partial(wish_for, wishes.bands, wishes.bands_in),
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
