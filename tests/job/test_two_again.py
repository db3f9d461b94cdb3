"""The day of two sprayers planned again: by hand in a hall, and at many moments of a house."""

from dataclasses import replace
from functools import cache
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.counts import FULL
from tests.midday import after, band, bands_of, codes, day_of_two
from tests.shapes import AWKWARD
from tests.spray.hand_floors import hall, job

from farwall.errors import Refused, Unanswerable
from farwall.facts.job import Crew, Tools
from farwall.facts.numbered import numbered
from farwall.facts.samples import Sample
from farwall.facts.so_far import ClosedRoom, Done, SoFar
from farwall.job.again_fields import as_drawn
from farwall.job.past import settle_past
from farwall.job.replan import replan
from farwall.job.rest_of_day import RestOfDay
from farwall.job.say_midday import said_again
from farwall.job.stop import stop
from farwall.readers.plan_json import plan_from, plan_to_dict
from farwall.spray.check import replay_ages

TWO = Crew(sprayers=2)
LOST = {"dead-edge", "stop-line-open"}
ROUNDED_MIN = 0.02
A_WALK_MIN = 0.3
"""Across the hall and out, at a metre a second."""


@cache
def planned(place, *, minutes=40.0, tank_l=40.0, helper=False):
    """One coat on this floor for two: bands of a metre, 3 m² a minute, 60 m a minute."""
    tools = Tools(tank_l, 1.0, 3.0, 60.0, 3.0, 0.5)
    crew = replace(TWO, helper=helper)
    sample = Sample("board", coat="one", sheen_loss_min=minutes)
    return plan_job_of(job(place, crew=crew, samples=(sample,), tools=tools))


def plan_job_of(given_job):
    from farwall.job.plan_job import plan_job

    return plan_job(given_job)


HALL = planned(hall(8, 6))


def halves(plan):
    """The bands that both spray, in pairs."""
    own = bands_of(plan)
    return [
        (a, b) for a, b in pairwise(own) if a.start_min == b.start_min and a.sprayer != b.sprayer
    ]


def turn(plan, number, **told):
    """The day at the end of a band, both halves done."""
    one, two = halves(plan)[number]
    return SoFar(at_min=max(one.end_min, two.end_min), done_up_to=one.id, **told)


def test_the_hall_has_halves_to_speak_of():
    assert len(halves(HALL)) >= 6


def test_at_every_end_of_a_half_the_rest_of_an_unchanged_day_is_the_plans_own():
    for plan in (HALL, planned(hall(9, 5), tank_l=4.0)):
        for one in bands_of(plan):
            again = replan(plan, after(plan, one.id))
            assert again.fields == plan.fields
            assert codes(again) == set()


def test_laid_anew_the_rest_is_the_same_within_rounding():
    for plan in (HALL, planned(hall(9, 5), tank_l=4.0), planned(hall(9, 5), helper=True)):
        for number in range(len(halves(plan))):
            state = settle_past(plan, turn(plan, number))
            assert state.as_planned
            found = RestOfDay(plan, replace(state, as_planned=False), ()).remains()
            again = replace(plan, fields=found.fields)
            for mine, was in zip(bands_of(again), bands_of(plan), strict=True):
                assert (mine.id, mine.sprayer, mine.polygon) == (was.id, was.sprayer, was.polygon)
                assert mine.start_min == pytest.approx(was.start_min, abs=ROUNDED_MIN)
                assert mine.edge_age_min == pytest.approx(was.edge_age_min, abs=0.03)
            assert codes(again) == set()


