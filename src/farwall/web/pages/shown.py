"""What a page shows of a house: its newest plan, of which facts it is, what the checker says."""

from __future__ import annotations

import math
from collections import OrderedDict
from collections.abc import Callable
from dataclasses import field, replace
from datetime import UTC, datetime
from functools import cached_property
from itertools import count
from threading import Lock
from time import monotonic
from typing import Any

from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.aside import of_the_floor
from farwall.nouns import dataclass
from farwall.papers.drawing.scene import Storey, storeys
from farwall.papers.wall_clock import Units, plan_clock
from farwall.phrasebook import LANGUAGE, speaking, told
from farwall.store.book import Book
from farwall.web.firm import FIRM
from farwall.web.live_jobs import OF, PLAN, REST, NotPlanned, minute_of
from farwall.web.pages.course import Course
from farwall.web.pages.figures import Figures, figures_of
from farwall.web.pages.from_calendar import Days, days_of
from farwall.web.pages.nights import nights_of
from farwall.web.pages.said_clock import SaidClock, said_clock
from farwall.web.pages.went import Went, went

CALENDAR = "calendar"
"""Kind of document: the calendar of all houses, as the screen of the days keeps it."""
_HELD = 32
_MADE = 512
_CALENDAR_S = 15.0


@dataclass(frozen=True)
class Shown:
    """A plan with the version of the facts it is of, and what the checker found against it.

    went: the day as logged, None where nothing was entered. days: of the firm's calendar.
    """

    job: Job
    plan: Plan
    version: int
    faults: tuple[str, ...]
    went: Went | None = None
    days: Days = field(default_factory=dict)

    @property
    def units(self) -> Units:
        """The units that the job wishes for."""
        return self.job.wishes.units

    @property
    def name(self) -> str:
        """What people call the house."""
        return self.job.name or self.job.id

    @cached_property
    def floor_plan(self) -> Plan:
        """The plan that the floor shows: as the day went where it was logged."""
        return self.plan if self.went is None else self.went.plan

    @cached_property
    def clock(self) -> SaidClock:
        """Minutes of the plan as times."""
        return said_clock(plan_clock(self.plan, self.units))

    @cached_property
    def course(self) -> Course:
        """The house from survey to hand-over, as the day went."""
        went = self.went
        if went is None:
            return Course(self.job, self.plan, self.clock, days=self.days)
        entered = tuple((one.word, one.at_min) for one in went.story.happened)
        return Course(self.job, went.plan, self.clock, entered, went.now_min, self.days)

    @cached_property
    def first_course(self) -> Course:
        """The same as first planned."""
        if self.went is None:
            return self.course
        return Course(self.job, self.plan, self.clock, days=self.days)

    @cached_property
    def nights(self) -> tuple[tuple[float, float], ...]:
        """From sunset to sunrise, in minutes of the plan; none where the place is not known."""
        course = self.course
        return nights_of(self.job.place, self.clock, course.from_min, course.to_min)

    @cached_property
    def grounds(self) -> list[Storey]:
        """Its storeys; what is reckoned on them is kept."""
        return storeys(self.plan)

    @cached_property
    def kept_places(self) -> dict[tuple[Any, ...], Any]:
        """Where words may stand on its floors, once it was reckoned."""
        return {}

    @cached_property
    def figures(self) -> Figures:
        """What of it is told in a line."""
        return figures_of(self.plan)


@dataclass(frozen=True)
class State:
    """Where a house stands: its newest facts and name, the plan that is there, why there is none.

    fresh: the plan is of the newest facts. no: why the newest facts cannot be planned. names: what
    people call the rooms of which it speaks.
    """

    id: str
    version: int
    name: str
    shown: Shown | None
    fresh: bool
    no: tuple[str, ...]
    names: frozenset[str] = frozenset()

    @property
    def why_not(self) -> list[str]:
        """Why there is no plan, in the language that is spoken; rooms keep their names."""
        with speaking(LANGUAGE.get(), self.names):
            return [told(one) for one in self.no]


