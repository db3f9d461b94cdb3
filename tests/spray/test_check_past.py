"""The checker and the fixed past of a plan made in mid-day."""

from dataclasses import replace

import pytest
from tests.midday import after, band, bands_of, codes, day_of, day_of_two

from farwall.facts.so_far import ClosedRoom, Done, SoFar
from farwall.job.replan import replan, sealed
from farwall.readers.plan_json import plan_to_dict
from farwall.spray.check import Unreadable, check_plan

SPOILS = {
    "a done band moved in time": lambda d: d["fields"][0]["bands"][0]["path"][0].__setitem__(
        2, 0.2
    ),
    "a done band turned into another shape": lambda d: d["fields"][0]["bands"][0]["polygon"][
        "coordinates"
    ][0][0].__setitem__(0, 0.0),
    "a minute of the told past": lambda d: d["so_far"]["done"][3].__setitem__("end_min", 4.0),
    "a band struck out of the past": lambda d: d["so_far"]["done"].pop(),
    "more in the tank than was told": lambda d: d["so_far"].__setitem__("tank_l", 7.0),
    "a room opened": lambda d: d["so_far"]["closed"].clear(),
    "the minute now": lambda d: d["so_far"].__setitem__("at_min", 2.0),
}


@pytest.mark.parametrize("spoil", SPOILS.values(), ids=SPOILS)
def test_the_checker_refuses_a_spoilt_past(spoil):
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.3.5", closed=(ClosedRoom("bed-1", 50.0),)))
    document = plan_to_dict(again)
    assert check_plan(document) == []
    spoil(document)
    assert "past-altered" in {fault.code for fault in check_plan(document)}


def test_even_with_its_hash_made_again_a_past_that_does_not_fit_is_refused():
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.3.5"))
    past = replace(again.so_far, done=again.so_far.done[:-1])
    forged = replace(again, so_far=sealed(past, again.fields))
    assert codes(forged) == {"past-altered"}


def test_spraying_where_somebody_stands_is_refused():
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.3.5"))
    past = replace(again.so_far, closed=(ClosedRoom("study", 40.0),))
    assert "closed" in codes(replace(again, so_far=sealed(past, again.fields)))


def test_shutting_in_who_stands_in_a_closed_room_is_refused():
    """Bedroom 1 is sprayed first, then closed to the end: the hall may not be sprayed."""
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.3.5"))
    past = replace(again.so_far, closed=(ClosedRoom("bed-1", 60.0),))
    forged = replace(again, so_far=sealed(past, again.fields))
    assert {"closed", "shut-in"} <= codes(forged)


def test_the_pace_of_the_past_is_a_fact_and_that_of_the_rest_is_judged():
    """The same quick band, once told as done and once in a plan of the morning."""
    plan = day_of("quince-street")
    quick = band(plan, "first.4.5")
    start, end = quick.start_min, quick.end_min - 0.25
    again = replan(plan, SoFar(at_min=end, done_up_to=quick.id, done=(Done(quick.id, start, end),)))
    assert band(again, quick.id).end_min < quick.end_min
    assert codes(again) == set()
    assert "too-fast" in codes(replace(again, so_far=None))


def test_the_tank_counts_from_what_was_told_to_be_in_it():
    """Ten litres too little, told in the past: and it is dry at once."""
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.4.2"))
    past = replace(again.so_far, tank_l=0.1)
    assert "tank-dry" in codes(replace(again, so_far=sealed(past, again.fields)))


def test_floor_left_for_another_day_is_not_missed_and_floor_left_out_is():
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.3.5", closed=(ClosedRoom("bed-1"),)))
    assert codes(again) == set()
    assert codes(replace(again, left=())) == {"missed"}


def test_floor_that_is_left_and_sprayed_as_well_is_twice():
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.3.5"))
    doubled = next(field for field in again.fields if field.id == "first.8")
    assert "twice" in codes(replace(again, left=(doubled,)))


@pytest.mark.parametrize(
    ("key", "value"), [("at_min", "x"), ("done", 3), ("tank_l", -1), ("closed", [{"room": 3}])]
)
def test_a_past_in_another_form_is_unreadable_with_its_place(key, value):
    plan = day_of("quince-street")
    document = plan_to_dict(replan(plan, after(plan, "first.3.5")))
    document["so_far"][key] = value
    with pytest.raises(Unreadable, match=f"so_far.{key}"):
        check_plan(document)


@pytest.mark.parametrize("room", ["bed-1", "bed-2", "study"])
def test_who_stands_in_a_room_from_the_start_is_not_shut_in_either(room):
    """Closed before anything is sprayed: some later band closes the last dry way out."""
    plan = day_of("quince-street")
    early = replan(plan, SoFar(at_min=0.0))
    told = replace(early.so_far, closed=(ClosedRoom(room, 70.0),))
    forged = replace(early, so_far=sealed(told, early.fields))
    found = [one for one in check_plan(plan_to_dict(forged)) if one.code == "shut-in"]
    assert [room in one.what for one in found] == [True]
    assert found[0].at_min > 0.8  # the bath comes first


@pytest.mark.parametrize(
    ("after_low_min", "found"), [(5.0, set()), (-20.0, {"not-dry", "trodden", "shut-in"})]
)
def test_a_coat_told_as_begun_over_another_found_it_dry(after_low_min, found):
    """The floor was looked at and dry before the late end of its wait; the rest of coat 2 was then
    said to be sprayed by people who tread on coat 1. Begun before it can be dry it still is."""
    plan = day_of("quince-street")
    clock = next(one for one in plan.clocks if one.name == "dry to recoat")
    below, above = bands_of(plan, coat=0), bands_of(plan, coat=1)
    begins = max(one.end_min for one in below) + clock.low_min + after_low_min
    later = begins - above[0].start_min
    assert later < 0
    done = [Done(one.id, one.start_min, one.end_min) for one in below]
    done += [Done(one.id, one.start_min + later, one.end_min + later) for one in above[:5]]
    again = replan(plan, SoFar(at_min=done[-1].end_min, done=tuple(done)))
    assert codes(again) == found


def test_of_two_who_sprayed_each_went_at_his_own_pace():
    """The halves of a band are numbered 3 and 4, and 4 was begun first: no edit, but a fact."""
    plan = day_of_two("thistle-end")
    field = next(f for f in plan.fields if {one.sprayer for one in f.bands} == {1, 2})
    before = [b for f in plan.fields if f.coat == field.coat and f.order < field.order
              for b in f.bands]  # fmt: skip
    one, two = sorted(field.bands, key=lambda band: band.order)[:2]
    assert one.sprayer != two.sprayer
    now = max(one.end_min, two.end_min) + 0.3
    done = [Done(each.id, each.start_min, each.end_min) for each in before]
    done += [Done(one.id, one.start_min + 0.3, one.end_min + 0.3)]
    done += [Done(two.id, two.start_min, two.end_min)]
    assert "edited" not in codes(replan(plan, SoFar(at_min=now, done=tuple(done))))
