"""The rest of a day planned again: what is done stays, what comes is proved by the checker."""

from dataclasses import replace
from datetime import datetime

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from tests.midday import HOUSES, after, band, bands_of, codes, day_of

from farwall.errors import Refused, Unanswerable
from farwall.facts.so_far import ClosedRoom, Done, SoFar
from farwall.job.again_fields import first_min, last_min, moved
from farwall.job.daylight import Daylight
from farwall.job.past import settle_past
from farwall.job.replan import replan
from farwall.job.rest_of_day import RestOfDay
from farwall.phrasebook import in_spanish
from farwall.readers.plan_json import plan_from, plan_to_dict
from farwall.spray.check import replay_ages
from farwall.spray.schedule import NoDryWay

NOTHING_LOST_MIN = 0.02
"""Moments in a file are rounded to 0.0001 min, and every band of a coat adds to it."""
FEW = settings(
    max_examples=20, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)


def in_full(plan, so_far):
    """The same day laid anew even where nothing has changed."""
    state = settle_past(plan, so_far)
    assert state.as_planned
    found = RestOfDay(plan, replace(state, as_planned=False), ()).remains()
    return replace(plan, fields=found.fields)


@pytest.mark.parametrize("house", HOUSES)
def test_at_every_end_of_a_band_the_rest_of_an_unchanged_day_is_the_plans_own(house):
    plan = day_of(house)
    for one in bands_of(plan, coat=0):
        again = replan(plan, after(plan, one.id))
        assert again.fields == plan.fields
        assert not again.left


@pytest.mark.parametrize("house", HOUSES)
def test_laid_anew_at_the_end_of_a_band_the_rest_is_the_same_within_rounding(house):
    plan = day_of(house)
    for one in bands_of(plan, coat=0)[::9]:
        again = in_full(plan, after(plan, one.id))
        for mine, planned in zip(bands_of(again), bands_of(plan), strict=True):
            assert mine.id == planned.id
            assert mine.polygon == planned.polygon
            assert mine.start_min == pytest.approx(planned.start_min, abs=NOTHING_LOST_MIN)
            assert mine.end_min == pytest.approx(planned.end_min, abs=NOTHING_LOST_MIN)
        assert [f.order for f in again.fields] == [f.order for f in plan.fields]
        assert codes(again) == set()


@pytest.mark.parametrize("house", HOUSES)
def test_an_unchanged_day_passes_the_checker_with_its_past(house):
    plan = day_of(house)
    for one in bands_of(plan, coat=0)[::12]:
        assert codes(replan(plan, after(plan, one.id))) == set()


def test_nothing_told_but_the_minute_means_as_planned():
    plan = day_of("quince-street")
    again = replan(plan, SoFar(at_min=30.0))
    done = [one.id for one in again.so_far.done]
    assert done == [b.id for b in bands_of(plan) if b.start_min < 30.0]
    assert again.fields == plan.fields
    assert codes(again) == set()


@pytest.mark.parametrize("late_min", [0.5, 2.0, 3.5])
def test_a_delay_makes_the_edge_that_waits_as_much_older(late_min):
    """The band after the delay meets the band before it; both are walked as planned."""
    plan = day_of("quince-street")
    done, then = band(plan, "first.5.2"), band(plan, "first.5.3")
    again = replan(plan, after(plan, done.id, late_min=late_min))
    aged = band(again, then.id).edge_age_min - then.edge_age_min
    assert aged == pytest.approx(late_min, abs=NOTHING_LOST_MIN)
    assert band(again, then.id).start_min - then.start_min == pytest.approx(late_min, abs=0.02)
    field = next(f for f in again.fields if f.id == "first.5")
    replayed = replay_ages(plan_to_dict(again))["first.5"]
    assert field.peak_age_min == pytest.approx(replayed, abs=0.05)
    assert codes(again) == set()


def test_fields_after_the_one_in_hand_are_late_but_no_older():
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.5.2", late_min=3.0))
    for name in ("first.6", "first.7", "first.8", "second.1", "second.8"):
        mine = next(f for f in again.fields if f.id == name)
        planned = next(f for f in plan.fields if f.id == name)
        assert mine.peak_age_min == pytest.approx(planned.peak_age_min, abs=0.01)
        assert mine.start_min - planned.start_min == pytest.approx(3.0, abs=0.15)


