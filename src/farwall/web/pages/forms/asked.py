"""The blanks of a form for the facts at hand: each with its name in the form and its place."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import datetime
from functools import cached_property
from typing import Any

from farwall.facts.defaults import stains_and_coats
from farwall.facts.job import Job
from farwall.facts.plain import plain
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.web.pages.forms.measures import Measure, measure_of
from farwall.web.pages.forms.nouns import Blank, Form, Part, Path, Sentence
from farwall.web.pages.forms.places import Hint, hint_at, value_at
from farwall.web.pages.forms.windows import window_title

YES, NO = "yes", "no"


@dataclass(frozen=True)
class Field:
    """A blank in its place: `name` in the form, `path` in the facts."""

    name: str
    path: Path
    blank: Blank

    @cached_property
    def hint(self) -> Hint:
        """What the place holds."""
        return hint_at(self.path)

    @property
    def measure(self) -> Measure:
        """The unit that it is filled in."""
        return self.blank.measure or measure_of(str(self.path[-1]))


@dataclass(frozen=True)
class Row:
    """One time that the sentences of a part are asked. title: of a room. fresh: a new row."""

    name: str
    path: Path
    title: str = ""
    fresh: bool = False

    def field(self, blank: Blank) -> Field:
        """The blank in this row."""
        name = ".".join(filter(None, (self.name, blank.way)))
        return Field(name, (*self.path, *blank.path), blank)

    @property
    def away(self) -> str:
        """Name of the tick that takes the row away."""
        return f"{self.name}.away"


@dataclass(frozen=True)
class Asked:
    """A form for a job: what is held now, as plain facts with nothing left out."""

    form: Form
    job: Job

    @cached_property
    def held(self) -> dict[str, Any]:
        """All facts, SI, empty ones too."""
        found = plain(self.job)
        assert isinstance(found, dict)
        return found

    @property
    def units(self) -> Units:
        """In which it is filled."""
        return self.job.wishes.units

    def rows(self, part: Part) -> list[Row]:
        """Each time that a part is asked."""
        if part.each == "rooms":
            return [
                Row(f"{part.way}.{n}", (*part.path, room.id), room.label)
                for n, room in enumerate(self.job.floor.rooms)
            ]
        if part.each == "rows":
            count = len(value_at(self.held, part.path) or ())
            fresh = 0 if part.fixed or count >= part.most else 1
            return [
                Row(f"{part.way}.{n}", (*part.path, n), self._title(part, n, count), n == count)
                for n in range(count + fresh)
            ]
        return [Row(part.way, part.path)]

    def _title(self, part: Part, n: int, count: int) -> str:
        if part.path == ("stains",) and part.fixed and n < count:
            return self.job.stains[n].name or self.job.stains[n].id
        known = part.path == ("floor", "windows") and n < count
        return window_title(self.job, n) if known else ""

    def fields(self) -> Iterator[Field]:
        """Every blank of the form."""
        for part in self.form.parts:
            for row in self.rows(part):
                for sentence in self.sentences(part, row):
                    yield from (row.field(blank) for blank in sentence.blanks)

    def sentences(self, part: Part, row: Row) -> list[Sentence]:
        """The sentences that are asked in a row."""
        return [one for one in part.sentences if not one.only or self._meant(one, row)]

    def _meant(self, sentence: Sentence, row: Row) -> bool:
        key, _, value = sentence.only.partition("=")
        return row.fresh or value_at(self.held, (*row.path, key)) == value

    def text(self, field: Field) -> str:
        """What stands in a blank as the facts are."""
        value = value_at(self.held, field.path)
        if value is None and field.hint.kind == "yes-no" and not field.hint.may_be_empty:
            value = False  # a room that nobody has told of: no sun, no draught
        return text_of(value, field, self.units)

    def ticks(self, field: Field) -> dict[str, str]:
        """Ids that may be ticked, several at once, with what people call them; none elsewhere."""
        of = field.blank.of
        return dict(self.choices(of)) if of and field.hint.kind == "list" else {}

    def choices(self, of: str) -> list[tuple[str, str]]:
        """Ids that may be chosen, with what people call them."""
        if of == "rooms":
            return [(room.id, room.label) for room in self.job.floor.rooms]
        if of == "samples":
            return [(sample.id, sample.id) for sample in self.job.samples]
        stains, coats = stains_and_coats(self.job)
        if of == "stains":
            return [(stain.id, stain.name or stain.id) for stain in stains]
        named = {stain.id: stain.name or stain.id for stain in stains}
        return [(coat.id, f"{coat.id} ({named[coat.stain]} {coat.cut})") for coat in coats]


def text_of(value: Any, field: Field, units: Units) -> str:
    """A value as it is typed into its blank."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return YES if value else NO
    if field.hint.kind in {"number", "whole"}:
        return field.measure.text(float(value), units)
    if field.hint.kind == "moment":
        return datetime.fromisoformat(str(value)).strftime("%Y-%m-%dT%H:%M")
    if isinstance(value, list | tuple):
        return ", ".join(map(str, value))
    return str(value)


def asked_of(form: Form, facts: Mapping[str, Any]) -> Asked:
    """The form for these facts. Raises Refused where they are no job."""
    from farwall.readers.job_json import job_from

    return Asked(form, job_from(facts, "The job"))


def sentences_of(form: Form) -> Iterator[Sentence]:
    """All sentences of a form."""
    for part in form.parts:
        yield from part.sentences
