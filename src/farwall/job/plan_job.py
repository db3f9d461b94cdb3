"""The main use case: a job's facts in, the day's plan out. Pure, no file, no clock.

facts → pieces and seams → fields → order → sweeps on the clock → mix → plan.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterator, Sequence

import rfc8785

from farwall.air.weather import Forecast, WeatherFile
from farwall.beside import Beside, at_once
from farwall.errors import Unanswerable
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.facts.plain import plain
from farwall.facts.plan import (
    PLAN_VERSION,
    Field,
    Plan,
    PlanFloor,
    PlanInputs,
)
from farwall.facts.settled import SettledJob
from farwall.floor.nouns import Floor
from farwall.job.airing import airing_warnings
from farwall.job.cautions import cautions_for
from farwall.job.coats import coats_of
from farwall.job.day_drawn import day_drawn
from farwall.job.go import go_of_plan
from farwall.job.go.cuts import hold_cuts
from farwall.job.ground import JobGround, ground_of
from farwall.job.laying_out import LaidOut, laid_out
from farwall.job.mix_needs import mix_needs
from farwall.job.patch_words import floor_patches, suction_warnings
from farwall.job.patches import JOINT, in_the_way
from farwall.job.proof import proof_of
from farwall.job.site import heater_warnings
from farwall.job.slab_words import slab_warnings, weather_grounds, weather_warnings
from farwall.job.sun_advice import sun_grounds, sun_on_floor, sun_warnings
from farwall.job.sun_slab_words import sun_slab_warnings
from farwall.mix.plan import plan_mixes
from farwall.spray.fields import Budget, Cut, cut_into_fields
from farwall.spray.plain_bands import wish_for
from farwall.spray.sweeps import Sweeps

_SEED_DIGITS = 12
"""Hexadecimal digits of the inputs' hash that make the seed: a whole number in any JSON."""


def plan_job(
    job: Job,
    *,
    weather: WeatherFile | Forecast | None = None,
    order: Sequence[str] = (),
    thorough: bool = False,
    cut: Callable[[Sweeps, Budget], Cut] = cut_into_fields,
    beside: Beside = at_once,
    lessons: Lessons | None = None,
    sprayer: str = "",
) -> Plan:
    """The plan of the whole job.

    weather: hours for slab and air, pulled by the readings of the survey.
    order: room ids whose order the user insists on (else the job's wish, else
    the best that was found). thorough: seek younger edges in every field, also
    where plain bands hold. cut: another rule of what is sprayed in one go, for the
    bench's habits of the trade. beside: begins half of the sweeps beside the other
    half. lessons: what closed jobs taught, taken where the job rests on practice or a
    guess; sprayer: whose spray rate of these. Raises `Unanswerable` when no order lets
    everybody out or a room has no way in.
    """
    ground = ground_of(job, weather, lessons=lessons, sprayer=sprayer)
    wanted = tuple(order) or job.wishes.order
    try:
        laid = laid_out(ground, wanted, cut, beside=beside)
    except Unanswerable as no:
        raise in_the_way(job, no) from no
    return planned(job, ground, laid, weather=weather, asked=bool(wanted), thorough=thorough)


def planned(
    job: Job,
    ground: JobGround,
    laid: LaidOut,
    *,
    weather: WeatherFile | Forecast | None = None,
    asked: bool | None = None,
    thorough: bool = False,
) -> Plan:
    """The plan of a job whose fields and order are settled. Raises as `plan_job` does.

    asked: whether the order was insisted on; by the job's own wish when left out.
    """
    settled, floor = ground.settled, ground.floor
    done, clocks, asides = coats_of(ground, laid, thorough=thorough)
    mixed = plan_mixes(mix_needs([one.field for one in done]), settled)
    sun = sun_on_floor(ground.lasting, done, floor)
    inputs = _inputs(job, settled, floor)
    inputs_hash = hash_of(plain(inputs))
    chances = day_drawn(ground, done, int(inputs_hash[:_SEED_DIGITS], 16))
    laid_fields = (one.with_aside(found).field for one, found in zip(done, asides(), strict=True))
    fields = hold_cuts(tuple(laid_fields), job)
    go = go_of_plan(job, fields)
    return Plan(
        version=PLAN_VERSION,
        job=job.name or job.id,
        inputs_hash=inputs_hash,
        starts_at=settled.starts_at,
        inputs=inputs,
        fields=fields,
        mixes=mixed.mixes,
        looks=mixed.looks,
        ways=mixed.ways,
        clocks=clocks,
        cautions=cautions_for(settled),
        grounds=(
            *weather_grounds(ground.lasting, settled.grounds),
            *mixed.grounds,
            *sun_grounds(job, sun),
        ),
        buying=mixed.buying,
        warnings=(
            *settled.warnings,
            *mixed.warnings,
            *_warnings(job, weather, ground),
            *_resting(job, fields),
            *_unheld(job, fields),
            *suction_warnings(go),
            *sun_warnings(job, weather, sun),
        ),
        chances=chances,
        proof=proof_of(
            laid.cut, laid.order, asked=bool(job.wishes.order) if asked is None else asked
        ),
        go=go,
        sun=sun,
        patches=floor_patches(job),
    )


def hash_of(inputs: object) -> str:
    """SHA-256 of the canonical JSON (RFC 8785) of `inputs`, in hex."""
    return hashlib.sha256(rfc8785.dumps(inputs)).hexdigest()  # type: ignore[arg-type]


def _warnings(
    job: Job, weather: WeatherFile | Forecast | None, ground: JobGround
) -> tuple[str, ...]:
    world = ground.world
    found = [
        *weather_warnings(job, weather, ground.lasting.starts_at),
        *slab_warnings(ground.lasting),
        *sun_slab_warnings(ground.lasting),
        *heater_warnings(job),
        *airing_warnings(ground.lasting, ground.settled.coats[0]),
    ]
    if isinstance(weather, WeatherFile) and job.starts_at is None:
        found.append(
            "The job tells no start: the weather of 15 May, 8:00, was taken. Put starts_at into "
            "the job, such as 2026-05-15T08:00:00-06:00."
        )
    found.extend(
        f"Nothing can stop at the {_cut_named(cut)}: it does not run from wall to wall, or it ends "
        "in a doorway."
        for cut in world.unused_cuts
    )
    if not job.crew.second_adult and not job.crew.helper:
        found.append("Nobody works alone: a second adult has to be within call.")
    return tuple(found)


def _cut_named(cut: str) -> str:
    return cut if cut.startswith(JOINT) else f"saw cut {cut or 'without a name'}"


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
