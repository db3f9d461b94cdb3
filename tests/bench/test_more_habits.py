"""A stop at every doorway, and half the mix in the tank, then gauge."""

from dataclasses import replace

import pytest

from farwall.bench.generator import house_of
from farwall.bench.more_habits import every_doorway, gauged, half_then_gauge
from farwall.bench.nouns import Case
from farwall.bench.words import more_habit_lines
from farwall.errors import Unanswerable
from farwall.job.plan_job import plan_job

CASE = house_of(5, 3)


@pytest.fixture(scope="module")
def plan():
    return plan_job(CASE.job)


def test_at_every_doorway_a_field_ends(plan):
    told = every_doorway(CASE, plan)
    floor = CASE.job.floor
    wide = [set(o.rooms) for o in floor.openings if o.kind == "wide" and len(o.rooms) == 2]
    assert told.fields[0] == len(plan.fields)
    assert told.fields[1] == len(floor.rooms) - len(wide)
    assert told.came_to == "other"
    cased = [o for o in floor.openings if o.kind == "cased" and len(o.rooms) == 2]
    assert told.seen_open[1] == len(cased)
    assert told.seen_open[0] <= told.seen_open[1]


def test_the_same_fields_are_told_as_the_same(plan):
    assert every_doorway(CASE, plan, planner=lambda job, cut: plan).came_to == "same"


def test_dead_edges_are_counted_on_both_sides(plan):
    first = plan.fields[0]
    old = replace(first, peak_age_min=2 * first.open_time_min.low)
    worse = replace(plan, fields=(old, *plan.fields[1:]))
    before = every_doorway(CASE, plan, planner=lambda job, cut: plan).dead_edges[0]
    told = every_doorway(CASE, plan, planner=lambda job, cut: worse)
    assert told.dead_edges == (before, before + 1)


def test_a_room_that_cannot_be_done_alone_is_told(plan):
    def no(*_, cut):
        raise Unanswerable("no way")

    told = every_doorway(CASE, plan, planner=no)
    assert (told.came_to, told.fields[1]) == ("cannot", 0)


@pytest.mark.parametrize(
    ("used", "came"),
    [
        ((4.0, 4.0), "enough"),
        ((2.0, 2.0), "enough"),
        ((5.0, 5.0), "enough"),
        ((4.0, 5.0), "dry"),
        ((5.0, 4.0), "enough"),
        ((12.0, 4.0), "mixed inside"),
    ],
)
def test_two_fields_by_hand(used, came):
    """By hand: 4 L likely each, 8 L mixed, gauged when 4 L are sprayed.

    4, 4: just enough. 2, 2: never gauged. 5, 5: after 4 of 5 L thirst is 4/3.2 = 1.25; 1 L finishes
    the first field, 5 L are wanted for the second, 3 are left, so 2 are mixed. 4, 5: thirst 1, and
    nothing more is mixed: dry. 5, 4: more than enough. 12, 4: after a third of the field thirst is
    3, and 8 L are wanted here with 4 left.
    """
    assert gauged((4.0, 4.0), used, extra=0.0) == came


def test_extra_at_the_second_mixing_by_hand():
    """By hand: as above 4, 4.6: 4.67 L are there with one on six; 4, 4.7 is dry all the same."""
    assert gauged((4.0, 4.0), (4.0, 4.6), extra=1 / 6) == "enough"
    assert gauged((4.0, 4.0), (4.0, 4.7), extra=1 / 6) == "dry"


def test_a_gauge_without_a_margin_is_a_throw_of_a_coin_and_extra_helps(plan):
    """Of a job of several fields what is gauged is as often too little as too much."""
    told = half_then_gauge(CASE, plan, draws=1000)
    assert 0.1 < told.dry < 0.6
    assert told.dry_with_extra < told.dry
    assert half_then_gauge(CASE, plan, draws=1000) == told


def test_on_a_slab_that_is_known_nothing_runs_dry(plan):
    sure = replace(CASE.job, wishes=replace(CASE.job.wishes, spread_percent=0.1))
    told = half_then_gauge(Case("sure", sure), plan, draws=200)
    assert told.dry_with_extra == told.mixed_inside == 0


def test_the_lines_tell_both_sides(plan):
    told = every_doorway(CASE, plan)
    text = "\n".join(more_habit_lines([told], [half_then_gauge(CASE, plan, draws=100)]))
    assert f"{told.fields[1]} fields (the plan {told.fields[0]})" in text
    assert "half the mix in the tank" in text
    assert more_habit_lines([], []) == []
