"""Plain bands beside the best: told with their price, taken when wished for and when they hold."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.shapes import AWKWARD
from tests.spray.hand_floors import hall, job, row
from tests.spray.sweeping import sweeper

from farwall.bench.nouns import shape_case
from farwall.bench.shapes import SHAPES
from farwall.facts.job import Wishes
from farwall.facts.plain import plain
from farwall.facts.samples import Sample
from farwall.job.plan_job import plan_job
from farwall.spray.check import check_plan
from farwall.spray.fronts import plain_fronts
from farwall.spray.plain_bands import straight_fronts, wish_for


def timed_at(minutes):
    return (Sample("board", coat="one", sheen_loss_min=minutes),)


def planned(place, minutes=30, **wishes):
    return plan_job(job(place, samples=timed_at(minutes), wishes=Wishes(**wishes)))


def test_a_hall_is_swept_plainly_and_the_choice_says_so():
    field = planned(hall(9, 4)).fields[0]
    best, same = field.choices
    assert (best.name, same.name) == ("best", "plain")
    assert best.chosen
    assert not same.chosen
    assert replace(same, name="best", chosen=True) == best


@pytest.mark.parametrize("name", AWKWARD)
def test_the_chosen_one_is_the_field_itself(name):
    for wish in ("best", "plain"):
        for field in planned(AWKWARD[name], bands=wish).fields:
            (mine,) = [one for one in field.choices if one.chosen]
            assert mine.peak_age_min == field.peak_age_min
            assert mine.margin_min == pytest.approx(field.open_time_min.low - field.peak_age_min)
            assert mine.bands == len(field.bands)
            assert mine.litres == pytest.approx(sum(band.litres for band in field.bands))


DIFFERENT = ("Z, middle", "great room with alcoves")
"""Shapes of the bench on which plain bands can be walked, and are not the best."""


def shape(name, minutes=None, **wishes):
    made = shape_case(SHAPES[name]).job
    samples = made.samples
    if minutes is not None:
        samples = tuple(replace(one, sheen_loss_min=minutes) for one in samples)
    return plan_job(replace(made, wishes=Wishes(**wishes), samples=samples))


@pytest.mark.parametrize("name", DIFFERENT)
def test_plain_bands_are_taken_when_wished_for_and_stand_before_the_checker(name):
    best, found = shape(name).fields[0].choices
    assert best.bands != found.bands
    plan = shape(name, bands="plain")
    (mine,) = [one for one in plan.fields[0].choices if one.chosen]
    assert mine == replace(found, chosen=True)
    assert check_plan(plain(plan)) == []


@pytest.mark.parametrize("name", DIFFERENT)
def test_plain_bands_that_lose_the_edge_are_not_taken_and_the_plan_says_why(name):
    """Half a minute of sheen: nothing holds, so the best stand."""
    plan = shape(name, minutes=0.5, bands="plain")
    best, found = plan.fields[0].choices
    assert found.margin_min < 0
    assert best.chosen
    assert any("one.1" in words and "min too old" in words for words in plan.warnings)


def test_bands_run_across_the_short_side_by_hand():
    """By hand: 9 m by 4 m: the sweep moves along x, 9 m of it, and each band is 4 m long."""
    ground = sweeper(hall(9, 4)).field.ground
    assert straight_fronts(ground)(plain_fronts(ground))
    field = planned(hall(9, 4), bands="plain").fields[0]
    for band in field.bands:
        x0, y0, x1, y1 = band.polygon.shape.bounds
        assert y1 - y0 > x1 - x0


def test_a_wish_is_told_by_the_field_then_by_its_rooms_then_for_all():
    wishes = {"one.1": "plain", "hall": "best", "bath": "plain"}
    assert wish_for("best", wishes, "one.1", ("hall",)) == "plain"
    assert wish_for("plain", wishes, "one.2", ("hall",)) == "best"
    assert wish_for("best", wishes, "one.2", ("study", "bath")) == "plain"
    assert wish_for("best", wishes, "one.2", ("study",)) == "best"


def test_a_wish_for_a_room_that_is_not_there_is_told():
    plan = planned(row(4, 4), bands_in={"attic": "plain"})
    assert any("'attic'" in warning for warning in plan.warnings)
