"""Rooms joined and split on the drawing screen: what is answered, what stays to the letter."""

from __future__ import annotations

import copy
import json
from itertools import pairwise

import pytest
from tests.web.pages.office import Office, two_rooms

from farwall.web.pages.drafts import floor_of


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put(two_rooms())
    yield found
    found.close()


def ask(office, drawn, **told):
    return office.post("/houses/two/draw/rooms", data={"drawn": json.dumps(drawn), **told})


def drawn(office):
    return copy.deepcopy(floor_of(office.book, "two").now)


def area(room):
    ring = room["polygon"]["coordinates"][0]
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise(ring)) / 2


def test_two_rooms_become_one_and_nothing_is_kept(office):
    before = drawn(office)
    first, second = (one["id"] for one in before["rooms"])
    answer = ask(office, before, act="join", first=first, second=second)
    assert answer.status_code == 200
    now = answer.json()["drawn"]
    assert [one["id"] for one in now["rooms"]] == [first]
    assert all(second not in one["rooms"] for one in now["openings"])
    assert now["exits"] == before["exits"]
    assert area(now["rooms"][0]) >= sum(map(area, before["rooms"])) - 1e-6
    assert drawn(office) == before


def test_a_room_becomes_two_and_the_other_stays_to_the_letter(office):
    before = drawn(office)
    room, other = before["rooms"]
    ring = room["polygon"]["coordinates"][0]
    xs, ys = [x for x, _ in ring], [y for _, y in ring]
    middle = (min(ys) + max(ys)) / 2
    line = json.dumps([[min(xs), middle], [max(xs), middle]])
    answer = ask(office, before, act="split", first=room["id"], line=line)
    now = answer.json()["drawn"]
    assert [one["id"] for one in now["rooms"]] == [room["id"], f"{room['id']}-2", other["id"]]
    assert now["rooms"][2] == other
    assert [one["kind"] for one in now["openings"]].count("wide") == 1


@pytest.mark.parametrize(
    "told",
    [{"act": "join", "first": "nowhere", "second": "back"}, {"act": "split", "first": "back"},
     {"act": "split", "first": "back", "line": "[[0,0],[null,1]]"},
     {"act": "split", "first": "back", "line": "[[1e9,0],[1e9,1]]"},
     {"act": "join", "first": "back", "second": "back"}, {}],
)  # fmt: skip
def test_what_cannot_be_is_said_in_words(office, told):
    answer = ask(office, drawn(office), **told)
    assert answer.status_code == 422
    assert answer.json()["said"]


def test_what_is_no_drawing_is_refused(office):
    assert office.post("/houses/two/draw/rooms", data={"drawn": "7"}).status_code == 422
