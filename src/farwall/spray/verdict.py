"""Does a field fit, and if not, what would make it possible."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.errors import Unanswerable
from farwall.facts.job import ChoiceName
from farwall.facts.plan import OpenTime, PlanTools, Remedy, Verdict
from farwall.floor.nouns import Exit, Floor, SawCut
from farwall.spray.crew import age_with
from farwall.spray.fields import Pieces, Sweeps
from farwall.spray.order import Step
from farwall.spray.refills import Flow
from farwall.spray.schedule import Day, Timed
from farwall.spray.sweep import Sweep
from farwall.spray.sweeper import Sweeper
from farwall.spray.world import World, build_world
from farwall.units import feet_and_inches

_HOPE = 1.2
"""A first guess at the oldest edge may be this much too old and still come right."""
NARROWER = (0.85, 0.7, 0.55)
"""Shares of the full band width that are tried where the full width loses the edge."""


@dataclass(frozen=True)
class CoatFacts:
    """What a coat needs besides the order: its id, thirst, crew, tools and how long edges live."""

    id: str
    l_per_m2: float
    helper: bool
    tools: PlanTools
    open_time: Callable[[Pieces, float], OpenTime]
    thorough: bool = False
    """Seek younger edges also where plain bands hold."""
    sprayers: int = 1
    wish: Callable[[str, Sequence[str]], ChoiceName] = lambda _field, _rooms: "best"
    """Which bands are wished for in a field, by its id and its rooms."""


@dataclass(frozen=True)
class Case:
    """One field to be judged: its place in the order, its sweep, the coat, the day so far."""

    world: World
    step: Step
    sweeper: Sweeper
    sweep: Sweep
    coat: CoatFacts
    day: Day


def _nothing_refused(_pieces: Pieces, _at_min: float) -> tuple[Remedy, ...]:
    return ()


@dataclass(frozen=True)
class Judge:
    """Weighs each field against its budget.

    `refused` says of a field at a minute why its slab may not be stained at all
    and what might change that; empty when it may.
    """

    floor: Floor
    exits: tuple[Exit, ...]
    refused: Callable[[Pieces, float], tuple[Remedy, ...]] = _nothing_refused

    def verdict(
        self, case: Case, timed: Timed, lasting: OpenTime
    ) -> tuple[Verdict, tuple[Remedy, ...]]:
        """The verdict and, where it is not a plain yes, what would help and by how much."""
        refused = self.refused(case.step.pieces, case.day.minute)
        if refused:
            return "cannot", refused
        trial = _Trial(self, case, lasting.low)
        if timed.peak_age_min > lasting.low:
            return _mend(trial)
        if any(band.sprayer == 2 for band in timed.bands):
            one = trial.age(case.coat.tools, helper=case.coat.helper, sprayers=1)
            if not trial.works(one):
                return "two", (Remedy("two", "Only with both sprayers at work.", one),)
        begins = timed.bands[0].start_min
        if not case.coat.helper or all(refill.at_min <= begins for refill in timed.refills):
            return "fits", ()  # filled before the first stroke no edge waits, whoever fills
        alone = trial.age(case.coat.tools, helper=False)
        if alone is not None and alone <= lasting.low:
            return "fits", ()
        return "helper", (Remedy("helper", "Only with the helper who swaps tanks.", alone),)


def _mend(trial: _Trial) -> tuple[Verdict, tuple[Remedy, ...]]:
    """What would make the field fit: a helper, a second sprayer, or a cut; else no."""
    offers: list[tuple[Verdict, Remedy]] = []
    if not trial.case.coat.helper:
        offers.append(("helper", trial.with_helper()))
    if trial.case.coat.sprayers < 2:
        offers.append(("two", trial.with_two()))
    offers.append(("stop-line", trial.with_cut()))
    works = [(verdict, remedy) for verdict, remedy in offers if trial.works(remedy.peak_age_min)]
    rest = [(verdict, remedy) for verdict, remedy in offers if (verdict, remedy) not in works]
    remedies = tuple(remedy for _, remedy in (*works, *rest))
    return (works[0][0] if works else "cannot"), remedies


@dataclass(frozen=True)
class _Trial:
    """The same field planned once more under other conditions, for an edge of `budget_min`."""

    judge: Judge
    case: Case
    budget_min: float

    def works(self, age_min: float | None) -> bool:
        """Whether an edge of this age is still live."""
        return age_min is not None and age_min <= self.budget_min

    def with_helper(self) -> Remedy:
        """A helper who swaps tanks, with narrower bands where that is needed too."""
        words = "A helper who swaps full tanks"
        return self._widest("helper", words, self.case.coat.tools, helper=True)

    def with_two(self) -> Remedy:
        """Two who spray each band that has room for both, each with a tank: their real layout."""
        words = "Two sprayers side by side on each band, each with a full tank"
        case = self.case
        return self._widest("two", words, case.coat.tools, helper=case.coat.helper, sprayers=2)

    def _widest(
        self, code: str, words: str, tools: PlanTools, *, helper: bool, sprayers: int | None = None
    ) -> Remedy:
        """The remedy with the widest bands that it works with, else with full ones."""
        full = self.age(tools, helper=helper, sprayers=sprayers)
        if self.works(full):
            return Remedy(code, f"{words}.", full)
        for share in NARROWER:
            narrower = replace(tools, band_m=tools.band_m * share)
            age = self.age(narrower, helper=helper, sprayers=sprayers)
            if self.works(age):
                narrow = f"{words}, and bands of {tools.band_m * share:.2f} m."
                return Remedy(code, narrow, age)
        return Remedy(code, f"{words}.", full)

    def with_cut(self) -> Remedy:
        """The largest piece of the field cut across its middle, as a saw cut before cleaning."""
        pieces = self.case.world.pieces
        name = max(self.case.step.pieces, key=lambda piece: pieces[piece].shape.area)
        cut = middle_cut(pieces[name].shape)
        half_m = long_way_m(pieces[name].shape) / 2
        words = (
            f"A saw cut straight across {pieces[name].room}, {feet_and_inches(half_m)} "
            f"({half_m:.2f} m) from either end of its long way, made before cleaning, to stop at."
        )
        return Remedy("stop-line", words, self._oldest_of_parts(name, cut))

    def age(self, tools: PlanTools, *, helper: bool, sprayers: int | None = None) -> float | None:
        """The oldest edge with these tools and crew; None if not doable.

        sprayers: how many of them, as many as the crew has when not told.
        """
        case = self.case
        try:
            sweep = case.sweep
            if tools.band_m != case.coat.tools.band_m:
                if case.sweeper.laid(tools).longest_wait_min > _HOPE * self.budget_min:
                    return None
                sweep = case.sweeper.sweep(tools)
            need_l = sweep.wetted_m2 * case.coat.l_per_m2
            flow = Flow(case.coat.id, case.coat.l_per_m2, helper, tools, need_l)
            return age_with(sprayers or case.coat.sprayers, sweep, case.day, flow, case.world)
        except Unanswerable:
            return None

    def _oldest_of_parts(self, name: str, cut: SawCut) -> float | None:
        """The oldest edge of any part once the cut is made, each by its best way out."""
        floor = replace(self.judge.floor, saw_cuts=(*self.judge.floor.saw_cuts, cut))
        world = build_world(floor, self.judge.exits)
        parts = [piece for piece in world.pieces if piece not in self.case.world.pieces]
        if len(parts) < 2:
            return None
        sweeps = Sweeps(world, self.case.coat.tools, self.case.coat.l_per_m2, self.case.coat.helper)
        rest = [piece for piece in self.case.step.pieces if piece in world.pieces and piece != name]
        oldest = max(sweeps.best_age_min(frozenset([part])) for part in [*parts, *rest])
        return round(oldest, 2) if oldest < float("inf") else None


def long_way_m(shape: BaseGeometry) -> float:
    """Length of a floor along its long way. [m]"""
    corners = shapely.get_coordinates(shapely.minimum_rotated_rectangle(shape))
    return float(np.hypot(*np.diff(corners, axis=0).T).max())


def middle_cut(shape: BaseGeometry) -> SawCut:
    """A straight cut through the middle of a floor, across its long way."""
    box = shapely.minimum_rotated_rectangle(shape)
    corners = shapely.get_coordinates(box)[:4]
    sides = np.hypot(*np.diff(np.vstack([corners, corners[:1]]), axis=0).T)
    first = 0 if sides[0] >= sides[1] else 1
    one = (corners[first] + corners[(first + 1) % 4]) / 2
    two = (corners[(first + 2) % 4] + corners[(first + 3) % 4]) / 2
    ends = tuple((round(float(x), 3), round(float(y), 3)) for x, y in (one, two))
    return SawCut(ends, id="proposed cut")
