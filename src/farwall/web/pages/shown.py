"""What a page shows of a house: its newest plan, of which facts it is, what the checker says."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable
from dataclasses import dataclass, field
from functools import cached_property
from itertools import count
from threading import Lock
from typing import Any

from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.papers.drawing.scene import Storey, storeys
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.store.book import Book
from farwall.web.live_jobs import OF, PLAN
from farwall.web.pages.figures import Figures, figures_of

_HELD = 32
_MADE = 512


@dataclass(frozen=True)
class Shown:
    """A plan with the version of the facts it is of, and what the checker found against it."""

    job: Job
    plan: Plan
    version: int
    faults: tuple[str, ...]

    @property
    def units(self) -> Units:
        """The units that the job wishes for."""
        return self.job.wishes.units

    @property
    def name(self) -> str:
        """What people call the house."""
        return self.job.name or self.job.id

    @cached_property
    def clock(self) -> WallClock:
        """Minutes of the plan as times."""
        return plan_clock(self.plan, self.units)

    @cached_property
    def grounds(self) -> list[Storey]:
        """Its storeys; what is reckoned on them is kept."""
        return storeys(self.plan)

    @cached_property
    def figures(self) -> Figures:
        """What of it is told in a line."""
        return figures_of(self.plan)


@dataclass(frozen=True)
class State:
    """Where a house stands: its newest facts and name, the plan that is there, why there is none.

    fresh: the plan is of the newest facts. no: why the newest facts cannot be planned.
    """

    id: str
    version: int
    name: str
    shown: Shown | None
    fresh: bool
    no: tuple[str, ...]


@dataclass
class Kept:
    """Plans read once and drawings made once, the oldest let go. Safe among threads."""

    book: Book
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
        fresh = shown is not None and shown.version == newest.version
        return State(job, newest.version, newest.name, shown, fresh, no)

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
