"""Ways to spoil a good plan. Each spoils in place; the hash is made right by the caller."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

from shapely import box
from tests.spray.hand_day import Plan, polygon

SPOILS: dict[str, tuple[str, str, Callable[[Plan], None]]] = {}
"""By name: the good plan that is spoilt, the code that names the fault, what spoils it."""


def spoil(base: str, code: str) -> Callable[[Callable[[Plan], None]], Callable[[Plan], None]]:
    def keep(what: Callable[[Plan], None]) -> Callable[[Plan], None]:
        SPOILS[what.__name__.replace("_", " ")] = (base, code, what)
        return what

    return keep


ROOM, TWO, COATS = (
    "a room with long sides",
    "two rooms with a door between",
    "two coats with a wait",
)
REFILL, HELPER = "a refill outside in the middle of a field", "a helper inside"
AROUND = "two ways out and a walk around the house"


def pieces(field: Plan) -> list[dict[str, Any]]:
    """Bands and walks of a field in the order of time."""
    return sorted(field["bands"] + field["walks"], key=lambda piece: piece["path"][0][2])


def later(plan: Plan, minutes: float, *, after: float) -> None:
    """Everything that begins after a moment happens so many minutes later."""
    for field in plan["fields"]:
        for piece in pieces(field):
            if piece["path"][0][2] >= after:
                piece["path"] = [[x, y, t + minutes] for x, y, t in piece["path"]]
        for band in field["bands"]:
            band["start_min"], band["end_min"] = band["path"][0][2], band["path"][-1][2]
        for refill in field["refills"]:
            refill["at_min"] += minutes if refill["at_min"] >= after else 0.0
        field["start_min"] = min(band["start_min"] for band in field["bands"])
        field["end_min"] = max(band["end_min"] for band in field["bands"])


def walk_for(field: Plan, band: dict[str, Any]) -> None:
    """The same way at the same pace, without spraying."""
    field["bands"].remove(band)
    field["walks"].append({"who": "sprayer", "path": band["path"]})


@spoil(ROOM, "trodden")
def two_bands_swapped(plan: Plan) -> None:
    first, second = plan["fields"][0]["bands"][:2]
    first["polygon"], second["polygon"] = second["polygon"], first["polygon"]


@spoil(ROOM, "out-of-reach")
def two_bands_far_apart_swapped(plan: Plan) -> None:
    bands = plan["fields"][0]["bands"]
    for key in ("polygon", "litres"):
        bands[0][key], bands[-1][key] = bands[-1][key], bands[0][key]


@spoil(REFILL, "tank-dry")
def a_refill_dropped(plan: Plan) -> None:
    plan["fields"][0]["refills"].pop(1)


@spoil(REFILL, "tank-dry")
def the_first_filling_forgotten(plan: Plan) -> None:
    plan["fields"][0]["refills"].pop(0)


@spoil(REFILL, "overfull")
def a_tank_filled_beyond_its_brim(plan: Plan) -> None:
    plan["fields"][0]["refills"][1]["litres"] += 0.2


@spoil(REFILL, "refill-astray")
def a_refill_somewhere_else(plan: Plan) -> None:
    plan["fields"][0]["refills"][1]["at"][0] += 0.5


@spoil(REFILL, "refill-astray")
def the_first_refill_somewhere_else(plan: Plan) -> None:
    """Before anybody has moved: the sprayer stands where the first walk begins."""
    plan["fields"][0]["refills"][0]["at"][0] += 0.5


@spoil(REFILL, "refill-astray")
def a_refill_while_spraying(plan: Plan) -> None:
    field = plan["fields"][0]
    field["refills"][1]["at_min"] = field["bands"][1]["start_min"]


@spoil(HELPER, "refill-astray")
def a_helper_who_never_comes(plan: Plan) -> None:
    field = plan["fields"][0]
    field["walks"] = [walk for walk in field["walks"] if walk["who"] != "helper"]


@spoil("a helper deep inside before the first band", "shut-in")
def a_helper_left_inside(plan: Plan) -> None:
    """The way out of the helper is gone, and the helper stands where the floor gets wet."""
    field = plan["fields"][0]
    out = [walk for walk in field["walks"] if walk["who"] == "helper"][-1]
    field["walks"].remove(out)


@spoil("a helper deep inside before the first band", "trodden")
def a_helper_stands_on_wet_floor(plan: Plan) -> None:
    a_helper_left_inside(plan)


@spoil(ROOM, "trodden")
def a_helper_who_stands_at_the_sill(plan: Plan) -> None:
    """Whoever only stands is replayed too: here so near that the body reaches over the sill."""
    field = plan["fields"][0]
    (x0, y), (x1, _) = plan["inputs"]["openings"][0]["line"]
    place = [(x0 + x1) / 2, y - 0.1]
    field["walks"].append({"who": "helper", "path": [[*place, 0.0], [*place, 0.1]]})


@spoil(ROOM, "trodden")
def a_way_over_wet_floor(plan: Plan) -> None:
    walk = pieces(plan["fields"][0])[-2]
    assert walk in plan["fields"][0]["walks"]
    detour(walk, 3.0, 2.0)


@spoil(ROOM, "wall")
def a_way_through_a_wall(plan: Plan) -> None:
    detour(plan["fields"][0]["walks"][0], -1.5, 1.5)


@spoil(TWO, "wall")
def a_way_past_the_door_and_not_through_it(plan: Plan) -> None:
    """The rooms touch with no thickness between: the wall is there all the same."""
    walk = plan["fields"][0]["walks"][0]
    (x0, y0, t0), *_, (x1, y1, t1) = walk["path"]
    walk["path"] = [[x0, y0, t0], [1.5, 0.4, t0 + 0.1], [0.6, 0.5, t0 + 0.2], [0.6, 3.8, t1 + 0.2]]
    walk["path"].append([x1, y1, t1 + 0.3])
    for piece in pieces(plan["fields"][0]):
        if piece is not walk and piece["path"][0][2] > t0:
            piece["path"] = [[x, y, t + 0.3] for x, y, t in piece["path"]]


@spoil(AROUND, "wall")
def a_way_through_the_house_instead_of_around(plan: Plan) -> None:
    walk = plan["fields"][1]["walks"][0]
    walk["path"] = [walk["path"][0], walk["path"][-1]]


@spoil("a room with an island", "wall")
def a_way_over_the_island(plan: Plan) -> None:
    detour(plan["fields"][0]["walks"][0], 2.2, 2.7)


@spoil(TWO, "wall")
def a_door_bricked_up(plan: Plan) -> None:
    plan["inputs"]["openings"] = [o for o in plan["inputs"]["openings"] if o["id"] != "inner"]


@spoil(TWO, "wall")
def a_door_too_narrow_for_a_body(plan: Plan) -> None:
    door = plan["inputs"]["openings"][0]
    door["line"] = [[1.3, 3.0], [1.7, 3.0]]


@spoil(ROOM, "edited")
def the_area_edited(plan: Plan) -> None:
    plan["fields"][0]["area_m2"] += 0.05


@spoil(ROOM, "edited")
def the_litres_of_a_band_edited(plan: Plan) -> None:
    plan["fields"][0]["bands"][1]["litres"] *= 0.9


@spoil(ROOM, "edited")
def more_litres_than_the_widest_overlap(plan: Plan) -> None:
    plan["fields"][0]["bands"][1]["litres"] += (4.2 * 0.305 + 0.2) * 0.2


@spoil(ROOM, "edited")
def the_peak_age_edited(plan: Plan) -> None:
    plan["fields"][0]["peak_age_min"] -= 0.06


@spoil(ROOM, "edited")
def the_minutes_of_a_band_edited(plan: Plan) -> None:
    plan["fields"][0]["bands"][1]["end_min"] -= 0.5


@spoil(ROOM, "edited")
def the_end_of_a_field_edited(plan: Plan) -> None:
    plan["fields"][0]["end_min"] -= 1.0


@spoil(ROOM, "edited")
def two_numbers_swapped(plan: Plan) -> None:
    first, second = plan["fields"][0]["bands"][:2]
    first["order"], second["order"] = second["order"], first["order"]


@spoil(TWO, "edited")
def two_fields_renumbered(plan: Plan) -> None:
    plan["fields"][0]["order"], plan["fields"][1]["order"] = 2, 1


@spoil(TWO, "edited")
def a_room_that_is_not_there(plan: Plan) -> None:
    plan["fields"][0]["rooms"].append("attic")


@spoil(TWO, "edited")
def a_field_of_another_room(plan: Plan) -> None:
    plan["fields"][0]["rooms"] = ["hall"]


@spoil(ROOM, "edited")
def a_mix_that_is_too_small(plan: Plan) -> None:
    mix = plan["mixes"][0]
    mix["stain_l"] *= 0.8
    mix["water_l"] *= 0.8


@spoil(COATS, "edited")
def a_mix_that_is_too_strong(plan: Plan) -> None:
    mix = plan["mixes"][1]
    mix["stain_l"], mix["water_l"] = mix["stain_l"] + 0.1, mix["water_l"] - 0.1


@spoil(HELPER, "edited")
def a_helper_whom_the_crew_has_not(plan: Plan) -> None:
    plan["inputs"]["crew"]["helper"] = False


@spoil("two sprayers side by side", "edited")
def a_second_sprayer_whom_the_crew_has_not(plan: Plan) -> None:
    plan["inputs"]["crew"]["sprayers"] = 1


@spoil(REFILL, "edited")
def a_refill_in_no_time(plan: Plan) -> None:
    plan["fields"][0]["refills"][1]["minutes"] = 0.1


@spoil(ROOM, "missed")
def a_band_dropped(plan: Plan) -> None:
    field = plan["fields"][0]
    walk_for(field, field["bands"][2])
    field["area_m2"] = sum_m2(field)


@spoil("a room with a threshold at the way out", "missed")
def a_threshold_forgotten(plan: Plan) -> None:
    field = plan["fields"][0]
    field["bands"][-1]["polygon"] = polygon(box(0.7, 0, 2.3, 1))
    field["area_m2"] = sum_m2(field)


@spoil(ROOM, "twice")
def a_band_doubled(plan: Plan) -> None:
    bands = plan["fields"][0]["bands"]
    bands.append({**bands[-1], "id": "again"})


@spoil(ROOM, "twice")
def a_band_grown(plan: Plan) -> None:
    plan["fields"][0]["bands"][1]["polygon"] = polygon(box(0, 1.95, 4.2, 3))


@spoil(ROOM, "dead-edge")
def a_band_that_comes_late(plan: Plan) -> None:
    later(plan, 15.0, after=plan["fields"][0]["bands"][1]["start_min"])


@spoil(ROOM, "dead-edge")
def a_phone_call_in_the_middle_of_a_band(plan: Plan) -> None:
    band = plan["fields"][0]["bands"][1]
    later(plan, 15.0, after=band["end_min"])
    (x0, y0, t0), (x1, y1, t1) = band["path"]
    xm, ym, tm = (x0 + x1) / 2, (y0 + y1) / 2, (t0 + t1) / 2
    band["path"] = [[x0, y0, t0], [xm, ym, tm], [xm, ym, tm + 15], [x1, y1, t1 + 15]]


@spoil(ROOM, "edited")
def a_hash_of_something_else(plan: Plan) -> None:
    """The caller makes hashes right: here the recorded one is spoilt afterwards."""
    plan["keep_hash"] = "0" * 64


@spoil(COATS, "not-dry")
def the_second_coat_too_early(plan: Plan) -> None:
    later(plan, -100.0, after=60.0)


@spoil(COATS, "not-dry")
def a_clock_that_is_missing(plan: Plan) -> None:
    plan["clocks"] = [clock for clock in plan["clocks"] if clock["coat"] != "one"]


@spoil(COATS, "trodden")
def the_second_coat_after_the_likely_wait_but_not_the_long_one(plan: Plan) -> None:
    plan["clocks"][0]["high_min"] = 300.0


@spoil(ROOM, "jump")
def a_walk_too_fast(plan: Plan) -> None:
    plan["inputs"]["tools"]["walk_m_min"] = 30.0


@spoil(ROOM, "jump")
def a_walk_dropped(plan: Plan) -> None:
    plan["fields"][0]["walks"].pop(1)


@spoil(ROOM, "jump")
def a_clock_that_runs_backwards(plan: Plan) -> None:
    path = plan["fields"][0]["bands"][0]["path"]
    path.insert(1, [path[0][0] + 1.0, path[0][1], path[0][2] - 0.5])


@spoil(ROOM, "jump")
def two_bands_at_once_by_one_person(plan: Plan) -> None:
    first, second = plan["fields"][0]["bands"][:2]
    minutes = second["path"][0][2] - first["path"][0][2] - 0.2
    second["path"] = [[x, y, t - minutes] for x, y, t in second["path"]]


@spoil(ROOM, "out-of-reach")
def a_wand_too_short(plan: Plan) -> None:
    plan["inputs"]["tools"]["reach_m"] = 1.2


@spoil(ROOM, "too-fast")
def a_band_in_half_the_time(plan: Plan) -> None:
    path = plan["fields"][0]["bands"][1]["path"]
    path[-1][2] = (path[0][2] + path[-1][2]) / 2


@spoil(ROOM, "too-fast")
def a_sprayer_slower_than_planned(plan: Plan) -> None:
    plan["inputs"]["tools"]["spray_m2_min"] *= 0.95


@spoil(TWO, "stop-line-open")
def a_stop_line_in_open_floor(plan: Plan) -> None:
    for field in plan["fields"]:
        for stop in field["stop_lines"]:
            stop["line"] = [[x, y - 0.5] for x, y in stop["line"]]


@spoil(TWO, "stop-line-open")
def a_stop_line_that_nobody_drew(plan: Plan) -> None:
    for field in plan["fields"]:
        field["stop_lines"] = []


@spoil(TWO, "stop-line-open")
def a_stop_line_where_no_leaf_hangs(plan: Plan) -> None:
    plan["inputs"]["openings"][0]["kind"] = "wide"


@spoil("a room cut in two fields", "stop-line-open")
def a_stop_line_on_a_saw_cut_that_was_never_made(plan: Plan) -> None:
    plan["inputs"]["saw_cuts"] = []


@spoil("a room cut in two fields", "stop-line-open")
def a_saw_cut_half_as_long_as_the_stop(plan: Plan) -> None:
    plan["inputs"]["saw_cuts"][0]["line"] = [[0.0, 2.0], [1.5, 2.0]]


@spoil(TWO, "shut-in")
def an_exit_removed(plan: Plan) -> None:
    plan["inputs"]["exits"] = []


@spoil(AROUND, "shut-in")
def one_of_two_exits_removed(plan: Plan) -> None:
    plan["inputs"]["exits"] = [e for e in plan["inputs"]["exits"] if e["opening"] != "e"]


@spoil(ROOM, "shut-in")
def a_field_that_leaves_by_no_door(plan: Plan) -> None:
    plan["fields"][0]["exit"] = "the window"


@spoil("a room with an island", "shut-in")
def a_sprayer_who_sprays_the_way_out_first(plan: Plan) -> None:
    """The strip at the door comes first, from inside; all else after it."""
    field = plan["fields"][0]
    door = field["bands"].pop()
    start = field["bands"][0]["path"][0]
    door["path"] = [[*start[:2], start[2] - 0.5], [*start[:2], start[2] - 0.4]]
    field["bands"].insert(0, door)


def detour(walk: dict[str, Any], x: float, y: float) -> None:
    """A walk that takes in a place on its way, at a walking pace, ending when it ended.

    It begins earlier: what came before must leave time, or a jump is told too.
    """
    (x0, y0, _), (x1, y1, t1) = walk["path"][0], walk["path"][-1]
    first, second = math.dist((x0, y0), (x, y)) / 40, math.dist((x, y), (x1, y1)) / 40
    walk["path"] = [[x0, y0, t1 - first - second], [x, y, t1 - second], [x1, y1, t1]]


def sum_m2(field: Plan) -> float:
    from tests.spray.hand_day import shape_of

    return sum(shape_of(band).area for band in field["bands"])
