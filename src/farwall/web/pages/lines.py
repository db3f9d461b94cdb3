"""A house of the list in a sentence: when, how large, what is tight."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable
from dataclasses import field
from datetime import UTC, datetime
from typing import Any

import shapely

from farwall.errors import Refused
from farwall.facts.default_table import STARTS_AT
from farwall.facts.job import Job
from farwall.floor.thresholds import join_thresholds
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.papers.words import area
from farwall.store.book import Book
from farwall.store.nouns import JobLine, NoSuchJob
from farwall.web.firm import FIRM
from farwall.web.live_jobs import OF, PLAN
from farwall.web.pages.figures import Figures, figures_in
from farwall.web.pages.moment_words import named
from farwall.web.pages.next_thing import Known, next_told
from farwall.web.pages.where_stands import FILTERS, Standing, WhereStands, plainly
from farwall.web.words import LANGUAGE, said

CALENDAR = "calendar"
"""Kind of document: the calendar that stands, with the houses in it."""
_HELD = 2000


@dataclass(frozen=True)
class Line:
    """A house of the list: where it is, its name, what comes next, and the rest of its sentence."""

    id: str
    name: str
    next: str
    told: str


@dataclass(frozen=True)
class Sought:
    """What the list is asked for: words of names, a filter, behind which house, how many."""

    words: str = ""
    chosen: str = ""
    after: str = ""
    most: int = 50


@dataclass(frozen=True)
class Found:
    """A page of the list: its lines, whether there are more, how many pass each filter."""

    lines: tuple[Line, ...]
    more: bool
    counts: dict[str, int]
    all: int


@dataclass
class Lines:
    """Sentences of houses, each made once for a version of its facts and of its plan."""

    book: Book
    clock: Callable[[], datetime] = lambda: datetime.now(UTC)
    _held: OrderedDict[tuple[str, int, int, str], tuple[str, Units]] = field(
        default_factory=OrderedDict
    )
    _stands: WhereStands = field(init=False)

    def __post_init__(self) -> None:
        self._stands = WhereStands(self.book)

    def page(self, sought: Sought) -> Found:
        """A page of houses, the newest first. Raises NoSuchJob for an `after` that is none."""
        today = self.clock().date()
        every = self._stands.all()
        parts = plainly(sought.words).split()
        named = [one for one in every if all(part in one.plain for part in parts)]
        counts: dict[str, int] = {
            one: sum(each.passes(one, today) for each in named) for one in FILTERS
        }
        mine = [one for one in named if one.passes(sought.chosen, today)]
        behind = self._behind(mine, every, sought.after)
        some = behind[: sought.most]
        days = self._days() if some else {}
        lines = tuple(self._line(one, days.get(one.line.id)) for one in some)
        return Found(lines, len(behind) > sought.most, counts, len(named) - counts["aside"])

    def _behind(
        self, mine: list[Standing], every: list[Standing], after: str
    ) -> list[Standing]:  # fmt: skip
        """Those that came before the house of this id."""
        if not after:
            return mine
        number = next((one.line.number for one in every if one.line.id == after), None)
        if number is None:
            raise NoSuchJob((after,))
        return [one for one in mine if one.line.number < number]

    def _days(self) -> dict[str, dict[str, Any]]:
        """The houses of the calendar that stands, by id."""
        stands = self.book.document(CALENDAR, FIRM)
        document = stands.get("document") if stands is not None else None
        return {one["id"]: one for one in document["houses"]} if document else {}

    def _line(self, one: Standing, days: dict[str, Any] | None) -> Line:
        line = one.line
        key = (line.id, line.versions, one.planned, LANGUAGE.get())
        held = self._held.get(key)
        if held is None:
            held = self._held[key] = self._told(line, self.book.document(OF, line.id))
            while len(self._held) > _HELD:
                self._held.popitem(last=False)
        told, units = held
        parts = [told]
        if not line.closed and line.entries:
            few = line.entries == 1
            parts.append(said("line-entry") if few else said("line-entries", n=line.entries))
        plan = self.book.document(PLAN, line.id) if one.progress is not None else None
        then = next_told(one, Known(self.clock(), plan, days, units))
        return Line(line.id, line.name or line.id, then, "; ".join(parts))

    def _told(self, one: JobLine, of: dict[str, Any] | None) -> tuple[str, Units]:
        """What a line says of the house, and its units."""
        from farwall.readers.job_json import job_from

        try:
            job = job_from(self.book.facts(one.id), f"The job {one.id}")
        except Refused:  # one house that cannot be read hides no other
            return said("line-unread"), "us"
        return f"{facts_told(job)}; {self._plan_told(one, of)}", job.wishes.units

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
    """`set for 14 May, 10 rooms, 1,435 ft²`."""
    units: Units = job.wishes.units
    told = area(_to_stain_m2(job), units)
    rooms = len(job.floor.rooms)
    size = said("line-room" if rooms == 1 else "line-rooms", rooms=rooms, area=told)
    if not job.starts_at or job.starts_at == STARTS_AT:
        return f"{said('line-day-open')}, {size}"
    return f"{said('line-planned', day=day_told(job.starts_at))}, {size}"


def _to_stain_m2(job: Job) -> float:
    """What a plan stains, and its papers tell: rooms with the floor under their doors, less what is
    kept dry."""
    joined = join_thresholds(job.floor)
    rooms = shapely.union_all([room.polygon.shape for room in joined.rooms])
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
