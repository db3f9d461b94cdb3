"""From a drawing that was read to a job: what is taken, what is written out, what is asked."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from tests.strategies.jobs import box, jobs, row_of_rooms

from farwall.errors import Refused
from farwall.facts.defaults import settle
from farwall.facts.reading import Note, Reading, Storey
from farwall.floor.nouns import Exit, Fixture, Floor, Opening, Room
from farwall.job.from_reading import job_from_reading, written_out
from farwall.readers.job_json import job_from, job_to_dict

BED = Room("bed", box(0.0, 0.0, 4.0, 3.0), "Bed", "ground")
HALL = Room("hall", box(4.1, 0.0, 2.0, 3.0), "Hall", "ground")
LOFT = Room("loft", box(0.0, 10.0, 4.0, 3.0), "Loft", "upper")
DOOR = Opening(
    "bed-door",
    "door",
    ((4.05, 1.0), (4.05, 1.8)),
    ("bed", "hall"),
    0.8,
    box(4.0, 1.0, 0.1, 0.8),
)
FRONT = Opening("front", "outside", ((4.5, 0.0), (5.4, 0.0)), ("hall",))
READING = Reading(
    format="DXF",
    length_unit="in",
    header_unit="mm",
    scale_m_per_unit=0.0254,
    floor=Floor((BED, HALL), (DOOR, FRONT), (Fixture("tub", box(0.5, 0.5, 1.0, 0.5)),)),
    exits=(Exit("way-out-1", "front"),),
    storeys=(Storey("ground", "Ground floor"),),
)
TWO_STOREYS = replace(
    READING,
    floor=replace(
        READING.floor,
        rooms=(BED, HALL, LOFT),
        fixtures=(*READING.floor.fixtures, Fixture("shelf", box(1.0, 11.0, 1.0, 0.5))),
    ),
    storeys=(Storey("ground", "Ground floor"), Storey("upper", "Upper floor")),
)


def refusal_of(reading: Reading, **options) -> list[str]:
    with pytest.raises(Refused) as refusal:
        job_from_reading(reading, **options)
    return [str(one) for one in refusal.value.mistakes]


def test_the_floor_under_the_doors_belongs_to_the_rooms_on_either_side():
    job = job_from_reading(READING)
    bed, hall = job.floor.rooms
    # Hand-worked: half the wall, 0.05 m, by the door's 0.8 m each.
    assert bed.polygon.shape.area == pytest.approx(12.0 + 0.04)
    assert hall.polygon.shape.area == pytest.approx(6.0 + 0.04)
    assert bed.polygon.shape.distance(hall.polygon.shape) == pytest.approx(0.0, abs=1e-6)


def test_the_way_out_comes_from_the_drawing():
    assert job_from_reading(READING).exits == (Exit("way-out-1", "front"),)


def test_what_can_be_edited_is_written_out():
    raw = job_to_dict(job_from_reading(READING, job_id="house-7"))
    assert raw["id"] == "house-7"
    assert [stain["id"] for stain in raw["stains"]] == ["light", "dark"]
    assert [coat["cut"] for coat in raw["coats"]] == ["1:1", "1:2"]
    assert raw["coats"][0]["m2_per_l"] == 4.908
    assert raw["crew"] == {"sprayers": 1, "helper": False, "second_adult": True}
    assert raw["tools"]["tank_l"] == 7.571
    assert raw["tools"]["walk_m_min"] == 40
    assert "survey" not in raw or raw["survey"] == {}


def test_being_written_out_makes_no_default_a_measurement():
    settled = settle(job_from_reading(READING))
    assert {ground.rank for ground in settled.grounds} == {"common practice", "guess"}


def test_what_comes_out_is_a_sound_job_file():
    job = job_from_reading(READING)
    assert job_from(job_to_dict(job), "a job") == job


@given(jobs())
def test_writing_out_changes_no_plan_by_more_than_the_rounding(job):
    before, after = settle(job), settle(written_out(job))
    for coat, written in zip(before.coats, after.coats, strict=True):
        assert written.m2_per_l == pytest.approx(coat.m2_per_l, rel=1e-3)
    assert after.tools.tank_l == pytest.approx(before.tools.tank_l, rel=1e-3)
    assert after.tools.spray_m2_min == pytest.approx(before.tools.spray_m2_min, rel=1e-3)
    assert written_out(written_out(job)) == written_out(job)


def test_one_storey_is_taken_with_what_stands_on_it():
    job = job_from_reading(TWO_STOREYS, storey="ground FLOOR")
    assert [room.id for room in job.floor.rooms] == ["bed", "hall"]
    assert [fixture.kind for fixture in job.floor.fixtures] == ["tub"]


def test_of_two_storeys_one_must_be_named():
    (said,) = refusal_of(TWO_STOREYS)
    assert said == "--storey: The drawing has 2 storeys. Name one: Ground floor, Upper floor."
    (said,) = refusal_of(TWO_STOREYS, storey="cellar")
    assert "no storey" in said
    assert "Ground floor" in said


def test_a_storey_without_a_way_out_is_refused_and_says_so():
    (said,) = refusal_of(TWO_STOREYS, storey="upper")
    assert "No way out is drawn" in said


def test_an_outside_door_that_is_no_exit_yet_is_offered_as_one():
    (said,) = refusal_of(replace(READING, exits=()))
    assert "exits.0.opening=front" in said
    assert job_from_reading(replace(READING, exits=()), exits_told=True).exits == ()


def test_without_a_scale_or_a_room_the_readers_own_question_is_passed_on():
    asks = (Note("scale", "Say --scale 0.0254 for inches."), Note("tracing", "Trace them."))
    blank = replace(READING, scale_m_per_unit=None, floor=Floor(()), asks=asks)
    scale, rooms = refusal_of(blank)
    assert scale.endswith("Say --scale 0.0254 for inches.")
    assert rooms == "rooms: No room was found in it. Trace them."


def test_a_floor_that_touches_already_keeps_its_shapes():
    floor = row_of_rooms([3.0, 4.0])
    reading = replace(READING, floor=floor, exits=(Exit("out", "door-0"),), storeys=())
    made = job_from_reading(reading).floor.rooms
    for room, before in zip(made, floor.rooms, strict=True):
        assert room.polygon.shape.equals(before.polygon.shape)
