"""Go or no-go as a sheet of sentences: the verdict, what says no, what is to be asked, and why."""

from __future__ import annotations

from farwall.evidence import rank_words
from farwall.facts.go import Finding, Go, SlabTest
from farwall.facts.job import Job
from farwall.job.go.say import parts
from farwall.nouns import dataclass
from farwall.phrasebook import told
from farwall.web.pages.speaking import speaking_here
from farwall.web.words import said

_KEYS = ("go-part-no", "go-part-ask", "go-part-with", "go-part-also", "go-part-in-order")


@dataclass(frozen=True)
class Line:
    """A finding: why, what would change it, its rank and source, texts that disagree."""

    reason: str
    change: str
    source: str
    disagree: str


@dataclass(frozen=True)
class GoPart:
    """Findings under a heading; folded away where all is in order."""

    key: str
    lines: tuple[Line, ...]
    folded: bool


@dataclass(frozen=True)
class TestLine:
    """A slab test still to be made."""

    told: str
    care: str
    source: str


@dataclass(frozen=True)
class GoSheet:
    """The sheet. word: `no`, `not yet`, `go with`, `go`."""

    word: str
    verdict: str
    parts: tuple[GoPart, ...]
    tests: tuple[TestLine, ...]


def go_sheet(go: Go, job: Job) -> GoSheet:
    """The sheet of what the rules found, in the language of the page as far as it is known."""
    with speaking_here(job):
        return _sheet(go, job)


def _sheet(go: Go, job: Job) -> GoSheet:
    found = tuple(
        GoPart(key, tuple(_line(one) for one in lines), folded=key == _KEYS[-1])
        for key, (_, lines) in zip(_KEYS, parts(go), strict=True)
        if lines
    )
    labels = {room.id: room.label for room in job.floor.rooms}
    verdict = said(f"go-verdict-{go.verdict.replace(' ', '-')}")
    return GoSheet(go.verdict, verdict, found, tuple(_test(one, labels) for one in go.tests))


def _line(one: Finding) -> Line:
    texts = "; ".join(map(told, one.advised)) if one.verdict in {"no", "go with"} else ""
    change = one.change if one.verdict != "go" else ""
    return Line(
        told(one.reason), told(change), told(rank_words(one.rank, one.source)),
        said("go-disagree", texts=texts) if texts else "",
    )  # fmt: skip


def _test(one: SlabTest, labels: dict[str, str]) -> TestLine:
    test = said("go-test", count=one.count, test=one.test, how=told(one.how))
    rank = told(rank_words(one.rank, one.source))
    first = told(one.first_in(labels))
    return TestLine(f"{test} {first}".strip(), told(one.care), rank)
