"""Habits of the trade, tried on a house whose order is known."""

from dataclasses import replace

import pytest

from farwall.bench.generator import house_of
from farwall.bench.habits import extra_gallon, largest_last, worst_share
from farwall.bench.nouns import Case
from farwall.errors import Unanswerable
from farwall.floor.takeoff import take_off
from farwall.job.plan_job import plan_job

CASE = house_of(4, 3)


@pytest.fixture(scope="module")
def plan():
    return plan_job(CASE.job)


def largest(case):
    return max(take_off(case.job.floor).rooms, key=lambda room: room.net_m2).room


def with_largest(plan, *, last):
    """The same fields told in an order in which the largest room is, or is not, in the last."""
    fields = sorted(plan.fields, key=lambda field: (largest(CASE) in field.rooms) == last)
    return replace(plan, fields=tuple(fields))


def test_a_plan_that_ends_with_the_largest_room_is_as_planned(plan):
    def never(_):
        raise AssertionError("nothing has to be planned again")

    told = largest_last(CASE, with_largest(plan, last=True), planner=never)
    assert told.came_to == "as planned"


def test_the_habit_asks_for_the_largest_room_last_and_for_every_room(plan):
    assert len(plan.fields) > 1
    asked = []

    def planner(job):
        asked.append(job.wishes.order)
        return plan

    told = largest_last(CASE, with_largest(plan, last=False), planner=planner)
    assert asked[0][-1] == largest(CASE)
    assert set(asked[0]) == set(CASE.job.floor.room_by_id)
    assert told.came_to == "same"
    assert told.habit_share == told.planned_share == pytest.approx(worst_share(list(plan.fields)))


def test_an_order_that_shuts_somebody_in_is_told(plan):
    def no(_):
        raise Unanswerable("shuts somebody in")

    told = largest_last(CASE, with_largest(plan, last=False), planner=no)
    assert (told.came_to, told.habit_share) == ("shuts in", None)


def test_an_order_with_an_older_edge_is_worse_and_its_dead_edge_counted(plan):
    def older(_):
        first = plan.fields[0]
        old = replace(first, peak_age_min=2 * first.open_time_min.low)
        return replace(plan, fields=(old, *plan.fields[1:]))

    told = largest_last(CASE, with_largest(plan, last=False), planner=older)
    assert told.came_to == "worse"
    assert told.habit_share == pytest.approx(2.0)
    assert told.dead_edges == 1


def test_one_on_five_is_safer_than_one_on_six_and_less_safe_than_the_gate(plan):
    told = extra_gallon(CASE, plan)
    assert told.allowed == pytest.approx(0.01)
    assert told.allowed < told.on_five < told.on_six < 0.5


def test_a_slab_that_is_better_known_runs_dry_less_often(plan):
    sure = replace(CASE.job, wishes=replace(CASE.job.wishes, spread_percent=5.0))
    assert extra_gallon(Case("sure", sure), plan).on_six < extra_gallon(CASE, plan).on_six
