"""Marks on the floor that persons confirmed stand on the punch list, with their room and place."""

from __future__ import annotations

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.log import Entry, Kept
from farwall.job.office import OfficeGround
from farwall.job.plan_job import plan_job
from farwall.job.story import story
from farwall.papers.office.blocks import Own, Rows, Words
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.punch_list import punch_list
from farwall.phrasebook import speaking

START = "2026-06-08T08:00:00+00:00"


@pytest.fixture(scope="module")
def planned():
    facts = job(TWO_ROOMS, id="two", starts_at=START)
    return facts, plan_job(facts)


def entry(number, word, about):
    one = Entry(f"01900000-0000-7000-8000-{number:012d}", "two", word, START, number=number,
                device="d", about=about)  # fmt: skip
    return Kept(one, number, START)


def verdict(number, name, room, kind="drip", there=True):
    about = {"mark": name, "kind": kind, "there": there, "room": room, "x_m": 1.5, "y_m": 2.25}
    return entry(number, "mark-judged", about)


def cells(planned, *kept):
    facts, plan = planned
    told = punch_list(PaperGround(OfficeGround(facts, plan, story=story(plan, kept))))
    rooms = next(
        one for one in told.blocks if isinstance(one, Rows) and one.heads[0] == "which room"
    )
    said = {row[0].text: row[3].text for row in rooms.rows if isinstance(row[3], Own)}
    return said, [one.text for one in told.blocks if isinstance(one, Words)]


def test_confirmed_marks_stand_in_their_room_until_they_are_mended(planned):
    room = planned[0].floor.rooms[0]
    said, words = cells(planned, verdict(1, "m1", room.id), verdict(2, "m2", room.id, there=False))
    assert said[room.label].startswith("drip x ")
    assert said[room.label].count("drip") == 1
    assert not any("do not seal" in str(one) for one in words)
    others = [text for label, text in said.items() if label != room.label]
    assert set(others) == {""}
    mended = entry(3, "mark-mended", {"mark": "m1"})
    assert cells(planned, verdict(1, "m1", room.id), mended)[0][room.label] == ""


def test_over_a_mark_that_nobody_could_name_nothing_is_sealed(planned):
    room = planned[0].floor.rooms[0]
    said, words = cells(planned, verdict(1, "m1", room.id, "unknown"))
    assert said[room.label].startswith("unknown x ")
    assert "A mark that nobody could name stands: do not seal over it." in words
    with speaking("es"):
        assert "desconocid" in cells(planned, verdict(1, "m1", room.id, "unknown"))[0][room.label]
