"""What the book says of itself: what was taken, its jobs in a line each, its faults."""

from __future__ import annotations

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

DRAWING = "drawing"
"""Kind of document: the drawing that a job was made of, `file`, `name` and version of `facts`."""


@dataclass(frozen=True)
class Taken:
    """Ids of the entries offered: new ones, now on disk, and those that the book had already."""

    new: tuple[str, ...]
    known: tuple[str, ...]


@dataclass(frozen=True)
class JobLine:
    """One job of the list.

    number: counts jobs in the order in which they came into the book · versions: of its facts ·
    entries: in its log · latest_at: when the book last took something for it, by its own clock,
    ISO 8601 · closed: handed over, and that entry is not struck · aside: set aside, likewise.
    """

    id: str
    number: int
    name: str
    versions: int
    entries: int
    latest_at: str
    closed: bool
    aside: bool = False


@dataclass(frozen=True)
class FactsLine:
    """One version of a job's facts: which, who put it there, when, under which name."""

    version: int
    who: str
    at: str
    name: str


@dataclass(frozen=True)
class BookFault:
    """Something wrong with a book: `where` names the row or file, `what` says it and what next.

    harm is False for what merely lies about (a file that nobody names): nothing is lost by it.
    """

    code: str
    where: str
    what: str
    harm: bool = True


class Differs(Refused):
    """Entries offered under ids that the book has with other content; none of the call is kept."""

    def __init__(self, ids: tuple[str, ...]) -> None:
        self.ids = ids
        mistakes = (
            Mistake(
                f"entry {one}",
                "the book has another entry under this id.",
                "Nothing was kept; give the other one an id of its own.",
            )
            for one in ids
        )
        super().__init__(*mistakes, about="Two different entries bear one id.")


class NoSuchJob(Refused):
    """Jobs that the book does not have; `ids` names them."""

    def __init__(self, ids: tuple[str, ...]) -> None:
        self.ids = ids
        remedy = "Add it with `farwall book add`, or look at the list: `farwall book`."
        super().__init__(*(Mistake(f"job {one}", "is not in the book.", remedy) for one in ids))


class BookTrouble(Refused):
    """The book cannot be used now: disk full, read-only, held by another, damaged, out of reach.

    Nothing of the call is in the book; what was acknowledged before is. `damaged`: what the file
    holds cannot be read as a book; else the trouble may pass.
    """

    def __init__(self, *mistakes: Mistake, damaged: bool = False) -> None:
        self.damaged = damaged
        super().__init__(*mistakes)