def test_an_edge_that_has_died_says_so_with_its_age_and_what_to_do():
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.5.2", late_min=9.0))
    field = next(f for f in again.fields if f.id == "first.5")
    assert field.verdict == "cannot"
    words = field.remedies[0].what
    assert "first.5.3" in words
    assert f"{field.peak_age_min:.1f} min old" in words
    assert "Feather" in words
    assert codes(again) == {"dead-edge"}


def test_an_edge_that_died_in_a_field_that_is_done_is_told_too():
    plan = day_of("quince-street")
    last = band(plan, "first.3.5")
    told = SoFar(
        at_min=last.end_min + 20.0,
        done_up_to="first.3",
        done=(
            Done("first.3.4", last.start_min + 15, last.start_min + 16),
            Done("first.3.5", last.start_min + 16.1, last.start_min + 17),
        ),
    )
    again = replan(plan, told)
    field = next(f for f in again.fields if f.id == "first.3")
    assert field.verdict == "cannot"
    assert "first.3.4" in field.remedies[0].what
    assert codes(again) == {"dead-edge"}


def test_a_closed_room_comes_later_and_nobody_is_sprayed_at():
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.3.5", closed=(ClosedRoom("bed-1", 50.0),)))
    order = [f.id for f in sorted(again.fields, key=lambda f: f.order) if f.coat == "first"]
    assert order[-2:] == ["first.6", "first.8"]
    assert next(f for f in again.fields if f.id == "first.6").bands[0].start_min >= 50.0
    assert not again.left
    assert codes(again) == set()


def test_a_room_closed_all_day_is_left_and_so_is_the_way_out_of_it():
    """Who stands in bedroom 1 goes out through the hall; the hall stays dry."""
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.3.5", closed=(ClosedRoom("bed-1"),)))
    left = {field.id for field in again.left}
    assert left == {"first.6", "first.8", "second.6", "second.8"}
    assert {one.field for one in again.so_far.left} == left
    assert all(one.why for one in again.so_far.left)
    assert codes(again) == set()
    told = [one for one in again.warnings if one.startswith("Left for another day: ")]
    assert told == [
        "Left for another day: 1.6 (Bedroom 1, Closet): Bedroom 1 is closed.",
        (
            "Left for another day: 1.8 (Great room, Hall): Bedroom 1, Closet behind it has to be "
            "sprayed first."
        ),
        "Left for another day: 2.6 (Bedroom 1, Closet): coat 1 is not on it yet.",
        "Left for another day: 2.8 (Great room, Hall): coat 1 is not on it yet.",
    ]
    names = frozenset({"Bedroom 1", "Closet", "Great room", "Hall"})
    assert all(in_spanish(one, names) for one in told)


def test_what_was_left_comes_back_when_the_room_is_free():
    plan = day_of("quince-street")
    closed = replan(plan, after(plan, "first.3.5", closed=(ClosedRoom("bed-1"),)))
    free = replan(closed, SoFar(at_min=20.0))
    assert not free.left
    assert {b.id for b in bands_of(free)} == {b.id for b in bands_of(plan)}
    assert codes(free) == set()


def test_a_field_left_in_its_middle_is_a_no():
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.5.2", closed=(ClosedRoom("bed-2"),)))
    field = next(f for f in again.fields if f.id == "first.5")
    assert field.verdict == "cannot"
    assert [b.id for b in field.bands] == ["first.5.1", "first.5.2"]
    assert codes(again) == {"stop-line-open"}


def test_a_second_time_the_past_of_the_first_time_is_fixed():
    plan = day_of("quince-street")
    once = replan(plan, after(plan, "first.4.2", late_min=2.0))
    twice = replan(once, after(once, "first.6.3", late_min=1.0))
    fixed = {one.id: one for one in once.so_far.done}
    again = {one.id: one for one in twice.so_far.done}
    assert {name: again[name] for name in fixed} == fixed
    assert codes(twice) == set()


