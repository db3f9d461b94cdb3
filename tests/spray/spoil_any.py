"""Ways to spoil any plan, whoever made it. Each spoils in place, or says that it cannot."""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable
from typing import Any

import shapely
from tests.spray.hand_day import Plan, shape_of
from tests.spray.spoil import later, walk_for

ANY: dict[str, tuple[str, Callable[[Plan], bool]]] = {}
"""By name: the code that names the fault, and what spoils a plan (False where it cannot)."""


def spoil(code: str) -> Callable[[Callable[[Plan], bool]], Callable[[Plan], bool]]:
    def keep(what: Callable[[Plan], bool]) -> Callable[[Plan], bool]:
        ANY[what.__name__.replace("_", " ")] = (code, what)
        return what

    return keep


def largest(plan: Plan) -> tuple[Plan, dict[str, Any]]:
    """The largest band of the plan, after its field."""
    every = [(field, band) for field in plan["fields"] for band in field["bands"]]
    return max(every, key=lambda pair: shape_of(pair[1]).area)


def neighbours(plan: Plan) -> tuple[Plan, dict[str, Any], dict[str, Any]] | None:
    """A field with two bands that follow each other and share at least half a metre of edge."""
    for field in plan["fields"]:
        ordered = sorted(field["bands"], key=lambda band: band["start_min"])
        for one, other in itertools.pairwise(ordered):
            meet = shape_of(one).buffer(1e-3).intersection(shape_of(other).boundary)
            if meet.length > 0.5:
                return field, one, other
    return None


@spoil("edited")
def the_litres_of_the_largest_band_edited(plan: Plan) -> bool:
    largest(plan)[1]["litres"] *= 0.5
    return True


@spoil("edited")
def the_area_of_a_field_edited(plan: Plan) -> bool:
    field = largest(plan)[0]
    field["area_m2"] *= 1.01
    return field["area_m2"] > 2.0


@spoil("edited")
def the_peak_age_of_a_field_edited(plan: Plan) -> bool:
    plan["fields"][-1]["peak_age_min"] += 0.2
    return True


@spoil("edited")
def the_mix_halved(plan: Plan) -> bool:
    for mix in plan["mixes"]:
        mix["stain_l"], mix["water_l"] = mix["stain_l"] / 2, mix["water_l"] / 2
    return True


@spoil("edited")
def the_inputs_changed_after_planning(plan: Plan) -> bool:
    plan["keep_hash"] = plan["inputs_hash"][::-1]
    return True


@spoil("missed")
def the_largest_band_dropped(plan: Plan) -> bool:
    walk_for(*largest(plan))
    return True


@spoil("twice")
def the_largest_band_doubled(plan: Plan) -> bool:
    field, band = largest(plan)
    field["bands"].append({**band, "id": "again"})
    return True


@spoil("trodden")
def two_neighbours_swapped(plan: Plan) -> bool:
    """The path of the first leads over the floor of the second."""
    found = neighbours(plan)
    if found is None:
        return False
    _, one, other = found
    one["polygon"], other["polygon"] = other["polygon"], one["polygon"]
    way = shapely.LineString([row[:2] for row in one["path"]])
    return bool(way.distance(shape_of(one)) < 0.2)


@spoil("trodden")
def a_walk_back_over_the_last_band(plan: Plan) -> bool:
    field, band = largest(plan)
    here = shape_of(band).representative_point()
    x, y, t = band["path"][-1]
    out = t + math.dist((x, y), (here.x, here.y)) / plan["inputs"]["tools"]["walk_m_min"]
    walk = {"who": "sprayer", "path": [[x, y, t], [here.x, here.y, out], [x, y, 2 * out - t]]}
    field["walks"].append(walk)
    return True


@spoil("wall")
def a_walk_through_a_wall(plan: Plan) -> bool:
    room = plan["inputs"]["floor"]["rooms"][0]
    x, y = room["polygon"]["coordinates"][0][0]
    path = plan["fields"][0]["walks"][0]["path"]
    path.insert(1, [x, y, path[0][2]])
    return True


@spoil("wall")
def a_pallet_where_somebody_walks(plan: Plan) -> bool:
    x, y, _ = plan["fields"][0]["bands"][0]["path"][0]
    ring = [[x - 0.1, y - 0.1], [x + 0.1, y - 0.1], [x + 0.1, y + 0.1], [x - 0.1, y - 0.1]]
    pallet = {"type": "Polygon", "coordinates": [ring]}
    plan["inputs"]["fixtures"].append({"kind": "pallet", "id": "pallet", "polygon": pallet})
    return True


@spoil("shut-in")
def every_exit_removed(plan: Plan) -> bool:
    plan["inputs"]["exits"] = []
    return True


@spoil("tank-dry")
def the_first_filling_forgotten(plan: Plan) -> bool:
    for field in plan["fields"]:
        if field["refills"]:
            field["refills"].pop(0)
            return True
    return False


@spoil("overfull")
def a_smaller_tank_than_planned(plan: Plan) -> bool:
    litres = max(refill["litres"] for field in plan["fields"] for refill in field["refills"])
    plan["inputs"]["tools"]["tank_l"] = litres - 0.05
    return True


@spoil("refill-astray")
def a_refill_a_metre_aside(plan: Plan) -> bool:
    plan["fields"][0]["refills"][0]["at"][0] += 1.0
    return True


@spoil("dead-edge")
def half_an_hour_lost_between_two_neighbours(plan: Plan) -> bool:
    found = neighbours(plan)
    if found is None:
        return False
    field, _, other = found
    later(plan, 30.0 + field["open_time_min"]["low"], after=other["start_min"] - 1e-9)
    return True


@spoil("jump")
def a_walk_that_nobody_walked(plan: Plan) -> bool:
    for field in plan["fields"]:
        starts = [band["start_min"] for band in field["bands"]]
        for walk in field["walks"]:
            (x0, y0, t0), *_, (x1, y1, _) = walk["path"]
            between = min(starts) < t0 < max(starts) and walk["who"] == "sprayer"
            if between and math.dist((x0, y0), (x1, y1)) > 0.1:
                field["walks"].remove(walk)
                return True
    return False


@spoil("jump")
def a_slower_walk_than_planned(plan: Plan) -> bool:
    plan["inputs"]["tools"]["walk_m_min"] *= 0.7
    return True


@spoil("too-fast")
def a_slower_sprayer_than_planned(plan: Plan) -> bool:
    plan["inputs"]["tools"]["spray_m2_min"] *= 0.7
    return True


@spoil("out-of-reach")
def a_wand_half_as_long(plan: Plan) -> bool:
    plan["inputs"]["tools"]["reach_m"] /= 2
    return True


@spoil("stop-line-open")
def stop_lines_moved_into_the_open(plan: Plan) -> bool:
    lines = [stop for field in plan["fields"] for stop in field["stop_lines"]]
    for stop in lines:
        stop["line"] = [[x + 0.3, y + 0.3] for x, y in stop["line"]]
    return bool(lines)


@spoil("not-dry")
def a_coat_that_never_waits(plan: Plan) -> bool:
    if len(plan["inputs"]["coats"]) < 2:
        return False
    for clock in plan["clocks"]:
        clock["low_min"] = 1e5
    return True
