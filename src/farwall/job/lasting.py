"""How long edges live and coats take to dry on this job's day: survey, sample and weather joined.

A typed reading wins over the weather file; the budget of an edge is prudent
(`air.clocks.edge_budget`), and follows what was seen of sheen on this floor.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from functools import cached_property

from farwall.air.clocks import DRAUGHT, SUN, Timed, edge_budget, open_time
from farwall.air.conditions import Conditions
from farwall.air.day import HourAtSlab, Readings, at, hours_at_slab
from farwall.air.learned import Factor
from farwall.air.limits import drop_verdict, in_both, slab_verdict
from farwall.air.weather import Forecast, WeatherFile
from farwall.errors import Unanswerable
from farwall.evidence import Rank, Span
from farwall.facts.job import Survey
from farwall.facts.plan import OpenTime, RoomOpenTime
from farwall.facts.samples import Sample
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.floor.geometry import PolygonGeometry, polygon_geometry, polygons_of
from farwall.job.patch_drops import Spot, refused_by_patch, spots_of
from farwall.job.sheen_seen import learned_span, taught
from farwall.job.site import house_of
from farwall.job.sun_slab import SunWarmth, sun_warmth, warmed
from farwall.job.sunlight import SUNNY_SHARE, Sunlight, sunlight_of
from farwall.nouns import dataclass

_LONGEST_MIN = 24 * 60.0
_NONE = OpenTime(0.0, 0.0, 0.0, Rank.PRACTICE.value, "common-practice")
"""The open time where the slab says no."""
_BEFORE_H, _AHEAD_H = 240, 240
"""A slab remembers ten days; a floor takes as long from the first coat to its traffic."""


@dataclass(frozen=True)
class Lasting:
    """Answers for any room, coat and minute: how long an edge lives, when the coat is dry."""

    job: SettledJob
    hours: tuple[HourAtSlab, ...] = ()
    sunlight: Sunlight | None = None

    @cached_property
    def starts_at(self) -> datetime:
        """The first stroke."""
        return datetime.fromisoformat(self.job.starts_at)

    @cached_property
    def sun(self) -> SunWarmth:
        """How much warmer the sun makes the slab of each room that it reaches."""
        return sun_warmth(self.sunlight, self.starts_at, _AHEAD_H)

    def conditions_in(self, room: str, at_min: float) -> Conditions:
        """Slab and air of one room at a minute of the plan, the sun's warmth in its slab."""
        moment = self.starts_at + timedelta(minutes=at_min)
        return warmed(self.conditions(at_min), self.sun.k(room, moment))

    def conditions(self, at_min: float) -> Conditions:
        """Slab and air at a minute of the plan, in the shade."""
        if self.hours:
            return at(self.hours, self.starts_at + timedelta(minutes=at_min)).conditions
        survey = self.job.survey
        return Conditions(survey.slab_c, survey.air_c, survey.rh_percent, survey.air_speed_m_s)

    def refusal(self, rooms: tuple[str, ...], at_min: float) -> Unanswerable | None:
        """Why these rooms may not be stained at that minute, or None."""
        shaded = self.conditions(at_min).surface_c
        lit = max((self.conditions_in(room, at_min).surface_c for room in rooms), default=shaded)
        us = self.job.job.wishes.units == "us"
        verdicts = [slab_verdict(surface_c=shaded, us=us)]
        if lit > shaded:
            sunny = slab_verdict(surface_c=lit, us=us)
            cool = in_both(shaded, us=us)
            told = f"{sunny.reason} So it is where the sun comes in; in the shade {cool}."
            verdicts.append(replace(sunny, reason=told))
        verdicts += [drop_verdict(drop_s=self.job.room(room).drop_s) for room in rooms]
        for verdict in verdicts:
            if verdict.word == "no":
                return Unanswerable(verdict.reason, remedies=verdict.remedies)
        return refused_by_patch(self.job.job, rooms)

    def open_time(self, rooms: tuple[str, ...], coat: SettledCoat, at_min: float) -> OpenTime:
        """The open time of a field: that of its quickest room; `low` is the prudent budget.

        All zero when the slab says no.
        """
        if self.refusal(rooms, at_min) is not None:
            return _NONE
        return min((self._of_room(room, coat, at_min) for room in rooms), key=lambda o: o.low)

    def shortest(self, rooms: tuple[str, ...], coat: SettledCoat, at_min: float) -> OpenTime:
        """As `open_time`, but with the sun counted that falls through windows in the hour after.

        Small patches are passed over here; edges are held to them in `open_times`.
        """
        if self.refusal(rooms, at_min) is not None:
            return _NONE
        found = []
        for room in rooms:
            sunny = self.sunlight is not None and self.sunlight.sunny(room, at_min, at_min + 60.0)
            found.append(self._of_room(room, coat, at_min, sunny=sunny))
            found += [
                self._of_room(room, coat, at_min, sunny=sunny, drop_s=spot.drop_s)
                for spot in self._spots
                if spot.room == room and spot.share >= SUNNY_SHARE
            ]
        return min(found, key=lambda one: one.low)

    def open_times(
        self, rooms: tuple[str, ...], coat: SettledCoat, from_min: float, to_min: float
    ) -> tuple[RoomOpenTime, ...]:
        """The open time of each room between two minutes of the plan, anew where it changes.

        At least one for each room, the first from `from_min` on; it changes at full hours of the
        weather. All zero while the slab says no to any of the rooms.
        """
        moments = self._steps(from_min, to_min)
        no = [self.refusal(rooms, at_min) is not None for at_min in moments]
        found = []
        for room in rooms:
            before: OpenTime | None = None
            for at_min, refused in zip(moments, no, strict=True):
                now = _NONE if refused else self._of_room(room, coat, at_min)
                if now != before:
                    found.append(
                        RoomOpenTime(
                            room, at_min, now.low, now.likely, now.high, now.rank, now.source
                        )
                    )
                before = now
        sunny = self._in_patches(rooms, coat, from_min, to_min)
        return (*found, *sunny, *self._on_spots(found, sunny, coat))

    @cached_property
    def _spots(self) -> tuple[Spot, ...]:
        return spots_of(self.job.job)

    def _on_spots(
        self, rooms: list[RoomOpenTime], sunny: list[RoomOpenTime], coat: SettledCoat
    ) -> list[RoomOpenTime]:
        """Open times on patches with drop seconds of their own, where they end sooner.

        As long as those of the room hold, and in the sun where a patch of sun lies on them.
        """
        found: list[RoomOpenTime] = []
        for spot in self._spots:
            own = [one for one in rooms if one.room == spot.room]
            ends = [*(one.from_min for one in own[1:]), None] if own else []
            for one, end in zip(own, ends, strict=True):
                now = self._of_room(spot.room, coat, one.from_min, drop_s=spot.drop_s)
                if now.low < one.low:
                    found.append(_on_spot(one, now, spot, spot.polygon, end))
            for one in sunny:
                lit = polygons_of(one.polygon.shape & spot.shape) if one.polygon else []
                if one.room != spot.room or not lit:
                    continue
                now = self._of_room(spot.room, coat, one.from_min, sunny=True, drop_s=spot.drop_s)
                if now.low < one.low:
                    found += [
                        _on_spot(one, now, spot, polygon_geometry(part), one.to_min) for part in lit
                    ]
        return found

    def _in_patches(
        self, rooms: tuple[str, ...], coat: SettledCoat, from_min: float, to_min: float
    ) -> list[RoomOpenTime]:
        """Open times inside patches of sun, in rooms that are not told to be sunny as a whole."""
        found: list[RoomOpenTime] = []
        if self.sunlight is None:
            return found
        for patch in self.sunlight.patches(from_min, to_min):
            if patch.room not in rooms or self.job.room(patch.room).sun:
                continue
            at_min = max(patch.from_min, from_min)
            refused = self.refusal(rooms, at_min) is not None
            now = _NONE if refused else self._of_room(patch.room, coat, at_min, sunny=True)
            found.append(
                RoomOpenTime(
                    patch.room, patch.from_min, now.low, now.likely, now.high, now.rank,
                    now.source, patch.polygon, patch.to_min,
                )
            )  # fmt: skip
        return found

    def _steps(self, from_min: float, to_min: float) -> tuple[float, ...]:
        """`from_min`, then each minute up to `to_min` at which an hour of weather or sun begins."""
        moments = [hour.starts_at for hour in self.hours]
        if not moments and self.sun.by_room:
            moments = [self.sun.starts_at + timedelta(hours=n) for n in range(_AHEAD_H)]
        begins = [(one - self.starts_at).total_seconds() / 60 for one in moments]
        inside = [round(at_min, 4) for at_min in begins if from_min < at_min <= to_min]
        return (round(from_min, 4), *inside)

    def believed(self, room: str, coat: SettledCoat, at_min: float) -> Span:
        """The open time of a room as it is believed, sun and draught counted: no budget of it.

        Raises `Unanswerable` when the slab is outside its limits.
        """
        span, _, factor = self._span(room, coat, at_min)
        span = self._learned(room, coat, at_min) or span

        def less(value: float | None) -> float | None:
            return None if value is None else factor * value

        low = factor * span.low
        return Span(low, less(span.likely), less(span.high), span.rank, span.source)

    def _span(
        self,
        room: str,
        coat: SettledCoat,
        at_min: float,
        *,
        sunny: bool = False,
        drop_s: float | None = None,
    ) -> tuple[Span, Sample | None, float]:
        """The open time without sun and draught, the timed sample, and what sun and draught leave.

        Raises `Unanswerable` when the slab is outside its limits.
        """
        found = self.job.room(room)
        sample = coat.sample if coat.sample and coat.sample.sheen_loss_min else None
        span = open_time(
            self.conditions_in(room, at_min),
            m2_per_l=coat.m2_per_l,
            drop_s=drop_s or (found.drop_s if found.drop_told else None),
            finish=found.finish,
            timed=_timed(sample),
        )
        if sample is None:
            span = self._as_learned(span)
        factor = (SUN if found.sun or sunny else 1.0) * (DRAUGHT if found.draught else 1.0)
        return span, sample, factor

    def _as_learned(self, span: Span) -> Span:
        """Open time that nobody timed here, as the firm's closed jobs taught it.

        A firm whose edges die sooner is believed at once, one whose edges live longer only as far
        as that is sure: a guess on the prudent side.
        """
        firm = self.job.firm_waits.get("open time")
        if firm is None:
            return span
        by = min(firm.usual, firm.sure) if firm.usual < 1 else firm.sure
        likely, high = (None if end is None else by * end for end in (span.likely, span.high))
        jobs = "1 job" if firm.jobs == 1 else f"{firm.jobs} jobs"
        source = f"{span.source}, learned from {jobs}"
        return Span(by * span.low, likely, high, Rank.LEARNED, source)

    @cached_property
    def _taught(self) -> dict[tuple[str, str], Factor | None]:
        """What sightings made of each coat's open time in each room, reckoned once."""
        return {
            (coat.id, room.id): taught(self.job, coat, room.id, usual=self.conditions(0.0))
            for coat in self.job.coats
            for room in self.job.job.floor.rooms
        }

    def _learned(
        self, room: str, coat: SettledCoat, at_min: float, *, drop_s: float | None = None
    ) -> Span | None:
        """The open time as this floor taught it; None while nobody has watched sheen on it."""
        found = self._taught.get((coat.id, room)) if self.job.job.seen else None
        if found is None:
            return None
        now = self.conditions_in(room, at_min)
        return learned_span(self.job, coat, room, now, found, drop_s=drop_s)

    def _of_room(
        self,
        room: str,
        coat: SettledCoat,
        at_min: float,
        *,
        sunny: bool = False,
        drop_s: float | None = None,
    ) -> OpenTime:
        found = self.job.room(room)
        span, sample, factor = self._span(room, coat, at_min, sunny=sunny, drop_s=drop_s)
        learned = self._learned(room, coat, at_min, drop_s=drop_s)
        budget = edge_budget(
            span,
            sample_min=sample.sheen_loss_min if sample else None,
            sun=found.sun or sunny,
            draught=found.draught,
            learned=learned,
        )
        span = learned or span
        likely = factor * _finite(span.likely)
        return OpenTime(
            round(budget.value, 2),
            round(max(likely, budget.value), 2),
            round(max(factor * _finite(span.high), likely, budget.value), 2),
            budget.rank.value,
            budget.source,
        )


