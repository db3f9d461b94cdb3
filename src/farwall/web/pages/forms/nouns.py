"""What a form is made of: blanks in sentences, sentences in parts, parts that repeat."""

from __future__ import annotations

from typing import Literal

from farwall.nouns import dataclass
from farwall.web.pages.forms.measures import Measure

Step = str | int
Path = tuple[Step, ...]
Ids = Literal["rooms", "coats", "stains", "samples"]


@dataclass(frozen=True)
class Blank:
    """One blank: the way to its fact from where its part begins, dots between.

    name: its place in the sentence; `name-NAME` are its words for a list of mistakes.
    measure: where the unit that the key carries is not the one people use (a band in inches).
    of: its choices are the ids of these. pick: its choices are said as `PICK-VALUE`, else as
    `pick-KEY-VALUE`; beside `of` none of them is said as `none-PICK`. timer: a watch may fill it.
    day: it holds a day. must: a row without it is no row. size: of the blank, in letters;
    lines: more than one where sentences are written into it.
    """

    name: str
    way: str
    measure: Measure | None = None
    of: Ids | None = None
    pick: str = ""
    timer: bool = False
    day: bool = False
    must: bool = False
    size: int = 6
    lines: int = 1

    @property
    def path(self) -> Path:
        """The steps of its way; none where the row itself is the fact."""
        if not self.way:
            return ()
        return tuple(int(step) if step.isdecimal() else step for step in self.way.split("."))


@dataclass(frozen=True)
class Sentence:
    """Words with blanks in them: `{NAME}` in the words of `key` is the blank of that name.

    help: key of what is told beside it. stands_in: names of defaults (`facts.default_table`) that
    are taken where it stays empty. rule: of go or no-go, whose answer is shown under it. effect:
    key of what it would change, where that is no minutes. only: `KEY=VALUE` that a row holds where
    the sentence is asked in it; a new row is asked all.
    """

    key: str
    blanks: tuple[Blank, ...]
    help: str = ""
    stands_in: tuple[str, ...] = ()
    rule: str = ""
    effect: str = ""
    only: str = ""


@dataclass(frozen=True)
class Part:
    """Sentences under a heading (`key`), with a word before them (`KEY-told`) where told.

    each: where the sentences repeat. `rooms`: once for each room, from `way` and its id; `rows`:
    for each entry of the list at `way`, and once more, empty. most: how many rows at most.
    stem: of the id that a new row is given where it has none, such as `sample`.
    """

    key: str
    sentences: tuple[Sentence, ...]
    each: Literal["", "rooms", "rows"] = ""
    way: str = ""
    told: bool = False
    most: int = 40
    stem: str = ""
    fixed: bool = False
    """Rows that a drawing brought: none is added or taken away here."""
    title: str = ""
    """Of what the part is told, where several have the same heading: a name of the job's own."""

    @property
    def path(self) -> Path:
        """The steps of its way."""
        steps = self.way.split(".") if self.way else []
        return tuple(int(step) if step.isdecimal() else step for step in steps)


@dataclass(frozen=True)
class Form:
    """All parts of a screen. key: its heading; `KEY-told` stands under it."""

    key: str
    parts: tuple[Part, ...]
