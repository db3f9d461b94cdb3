"""Which way round each pass is walked, exactly: the oldest edge youngest, then least walking.

The age of an edge hangs on the ways of its two passes and on the walks between
all passes from the one to the other, and those on the ways of the passes beside
them. Going from pass to pass, a *label* is a choice of ways so far; the future
asks of it only where the person stands, how old each edge would be that is still
to be met, and what it has come to. A label no better than another in any of these
is dropped: dynamic programming over the 2^n choices that leaves out no best one.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

import numpy as np
import numpy.typing as npt

from farwall.nouns import dataclass

SAME_AGE_MIN = 0.001
"""Ages that differ by less are alike: then less walking counts."""
_HAIR = 1e-9
MOST_LABELS = 3000
"""More choices side by side are not followed; then the best way round is not proved. Measured:
at most a few hundred on the shapes and houses of the bench."""

Ways = tuple[int, ...]
"""For each pass 0, as it was laid, or 1, the other way round."""


@dataclass(frozen=True)
class Turnable:
    """Passes that may be turned, as numbers.

    minutes: of each pass. hops_min[k][a][b]: the walk to pass k, walked way b, from the one before
    it, walked way a; none to the first. turns: whether a pass has two ways at all.
    edges[i, j][a][b]: the age of the edge when both passes begin in the same minute. [min]
    """

    minutes: tuple[float, ...]
    hops_min: tuple[npt.NDArray[np.float64], ...]
    turns: tuple[bool, ...]
    edges: dict[tuple[int, int], npt.NDArray[np.float64]]

    def told(self, ways: Sequence[int]) -> tuple[float, float]:
        """The oldest edge and all walking of one choice. [min]"""
        starts, walked = [0.0], 0.0
        for k in range(1, len(ways)):
            hop = float(self.hops_min[k][ways[k - 1], ways[k]])
            walked += hop
            starts.append(starts[-1] + self.minutes[k - 1] + hop)
        ages = [starts[j] - starts[i] + e[ways[i], ways[j]] for (i, j), e in self.edges.items()]
        return max([0.0, *map(float, ages)]), walked


@dataclass(frozen=True)
class _Label:
    """Ways so far; for each open edge its age, were it met at once, by the way of its later pass.

    cost: what is least at the end, the oldest edge so far or the walking.
    """

    ways: Ways
    open_min: npt.NDArray[np.float64]
    cost: float


@dataclass(frozen=True)
class Best:
    """The best ways, and whether every choice was weighed."""

    ways: Ways
    exact: bool


def best_ways(passes: Turnable, known: Iterable[Ways]) -> Best:
    """The ways with the youngest oldest edge, to `SAME_AGE_MIN`, and of those the least walking.

    known: some choices to begin with, at least one; nothing older than the best is followed.
    """
    start = min((passes.told(ways), ways) for ways in known)
    (limit, _), first = start
    oldest = _Search(passes, limit, by_age=True)
    youngest = oldest.ways() or first
    least = passes.told(youngest)[0]
    walking = _Search(passes, least + SAME_AGE_MIN, by_age=False)
    ways = walking.ways() or youngest
    return Best(ways, oldest.exact and walking.exact)


class _Search:
    """One walk through the passes: the least peak or the least walking under an age limit."""

    def __init__(self, passes: Turnable, limit_min: float, *, by_age: bool) -> None:
        self.passes = passes
        self.limit_min = limit_min + _HAIR
        self.by_age = by_age
        self.exact = True
        self._of_first: dict[int, list[int]] = {}
        self._of_then: dict[int, list[int]] = {}
        for first, then in sorted(passes.edges):
            self._of_first.setdefault(first, []).append(then)
            self._of_then.setdefault(then, []).append(first)

    def ways(self) -> Ways | None:
        """The best ways; None where every choice breaks the limit."""
        labels = [_Label((), np.zeros((0, 2)), 0.0)]
        open_edges: list[tuple[int, int]] = []
        for index in range(len(self.passes.minutes)):
            met = np.array([then == index for _, then in open_edges], dtype=bool)
            after = [edge for edge in open_edges if edge[1] != index]
            after += [(index, then) for then in self._of_first.get(index, [])]
            grown = [one for label in labels for one in self._turned(label, index, met)]
            labels = self._undominated(grown)
            open_edges = after
            if not labels:
                return None
        return min(labels, key=lambda label: (label.cost, label.ways)).ways

    def _turned(self, label: _Label, index: int, met: npt.NDArray[np.bool_]) -> Iterator[_Label]:
        passes = self.passes
        for way in (0, 1) if passes.turns[index] else (0,):
            hop = float(passes.hops_min[index][label.ways[-1], way]) if index else 0.0
            aged = label.open_min + hop
            oldest = float(aged[met, way].max()) if met.any() else 0.0
            if oldest > self.limit_min:
                continue
            fresh = [passes.edges[index, then][way] for then in self._of_first.get(index, [])]
            left = np.vstack([aged[~met], *fresh]) + passes.minutes[index]
            cost = max(label.cost, oldest) if self.by_age else label.cost + hop
            yield _Label((*label.ways, way), left, cost)

    def _undominated(self, labels: Sequence[_Label]) -> list[_Label]:
        kept: list[_Label] = []
        for way in (0, 1):
            mine = sorted(
                (label for label in labels if label.ways[-1] == way),
                key=lambda label: (label.cost, float(label.open_min.sum()), label.ways),
            )
            kept += self._front(mine)
        return kept

    def _front(self, labels: list[_Label]) -> list[_Label]:
        """Those that no other, as cheap or cheaper, is as good as in every open edge."""
        kept: list[_Label] = []
        rows = np.empty((0, 0))
        for label in labels:
            row = label.open_min.reshape(1, -1)
            if kept and bool((rows <= row + _HAIR).all(axis=1).any()):
                continue
            rows = np.vstack([rows, row]) if kept else row
            kept.append(label)
        if len(kept) > MOST_LABELS:
            self.exact = False
            kept = kept[:MOST_LABELS]
        return kept
