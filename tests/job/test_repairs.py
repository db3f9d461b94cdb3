"""Notes of a reading answered by number: what is done, what is told, and what stays as it was."""

from dataclasses import replace

import pytest
from tests.shapes import TWO_ROOMS
from tests.strategies.jobs import box

from farwall.errors import Refused
from farwall.facts.reading import Note, Reading, Stated
from farwall.floor.nouns import Floor
from farwall.job.repairs import ACTS, answered, numbered

OUTSIDE = next(one for one in TWO_ROOMS.floor.openings if one.kind == "outside")
INSIDE = next(one for one in TWO_ROOMS.floor.openings if one.kind != "outside")


def middle(opening):
    (ax, ay), (bx, by) = opening.line
    return (ax + bx) / 2, (ay + by) / 2


def reading(*left: Note, exits=(), asks=()) -> Reading:
    return Reading("DXF", "m", "m", 1.0, TWO_ROOMS.floor, exits, left=left, asks=asks)


def test_a_guessed_name_is_dropped_and_the_rest_stays() -> None:
    room = TWO_ROOMS.floor.rooms[0]
    spot = room.polygon.shape.representative_point()
    found = answered(reading(Note("name-guessed", "…", (spot.x, spot.y))), refuse=[1])
    assert [one.name for one in found.reading.floor.rooms] == [
        "", *(one.name for one in TWO_ROOMS.floor.rooms[1:]),
    ]  # fmt: skip
    assert found.reading.floor.openings == TWO_ROOMS.floor.openings
    assert found.said == {1: f"Refused: “{room.id}” has no name now."}


def test_a_slab_left_outside_becomes_a_room_by_hand() -> None:
    """Two metres by three are 6 m²."""
    slab = box(20.0, 0.0, 2.0, 3.0)
    note = Note("outside-slab", "Porch (6.0 m²) is a slab outside the house.", (21.0, 1.0), slab)
    found = answered(reading(note), refuse=[1])
    room = found.reading.floor.rooms[-1]
    assert (room.id, room.name, room.polygon) == ("porch", "Porch", slab)
    assert "6.0 m²" in found.said[1]
    assert answered(reading(note), accept=[1]).reading.floor == TWO_ROOMS.floor


def test_ways_out_are_marked_and_taken_away() -> None:
    unsure = Note("way-out-unsure", "…", middle(OUTSIDE))
    ask = Note("way-out", "No door leads outside.")
    marked = answered(reading(unsure, asks=(ask,)), accept=[1])
    assert [way.opening for way in marked.reading.exits] == [OUTSIDE.id]
    assert marked.reading.asks == ()
    assert answered(marked.reading, refuse=[1]).reading.exits == ()
    asked = answered(reading(asks=(ask,)), accept=[1])
    assert [way.opening for way in asked.reading.exits] == [OUTSIDE.id]


def test_a_leaf_is_hung_in_the_nearest_opening() -> None:
    found = answered(reading(Note("no-leaf", "…", middle(INSIDE))), refuse=[1])
    kinds = {one.id: one.kind for one in found.reading.floor.openings}
    assert kinds[INSIDE.id] == "door"


def test_a_cabinet_is_kept_dry_by_hand() -> None:
    shape = box(1.0, 1.0, 0.5, 0.6)
    found = answered(
        reading(Note("overhang", "A “desk” hangs over.", (1.2, 1.2), shape)), refuse=[1]
    )
    (fixture,) = found.reading.floor.fixtures
    assert (fixture.kind, fixture.polygon, fixture.id) == ("desk", shape, "desk")


@pytest.mark.parametrize("code", [*ACTS, "recovered", "never-heard-of"])
@pytest.mark.parametrize("answer", ["accept", "refuse"])
@pytest.mark.parametrize("where", [None, (500.0, 500.0)])
def test_where_nothing_can_be_done_it_says_so_and_nothing_changes(code, answer, where) -> None:
    before = reading(Note(code, "A note.", where))
    found = answered(before, **{answer: [1]})
    if ACTS.get(code) and (ACTS[code].yes, ACTS[code].no)[answer == "refuse"] == "way-out":
        assert found.reading.exits != ()
    else:
        assert found.reading == before
    assert found.said[1].startswith("Accepted" if answer == "accept" else "Refused")


@pytest.mark.parametrize(
    ("words", "what"),
    [({"accept": [2]}, "there is no note 2"), ({"refuse": [0]}, "no note 0"),
     ({"accept": [1], "refuse": [1]}, "accepted too")],
)  # fmt: skip
def test_wrong_numbers_are_refused(words, what) -> None:
    with pytest.raises(Refused, match=what):
        answered(reading(Note("no-leaf", "…")), **words)


def test_notes_are_numbered_mended_left_asked() -> None:
    notes = [Note(code, "…") for code in ("recovered", "no-leaf", "way-out")]
    whole = Reading(
        "DXF", "m", "m", 1.0, Floor(()), mended=(notes[0],), left=(notes[1],), asks=(notes[2],)
    )
    assert numbered(whole) == notes


def test_two_rooms_that_are_one_space_are_joined_at_the_place() -> None:
    one, other = TWO_ROOMS.floor.rooms
    stated = {one.id: Stated(12.0, "net"), other.id: Stated(12.0, "net")}
    note = Note("one-room", "Only air parts them.", middle(INSIDE))
    before = replace(reading(note), stated=stated, ceilings_m={one.id: 2.4, other.id: 2.4})
    found = answered(before, accept=[1])
    (room,) = found.reading.floor.rooms
    total = sum(r.polygon.shape.area for r in TWO_ROOMS.floor.rooms)
    assert room.polygon.shape.area == pytest.approx(total)
    assert found.reading.stated == {}
    assert found.reading.ceilings_m == {room.id: 2.4}
    assert answered(before, refuse=[1]).reading == before


def test_a_room_that_is_not_stained_is_taken_away_with_its_doors() -> None:
    room = TWO_ROOMS.floor.rooms[1]
    spot = room.polygon.shape.representative_point()
    found = answered(reading(Note("perhaps-outdoors", "…", (spot.x, spot.y))), refuse=[1])
    assert room.id not in found.reading.floor.room_by_id
    assert all(room.id not in one.rooms for one in found.reading.floor.openings)


def test_of_storeys_over_each_other_the_rooms_that_the_note_names_are_joined() -> None:
    """Two rooms over two: the note names the upper ones, and the lower ones stay."""
    low = [replace(one, storey="low") for one in TWO_ROOMS.floor.rooms]
    high = [
        replace(one, id=f"up-{one.id}", name=f"Up {n}", storey="up") for n, one in enumerate(low)
    ]
    floor = replace(TWO_ROOMS.floor, rooms=(*low, *high))
    note = Note("one-room", "Only air parts “Up 0” and “Up 1”.", middle(INSIDE))
    found = answered(replace(reading(note), floor=floor), accept=[1]).reading
    assert [one.id for one in found.floor.rooms] == [*(one.id for one in low), high[0].id]
