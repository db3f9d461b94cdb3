"""The main use case: a job's facts in, the day's plan out. Pure, no file, no clock.

facts → pieces and seams → fields → order → sweeps on the clock → mix → plan.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import datetime
from functools import cached_property
from typing import TypedDict, Unpack

import rfc8785

from farwall.air.weather import Forecast, WeatherFile
from farwall.beside import Beside, at_once
from farwall.errors import Unanswerable
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.facts.plain import plain
from farwall.facts.plan import (
    PLAN_VERSION,
    Clock,
    Field,
    Plan,
    PlanCoat,
    PlanFloor,
    PlanInputs,
)
from farwall.facts.settled import SettledJob
from farwall.facts.sunlight import SunOnFloor
from farwall.floor.nouns import Floor
from farwall.job.cautions import cautions_for
from farwall.job.coats import coats_of
from farwall.job.day_drawn import day_drawn
from farwall.job.daylight import daylight_of
from farwall.job.ground import JobGround, ground_of
from farwall.job.laying_out import LaidOut, laid_out
from farwall.job.light_words import light_warnings
from farwall.job.mix_needs import mix_needs
from farwall.job.patch_words import floor_patches, suction_warnings
from farwall.job.patches import in_the_way
from farwall.job.plan_warnings import resting, unheld, warnings_of_ground
from farwall.job.proof import proof_of
from farwall.job.slab_words import weather_grounds
from farwall.job.sun_advice import sun_grounds, sun_on_floor, sun_warnings
from farwall.job.wet_below import wet_warnings
from farwall.mix.plan import plan_mixes
from farwall.nouns import dataclass
from farwall.spray.fields import Budget, Cut, cut_into_fields
from farwall.spray.plan_coat import Aside, LaidField
from farwall.spray.sweeps import Sweeps


@dataclass(frozen=True)
class PlanBegun:
    """A plan of which all is laid, while what is told beside its fields is still being sought.

    `bare` has no choices of bands, no remedies that leave more room, no go or no-go and not all
    warnings: enough for whoever asks only what is sprayed where and when. `whole` waits.
    """

    bare: Plan
    whole: Callable[[], Plan]


_SEED_DIGITS = 12
"""Hexadecimal digits of the inputs' hash that make the seed: a whole number in any JSON."""


class Asked(TypedDict, total=False):
    """What may be asked of a plan beside the facts of its job; anything may be left out.

    weather: hours for slab and air, pulled by the readings of the survey.
    order: room ids whose order the user insists on (else the job's wish, else
    the best that was found). thorough: seek younger edges in every field, also
    where plain bands hold. cut: another rule of what is sprayed in one go, for the
    bench's habits of the trade. beside: begins some work beside other work.
    lessons: what closed jobs taught, taken where the job rests on practice or a
    guess; sprayer: whose spray rate of these.
    """

    weather: WeatherFile | Forecast | None
    order: Sequence[str]
    thorough: bool
    cut: Callable[[Sweeps, Budget], Cut]
    beside: Beside
    lessons: Lessons | None
    sprayer: str


def plan_job(job: Job, **asked: Unpack[Asked]) -> Plan:
    """The plan of the whole job.

    Raises `Unanswerable` when no order lets everybody out or a room has no way in.
    """
    return plan_begun(job, **asked).whole()


def plan_begun(
    job: Job,
    *,
    weather: WeatherFile | Forecast | None = None,
    order: Sequence[str] = (),
    thorough: bool = False,
    cut: Callable[[Sweeps, Budget], Cut] = cut_into_fields,
    beside: Beside = at_once,
    lessons: Lessons | None = None,
    sprayer: str = "",
) -> PlanBegun:
    """The same plan before all that is told beside its fields is found. Raises as `plan_job`."""
    ground = ground_of(job, weather, lessons=lessons, sprayer=sprayer)
    wanted = tuple(order) or job.wishes.order
    try:
        laid = laid_out(ground, wanted, cut, beside=beside)
    except Unanswerable as no:
        raise in_the_way(job, no) from no
    return planned_begun(job, ground, laid, weather=weather, asked=bool(wanted), thorough=thorough)


def planned(
    job: Job,
    ground: JobGround,
    laid: LaidOut,
    *,
    weather: WeatherFile | Forecast | None = None,
) -> Plan:
    """The plan of a job whose fields and order are settled. Raises as `plan_job` does."""
    return planned_begun(job, ground, laid, weather=weather).whole()


