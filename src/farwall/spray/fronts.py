"""Which sweeps of a field are worth cutting into bands: the plain ones first."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from farwall.errors import Unanswerable
from farwall.nouns import dataclass
from farwall.spray.approach import connected, wall_of
from farwall.spray.ball import Ball, ball_of
from farwall.spray.easing import eased
from farwall.spray.front import CELLS_A_BAND, Front, Ground, front_of, ground_of, step_for
from farwall.spray.lattice import FAR_M, Lattice, lattice_of
from farwall.spray.levelling import Stage, levelled, levelled_in_stages
from farwall.spray.starts import RINGS, Starts
from farwall.spray.world import Seam, World, fused

PLAIN_ENOUGH = 1.25
"""The plainest sweep is taken first when its front is at most so much longer than the best plain
one: straight lines are found sooner on a bare floor. Rank: guess."""
_LEVELLED = 2
_ROUNDS = 24
_SMOOTHED = 8
_SHORTLY = (Stage(6, 0.65, 4), Stage(8, 0.8, 2), Stage(10, 0.92, 1))
_AT_LENGTH = (
    Stage(6, 0.65, 9),
    Stage(10, 0.75, 5),
    Stage(16, 0.84, 3),
    Stage(20, 0.92, 2),
    Stage(12, 0.97, 1),
)
_FINER = (1.0, 0.5, 0.25)
_ONCE_MORE = (Stage(6, 0.7, 3), Stage(10, 0.82, 2), Stage(14, 0.92, 1))
_SHAKES, _SHAKES_MORE = 16, 80
_EASED_EACH, _EASED_ROUNDS = 8, 14
_WORTH_EASING = 1.06
"""Easing seldom takes off more than so much of a front that was levelled before."""
_SHORTLY_ALONE = (Stage(6, 0.8, 1), Stage(8, 0.92, 1))
_LONGER = (Stage(8, 0.65, 1), Stage(14, 0.78, 1), Stage(20, 0.9, 1), Stage(16, 0.96, 1))
_WAVES = 4
_HEIGHTS = (0.05, 0.12, 0.2, 0.03)
_OFTEN = (0.6, 2.8)
"""Waves over the longer side of a floor. How many, how high and how often: tried on twelve shapes
of the bench; the last of sixteen times are seldom of use."""
_GOLDEN = np.pi * (3 - np.sqrt(5))
"""Turned by the golden angle no two waves run alike."""
_SPREAD = (np.sqrt(5) - 1) / 2
"""Multiples of the golden section, less whole ones, are spread evenly from 0 to 1."""


@dataclass(frozen=True)
class FieldGround:
    """A field ready to be swept: its saw cuts closed, its pieces in order, its lattice."""

    world: World
    pieces: tuple[str, ...]
    exit: Seam
    ground: Ground


@dataclass(frozen=True)
class _Floor:
    """What a field is, whatever way it is left."""

    world: World
    pieces: tuple[str, ...]
    lattice: Lattice
    ball: Ball


Floors = dict[tuple[tuple[str, ...], float, bool], list[_Floor]]
"""Lattices made so far: the same field is asked for with every way out."""


def field_ground(
    world: World,
    pieces: Sequence[str],
    exit_seam: Seam,
    band_m: float,
    *,
    kept: Floors,
    rough: bool = False,
) -> FieldGround:
    """The ground of connected `pieces` with its way out; lattices are looked up in `kept`.

    rough: four steps a band only, enough for a first guess.

    Raises `Unanswerable` when the floor does not hang together.
    """
    closed, inside, exit_seam = fused(world, pieces, exit_seam)
    floors = kept.setdefault((tuple(pieces), band_m, rough), [])
    beside = inside.index(exit_seam.a if exit_seam.a in inside else exit_seam.b)
    wall = wall_of(closed, inside, exit_seam) if len(inside) == 1 else None
    for level in range(len(_FINER)):
        if len(floors) == level:
            floors.append(_floor_of(closed, inside, band_m, _FINER[level], rough=rough))
        found = floors[level]
        if not (found.lattice.owner == beside).any():
            continue
        ground = ground_of(found.lattice, found.ball, exit_seam.chord, beside=beside, wall=wall)
        if float(ground.out_m.max()) < FAR_M / 2:
            return FieldGround(closed, inside, exit_seam, ground)
    raise Unanswerable(f"{world.called(pieces)}: the floor falls apart into separate places.")


def _floor_of(
    world: World, pieces: tuple[str, ...], band_m: float, finer: float, *, rough: bool
) -> _Floor:
    floor = connected(world, pieces)
    shapes = [world.pieces[name].inner for name in pieces]
    step = step_for(floor.area, band_m)
    step = max(step, band_m / CELLS_A_BAND) if rough else step
    lattice = lattice_of(floor, shapes, step * finer)
    return _Floor(world, pieces, lattice, ball_of(lattice, band_m))


def plain_fronts(ground: Ground) -> list[Front]:
    """Straight sweeps and rings, those whose bands are easiest to find on a bare floor first."""
    return [front_of(ground, late, name) for name, late in Starts(ground).plain()]


def levelled_front(ground: Ground, plain: Sequence[Front]) -> Front:
    """The best sweep found by levelling the best plain ones and those that lean to the exit."""
    leaning = [front_of(ground, late, name) for name, late in Starts(ground).leaning()]
    best = sorted([*plain, *leaning], key=lambda front: front.equivalent_m)
    return levelled(ground, best[:_LEVELLED], rounds=_ROUNDS)


def smoothed_front(ground: Ground, plain: Sequence[Front]) -> Front:
    """The best sweep found by levelling the best of many starts in stages, for a short while.

    Its front is the shorter one as a rule, but its level lines are wilder: as bands either may
    have the younger edges.
    """
    best = sorted([*plain, *_other_starts(ground)], key=lambda front: front.equivalent_m)
    return levelled_in_stages(ground, best[:_SMOOTHED], _SHORTLY)


def shortest_known(
    ground: Ground, plain: Sequence[Front], *, enough_m: float = 0.0, wanted_m: float = np.inf
) -> Front:
    """The best sweep found by levelling every start for a long while, then shaken, levelled and
    eased over and over, seconds for a room.

    Whether bands are easy to find by it, or it can be walked, is not asked. Stops at
    a front of `enough_m`; one longer than `wanted_m` is shaken up to five times as often, and
    each sweep eased that comes of it: some minutes for a room.
    """
    starts = [*plain, *_other_starts(ground)]
    found = levelled_in_stages(ground, starts, _AT_LENGTH, enough_m=enough_m)
    for number in range(_SHAKES):
        if found.equivalent_m <= enough_m:
            return found
        shaken = [found, *_shaken(ground, found, number)]
        found = levelled_in_stages(ground, shaken, _ONCE_MORE, enough_m=enough_m)
        if number % _EASED_EACH == 0:
            found = eased(ground, found)
    found = eased(ground, found)
    for number in range(_SHAKES, _SHAKES + _SHAKES_MORE):
        if found.equivalent_m <= max(enough_m, wanted_m):
            break
        found = _shaken_and_eased(ground, found, number)
    return found


def _shaken_and_eased(ground: Ground, front: Front, number: int) -> Front:
    """The best of a sweep and of what comes of it shaken, each levelled for a while and eased."""
    stages = _LONGER if number % 2 else _SHORTLY_ALONE
    found = front
    for shaken in _shaken(ground, front, number):
        level = levelled_in_stages(ground, [shaken], stages)
        if level.equivalent_m <= _WORTH_EASING * found.equivalent_m:
            level = eased(ground, level, rounds=_EASED_ROUNDS)
        found = min(found, level, key=lambda one: one.equivalent_m)
    return found


def _shaken(ground: Ground, front: Front, number: int) -> list[Front]:
    """A sweep with long waves laid over it, each another way: to get out of where it is stuck."""
    lattice = ground.lattice
    uv = lattice.grid.to_uv(lattice.xy)
    uv = (uv - uv.mean(axis=0)) / float(np.ptp(uv, axis=0).max())
    height = _HEIGHTS[number % len(_HEIGHTS)] * lattice.floor.area
    shaken = []
    for wave in range(_WAVES * number, _WAVES * (number + 1)):
        turn, often = wave * _GOLDEN, _OFTEN[0] + (_OFTEN[1] - _OFTEN[0]) * (wave * _SPREAD % 1)
        high = np.sin(2 * np.pi * often * (uv @ [np.cos(turn), np.sin(turn)]) + wave)
        late = front.before_m2 + (-1) ** wave * height * high
        shaken.append(front_of(ground, late, f"shaken {wave}"))
    return shaken


def _other_starts(ground: Ground) -> list[Front]:
    starts = Starts(ground)
    return [front_of(ground, late, name) for name, late in starts.leaning() + starts.stretched()]


def plainest(fronts: Sequence[Front]) -> Front:
    """The best straight one, if its front is not much longer than the shortest; else the shortest.

    Of straight ones alike the one that comes nearer to the exit late is taken, so that a floor
    seen in a mirror or turned is swept the same.
    """
    least = min(front.equivalent_m for front in fronts)
    enough = PLAIN_ENOUGH * least
    straight = [f for f in fronts if f.name != RINGS and f.equivalent_m <= enough]
    return min(straight or fronts, key=lambda front: (round(front.equivalent_m, 4), front.astray_m))
