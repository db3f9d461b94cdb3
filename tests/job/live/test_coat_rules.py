"""A second coat tapped onto a first that cannot be dry yet: told at once, silent when looked at."""

import pytest
from tests.job.live.test_now import PLAN, at
from tests.job.live.test_rules import rules
from tests.job.story.entries import Log

FIRST = [one for one in PLAN.fields if one.coat == PLAN.inputs.coats[0].id]
SECOND = [one for one in PLAN.fields if one.coat == PLAN.inputs.coats[1].id]
END_MIN = max(one.end_min for one in FIRST)
WAIT = next(one for one in PLAN.clocks if one.name == "dry to recoat")


def coat_one():
    log = Log(PLAN)
    for field in FIRST:
        log("field-started", field.start_min, field=field.id)
        log("field-done", field.end_min, field=field.id)
    return log


def begun(log, minute):
    log("band-done", minute, band=SECOND[0].bands[0].id)
    return log


def ended_under():
    return max(one.end_min for one in FIRST if {*one.rooms} & {*SECOND[0].rooms})


@pytest.mark.common_practice
def test_a_coat_tapped_on_a_wet_one_stops_the_day_and_says_until_when():
    """No source: common practice that a coat waits for the one below."""
    found = at(begun(coat_one(), END_MIN + 1), END_MIN + 1.1)
    told = next(one for one in found.advice if one.rule == "wet-below")
    assert told.stop
    assert told.reason.startswith("Coat 2 is entered in ")
    assert "after coat 1 there, which is not dry before" in told.reason
    assert "Undo it" in told.do


def test_struck_or_looked_at_and_dry_it_is_silent():
    log = coat_one()
    tap = begun(log, END_MIN + 1)
    assert "wet-below" in rules(at(tap, END_MIN + 1.1))
    log("struck", END_MIN + 1.2, entry=log.kept[-1].entry.id)
    assert "wet-below" not in rules(at(log, END_MIN + 1.3))
    log = coat_one()
    log("dry", END_MIN + 0.5, coat=FIRST[0].coat)
    assert "wet-below" in rules(at(begun(log, END_MIN + 1), END_MIN + 1.1)), "a slip, not a look"
    log = coat_one()
    log("dry", END_MIN + 0.5 * WAIT.low_min, coat=FIRST[0].coat)
    tap_min = END_MIN + 0.5 * WAIT.low_min + 1
    assert "wet-below" not in rules(at(begun(log, tap_min), tap_min + 0.1))


LATE = next(one for one in SECOND if one.rooms == FIRST[-1].rooms)
OWN, OTHER = FIRST[-1].rooms, FIRST[0].rooms
SOON = END_MIN + 0.5 * WAIT.low_min


def late(log):
    """The second coat tapped in the rooms that were done last, in half the time they dry in."""
    log("band-done", SOON, band=LATE.bands[0].id)
    return "wet-below" in rules(at(log, SOON + 0.1))


@pytest.mark.parametrize(
    ("looks", "dry"),
    [
        ([("dry", None)], True),
        ([("dry", OWN)], True),
        ([("dry", OTHER)], False),
        ([("still-damp", OWN), ("dry", OTHER)], False),
        ([("dry", OWN), ("still-damp", OTHER)], True),
        ([("dry", OWN), ("still-damp", OWN)], False),
        ([("dry", None), ("still-damp", OWN)], False),
        ([("still-damp", OWN), ("dry", None)], True),
    ],
)
def test_only_the_last_look_into_its_own_rooms_speaks_for_a_field(looks, dry):
    assert not {*OWN} & {*OTHER}
    log = coat_one()
    for n, (word, rooms_) in enumerate(looks):
        for room in rooms_ or (None,):
            where = {} if room is None else {"room": room}
            log(word, SOON - 1 + 0.1 * n, coat=FIRST[0].coat, **where)
    assert late(log) is not dry


def test_what_was_seen_before_its_rooms_were_done_is_no_look_at_them():
    log = Log(PLAN)
    for field in FIRST:
        log("field-started", field.start_min, field=field.id)
        if field is FIRST[-1]:
            log("dry", field.end_min - 0.5, coat=FIRST[0].coat, after_min=WAIT.likely_min)
        log("field-done", field.end_min, field=field.id)
    assert late(log)


def test_begun_when_the_coat_below_may_be_dry_nothing_is_said_and_later_it_ends():
    soonest = END_MIN + 2.0 * WAIT.likely_min
    assert "wet-below" not in rules(at(begun(coat_one(), soonest), soonest + 0.1))
    log = begun(coat_one(), END_MIN + 1)
    assert "wet-below" not in rules(at(log, ended_under() + 2.0 * WAIT.high_min))


def test_the_first_coat_lies_on_nothing():
    log = Log(PLAN)
    log("band-done", 1.0, band=FIRST[0].bands[0].id)
    assert "wet-below" not in rules(at(log, 1.1))