def _on_spot(
    one: RoomOpenTime,
    now: OpenTime,
    spot: Spot,
    polygon: PolygonGeometry,
    to_min: float | None,
) -> RoomOpenTime:
    return RoomOpenTime(
        one.room, one.from_min, now.low, now.likely, now.high, now.rank, now.source,
        polygon, to_min, spot.id,
    )  # fmt: skip


def lasting_of(job: SettledJob, weather: WeatherFile | Forecast | None) -> Lasting:
    """The clocks of a job: by the weather where some is given, its own readings first."""
    sunlight = sunlight_of(job.job, weather)
    if weather is None:
        return Lasting(job, sunlight=sunlight)
    start = datetime.fromisoformat(job.starts_at)
    us = job.job.wishes.units == "us"
    hours = weather.weather(starts_at=start, hours=_AHEAD_H, before_h=_BEFORE_H, us=us)
    before_h = int((start - hours.starts_at) / timedelta(hours=1))
    told = job.job.site.ground_c
    return Lasting(
        job,
        hours_at_slab(
            hours,
            readings=_readings(job.job.survey),
            house=house_of(job.job),
            before_h=before_h,
            ground_c=told if told is not None else weather.mean_air_c,
        ),
        sunlight,
    )


def _readings(survey: Survey) -> Readings:
    return Readings(survey.slab_c, survey.air_c, survey.rh_percent, survey.air_speed_m_s)


def _timed(sample: Sample | None) -> Timed | None:
    if sample is None or sample.sheen_loss_min is None:
        return None
    slab, air = sample.slab_c, sample.air_c
    known = slab if slab is not None else air
    conditions = None
    if known is not None:
        usual = Conditions()
        conditions = Conditions(
            slab if slab is not None else known,
            air if air is not None else known,
            sample.rh_percent if sample.rh_percent is not None else usual.rh_percent,
            sample.air_speed_m_s if sample.air_speed_m_s is not None else usual.air_speed_m_s,
        )
    return Timed(sample.sheen_loss_min, conditions, sample.m2_per_l, sample.drop_s)


def _finite(value: float | None) -> float:
    return _LONGEST_MIN if value is None else min(value, _LONGEST_MIN)
