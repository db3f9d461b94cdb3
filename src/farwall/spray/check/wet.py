"""What is wet when, who treads on it, and whether everybody still has a way out.

A band counts as wet as a whole from the first moment of its path, until its
coat is dry: the last end of the coat and its wait to recoat, taken at the long
end, or at the short one where a coat is told to have been begun over it after that: it was
looked at then. The replay goes from event to event: a leg is cut where a band begins, and
the test on each part is exact.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import inf

import numpy as np
import shapely

from farwall.spray.check.nouns import (
    BODY_M,
    CLEAR_M,
    HAIR,
    PLACE_M,
    TIME_MIN,
    Band,
    Clock,
    Fault,
    Piece,
    PlanRead,
)
from farwall.spray.check.people import Leg, Person
from farwall.spray.check.world import World


def recoat_clock(plan: PlanRead, coat: str) -> Clock | None:
    """The wait from the end of a coat until the next may be sprayed and the floor walked on."""
    for clock in plan.clocks:
        if clock.coat == coat and "recoat" in clock.name.lower():
            return clock
    return None


def dry_moments(plan: PlanRead) -> dict[str, float]:
    """When each coat is surely dry, in minutes; infinite where no clock says so."""
    return {coat: _dry(plan, coat) for coat in {field.coat for field in plan.fields}}


def _last_end(plan: PlanRead, coat: str) -> float:
    return max((band.ends for band in plan.bands if band.coat == coat), default=-inf)


def _dry(plan: PlanRead, coat: str) -> float:
    clock = recoat_clock(plan, coat)
    if clock is None:
        return inf
    wait = clock.high_min if clock.high_min is not None else clock.likely_min
    ended, found = _last_end(plan, coat), _begun_over(plan, coat)
    if found is not None and found >= ended + clock.low_min - TIME_MIN:
        return ended + clock.low_min
    return inf if wait is None else ended + wait


def _begun_over(plan: PlanRead, coat: str) -> float | None:
    """When the next coat was begun, where it is told as done: somebody found the floor dry."""
    if plan.so_far is None:
        return None
    told = {name for name, _, _ in plan.so_far.done}
    coats = list(dict.fromkeys(band.coat for band in plan.bands))
    over = coats[coats.index(coat) + 1 :][:1] if coat in coats else []
    done = (band.begins for band in plan.bands if band.coat in over and band.id in told)
    return min(done, default=None)


def not_dry(plan: PlanRead) -> Iterator[Fault]:
    """`not-dry`: a coat begun before the one under it can be dry."""
    first: dict[str, Band] = {}
    for band in plan.bands:
        first.setdefault(band.coat, band)
    coats = list(first)
    for earlier, later in pairwise(coats):
        yield from _recoat(plan, earlier, first[later])


def _recoat(plan: PlanRead, earlier: str, band: Band) -> Iterator[Fault]:
    clock = recoat_clock(plan, earlier)
    ended = _last_end(plan, earlier)
    if clock is None:
        yield Fault(
            "not-dry",
            band.field,
            band.begins,
            f"Coat {band.coat} begins at {band.begins:.2f} min, and the plan has no clock that "
            f"says when coat {earlier} is dry to recoat.",
        )
    elif band.begins < ended + clock.low_min - TIME_MIN:
        yield Fault(
            "not-dry",
            band.field,
            band.begins,
            f"Coat {band.coat} begins at {band.begins:.2f} min; coat {earlier} ended at "
            f"{ended:.2f} min and takes {clock.low_min:.0f} min at the least to dry: "
            f"{ended + clock.low_min - band.begins:.1f} min too soon.",
        )


def trodden(plan: PlanRead, world: World, people: tuple[Person, ...]) -> Iterator[Fault]:
    """`trodden`: a body over wet stain. One fault a piece of the way, at its first moment."""
    bands = plan.bands
    if not bands:
        return
    dry = dry_moments(plan)
    for person in people:
        steps = (
            _Step(bands[band], person.legs[leg], dry[bands[band].coat])
            for band, leg in _near_while_wet(bands, dry, person)
        )
        first: dict[Piece, tuple[float, _Step]] = {}
        for step in steps:
            moment = step.first_touch()
            if moment is not None and moment < first.get(step.leg.piece, (inf, step))[0]:
                first[step.leg.piece] = (moment, step)
        for moment, step in first.values():
            yield step.fault(person.who, moment, world)


def _near_while_wet(
    bands: Sequence[Band], dry: Mapping[str, float], person: Person
) -> Iterator[tuple[int, int]]:
    """Bands and legs, by number, that come close to one another while the band is wet."""
    shapes = np.array([band.shape for band in bands])
    begun = np.array([band.begins for band in bands])
    dried = np.array([dry[band.coat] for band in bands])
    around = shapely.bounds(shapes) + np.array([-1, -1, 1, 1]) * BODY_M
    band, leg = shapely.STRtree(person.lines).query(shapely.box(*around.T))
    begins, ends = person.moments[leg].T
    wet = np.maximum(begins, begun[band]) <= np.minimum(ends, dried[band])
    band, leg = band[wet], leg[wet]
    close = shapely.dwithin(person.lines[leg], shapes[band], CLEAR_M)
    yield from zip(band[close].tolist(), leg[close].tolist(), strict=True)


@dataclass(frozen=True, eq=False)
class _Step:
    """A leg that comes close to a band, wet or not."""

    band: Band
    leg: Leg
    dry_min: float

    def first_touch(self) -> float | None:
        """The first moment at which the body is over the wet band; None where it never is."""
        start = max(self.leg.begins, self.band.begins)
        end = min(self.leg.ends, self.dry_min)
        if start > end:
            return None
        way = self.leg.between(start, end)
        if shapely.distance(way, self.band.shape) >= CLEAR_M - HAIR:
            return None
        met = shapely.intersection(way, shapely.buffer(self.band.shape, CLEAR_M))
        if met.is_empty or not way.length:
            return start
        share = min(way.project(shapely.Point(xy)) for xy in shapely.get_coordinates(met))
        return float(start + (end - start) * share / way.length)

    def fault(self, who: str, moment: float, world: World) -> Fault:
        start = max(self.leg.begins, self.band.begins)
        way = self.leg.between(start, min(self.leg.ends, self.dry_min))
        over = CLEAR_M - float(shapely.distance(way, self.band.shape))
        place = world.place(*self.leg.at(moment))
        return Fault(
            "trodden",
            self.leg.piece.field,
            moment,
            f"At {moment:.2f} min the {who} treads on wet band {self.band.id} of field "
            f"{self.band.field}, {place}, on {self.leg.piece.what}: the body reaches "
            f"{over:.2f} m over it.",
        )


def walls(world: World, people: tuple[Person, ...]) -> Iterator[Fault]:
    """`wall`: a body in a wall or a fixture. One fault a piece of the way."""
    tree = shapely.STRtree(world.obstacles)
    for person in people:
        near = tree.query(person.lines, predicate="dwithin", distance=CLEAR_M - HAIR)
        gaps = shapely.distance(person.lines[near[0]], world.obstacles[near[1]])
        first: dict[Piece, tuple[int, float, int]] = {}
        for leg, gap, obstacle in zip(
            near[0].tolist(), gaps.tolist(), near[1].tolist(), strict=True
        ):
            piece = person.legs[leg].piece
            first[piece] = min(first.get(piece, (leg, gap, obstacle)), (leg, gap, obstacle))
        for leg, _, obstacle in first.values():
            yield _wall(world, person, person.legs[leg], obstacle)


def _wall(world: World, person: Person, leg: Leg, obstacle: int) -> Fault:
    way, shape = leg.between(leg.begins, leg.ends), world.obstacles[obstacle]
    gap = float(shapely.distance(way, shape))
    closest = shapely.get_coordinates(shapely.shortest_line(way, shape))[0]
    share = way.project(shapely.Point(closest)) / way.length if way.length else 0.0
    moment = leg.begins + share * (leg.ends - leg.begins)
    name = world.obstacle_names[obstacle]
    how = f"goes through {name}" if gap == 0 else f"comes within {gap:.2f} m of {name}"
    return Fault(
        "wall",
        leg.piece.field,
        moment,
        f"At {moment:.2f} min the {person.who} {how}, {world.place(*closest.tolist())}, on "
        f"{leg.piece.what}; the body needs {CLEAR_M + PLACE_M:g} m.",
    )
