"""The fixed past of a plan made in mid-day: `past-altered`, `closed`, and floor left in the open.

What is told as done is a fact. Its pace is not judged; that it stands in the plan as it was told,
and that nothing else claims to have happened, is.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import shapely

from farwall.spray.check.nouns import (
    AREA_M2,
    PLACE_M,
    TIME_MIN,
    Band,
    Fault,
    PlanRead,
    SoFar,
)
from farwall.spray.check.stop_lines import BARE_M, problem_of
from farwall.spray.check.world import World


def past_faults(plan: PlanRead, world: World) -> Iterator[Fault]:
    """`past-altered` and `closed`, and `stop-line-open` where a field is left in open floor."""
    if plan.so_far is None:
        return
    yield from _altered(plan, plan.so_far)
    yield from _closed(plan, plan.so_far, world)
    yield from _left_open(plan, world)


def _altered(plan: PlanRead, told: SoFar) -> Iterator[Fault]:
    if told.past_hash.lower() != told.hash_found:
        what = "What is told as done, or a band that is done, was changed after it was told."
        yield Fault("past-altered", "", told.at_min, what)
    bands = {band.id: band for band in plan.bands}
    for name, start, end in told.done:
        band = bands.get(name)
        if band is None:
            what = f"Band {name} is told as done, and the plan has it nowhere."
            yield Fault("past-altered", "", start, what)
        elif max(abs(band.begins - start), abs(band.ends - end)) > TIME_MIN:
            what = f"Band {name} was sprayed from {start:.2f} to {end:.2f} min; the plan has it "
            what += f"from {band.begins:.2f} to {band.ends:.2f} min."
            yield Fault("past-altered", band.field, band.begins, what)
        elif band.begins > told.at_min + TIME_MIN:
            what = f"Band {name} is told as done and begins at {start:.2f} min, after now."
            yield Fault("past-altered", band.field, band.begins, what)
    names = {name for name, _, _ in told.done}
    for band in plan.bands:
        if band.id not in names and band.begins < told.at_min - TIME_MIN:
            what = f"Band {band.id} begins at {band.begins:.2f} min, before now, "
            what += f"{told.at_min:.2f} min, and is not told as done."
            yield Fault("past-altered", band.field, band.begins, what)


def _closed(plan: PlanRead, told: SoFar, world: World) -> Iterator[Fault]:
    """`closed`: a band in a room in which somebody stands. One fault a room and field."""
    for closed in told.closed:
        floor = world.floors.get(closed.room)
        seen: set[str] = set()
        for band in plan.bands:
            if floor is None or told.was_done(band) or band.field in seen:
                continue
            inside = float(shapely.intersection(floor, band.shape).area)
            if band.begins < closed.until_min - TIME_MIN and inside > AREA_M2:
                seen.add(band.field)
                what = f"At {band.begins:.2f} min band {band.id} is sprayed in {closed.room}, "
                what += "where somebody stands."
                yield Fault("closed", band.field, band.begins, what)


def _left_open(plan: PlanRead, world: World) -> Iterator[Fault]:
    """`stop-line-open`: floor left for another day that meets wet floor in the open."""
    lines = [
        stop.line
        for field in (*plan.fields, *plan.left)
        for stop in field.stop_lines
        if not problem_of(stop, plan.house)
    ]
    hidden = shapely.buffer(shapely.union_all(lines), PLACE_M)
    walls = shapely.buffer(shapely.union_all(world.walls), PLACE_M)
    for field in plan.left:
        edge = shapely.union_all([band.shape for band in field.bands])
        wet = [band for band in plan.bands if band.coat == field.coat and _meets(band, edge)]
        if not wet:
            continue
        around = shapely.buffer(shapely.union_all([band.shape for band in wet]), PLACE_M / 2)
        bare = shapely.difference(shapely.intersection(shapely.boundary(edge), around), hidden)
        bare = shapely.difference(bare, walls)
        if bare.length > BARE_M:
            x, y = shapely.get_coordinates(shapely.point_on_surface(bare))[0].tolist()
            last = max(wet, key=lambda band: band.ends)
            what = f"Field {field.id} is left for another day in open floor, {world.place(x, y)} "
            what += f"at ({x:.2f}, {y:.2f}): a seam of {bare.length:.2f} m will show."
            yield Fault("stop-line-open", last.field, last.ends, what)


def _meets(band: Band, shape: shapely.Geometry) -> bool:
    return bool(np.all(shapely.dwithin(band.shape, shape, PLACE_M / 2)))
