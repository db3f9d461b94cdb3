"""The waits of a job as clocks: what is usual, the weather there is, and what this floor taught.

Each clock is a range, low, likely and high, that holds four times in five
(docs/clocks-tried.md says how). What was watched on this floor, in
whatever room, moves it and narrows it.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from farwall.air.beside import NOTHING, Beside, carried_beside, spread_beside
from farwall.air.conditions import Conditions
from farwall.air.learned import Factor, Spread, Watched, factor
from farwall.air.limits import slab_verdict
from farwall.air.waits import (
    DRY_DOWN,
    DWELL,
    KIN,
    KIN_BLUR,
    NEUTRALISE,
    OPEN_TIME,
    OPEN_TIME_SPREAD,
    RECOAT,
    SEALER,
    TRAFFIC,
    WAITS,
    Course,
    Prescribed,
    Wait,
    kin_share,
    steady,
    through,
    worth_min,
)
from farwall.days.work_hours import DAY_MIN, EVENING_MIN, WORK_FROM_MIN, rinsing_min
from farwall.evidence import Rank
from farwall.facts.job import Sighting
from farwall.facts.plan import Clock
from farwall.facts.settled import SettledCoat
from farwall.floor.takeoff import take_off
from farwall.job.lasting import Lasting
from farwall.job.looks import paired
from farwall.job.sheen_seen import conditions_of, samples_timed, sheen_share, usual_sheen_min
from farwall.nouns import dataclass


def rinsed_min(starts_at: datetime, free_min: float, *, lasts_min: float) -> float:
    """When rinsing is over that may begin at a minute: nobody rinses at night.

    It lies from 7:30 to 18:30 as in the calendar (a guess), else it begins next morning.
    """
    free = starts_at + timedelta(minutes=free_min)
    of_day = free.hour * 60.0 + free.minute
    late = of_day + lasts_min > EVENING_MIN
    morning = WORK_FROM_MIN + (DAY_MIN if late else 0.0)
    return free_min + max(morning - of_day, 0.0) + lasts_min


@dataclass(frozen=True)
class Waits:
    """The clocks of one job.

    today: those of its sightings that were seen on the day itself. What is seen of the very coat
    that is asked about shares its mix and its hours, and tells more than another day's.
    """

    lasting: Lasting
    today: tuple[Sighting, ...] = ()

    def dry(self, coat: SettledCoat, at_min: float, *, last: bool = False) -> Clock:
        """The wait from the end of this coat to the next, or of the last to neutralising."""
        return self._foretold(NEUTRALISE if last else RECOAT, coat, at_min)

    def open_time(self, coat: SettledCoat, at_min: float) -> Clock:
        """How long an edge of this coat stays live in the quickest room, from its first stroke.

        The range as it is; what a field is planned by is its prudent budget.
        """
        rooms = {
            room.id: self.lasting.conditions_in(room.id, at_min)
            for room in self.lasting.job.job.floor.rooms
        }
        slabs = [now.surface_c for now in (self.lasting.conditions(at_min), *rooms.values())]
        for slab_c in (min(slabs), max(slabs)):
            verdict = slab_verdict(surface_c=slab_c)
            if verdict.word == "no":
                return _no(coat.id, OPEN_TIME, verdict.reason, at_min)
        usual = min(self._sheen_min(coat, room, now) for room, now in rooms.items())
        timed = samples_timed(self.lasting.job, coat, usual=self._first_hour)
        seen = [*timed, *self._watched(OPEN_TIME, coat)]
        found = self._factor(OPEN_TIME, OPEN_TIME_SPREAD, seen)
        ends = [usual * one for one in (found.low, found.likely, found.high)]
        source = "common-practice, uno-1998, house-guess"
        return _clock(coat.id, OPEN_TIME, ends, self._ground(OPEN_TIME, source, found), at_min)

    def after(self, coat: SettledCoat, ends_min: float, dry: Clock) -> tuple[Clock, ...]:
        """What follows the last coat: dwell, dry-down, the sealer's next coat, traffic."""
        dried = _middle(dry, NEUTRALISE.longest_min)
        rinsed = self._rinsed(ends_min + max(DWELL.usual_min, dried))
        down = self._foretold(DRY_DOWN, coat, rinsed, begins=True)
        sealed = rinsed + _middle(down, DRY_DOWN.longest_min)
        again = self._foretold(SEALER, coat, sealed, begins=True)
        twice = sealed + _middle(again, SEALER.longest_min)
        return (
            _prescribed(coat.id, DWELL, ends_min),
            down,
            again,
            _prescribed(coat.id, TRAFFIC, twice),
        )

    def _rinsed(self, free_min: float) -> float:
        """When rinsing is over that may begin at a minute of the plan."""
        job = self.lasting.job.job
        people = 2 if job.crew.helper or job.crew.sprayers > 1 else 1
        lasts = rinsing_min(area_m2=take_off(job.floor).net_m2, people=people)
        return rinsed_min(self.lasting.starts_at, free_min, lasts_min=lasts)

    def factor(self, wait: Wait, coat: SettledCoat, pace: float = 0.0) -> Factor:
        """What this floor taught of a wait after this coat, with its range.

        pace: of the wait that is asked about; 0 where it is not known, and then
        nothing is carried over (`air.waits.carried`).
        """
        seen = list(self._watched(wait.name, coat, pace))
        return self._factor(wait.name, self._surer(wait), seen)

    def pace(self, wait: Wait, at_min: float) -> float:
        """The mean pace of a wait of usual length that begins then; 1 on a mild day."""
        return self._course(wait, at_min).after(wait.usual_min) / wait.usual_min

    def _foretold(
        self, wait: Wait, coat: SettledCoat, at_min: float, *, begins: bool = False
    ) -> Clock:
        begins_min = at_min if begins else None
        verdict = slab_verdict(surface_c=self.lasting.conditions(at_min).surface_c)
        if verdict.word == "no":
            return _no(coat.id, wait.name, verdict.reason, begins_min)
        course = self._course(wait, at_min)
        found = self.factor(wait, coat, self.pace(wait, at_min))
        worth = worth_min(wait, m2_per_l=coat.m2_per_l)
        ends = [course.until(worth * one) for one in (found.low, found.likely, found.high)]
        first = ends[0] if ends[0] is not None else wait.longest_min
        ground = self._ground(wait.name, wait.source, found)
        return _clock(coat.id, wait.name, [first, *ends[1:]], ground, begins_min)

    def _factor(self, clock: str, spread: Spread, watched: Sequence[Watched]) -> Factor:
        """The floor's factor, about what this firm's closed jobs taught where there are any."""
        firm = self.lasting.job.firm_waits.get(clock)
        if firm is None:
            return factor(spread, watched)
        own = Spread(firm.floor, firm.room, spread.watch)
        shares = [
            replace(one, share=one.share / firm.usual, since=one.since / firm.usual)
            for one in watched
        ]
        found = factor(own, shares)
        low, likely, high = (firm.usual * end for end in (found.low, found.likely, found.high))
        return Factor(low, likely, high, found.seen)

    def _ground(self, clock: str, source: str, found: Factor) -> tuple[Rank, str]:
        firm = self.lasting.job.firm_waits.get(clock)
        if firm is None:
            return _ground(source, found)
        jobs = "1 job" if firm.jobs == 1 else f"{firm.jobs} jobs"
        return Rank.LEARNED, f"{_ground(source, found)[1]}, learned from {jobs}"

    def _course(self, wait: Wait, at_min: float) -> Course:
        hours = self.lasting.hours
        if not hours:
            return steady(wait, self.lasting.conditions(at_min))
        begins = self.lasting.starts_at + timedelta(minutes=at_min)
        return through(wait, hours, begins=begins)

    def _watched(self, clock: str, coat: SettledCoat, pace: float = 0.0) -> Iterator[Watched]:
        """What was watched of this clock, and of its kin less surely, as shares of the usual.

        pace: of the wait that is asked about, to which what was seen is carried over.
        """
        for one, since_min in paired(self.lasting.job.job.seen):
            kin = clock in KIN and one.clock in KIN
            if one.clock != clock and not kin:
                continue
            share_of = self._sheen_share if one.clock == OPEN_TIME else self._share
            share = share_of(one, coat, one.after_min)
            since = share_of(one, coat, since_min) if since_min else 0.0
            if one.clock in WAITS:
                wait = WAITS[one.clock]
                seen, read = wait.pace(self._conditions(one)), self._beside(one)
                share, since = (
                    carried_beside(wait, x, pace_seen=seen, pace_asked=pace, beside=read)
                    for x in (share, since)
                )
            own = one.clock == clock
            if not own:
                share, since = (kin_share(x, seen=one.clock, asked=clock) for x in (share, since))
            room = one.room or f"another spot, {one.after_min:g}"
            now = own and one.coat == coat.id and one in self.today
            yield Watched(room, share, one.ended, since, 0.0 if own else KIN_BLUR, now)

    def _beside(self, one: Sighting) -> Beside:
        """What was read at the watching and again for the coat; one reading for both is one."""
        now, waits = self.lasting.job.job.survey, WAITS.get(one.clock)
        if waits is None or waits.name not in {RECOAT.name, NEUTRALISE.name}:
            return NOTHING
        air = one.air_read and None not in {one.air_speed_m_s, now.air_speed_m_s}
        tile = bool(one.tile_kg_m2_h and now.tile_kg_m2_h)
        tile = tile and one.tile_kg_m2_h != now.tile_kg_m2_h
        return Beside(
            air=air and one.air_speed_m_s != now.air_speed_m_s,
            tile_seen=one.tile_kg_m2_h if tile else None,
            tile_asked=now.tile_kg_m2_h if tile else None,
        )

    def _surer(self, wait: Wait) -> Spread:
        """The wait's spread, less from one occasion to the next where all seen was read beside."""
        own = [one for one in self.lasting.job.job.seen if one.clock == wait.name]
        read = {self._beside(one) for one in own}
        kinds = {(one.air, one.tile) for one in read}
        if len(kinds) != 1 or any(
            one.clock in KIN and one.clock != wait.name for one in self.lasting.job.job.seen
        ):
            return wait.spread
        return spread_beside(wait, next(iter(read))).spread

    def seen_of(self, clock: str, coat: SettledCoat) -> Iterator[Watched]:
        """What was watched of this very clock on this coat, as shares at its own conditions.

        What names no coat counts for the first.
        """
        first = self.lasting.job.coats[0].id
        for one, since_min in paired(self.lasting.job.job.seen):
            if one.clock != clock or (one.coat or first) != coat.id:
                continue
            share_of = self._sheen_share if clock == OPEN_TIME else self._share
            since = share_of(one, coat, since_min) if since_min else 0.0
            yield Watched(one.room or "", share_of(one, coat, one.after_min), one.ended, since)

    def _share(self, one: Sighting, coat: SettledCoat, minutes: float) -> float:
        wait = WAITS[one.clock]
        seen_on = next((c for c in self.lasting.job.coats if c.id == one.coat), coat)
        passed = steady(wait, self._conditions(one)).after(minutes)
        return passed / worth_min(wait, m2_per_l=seen_on.m2_per_l)

    def _sheen_share(self, one: Sighting, coat: SettledCoat, minutes: float) -> float:
        return sheen_share(self.lasting.job, one, coat, minutes, usual=self._first_hour)

    def _sheen_min(self, coat: SettledCoat, room: str | None, now: Conditions) -> float:
        return usual_sheen_min(self.lasting.job, coat, room, now)

    def _conditions(self, one: Sighting) -> Conditions:
        return conditions_of(one, usual=self._first_hour)

    @property
    def _first_hour(self) -> Conditions:
        return self.lasting.conditions(0.0)


