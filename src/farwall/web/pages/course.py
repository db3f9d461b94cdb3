"""The course of a house from survey to hand-over: what is done, sprayed, waited for, planned.

Minutes count from the plan's start. Spraying and waits are the plan's own. The work before and
after lies in the calendar's hours with its usual labour (`days.practice`: common practice and
guesses), each step at the first working hour after the likely end of what it waits for.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from typing import Literal

from farwall.air.sealers import limits_of
from farwall.days.practice import (
    DAY_MIN,
    EVENING_MIN,
    MILESTONES,
    WORK_FROM_MIN,
    WORK_UNTIL_MIN,
    chain,
    rinsing_min,
    step_min,
)
from farwall.facts.job import Job
from farwall.facts.plan import Clock, Field, Plan
from farwall.floor.takeoff import take_off
from farwall.web.pages.said_clock import SaidClock

Kind = Literal["done", "sprayed", "planned"]
"""done: facts hold it, its day is not told · sprayed: by the plan's own minutes · planned."""
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
    """The whole course of a house on the tape."""

    job: Job
    plan: Plan
    clock: SaidClock

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
        for clock in self._later:
            begins = clock.begins_min or 0.0
            if clock.name == _SEALER:
                begins = ends.get(("seal", 1), begins)
            elif clock.name == _TRAFFIC:
                begins = ends.get(("seal", self._seal_coats), begins)
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
        midnight = -(self.clock.starts_at.hour * 60.0 + self.clock.starts_at.minute)
        mask = self._back(midnight, self._lasts["mask"])
        clean = self._back(_midnight(mask, midnight), self._lasts["clean"])
        first = _midnight(clean, midnight)
        survey = self.job.survey
        known = {
            "survey": survey.drop_s is not None or survey.slab_c is not None,
            "samples": bool(self.job.samples),
            "signed": bool(survey.sample_signed),
        }
        days = dict(zip(("sheet", *known), (day for day, _ in MILESTONES), strict=True))
        told = [
            Piece(
                key, "done" if known[key] else "planned",
                first + days[key] * DAY_MIN + WORK_FROM_MIN,
                first + days[key] * DAY_MIN + WORK_UNTIL_MIN,
            )
            for key in known
        ]  # fmt: skip
        return (
            *told,
            Piece("clean", "planned", clean, clean + self._over(self._lasts["clean"])),
            Piece("mask", "planned", mask, mask + self._over(self._lasts["mask"])),
        )

    def _back(self, until: float, lasts: float) -> float:
        """When work of so many minutes begins that is over on the working day before a midnight."""
        day = WORK_UNTIL_MIN - WORK_FROM_MIN
        whole = -(-lasts // day)
        return until - whole * DAY_MIN + WORK_FROM_MIN

    def _over(self, lasts: float) -> float:
        """Minutes on the clock from a start in the morning, with the nights between."""
        day = WORK_UNTIL_MIN - WORK_FROM_MIN
        nights = -(-lasts // day) - 1
        return lasts + nights * (DAY_MIN - day)

    @cached_property
    def _after(self) -> tuple[Piece, ...]:
        down = next((one for one in self._later if one.name == _DRY_DOWN), None)
        if down is None or down.begins_min is None:
            return ()
        area = take_off(self.job.floor).net_m2
        rinse = rinsing_min(area_m2=area, people=self._people)
        found = [Piece("rinse", "planned", down.begins_min - rinse, down.begins_min)]
        free = down.begins_min + (down.likely_min or down.low_min)
        again = next((one for one in self._later if one.name == _SEALER), None)
        between = (again.likely_min or again.low_min) if again is not None else DAY_MIN
        for n in range(1, self._seal_coats + 1):
            begins = self._at_work(free, self._lasts["seal-1"])
            found.append(Piece("seal", "planned", begins, begins + self._lasts["seal-1"], n))
            free = found[-1].to_min + between
        traffic = next((one for one in self._later if one.name == _TRAFFIC), None)
        shoes = (traffic.likely_min or traffic.low_min) if traffic is not None else DAY_MIN
        last = self._at_work(found[-1].to_min + shoes, self._lasts["hand-over"])
        found.append(Piece("hand-over", "planned", last, last + self._lasts["hand-over"]))
        return tuple(found)

    def _at_work(self, free_min: float, lasts: float) -> float:
        """The first minute from then on at which so many minutes fit before the evening."""
        of_day = (free_min + self.clock.starts_at.hour * 60 + self.clock.starts_at.minute) % DAY_MIN
        if of_day < WORK_FROM_MIN:
            return free_min + WORK_FROM_MIN - of_day
        if of_day + lasts > EVENING_MIN:
            return free_min + DAY_MIN - of_day + WORK_FROM_MIN
        return free_min


def _midnight(minute: float, any_midnight: float) -> float:
    """The midnight before a minute."""
    return any_midnight + (minute - any_midnight) // DAY_MIN * DAY_MIN
