"""A field swept with its bands along a wished direction only: for coats that cross one another.

Bands run along the rows of the field's lattice or along its columns, which lie with most of its
walls. Straight sweeps are tried, and such that leave a lane to the way out for the last: nothing is
levelled, for levelled bands keep no direction.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from functools import cached_property
from typing import Literal

import numpy as np

from farwall.facts.plan import PlanTools
from farwall.spray.front import Front, Ground, front_of
from farwall.spray.fronts import plainest
from farwall.spray.lattice import Floats, median_of
from farwall.spray.starts import across_axes
from farwall.spray.sweep import Laid
from farwall.spray.sweeper import Sweeper

Way = Literal["u", "v"]
WAYS: tuple[Way, Way] = ("u", "v")
"""The line that a front moves along; bands run across it."""
_LANES = (1.0, 0.75)
"""Width of the lane, in band depths."""
_HALF = 0.5
_DEPTHS = (1.0, 0.8)
_HAIR = 1e-9


class DirectedSweeper(Sweeper):
    """A sweeper whose fronts all move along one line of the lattice."""

    way: Way = "u"
    edge_min: float = float("inf")
    """How long its edge lives: fronts that would outlive it even as half as wide bands are left
    out, for they take long to lay and fit nowhere."""

    @cached_property
    def _plain(self) -> list[Front]:
        return directed_fronts(self.field.ground, self.way)

    def _sought(self, *, smoothed: bool) -> tuple[Front, ...]:  # noqa: ARG002 - never smoothed
        return (plainest(self._plain), self._shortest)

    @cached_property
    def hopeless(self) -> bool:
        """Whether the edge of each of these fronts would die, bands half as wide or not."""
        return not any(self._hopes(front) for front in self._plain)

    @property
    def leaves_out(self) -> bool:
        """Whether some of these fronts are left out, for their edge would die."""
        return not all(self._hopes(front) for front in self._plain)

    def _hopes(self, front: Front) -> bool:
        ahead_m = self.tools.band_m + self.tools.overlap_m
        return _HALF * front.equivalent_m * ahead_m / self.tools.spray_m2_min <= self.edge_min

    def _plain_ways(self, tools: PlanTools) -> Iterator[Laid]:
        """The plainest first, then the others, the shortest front first; then less deep bands."""
        first = plainest(self._plain)
        rest = sorted(self._plain, key=lambda front: front.equivalent_m)
        fronts = [first, *(front for front in rest if front is not first)]
        cut = self._cut_for(tools)
        for share in _DEPTHS:
            for front in filter(self._hopes, fronts):
                yield self._lay(front, replace(cut, band_m=cut.band_m * share), tools)

    def age_min(self, tools: PlanTools) -> float:
        """The oldest edge of its sweep without refills. [min]

        Raises `Unanswerable` where nobody can walk bands of this direction.
        """
        return self._found(tools)[1][0]


def directed_fronts(ground: Ground, way: Way) -> list[Front]:
    """Fronts that move along one line of the lattice: straight to the way out, or to a lane that
    ends at the way out and is backed out of last."""
    line = dict(zip(WAYS, across_axes(ground), strict=True))[way]
    both: list[tuple[str, Floats]] = [(f"straight {way}", line), (f"straight -{way}", -line)]
    toward = [(name, late) for name, late in both if _toward_exit(ground, late)]
    lanes = [
        (f"straight to a lane at {at:.2f} m, {share:g}", _to_lane(ground, line, at, share))
        for at in _lanes_at(ground, line)
        for share in _LANES
    ]
    return [front_of(ground, late, name) for name, late in (*toward, *lanes)]


def _lanes_at(ground: Ground, line: Floats) -> list[float]:
    """Where along the line a lane may end: in the middle of the way out; at its ends if wide."""
    beside, depth_m = line[ground.at_exit], ground.ball.depth_m
    first, last, middle = float(beside.min()), float(beside.max()), float(beside.mean())
    if last - first < 2 * depth_m:
        return [middle]
    return [first, last, first + depth_m / 2, last - depth_m / 2, middle]


def _to_lane(ground: Ground, line: Floats, at: float, share: float) -> Floats:
    """From the far ends along the line up to a lane before the way out; then the lane, backward.

    The lane is as wide as so much of a band. Where the way out lies at one end of the line, the
    lane runs along that wall; elsewhere it crosses the field.
    """
    depth_m, step_m = ground.ball.depth_m, ground.lattice.grid.step_m
    inside = min(at - float(line.min()), float(line.max()) - at) > depth_m / 2
    half_m = share * depth_m / 2 if inside else share * depth_m - step_m / 2
    beyond = np.abs(line - at) - half_m
    back = ground.out_m / max(float(ground.out_m.max()), _HAIR)
    return np.where(beyond > 0, -1 - beyond, -back)


def _toward_exit(ground: Ground, late: Floats) -> bool:
    """Whether most of the floor comes before the way out."""
    return median_of(late) <= float(late[ground.at_exit].max()) + _HAIR
