"""Sealer entered on a floor that cannot be dry: taken, and what speaks against it is said."""

from dataclasses import replace

from tests.job.live.test_now import JOB, PLAN
from tests.job.story.entries import Log

from farwall.job.live import now
from farwall.job.live.say import said_now
from farwall.job.story import story
from farwall.phrasebook import said_whole, speaking

LOW = next(one.low_min for one in PLAN.clocks if one.name == "dry-down before sealing")
RINSED = 1000.0


def washed():
    log = Log(PLAN)
    for coat in PLAN.inputs.coats:
        log("coat-done", 500.0, coat=coat.id)
    log("rinsed", RINSED, ph=7.5, rag="clean")
    return log


def told(log, minute):
    return now(JOB, PLAN, story(PLAN, log.kept), at_min=minute)


def rule(log, minute):
    return next((one for one in told(log, minute).advice if one.rule == "sealed wet"), None)


def test_sealer_right_after_the_rinse_is_taken_and_spoken_against():
    log = washed()
    log("sealed", RINSED + 20, coat_of_sealer=1)
    assert rule(log, RINSED + 25).stop
    said = said_now(PLAN, told(log, RINSED + 25))
    assert "STOP. No more sealer" in said
    assert "20 min after the last rinse" in said
    assert story(PLAN, log.kept).last("sealed") is not None


def test_when_the_floor_would_have_dried_it_is_advice_and_no_stop():
    log = washed()
    log("sealed", RINSED + 20, coat_of_sealer=1)
    assert not rule(log, RINSED + LOW + 1).stop
    log("handed-over", RINSED + LOW + 5)
    assert rule(log, RINSED + LOW + 6) is None


def test_nothing_is_said_of_a_floor_that_waited_or_was_found_dry():
    waited = washed()
    waited("sealed", RINSED + LOW, coat_of_sealer=1)
    assert rule(waited, RINSED + LOW + 1) is None
    looked = washed()
    looked("dry", RINSED + 300, clock="dry-down")
    looked("sealed", RINSED + 310, coat_of_sealer=1)
    assert rule(looked, RINSED + 311) is None
    damp = washed()
    damp("dry", RINSED + 300, clock="dry-down")
    damp("still-damp", RINSED + 305, clock="dry-down")
    damp("sealed", RINSED + 310, coat_of_sealer=1)
    assert rule(damp, RINSED + 311) is not None


def test_each_room_dries_from_its_own_rinse():
    """One rinsed again next door once stopped the sealer of a room that had dried for days."""
    one, other = (room.id for room in PLAN.inputs.floor.rooms[:2])
    late = RINSED + LOW
    log = washed()
    log("rinsed", late, room=other, ph=7.5, rag="clean")
    log("sealed", late + 20, coat_of_sealer=1, room=one)
    assert rule(log, late + 25) is None
    log("sealed", late + 40, coat_of_sealer=1, room=other)
    assert rule(log, late + 45).stop
    assert "40 min after the last rinse" in rule(log, late + 45).reason


def test_it_is_said_in_spanish_too():
    log = washed()
    log("sealed", RINSED + 20, coat_of_sealer=1)
    found = rule(log, RINSED + 25)
    with speaking("es"):
        assert said_whole(found.reason)
        assert said_whole(found.do)


def spoken(log, minute, job=JOB):
    found = now(job, PLAN, story(PLAN, log.kept), at_min=minute).advice
    return {one.rule: one for one in found if one.rule.startswith("sealed")}


def washed_by(*rinses):
    log = Log(PLAN)
    for coat in PLAN.inputs.coats:
        log("coat-done", 500.0, coat=coat.id)
    for about in rinses:
        log("rinsed", RINSED, **about)
    return log


def test_sealer_over_residue_is_spoken_against_until_it_is_struck():
    log = washed_by({"ph": 6.0, "rag": "clean"})
    entry = log("sealed", RINSED + LOW + 1, round=1)
    one = spoken(log, RINSED + LOW + 2)["sealed unclean"]
    assert one.stop
    assert "a strip reads 6" in one.reason
    log("struck", RINSED + LOW + 3, entry=entry.entry.id)
    assert spoken(log, RINSED + LOW + 4) == {}


def test_each_room_is_held_against_its_own_rinse():
    clean, dirty = (room.id for room in PLAN.inputs.floor.rooms[:2])
    log = washed_by(*[{"room": clean, "ph": 7.5, "rag": "clean"}] * 3)
    log("rinsed", RINSED, room=dirty, ph=7.5, rag="coloured")
    log("sealed", RINSED + LOW + 1, room=clean, round=1)
    assert "sealed unclean" not in spoken(log, RINSED + LOW + 2)
    log("sealed", RINSED + LOW + 30, room=dirty, round=1)
    assert spoken(log, RINSED + LOW + 31)["sealed unclean"].stop
    log("rinsed", RINSED + LOW + 10, room=dirty, ph=7.5, rag="clean", counted=0)
    assert "sealed unclean" not in spoken(log, RINSED + LOW + 32)


def test_sealer_over_what_nobody_read_is_asked_about():
    bare = washed_by()
    bare("sealed", 3000.0)
    assert not spoken(bare, 3001.0)["sealed unread"].stop
    assert "no rinse before it" in spoken(bare, 3001.0)["sealed unread"].reason
    unread = washed_by({"rag": "clean"})
    unread("sealed", 3000.0)
    assert "does not tell of acid" in spoken(unread, 3001.0)["sealed unread"].reason
    unread("handed-over", 3100.0)
    assert spoken(unread, 3101.0) == {}


NEXT = next(one.low_min for one in PLAN.clocks if one.name == "next coat of sealer")


def twice(minutes, job=JOB, **second):
    log = washed_by({"ph": 7.5, "rag": "clean"})
    log("sealed", 3000.0, round=1)
    log("sealed", 3000.0 + minutes, **second)
    return log, spoken(log, 3000.0 + minutes + 1, job).get("sealed soon")


def test_a_second_coat_of_sealer_waits_for_the_first():
    log, soon = twice(NEXT - 20, round=2)
    assert soon.stop
    assert "by the plan" in soon.reason
    assert not spoken(log, 3000.0 + NEXT + 1)["sealed soon"].stop
    assert twice(NEXT + 1, round=2)[1] is None
    log("dry", 3000.0 + NEXT - 30, clock="seal", counted=0)
    assert "sealed soon" not in spoken(log, 3000.0 + NEXT - 10)


def test_one_coat_tapped_twice_is_no_second_one():
    assert twice(3.0)[1] is None
    assert twice(30.0, round=1)[1] is None
    assert twice(30.0)[1] is not None


def test_the_sealers_sheet_wins_over_the_clock():
    """By hand: 10 h of its sheet, 2 h and more of the plan."""
    sheet = replace(JOB, sealer=replace(JOB.sealer, recoat_from_h=10.0))
    soon = twice(NEXT + 60, job=sheet, round=2)[1]
    assert "by its sheet" in soon.reason


def test_every_word_against_sealer_has_its_spanish():
    found = [twice(NEXT - 20, round=2)[1]]
    for rinses in ((), ({"rag": "grey"},), ({"rag": "clean"},)):
        log = washed_by(*rinses)
        log("sealed", 3000.0)
        found += spoken(log, 3001.0).values()
    assert len(found) == 4
    with speaking("es", frozenset(room.label for room in PLAN.inputs.floor.rooms)):
        for one in found:
            assert said_whole(one.reason), one.reason
            assert said_whole(one.do), one.do
            assert said_whole(f"NO ({one.rule}): {one.reason}") or not one.stop
