"""The shortest front that is known of a planned field, and the highest bound."""

from __future__ import annotations

import math
from collections.abc import Sequence

import shapely

from farwall.bench.strides_solved import solved_m
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.plan import Field, PlanTools
from farwall.floor.thresholds import join_thresholds
from farwall.nouns import dataclass
from farwall.spray.building import build_world
from farwall.spray.edges_at_once import LONG, edges_at_once_m
from farwall.spray.front import Front, Ground
from farwall.spray.fronts import field_ground, plain_fronts, shortest_known
from farwall.spray.strides import strides_m
from farwall.spray.world import Seam, World

_MET = 1.001
"""A front this near to its bound need not be bettered."""
_WANTED = 1.35
"""A front farther from its bound has that sought by strides too, and is then sought longer."""
_MILLIMETRE_M = 1e-3
"""Bounds are told in whole millimetres, downward."""

_MOSTLY = 0.5


@dataclass(frozen=True)
class Known:
    """Of a field the shortest front that a long search finds, walked or not, and the highest bound.
    [m]"""

    front_m: float
    bound_m: float


def best_known(job: Job, fields: Sequence[Field]) -> list[Known]:
    """What is known of each field of a plan of `job`, the plan's own front and bound at worst."""
    settled = settle(job)
    world = build_world(join_thresholds(job.floor), job.exits)
    return [_known_of(world, settled.tools, field) for field in fields]


def _known_of(world: World, tools: PlanTools, field: Field) -> Known:
    pieces = _pieces_of(world, field)
    ground = field_ground(
        world, pieces, _exit_of(world, pieces, field), tools.band_m, kept={}
    ).ground
    longer = edges_at_once_m(ground, tools.band_m, boxes=LONG, above_m=field.bound_m)
    bound_m = max(field.bound_m, longer)
    plain = plain_fronts(ground)
    found = shortest_known(ground, plain, enough_m=_MET * bound_m)
    if found.equivalent_m > _WANTED * bound_m:
        bound_m = strides_m(ground, tools.band_m, above_m=bound_m)
        bound_m = _solved_m(ground, tools.band_m, found, bound_m)
    if found.equivalent_m > _WANTED * bound_m:
        wanted_m = _WANTED * bound_m
        found = shortest_known(ground, plain, enough_m=_MET * bound_m, wanted_m=wanted_m)
        bound_m = _solved_m(ground, tools.band_m, found, bound_m)
    bound_m = max(field.bound_m, math.floor(bound_m * 1000) / 1000)
    return Known(min(field.equivalent_front_m, round(found.equivalent_m, 3)), bound_m)


def _solved_m(ground: Ground, band_m: float, found: Front, bound_m: float) -> float:
    """The bound, asked of the solver where the front is still too far above it."""
    if found.equivalent_m <= _WANTED * bound_m:
        return bound_m
    first_m = found.equivalent_m / _WANTED + _MILLIMETRE_M
    return solved_m(ground, band_m, above_m=bound_m, first_m=first_m)


def _pieces_of(world: World, field: Field) -> list[str]:
    """The pieces whose floor the bands of a field cover, in the order in which a planner takes
    them."""
    bands = shapely.union_all([band.polygon.shape for band in field.bands])
    return sorted(
        name
        for name, piece in world.pieces.items()
        if piece.shape.intersection(bands).area > _MOSTLY * piece.shape.area
    )


def _exit_of(world: World, pieces: Sequence[str], field: Field) -> Seam:
    return next(
        seam
        for seam in world.seams
        if field.exit in {seam.exit, seam.id} and (seam.a in pieces) != (seam.b in pieces)
    )
