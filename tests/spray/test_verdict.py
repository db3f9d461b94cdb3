"""Verdicts: each word produced by a case made for it, and remedies that keep what they promise."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.shapes import L_HALL, outside, place
from tests.shapes import box as floor_box
from tests.spray.hand_floors import ROOMY_TANK, hall, job, row

from farwall.errors import Unanswerable
from farwall.facts.job import Crew, RoomSurvey, Survey, Tools
from farwall.facts.samples import Sample
from farwall.floor.nouns import Room, SawCut
from farwall.job.plan_job import plan_job
from farwall.phrasebook import in_spanish

THREE_LITRES = replace(ROOMY_TANK, tank_l=3.0)


def timed_at(minutes):
    """A sample whose sheen lasted so long: half of it is the budget of an edge."""
    return (Sample("board", coat="one", sheen_loss_min=minutes),)


def first_field(place, *cuts, **facts):
    return plan_job(job(place, *cuts, **facts)).fields[0]


def remedy(field, code):
    return next(one for one in field.remedies if one.code == code)


def test_a_hall_with_time_to_spare_fits():
    """By hand: bands of 2 m² take 0.67 min; 4 min of sheen are a budget of 2."""
    field = first_field(hall(8, 2), samples=timed_at(4))
    assert (field.verdict, field.remedies) == ("fits", ())
    assert field.peak_age_min <= field.open_time_min.low == 2.0


def test_a_refill_that_kills_the_edge_needs_a_helper():
    """By hand: 3.2 L from a tank of 3 L: 3 min and more of pause alone, half a minute by swap."""
    alone = first_field(hall(8, 2), samples=timed_at(3), tools=THREE_LITRES)
    assert alone.verdict == "helper"
    assert alone.peak_age_min > alone.open_time_min.low
    assert remedy(alone, "helper").peak_age_min <= alone.open_time_min.low


def test_with_that_helper_the_field_fits_only_with_them_and_says_so():
    helped = first_field(
        hall(8, 2), samples=timed_at(3), tools=THREE_LITRES, crew=Crew(helper=True)
    )
    assert helped.verdict == "helper"
    assert helped.peak_age_min <= helped.open_time_min.low
    told = remedy(helped, "helper")
    assert told.peak_age_min is None, "nothing is to be changed"
    words, _, age = told.what.partition(": without, the oldest edge is ")
    assert words == "Only with the helper who swaps tanks"
    assert float(age.removesuffix(" min old.")) > helped.open_time_min.low, "alone it would not"
    assert in_spanish(told.what)


def test_a_helper_who_is_not_needed_makes_it_no_helpers_field():
    field = first_field(
        hall(8, 2), samples=timed_at(20), tools=THREE_LITRES, crew=Crew(helper=True)
    )
    assert field.verdict == "fits"


def test_a_front_too_long_for_one_arm_needs_two():
    """By hand: 5 m of front at 3 m² a minute are 1.7 min a band; the budget is one."""
    field = first_field(hall(9, 5), samples=timed_at(2))
    assert field.verdict == "two"
    assert remedy(field, "two").peak_age_min <= field.open_time_min.low
    assert remedy(field, "two").peak_age_min < 0.6 * field.peak_age_min
    assert remedy(field, "helper").peak_age_min > field.open_time_min.low, (
        "no swap shortens a front"
    )


def test_what_nobody_can_do_is_said_with_what_was_tried():
    """By hand: half a minute for a front of 5 m: not two sprayers, not half the hall."""
    field = first_field(hall(9, 5), samples=timed_at(1))
    assert field.verdict == "cannot"
    assert {one.code for one in field.remedies} == {"helper", "two", "stop-line"}
    assert all(one.peak_age_min > field.open_time_min.low for one in field.remedies)


@pytest.mark.parametrize(
    ("slab_f", "words"),
    [(90, "above 85 °F (29.4 °C)"), (45, "below 50 °F (10.0 °C)")],
    ids=["90 F", "45 F"],
)
def test_a_slab_too_hot_or_too_cold_cannot_be_stained_and_says_why(slab_f, words):
    slab_c = (slab_f - 32) / 1.8
    plan = plan_job(job(hall(8, 2), survey=Survey(slab_c=slab_c, air_c=21.0)))
    for field in plan.fields:
        assert field.verdict == "cannot"
        assert words in field.remedies[0].what
        assert field.open_time_min.low == 0.0


def test_a_slab_that_takes_no_water_cannot_be_stained():
    plan = plan_job(job(hall(8, 2), survey=Survey(slab_c=21.0, drop_s=90.0)))
    assert plan.fields[0].verdict == "cannot"
    assert "90 s" in plan.fields[0].remedies[0].what


def test_one_tight_room_does_not_condemn_the_others():
    survey = Survey(slab_c=21.0, rooms={"b": RoomSurvey(drop_s=90.0)})
    plan = plan_job(job(row(3, 3), survey=survey))
    verdicts = {field.rooms: field.verdict for field in plan.fields}
    assert verdicts == {("b",): "cannot", ("a",): "fits"}


def test_the_cut_that_is_offered_keeps_its_promise():
    """Made for real, both halves are no older than the remedy said."""
    place_of_two = hall(9, 5)
    field = first_field(place_of_two, samples=timed_at(2))
    offer = remedy(field, "stop-line")
    promised, cut = offer.peak_age_min, SawCut(offer.line, id="new")
    made = plan_job(job(place_of_two, cut, samples=timed_at(2)))
    assert len(made.fields) == 2
    assert max(f.peak_age_min for f in made.fields) <= promised + 0.15


@pytest.mark.parametrize("minutes", [1.0, 2.0, 3.0, 6.0, 12.0])
def test_more_open_time_never_gives_a_worse_verdict(minutes):
    order = ["fits", "helper", "two", "stop-line", "cannot"]
    for floor in (hall(9, 5), L_HALL):
        shorter = first_field(floor, samples=timed_at(minutes))
        longer = first_field(floor, samples=timed_at(1.5 * minutes))
        assert order.index(longer.verdict) <= order.index(shorter.verdict)


def test_a_band_that_no_tank_holds_is_an_answer_and_not_a_crash():
    with pytest.raises(Unanswerable, match="tank gives"):
        first_field(hall(9, 5), tools=Tools(tank_l=0.5, band_m=1.0))


TWO_ARMS = place(
    # A hall with its door in the long wall: the floor on either side waits for the other.
    [Room("hall", floor_box(0, 0, 12, 3))],
    [outside("gate", ((4.5, 0), (5.5, 0)), "hall")],
)
SLOW_WALK = replace(ROOMY_TANK, walk_m_min=6.0)


def test_two_arms_that_wait_for_each_other_need_a_stop_line():
    """With a walk of 6 m a minute a second sprayer hardly helps: both must walk as far. A cut
    across the hall leaves one arm at a time."""
    field = first_field(TWO_ARMS, samples=timed_at(6), tools=SLOW_WALK)
    assert field.verdict == "stop-line"
    assert "saw cut" in remedy(field, "stop-line").what
    assert remedy(field, "stop-line").peak_age_min <= 3.0 < remedy(field, "two").peak_age_min
    assert remedy(field, "helper").peak_age_min > 3.0


def test_that_stop_line_made_for_real_lets_both_halves_fit():
    cut = SawCut(((6.0, 0.0), (6.0, 3.0)), id="new")
    plan = plan_job(job(TWO_ARMS, cut, samples=timed_at(6), tools=SLOW_WALK))
    assert [field.verdict for field in plan.fields] == ["fits", "fits"]


def test_remedies_that_work_come_first():
    field = first_field(TWO_ARMS, samples=timed_at(4))
    works = [one.works is True for one in field.remedies]
    assert works == sorted(works, reverse=True)
    assert works[0]
    assert field.verdict in {one.code for one in field.remedies if one.works}
