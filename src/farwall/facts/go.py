"""Go or no-go: what the rules found in the facts of a job, each with its reason and its rank."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from farwall.floor.short_labels import together
from farwall.nouns import dataclass

GoWord = Literal["no", "ask", "go with", "go"]
GoVerdict = Literal["no", "not yet", "go with", "go"]
Stage = Literal["survey", "day before", "morning", "on the floor"]


@dataclass(frozen=True)
class Finding:
    """What one rule came to. `change`: what would make it a yes, or what must be done with it.

    `vital` questions keep the whole from being a go; `advised` lists texts that
    disagree, where they do; `where` are room ids.
    """

    rule: str
    stage: Stage
    verdict: GoWord
    reason: str
    change: str
    weight: int
    rank: str
    source: str
    vital: bool = False
    where: tuple[str, ...] = ()
    advised: tuple[str, ...] = ()


@dataclass(frozen=True)
class SlabTest:
    """A slab test that is still to be made: by which standard, how many, in which rooms."""

    test: str
    count: int
    where: tuple[str, ...]
    how: str
    rank: str
    source: str
    care: str = ""

    def first_in(self, labels: Mapping[str, str]) -> str:
        """`First in Bath and 4 × Closet.` by what rooms are called; nothing where it is all."""
        if not 0 < len(self.where) < len(labels):
            return ""
        names = together(labels.get(room, room) for room in self.where)
        return f"First in {', '.join(names[:-1])}{' and ' * (len(names) > 1)}{names[-1]}."


@dataclass(frozen=True)
class Go:
    """The verdict of a whole job, its findings in order of weight, the tests still to be made."""

    verdict: GoVerdict
    findings: tuple[Finding, ...]
    tests: tuple[SlabTest, ...] = ()