def test_two_minutes_late_both_begin_two_minutes_late_and_the_edge_is_two_minutes_older():
    again = replan(HALL, replace(turn(HALL, 2), at_min=turn(HALL, 2).at_min + 2.0))
    for was in halves(HALL)[3]:
        mine = band(again, was.id)
        assert mine.start_min - was.start_min == pytest.approx(2.0, abs=ROUNDED_MIN)
        assert mine.edge_age_min - was.edge_age_min == pytest.approx(2.0, abs=0.05)
        assert mine.end_min - mine.start_min == pytest.approx(was.end_min - was.start_min, abs=1e-3)
    assert codes(again) == set()
    ages = replay_ages(plan_to_dict(again))
    assert again.fields[0].peak_age_min == pytest.approx(ages[again.fields[0].id], abs=0.05)


def test_of_two_halves_of_which_one_is_told_the_other_is_in_hand():
    """By hand: the second half was begun with the first and takes its planned time."""
    one, two = halves(HALL)[3]
    before = [Done(b.id) for b in bands_of(HALL) if b.start_min < one.start_min]
    told = SoFar(
        at_min=one.end_min - 0.3, done=(*before, Done(one.id, one.start_min, one.end_min - 0.3))
    )
    state = settle_past(HALL, told)
    assert state.done[two.id].start_min == one.start_min
    assert state.now_min == pytest.approx(two.end_min, abs=1e-3)
    assert codes(replan(HALL, told)) == set()


def test_each_half_keeps_its_own_true_minutes():
    one, two = halves(HALL)[2]
    now = two.end_min + 0.8
    told = SoFar(
        at_min=now,
        done_up_to=one.id,
        done=(
            Done(one.id, one.start_min + 0.1, one.end_min + 0.2),
            Done(two.id, two.start_min + 0.2, now),
        ),
    )
    again = replan(HALL, told)
    assert band(again, one.id).end_min == pytest.approx(one.end_min + 0.2, abs=1e-3)
    assert band(again, two.id).end_min == pytest.approx(now, abs=1e-3)
    assert codes(again) == set()
    later = replan(again, SoFar(at_min=now + 4.0))
    assert band(later, two.id).end_min == band(again, two.id).end_min
    assert codes(later) == set()


def test_less_in_the_seconds_tank_alone_makes_both_fill_sooner():
    told = turn(HALL, 2, tank_2_l=0.5)
    again = replan(HALL, told)
    assert not [r for r in HALL.fields[0].refills if r.at_min > told.at_min]
    fills = [r for r in again.fields[0].refills if r.at_min >= told.at_min - 1e-6]
    assert {r.by for r in fills} == {"sprayer", "sprayer 2"}
    assert again.so_far.tank_2_l == 0.5
    assert again.so_far.tank_l == pytest.approx(settle_past(HALL, turn(HALL, 2)).tank_l)
    assert codes(again) == set()
    emptier = replace(again, so_far=replace(again.so_far, tank_2_l=0.0))
    spent = replace(emptier, fields=(replace(again.fields[0], refills=()),))
    assert "tank-dry" in codes(spent)


def test_when_the_second_leaves_the_halves_are_sprayed_one_after_the_other():
    """By hand: half after half, so that a band takes both halves' minutes and the walk between."""
    again = replan(HALL, turn(HALL, 2, sprayers=1))
    done = {one.id for one in again.so_far.done}
    rest = [b for b in bands_of(again) if b.id not in done]
    assert {b.sprayer for b in rest} == {1}
    assert {b.id for b in bands_of(again)} == {b.id for b in bands_of(HALL)}
    spraying = sum(b.end_min - b.start_min for b in bands_of(HALL) if b.id not in done)
    # His tank holds his own halves only, so that he fills once, 3 min.
    spraying += 3.0 * len([r for r in again.fields[0].refills if r.at_min > again.so_far.at_min])
    lasts = rest[-1].end_min - again.so_far.at_min
    assert spraying <= lasts <= spraying + A_WALK_MIN * (1 + len(rest))
    out = [w for f in again.fields for w in f.walks if w.who == "sprayer 2"][-1]
    assert out.path[0][2] == pytest.approx(again.so_far.at_min, abs=1e-3)
    assert (again.so_far.sprayers, again.inputs.crew.sprayers) == (1, 2)
    assert codes(again) == set()


