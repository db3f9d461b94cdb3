"""Each promised tolerance of the checker, by hand: just within stands, just beyond is refused.

The checker promises 10 mm, 0.05 min, 0.01 m² or 0.1 %, 0.01 L. Each case spoils a good plan by an
amount a hundredth to a fiftieth below what is allowed, and by one as much above.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from shapely import box
from tests.spray.hand_day import Day, Plan, rehashed
from tests.spray.hand_plans import PLANS, one_room
from tests.spray.spoil import COATS, HELPER, REFILL, ROOM, TWO, later, sum_m2

from farwall.spray.check import check_plan, replay_ages

CLOSET, CUT = "a closet sprayed from outside", "a room cut in two fields"
Spoil = Callable[[Plan, float], None]
CASES: dict[str, tuple[str, str, float, float, Spoil]] = {}
"""By name: the good plan, the code, an amount that stands, one that is refused, what spoils."""


def case(base: str, code: str, stands: float, refused: float) -> Callable[[Spoil], Spoil]:
    def keep(what: Spoil) -> Spoil:
        CASES[f"{what.__name__.replace('_', ' ')} {refused:+g}"] = (
            base, code, stands, refused, what,
        )  # fmt: skip
        return what

    return keep


def codes(base: str, spoil: Spoil, amount: float) -> set[str]:
    plan = PLANS[base]()
    spoil(plan, amount)
    return {fault.code for fault in check_plan(rehashed(plan))}


@pytest.mark.parametrize("name", CASES)
def test_just_within_a_tolerance_stands_and_just_beyond_it_is_refused(name):
    base, code, stands, refused, spoil = CASES[name]
    assert codes(base, spoil, stands) == set()
    assert code in codes(base, spoil, refused)


def band(plan: Plan, number: int) -> dict[str, Any]:
    return plan["fields"][0]["bands"][number]


def reshaped(plan: Plan, number: int, *bounds: float) -> None:
    """A band with other bounds, not rounded; the area of its field follows."""
    rings = [[[x, y] for x, y in box(*bounds).exterior.coords]]
    band(plan, number)["polygon"] = {"type": "Polygon", "coordinates": rings}
    plan["fields"][0]["area_m2"] = sum_m2(plan["fields"][0])


@case(CLOSET, "edited", 0.0099, 0.0101)
@case(CLOSET, "edited", -0.0099, -0.0101)
def a_small_area_says_more_by(plan: Plan, m2: float) -> None:
    """0.96 m²: 0.1 % of it is less than 0.01 m²."""
    plan["fields"][0]["area_m2"] += m2


@case(ROOM, "edited", 0.0166, 0.0170)
@case(ROOM, "edited", -0.0166, -0.0170)
def an_area_says_more_by(plan: Plan, m2: float) -> None:
    """16.8 m²: 0.1 % of it is 0.0168 m²."""
    plan["fields"][0]["area_m2"] += m2


@case(ROOM, "edited", 0.0495, 0.0505)
@case(ROOM, "edited", -0.0495, -0.0505)
def a_peak_age_says_more_by(plan: Plan, minutes: float) -> None:
    field = plan["fields"][0]
    field["peak_age_min"] = replay_ages(rehashed(plan))[field["id"]] + minutes


@case(ROOM, "edited", 0.0495, 0.0505)
@case(ROOM, "edited", -0.0495, -0.0505)
def a_band_says_that_it_begins_later_by(plan: Plan, minutes: float) -> None:
    band(plan, 1)["start_min"] += minutes


@case(ROOM, "edited", 0.0495, 0.0505)
@case(ROOM, "edited", -0.0495, -0.0505)
def a_band_says_that_it_ends_later_by(plan: Plan, minutes: float) -> None:
    band(plan, 1)["end_min"] += minutes


@case(ROOM, "edited", 0.0495, 0.0505)
def a_field_starts_after_its_first_band_by(plan: Plan, minutes: float) -> None:
    plan["fields"][0]["start_min"] = band(plan, 0)["start_min"] + minutes


@case(ROOM, "edited", 0.0495, 0.0505)
def a_field_starts_before_its_first_filling_by(plan: Plan, minutes: float) -> None:
    later(plan, 10.0, after=0.0)
    plan["fields"][0]["start_min"] = 10.0 - minutes


@case(ROOM, "edited", 0.0495, 0.0505)
@case(ROOM, "edited", -0.0495, -0.0505)
def a_field_ends_after_its_last_band_by(plan: Plan, minutes: float) -> None:
    plan["fields"][0]["end_min"] += minutes


@case(ROOM, "edited", 0.0098, 0.0102)
@case(ROOM, "edited", -0.0098, -0.0102)
def a_first_band_takes_more_by(plan: Plan, litres: float) -> None:
    """No band lies beside it yet, so that no overlap is its own: 4.2 m² take 0.84 L."""
    band(plan, 0)["litres"] += litres


@case(ROOM, "edited", 0.0098, 0.0102)
def a_band_takes_more_than_the_widest_overlap_by(plan: Plan, litres: float) -> None:
    """4.2 m of border, 0.305 m of it wetted again, at 0.2 L/m²."""
    band(plan, 1)["litres"] += 4.2 * 0.305 * 0.2 + litres


@case("two sprayers side by side", "edited", 0.0098, 0.0102)
def two_side_by_side_each_lap_onto_the_other_by_more_than(plan: Plan, litres: float) -> None:
    """1 m of border between two bands sprayed at once: either may wet 0.305 m of the other's."""
    tops = [one for one in plan["fields"][0]["bands"] if one["order"] <= 2]
    assert {one["sprayer"] for one in tops} == {1, 2}
    for one in tops:
        one["litres"] += 1.0 * 0.305 * 0.2 + litres


