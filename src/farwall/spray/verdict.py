"""Does a field fit, and if not, what would make it possible."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.errors import Unanswerable
from farwall.facts.plan import OpenTime, PlanTools, Remedy, Verdict
from farwall.floor.nouns import Exit, Floor, SawCut
from farwall.spray.fields import Pieces, Sweeps
from farwall.spray.order import Step
from farwall.spray.schedule import Day, Flow, Timed, time_sweep
from farwall.spray.sweep import Sweep
from farwall.spray.world import World, build_world

_TEAM = 2.0


@dataclass(frozen=True)
class CoatFacts:
    """What a coat needs besides the order: its id, thirst, crew, tools and how long edges live."""

    id: str
    l_per_m2: float
    helper: bool
    tools: PlanTools
    open_time: Callable[[Pieces, float], OpenTime]


@dataclass(frozen=True)
class Case:
    """One field to be judged: its place in the order, its sweep, the coat, the day so far."""

    world: World
    step: Step
    sweep: Sweep
    coat: CoatFacts
    day: Day


@dataclass(frozen=True)
class Judge:
    """Weighs each field against its budget; `refused` says why none can fit and what might."""

    floor: Floor
    exits: tuple[Exit, ...]
    refused: tuple[Remedy, ...] = ()

    def verdict(
        self, case: Case, timed: Timed, lasting: OpenTime
    ) -> tuple[Verdict, tuple[Remedy, ...]]:
        """The verdict and, where it is not a plain yes, what would help and by how much."""
        if self.refused:
            return "cannot", self.refused
        trial = _Trial(self, case)
        if timed.peak_age_min > lasting.low:
            return _mend(trial, lasting.low)
        if not case.coat.helper or not timed.refills:
            return "fits", ()
        alone = trial.age(helper=False)
        if alone is not None and alone <= lasting.low:
            return "fits", ()
        return "helper", (Remedy("helper", "Only with the helper who swaps tanks.", alone),)


def _mend(trial: _Trial, budget: float) -> tuple[Verdict, tuple[Remedy, ...]]:
    """What would make the field fit: a helper, a second sprayer, or a cut; else no."""
    offers: list[tuple[Verdict, Remedy]] = []
    if not trial.case.coat.helper:
        offers.append(
            ("helper", Remedy("helper", "A helper who swaps full tanks.", trial.age(helper=True)))
        )
    offers.append(
        ("two", Remedy("two", "Two sprayers side by side on each band.", trial.age_of_two()))
    )
    offers.append(("stop-line", trial.extra_cut()))
    good = [offer for offer in offers if _works(offer[1], budget)]
    remedies = tuple(remedy for _, remedy in sorted(offers, key=lambda o: not _works(o[1], budget)))
    for word in ("helper", "two", "stop-line"):
        if any(verdict == word for verdict, _ in good):
            return word, remedies
    return "cannot", remedies


def _works(remedy: Remedy, budget: float) -> bool:
    return remedy.peak_age_min is not None and remedy.peak_age_min <= budget


@dataclass(frozen=True)
class _Trial:
    """The same field planned once more under other conditions."""

    judge: Judge
    case: Case

    def age(self, *, helper: bool) -> float | None:
        """The oldest edge with or without a helper; None if it cannot be done."""
        return self._aged(self.case.coat.tools, helper=helper)

    def age_of_two(self) -> float | None:
        """The oldest edge when two spray each band from its ends to the middle."""
        tools = replace(
            self.case.coat.tools, spray_m2_min=self.case.coat.tools.spray_m2_min * _TEAM
        )
        return self._aged(tools, helper=True)

    def extra_cut(self) -> Remedy:
        """The largest piece of the field cut across its middle, as a saw cut before cleaning."""
        name = max(
            self.case.step.pieces, key=lambda piece: self.case.world.pieces[piece].shape.area
        )
        cut = middle_cut(self.case.world.pieces[name].shape)
        (x0, y0), (x1, y1) = cut.line[0], cut.line[-1]
        words = (
            f"A saw cut from ({x0:.1f}, {y0:.1f}) to ({x1:.1f}, {y1:.1f}) m, made before "
            "cleaning, to stop at."
        )
        return Remedy("stop-line", words, self._oldest_of_parts(name, cut))

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

    def _aged(self, tools: PlanTools, *, helper: bool) -> float | None:
        coat, sweep = self.case.coat, self.case.sweep
        try:
            flow = Flow(coat.id, coat.l_per_m2, helper, tools, sweep.wetted_m2 * coat.l_per_m2)
            return time_sweep(sweep, self.case.day, flow, field_id="trial")[0].peak_age_min
        except Unanswerable:
            return None


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