def test_what_no_longer_fits_for_one_says_so():
    """By hand: a hall 9 m wide is 3 min a band for one, and its edges live 2.4 min."""
    plan = planned(hall(6, 9), minutes=4.4)
    assert plan.fields[0].verdict == "two"
    again = replan(plan, turn(plan, 2, sprayers=1))
    assert again.fields[0].verdict == "cannot"
    assert "seam" in again.fields[0].remedies[0].what
    assert codes(again) == {"dead-edge"}


def test_who_left_stays_away_when_the_day_is_planned_once_more():
    once = replan(HALL, turn(HALL, 1, sprayers=1))
    now = max(one.end_min for one in once.so_far.done)
    twice = replan(once, SoFar(at_min=now + 3.0))
    done = {one.id for one in twice.so_far.done}
    assert {b.sprayer for b in bands_of(twice) if b.id not in done} == {1}
    assert codes(twice) == set()


def test_a_second_who_stands_elsewhere_walks_there_and_back():
    told = turn(HALL, 3)
    state = settle_past(HALL, told)
    there = (
        state.second.here[0],
        state.second.here[1] + 0.8 * (1 if state.second.here[1] < 3 else -1),
    )
    again = replan(HALL, replace(told, at_min=told.at_min + 1.0, at_2=there))
    walks = [w for f in again.fields for w in f.walks if w.who == "sprayer 2"]
    assert any(w.path[-1][:2] == pytest.approx(there, abs=1e-3) for w in walks)
    assert codes(again) == set()


@pytest.mark.parametrize(
    ("plan", "told", "says"),
    [
        (HALL, {"tank_2_l": 99.0}, "more than the tank takes"),
        (HALL, {"sprayers": 1, "tank_2_l": 1.0}, "the second leaves"),
        (planned(hall(3, 2), helper=False), {"at_2": (0.5, 0.5)}, None),
    ],
)
def test_mistakes_about_the_second(plan, told, says):
    if says is None:
        plan = replace(plan, inputs=replace(plan.inputs, crew=Crew()))
        says = "for one sprayer"
    with pytest.raises(Refused, match=says):
        replan(plan, SoFar(at_min=1.0, **told))


def test_two_told_in_one_place_are_refused():
    told = turn(HALL, 3)
    here = settle_past(HALL, told).here
    with pytest.raises(Refused, match="apart"):
        replan(HALL, replace(told, at_min=told.at_min + 1.0, at_2=here))


def test_a_stop_is_never_between_two_halves():
    for number in range(len(halves(HALL)) - 1):
        told = turn(HALL, number)
        for within in (0.0, 1.5, 3.0):
            found = stop(HALL, told, within_min=within)
            pairs = {frozenset((a.id, b.id)) for a, b in halves(HALL)}
            mine = set(found.bands)
            assert all(len(pair & mine) != 1 for pair in pairs)


def test_with_time_enough_both_stop_at_the_end_of_the_field():
    last = bands_of(HALL)[-1].end_min
    told = turn(HALL, 4)
    found = stop(HALL, told, within_min=30.0)
    assert found.how == "line"
    assert found.minutes == pytest.approx(last - told.at_min, abs=0.02)


def test_it_is_read_back_as_it_was():
    again = replan(HALL, turn(HALL, 3, tank_2_l=1.0))
    assert plan_from(plan_to_dict(again), "it") == again


NUMBERS = range(0, 44, 3) if FULL else (0, 12, 21, 24, 33)
"""Of the bands at whose end it is: on time and late, an odd one of another tank, every fourth of a
room that is closed."""
STATES = [(helper, number) for helper in (False, True) for number in NUMBERS]


