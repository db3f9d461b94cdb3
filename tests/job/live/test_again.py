"""Whether the plan still holds, and one re-plan for many taps."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.job.live.test_now import PLAN, morning
from tests.job.story.entries import Log
from tests.midday import codes

from farwall.job.live.again import MOST_S, SETTLE_S, Waiting, again, late_min, so_far_of
from farwall.job.live.standing import Standing
from farwall.job.replan import replan
from farwall.job.story import story
from farwall.phrasebook import said_whole, speaking


def asked(log, minute):
    return again(PLAN, story(PLAN, log.kept), at_min=minute)


def test_as_planned_the_plan_holds():
    assert asked(Log(PLAN), 0).word == "holds"
    assert asked(morning(), 16.4).word == "holds"


def test_late_thirsty_closed_or_in_another_order_it_does_not():
    assert "min late" in asked(morning(), 25).says
    assert "% more" in asked(morning(1.3), 16.4).says
    assert "% less" in asked(morning(0.7), 16.4).says
    log = morning()
    log("room-closed", 16.35, room="bed-1")
    assert "Bedroom 1 is closed" in asked(log, 16.4).says
    other = Log(PLAN)
    other("field-done", 4, field="first.2")
    other("field-done", 5, field="first.1")
    assert "another order" in asked(other, 5.1).says


def test_no_plan_is_said_to_hold_whose_next_field_says_no():
    """Nothing was entered that moves it, so nothing is laid anew by itself; but the field is a
    no."""
    fields = tuple(replace(one, verdict="cannot") if one.order == 1 else one for one in PLAN.fields)
    plan = replace(PLAN, fields=fields)
    found = again(plan, story(plan, ()), at_min=0)
    assert (found.word, found.no) == ("holds", "1.1")
    assert "still holds" not in found.says
    assert "field 1.1 in it says NO" in found.says
    with speaking("es"):
        assert said_whole(found.says)
    assert asked(Log(PLAN), 0).no == ""


def test_a_stop_is_told_by_the_clock():
    log = morning()
    log("stopped", 16.4)
    assert "spraying stopped at 8:16 am" in asked(log, 16.5).says
    metric = again(PLAN, story(PLAN, log.kept), at_min=16.5, us=False)
    assert "spraying stopped at 8:16" in metric.says
    with speaking("es"):
        assert said_whole(metric.says)


def test_when_all_is_sprayed_no_replan_is_offered():
    log = Log(PLAN)
    for coat in PLAN.inputs.coats:
        log("coat-done", 500, coat=coat.id)
    found = asked(log, 600)
    assert (found.word, found.says) == ("done", "Nothing of the plan is left to spray.")


def test_where_two_spray_a_late_day_is_planned_again_too():
    """Told by entries of either sprayer; the other half of the last band is in hand."""
    from tests.job.test_two_again import HALL, halves
    from tests.midday import codes

    log = Log(HALL)
    one, two = halves(HALL)[2]
    log("field-started", 0.0, field=HALL.fields[0].id)
    log("band-done", two.end_min + 2.0, band=two.id)
    found = again(HALL, story(HALL, log.kept), at_min=two.end_min + 2.0)
    assert found.word == "again"
    told = so_far_of(HALL, story(HALL, log.kept), at_min=two.end_min + 2.0)
    assert told.tank_l is None
    rest = replan(HALL, told)
    assert {one.id, two.id} <= {each.id for each in rest.so_far.done}
    assert codes(rest) == set()


def test_the_story_is_what_a_replan_wants():
    """The day told by entries and the day told by words come to the same rest."""
    from farwall.facts.so_far import SoFar

    log = Log(PLAN)
    for field in PLAN.fields[:5]:
        log("field-started", field.start_min, field=field.id)
        log("field-done", field.end_min, field=field.id)
    told = so_far_of(PLAN, story(PLAN, log.kept), at_min=24.0)
    by_log = replan(PLAN, told)
    by_words = replan(PLAN, SoFar(at_min=24.0, done_up_to="first.5"))
    for one, other in zip(by_log.fields, by_words.fields, strict=True):
        assert one.id == other.id
        assert one.end_min == pytest.approx(other.end_min, abs=0.05)


def test_a_burst_of_taps_waits_for_quiet_by_hand():
    waiting = Waiting().tapped(100.0).tapped(101.0)
    assert waiting.due_in_s(101.5) == pytest.approx(SETTLE_S - 0.5)
    assert waiting.due_in_s(103.0) == 0.0
    assert Waiting().due_in_s(5.0) is None


@given(st.lists(st.floats(0, 1.9), min_size=1, max_size=60))
def test_however_long_a_burst_lasts_its_first_tap_is_answered_in_time(gaps):
    """Replayed: a re-plan clears what waits; no tap waits longer than the most, none is lost."""
    now_s, waiting, replans = 0.0, Waiting(), 0
    for gap in gaps:
        due = waiting.due_in_s(now_s)
        if due is not None and due <= gap:
            assert now_s + due - waiting.first_s <= MOST_S + 1e-9
            waiting, replans = Waiting(), replans + 1
        now_s += gap
        waiting = waiting.tapped(now_s)
    assert waiting.due_in_s(now_s) is not None
    assert replans <= sum(gaps) / SETTLE_S + 1


def test_the_day_is_as_late_as_the_band_done_last_by_hand():
    """By hand: the first field as planned, the second done 5 min late; the third should have begun
    4.9 min ago, or less."""
    log = Log(PLAN)
    log("field-done", PLAN.fields[0].end_min, field="first.1")
    log("field-done", PLAN.fields[1].end_min + 5, field="first.2")
    told = story(PLAN, log.kept)
    standing = Standing(PLAN, told, PLAN.fields[1].end_min + 5)
    assert late_min(standing) == pytest.approx(5.0, abs=0.01)


def test_what_a_replan_is_told_of_tub_tank_and_mix_by_hand():
    """By hand: 5 L in the tub and 2 in the tank at the last stop line, of 34.5 L mixed."""
    log = morning()
    end = PLAN.fields[3].end_min
    log("tank-weighed", end, tub_l=5.0, tank_l=2.0)
    told = so_far_of(PLAN, story(PLAN, log.kept), at_min=10.0)
    assert (told.tank_l, told.tub_l, told.mixed_l) == (2.0, 5.0, 34.5)
    assert told.at_min == pytest.approx(end, abs=0.01)  # no earlier than what is done already
    assert told.done[0].start_min >= 0


def test_where_nobody_looked_a_replan_is_told_no_litres():
    log = Log(PLAN)
    log("field-done", PLAN.fields[0].end_min, field="first.1")
    told = so_far_of(PLAN, story(PLAN, log.kept), at_min=5.0)
    assert (told.tank_l, told.tub_l, told.mixed_l, told.at_min) == (None, None, None, 5.0)


def test_a_room_closed_without_an_end_stays_closed_for_a_replan():
    log = morning()
    log("room-closed", 16.35, room="bed-1")
    log("room-closed", 16.35, room="bed-2", until="8:50")
    closed = so_far_of(PLAN, story(PLAN, log.kept), at_min=16.4).closed
    assert {one.room: one.until_min for one in closed} == {"bed-1": None, "bed-2": 50.0}


def test_a_batch_that_was_not_entered_does_not_keep_the_rest_from_being_laid_anew():
    """By hand: 2 L entered as mixed, 10 in the tub and 4 in the tank at a stop line: 14 were."""
    log = Log(PLAN)
    log("mixed", -10, coat="first", litres=2.0)
    log("field-done", 4.0, field="first.1", tub_l=10.0, tank_l=4.0)
    told = so_far_of(PLAN, story(PLAN, log.kept), at_min=9.0)
    assert (told.tub_l, told.tank_l, told.mixed_l) == (10.0, 4.0, 14.0)
    assert codes(replan(PLAN, told)) == set()


def test_a_tank_filled_over_its_mark_does_not_either():
    """By hand: a tank for 7.6 L told with a tenth more; what is over its mark counts as the tub's,
    so that nothing of it is lost."""
    holds = PLAN.inputs.tools.tank_l
    log = Log(PLAN)
    log("mixed", -10, coat="first", litres=34.5)
    log("field-done", 4.0, field="first.1", tub_l=20.0, tank_l=round(holds * 1.1, 3))
    told = so_far_of(PLAN, story(PLAN, log.kept), at_min=9.0)
    assert told.tank_l == holds
    assert told.tub_l == pytest.approx(20.0 + 0.1 * holds, abs=0.01)
    assert codes(replan(PLAN, told)) == set()


def test_a_day_that_was_not_begun_is_late_and_none_of_it_is_done():
    """The rest once came back with all that should have been sprayed by then told as done."""
    log = Log(PLAN)
    log("mixed", 88.0, coat="first", litres=22.0)
    begins = PLAN.fields[0].start_min
    found = again(PLAN, story(PLAN, log.kept), at_min=90.0)
    assert (found.word, found.why) == ("again", (f"{90 - begins:.0f} min late",))
    late = replan(PLAN, so_far_of(PLAN, story(PLAN, log.kept), at_min=90.0))
    assert late.so_far.done == ()
    assert codes(late) == set()


def test_before_the_plan_begins_nothing_is_late():
    assert asked(Log(PLAN), -30.0).word == "holds"
