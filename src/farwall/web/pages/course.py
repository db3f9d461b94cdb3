"""The course of a house from survey to hand-over: what is done, sprayed, waited for, planned.

Minutes count from the plan's start. Spraying and waits are the plan's own. The work before and
after lies in the calendar's hours with its usual labour (`days.practice`: common practice and
guesses), Monday to Friday, each step at the first working hour after the likely end of what it
waits for.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import field
from functools import cached_property
from typing import Literal

from farwall.air.sealers import limits_of
from farwall.days.practice import MILESTONES, chain, step_min
from farwall.days.work_hours import DAY_MIN, WORK_FROM_MIN, WORK_UNTIL_MIN, rinsing_min
from farwall.facts.job import Job
from farwall.facts.plan import Clock, Field, Plan
from farwall.floor.takeoff import take_off
from farwall.nouns import dataclass
from farwall.web.pages.from_calendar import Days
from farwall.web.pages.said_clock import SaidClock
from farwall.web.pages.working_days import WorkingDays

Kind = Literal["done", "sprayed", "planned", "happened"]
"""done: facts hold it, its day is not told · sprayed: by the plan's own minutes · planned ·
happened: as entered."""
_SAID_BY = {"seal": "sealed", "hand-over": "handed-over"}
_DRY_DOWN, _SEALER, _TRAFFIC = "dry-down before sealing", "next coat of sealer", "traffic in shoes"
_OPEN_TIME = "open time"
_TAIL_MIN = 240.0


@dataclass(frozen=True)
class Piece:
    """A piece of work on the tape. key: what it is (`clean`, `coat`, ...) · number: which of them.

    fields: of a coat, in their order.
    """

    key: str
    kind: Kind
    from_min: float
    to_min: float
    number: int = 0
    fields: tuple[Field, ...] = ()


@dataclass(frozen=True)
class Awaited:
    """A wait and the minute from which it runs."""

    begins_min: float
    clock: Clock

    @property
    def ends_min(self) -> float:
        """When it is over at the latest, or as far as it is drawn where it has no end."""
        told = self.clock.high_min
        if told is None:
            told = (self.clock.likely_min or self.clock.low_min) + _TAIL_MIN
        return self.begins_min + told


@dataclass(frozen=True)
class Course:
    """The whole course of a house on the tape.

    entered: words of the log with their minutes; what lies after the coats is then as entered, and
    what is not entered by `now_min` still lies ahead. days: of the firm's calendar, by step; where
    it has a step that is still planned, that is where it stands.
    """

    job: Job
    plan: Plan
    clock: SaidClock
    entered: tuple[tuple[str, float], ...] = ()
    now_min: float = -math.inf
    days: Days = field(default_factory=dict)

    @cached_property
    def coats(self) -> tuple[Piece, ...]:
        """The coats of stain, in order."""
        found = []
        for n, coat in enumerate(dict.fromkeys(f.coat for f in self.plan.fields), 1):
            mine = sorted((f for f in self.plan.fields if f.coat == coat), key=lambda f: f.order)
            ends = max(field.end_min for field in mine)
            found.append(
                Piece("coat", "sprayed", min(f.start_min for f in mine), ends, n, tuple(mine))
            )
        return tuple(found)

    @cached_property
    def pieces(self) -> tuple[Piece, ...]:
        """All work, in order."""
        return (*self._before, *self.coats, *self._after)

    @cached_property
    def waits(self) -> tuple[Awaited, ...]:
        """All waits, each from the minute at which what it follows ends."""
        found = []
        for piece in self.coats:
            found += [
                Awaited(piece.to_min, clock) for clock in self.plan.clocks
                if clock.coat == piece.fields[0].coat and clock.begins_min is None
            ]  # fmt: skip
        ends = {(one.key, one.number): one.to_min for one in self._after}
        after = {
            _DRY_DOWN: ("rinse", 0), _SEALER: ("seal", 1), _TRAFFIC: ("seal", self._seal_coats),
        }  # fmt: skip
        for clock in self._later:
            begins = ends.get(after.get(clock.name, ("", 0)), clock.begins_min or 0.0)
            found.append(Awaited(begins, clock))
        return tuple(found)

    @cached_property
    def from_min(self) -> float:
        """The first minute of the tape."""
        return min([0.0, *(one.from_min for one in self.pieces)])

    @cached_property
    def to_min(self) -> float:
        """The last minute of the tape."""
        ends = [one.to_min for one in self.pieces]
        return max([60.0, *ends, *(one.ends_min for one in self.waits)])

    def piece(self, key: str, number: int = 0) -> Piece | None:
        """A piece of work by its key."""
        return next((p for p in self.pieces if (p.key, p.number) == (key, number)), None)

    @property
    def _days(self) -> WorkingDays:
        return WorkingDays(self.clock)

    @property
    def _last(self) -> float:
        return max((piece.to_min for piece in self.coats), default=0.0)

    @property
    def _later(self) -> Iterator[Clock]:
        """The clocks that follow the last coat."""
        for clock in self.plan.clocks:
            # an open time is told as a clock that begins with its coat: no wait
            told = clock.begins_min is not None and clock.name != _OPEN_TIME
            if told and (clock.begins_min or 0.0) >= self._last - 1:
                yield clock

    @property
    def _seal_coats(self) -> int:
        return limits_of(self.job.sealer).coats

    @cached_property
    def _lasts(self) -> dict[str, float]:
        """Minutes of each step of the calendar's chain, likely."""
        area, people = take_off(self.job.floor).net_m2, self._people
        return {
            one.id: step_min(one, "likely", area_m2=area, people=people)
            for one in chain(1, seal_coats=1)
        }

    @property
    def _people(self) -> int:
        return 2 if self.job.crew.helper or self.job.crew.sprayers > 1 else 1

    @cached_property
    def _before(self) -> tuple[Piece, ...]:
        if not self.coats:
            return ()
        midnight = self._days.midnight(0.0)
        mask = self._morning_work("mask", midnight)
        clean = self._morning_work("clean", self._days.midnight(mask.from_min))
        first = self._days.midnight(clean.from_min)
        survey = self.job.survey
        known = {
            "survey": survey.drop_s is not None or survey.slab_c is not None,
            "samples": bool(self.job.samples),
            "signed": bool(survey.sample_signed),
        }
        days = dict(zip(("sheet", *known), (day for day, _ in MILESTONES), strict=True))
        told = []
        for key, done in known.items():
            at = self._days.working_day(first + days[key] * DAY_MIN + WORK_FROM_MIN)
            until = at + WORK_UNTIL_MIN - WORK_FROM_MIN
            told.append(Piece(key, "done" if done else "planned", at, until))
        return (*told, clean, mask)

    def _morning_work(self, key: str, until: float) -> Piece:
        """Work before the coats: on the calendar's days, else on the last working days before."""
        if key in self.days:
            return Piece(key, "planned", *self.days[key])
        begins = self._days.back(until, self._lasts[key])
        return Piece(key, "planned", begins, self._days.over(begins, self._lasts[key]))

    @cached_property
    def _after(self) -> tuple[Piece, ...]:
        down = next((one for one in self._later if one.name == _DRY_DOWN), None)
        if down is None or down.begins_min is None:
            return ()
        found = [self._rinse(down.begins_min)]
        free = found[0].to_min + (down.likely_min or down.low_min)
        between = self._likely(_SEALER)
        for n in range(1, self._seal_coats + 1):
            found.append(self._step("seal", free, self._lasts["seal-1"], n))
            free = found[-1].to_min + between
        shoes = found[-1].to_min + self._likely(_TRAFFIC)
        return (*found, self._step("hand-over", shoes, self._lasts["hand-over"]))

    def _likely(self, name: str) -> float:
        clock = next((one for one in self._later if one.name == name), None)
        return DAY_MIN if clock is None else clock.likely_min or clock.low_min

    def _rinse(self, until: float) -> Piece:
        """From neutralising to the last rinse: as entered, or as the dry-down has it."""
        lasts = rinsing_min(area_m2=take_off(self.job.floor).net_m2, people=self._people)
        begun, ended = self._entered("neutralised"), self._entered("rinsed")
        if ended:
            return Piece("rinse", "happened", min([*begun, *ended]), ended[-1])
        start = until - lasts
        days = self.days.get("neutralise")
        if begun:
            start = begun[0]
        elif days is not None and days[0] >= max(self._last, self.now_min):
            return Piece("rinse", "planned", *days)
        elif start < self.now_min:
            start = self._days.at_work(self.now_min, lasts)
        return Piece("rinse", "planned", start, max(start + lasts, self.now_min))

    def _step(self, key: str, free: float, lasts: float, number: int = 0) -> Piece:
        """A step after the rinse: as entered, else at the first working hour that is free."""
        told = self._entered(_SAID_BY[key])
        place = max(number, 1)
        if len(told) >= place:
            return Piece(key, "happened", told[place - 1], told[place - 1], number)
        days = self.days.get(f"{key}-{number}" if number else key)
        if days is not None and days[0] >= max(self._last, self.now_min):
            return Piece(key, "planned", *days, number)
        begins = self._days.at_work(max(free, self.now_min), lasts)
        return Piece(key, "planned", begins, begins + lasts, number)

    def _entered(self, word: str) -> list[float]:
        """When a word was entered, after the last coat."""
        return [at for told, at in self.entered if told == word and at >= self._last]
