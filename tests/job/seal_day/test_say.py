"""A seal day in lines: hours in the job's manner, coats by number, rooms by name."""

from __future__ import annotations

import functools
import re
from pathlib import Path

import pytest

from farwall.job.seal_day import seal_day
from farwall.job.seal_day.say import said
from farwall.job.seal_day.told import NO_WEATHER
from farwall.readers.job_json import read_job

JOB = Path(__file__).resolve().parents[3] / "examples" / "thistle-end" / "job.json"


@functools.cache
def day():
    return seal_day(read_job(JOB))


def lines(*, us):
    return said(day().plan, day().sealing, (), folder="out", us=us)


@pytest.mark.parametrize("us", [True, False])
def test_every_hour_is_told_in_the_manner_of_the_job(us):
    hours = re.findall(r"\b(\d+):\d\d\b( [ap]m)?", lines(us=us))
    assert len(hours) > 15
    assert {bool(half) for _, half in hours} == {us}
    assert us == all(1 <= int(hour) <= 12 for hour, _ in hours)


def test_coats_and_fields_are_told_by_number():
    told = lines(us=True)
    assert "\nCoat 1: " in told
    assert "\nCoat 2: " in told
    against = [one for one in day().sealing.against if "(field " in one]
    assert against  # seal.json too; its fields keep their ids
    assert "in Great room (field 1.5) an edge" in told
    assert "seal-1" not in told


def test_rooms_are_told_by_name():
    told = lines(us=True)
    rooms = day().plan.inputs.floor.rooms
    label = {room.id: room.label for room in rooms}
    assert f"Test patch first: {label[day().sealing.test_patch.room]}, laid by" in told
    crossed = [
        one.rooms for coat in day().sealing.coats for one in coat.crossings if not one.crossed
    ]
    assert crossed
    for ids in crossed:
        assert f"not crossed in {', '.join(label[one] for one in ids)}: " in told


def test_what_the_plan_warns_of_is_said_once():
    """Without weather the night is not in it: that has to reach who lays the sealer."""
    warned = day().plan.warnings
    assert NO_WEATHER in warned
    told = lines(us=True)
    assert f"Mind: {NO_WEATHER}" in told
    for one in warned:
        assert told.count(one) == 1
