"""What can go wrong, as types that carry their facts.

    FarwallError
    ├── Refused        the caller's mistake: one or many, each with place and remedy
    └── Unanswerable   the question is sound and the answer is "no"

A door (command line, web) shows them; the core only raises them.
"""

from __future__ import annotations

from collections.abc import Sequence

from farwall.nouns import dataclass


@dataclass(frozen=True)
class Mistake:
    """One thing wrong: where it stands, what it is, what to do next."""

    where: str
    what: str
    remedy: str = ""

    def __str__(self) -> str:
        place = f"{self.where}: " if self.where else ""
        return f"{place}{self.what}" + (f" {self.remedy}" if self.remedy else "")


class FarwallError(Exception):
    """Anything that Farwall itself raises."""


class Refused(FarwallError):
    """What was handed over cannot be used; `mistakes` names every fault at once."""

    def __init__(self, *mistakes: Mistake, about: str = "") -> None:
        self.mistakes: Sequence[Mistake] = mistakes
        self.about = about
        super().__init__("\n".join(str(mistake) for mistake in mistakes))


class Unanswerable(FarwallError):
    """There is no answer: `reason` says why, `remedies` what would make one possible."""

    def __init__(self, reason: str, *, remedies: Sequence[str] = ()) -> None:
        self.reason = reason
        self.remedies = remedies
        super().__init__(reason)


def mistakes_of(error: FarwallError) -> list[str]:
    """What it says, a line for each thing: mistakes, or the reason and then what would help."""
    if isinstance(error, Refused):
        return [str(one) for one in error.mistakes]
    if isinstance(error, Unanswerable):
        return [error.reason, *error.remedies]
    return [str(error)]
