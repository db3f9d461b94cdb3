"""What is counted of clocks that were foretold: how often a range held, how far it erred."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.air.learned import Factor
from farwall.nouns import dataclass


@dataclass(frozen=True)
class ClockScore:
    """One clock over many floors: per cent within the range, median error of the likely value."""

    clock: str
    floors: int
    within_before: float
    within_after: float
    error_before: float
    error_after: float
    too_soon_before: float
    too_soon_after: float
    """Per cent of floors that were not done at the high end: the side that hurts."""


@dataclass(frozen=True)
class Foretold:
    """What had passed over the usual wait when it truly ended, and the factor that was foretold."""

    true_share: float
    before: Factor
    after: Factor


def tallied(name: str, told: Sequence[Foretold]) -> ClockScore:
    """The score of one clock over these floors."""

    def within(pick: str) -> float:
        ends: list[Factor] = [getattr(one, pick) for one in told]
        hit = [f.low <= one.true_share <= f.high for f, one in zip(ends, told, strict=True)]
        return 100 * sum(hit) / len(hit)

    def error(pick: str) -> float:
        ends: list[Factor] = [getattr(one, pick) for one in told]
        off = sorted(abs(f.likely / one.true_share - 1) for f, one in zip(ends, told, strict=True))
        return 100 * off[len(off) // 2]

    def too_soon(pick: str) -> float:
        ends: list[Factor] = [getattr(one, pick) for one in told]
        late = sum(f.high < one.true_share for f, one in zip(ends, told, strict=True))
        return 100 * late / len(told)

    return ClockScore(
        name,
        len(told),
        within("before"),
        within("after"),
        error("before"),
        error("after"),
        too_soon("before"),
        too_soon("after"),
    )
