"""Two sprayers, two tanks: each alarm at the soonest that his could be empty, by hand."""

import pytest
from tests.job.story.entries import Log
from tests.midday import day_of_two

from farwall.job.live.alarms import alarms
from farwall.job.live.standing import Standing
from farwall.job.live.tanks import tanks
from farwall.job.story import story

PLAN = day_of_two("quince-street", helper=True)
BOTH = next(f for f in PLAN.fields if f.coat == "first" and {b.sprayer for b in f.bands} == {1, 2})
L = {band.id: band.litres for band in BOTH.bands}
NUMBER = BOTH.id.removeprefix("first.")
FIRST, SECOND = (next(b for b in BOTH.bands if b.sprayer == hand) for hand in (1, 2))


def log():
    """All fields before theirs done as planned, and the first half of each in theirs."""
    made = Log(PLAN)
    for field in sorted(PLAN.fields, key=lambda one: one.order):
        if field.coat == "first" and field.order < BOTH.order:
            made("field-done", field.end_min, field=field.id)
    for band in (FIRST, SECOND):
        made("band-done", band.end_min, band=band.id)
    return made


AT = max(FIRST.end_min, SECOND.end_min)


def day(made):
    return Standing(PLAN, story(PLAN, made.kept), AT + 0.5)


def left_of(hand):
    return [b for b in BOTH.bands if b.sprayer == hand and b not in {FIRST, SECOND}]


def told(made):
    return [(one.at_min, one.what) for one in alarms(day(made), None, ()) if one.kind == "tank"]


def empty_at(hand, litres):
    """By hand: bands gone on with now, each used evenly up to its end."""
    left = sorted((*left_of(1), *left_of(2)), key=lambda band: band.start_min)
    before = AT + 0.5
    for band in left_of(hand):
        at = AT + 0.5 + band.end_min - left[0].start_min
        if band.litres > litres:
            return pytest.approx(before + (at - before) * litres / band.litres, abs=0.01)
        litres, before = litres - band.litres, at
    raise AssertionError("it lasts")


def test_where_nothing_is_told_each_is_filled_as_planned_and_said_to_be():
    assert [(one.sprayer, one.how) for one in tanks(day(log()))] == [(1, "plan"), (2, "plan")]
    holds = {one.sprayer: one.litres for one in tanks(day(log()))}
    full = PLAN.inputs.tools.tank_l
    assert holds[1] == pytest.approx(full - L[FIRST.id], abs=0.02)
    assert holds[2] == pytest.approx(full - L[SECOND.id], abs=0.02)


def test_one_of_two_who_runs_dry_is_told_though_together_they_have_enough():
    made = log()
    made("tank-weighed", AT + 0.1, tank_l=7.0, sprayer="1")
    made("tank-weighed", AT + 0.2, tank_l=1.0, sprayer="2")
    assert [one.how for one in tanks(day(made))] == ["told", "told"]
    assert sum(b.litres for b in left_of(1)) < 7.0
    assert told(made) == [
        (empty_at(2, 1.0), f"the tank of sprayer 2 is empty in field 1.{NUMBER}: fill")
    ]


def test_a_name_is_whose_bands_were_entered_with_it():
    made = log()
    made("band-done", AT + 0.05, band=SECOND.id, sprayer="blue")
    made("tank-weighed", AT + 0.2, tank_l=1.0, sprayer="blue")
    assert [(one.sprayer, one.how) for one in tanks(day(made))] == [(1, "plan"), (2, "told")]


def test_a_tank_looked_at_without_a_name_may_be_either_s_and_both_are_told():
    made = log()
    made("tank-weighed", AT + 0.2, tank_l=1.0)
    assert [(one.litres, one.how) for one in tanks(day(made))] == [(1.0, "either")] * 2
    found = told(made)
    soonest = sorted([empty_at(1, 1.0), empty_at(2, 1.0)], key=lambda one: one.expected)
    assert [at for at, _ in found] == soonest
    assert all("may be empty" in what and "whose" in what for _, what in found)
    made("tank-weighed", AT + 0.3, tank_l=7.0, sprayer="1")
    assert [(one.litres, one.how) for one in tanks(day(made))] == [(7.0, "told"), (1.0, "either")]


def test_a_fill_with_a_name_is_a_full_tank_and_one_without_is_nobody_s():
    made = log()
    made("tank-weighed", AT + 0.1, tank_l=1.0, sprayer="2")
    made("filled", AT + 0.2)
    assert tanks(day(made))[1].litres == 1.0
    made("filled", AT + 0.3, sprayer="2")
    assert tanks(day(made))[1].litres == PLAN.inputs.tools.tank_l


def test_who_sprayed_more_than_his_tank_held_was_filled_and_is_reckoned_by_the_plan():
    made = log()
    made("tank-weighed", AT - 0.01, tank_l=0.1, sprayer="2")
    for band in left_of(2)[:1]:
        made("band-done", AT + 0.4, band=band.id)
    assert tanks(day(made))[-1].how == "plan"


def test_where_one_sprays_alone_an_unnamed_tank_is_his():
    made = Log(PLAN)
    made("mixed", -10, coat="first", litres=30.0)
    made("filled", -1, tank_l=7.0)
    made("field-done", 3, field="first.1", tank_l=6.0, tub_l=23.0)
    coat = story(PLAN, made.kept).coat("first")
    assert (coat.tank_l, coat.levels[-1].hand_l) == (6.0, 29.0)


def test_one_tank_of_two_is_not_taken_for_all_that_is_left():
    """Before, 7 of 14 L were missing: the slab was told to drink so much more."""
    made = Log(PLAN)
    made("mixed", -10, coat="first", litres=40.0)
    for one in log().kept:
        made(one.entry.word, 1.0, counted=0, **one.entry.about)
    made("tank-weighed", AT + 0.1, tank_l=7.0, tub_l=12.0, sprayer="1")
    coat = story(PLAN, made.kept).coat("first")
    assert (coat.tank_l, coat.levels) == (None, coat.levels[:1])
    made("tank-weighed", AT + 0.2, tank_l=6.5, sprayer="2")
    coat = story(PLAN, made.kept).coat("first")
    assert (coat.tank_l, coat.levels[-1].hand_l) == (13.5, 25.5)
