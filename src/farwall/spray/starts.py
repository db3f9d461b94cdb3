"""Plain sweeps of a field to begin with: straight ones, rings about the way out, leaning ones."""

from __future__ import annotations

from functools import cached_property

import numpy as np

from farwall.nouns import dataclass
from farwall.spray.front import Ground
from farwall.spray.lattice import FAR_M, Floats, median_of
from farwall.spray.walks import stretched_walks

RINGS = "rings"
"""The name of the sweep in rings about the way out."""
_HAIR = 1e-9
_WIDE_M = 0.5
_FEW_STRETCHES = ((1, 1), (1, 0.25), (0.25, 1), (1, 0.1), (0.1, 1))
_STRETCHES = (*_FEW_STRETCHES, (1, 0.5), (0.5, 1))
_FROM_AFAR = ((1, 1), (1, 0.3), (0.3, 1))


@dataclass(frozen=True)
class Starts:
    """Plain ways to sweep a field, each as a lateness: straight, about the way out, from a corner.

    Straight ones and those along the wall of the way out come first: their
    bands are the easiest to find on a bare floor.
    """

    ground: Ground

    @cached_property
    def _across(self) -> tuple[Floats, Floats]:
        return across_axes(self.ground)

    def plain(self) -> list[tuple[str, Floats]]:
        """Along the wall of the way out, straight four ways, and in rings about the way out."""
        found = [("wall", -self.ground.wall_m)] if self.ground.wall_m is not None else []
        for axis, line in zip("uv", self._across, strict=True):
            found += [
                (f"straight {sign}{axis}", late)
                for sign, late in (("", line), ("-", -line))
                if self._toward_exit(late)
            ]
        return [*found, (RINGS, -self.ground.out_m)]

    def _toward_exit(self, late: Floats) -> bool:
        """Whether most of the floor comes before the exit."""
        return median_of(late) <= float(late[self.ground.at_exit].max()) + _HAIR

    def leaning(self) -> list[tuple[str, Floats]]:
        """From each corner of the field's box, and straight ones, leaning to the way out."""
        out = self.ground.out_m
        found = []
        for corner in self._corners():
            from_here = self._from(corner)
            found += [
                (f"corner {corner} {lean}", from_here - lean * out) for lean in (0, 0.5, 1, 2)
            ]
        for axis, line in zip("uv", self._across, strict=True):
            for sign in (1, -1):
                found += [
                    (f"leaning {axis} {sign} {lean}", sign * line - lean * out)
                    for lean in (0.5, 1.0)
                ]
        return found

    def stretched(self) -> list[tuple[str, Floats]]:
        """Rings about the middle and the ends of the way out and from the farthest floor, a metre
        one way counting for more than a metre across: nearly straight ones that bend to the exit.
        """
        far = int(np.argmax(np.round(self.ground.out_m, 6)))
        about = [
            (number, place, stretch)
            for number, place in enumerate(self._doorway())
            for stretch in (_STRETCHES if number == 0 else _FEW_STRETCHES)
        ]
        asked = [(place, stretch) for _, place, stretch in about]
        asked += [(far, stretch) for stretch in _FROM_AFAR]
        rings = stretched_walks(self.ground.lattice, asked)
        found = [
            (f"about {number} {along} {across}", -away)
            for (number, _, (along, across)), away in zip(about, rings, strict=False)
        ]
        for (along, across), from_here in zip(_FROM_AFAR, rings[len(about) :], strict=True):
            found += [
                (f"from afar {along} {across} {lean}", from_here - lean * self.ground.out_m)
                for lean in (0, 0.5, 1)
            ]
        return found

    def _doorway(self) -> list[int]:
        """Places in the middle of the way out and, if it is wide, at its ends."""
        beside = np.flatnonzero(self.ground.at_exit)
        u, v = (line[beside] for line in self._across)
        line = u if np.ptp(u) >= np.ptp(v) else v
        order = beside[np.argsort(line, kind="stable")]
        ends = [order[0], order[-1]] if np.ptp(line) > _WIDE_M else []
        return [int(place) for place in (order[len(order) // 2], *ends)]

    def _corners(self) -> list[int]:
        u, v = self._across
        picks = [int(np.argmin(a * u + b * v)) for a in (1, -1) for b in (1, -1)]
        far = int(np.argmax(np.round(self.ground.out_m, 6)))
        return list(dict.fromkeys([*picks, far]))

    def _from(self, place: int) -> Floats:
        start = np.full(len(self.ground.lattice), FAR_M)
        start[place] = 0.0
        return self.ground.lattice.walks_from(start)


def across_axes(ground: Ground) -> tuple[Floats, Floats]:
    """Each place along the columns and along the rows of the lattice. [m]"""
    lattice = ground.lattice
    angle = lattice.grid.angle
    along = np.array([np.cos(angle), np.sin(angle)])
    return lattice.xy @ along, lattice.xy @ np.array([-along[1], along[0]])
