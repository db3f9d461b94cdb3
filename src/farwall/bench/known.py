"""The shortest front that is known of a planned field, whether a plan would use it or not."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.plan import Field, PlanTools
from farwall.floor.thresholds import join_thresholds
from farwall.spray.fronts import field_ground, plain_fronts, shortest_known
from farwall.spray.world import Seam, World, build_world

_MET = 1.001
"""A front this near to its bound need not be bettered."""


def best_known(job: Job, fields: Sequence[Field]) -> list[float]:
    """Of each field of a plan of `job` the shortest front, the plan's own one at worst. [m]"""
    settled = settle(job)
    world = build_world(join_thresholds(job.floor), job.exits)
    return [_best_of(world, settled.tools, field) for field in fields]


def _best_of(world: World, tools: PlanTools, field: Field) -> float:
    pieces = _pieces_of(world, field)
    ground = field_ground(world, pieces, _exit_of(world, pieces, field), tools.band_m, kept={})
    found = shortest_known(
        ground.ground, plain_fronts(ground.ground), enough_m=_MET * field.bound_m
    )
    return min(field.equivalent_front_m, round(found.equivalent_m, 3))


def _pieces_of(world: World, field: Field) -> list[str]:
    """The pieces that the bands of a field lie on, in the order in which a planner takes them."""
    spots = [band.polygon.shape.representative_point() for band in field.bands]
    return sorted(
        name
        for name, piece in world.pieces.items()
        if any(piece.shape.distance(spot) <= 0 for spot in spots)
    )


def _exit_of(world: World, pieces: Sequence[str], field: Field) -> Seam:
    return next(
        seam
        for seam in world.seams
        if field.exit in {seam.exit, seam.id} and (seam.a in pieces) != (seam.b in pieces)
    )
