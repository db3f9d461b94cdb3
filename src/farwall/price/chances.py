"""Call-backs: how likely each kind is, what one costs, and what on this slab makes it likelier."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.lessons import Lessons
from farwall.facts.prices import CallBacks
from farwall.learn.kinds import CALL_BACKS
from farwall.nouns import dataclass
from farwall.price.money import written
from farwall.price.usual import CALL_BACK_COST, CALL_BACK_PERCENT

CAUSES = ("residue", "moisture", "colour")


@dataclass(frozen=True)
class Chance:
    """What may happen: chance in per cent of jobs, cost low, usual and high as text, and why the
    chance is what it is."""

    what: str
    percent: float
    cost_low: str
    cost: str
    cost_high: str
    rank: str
    source: str
    why: str = ""


def call_backs(
    told: CallBacks, lessons: Lessons | None = None, raised: Mapping[str, str] | None = None
) -> tuple[Chance, ...]:
    """The three kinds. raised: by kind, what on this slab speaks for the high end of its range.

    Source: 1, 4 and 10 % of jobs for each kind, and 300, 900 and 6,000 for one, are guesses of
    practice. A firm's own figure wins; else what closed jobs taught, a third for each kind.
    """
    low, usual, high = _cost(told)
    found = lessons.find(CALL_BACKS) if lessons else None
    chances = []
    for cause in CAUSES:
        own = getattr(told, f"{cause}_percent")
        why = (raised or {}).get(cause, "")
        percent, rank, source = CALL_BACK_PERCENT[1], Rank.GUESS, f"{PRACTICE}, {OUR_GUESS}"
        if own is not None:
            percent, rank, source = own, Rank.MEASURED, "told by the firm"
        elif found is not None:
            percent, rank = found.likely / len(CAUSES), Rank.LEARNED
            source = f"learned from {found.jobs} {'job' if found.jobs == 1 else 'jobs'}"
        if why:
            percent = min(100.0, percent * CALL_BACK_PERCENT[2] / CALL_BACK_PERCENT[1])
        chances.append(Chance(cause, round(percent, 2), low, usual, high, rank.value, source, why))
    return tuple(chances)


def _cost(told: CallBacks) -> tuple[str, str, str]:
    """The firm's own figures; guessed ends give way to a figure that was told."""
    low, usual, high = (_text(one) for one in CALL_BACK_COST)
    known = [one for one in (told.cost_low, told.cost, told.cost_high) if one]
    low = told.cost_low or min([low, *known], key=Decimal)
    high = told.cost_high or max([high, *known], key=Decimal)
    usual = told.cost or min(max(usual, low, key=Decimal), high, key=Decimal)
    return low, usual, high


def _text(value: float) -> str:
    return written(Decimal(str(value)))
