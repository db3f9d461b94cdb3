"""A seal day that is settled, as a plan with coats `seal-1`, `seal-2`, …, and its part `sealing`."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta

from farwall.air.sealers import DISAGREE, SealerLimits
from farwall.air.sealing import windows
from farwall.air.weather import Forecast, WeatherFile
from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.facts.plain import plain
from farwall.facts.plan import (
    PLAN_VERSION,
    Clock,
    Field,
    Ground,
    Plan,
    PlanFloor,
    PlanInputs,
)
from farwall.facts.settled import SettledJob
from farwall.floor.nouns import Floor
from farwall.job.laying_out import LaidOut
from farwall.job.plan_job import hash_of
from farwall.job.proof import proof_of
from farwall.job.seal_day.airing import SealAir, air_for
from farwall.job.seal_day.cautions import cautions_for_sealer
from farwall.job.seal_day.coats import LaidCoat, at, fits_crew
from farwall.job.seal_day.edge import SealLasting
from farwall.job.seal_day.films import has_solvent
from farwall.job.seal_day.hours import HALF_H, Begins, SealHours, in_working_day, next_half_hour
from farwall.job.seal_day.litres import Opened, opened
from farwall.job.seal_day.noun import (
    Barrier,
    CoatHours,
    DriedDown,
    Patch,
    SealerFacts,
    Sealing,
    SealWindow,
)
from farwall.job.seal_day.patch import WAIT_H, test_patch_of
from farwall.job.seal_day.ready import Reason
from farwall.job.seal_day.waits import SealWaits
from farwall.job.seal_earliest import Earliest
from farwall.job.sealing import COLD_BED, LABEL_WINS, NOT_DRY, WHICH
from farwall.job.site import heater_warnings
from farwall.job.slab_words import weather_warnings
from farwall.mix.plan import FieldNeed, MixPlan, plan_mixes

PATCH_HOW = (
    "One coat as the floor will get it; the next day tape pressed on and torn off, and a scratch: "
    "neither may lift or powder. White, soft or blistered: no sealer on the floor."
)
BARRED = (
    "Tape across from jamb to jamb, a sheet with the hour at eye level, the key with the lead. "
    "Everybody out first."
)
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
        coats=tuple(coat.coat for coat in settled.coats),
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
    )


def sealing_of_day(told: Told, plan: Plan) -> Sealing:
    """What is told beside the plan."""
    lost = () if told.begins.against else tuple(_lost(told))
    stopped = bool(told.begins.against or lost or any(one.word == "no" for one in told.reasons))
    verdict = "no" if stopped else "go with" if told.reasons else "go"
    notes = [LABEL_WINS, COLD_BED, NOT_DRY, *DISAGREE]
    if told.job.sealer.type is None:
        notes.insert(0, WHICH)
    if told.weather is None:
        notes.append(NO_WEATHER)
    hours = [one for one in told.known.hours if one.starts_at >= told.not_before]
    return Sealing(
        verdict=verdict,
        against=(*told.begins.against, *lost),
        reasons=told.reasons,
        sealer=_sealer(told),
        dried_down=_dried(told),
        coats=tuple(_coats(told)),
        test_patch=_patch(told),
        barriers=tuple(_barriers(told)),
        air=tuple(_air(told)),
        windows=tuple(
            SealWindow(one.starts_at.isoformat(), one.ends_at.isoformat(), one.word, one.reasons)
            for one in windows(hours)
        ),
        notes=tuple(notes),
    )


def _lost(told: Told) -> Iterator[str]:
    """Fields that this crew cannot lay without losing an edge."""
    label = {room.id: room.label for room in told.floor.rooms}
    for field in told.fields:
        refused = any(remedy.code == "conditions" for remedy in field.remedies)
        if refused or fits_crew(field, told.job.crew):
            continue
        rooms = ", ".join(label.get(room, room) for room in field.rooms)
        works = next((one.what for one in field.remedies if one.works), "")
        yield (
            f"Edge: in {rooms} ({field.id}) an edge would be {field.peak_age_min:.1f} min old, and "
            f"it lives {field.open_time_min.low:.1f}. {works}".strip()
        )


def _sealer(told: Told) -> SealerFacts:
    sealer, limits = told.job.sealer, told.limits
    return SealerFacts(
        sealer.name, sealer.type, has_solvent(sealer), sealer.isocyanate, sealer.epoxy_amine,
        limits.coats, round(told.settled.coats[0].m2_per_l, 3), round(limits.least_slab_c, 2),
        round(limits.most_slab_c, 2), limits.most_rh_percent, limits.least_margin_k,
        limits.recoat_from_h, limits.recoat_to_h, limits.walk_h, limits.furniture_h,
        tuple(sorted(limits.told)), limits.rank.value, limits.source,
    )  # fmt: skip


def _dried(told: Told) -> DriedDown:
    def iso(moment: datetime | None) -> str | None:
        return None if moment is None else _minute(moment).isoformat()

    dried = told.dried
    return DriedDown(
        iso(dried.at_low), iso(dried.at_likely), iso(dried.at_high),
        _minute(told.not_before).isoformat(), told.asked_from, dried.rank, dried.source,
    )  # fmt: skip


def _coats(told: Told) -> Iterator[CoatHours]:
    cans: Mapping[str, Opened] = opened(told.settled, told.fields, told.mixed)
    for settled, coat in zip(told.settled.coats, told.coats, strict=True):
        begins, ends = at(told.starts_at, coat.begins_min), at(told.starts_at, coat.ends_min)
        word, reasons = told.known.word(begins, ends)
        can = cans[settled.id]
        yield CoatHours(
            settled.id, begins.isoformat(), ends.isoformat(), word, reasons, can.likely_l,
            can.open_l, can.ready_l, can.containers, can.at_hand, coat.recoat, coat.abrade, coat.crossings,
        )  # fmt: skip


def _patch(told: Told) -> Patch:
    found = test_patch_of(told.floor)
    low, likely, high = WAIT_H
    rank = Rank.PRACTICE
    if told.job.sealer.test_wait_h is not None:
        low = likely = high = told.job.sealer.test_wait_h
        rank = Rank.MEASURED
    try_at = told.starts_at - timedelta(hours=1)
    lay_by = _good_before(told, told.starts_at - timedelta(hours=likely))
    return Patch(
        found.room, found.at, found.side_m, found.whole, lay_by.isoformat(), low, likely, high,
        try_at.isoformat(), PATCH_HOW, rank.value,
    )  # fmt: skip


def _good_before(told: Told, latest: datetime) -> datetime:
    """The last working half hour up to `latest` that is not refused, since it has likely dried down;
    `latest` itself where there is none."""
    earliest = told.dried.at_likely or told.dried.sure_at
    moment = next_half_hour(latest) - HALF_H
    while moment >= earliest:
        if in_working_day(moment, moment + HALF_H) and not told.known.against(moment):
            return moment
        moment -= HALF_H
    return latest


def _barriers(told: Told) -> Iterator[Barrier]:
    socks, shoes = (clock for clock in told.after()[:2])

    def until(clock: Clock) -> str:
        late = clock.high_min if clock.high_min is not None else clock.low_min
        return at(told.starts_at, (clock.begins_min or 0.0) + late).isoformat()

    for one in told.job.exits:
        yield Barrier(
            one.id, one.opening, told.starts_at.isoformat(), until(socks), until(shoes), BARRED
        )


def _air(told: Told) -> Iterator[SealAir]:
    for settled, coat in zip(told.settled.coats, told.coats, strict=True):
        litres = sum(band.litres for field in coat.fields for band in field.bands)
        found = air_for(
            told.job, settled.id, litres=litres, minutes=coat.ends_min - coat.begins_min
        )
        if found is not None:
            yield found


def _grounds(told: Told, mixed: MixPlan) -> Iterator[Ground]:
    limits = told.limits
    yield Ground("sealer", limits.name, "", limits.rank.value, limits.source)
    for coat in told.coats:
        edge = coat.wet_edge
        yield Ground(f"wet edge of {edge.coat}", f"{edge.low_min:g}", "min", edge.rank, edge.source)
    dried = told.dried
    if told.asked_from:
        yield Ground("dry from", _minute(told.not_before).isoformat(), "", "measured here", "told")
    else:
        yield Ground(
            "dried down", _minute(dried.sure_at).isoformat(), "", dried.rank, dried.source
        )
    yield from told.settled.grounds
    yield from mixed.grounds


def _warnings(told: Told, mixed: MixPlan) -> Iterator[str]:
    yield from told.begins.against
    yield from (f"{one.what} {one.change}".strip() for one in told.reasons)
    if told.asked_from and told.not_before < told.dried.sure_at:
        yield (
            f"Told as dry from {told.not_before:%a %-d %b %H:%M}, before the late end of its "
            f"clock ({told.dried.sure_at:%a %-d %b %H:%M}): look again for dark islands."
        )
    if told.weather is None:
        yield NO_WEATHER
    yield from weather_warnings(told.job, told.weather, told.starts_at)
    yield from heater_warnings(told.job)
    yield from mixed.warnings
    if not told.job.crew.second_adult and not told.job.crew.helper:
        yield "Nobody works alone: a second adult has to be within call."


def _minute(moment: datetime) -> datetime:
    return (moment + timedelta(seconds=30)).replace(second=0, microsecond=0)
