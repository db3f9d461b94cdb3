"""One field swept: its strips in order, the passes over them, and its live edges.

Nothing here knows the hour, the tank or the coat; `schedule` adds them.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from farwall.errors import Unanswerable
from farwall.facts.plan import PlanTools
from farwall.floor.geometry import Point
from farwall.spray.approach import connected, door_sources, wall_of, wall_sources
from farwall.spray.bands import Strips, cut_into_strips
from farwall.spray.bound import least_front_m
from farwall.spray.edges import Edge, EdgeTable, edges_of, flipped
from farwall.spray.geodesic import WalkMap, walk_map
from farwall.spray.passes import KEEP_OFF_M, REACH_SPARE_M, Pass, lay_passes
from farwall.spray.routes import gap_m
from farwall.spray.sequence import Pace, order_strips
from farwall.spray.world import Seam, World, fused

_OVERLAP_SHARE = 1.25
_TANK_SHARE = 0.85
_SMALL_M2 = 9.0
"""Up to this floor rings about the door are as good as straight strips, and quicker to lay."""
_SHALLOWER = (1.0, 0.8, 0.6)


@dataclass(frozen=True)
class Sweep:
    """A field swept toward one seam."""

    pieces: tuple[str, ...]
    exit: Seam
    passes: tuple[Pass, ...]
    edges: tuple[Edge, ...]
    depth_m: float
    walks: WalkMap
    grown: tuple[tuple[float, float], ...]

    @cached_property
    def table(self) -> EdgeTable:
        """Its edges, made ready to be asked for their age."""
        return EdgeTable(self.edges)

    @cached_property
    def bound_m(self) -> float:
        """A front that no sweep of this field toward this exit can undercut (`bound`)."""
        return least_front_m(self.walks, self.grown, self.exit)

    @property
    def wetted_m2(self) -> float:
        """Floor and overlap together."""
        return sum(each.wetted_m2 for each in self.passes)

    @property
    def area_m2(self) -> float:
        """Floor of the field."""
        return sum(each.strip.area_m2 for each in self.passes)


def sweep_field(
    world: World,
    pieces: Sequence[str],
    exit_seam: Seam,
    tools: PlanTools,
    *,
    most_m2: float = math.inf,
) -> Sweep:
    """The farthest-first sweep of connected `pieces` that ends at `exit_seam`.

    most_m2: what one tank covers. Raises `Unanswerable` when a body cannot
    get at some part of the field.
    """
    return swept(lay_strips(world, pieces, exit_seam, tools, most_m2=most_m2), tools)


def one_tank_m2(tools: PlanTools, l_per_m2: float) -> float:
    """Floor that a full tank covers before its reserve, its overlaps counted. [m2]"""
    return tools.tank_l * _TANK_SHARE / (l_per_m2 * _OVERLAP_SHARE)


@dataclass(frozen=True)
class Laid:
    """A field cut into strips and put in order, before anybody walks on it.

    `world` is the house with the field's own saw cuts closed: inside a field
    nothing stops at them.
    """

    world: World
    pieces: tuple[str, ...]
    exit: Seam
    walks: WalkMap
    cut: Strips
    order: tuple[int, ...]
    longest_wait_min: float
    """From the start of a strip to the start of its neighbour: a first guess at the oldest edge."""
    most_m2: float = math.inf

    @property
    def area_m2(self) -> float:
        """Floor of the field."""
        return sum(strip.area_m2 for strip in self.cut.strips)


def lay_strips(
    world: World,
    pieces: Sequence[str],
    exit_seam: Seam,
    tools: PlanTools,
    *,
    most_m2: float = math.inf,
    scraps: bool = True,
) -> Laid:
    """The strips of connected `pieces` toward `exit_seam`, in order, farthest first.

    Rings about the exit, or straight strips along the wall it lies in, the
    last of them swept toward the exit: whichever lets edges wait less.
    most_m2: what one tank covers; no strip is larger where that can be had.
    Raises `Unanswerable` when the floor of the pieces does not hang together.
    """
    world, pieces, exit_seam = fused(world, pieces, exit_seam)
    ground = connected(world, pieces)
    walks = walk_map(ground, door_sources(exit_seam))
    plain = _Cutter(world, tuple(pieces), exit_seam, tools, most_m2, scraps)
    about_door = plain.laid(walks, None)
    wall = wall_of(world, pieces, exit_seam) if about_door.area_m2 > _SMALL_M2 else None
    if wall is None:
        return about_door
    try:
        along_wall = plain.laid(walk_map(ground, wall_sources(wall)), about_door)
    except Unanswerable:
        return about_door
    return min(about_door, along_wall, key=lambda laid: laid.longest_wait_min)


@dataclass(frozen=True)
class _Cutter:
    """Cuts one field into strips, by whatever walks it is handed."""

    world: World
    pieces: tuple[str, ...]
    exit: Seam
    tools: PlanTools
    most_m2: float
    scraps: bool

    def laid(self, walks: WalkMap, about_door: Laid | None) -> Laid:
        """The strips by these walks; `about_door` when they lead to the wall and not the door."""
        tools = self.tools
        cut = cut_into_strips(
            self.world,
            self.pieces,
            walks,
            band_m=tools.band_m,
            reach_m=tools.reach_m - KEEP_OFF_M - REACH_SPARE_M,
            scraps=self.scraps,
            most_m2=self.most_m2,
            last=None if about_door is None else self._walks_along,
        )
        order, wait = order_strips(cut, Pace(tools.spray_m2_min, tools.walk_m_min))
        if about_door is not None:
            walks, cut = about_door.walks, replace(cut, grown=about_door.cut.grown)
        return Laid(
            self.world, self.pieces, self.exit, walks, cut, tuple(order), wait, self.most_m2
        )

    def _walks_along(self, along: World, names: Sequence[str]) -> WalkMap:
        return walk_map(connected(along, names), door_sources(self.exit))


def swept(laid: Laid, tools: PlanTools) -> Sweep:
    """The sweep over strips that are laid: passes, edges, and each pass the better way round.

    Strips that the wand cannot reach over are laid again without joined
    scraps, then shallower.

    Raises `Unanswerable` when there is nowhere to stand before a strip.
    """
    passes = lay_passes(laid.world, laid.cut, laid.order, laid.exit, tools)
    for share in _SHALLOWER:
        if all(each.within(tools.reach_m) for each in passes):
            break
        finer = replace(tools, band_m=tools.band_m * share)
        laid = lay_strips(
            laid.world, laid.pieces, laid.exit, finer, most_m2=laid.most_m2, scraps=False
        )
        passes = lay_passes(laid.world, laid.cut, laid.order, laid.exit, tools)
    if not all(each.within(tools.reach_m) for each in passes):
        raise Unanswerable(f"{', '.join(laid.pieces)}: the wand does not reach all of the floor.")
    edges = edges_of(laid.cut, laid.order, passes)
    sweep = Sweep(
        laid.pieces, laid.exit, passes, edges, laid.cut.depth_m, laid.walks, laid.cut.grown
    )
    return turn_passes(sweep, tools)


def turn_passes(sweep: Sweep, tools: PlanTools) -> Sweep:
    """The sweep with each pass walked in the direction that keeps the oldest edge youngest."""
    turned = [False] * len(sweep.passes)
    best = _oldest(sweep, turned, tools)
    for _ in range(3):
        before = best
        for index in range(len(turned)):
            if sweep.passes[index].length_m < 1e-6:
                continue
            for span in (1, 2):
                trial = list(turned)
                for each in range(index, min(index + span, len(turned))):
                    moves = sweep.passes[each].length_m >= 1e-6
                    trial[each] = trial[each] != moves
                found = _oldest(sweep, trial, tools)
                if found < best:
                    turned, best = trial, found
        if best == before:
            break
    passes = tuple(
        replace(each, path=each.path[::-1]) if flip else each
        for each, flip in zip(sweep.passes, turned, strict=True)
    )
    edges = tuple(
        replace(
            edge,
            first_share=flipped(edge.first_share, turned=turned[edge.first]),
            then_share=flipped(edge.then_share, turned=turned[edge.then]),
        )
        for edge in sweep.edges
    )
    return replace(sweep, passes=passes, edges=edges)


def _oldest(sweep: Sweep, turned: Sequence[bool], tools: PlanTools) -> tuple[float, float]:
    """Peak age without refills, then all walking between passes, in minutes."""
    start, now, walked = [], 0.0, 0.0
    last: Point | None = None
    for each, flip in zip(sweep.passes, turned, strict=True):
        path = each.path[::-1] if flip else each.path
        if last is not None:
            hop = gap_m(last, path[0]) / tools.walk_m_min
            now, walked = now + hop, walked + hop
        minutes = each.minutes(tools)
        start.append((now, minutes))
        now += minutes
        last = path[-1]
    return (round(sweep.table.peak_age_min(start, turned), 3), round(walked, 4))


def swept_age_min(sweep: Sweep, tools: PlanTools) -> float:
    """The oldest edge of the sweep when nothing interrupts it, in minutes."""
    return _oldest(sweep, [False] * len(sweep.passes), tools)[0]


def pause_min(sweep: Sweep, tools: PlanTools, *, helper: bool) -> float:
    """What one refill adds to an edge that is live: a swap, or a walk out, a filling, a walk in."""
    if helper:
        return tools.swap_min
    return tools.refill_min + sweep.depth_m * len(sweep.passes) / tools.walk_m_min


def equivalent_front_m(sweep: Sweep) -> float:
    """E = R max|grad T| of the strips in order: floor sprayed while an edge waits, per depth.

    The last strip meets nobody and is swept all the same: its own floor counts too.
    """
    areas = [each.strip.area_m2 for each in sweep.passes]
    before = np.concatenate([[0.0], np.cumsum(areas)])
    waits = [before[edge.then] - before[edge.first] for edge in sweep.edges]
    return float(max([*waits, *areas]) / sweep.depth_m)
