"""A day's sun in words and figures: spells, shares, the day asked for, what is missing."""

from dataclasses import replace
from datetime import date, datetime, timedelta, timezone

import pytest
from tests.job.sun_house import covered, sun_job

from farwall.errors import Refused
from farwall.facts.job import Place
from farwall.job.sun_day import clock_at, midnight_of, sun_day


def test_each_room_has_its_spell_of_sun_and_minutes_count_from_midnight():
    day = sun_day(sun_job())
    rooms = {one.room: one for one in day.rooms}
    assert day.starts_at == "2026-06-21T00:00:00-07:00"
    assert rooms["east"].spells[0].to_min <= 12 * 60 + 30
    assert rooms["west"].spells[0].from_min >= 12 * 60 - 30
    assert rooms["west"].windows == ("west-window",)
    assert clock_at(day, 90).isoformat() == "2026-06-21T01:30:00-07:00"


def test_the_largest_patch_lies_within_its_spell_and_is_the_share_of_the_room():
    for room in sun_day(sun_job()).rooms:
        for spell in room.spells:
            assert spell.from_min <= spell.largest_at_min < spell.to_min
        if room.room == "west":
            largest = max(spell.largest_m2 for spell in room.spells)
            assert room.share == pytest.approx(largest / 24.0, abs=1e-3)


def test_in_winter_a_south_window_lights_deeper_than_in_summer():
    from farwall.floor.nouns import Window

    south = Window(((1.0, 0.0), (3.0, 0.0)), 0.9, 1.2)
    summer, winter = (
        sun_day(sun_job(south, day=day)).rooms[0] for day in ("2026-06-21", "2026-12-21")
    )
    assert winter.share > 3 * summer.share


def test_another_day_may_be_asked_for_on_the_clock_of_the_start_or_of_the_zone():
    job = sun_job()
    assert midnight_of(date(2026, 12, 21), job).utcoffset() == timedelta(hours=-7)
    zone = timezone(timedelta(hours=-6))
    found = sun_day(job, midnight=midnight_of(date(2026, 12, 21), job, zone))
    assert found.starts_at == "2026-12-21T00:00:00-06:00"


def test_a_day_without_any_clock_is_refused():
    with pytest.raises(Refused, match="no clock"):
        midnight_of(date(2026, 12, 21), sun_job(starts_at=None))


def test_all_that_is_missing_is_told_at_once():
    job = sun_job(place=Place(), starts_at=None)
    with pytest.raises(Refused) as refused:
        sun_day(replace(job, floor=replace(job.floor, north_deg=None)))
    assert [one.where for one in refused.value.mistakes] == [
        "floor.north_deg",
        "place.latitude_deg and place.longitude_deg",
        "starts_at",
    ]


def test_a_floor_without_a_bare_window_is_refused():
    with pytest.raises(Refused, match="no window that is not covered"):
        sun_day(covered(sun_job()))


def test_a_day_asked_for_stands_in_for_a_start():
    day = datetime(2026, 6, 21, tzinfo=timezone(timedelta(hours=-7)))
    assert sun_day(sun_job(starts_at=None), midnight=day).rooms[0].spells
