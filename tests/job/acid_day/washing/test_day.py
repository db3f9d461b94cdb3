"""The wash day of a planned job."""

from dataclasses import replace

import pytest
from tests.job.live.test_now import JOB, PLAN
from tests.job.story.entries import Log

from farwall.facts.washing import Drums, Washing
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.washing import washing_of, washing_said
from farwall.job.room_areas import areas_of
from farwall.job.story import story


def day(*entries, **washing):
    log = Log(PLAN)
    for n, (word, about) in enumerate(entries):
        log(word, 2000 + n, **about)
    told = story(PLAN, log.kept) if entries else None
    return washing_of(Ground(replace(JOB, washing=Washing(**washing)), PLAN, story=told))


ROOM = PLAN.inputs.floor.rooms[0].id


def test_rooms_add_up_to_the_floor():
    found = day()
    assert sum(one.area_m2 for one in found.rooms) == pytest.approx(sum(areas_of(PLAN).values()))
    assert sum(one.water_l.likely for one in found.rooms) == pytest.approx(found.rinses_l.likely)
    assert sum(one.work_h.likely for one in found.rooms) == pytest.approx(found.work_h.likely)
    assert [one.order for one in found.rooms] == list(range(1, len(found.rooms) + 1))
    assert found.all_l.likely == pytest.approx(found.rinses_l.likely + found.scrub_l.likely)


def test_it_begins_when_dwell_and_drying_are_over():
    found, last = day(), PLAN.inputs.coats[-1].id
    ends = max(one.end_min for one in PLAN.fields if one.coat == last)
    dwell = next(one for one in PLAN.clocks if one.name == "dwell")
    assert found.begins.low >= ends + dwell.low_min
    assert found.begins.low <= found.begins.likely <= found.begins.high
    assert all(found.begins_at)


def test_more_water_told_is_more_drums():
    little, much = day(water_l_per_m2=3.0), day(water_l_per_m2=9.0)
    assert much.drums.full > little.drums.full
    assert (little.rinses_l.low, little.rinses_l.high) == (little.rinses_l.likely,) * 2


@pytest.mark.parametrize(
    ("upstairs", "bears", "word"),
    [(False, None, "fine"), (None, None, "ask"), (True, 800.0, "fine"), (True, 250.0, "spread"),
     (True, 150.0, "no")],
)  # fmt: skip
def test_what_a_floor_bears(upstairs, bears, word):
    """By hand: 187 kg full, 708 kg/m² under the drum, 187 kg/m² on a square metre of its own."""
    found = day(upstairs=upstairs, floor_load_kg_m2=bears)
    assert found.drums.floor == word
    assert any("too heavy" in one for one in found.warnings) is (word == "no")


def test_drums_are_counted_and_found_in_their_room():
    name = PLAN.inputs.floor.rooms[0].label
    found = day(drums=Drums(count=1, at=f" {name.upper()} "), van_load_kg=600.0)
    assert found.drums.room == ROOM
    assert found.drums.van_full == 3
    assert found.drums.enough is False
    assert f"1 of {found.drums.full + 1} drums are there." in found.warnings


def test_wet_machines_want_ground_fault_protection():
    assert any("No wet machine is switched on" in one for one in day(ground_fault=False).warnings)
    assert any("Nobody said whether" in one for one in day().warnings)
    assert not any("ground-fault" in one for one in day(ground_fault=True).warnings)


def test_the_log_says_by_room_what_comes_next():
    found = day(("rinsed", {"room": ROOM, "ph": 7.5, "rag": "coloured"}), tap_ph=7.5)
    own = next(one for one in found.rooms if one.room == ROOM).so_far
    other = next(one for one in found.rooms if one.room != ROOM).so_far
    assert (own.rinses, own.verdict, own.rag) == (1, "scrub", "coloured")
    assert "Scrub every spot" in own.do
    assert (other.rinses, other.verdict) == (0, "read")
    assert "After rinse 1: " in "\n".join(washing_said(found, us=True))


def test_the_hour_to_wash_is_told_in_the_manner_of_the_job():
    found = replace(day(), begins_at=("2026-05-15T07:30:00-06:00", "2026-05-15T13:05:00-06:00", ""))
    told = {us: washing_said(found, us=us)[0] for us in (True, False)}
    assert told[True].startswith(
        "Wash from 2026-05-15 1:05 pm (earliest 2026-05-15 7:30 am, at the late end not reached)"
    )
    assert told[False].startswith(
        "Wash from 2026-05-15 13:05 (earliest 2026-05-15 7:30, at the late end not reached)"
    )


def test_a_vacuum_as_told_sets_how_much_is_wetted():
    slow, quick = day(vacuum_m2_min=0.5), day(vacuum_m2_min=6.0)
    assert sum(one.wet_m2 for one in slow.rooms) < sum(one.wet_m2 for one in quick.rooms)


def test_one_backs_out_by_a_room_or_by_the_way_out_never_by_an_id():
    names = {room.label for room in PLAN.inputs.floor.rooms}
    found = {one.way_name for one in day().rooms}
    assert found - names == {"the way out"}
