"""What a rule is: a question, a look at the facts, and how much its answer decides."""

from __future__ import annotations

from collections.abc import Callable

from farwall.evidence import Rank
from farwall.facts.go import GoWord, Stage
from farwall.facts.job import Job
from farwall.floor.short_labels import together
from farwall.nouns import dataclass

WITH: GoWord = "go with"


@dataclass(frozen=True)
class Says:
    """What one look came to: the word, why, what would change it; rank and source if its own."""

    verdict: GoWord
    reason: str
    change: str = ""
    where: tuple[str, ...] = ()
    advised: tuple[str, ...] = ()
    rank: Rank | None = None
    source: str = ""
    vital: bool | None = None


Look = Callable[[Job], "Says | None"]


@dataclass(frozen=True)
class Rule:
    """One rule. `look` gives None where nobody told; then `ask` is asked, or, empty, nothing is.

    weight: the higher, the sooner it stands in the list. vital: whether its open
    question keeps the whole from being a go.
    """

    id: str
    stage: Stage
    weight: int
    ask: str
    look: Look
    rank: Rank = Rank.PRACTICE
    source: str = "common-practice"
    vital: bool = False
    advised: tuple[str, ...] = ()


def named(job: Job, rooms: tuple[str, ...] | list[str]) -> str:
    """What people call these rooms, in one line."""
    label = {room.id: room.label for room in job.floor.rooms}
    words = together(label.get(room, room) for room in rooms)
    return " and ".join([", ".join(words[:-1]), words[-1]] if len(words) > 1 else words)
