"""A settled seal day as a plan with coats `seal-1`, `seal-2`, …, and its part `sealing`."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from farwall.air.sealers import SealerLimits
from farwall.air.weather import Forecast, WeatherFile
from farwall.days.words import at_words
from farwall.facts.job import Job
from farwall.facts.plain import plain
from farwall.facts.plan import (
    PLAN_VERSION,
    Clock,
    Field,
    Ground,
    Plan,
    PlanCoat,
    PlanFloor,
    PlanInputs,
)
from farwall.facts.settled import SettledJob
from farwall.floor.nouns import Floor
from farwall.job.laying_out import LaidOut
from farwall.job.plan_job import hash_of
from farwall.job.proof import proof_of
from farwall.job.seal_day.cautions import cautions_for_sealer
from farwall.job.seal_day.coats import LaidCoat
from farwall.job.seal_day.edge import SealLasting
from farwall.job.seal_day.hours import Begins, SealHours
from farwall.job.seal_day.ready import Reason
from farwall.job.seal_day.waits import SealWaits
from farwall.job.seal_earliest import Earliest
from farwall.job.site import heater_warnings
from farwall.job.slab_words import weather_warnings
from farwall.mix.plan import FieldNeed, MixPlan, plan_mixes
from farwall.nouns import dataclass

NO_WEATHER = (
    "No weather: slab and air are taken to stay as they were read (or mild, where nobody read "
    "them). The night is not in it: give a forecast, and read the slab."
)


@dataclass(frozen=True)
class Told:
    """All that came of planning a seal day."""

    job: Job
    weather: WeatherFile | Forecast | None
    settled: SettledJob
    floor: Floor
    limits: SealerLimits
    dried: Earliest
    known: SealHours
    waits: SealWaits
    not_before: datetime
    asked_from: bool
    begins: Begins
    lasting: SealLasting
    laid: LaidOut
    coats: tuple[LaidCoat, ...]
    reasons: tuple[Reason, ...]

    @property
    def starts_at(self) -> datetime:
        """The first stroke of coat 1."""
        return self.lasting.starts_at

    @property
    def fields(self) -> tuple[Field, ...]:
        """All fields of all coats."""
        return tuple(field for coat in self.coats for field in coat.fields)

    @property
    def mixed(self) -> MixPlan:
        """Litres of each coat with the gate's reserve."""
        needs = [
            FieldNeed(one.id, one.coat, sum(band.litres for band in one.bands))
            for one in self.fields
        ]
        return plan_mixes(needs, self.settled)

    def after(self) -> tuple[Clock, ...]:
        """What follows the last coat."""
        return self.waits.after(self.settled.coats[-1].id, self.coats[-1].ends_min)


def plan_of(told: Told) -> Plan:
    """The plan that the checker replays."""
    settled, mixed = told.settled, told.mixed
    inputs = PlanInputs(
        floor=PlanFloor(told.floor.rooms),
        openings=told.floor.openings,
        exits=told.job.exits,
        fixtures=told.floor.fixtures,
        saw_cuts=told.floor.saw_cuts,
        crew=told.job.crew,
        tools=settled.tools,
        coats=tuple(PlanCoat.of(coat.coat) for coat in settled.coats),
        l_per_m2={coat.id: round(coat.l_per_m2, 6) for coat in settled.coats},
    )
    clocks = [
        clock
        for coat in told.coats
        for clock in (coat.recoat, coat.abrade, coat.wet_edge)
        if clock is not None
    ]
    return Plan(
        version=PLAN_VERSION,
        job=told.job.name or told.job.id,
        inputs_hash=hash_of(plain(inputs)),
        starts_at=told.starts_at.isoformat(),
        inputs=inputs,
        fields=told.fields,
        mixes=mixed.mixes,
        clocks=(*clocks, *told.after()),
        cautions=cautions_for_sealer(told.job.sealer),
        grounds=tuple(_grounds(told, mixed)),
        buying=mixed.buying,
        warnings=tuple(_warnings(told, mixed)),
        proof=proof_of(told.laid.cut, told.laid.order, asked=bool(told.job.wishes.order)),
        stain_names=settled.stain_names,
    )


def _grounds(told: Told, mixed: MixPlan) -> Iterator[Ground]:
    limits = told.limits
    yield Ground("sealer", limits.name, "", limits.rank.value, limits.source)
    for coat in told.coats:
        edge = coat.wet_edge
        yield Ground(f"wet edge of {edge.coat}", f"{edge.low_min:g}", "min", edge.rank, edge.source)
    dried = told.dried
    if told.asked_from:
        yield Ground("dry from", minute(told.not_before).isoformat(), "", "measured here", "told")
    else:
        yield Ground("dried down", minute(dried.sure_at).isoformat(), "", dried.rank, dried.source)
    yield from told.settled.grounds
    yield from mixed.grounds


def _warnings(told: Told, mixed: MixPlan) -> Iterator[str]:
    us = told.job.wishes.units == "us"
    yield from told.begins.against
    yield from (f"{one.what} {one.change}".strip() for one in told.reasons)
    if told.asked_from and told.not_before < told.dried.sure_at:
        yield (
            f"Told as dry from {at_words(told.not_before, us=us)}, before the late end of its "
            f"clock ({at_words(told.dried.sure_at, us=us)}): look again for dark islands."
        )
    if told.weather is None:
        yield NO_WEATHER
    yield from weather_warnings(told.job, told.weather, told.starts_at)
    yield from heater_warnings(told.job)
    yield from mixed.warnings
    if not told.job.crew.second_adult and not told.job.crew.helper:
        yield "Nobody works alone: a second adult has to be within call."


def minute(moment: datetime) -> datetime:
    """The moment to the full minute."""
    return (moment + timedelta(seconds=30)).replace(second=0, microsecond=0)