def test_a_coat_that_ended_sooner_than_planned_keeps_its_true_minutes():
    plan = day_of("quince-street")
    last = bands_of(plan, coat=0)[-1]
    told = SoFar(at_min=last.end_min - 2.0, done_up_to=last.id)
    again = replan(plan, told)
    assert band(again, last.id).end_min == pytest.approx(last.end_min - 2.0, abs=0.001)
    assert again.so_far.coat == "second"
    assert band(again, "second.1.1").start_min == pytest.approx(
        band(plan, "second.1.1").start_min - 2.0, abs=0.15
    )
    assert codes(again) == set()


def test_a_coat_that_a_late_day_would_take_into_the_dark_waits_for_the_morning():
    """Quince Street begins at 8:00; its second coat, at 18:26, would end after 18:30."""
    plan = day_of("quince-street")
    last = bands_of(plan, coat=0)[-1]
    late = SoFar(at_min=last.end_min + 560.0, done_up_to=last.id)
    again = replan(plan, late)
    first = band(again, "second.1.1").start_min
    assert first == pytest.approx(24 * 60, abs=2)
    assert codes(again) == set()


def test_where_the_sun_sets_before_the_evening_a_late_coat_waits_for_the_morning_sooner():
    """At 50° north in mid-November the sun sets before five: a coat that would be in the light by
    the calendar's evening waits by the sun's."""
    plan = replace(day_of("quince-street"), starts_at="2026-11-15T08:00:00-06:00")
    start = datetime.fromisoformat(plan.starts_at)
    light = Daylight(start, 50.0, -105.0)
    sets = light.ends(0).at_min
    assert light.ends(0).sun
    last, coat = bands_of(plan, coat=0)[-1], [f for f in plan.fields if f.coat == "second"]
    lasts = last_min(coat) - first_min(coat)
    told = SoFar(at_min=sets - lasts / 2, done_up_to=last.id)  # half of it in the dark
    assert sets + lasts < 10.5 * 60, "else the calendar's evening keeps it too"
    dark = band(replan(plan, told), "second.1.1").start_min
    assert dark < sets < dark + lasts
    again = replan(plan, told, light=light)
    assert band(again, "second.1.1").start_min == pytest.approx(24 * 60, abs=2)
    assert codes(again) == set()


def test_less_in_the_tank_is_filled_sooner():
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.8.9", tank_l=1.3))
    fills = [r for f in again.fields if f.id == "first.8" for r in f.refills]
    first = min(r.at_min for r in fills if r.at_min >= again.so_far.at_min)
    assert first < band(plan, "first.8.11").start_min
    assert codes(again) == set()


def test_who_stands_elsewhere_walks_there_and_back_on_dry_floor():
    plan = day_of("quince-street")
    told = after(plan, "first.4.5", late_min=3.0, at=(10.6, 1.2))
    again = replan(plan, told)
    walks = [w for f in again.fields for w in f.walks if w.who == "sprayer"]
    assert any(w.path[0][:2] == (10.6, 1.2) for w in walks)
    assert codes(again) == set()


def test_a_place_on_wet_floor_is_a_mistake():
    plan = day_of("quince-street")
    middle = band(plan, "first.4.2").polygon.shape.representative_point()
    with pytest.raises(Refused, match="no dry way"):
        replan(plan, after(plan, "first.4.5", late_min=1.0, at=(middle.x, middle.y)))


def test_where_no_dry_way_leads_on_the_rooms_are_named(monkeypatch):
    """It once told two points in metres, which nobody finds on a floor."""
    plan = day_of("quince-street")
    room = plan.inputs.floor.rooms[0]
    at = room.polygon.shape.representative_point().coords[0]

    def shut(*_):
        raise NoDryWay(at, at)

    monkeypatch.setattr(RestOfDay, "remains", shut)
    with pytest.raises(Unanswerable, match=f"leads on through {room.label}") as no:
        replan(plan, after(plan, "first.4.5", late_min=3.0))
    assert "Tell where everybody stands" in no.value.remedies[0]


