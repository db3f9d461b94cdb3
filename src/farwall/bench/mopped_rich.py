"""Floors of the frozen generator that are rich in one kind of mark, and recall by lightness step.

Few of the floors of a half have a crescent. So those are taken, from any seed on, of which the
generator's own throws make one kind first; seeds that nobody has looked at are a fresh set.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from farwall.bench.mopped_floors import FREE
from farwall.bench.mopped_marks import MAKERS
from farwall.bench.mopped_match import Sought
from farwall.bench.mopped_noise import chance, one_of
from farwall.nouns import dataclass

STEPS: tuple[tuple[float, float | None], ...] = (
    (0.0, 1.5), (1.5, 2.0), (2.0, 3.0), (3.0, 4.0), (4.0, None), (0.0, None),
)  # fmt: skip
"""From and to below which L against the floor beside, whichever way; None: no bound."""
_SURE = 1.96


@dataclass(frozen=True)
class Step:
    """Of marks of one kind whose L lies from `least` to below `most` (None: any): shown, found."""

    least: float
    most: float | None
    marks: int
    found: int

    @property
    def words(self) -> str:
        """As a table has it."""
        if not self.least:
            return "all" if self.most is None else f"below {self.most:g} L"
        return f"from {self.least:g} L" + ("" if self.most is None else f" to {self.most:g}")


def steps_of(kind: str, every: Sequence[Sought]) -> tuple[Step, ...]:
    """Each step of a kind, and all of them last. What the sheet hides is left out."""
    own = [(abs(one.lighter), one.found) for one in every if one.seen and one.kind == kind]
    told = []
    for least, most in STEPS:
        inside = [
            found for lighter, found in own
            if least <= lighter and (most is None or lighter < most)
        ]  # fmt: skip
        told.append(Step(least, most, len(inside), sum(inside)))
    return tuple(told)


def wilson(found: int, marks: int) -> tuple[float, float]:
    """Where a share lies, nineteen times in twenty; 0 and 1 where nothing was seen.

    Source: [wilson-1927].
    """
    if not marks:
        return 0.0, 1.0
    share, square = found / marks, _SURE**2 / marks
    middle = share + square / 2
    half = math.sqrt(share * (1 - share) * square + square**2 / 4)
    return (middle - half) / (1 + square), (middle + half) / (1 + square)


def first_kind(seed: int) -> str | None:
    """The kind that a floor's first mark is of by its throws; None: the floor has none.

    Drawing nothing, it repeats the first throws of `mopped_floors.mopped`. That mark may be taken
    off again, where it comes out too faint.
    """
    throws = chance(seed, 10)
    throws.uniform(2.4, 5.4, 2)
    if throws.uniform() < FREE:
        return None
    throws.choice([1, 2, 3, 4], p=[0.35, 0.3, 0.2, 0.15])
    kinds = list(MAKERS)
    return one_of(throws, kinds, [MAKERS[kind][0] for kind in kinds])


def seeds_from(first: int, kind: str | None) -> Iterator[int]:
    """Seeds from that one on, without end; of those floors only whose first mark is of the kind."""
    seed = first
    while True:
        if kind is None or first_kind(seed) == kind:
            yield seed
        seed += 1
