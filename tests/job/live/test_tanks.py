"""Two sprayers, two tanks: each alarm at the soonest that his could be empty, by hand."""

from types import SimpleNamespace

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


def thirsty(made, factor=1.25):
    """The day of a slab that is believed to drink a quarter more."""
    found = day(made)
    found.__dict__["belief"] = SimpleNamespace(factor=factor)
    return found


def test_of_a_thirsty_slab_what_was_sprayed_since_counts_for_more_by_hand():
    """His next band lasts a minute from a look in its middle: of it half is used since."""
    band = left_of(2)[0]
    made = log()
    made("tank-weighed", AT + 0.5, tank_l=3.0, sprayer="2")
    made("field-started", AT + 0.5, field=BOTH.id, counted=0)
    made("band-done", AT + 1.0, band=band.id)
    then = story(PLAN, made.kept).done()[band.id]
    share = (AT + 1.0 - (AT + 0.5)) / (then.end_min - then.start_min)
    assert 0 < share < 1, "the look lies inside the band"
    used = 1.25 * share * band.litres
    found = {one.sprayer: one.litres for one in tanks(thirsty(made))}
    assert found[2] == pytest.approx(3.0 - used, abs=1e-3)
    full = PLAN.inputs.tools.tank_l
    assert found[1] == pytest.approx(full - 1.25 * L[FIRST.id], abs=0.02)


def test_what_was_told_of_the_coat_below_is_not_in_the_tank_of_the_next():
    made = log()
    made("tank-weighed", AT + 0.1, tank_l=0.4, sprayer="2")
    made("coat-done", AT + 20, coat="first")
    ordered = sorted((f for f in PLAN.fields if f.coat == "second"), key=lambda one: one.order)
    for field in ordered:
        if {b.sprayer for b in field.bands} == {1, 2}:
            made("band-done", field.start_min + 1, band=field.bands[0].id)
            break
        made("field-done", field.end_min, field=field.id)
    standing = Standing(PLAN, story(PLAN, made.kept), field.start_min + 1.1)
    assert standing.coat == "second"
    assert {one.how for one in tanks(standing)} == {"plan"}


def test_a_fill_in_mid_field_counts_when_his_band_after_it_is_done():
    """Sorrel Rise, the last field of its first coat: the helper brings the second a full tank."""
    plan = day_of_two("sorrel-rise", helper=True)
    field = max((f for f in plan.fields if f.coat == "coat-1"), key=lambda one: one.order)
    fill = next(
        r
        for r in field.refills
        if r.by.endswith("sprayer 2") and r.at_min > field.bands[0].start_min
    )
    after = fill.at_min + fill.minutes
    own = [b for b in field.bands if b.sprayer == 2]
    upto = [b for b in own if b.end_min <= after + 0.01]
    following = own[len(upto)]

    def holds(*bands):
        made = Log(plan)
        for each in sorted(plan.fields, key=lambda one: one.order):
            if each.coat == "coat-1" and each.order < field.order:
                made("field-done", each.end_min, field=each.id)
        for band in bands:
            made("band-done", band.end_min, band=band.id)
        return {
            one.sprayer: one.litres for one in tanks(Standing(plan, story(plan, made.kept), after))
        }[2]

    before, then = holds(*upto), holds(*upto, following)
    assert then == pytest.approx(before + fill.litres - following.litres, abs=0.05)


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
