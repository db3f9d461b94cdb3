"""`stop-line-open`: a field that ends where nothing hides the seam."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.spray.check.edges import Edge
from farwall.spray.check.nouns import PLACE_M, Fault, Field, House, PlanRead, StopLine
from farwall.spray.check.world import World

HIDING = {"door", "cased", "outside"}
"""Kinds of openings whose leaf or frame hides a seam."""
BARE_M = 0.03
"""A piece of open seam shorter than this is a corner's doing."""


def open_stop_lines(plan: PlanRead, edges: Sequence[Edge], world: World) -> Iterator[Fault]:
    """Declared stop lines that hide nothing, and seams between fields off any stop line."""
    hidden: dict[str, list[BaseGeometry]] = {}
    for field in plan.fields:
        for stop in field.stop_lines:
            problem = problem_of(stop, plan.house)
            if problem:
                yield _declared(field, stop, problem, world)
            else:
                hidden.setdefault(field.id, []).append(shapely.buffer(stop.line, PLACE_M))
    for edge in edges:
        if edge.later.field != edge.earlier.field:
            places = hidden.get(edge.later.field, []) + hidden.get(edge.earlier.field, [])
            yield from _bare(edge, shapely.union_all(places), world)


def problem_of(stop: StopLine, house: House) -> str:
    """What is wrong with a declared stop line, in words; empty when it hides its seam."""
    openings = {opening.id: opening for opening in house.openings}
    cuts = {cut.id: cut for cut in house.saw_cuts if cut.id}
    if stop.id in openings:
        opening = openings[stop.id]
        if opening.kind not in HIDING or stop.kind == "wide":
            return f"opening {stop.id} is {opening.kind}: no leaf and no frame hides a seam there"
        return _off(stop, opening.line, f"opening {stop.id}")
    if stop.id in cuts:
        return _off(stop, cuts[stop.id].line, f"saw cut {stop.id}")
    return f"{stop.id!r} is neither an opening nor a saw cut of this floor"


def _off(stop: StopLine, line: shapely.LineString, name: str) -> str:
    off = shapely.difference(stop.line, shapely.buffer(line, PLACE_M + 1e-4)).length
    return f"{off:.2f} m of it lies in open floor, away from {name}" if off > PLACE_M else ""


def _declared(field: Field, stop: StopLine, problem: str, world: World) -> Fault:
    x, y = shapely.get_coordinates(stop.line.interpolate(0.5, normalized=True))[0].tolist()
    return Fault(
        "stop-line-open",
        field.id,
        field.start_min,
        f"Stop line {stop.id or 'without a name'} of field {field.id}, {world.place(x, y)} at "
        f"({x:.2f}, {y:.2f}): {problem}.",
    )


def _bare(edge: Edge, hidden: BaseGeometry, world: World) -> Iterator[Fault]:
    bare = shapely.difference(edge.line, hidden)
    if bare.length <= BARE_M:
        return
    x, y = shapely.get_coordinates(shapely.point_on_surface(bare))[0].tolist()
    yield Fault(
        "stop-line-open",
        edge.later.field,
        edge.later.begins,
        f"Band {edge.later.id} of field {edge.later.field} meets band {edge.earlier.id} of field "
        f"{edge.earlier.field} along {bare.length:.2f} m, {world.place(x, y)} at "
        f"({x:.2f}, {y:.2f}), where no stop line on an opening or a saw cut hides the seam.",
    )
