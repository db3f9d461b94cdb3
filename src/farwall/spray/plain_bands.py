"""Plain bands beside the best: straight ones, easily found on a bare floor.

They run across the short side; where such a sweep cannot end at the way out, along it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from contextlib import suppress
from dataclasses import replace

import numpy as np

from farwall.errors import Unanswerable
from farwall.facts.job import ChoiceName
from farwall.facts.plan import Choice, PlanTools
from farwall.nouns import dataclass
from farwall.spray.fitting import Fitted
from farwall.spray.front import Front, Ground
from farwall.spray.lattice import Floats
from farwall.spray.remedies.case import NARROWER
from farwall.spray.starts import across_axes
from farwall.spray.sweep import Sweep
from farwall.spray.sweeper import Sweeper

_ALIKE = 1.05
"""Sides that differ by less are alike: bands may then run across either. Rank: guess."""

Pick = Callable[[Sequence[Front]], list[Front]]
_WALL = "wall"
_STRAIGHT = 0.9999
"""Correlation of the walk to a wall and the place along a line from which both are one; walks over
a lattice bend a hair."""


@dataclass
class Choosing:
    """The bands of one field to choose from; `timed` puts a sweep on its clock."""

    sweeper: Sweeper
    tools: PlanTools
    timed: Callable[[Sweep], Fitted]
    begun_min: float
    best: Fitted | None = None
    plain: Fitted | None = None
    takes_plain: bool = False

    def taken(self, best: Fitted, wish: ChoiceName) -> Fitted:
        """The best way or, where that is wished for and its edges live, the plain one."""
        self.best = best
        if wish == "best":
            return best
        self.plain = self._plain(best)
        if self.plain is None or self.plain.held.spare_min < 0:
            return best
        self.takes_plain = True
        return self.plain

    def told(self) -> tuple[Choice, ...]:
        """The best way and the plain one; only the best where nobody can walk plain bands."""
        best = self.best
        if best is None:
            return ()
        plain = self.plain or self._plain(best)
        if plain is None:
            return (_told("best", best, self.begun_min, chosen=True),)
        return (
            _told("best", best, self.begun_min, chosen=not self.takes_plain),
            _told("plain", plain, self.begun_min, chosen=self.takes_plain),
        )

    def _plain(self, best: Fitted) -> Fitted | None:
        if _is_plain(best.sweep):
            return best
        return plain_way(self.sweeper, self.tools, self.timed)


def _told(name: ChoiceName, way: Fitted, begun_min: float, *, chosen: bool) -> Choice:
    timed, after = way.timed, way.after
    return Choice(
        name=name,
        peak_age_min=timed.peak_age_min,
        margin_min=round(way.held.spare_min, 4),
        minutes=round(after.minute - begun_min, 4),
        litres=round(sum(band.litres for band in timed.bands), 4),
        bands=len(timed.bands),
        chosen=chosen,
    )


def plain_way(
    sweeper: Sweeper,
    tools: PlanTools,
    timed: Callable[[Sweep], Fitted],
) -> Fitted | None:
    """Straight bands across the short side, as wide as they can be without losing the edge.

    At full width where no width holds; None where nobody can walk them.
    """
    across = straight_fronts(sweeper.field.ground)
    widest: Fitted | None = None
    for share in (1.0, *NARROWER):
        narrower = replace(tools, band_m=tools.band_m * share)
        picks = (across, _any_straight) if share == 1.0 else (across,)
        way = _first_way(sweeper, narrower, picks, timed)
        if way is None:
            if widest is None:
                return None  # a sweep that ends where there is no way out is no better narrower
            continue
        widest = widest or way
        if way.held.open_time.low <= 0 or way.held.spare_min >= 0:
            return way
    return widest


def _first_way(
    sweeper: Sweeper,
    tools: PlanTools,
    picks: Sequence[Pick],
    timed: Callable[[Sweep], Fitted],
) -> Fitted | None:
    """The first of these that somebody can walk, on the clock."""
    for pick in picks:
        with suppress(Unanswerable):
            sweep = sweeper.along(tools, pick)
            return timed(sweep)
    return None


def _any_straight(fronts: Sequence[Front]) -> list[Front]:
    return [f for f in fronts if f.name == _WALL or f.name.startswith("straight")]


def straight_fronts(ground: Ground) -> Pick:
    """Picks those that move along the long side of the field, either way; on a square along any.
    A sweep toward the wall of the way out is one of them where that wall runs across.
    """
    lattice = ground.lattice
    sides = [float(np.ptp(steps)) + 1.0 for steps in (lattice.column, lattice.row)]
    lines = dict(zip("uv", across_axes(ground), strict=True))
    long_ways = {
        axis for axis, side in zip("uv", sides, strict=True) if side * _ALIKE >= max(sides)
    }
    names = {f"straight {sign}{axis}" for sign in ("", "-") for axis in long_ways}
    wall_m = ground.wall_m
    if wall_m is not None and any(_along(wall_m, lines[axis]) for axis in long_ways):
        names.add("wall")

    def pick(fronts: Sequence[Front]) -> list[Front]:
        return [front for front in fronts if front.name in names]

    return pick


def _along(wall_m: Floats, line: Floats) -> bool:
    """Whether the walk to a wall grows, or falls, as one goes along this line."""
    away, place = wall_m - wall_m.mean(), line - line.mean()
    size = float(np.sqrt((away**2).sum() * (place**2).sum()))
    return size > 0 and abs(float(away @ place)) >= _STRAIGHT * size


def _is_plain(sweep: Sweep) -> bool:
    """Whether these bands are plain ones already: then there is nothing else to choose."""
    return sweep.ground is not None and bool(straight_fronts(sweep.ground)([sweep.front]))


def wish_for(
    general: ChoiceName, particular: dict[str, ChoiceName], field_id: str, rooms: Sequence[str]
) -> ChoiceName:
    """What is wished for a field: told by its own id, else by a room of it, else for all."""
    for name in (field_id, *rooms):
        if name in particular:
            return particular[name]
    return general
