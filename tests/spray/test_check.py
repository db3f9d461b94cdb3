"""Plans built by hand stand; their ages agree with plain sampling and with hand sums."""

from __future__ import annotations

import pytest
import shapely
from tests.spray.hand_day import Day
from tests.spray.hand_plans import PLANS, one_room, swept_room

from farwall.spray.check import check_plan, replay_ages


def told(plan) -> str:
    """The faults of a plan, one a line, so that a red test shows them."""
    return "\n".join(f"{f.code} {f.field} {f.at_min:.2f} {f.what}" for f in check_plan(plan))


@pytest.mark.parametrize("name", PLANS)
def test_a_good_plan_stands(name):
    assert told(PLANS[name]()) == ""


def test_there_are_thirty_good_plans_and_more():
    assert len(PLANS) >= 30


@pytest.mark.parametrize("name", PLANS)
def test_the_replay_is_as_old_as_points_every_few_millimetres(name):
    """The exact peak is never below a sampled one, and above it by a hair only."""
    plan = PLANS[name]()
    ages = replay_ages(plan)
    for field in plan["fields"]:
        sampled = field["peak_age_min"]
        assert sampled - 1e-6 <= ages[field["id"]] <= sampled + 0.02


def test_the_peak_age_of_two_strips_by_hand():
    """By hand: strips of 3 m² at 2.4 m² a minute, there and back, 1 m of walk at 40 m a minute.

    Paths run 2.4 m in 1.25 min. At the end where the first strip begins, the second ends:
    1.25 + 1.25 min of spraying and 0.025 of walk lie between. Where they turn, only the walk.
    """
    day = Day(one_room(3.0, 3.0, 1.5))
    day.begin("A", ["hall"], "front")
    day.stand(1.5, -1.0)
    day.fill(6.0)
    day.walk((1.5, 0.4))
    day.strips(shapely.box(0, 1, 3, 3), 2)
    bands = day.plan()
    assert replay_ages(bands)["A"] == pytest.approx(1.25 + 0.025 + 1.25, abs=1e-6)


def test_a_field_of_one_band_has_no_edge():
    assert replay_ages(PLANS["a closet sprayed from outside"]()) == {"A": 0.0}


def test_a_plan_may_hold_tuples_instead_of_lists():
    """The planner hands over its own values before they are a file."""

    def frozen(value):
        if isinstance(value, dict):
            return {key: frozen(entry) for key, entry in value.items()}
        return tuple(map(frozen, value)) if isinstance(value, list) else value

    assert check_plan(frozen(PLANS["a small room"]())) == []


@pytest.mark.parametrize("late_min", [0.0, 5.0])
def test_open_time_counts_to_the_twentieth_of_a_minute(late_min):
    """2.525 min old at the most: 2.48 is still within the tolerance, 2.46 is not."""
    plan = swept_room(3.0, 3.0, 1.5, 3)
    for low, stands in ((2.48, True), (2.46, False)):
        plan["fields"][0]["open_time_min"]["low"] = low
        faults = check_plan(plan)
        assert (faults == []) is stands
        assert {fault.code for fault in faults} <= {"dead-edge"}


def test_faults_come_in_the_order_of_time():
    plan = PLANS["a hall with a room on each side"]()
    for field in plan["fields"]:
        field["open_time_min"]["low"] = 0.5
        field["area_m2"] += 1
    minutes = [fault.at_min for fault in check_plan(plan)]
    assert len(minutes) > 6
    assert minutes == sorted(minutes)
