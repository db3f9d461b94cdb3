"""What a ladder lacks and what speaks against it: each said where it is so, and only there."""

from dataclasses import replace

import pytest
from tests.job.colour.ladders import house, made, sealed, wet, whole

from farwall.facts.job import RoomSurvey, Stain
from farwall.facts.slab import Patch
from farwall.job.colour.ladder import ladder_of
from farwall.job.colour.ladder_minds import warnings
from farwall.job.colour.ladder_said import asks
from farwall.phrasebook import in_spanish


def asked(samples, job=None):
    job = job or house()
    return {one.code: one for one in asks(ladder_of(job, samples), job)}


def warned(samples, job=None):
    job = job or house()
    return {one.code: one for one in warnings(ladder_of(job, samples), job)}


def changed(name, **changes):
    return tuple(replace(one, **changes) if one.id == name else one for one in whole())


def test_of_a_whole_ladder_nothing_is_asked_and_nothing_is_wrong():
    assert asked(whole()) == {}
    assert warned(whole()) == {}


def test_without_samples_there_is_one_thing_to_do():
    assert list(asked(())) == ["none"]


@pytest.mark.common_practice
@pytest.mark.parametrize(
    ("samples", "code", "about"),
    [
        ((made("A", "1:2"),), "unseen clean wet", ()),
        (changed("W", looks=(sealed(49.0),)), "unseen clean wet", ("W",)),
        (changed("W", looks=(wet(52.0),)), "unseen sealed", ("W",)),
        (changed("W", laid_ml=None), "drank", ("W",)),
        (whole()[:2], "few cuts", ()),
        (whole()[:3], "one coat", ()),
        (tuple(replace(one, sheen_loss_min=None) for one in whole()), "sheen", ()),
        (changed("S", looks=(wet(38.0, error_de=None), sealed(34.0))), "guess", ("S",)),
        (changed("P2", approved_by=""), "unsigned", ()),
        (changed("P2", looks=(wet(41.0, light="day"), sealed(36.5))), "no lamp", ()),
    ],
)
def test_what_is_missing_is_asked_for_no_source(samples, code, about):
    found = asked(samples)
    assert code in found
    assert found[code].samples == about
    assert in_spanish(found[code].text) is not None


@pytest.mark.common_practice
@pytest.mark.parametrize(
    ("samples", "code", "about"),
    [
        ((made("A", "1:2", over="gone"),), "loose", ("A",)),
        (changed("P2", cut="1:3"), "not as planned", ("P2",)),
        (changed("P2", looks=(wet(41.0),)), "unsealed", ("P2",)),
        (changed("S", looks=(wet(60.0), sealed(34.0))), "against order", ("P", "S")),
        (changed("W", dwell_h=4.0), "dwell", ("W",)),
        (changed("W", scrubs=None), "unscrubbed", ("W",)),
        (changed("W", rag="coloured"), "rag", ("W",)),
        (changed("W", sealer="another"), "sealer", ("W",)),
        (changed("W", area_m2=0.2, laid_ml=40.0), "small", ("W",)),
    ],
)
def test_what_speaks_against_it_is_said_no_source(samples, code, about):
    found = warned(samples)
    assert list(found) == [code]
    assert found[code].samples == about
    assert in_spanish(found[code].text) is not None


def test_weighed_without_a_sheet_the_range_is_told():
    weighed = changed("W", laid_ml=None, sprayer_before_kg=3.1, sprayer_after_kg=3.0)
    told = asked(weighed, house(stains=(Stain("dark"),)))["density"]
    # 1:4 of 1.05 to 1.33 kg/L: 1.01 to 1.066 kg/L, so 0.5/0.1 times that.
    assert "5.0 to 5.3 m²/L" in told.text
    assert in_spanish(told.text) is not None
    assert "density" not in asked(weighed)


def test_pours_and_finishes_without_a_sample_are_named():
    job = house()
    pours = replace(job, survey=replace(job.survey, pours=2))
    assert "poured in 2 goes" in warned(whole(), pours)["pours"].text
    rooms = {"a": RoomSurvey(finish="trowel"), "b": RoomSurvey(finish="broom")}
    broom = replace(job, survey=replace(job.survey, rooms=rooms))
    said = warned(whole(), broom)
    assert list(said) == ["finish"]
    assert "broom" in said["finish"].text
    for one in (warned(whole(), pours)["pours"], said["finish"]):
        assert in_spanish(one.text) is not None


def test_a_later_pour_in_whose_room_nobody_made_a_sample_is_named():
    job = house()
    first, *others = [room.id for room in job.floor.rooms]
    samples = tuple(replace(one, room=first) for one in whole())
    there = others[0] if others else first
    pour = Patch("annexe", there, kind="pour")
    marked = replace(job, survey=replace(job.survey, patches=(pour,)))
    told = warned(samples, marked)["later pour"]
    assert job.floor.room_by_id[there].label in told.text
    assert in_spanish(told.text) is not None
    sampled = (*samples[:-1], replace(samples[-1], room=there))
    assert "later pour" not in warned(sampled, marked)
    dry = replace(pour, decision="leave for another colour")
    left = replace(job, survey=replace(job.survey, patches=(dry,)))
    assert "later pour" not in warned(samples, left)


def test_a_photo_that_is_far_off_is_to_be_taken_again():
    off = wet(41.0)
    told = warned(changed("W", looks=(replace(off, error_de=4.2), sealed(34.0))))["far off"]
    assert told.samples == ("W",)
    assert "by day" in told.text
    assert in_spanish(told.text) is not None
    assert "far off" not in warned(changed("W", looks=(replace(off, error_de=1.2), sealed(34.0))))


def test_the_floors_own_dwell_is_held_against_the_samples_where_it_is_known():
    job, samples = house(), changed("W", dwell_h=4.0)
    ladder = ladder_of(job, samples)
    assert "dwell" not in {one.code for one in warnings(ladder, job, floor_dwell_h=4.0)}
    assert "4.0 h" in next(one.text for one in warnings(ladder, job) if one.code == "dwell")