def _middle(clock: Clock, longest_min: float) -> float:
    return clock.likely_min if clock.likely_min is not None else longest_min


def _ground(source: str, found: Factor) -> tuple[Rank, str]:
    if not found.seen:
        return Rank.PRACTICE, source
    times = "once" if found.seen == 1 else f"{found.seen} times"
    return Rank.LEARNED, f"{source}, watched {times} on this floor"


def _prescribed(coat: str, wait: Prescribed, begins_min: float) -> Clock:
    ends = [wait.low_min, wait.usual_min, wait.high_min]
    return _clock(coat, wait.name, ends, (wait.rank, wait.source), begins_min)


def _no(coat: str, name: str, reason: str, begins_min: float | None) -> Clock:
    return Clock(coat, name, 0.0, None, None, Rank.PRACTICE.value, reason, _shown(begins_min))


def _clock(
    coat: str,
    name: str,
    ends: Sequence[float | None],
    ground: tuple[Rank, str],
    begins_min: float | None,
) -> Clock:
    low, likely, high = map(_shown, ends)
    assert low is not None
    return Clock(coat, name, low, likely, high, ground[0].value, ground[1], _shown(begins_min))


def _shown(value: float | None) -> float | None:
    return None if value is None or not math.isfinite(value) else round(value, 1)
