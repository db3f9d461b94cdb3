"""Jobs as the live day needs them: facts, plan and story, read once for each version."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Sequence
from concurrent.futures import Executor
from dataclasses import field
from datetime import datetime
from typing import Any

from farwall.errors import Unanswerable
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.facts.log import Kept
from farwall.facts.plan import Plan
from farwall.job.aside import of_the_floor
from farwall.job.daylight import sun_of
from farwall.nouns import dataclass
from farwall.readers.kept_json import kept_to_dict
from farwall.store.book import Book
from farwall.web.firm import FIRM, LESSONS, lessons_of
from farwall.web.hands import one_process
from farwall.web.work import Made, plan_of, rest_of

Json = dict[str, Any]
PLAN, OF, REST = "plan", "plan-of", "rest"
"""Kinds of documents: a job's plan, the version of facts it is of, the day laid anew."""
_HELD = 64


class NotPlanned(Unanswerable):
    """The plan of a job is being made, or cannot be."""


@dataclass(frozen=True)
class Planned:
    """A job with its plan, read."""

    job: Job
    plan: Plan


@dataclass
class LiveJobs:
    """What the routes of the live day ask. hands: who does the slow work."""

    book: Book
    make_hands: Callable[[], Executor] = one_process
    _hands: Executor | None = None
    _read: OrderedDict[tuple[str, int], Planned] = field(default_factory=OrderedDict)

    @property
    def hands(self) -> Executor:
        """Who does the slow work; begun when it is first needed."""
        if self._hands is None:
            self._hands = self.make_hands()
        return self._hands

    def planned(self, job: str) -> Planned:
        """The job with the plan of its newest facts. Raises NoSuchJob, NotPlanned."""
        version = self.book.versions(job)[-1].version
        found = self._read.get((job, version))
        if found is None:
            found = self._from_book(job, version)
            self._read[job, version] = found
            while len(self._read) > _HELD:
                self._read.popitem(last=False)
        return found

    def is_planned(self, job: str) -> bool:
        """Whether the book has the plan of the newest facts. Raises NoSuchJob."""
        version = self.book.versions(job)[-1].version
        of = self.book.document(OF, job)
        return of is not None and of["facts"] == version

    def make_plan(self, job: str) -> Made:
        """Plan the newest facts of a job and keep the plan; slow. Raises NoSuchJob."""
        version = self.book.versions(job)[-1].version
        facts, taught = self.book.facts(job, version), self.book.document(LESSONS, FIRM)
        made: Made = self.hands.submit(plan_of, facts, job, taught).result()
        if made.document is not None:
            self.book.put_document(PLAN, job, made.document)
        self.book.put_document(
            OF, job, {"facts": version, "faults": list(made.faults), "no": list(made.no)}
        )
        return made

    def lay_anew(self, job: str, *, clock: datetime) -> Made:
        """Lay the rest of a job's day anew from all that was entered, and keep it; slow."""
        found, every = self.planned(job), self.book.entries(job)
        place, kept = max((one.place for one in every), default=0), of_the_floor(every)
        document = self.book.document(PLAN, job) or {}
        told = [kept_to_dict(one) for one in kept]
        at_min = minute_of(found.plan, kept, clock)
        made: Made = self.hands.submit(
            rest_of, document, told, at_min, found.job.wishes.units, sun_of(found.job)
        ).result()
        rest = {"upto": place, "at_min": at_min, "faults": list(made.faults), "no": list(made.no)}
        self.book.put_document(REST, job, {**rest, "plan": made.document})
        return made

    def lessons(self) -> Lessons | None:
        """What the firm's closed jobs taught, as the book has it."""
        return lessons_of(self.book)

    def close(self) -> None:
        """Let the hands go."""
        if self._hands is not None:
            self._hands.shutdown(cancel_futures=True)

    def _from_book(self, job: str, version: int) -> Planned:
        from farwall.readers.job_json import job_from
        from farwall.readers.plan_json import plan_from

        of = self.book.document(OF, job)
        document = self.book.document(PLAN, job)
        if of is not None and of["facts"] == version and of["no"]:
            raise NotPlanned(f"{job} cannot be planned.", remedies=of["no"])
        if document is None or (of is not None and of["facts"] != version):
            remedy = "Ask again in some seconds."
            raise NotPlanned(f"The plan of {job} is being made.", remedies=[remedy])
        facts = job_from(self.book.facts(job, version), f"The job {job}")
        return Planned(facts, plan_from(document, f"The plan of {job}"))


def is_past(plan: Plan, clock: datetime) -> bool:
    """Whether the clock is more than a day beyond the plan's last field."""
    ends = max((field.end_min for field in plan.fields), default=0.0) + _DAY_MIN
    return (clock - datetime.fromisoformat(plan.starts_at)).total_seconds() / 60 > ends


def minute_of(plan: Plan, kept: Sequence[Kept], clock: datetime) -> float:
    """The minute of the plan that it is: the clock's on the plan's days, else the last entry's."""
    start = datetime.fromisoformat(plan.starts_at)
    ends = max((field.end_min for field in plan.fields), default=0.0) + _DAY_MIN
    passed = (clock - start).total_seconds() / 60
    if -_DAY_MIN <= passed <= ends:
        return passed
    at = [datetime.fromisoformat(one.entry.at) for one in kept]
    return max([0.0, *((one - start).total_seconds() / 60 for one in at)])


_DAY_MIN = 1440.0
