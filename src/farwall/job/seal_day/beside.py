"""What is told of a settled seal day beside its plan: hours, patch, barriers, air, verdict."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import datetime, timedelta

from farwall.air.sealers import DISAGREE
from farwall.air.sealing import windows
from farwall.evidence import Rank
from farwall.facts.fits_crew import fits_crew
from farwall.facts.numbered import by_number
from farwall.facts.plan import Clock
from farwall.job.seal_day.airing import SealAir, air_for
from farwall.job.seal_day.coats import at
from farwall.job.seal_day.films import has_solvent
from farwall.job.seal_day.hours import HALF_H, next_half_hour
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
from farwall.job.seal_day.patch import WAIT_H, patch_of
from farwall.job.seal_day.told import NO_WEATHER, Told, minute
from farwall.job.sealing import COLD_BED, LABEL_WINS, NOT_DRY, WHICH

PATCH_HOW = (
    "One coat as the floor will get it; the next day tape pressed on and torn off, and a scratch: "
    "neither may lift or powder. White, soft or blistered: no sealer on the floor."
)
BARRED = (
    "Tape across from jamb to jamb, a sheet with the hour at eye level, the key with the lead. "
    "Everybody out first."
)


def sealing_of_day(told: Told) -> Sealing:
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
    coats = [coat.id for coat in told.settled.coats]
    for field in told.fields:
        refused = any(remedy.code == "conditions" for remedy in field.remedies)
        if refused or fits_crew(field, told.job.crew):
            continue
        rooms = ", ".join(label.get(room, room) for room in field.rooms)
        works = next((one.what for one in field.remedies if one.works), "")
        low = field.open_time_min.low
        yield (
            f"Edge: in {rooms} (field {by_number(coats, field.id)}) an edge would be "
            f"{field.peak_age_min:.1f} min old, and it lives {low:.1f}. {works}".strip()
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
        return None if moment is None else minute(moment).isoformat()

    dried = told.dried
    return DriedDown(
        iso(dried.at_low), iso(dried.at_likely), iso(dried.at_high),
        minute(told.not_before).isoformat(), told.asked_from, dried.rank, dried.source,
    )  # fmt: skip


def _coats(told: Told) -> Iterator[CoatHours]:
    cans: Mapping[str, Opened] = opened(told.settled, told.fields, told.mixed)
    for settled, coat in zip(told.settled.coats, told.coats, strict=True):
        begins, ends = at(told.starts_at, coat.begins_min), at(told.starts_at, coat.ends_min)
        word, reasons = told.known.word(begins, ends)
        can = cans[settled.id]
        yield CoatHours(
            settled.id, begins.isoformat(), ends.isoformat(), word, reasons, can.likely_l,
            can.open_l, can.ready_l, can.containers, can.at_hand, coat.recoat,
            coat.abrade, coat.crossings,
        )  # fmt: skip


def _patch(told: Told) -> Patch:
    found = patch_of(told.floor)
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
    """The last working half hour up to `latest` that is not refused, once it has likely dried;
    `latest` itself where there is none."""
    earliest = told.dried.at_likely or told.dried.sure_at
    moment = next_half_hour(latest) - HALF_H
    while moment >= earliest:
        if told.known.works(moment, moment + HALF_H) and not told.known.against(moment):
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
