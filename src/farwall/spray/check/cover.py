"""Every square metre once a coat; every band within reach and at a possible pace."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.spray.check.nouns import (
    PLACE_M,
    Band,
    Fault,
    Field,
    PlanRead,
    area_slack,
)
from farwall.spray.check.world import World

QUARTER = 32
"""Corners in a quarter of the circles that stand for reach."""
FASTER = 1.01
"""Spraying may be this much faster than the plan's rate before it is a fault."""
SHORT_MIN = 0.002
"""Rounding of the moments in a file, which counts on a very small band."""
CRUMB_M2 = 1e-4
"""A piece of a band beyond reach that is smaller than this is rounding."""


def coverage(plan: PlanRead, world: World) -> Iterator[Fault]:
    """`missed` and `twice`, coat by coat; floor left for another day is neither."""
    for coat in plan.coats:
        bands = [band for band in plan.bands if band.coat == coat]
        left = [band for field in plan.left if field.coat == coat for band in field.bands]
        yield from _missed(coat, bands, plan, world)
        yield from _twice([*bands, *left], world)


def _missed(coat: str, bands: Sequence[Band], plan: PlanRead, world: World) -> Iterator[Fault]:
    left = [band.shape for field in plan.left if field.coat == coat for band in field.bands]
    wet = shapely.union_all([*(band.shape for band in bands), *left])
    shapely.prepare(wet)
    labels = {room.id: room.label for room in world.house.rooms}
    floors = [(room, labels[room], floor) for room, floor in world.floors.items()]
    floors += [(key, f"the doorway {key}", floor) for key, floor in world.thresholds.items()]
    for owner, label, floor in floors:
        bare = shapely.difference(floor, wet)
        if bare.area > area_slack(floor.area):
            field = _owner(coat, owner, plan)
            x, y = shapely.get_coordinates(shapely.point_on_surface(bare))[0].tolist()
            yield Fault(
                "missed",
                field.id if field else "",
                field.end_min if field else 0.0,
                f"{bare.area:.2f} m² of {label} are in no band of coat {coat}, for one place "
                f"around ({x:.2f}, {y:.2f}).",
            )


def _owner(coat: str, owner: str, plan: PlanRead) -> Field | None:
    """The field that a room or an opening belongs to in a coat."""
    rooms = {owner, *(r for o in plan.house.openings if o.id == owner for r in o.rooms)}
    fields = [field for field in plan.fields if field.coat == coat and rooms & {*field.rooms}]
    return max(fields, key=lambda field: field.end_min, default=None)


def _twice(bands: Sequence[Band], world: World) -> Iterator[Fault]:
    """Bands over one another: each pair that overlaps, or many slivers that add up."""
    if not bands:
        return
    shapes = np.array([band.shape for band in bands])
    pairs = shapely.STRtree(shapes).query(shapes, predicate="intersects")
    later, earlier = pairs[:, pairs[0] > pairs[1]]
    shared = shapely.intersection(shapes[later], shapes[earlier])
    areas = shapely.area(shared)
    whole = float(shapely.area(shapes).sum())
    found = False
    for one, other, part, area in zip(later, earlier, shared, areas, strict=True):
        if area > area_slack(min(bands[one].shape.area, bands[other].shape.area)):
            found = True
            yield _overlap(bands[one], bands[other], part, world)
    if not found and float(areas.sum()) > area_slack(whole):
        last = bands[-1]
        yield Fault(
            "twice",
            last.field,
            last.ends,
            f"The bands of coat {last.coat} lie over one another by slivers that add up to "
            f"{float(areas.sum()):.2f} m².",
        )


def _overlap(later: Band, earlier: Band, shared: BaseGeometry, world: World) -> Fault:
    x, y = shapely.get_coordinates(shapely.point_on_surface(shared))[0].tolist()
    return Fault(
        "twice",
        later.field,
        later.begins,
        f"Band {later.id} of field {later.field} lies over band {earlier.id} of field "
        f"{earlier.field} by {shared.area:.2f} m², {world.place(x, y)} at ({x:.2f}, {y:.2f}).",
    )


def outside_rooms(plan: PlanRead, world: World) -> Iterator[Fault]:
    """`edited`: a band on floor that is not of its field's rooms."""
    for field in plan.fields:
        own = [world.floors[room] for room in field.rooms if room in world.floors]
        own += [
            world.thresholds[opening.id]
            for opening in world.house.openings
            if opening.id in world.thresholds and set(opening.rooms) & set(field.rooms)
        ]
        ground = shapely.buffer(shapely.union_all(own), 1e-4, join_style="mitre")
        shapely.prepare(ground)
        for band in field.bands:
            beyond = shapely.difference(band.shape, ground).area
            if beyond > area_slack(band.shape.area):
                yield Fault(
                    "edited",
                    field.id,
                    band.begins,
                    f"Band {band.id} lies on {beyond:.2f} m² that are not free floor of the "
                    f"rooms of field {field.id}.",
                )


def reach_and_pace(plan: PlanRead, world: World) -> Iterator[Fault]:
    """`out-of-reach` and `too-fast`."""
    for band in plan.bands:
        if plan.tools.reach_m is not None:
            yield from _reach(band, plan.tools.reach_m, world)
        if not plan.is_past(band.ends):
            yield from _pace(band, plan.tools.spray_m2_min, world)


def _reach(band: Band, reach_m: float, world: World) -> Iterator[Fault]:
    beyond = _beyond(band, reach_m + PLACE_M)
    if beyond.area <= CRUMB_M2:
        return
    path = shapely.LineString(band.path[:, :2])
    corners = shapely.get_coordinates(beyond)
    far = shapely.distance(shapely.points(corners), path)
    x, y = corners[int(np.argmax(far))].tolist()
    yield Fault(
        "out-of-reach",
        band.field,
        band.begins,
        f"Band {band.id}, {world.place(x, y)}: ({x:.2f}, {y:.2f}) is {far.max():.2f} m from the "
        f"path, {1000 * (far.max() - reach_m):.0f} mm more than the {reach_m:.2f} m of the wand's "
        f"reach; {beyond.area:.2f} m² are beyond it.",
    )


def _beyond(band: Band, reach_m: float) -> BaseGeometry:
    """What of a band is further than `reach_m` from every leg of its path.

    Leg by leg, the longest first: the buffer of a whole path that winds within
    its own width comes out too small (seen with GEOS 3.14).
    """
    # The round ends are polygons inside their circles: widen them until no corner cuts.
    wide = reach_m / np.cos(np.pi / (4 * QUARTER))
    legs = [shapely.LineString(ends) for ends in pairwise(band.path[:, :2])]
    beyond = band.shape
    for leg in sorted(legs, key=lambda leg: -leg.length):
        beyond = shapely.difference(beyond, shapely.buffer(leg, wide, quad_segs=QUARTER))
        if beyond.is_empty:
            break
    return beyond


def _pace(band: Band, spray_m2_min: float, world: World) -> Iterator[Fault]:
    minutes, area_m2 = band.ends - band.begins, band.shape.area
    if area_m2 <= spray_m2_min * (FASTER * minutes + SHORT_MIN):
        return
    x, y = band.path[0, :2].tolist()
    yield Fault(
        "too-fast",
        band.field,
        band.begins,
        f"Band {band.id}, sprayed from {world.place(x, y)}, has {area_m2:.2f} m² and takes "
        f"{minutes:.2f} min; at {spray_m2_min:.2f} m² a minute it needs "
        f"{area_m2 / spray_m2_min:.2f} min.",
    )
