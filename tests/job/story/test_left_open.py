"""A field that stands open in the log though a later one is begun is asked about, by hand."""

from tests.job.story.entries import Log
from tests.midday import day_of, day_of_two

from farwall.job.story import story
from farwall.phrasebook import in_spanish

PLAN = day_of("quince-street")
OPEN = (
    "Field 1.2 stands open in the log, and 1.3 was begun after it; if 1.2 is sprayed, enter it as "
    "done."
)


def begun(*between):
    """Of field 1.2 the last band was not tapped; then one of the next."""
    log = Log(PLAN)
    log("field-done", 2.0, field="first.1")
    log("band-done", 5.0, band="first.2.3")
    for minute, word, about in between:
        log(word, minute, **about)
    log("band-done", 9.0, band="first.3.2")
    return log


def asked(log):
    return story(PLAN, log.kept).contradictions


def test_a_tap_that_is_missing_is_asked_about_until_it_is_entered():
    log = begun()
    assert asked(log) == (OPEN,)
    assert in_spanish(OPEN) is not None
    log("field-done", 9.5, field="first.2")
    assert asked(log) == ()


def test_a_field_that_was_left_on_purpose_is_not():
    assert asked(begun((5.5, "feathered", {"field": "first.2"}))) == ()
    assert asked(begun((5.5, "stopped", {"because": "the plumber"}))) == ()
    room = next(one for one in PLAN.fields if one.id == "first.2").rooms[0]
    assert asked(begun((5.5, "room-closed", {"room": room}))) == ()


def test_the_field_in_hand_is_not():
    log = Log(PLAN)
    log("field-done", 2.0, field="first.1")
    log("band-done", 5.0, band="first.2.3")
    assert asked(log) == ()


def test_a_coat_begun_over_one_that_is_not_entered_as_done_is():
    log = Log(PLAN)
    for number in (1, 2, 3, 4, 5, 6, 8):
        log("field-done", 10.0 * number, field=f"first.{number}")
    log("band-done", 400.0, band="second.1.1")
    told = "Coat 2 is begun, and field 1.7 of coat 1 is not entered as done; if it is, enter it."
    assert asked(log) == (told,)
    assert in_spanish(told) is not None
    log("field-done", 68.0, field="first.7", counted=0)
    assert asked(log) == ()


def test_the_half_of_a_band_that_one_of_two_tapped_is_not_missing():
    plan = day_of_two("thistle-end")
    log = Log(plan)
    first, then = sorted((f for f in plan.fields), key=lambda one: one.start_min)[:2]
    for band in first.bands:
        if band.sprayer == 1:
            log("band-done", band.end_min, band=band.id)
    log("band-done", then.bands[0].end_min, band=then.bands[0].id)
    assert story(plan, log.kept).contradictions == ()