@pytest.mark.slow
@pytest.mark.parametrize(("helper", "number"), STATES)
def test_moments_of_a_house_pass_the_checker(helper, number):
    """Some late, some with another tank, some with a room closed: each by its number."""
    plan = day_of_two("thistle-end", helper=helper)
    one = sorted(bands_of(plan, coat=0), key=lambda b: b.start_min)[number]
    late = (0.0, 0.8, 2.0)[number // 3 % 3]
    told = {"tank_l": 2.5, "tank_2_l": 2.5} if number % 2 else {}
    room = plan.fields[-1].rooms[-1]
    shut = (ClosedRoom(room, one.end_min + late + 15.0),) if number % 4 == 0 else ()
    again = replan(plan, after(plan, one.id, late_min=late, closed=shut, **told))
    found = codes(again)
    lost = any(field.verdict == "cannot" for field in again.fields)
    assert found <= (LOST if lost else set())


SHAPES = sorted(AWKWARD)


@pytest.mark.slow
@settings(max_examples=30, deadline=None)
@given(
    name=st.sampled_from(SHAPES),
    helper=st.booleans(),
    part=st.floats(0, 1),
    late_min=st.sampled_from([-0.4, 0.0, 0.0, 1.0, 4.0]),
    tanks_l=st.tuples(st.none() | st.floats(0.2, 4.0), st.none() | st.floats(0.2, 4.0)),
    sprayers=st.sampled_from([None, None, 1]),
)
def test_on_any_floor_at_any_moment_the_rest_passes_the_checker_or_says_no(
    name, helper, part, late_min, tanks_l, sprayers
):
    plan = planned(AWKWARD[name], minutes=30.0, tank_l=5.0, helper=helper)
    own = bands_of(plan)
    one = own[int(part * (len(own) - 1))]
    told = SoFar(
        at_min=max(one.end_min + late_min, 0.0),
        done_up_to=one.id,
        tank_l=tanks_l[0],
        tank_2_l=None if sprayers == 1 else tanks_l[1],
        sprayers=sprayers,
    )
    try:
        again = replan(plan, told)
    except (Refused, Unanswerable):
        return  # it says no, with a reason by the types' own making
    mine = {b.id: b for b in bands_of(again)}
    past = [b for b in own if b.start_min <= one.start_min]
    assert all(mine[b.id].polygon == b.polygon and mine[b.id].sprayer == b.sprayer for b in past)
    lost = any(field.verdict != "fits" for field in again.fields)
    assert codes(again) <= (LOST if lost else set())


def test_a_band_laid_anew_is_not_drawn_as_one_of_the_plan_that_is_sprayed_from_the_same_place():
    """Sprayed from one standing place, of the same number, and of another shape."""
    one, other = bands_of(HALL)[:2]
    stood = replace(one, path=(one.path[0], (*one.path[0][:2], one.end_min)))
    anew = replace(stood, polygon=other.polygon)
    field = replace(HALL.fields[0], bands=(anew,))
    assert as_drawn(field, {one.id: stood}).bands == (anew,)
    assert as_drawn(field, {one.id: replace(anew, litres=1.0)}).bands == (anew,)


def test_in_words_both_halves_are_named_and_who_leaves():
    one, two = halves(HALL)[3]
    later = halves(HALL)[4]
    told = SoFar(at_min=one.end_min - 0.4)
    words = said_again(replan(HALL, told), (), folder="f", us=False).splitlines()[0]
    assert f"finish {numbered(HALL, one.id)} and {numbered(HALL, two.id)}" in words
    assert (
        f"go on with bands {numbered(HALL, later[0].id)} and {numbered(HALL, later[1].id)}" in words
    )
    words = said_again(
        replan(HALL, replace(told, sprayers=1)), (), folder="f", us=False
    ).splitlines()[0]
    assert "the second sprayer walks out while the first waits" in words
    dry = said_again(
        replan(HALL, turn(HALL, 2, tank_2_l=0.5)), (), folder="f", us=False
    ).splitlines()[0]
    assert "fill both tanks" in dry
