"""The words of a day planned again: what to do now first."""

import re
from itertools import pairwise

from tests.midday import after, bands_of, day_of

from farwall.facts.numbered import numbered
from farwall.facts.so_far import ClosedRoom, SoFar
from farwall.job.replan import replan
from farwall.job.say_midday import said_again, said_stop
from farwall.job.stop import stop

QUINCE = "quince-street"


def first_line(told, *, us=False):
    return said_again(replan(day_of(QUINCE), told), (), folder="o", us=us).splitlines()[0]


def test_it_names_the_next_band_and_its_room():
    plan = day_of(QUINCE)
    assert first_line(after(plan, "first.5.2")) == ("NOW 8:19: go on with band 1.5.3 in Bedroom 2.")


def test_a_filling_before_the_next_field_comes_first():
    plan = day_of(QUINCE)
    first = [field for field in plan.fields if field.coat == plan.fields[0].coat]
    filled = [
        (before, field)
        for before, field in pairwise(first)
        if any(refill.at_min < field.start_min for refill in field.refills)
    ]
    assert filled
    for before, field in filled:
        said = first_line(after(plan, before.bands[-1].id))
        assert re.match(r"NOW \d+:\d\d: take the full tank \(.* more\), begin field ", said), said
        assert f"begin field {numbered(plan, field.id)}" in said


def test_a_closed_room_with_a_live_edge_says_to_feather_now_and_wait():
    plan = day_of(QUINCE)
    told = after(plan, "first.8.9", closed=(ClosedRoom("great-room", 75.0),))
    assert "feather the edge of 1.8.9 now; wait until 9:1" in first_line(told)


def test_between_two_coats_it_says_wait():
    told = first_line(SoFar(at_min=70.0))
    assert re.match(r"NOW 9:10: wait\. 1[2-5]:\d\d begin field 2\.1", told), told


def test_hours_are_told_by_am_and_pm_where_the_job_counts_in_feet():
    told = SoFar(at_min=70.0)
    assert re.match(
        r"NOW 9:10 am: wait\. (12|[1-3]):\d\d pm begin field 2\.1", first_line(told, us=True)
    )
    again = replan(day_of(QUINCE), after(day_of(QUINCE), "first.5.2"))
    for us in (True, False):
        halves = re.findall(r"\b\d+:\d\d\b( [ap]m)?", said_again(again, (), folder="o", us=us))
        assert len(halves) > 6
        assert {bool(half) for half in halves} == {us}


def test_when_all_is_done_it_says_so():
    last = bands_of(day_of(QUINCE))[-1]
    assert "all that is planned is sprayed" in first_line(SoFar(at_min=last.end_min + 0.5))


def test_at_the_end_of_a_band_a_stop_says_spray_no_further():
    plan = day_of(QUINCE)
    found = stop(plan, after(plan, "first.6.3"), within_min=0.0)
    assert "Spray no further. Then FEATHER" in said_stop(plan, found, within_min=0.0)


def test_a_stop_names_doors_and_places_as_people_do_and_no_coordinates():
    """By the floor: a place is told by the way in nearest to it, a line by the rooms beside it."""
    plan = day_of(QUINCE)
    ids = {one.id for one in plan.inputs.openings}
    told = [
        said_stop(plan, stop(plan, after(plan, band), within_min=within), within_min=within)
        for band in ("first.6.3", "first.8.5")
        for within in (0.0, 60.0)
    ]
    assert any("from the " in one for one in told)
    for one in told:
        assert not ids & set(re.findall(r"[\w-]+", one))
        assert "(" not in re.sub(r"\([\d.]+ (m|L|min)\)", "", one)