@pytest.mark.slow
@FEW
@given(
    house=st.sampled_from(HOUSES),
    where=st.integers(0, 54),
    late_min=st.sampled_from([-1.0, 0.0, 0.0, 0.7, 3.0, 12.0]),
    tank_l=st.none() | st.floats(0.8, 7.5),
    shut=st.lists(st.integers(0, 9), max_size=2, unique=True),
    lasts_min=st.none() | st.floats(1.0, 60.0),
)
def test_at_any_moment_with_any_rooms_closed_it_passes_the_checker_or_says_no(
    house, where, late_min, tank_l, shut, lasts_min
):
    plan = day_of(house)
    one = bands_of(plan, coat=0)[where]
    now = max(one.end_min + late_min, 0.0)
    rooms = [plan.inputs.floor.rooms[n].id for n in shut]
    until = None if lasts_min is None else now + lasts_min
    closed = tuple(ClosedRoom(room, until) for room in rooms)
    told = SoFar(at_min=now, done_up_to=one.id, tank_l=tank_l, closed=closed)
    try:
        again = replan(plan, told)
    except (Refused, Unanswerable):
        return  # it says no, with a reason by the types' own making
    past = {b.id: b for b in bands_of(plan) if b.start_min <= one.start_min}
    mine = {b.id: b for b in bands_of(again)}
    assert {one.id for one in again.so_far.done} == set(past)
    assert all(mine[name].polygon == past[name].polygon for name in past)
    assert all(mine[name].end_min <= now + 0.001 for name in past)
    found = codes(again)
    lost = any(field.verdict == "cannot" for field in again.fields)
    assert found <= ({"dead-edge", "stop-line-open"} if lost else set())
    whole = {b.id for b in mine.values()} | {b.id for f in again.left for b in f.bands}
    assert whole == {b.id for b in bands_of(plan)} or again.left


def test_a_plan_made_in_mid_day_is_read_back_as_it_was():
    plan = day_of("quince-street")
    again = replan(plan, after(plan, "first.3.5", closed=(ClosedRoom("bed-1"),)))
    assert plan_from(plan_to_dict(again), "it") == again


@pytest.mark.parametrize(
    ("likely", "high", "late", "wait"),
    [(100.0, 300.0, 600.0, 300.0), (1200.0, None, 600.0, 1200.0), (1200.0, None, 60.0, None)],
    ids=["late end", "likely end", "as planned"],
)
def test_a_coat_planned_for_a_morning_waits_longer_where_the_first_ended_too_late_for_it(
    likely, high, late, wait
):
    """By hand: three hours lie between the end of the wait and the morning that was planned. The
    first ends later by more; the second waits for its late end, or its likely one without that."""
    plan = day_of("quince-street")
    first = [one for one in plan.fields if one.coat == plan.fields[0].coat]
    planned = last_min(first) + (high or 24 * 60.0) + 180.0
    clock = replace(plan.clocks[0], low_min=60.0, likely_min=likely, high_min=high)
    of = replace(plan, clocks=(clock, *plan.clocks[1:]))
    shifted = [moved(one, late) for one in first]
    begins = RestOfDay(of, None, ())._begins(first[0].coat, shifted, planned)
    assert begins == pytest.approx(planned if wait is None else last_min(shifted) + wait, abs=0.11)


@pytest.mark.parametrize("house", HOUSES)
def test_a_day_that_begins_late_has_done_nothing_and_loses_nothing(house):
    """90 min after the plan's start nobody has sprayed: all its bands are still to come."""
    plan = day_of(house)
    late = replan(plan, SoFar(at_min=90.0, nothing_done=True))
    assert late.so_far.done == ()
    assert {one.id for one in bands_of(late)} == {one.id for one in bands_of(plan)}
    assert min(one.start_min for one in bands_of(late)) >= 90.0
    assert codes(late) == set()
    as_planned = replan(plan, SoFar(at_min=90.0))
    assert as_planned.so_far.done  # with nothing told all went as planned


def test_nothing_done_and_a_band_done_cannot_both_be_told():
    plan = day_of("quince-street")
    with pytest.raises(Refused) as found:
        replan(plan, SoFar(at_min=90.0, nothing_done=True, done_up_to="first.3"))
    assert found.value.mistakes[0].what == "nothing is told to be done, and 1.3 is."