def planned_begun(
    job: Job,
    ground: JobGround,
    laid: LaidOut,
    *,
    weather: WeatherFile | Forecast | None = None,
    asked: bool | None = None,
    thorough: bool = False,
) -> PlanBegun:
    """The same plan before all that is told beside its fields is found. Raises as `plan_job`.

    asked: whether the order was insisted on; by the job's own wish when left out.
    """
    done, clocks, asides = coats_of(ground, laid, thorough=thorough)
    case = _Case(job, ground, laid, weather, done, clocks)
    bare = case.bare(asked=bool(job.wishes.order) if asked is None else asked)
    return PlanBegun(bare, lambda: case.whole(bare, asides))


@dataclass(frozen=True)
class _Case:
    """A job whose fields are sprayed on the clock: what its plan is put together from."""

    job: Job
    ground: JobGround
    laid: LaidOut
    weather: WeatherFile | Forecast | None
    done: tuple[LaidField, ...]
    clocks: tuple[Clock, ...]

    @cached_property
    def fields(self) -> list[Field]:
        """The fields of all coats, without what is sought aside."""
        return [one.field for one in self.done]

    @cached_property
    def sun(self) -> SunOnFloor | None:
        """Where and when the sun falls on the floor."""
        return sun_on_floor(self.ground.lasting, self.done, self.ground.floor)

    def bare(self, *, asked: bool) -> Plan:
        """The plan without choices, remedies, go or no-go, and what is said of these."""
        job, settled = self.job, self.ground.settled
        mixed = plan_mixes(mix_needs(self.fields), settled)
        inputs = _inputs(job, settled, self.ground.floor)
        inputs_hash = hash_of(plain(inputs))
        return Plan(
            version=PLAN_VERSION,
            job=job.name or job.id,
            inputs_hash=inputs_hash,
            starts_at=settled.starts_at,
            inputs=inputs,
            fields=tuple(self.fields),
            mixes=mixed.mixes,
            looks=mixed.looks,
            ways=mixed.ways,
            clocks=self.clocks,
            cautions=cautions_for(settled),
            grounds=(
                *weather_grounds(self.ground.lasting, settled.grounds),
                *mixed.grounds,
                *sun_grounds(job, self.sun),
            ),
            buying=mixed.buying,
            warnings=(*settled.warnings, *mixed.warnings, *self.warnings()),
            chances=day_drawn(self.ground, self.done, int(inputs_hash[:_SEED_DIGITS], 16)),
            proof=proof_of(self.laid.cut, self.laid.order, asked=asked),
            sun=self.sun,
            patches=floor_patches(job),
            stain_names=settled.stain_names,
        )

    def warnings(self) -> tuple[str, ...]:
        """What is said of light, of wet coats below, and of what the plan stands on."""
        settled, fields = self.ground.settled, self.fields
        daylight = daylight_of(self.job, settled.starts_at)
        coats = [one.coat for one in settled.coats]
        begins, us = datetime.fromisoformat(settled.starts_at), self.job.wishes.units == "us"
        return (
            *light_warnings(self.job, daylight, fields, self.clocks, coats),
            *wet_warnings(fields, self.clocks, [one.id for one in coats], begins, us=us),
            *warnings_of_ground(self.job, self.weather, self.ground),
        )

    def whole(self, bare: Plan, asides: Callable[[], list[Aside]]) -> Plan:
        """The same plan with what was sought aside, and go or no-go by all of it."""
        # Loaded here: what is found aside is still being sought by other processes.
        from farwall.job.go import go_of_plan
        from farwall.job.go.cuts import hold_cuts

        told = (one.with_aside(found).field for one, found in zip(self.done, asides(), strict=True))
        fields = hold_cuts(tuple(told), self.job)
        go = go_of_plan(self.job, fields)
        warnings = (
            *bare.warnings,
            *resting(self.job, fields),
            *unheld(self.job, fields),
            *suction_warnings(go),
            *sun_warnings(self.job, self.weather, self.sun),
        )
        return replace(bare, fields=fields, go=go, warnings=warnings)


def hash_of(inputs: object) -> str:
    """SHA-256 of the canonical JSON (RFC 8785) of `inputs`, in hex."""
    return hashlib.sha256(rfc8785.dumps(inputs)).hexdigest()  # type: ignore[arg-type]


def _inputs(job: Job, settled: SettledJob, floor: Floor) -> PlanInputs:
    return PlanInputs(
        floor=PlanFloor(floor.rooms),
        openings=floor.openings,
        exits=job.exits,
        fixtures=floor.fixtures,
        saw_cuts=floor.saw_cuts,
        crew=job.crew,
        tools=settled.tools,
        coats=tuple(PlanCoat.of(coat.coat) for coat in settled.coats),
        l_per_m2={coat.id: round(coat.l_per_m2, 6) for coat in settled.coats},
    )


__all__ = ["PlanBegun", "hash_of", "plan_begun", "plan_job"]
