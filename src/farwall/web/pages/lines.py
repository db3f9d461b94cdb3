"""A house of the list in a sentence: when, how large, what is tight."""

from __future__ import annotations

from collections import OrderedDict
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

import shapely

from farwall.facts.default_table import STARTS_AT
from farwall.facts.job import Job
from farwall.papers.wall_clock import Units
from farwall.papers.words import area
from farwall.store.book import Book
from farwall.store.nouns import JobLine
from farwall.web.live_jobs import OF, PLAN
from farwall.web.pages.figures import Figures, figures_in
from farwall.web.pages.moment_words import named
from farwall.web.words import LANGUAGE, said

_HELD = 2000


@dataclass(frozen=True)
class Line:
    """A house of the list: where it is, its name, and the rest of its sentence."""

    id: str
    name: str
    told: str


@dataclass
class Lines:
    """Sentences of houses, each made once for a version of its facts and of its plan."""

    book: Book
    _held: OrderedDict[tuple[str, int, int, str], str] = field(default_factory=OrderedDict)

    def page(self, *, limit: int, after: str = "") -> tuple[list[Line], bool]:
        """A page of houses, the newest first, and whether there are more. Raises NoSuchJob."""
        found = self.book.jobs(limit=limit + 1, after=after)
        return [self._line(one) for one in found[:limit]], len(found) > limit

    def _line(self, one: JobLine) -> Line:
        of = self.book.document(OF, one.id)
        planned = int(of["facts"]) if of is not None else 0
        key = (one.id, one.versions, planned, LANGUAGE.get())
        told = self._held.get(key)
        if told is None:
            told = self._held[key] = self._told(one, of)
            while len(self._held) > _HELD:
                self._held.popitem(last=False)
        parts = [told]
        if one.closed:
            parts.append(said("line-closed"))
        elif one.entries:
            few = one.entries == 1
            parts.append(said("line-entry") if few else said("line-entries", n=one.entries))
        return Line(one.id, one.name or one.id, "; ".join(parts))

    def _told(self, one: JobLine, of: dict[str, Any] | None) -> str:
        from farwall.readers.job_json import job_from

        job = job_from(self.book.facts(one.id), f"The job {one.id}")
        return f"{facts_told(job)}; {self._plan_told(one, of)}"

    def _plan_told(self, one: JobLine, of: dict[str, Any] | None) -> str:
        if of is None:
            return said("line-not-planned")
        if of["facts"] != one.versions:
            return said("line-older-plan")
        if of["no"]:
            return said("line-no")
        figures = self._figures(one)
        return said("line-not-planned") if figures is None else figures_told(figures)

    def _figures(self, one: JobLine) -> Figures | None:
        document = self.book.document(PLAN, one.id)
        return None if document is None else figures_in(document)


def facts_told(job: Job) -> str:
    """`planned for 14 May, 10 rooms, 1,435 ft²`."""
    units: Units = job.wishes.units
    told = area(_to_stain_m2(job), units)
    rooms = len(job.floor.rooms)
    size = said("line-room" if rooms == 1 else "line-rooms", rooms=rooms, area=told)
    if not job.starts_at or job.starts_at == STARTS_AT:
        return f"{said('line-day-open')}, {size}"
    return f"{said('line-planned', day=day_told(job.starts_at))}, {size}"


def _to_stain_m2(job: Job) -> float:
    """The rooms with their thresholds, less what is kept dry."""
    sills = [one.threshold.shape for one in job.floor.openings if one.threshold is not None]
    rooms = shapely.union_all([*(room.polygon.shape for room in job.floor.rooms), *sills])
    dry = shapely.union_all([thing.polygon.shape for thing in job.floor.fixtures])
    return float(shapely.difference(rooms, dry).area)


def day_told(starts_at: str) -> str:
    """`14 May 2026`."""
    start = datetime.fromisoformat(starts_at)
    month = said(f"month-{start.month}")
    return said("day-long", day=start.day, month=month, year=start.year)


def figures_told(figures: Figures) -> str:
    """What the plan came to, in a few words."""
    if figures.refused:
        return said("line-refused", rooms=named(list(figures.refused)))
    rooms = named(list(figures.tightest))
    if figures.spare_min < 0:
        return said("line-late", room=rooms, late=f"{-figures.spare_min:.1f}")
    if figures.tight:
        return said("line-tight", room=rooms, spare=f"{figures.spare_min:.1f}")
    return said("line-fits", spare=f"{figures.spare_min:.1f}")
