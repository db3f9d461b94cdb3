"""The waits of a job as clocks: what is usual, the weather there is, and what this floor taught.

Each clock is a range, low, likely and high, that holds four times in five
(docs/clocks.md says how that was tried). What was watched on this floor, in
whatever room, moves it and narrows it.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import timedelta

from farwall.air.conditions import Conditions
from farwall.air.learned import Factor, Spread, Watched, factor
from farwall.air.limits import slab_verdict
from farwall.air.pace import sheen_loss_min
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
from farwall.evidence import Rank
from farwall.facts.job import Sighting
from farwall.facts.plan import Clock
from farwall.facts.settled import SettledCoat
from farwall.job.lasting import Lasting

RINSING_MIN = 180.0
"""Neutralising, scrubbing and rinsing before the floor can dry down: a guess, by the house."""


@dataclass(frozen=True)
class Waits:
    """The clocks of one job."""

    lasting: Lasting

    def dry(self, coat: SettledCoat, at_min: float, *, last: bool = False) -> Clock:
        """The wait from the end of this coat to the next, or of the last to neutralising."""
        return self._foretold(NEUTRALISE if last else RECOAT, coat, at_min)

    def open_time(self, coat: SettledCoat, at_min: float) -> Clock:
        """How long an edge of this coat stays live in the quickest room, from its first stroke.

        The range as it is; what a field is planned by is its prudent budget.
        """
        now = self.lasting.conditions(at_min)
        verdict = slab_verdict(surface_c=now.surface_c)
        if verdict.word == "no":
            return _no(coat.id, OPEN_TIME, verdict.reason, at_min)
        usual = min(
            self._sheen_min(coat, room.id, now) for room in self.lasting.job.job.floor.rooms
        )
        seen = [*self._sheen_seen(coat), *self._watched(OPEN_TIME, coat)]
        found = self._factor(OPEN_TIME, OPEN_TIME_SPREAD, seen)
        ends = [usual * one for one in (found.low, found.likely, found.high)]
        source = "common-practice, uno-1998, house-guess"
        return _clock(coat.id, OPEN_TIME, ends, self._ground(OPEN_TIME, source, found), at_min)

    def after(self, coat: SettledCoat, ends_min: float, dry: Clock) -> tuple[Clock, ...]:
        """What follows the last coat: dwell, dry-down, the sealer's next coat, traffic."""
        dried = _middle(dry, NEUTRALISE.longest_min)
        rinsed = ends_min + max(DWELL.usual_min, dried) + RINSING_MIN
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

    def _foretold(
        self, wait: Wait, coat: SettledCoat, at_min: float, *, begins: bool = False
    ) -> Clock:
        begins_min = at_min if begins else None
        verdict = slab_verdict(surface_c=self.lasting.conditions(at_min).surface_c)
        if verdict.word == "no":
            return _no(coat.id, wait.name, verdict.reason, begins_min)
        course = self._course(wait, at_min)
        found = self._factor(wait.name, wait.spread, list(self._watched(wait.name, coat)))
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

    def _watched(self, clock: str, coat: SettledCoat) -> Iterator[Watched]:
        """What was watched of this clock, and of its kin less surely, as shares of the usual."""
        for one, since_min in paired(self.lasting.job.job.seen):
            kin = clock in KIN and one.clock in KIN
            if one.clock != clock and not kin:
                continue
            share_of = self._sheen_share if one.clock == OPEN_TIME else self._share
            share = share_of(one, coat, one.after_min)
            since = share_of(one, coat, since_min) if since_min else 0.0
            own = one.clock == clock
            if not own:
                share, since = (kin_share(x, seen=one.clock, asked=clock) for x in (share, since))
            room = one.room or f"another spot, {one.after_min:g}"
            yield Watched(room, share, one.ended, since, 0.0 if own else KIN_BLUR)

    def _share(self, one: Sighting, coat: SettledCoat, minutes: float) -> float:
        wait = WAITS[one.clock]
        seen_on = next((c for c in self.lasting.job.coats if c.id == one.coat), coat)
        passed = steady(wait, self._conditions(one)).after(minutes)
        return passed / worth_min(wait, m2_per_l=seen_on.m2_per_l)

    def _sheen_share(self, one: Sighting, coat: SettledCoat, minutes: float) -> float:
        seen_on = next((c for c in self.lasting.job.coats if c.id == one.coat), coat)
        now = self._conditions(one)
        return minutes / self._sheen_min(seen_on, one.room, now, drop_s=one.drop_s)

    def _sheen_seen(self, coat: SettledCoat) -> Iterator[Watched]:
        """Samples whose sheen was timed, each in a spot of its own unless it names a room."""
        for one in coat.samples:
            if one.sheen_loss_min is None:
                continue
            told = Sighting("open time", one.sheen_loss_min, room=one.room, coat=coat.id,
                            slab_c=one.slab_c, air_c=one.air_c, rh_percent=one.rh_percent,
                            air_speed_m_s=one.air_speed_m_s, drop_s=one.drop_s)  # fmt: skip
            laid = coat if one.m2_per_l is None else replace(coat, m2_per_l=one.m2_per_l)
            now = self._conditions(told)
            usual = self._sheen_min(laid, one.room, now, drop_s=one.drop_s)
            yield Watched(one.room or f"sample {one.id}", one.sheen_loss_min / usual)

    def _sheen_min(
        self, coat: SettledCoat, room: str | None, now: Conditions, *, drop_s: float | None = None
    ) -> float:
        rooms = self.lasting.job.survey.rooms
        found = rooms.get(room) if room is not None else None
        if drop_s is None and found is not None and found.drop_told:
            drop_s = found.drop_s
        finish = found.finish if found is not None else None
        return sheen_loss_min(now, m2_per_l=coat.m2_per_l, drop_s=drop_s, finish=finish)[1]

    def _conditions(self, one: Sighting) -> Conditions:
        """Those of the watching; what was not told is taken from the first hour of the plan."""
        usual = self.lasting.conditions(0.0)

        def said(value: float | None, other: float) -> float:
            return other if value is None else value

        air_c = said(one.air_c, said(one.slab_c, usual.air_c))
        return Conditions(
            said(one.slab_c, air_c if one.air_c is not None else usual.surface_c),
            air_c,
            said(one.rh_percent, usual.rh_percent),
            said(one.air_speed_m_s, usual.air_speed_m_s),
        )


def paired(seen: Sequence[Sighting]) -> Iterator[tuple[Sighting, float]]:
    """Each sighting, and for an end the minute of the last look that found it unended (0: none).

    Looks of one clock, room and coat are one watching; a look that found it
    unended and was followed by the end is told with the end alone.
    """
    same: dict[tuple[str, str, str], list[Sighting]] = {}
    for one in seen:
        same.setdefault((one.clock, one.room or "", one.coat or ""), []).append(one)
    for looks in same.values():
        ends = [one for one in looks if one.ended]
        open_still = [one for one in looks if not one.ended]
        for one in ends:
            since = [other.after_min for other in open_still if other.after_min < one.after_min]
            yield one, max(since, default=0.0)
        last_end = max((one.after_min for one in ends), default=0.0)
        late = [one for one in open_still if one.after_min >= last_end]
        if late:
            yield max(late, key=lambda one: one.after_min), 0.0


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
