"""Where every house of the book stands, in one word each: found once, renewed where it changed."""

from __future__ import annotations

import unicodedata
from collections.abc import Mapping, Sequence
from dataclasses import field, replace
from datetime import date, datetime, timedelta
from threading import Lock
from typing import Any, Literal, get_args

from farwall.facts.default_table import STARTS_AT
from farwall.facts.log import Kept
from farwall.job.aside import standing_aside
from farwall.job.story.order import in_order
from farwall.nouns import dataclass
from farwall.store.book import Book
from farwall.store.nouns import JobLine
from farwall.web.live_jobs import OF

Word = Literal["plan", "ahead", "work", "drying", "done", "aside"]
"""To plan · planned, its day ahead · in work · drying · handed over · set aside."""
Filter = Literal["plan", "week", "work", "drying", "done", "aside"]
FILTERS: tuple[Filter, ...] = get_args(Filter)
_DRIES = frozenset({"coat-done", "rinsed", "sealed", "still-damp"})
_STEPS = _DRIES | {
    "day-started", "mixed", "filled", "field-started", "band-done", "field-done", "feathered",
    "stopped", "dry", "coat-judged", "neutralised",
}  # fmt: skip
"""Words of the log that tell how far a job is; others (notes, photos, hours) do not."""


@dataclass(frozen=True)
class Progress:
    """The last step by the log that is not struck: its word, when, and what it carried.

    after: the last word before it that began a wait, where this one only looked at it.
    """

    word: str
    at: datetime
    about: Mapping[str, Any]
    after: str = ""


@dataclass(frozen=True)
class Standing:
    """A house of the list. planned: facts that its plan is of, 0 without; no: it cannot be planned.

    starts_at: as its facts tell, empty where no day is set · last_at: when something was entered
    last, of the log's steps · worked: a step of the log came after it was set aside, so that it is
    listed all the same.
    """

    line: JobLine
    starts_at: str
    planned: int
    no: bool
    progress: Progress | None
    plain: str
    worked: bool = False

    @property
    def word(self) -> Word:
        """Where it stands."""
        if self.line.aside and not self.worked:
            return "aside"
        if self.line.closed:
            return "done"
        if self.progress is not None:
            return "drying" if self.progress.word in _DRIES else "work"
        fresh = self.planned == self.line.versions and not self.no
        return "ahead" if fresh and self.starts_at else "plan"

    def passes(self, chosen: str, today: date) -> bool:
        """Whether it belongs under a filter; under none all do that are not set aside."""
        if chosen == "week":
            return self.word not in {"done", "aside"} and self._in_week(today)
        if chosen not in FILTERS:
            return self.word != "aside"
        return self.word == chosen

    def _in_week(self, today: date) -> bool:
        if self.progress is not None:
            return True
        monday = today - timedelta(days=today.weekday())
        try:
            day = datetime.fromisoformat(self.starts_at).date()
        except ValueError:
            return False
        return monday <= day < monday + timedelta(days=7)


def plainly(text: str) -> str:
    """A text as a search compares it: small letters, without accents."""
    parts = unicodedata.normalize("NFKD", text.casefold())
    return "".join(one for one in parts if not unicodedata.combining(one))


@dataclass
class WhereStands:
    """Where each house stands, as last found. Safe among threads."""

    book: Book
    _found: dict[str, Standing] = field(default_factory=dict)
    _planned: dict[str, tuple[int, bool]] = field(default_factory=dict)
    _counted: int = -1
    _lock: Lock = field(default_factory=Lock)

    def all(self) -> list[Standing]:
        """Every house, the one that came last first."""
        with self._lock:
            lines = self.book.jobs()
            self._renew_plans()
            self._renew(lines)
            return [self._found[one.id] for one in lines]

    def _renew_plans(self) -> None:
        count = self.book.documents_put(OF)
        if count == self._counted:
            return
        told = self.book.documents(OF)
        self._planned = {job: (int(of["facts"]), bool(of["no"])) for job, of in told.items()}
        self._counted = count

    def _renew(self, lines: Sequence[JobLine]) -> None:
        other = [one for one in lines if self._is_other(one)]
        days = self.book.starts_at([
            one.id for one in other
            if (was := self._found.get(one.id)) is None or was.line.versions != one.versions
        ])  # fmt: skip
        for one in other:
            was = self._found.get(one.id)
            told = days.get(one.id, was.starts_at if was else "")
            starts_at = "" if told == STARTS_AT else told
            planned, no = self._planned.get(one.id, (0, False))
            progress, worked = (was.progress, was.worked) if was else (None, False)
            if one.closed or not one.entries:
                progress, worked = None, False
            elif was is None or was.line.entries != one.entries or was.line.closed:
                kept = self.book.entries(one.id)
                progress, worked = progress_of(kept), one.aside and worked_since(kept)
            plain = plainly(f"{one.name} {one.id}")
            self._found[one.id] = Standing(one, starts_at, planned, no, progress, plain, worked)

    def _is_other(self, one: JobLine) -> bool:
        was = self._found.get(one.id)
        if was is None or was.line != one:
            return True
        return (was.planned, was.no) != self._planned.get(one.id, (0, False))


def worked_since(kept: Sequence[Kept]) -> bool:
    """Whether a step of the log came into the book after the house was set aside last."""
    aside = standing_aside(kept)
    last = max((one.place for one in kept if one.entry.id in aside), default=0)
    return any(one.place > last and one.entry.word in _STEPS for one in kept)


def progress_of(kept: Sequence[Kept]) -> Progress | None:
    """The last step that a log tells; None where it tells none."""
    if not kept:
        return None
    start = datetime.fromisoformat(kept[0].entry.at)
    last: Progress | None = None
    for one in in_order(kept, starts_at=kept[0].entry.at).happened:
        if one.word not in _STEPS:
            continue
        at = start + timedelta(minutes=one.at_min)
        step = Progress(one.word, at, one.about)
        if last is not None and one.word in {"still-damp", "dry", "coat-judged"}:
            step = replace(step, after=last.after or last.word)
        last = step
    return last
