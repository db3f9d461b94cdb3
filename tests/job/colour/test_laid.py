"""What lies on the floor: by the log, by whoever looked at it, else nothing."""

import pytest
from tests.job.colour.fennel import first_coat, plan
from tests.job.story.entries import Log

from farwall.evidence import Rank
from farwall.job.colour.laid import laid_by_room, planned_coat
from farwall.job.story import story

ROOMS = {"great-room", "hall", "bed", "bath"}


def told(*entries):
    log = Log(plan())
    for minute, (word, about) in enumerate(entries):
        log(word, float(minute), **about)
    return story(plan(), log.kept)


def test_without_a_log_nothing_lies_on_any_room():
    assert laid_by_room(plan(), None) == dict.fromkeys(laid_by_room(plan(), None), ())
    assert set(laid_by_room(plan(), None)) == ROOMS


def test_a_field_that_is_done_has_its_coat_and_the_others_have_not():
    found = laid_by_room(plan(), told(("field-done", {"field": "first.1"})))
    own = next(field for field in plan().fields if field.id == "first.1")
    for room, coats in found.items():
        assert [one.coat for one in coats] == (["first"] if room in own.rooms else [])


def test_a_room_whose_bands_are_not_all_done_has_no_coat():
    field = next(one for one in plan().fields if len(one.bands) > 2)
    found = laid_by_room(plan(), told(("band-done", {"band": field.bands[0].id})))
    assert all(found[room] == () for room in field.rooms if room != "hall")


def test_litres_of_the_log_are_measured_and_make_the_dose():
    found = laid_by_room(plan(), story(plan(), first_coat()))
    one = found["bath"][0]
    area = sum(field.area_m2 for field in plan().fields if field.coat == "first")
    assert one.rank == Rank.MEASURED.value
    assert one.l_per_m2 == pytest.approx((14.76 - 4.35) / area, rel=0.01)
    assert one.stain_l_per_m2 == pytest.approx(one.l_per_m2 / 2)


def test_without_litres_it_is_as_planned_and_says_so():
    one = laid_by_room(plan(), told(("coat-done", {"coat": "first"})))["bath"][0]
    assert one.l_per_m2 == plan().inputs.l_per_m2["first"]
    assert "as planned" in one.source


def test_the_cut_that_was_mixed_wins_over_the_cut_that_was_planned():
    mixed = told(
        ("mixed", {"coat": "first", "litres": 5.0, "cut": "1:4"}), ("coat-done", {"coat": "first"})
    )
    assert laid_by_room(plan(), mixed)["bath"][0].cut == "1:4"


def test_a_coat_that_somebody_looked_at_is_on_and_all_before_it():
    found = laid_by_room(plan(), None, named="second")
    assert [one.coat for one in found["bed"]] == ["first", "second"]
    assert found["bed"][0] == planned_coat(plan(), "first")


def test_what_was_laid_later_was_not_there_before():
    after = story(plan(), first_coat())
    assert laid_by_room(plan(), after, by_min=2.0)["bath"] == ()
    assert laid_by_room(plan(), after, by_min=31.0)["bath"] != ()