@case(REFILL, "edited", 0.0495, 0.0505)
def a_refill_is_quicker_than_the_tools_by(plan: Plan, minutes: float) -> None:
    """Not quicker than the quicker of a refill (3 min) and a swap (0.5 min)."""
    plan["fields"][0]["refills"][1]["minutes"] = 0.5 - minutes


@case(ROOM, "edited", 0.0098, 0.0102)
def a_mix_is_short_by(plan: Plan, litres: float) -> None:
    """All that stands in the tub counts, added acid too."""
    needed = sum(one["litres"] for one in plan["fields"][0]["bands"])
    half = (needed - litres - 0.2) / 2
    plan["mixes"][0].update(stain_l=half, water_l=half, acid_l=0.2)


@case(COATS, "edited", 0.0098, 0.0102)
@case(COATS, "edited", -0.0098, -0.0102)
def a_mix_is_too_strong_by(plan: Plan, litres: float) -> None:
    """So much more stain in as much mix; below nothing it is too weak."""
    plan["mixes"][1]["stain_l"] += litres
    plan["mixes"][1]["water_l"] -= litres


@case(REFILL, "overfull", 0.0098, 0.0102)
def a_tank_holds_more_than_it_can_by(plan: Plan, litres: float) -> None:
    plan["fields"][0]["refills"][0]["litres"] = 0.7 + litres


@case(REFILL, "tank-dry", 0.0098, 0.0102)
def a_tank_falls_below_nothing_by(plan: Plan, litres: float) -> None:
    """The first strip takes 3 m² x 0.2 L/m² = 0.6 L."""
    plan["fields"][0]["refills"][0]["litres"] = 0.6 - litres


@case(REFILL, "refill-astray", 0.0098, 0.0102)
def a_refill_is_away_from_the_sprayer_by(plan: Plan, metres: float) -> None:
    plan["fields"][0]["refills"][1]["at"][0] += metres


@case(HELPER, "refill-astray", 1.1998, 1.2002)
def a_helper_stands_beside_the_tank_by(plan: Plan, metres: float) -> None:
    field = plan["fields"][0]
    comes, goes = (walk["path"] for walk in field["walks"] if walk["who"] == "helper")
    (x, y), place = next(r["at"] for r in field["refills"] if r["by"] == "helper"), comes[-1]
    place[1] = y - (metres**2 - (x - place[0]) ** 2) ** 0.5
    goes[0][1] = place[1]


@case(CLOSET, "too-fast", 2.3648, 2.3642)
def a_sprayer_does_a_minute(plan: Plan, m2: float) -> None:
    """0.96 m² in 0.4 min, 1 % faster and 0.002 min of rounding: 0.96 / 0.406 = 2.36453 m²/min."""
    plan["inputs"]["tools"]["spray_m2_min"] = m2


@case(ROOM, "jump", 37.975, 37.965)
def walks_are_planned_at(plan: Plan, m_min: float) -> None:
    """From (3.9, 0.7) to (0.9, 0.5) are 3.00666 m, walked at 40 m/min in 0.0751665 min. 5 % faster
    than the plan's pace and 10 mm may be: (3.00666 - 0.01) / (1.05 x 0.0751665) = 37.9685 m/min."""
    plan["inputs"]["tools"]["walk_m_min"] = m_min


@case(ROOM, "jump", 0.0098, 0.0102)
def a_walk_begins_away_from_where_one_stood_by(plan: Plan, metres: float) -> None:
    plan["fields"][0]["walks"][1]["path"][0][1] += metres


@case(ROOM, "jump", 0.0495, 0.0505)
def a_band_begins_before_the_walk_to_it_is_done_by(plan: Plan, minutes: float) -> None:
    later(plan, -minutes, after=band(plan, 0)["start_min"])


@case(CLOSET, "missed", 0.0098, 0.0102)
def floor_is_in_no_band_by(plan: Plan, m2: float) -> None:
    reshaped(plan, 0, 0, 0, 1.2, 0.8 - m2 / 1.2)


