"""Sealer entered on a floor that cannot be dry: taken, and what speaks against it is said."""

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


def test_it_is_said_in_spanish_too():
    log = washed()
    log("sealed", RINSED + 20, coat_of_sealer=1)
    found = rule(log, RINSED + 25)
    with speaking("es"):
        assert said_whole(found.reason)
        assert said_whole(found.do)
