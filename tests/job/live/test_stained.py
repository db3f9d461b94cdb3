"""A floor that is stained by its log, though the plan has another coat: nothing of it is begun."""

import pytest
from tests.job.live.test_now import PLAN, at
from tests.job.story.entries import Log

from farwall.job.live.again import again
from farwall.job.live.say import said_now
from farwall.job.live.stained import stained
from farwall.job.story import story
from farwall.phrasebook import said_whole, speaking

FIRST, SECOND = (coat.id for coat in PLAN.inputs.coats)


def one_coat():
    log = Log(PLAN)
    log("mixed", -5.0, coat=FIRST, litres=40.0)
    log("coat-done", 80.0, coat=FIRST)
    return log


def ended(log):
    found = stained(PLAN, story(PLAN, log.kept))
    return None if found is None else (found.by.word, found.coat)


@pytest.mark.parametrize(
    ("word", "about"),
    [
        ("coat-judged", {"coat": FIRST, "look": "right", "next": "enough"}),
        ("neutralised", {}),
        ("rinsed", {"ph": 7.5, "rag": "clean"}),
        ("sealed", {"round": 1}),
    ],
)
def test_what_ends_the_staining_begins_no_other_coat(word, about):
    log = one_coat()
    assert at(log, 300.0).start_if.field.startswith(SECOND)
    log(word, 300.0, **about)
    assert ended(log) == (word, FIRST)
    found = at(log, 301.0)
    assert (found.coat, found.field, found.band, found.fields_left) == (FIRST, "", "", 0)
    assert found.start_if is None
    assert found.more_mix is None
    assert found.stained
    said = said_now(PLAN, found)
    assert "begin" not in said.splitlines()[0]
    assert "Mix and enter it" not in said
    assert again(PLAN, story(PLAN, log.kept), at_min=301.0).word == "done"


def test_a_coat_that_is_laid_after_all_goes_on():
    log = one_coat()
    log("rinsed", 300.0, rag="clean")
    look = log("coat-judged", 320.0, coat=FIRST, look="lighter", next="another")
    assert ended(log) is None
    assert at(log, 321.0).start_if is not None
    log("struck", 322.0, entry=look.entry.id)
    assert at(log, 323.0).start_if is None
    log("field-done", 400.0, field=f"{SECOND}.1")
    assert ended(log) is None
    assert at(log, 401.0).coat == SECOND


def test_a_rinse_before_the_stain_and_a_slip_in_a_field_end_nothing():
    log = Log(PLAN)
    log("rinsed", -60.0, rag="clean")
    assert at(log, -50.0).start_if is not None
    first = PLAN.fields[0]
    log("band-done", first.start_min + 1, band=first.bands[0].id)
    assert at(log, first.start_min + 2).field == first.id
    slip = log("neutralised", first.start_min + 20)
    assert at(log, first.start_min + 21).field == first.id
    log("struck", first.start_min + 22, entry=slip.entry.id)
    log("neutralised", first.start_min + 240)
    found = at(log, first.start_min + 241)
    assert (found.field, found.start_if) == ("", None)


def test_the_waits_after_the_last_coat_are_those_of_the_one_that_is():
    log = one_coat()
    log("coat-judged", 100.0, coat=FIRST, look="right", next="enough")
    assert {(one.clock.coat, one.clock.name) for one in at(log, 101.0).waits} == {
        (FIRST, one.name) for one in PLAN.clocks if one.coat == SECOND and one.name != "open time"
    }
    assert "dry to neutralise" in {one.kind for one in at(log, 101.0).alarms}
    log("dry", 170.0, coat=FIRST)
    assert "dry to neutralise" not in {one.kind for one in at(log, 171.0).alarms}


def test_it_is_said_in_spanish_too():
    for word in ("neutralised", "rinsed", "sealed"):
        log = one_coat()
        log(word, 300.0)
        found = at(log, 301.0)
        (one,) = [each for each in found.advice if each.rule == "stained"]
        with speaking("es"):
            assert said_whole(one.reason)
            assert said_whole(one.do)
            assert said_whole(said_now(PLAN, found).splitlines()[0])


@pytest.mark.parametrize(
    ("word", "about"),
    [
        ("fizz", {"seen": False}),
        ("coat-judged", {"coat": SECOND, "look": "darker"}),
        ("mixed", {"coat": FIRST, "litres": 1.0, "added": "bleach"}),
    ],
)
def test_a_stop_of_the_stain_ends_with_the_wash(word, about):
    log = one_coat()
    log("coat-done", 280.0, coat=SECOND)
    log(word, 290.0, **about)
    assert at(log, 300.0).stops
    log("rinsed", 600.0, ph=7.5, rag="clean")
    assert not at(log, 601.0).stops


def test_a_wait_that_is_over_is_no_line_any_more():
    log = one_coat()
    log("coat-done", 280.0, coat=SECOND)
    log("still-damp", 320.0, coat=SECOND)
    assert "dry to neutralise: likely" in said_now(PLAN, at(log, 321.0))
    log("neutralised", 500.0)
    assert "dry to neutralise: likely" not in said_now(PLAN, at(log, 501.0))