@case(ROOM, "twice", 0.0098, 0.0102)
def two_bands_lie_over_one_another_by(plan: Plan, m2: float) -> None:
    reshaped(plan, 1, 0, 2 - m2 / 4.2, 4.2, 3)


@case(ROOM, "twice", 0.0082, 0.0086)
def slivers_of_two_borders_add_up_to_twice(plan: Plan, m2: float) -> None:
    """Neither is more than 0.01 m², together more than 0.1 % of 16.8 m²."""
    reshaped(plan, 1, 0, 2 - m2 / 4.2, 4.2, 3 + m2 / 4.2)


@case(ROOM, "edited", 0.0098, 0.0102)
def a_band_lies_outside_its_room_by(plan: Plan, m2: float) -> None:
    """A tenth of a millimetre of the wall is nobody's."""
    reshaped(plan, 0, 0, 3, 4.2, 4 + 1e-4 + m2 / 4.2)


@case(COATS, "not-dry", 0.0495, 0.0505)
def a_coat_begins_before_the_one_under_it_is_dry_by(plan: Plan, minutes: float) -> None:
    first, second = plan["fields"]
    begins = min(one["start_min"] for one in second["bands"])
    ended = max(one["end_min"] for one in first["bands"])
    plan["clocks"][0]["low_min"] = begins - ended + minutes


def stands_below(plan: Plan, x: float, y: float) -> None:
    """A helper of the crew stands here from the first minute on."""
    plan["inputs"]["crew"]["helper"] = True
    plan["fields"][0]["walks"].append({"who": "helper", "path": [[x, y, 0.0], [x, y, 0.1]]})


@case(ROOM, "trodden", 0.2402, 0.2398)
def somebody_stands_off_wet_floor_by(plan: Plan, metres: float) -> None:
    """A body of 0.25 m less 10 mm, in the middle of the door from 0.9 to 1.9 m."""
    stands_below(plan, 1.4, -metres)


@case(ROOM, "wall", 0.2402, 0.2398)
def somebody_stands_off_a_wall_by(plan: Plan, metres: float) -> None:
    stands_below(plan, 3.0, -metres)


@case(TWO, "stop-line-open", 0.0395, 0.0405)
def a_stop_line_is_shorter_than_its_seam_by(plan: Plan, metres: float) -> None:
    """10 mm of the end are a place's tolerance, 30 mm a corner's doing."""
    for field in plan["fields"]:
        for stop in field["stop_lines"]:
            stop["line"] = [[1.05 + metres, 3], [1.95, 3]]


@case(CUT, "stop-line-open", 0.0198, 0.0204)
def a_stop_line_goes_on_beyond_its_saw_cut_by(plan: Plan, metres: float) -> None:
    """10.1 mm of the cut's end are its tolerance, 10 mm more may lie in open floor."""
    plan["inputs"]["saw_cuts"][0]["line"] = [[0, 2], [3 - metres, 2]]


@pytest.mark.parametrize(("reach_m", "found"), [(1.0905, set()), (1.0895, {"out-of-reach"})])
def test_a_band_may_be_10_mm_beyond_the_wand(reach_m, found):
    """By hand: a closet 0.8 m deep, sprayed along its whole width from 0.3 m before it: 1.1 m."""
    day = Day(one_room(1.0, 0.8, 0.5), tools={"reach_m": reach_m})
    day.begin("A", ["hall"], "front")
    day.stand(0.0, -0.3)
    day.fill(1.0)
    day.spray(box(0, 0, 1.0, 0.8), (0.0, -0.3), (1.0, -0.3))
    assert {fault.code for fault in check_plan(day.plan())} == found


def test_a_filling_before_the_first_band_may_take_no_time():
    plan = PLANS[REFILL]()
    plan["fields"][0]["refills"][0]["minutes"] = 0.0
    assert check_plan(rehashed(plan)) == []


def test_without_a_told_reach_no_band_is_out_of_it():
    """A tool that the plan does not tell of is not judged."""
    plan = PLANS[ROOM]()
    del plan["inputs"]["tools"]["reach_m"]
    assert check_plan(rehashed(plan)) == []


def test_floor_that_is_missed_is_told_of_the_field_of_its_own_coat():
    """The same room is in a field of either coat; the second coat ends later."""
    plan = PLANS[COATS]()
    first = plan["fields"][0]
    rings = [[[x, y] for x, y in box(0, 2.01, 3, 3).exterior.coords]]
    first["bands"][0]["polygon"] = {"type": "Polygon", "coordinates": rings}
    first["area_m2"] = sum_m2(first)
    (fault,) = (one for one in check_plan(rehashed(plan)) if one.code == "missed")
    assert (fault.field, fault.at_min) == (first["id"], first["end_min"])
