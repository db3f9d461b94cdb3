"""Rinses of a day out of its log."""

from dataclasses import replace

import pytest
from tests.job.live.test_now import JOB, PLAN, at
from tests.job.story.entries import Log

from farwall.facts.washing import Washing
from farwall.job.rinses import Rinses, planned_l_per_m2, readings_of
from farwall.job.room_areas import areas_of
from farwall.job.story import story
from farwall.units import L_PER_US_GAL, M2_PER_FT2

ROOM, OTHER = (room.id for room in PLAN.inputs.floor.rooms[:2])


def told(*entries, job=JOB):
    log = Log(PLAN)
    for n, (word, about) in enumerate(entries):
        log(word, 1000 + n, **about)
    return Rinses(job, PLAN, story(PLAN, log.kept)), log


def test_two_entries_of_one_rinse_are_two_strips_and_the_dirtier_rag():
    rinses, _ = told(
        ("rinsed", {"room": ROOM, "round": 1, "ph": 7.0, "rag": "clean"}),
        ("rinsed", {"room": ROOM, "round": 1, "ph": 8.0, "rag": "grey"}),
        ("strip-read", {"room": ROOM, "of": "rinse water", "ph": 7.5}),
        ("rinsed", {"room": ROOM, "ph": 7.5, "rag": "clean"}),
    )
    first, second = rinses.rounds(ROOM)
    assert (first.phs, first.rag) == ((7.0, 8.0, 7.5), "grey")
    assert (second.phs, second.rag) == ((7.5,), "clean")
    assert rinses.rounds(OTHER) == ()


def test_an_entry_of_no_room_is_about_the_whole_floor():
    rinses, _ = told(("rinsed", {"ph": 7.0, "rag": "clean", "litres": 500.0}))
    area = sum(areas_of(PLAN).values())
    assert rinses.begun == tuple(rinses.areas)
    assert rinses.rounds(OTHER)[0].l_per_m2 == pytest.approx(500 / area)


def test_the_first_scrub_is_no_second_one():
    rinses, _ = told(
        ("scrubbed", {"room": ROOM}), ("rinsed", {"room": ROOM, "rag": "coloured"}),
        ("scrubbed", {"room": ROOM}), ("rinsed", {"room": ROOM, "rag": "clean"}),
    )  # fmt: skip
    assert [one.scrubbed for one in rinses.rounds(ROOM)] == [False, True]


def test_strips_of_the_day_win_over_what_the_job_tells():
    job = replace(JOB, washing=Washing(tap_ph=7.0, unstained_ph=9.0))
    rinses, _ = told(("strip-read", {"of": "tap", "ph": 8.0}), job=job)
    assert (rinses.wanted.tap_ph, rinses.wanted.unstained_ph) == (8.0, 9.0)


def test_water_as_planned_where_no_litres_are_entered():
    """By hand: 12 gal on 100 ft² over four rinses are 1.222 L/m² each."""
    assert planned_l_per_m2(JOB) == pytest.approx(1.2224, abs=1e-3)
    assert pytest.approx(1.2224, abs=1e-4) == 12 * L_PER_US_GAL / (100 * M2_PER_FT2) / 4
    job = replace(JOB, washing=Washing(water_l_per_m2=6.0, rinses=5))
    assert planned_l_per_m2(job) == pytest.approx(1.2)


def test_strips_by_room_come_to_two_for_each_500_ft2():
    """[astm-d4262] by hand: 1,180 ft² are three parts of 500 ft²: six; one room of 200 ft²: two."""
    ft2 = {"great": 620, "bed": 150, "bed 2": 140, "bed 3": 130, "bath": 60, "closets": 80}
    found = readings_of({room: area * M2_PER_FT2 for room, area in ft2.items()})
    assert found == {"great": 3, "bed": 1, "bed 2": 1, "bed 3": 1, "bath": 1, "closets": 1}
    assert readings_of({"one": 200 * M2_PER_FT2}) == {"one": 2}
    assert readings_of({}) == {}


@pytest.mark.parametrize(
    ("about", "stops", "words"),
    [
        ({"ph": 7.5, "rag": "coloured"}, True, "Scrub every spot again"),
        ({"ph": 5.0, "rag": "clean"}, True, "Scrub again with neutraliser"),
        ({"ph": 7.5, "rag": "grey"}, True, "Rinse again with changed water"),
        ({"ph": 7.5, "rag": "clean"}, False, "dry dark glove"),
        ({"ph": 7.5}, False, "Wipe a damp white rag"),
    ],
)
def test_the_day_says_what_comes_after_each_rinse(about, stops, words):
    _, log = told(("rinsed", {"room": ROOM, "round": 1, **about}))
    (said,) = [one for one in at(log, 1001).advice if one.rule == "rinsed clean"]
    assert said.stop is stops
    assert words in said.do


def test_a_room_that_is_not_clean_is_told_beside_the_last_one():
    _, log = told(
        ("rinsed", {"room": OTHER, "ph": 5.0, "rag": "coloured"}),
        ("rinsed", {"room": ROOM, "ph": 7.5, "rag": "clean"}),
    )
    said = [one for one in at(log, 1002).advice if one.rule == "rinsed clean"]
    assert [one.stop for one in said] == [True, False]


def test_high_ph_of_a_new_slab_is_held_against_its_unstained_patch():
    _, log = told(
        ("strip-read", {"of": "unstained patch", "ph": 9.5}),
        ("rinsed", {"room": ROOM, "ph": 9.5, "rag": "clean"}),
    )
    (said,) = [one for one in at(log, 1002).advice if one.rule == "rinsed clean"]
    assert "new concrete" in said.reason
    assert "sealer's sheet" in said.do


def test_the_room_read_last_is_told_first_and_of_the_others_two_that_still_ask_for_work():
    rooms = [room.id for room in PLAN.inputs.floor.rooms[:5]]
    sour = [("rinsed", {"room": room, "ph": 5.0, "rag": "coloured"}) for room in rooms[:4]]
    clean = ("rinsed", {"room": rooms[4], "ph": 7.5, "rag": "clean"})
    _, log = told(*sour, clean)
    said = [one for one in at(log, 1005).advice if one.rule == "rinsed clean"]
    assert [one.stop for one in said] == [True, True, False]
    assert [one.weight for one in said] == [60, 60, 71]
    _, log = told(clean, *sour)
    said = [one for one in at(log, 1005).advice if one.rule == "rinsed clean"]
    assert [(one.stop, one.weight) for one in said] == [(True, 71), (True, 60), (True, 60)]


def test_a_sealer_whose_sheet_does_not_bear_new_concretes_ph_stops_and_nothing_more_once_sealed():
    entries = [
        ("strip-read", {"of": "unstained patch", "ph": 9.5}),
        ("rinsed", {"room": ROOM, "ph": 9.5, "rag": "clean"}),
    ]
    _, log = told(*entries)
    for most, stops in ((9.0, True), (10.0, False)):
        job = replace(JOB, sealer=replace(JOB.sealer, most_ph=most))
        (said,) = [one for one in at(log, 1002, job=job).advice if one.rule == "rinsed clean"]
        assert said.stop is stops
    log("sealed", 1003, coat_of_sealer=1)
    assert not any(one.rule == "rinsed clean" for one in at(log, 1004).advice)