@dataclass
class Kept:
    """Plans read once and drawings made once, the oldest let go. Safe among threads."""

    book: Book
    clock: Callable[[], datetime] = lambda: datetime.now(UTC)
    _went: OrderedDict[tuple[Any, ...], Shown] = field(default_factory=OrderedDict)
    _read_calendar: tuple[float, dict[str, Any] | None] = (-math.inf, None)
    _plans: OrderedDict[tuple[str, int], Shown] = field(default_factory=OrderedDict)
    _made: OrderedDict[tuple[Any, ...], bytes] = field(default_factory=OrderedDict)
    _lock: Lock = field(default_factory=Lock)

    def state(self, job: str) -> State:
        """Where a house stands. Raises NoSuchJob, BookTrouble."""
        newest = self.book.versions(job)[-1]
        of = self.book.document(OF, job)
        no: tuple[str, ...] = ()
        if of is not None and of["no"]:
            no = tuple(of["no"]) if of["facts"] == newest.version else ()
            of = self._last_with_a_plan(job)
        shown = None
        if of is not None:
            shown = self._shown(job, int(of["facts"]), tuple(of["faults"]))
        if shown is not None:
            shown = self._as_it_went(job, shown)
        fresh = shown is not None and shown.version == newest.version
        names = _room_names(self.book.facts(job)) if no else frozenset[str]()
        return State(job, newest.version, newest.name, shown, fresh, no, names)

    def made(self, key: tuple[Any, ...], make: Callable[[], bytes]) -> bytes:
        """What was made under this key, or what is made now."""
        with self._lock:
            found = self._made.get(key)
        if found is None:
            found = make()
            with self._lock:
                self._made[key] = found
                while len(self._made) > _MADE:
                    self._made.popitem(last=False)
        return found

    def _as_it_went(self, job: str, shown: Shown) -> Shown:
        """With the day as logged, where something was entered."""
        kept = of_the_floor(self.book.entries(job))
        days = days_of(self._calendar(), job, shown.clock.starts_at)
        if not kept and not days:
            return shown
        rest = self.book.document(REST, job)
        now = round(minute_of(shown.plan, kept, self.clock())) if kept else 0
        place = max((one.place for one in kept), default=0)
        of_rest = rest["upto"] if rest is not None else None
        key = (job, shown.version, shown.plan.inputs_hash, place, of_rest, now, *days.items())
        with self._lock:
            found = self._went.get(key)
        if found is None:
            day = went(shown.plan, kept, now_min=now, rest=rest)
            found = replace(shown, went=day, days=days)
            with self._lock:
                self._went[key] = found
                while len(self._went) > _HELD:
                    self._went.popitem(last=False)
        return found

    def _calendar(self) -> dict[str, Any] | None:
        """The firm's calendar, read again now and then: it may be long."""
        read_at, found = self._read_calendar
        if monotonic() - read_at > _CALENDAR_S:
            found = self.book.document(CALENDAR, FIRM)
            self._read_calendar = monotonic(), found
        return found

    def _last_with_a_plan(self, job: str) -> dict[str, Any] | None:
        """What is noted of the last plan that was made, where the newest facts were refused."""
        last = None
        for number in count(1):
            of = self.book.document(OF, job, number)
            if of is None:
                return last
            if not of["no"]:
                last = of
        return last

    def _shown(self, job: str, planned: int, faults: tuple[str, ...]) -> Shown | None:
        with self._lock:
            found = self._plans.get((job, planned))
        if found is None:
            found = self._read(job, planned, faults)
        if found is not None:
            with self._lock:
                self._plans[job, planned] = found
                self._plans.move_to_end((job, planned))
                while len(self._plans) > _HELD:
                    self._plans.popitem(last=False)
        return found

    def _read(self, job: str, planned: int, faults: tuple[str, ...]) -> Shown | None:
        from farwall.readers.job_json import job_from
        from farwall.readers.plan_json import plan_from

        document = self.book.document(PLAN, job)
        if document is None:
            return None
        facts = job_from(self.book.facts(job, planned), f"The job {job}")
        return Shown(facts, plan_from(document, f"The plan of {job}"), planned, faults)


def _room_names(facts: dict[str, Any]) -> frozenset[str]:
    """What people call the rooms of facts that need not be a job that can be read."""
    rooms = dict(facts.get("floor") or {}).get("rooms") or ()
    return frozenset(str(one["name"]) for one in rooms if one.get("name"))


def planned(state: State) -> Shown:
    """The plan that is shown. Raises NotPlanned where there is none, with why not."""
    if state.shown is None:
        raise NotPlanned("There is no plan of this house yet.", remedies=state.why_not)
    return state.shown
