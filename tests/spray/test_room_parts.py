"""How much of a field's front falls on each room."""

from __future__ import annotations

import pytest
from tests.shapes import box, door, outside, place
from tests.spray.hand_floors import row, sweeps, world
from tests.spray.sweeping import sweeper

from farwall.floor.nouns import Room

ROOM_AND_PASSAGE = place(
    # A room 5 m wide whose only way out is a passage 1.5 m wide and 6 m long.
    [Room("passage", box(0, 1.75, 6, 3.25), "Passage"), Room("room", box(6, 0, 11, 5), "Room")],
    [
        outside("front", ((0, 1.75), (0, 3.25)), "passage"),
        door("mouth", ((6, 1.75), (6, 3.25)), "passage", "room", kind="wide"),
    ],
)


def test_a_passage_has_the_part_of_its_width_by_hand():
    """By hand: fronts as long as the room and the passage are wide: 5 m and 1.5 m, 0.3 of it.

    The rows of places next to the mouth look into the room, where more is sprayed: up to half.
    """
    _, parts = sweeper(ROOM_AND_PASSAGE).guess()
    assert parts["room"] == 1.0
    assert 0.25 <= parts["passage"] <= 0.55


def test_a_room_alone_has_all_of_its_front():
    assert sweeper(row(4)).guess()[1] == {"a": 1.0}


def test_the_guess_itself_is_the_same():
    made = sweeper(ROOM_AND_PASSAGE)
    assert made.guess()[0] == made.guess_age_min()


def test_a_refill_may_fall_into_any_room():
    """The pause ages the edge it falls upon, so it counts in full for both rooms."""
    of = world(ROOM_AND_PASSAGE)
    both = frozenset(of.pieces)
    dry = sweeps(of, l_per_m2=0.2)
    thirsty = sweeps(of, l_per_m2=2.0)
    few, many = dry.room_parts(both), thirsty.room_parts(both)
    assert few["room"] == many["room"] == pytest.approx(1.0)
    assert many["passage"] > few["passage"]
    pause = thirsty.best_age_min(both) - dry.best_age_min(both)
    expected = (few["passage"] * dry.best_age_min(both) + pause) / thirsty.best_age_min(both)
    assert many["passage"] == pytest.approx(expected)


def test_a_field_without_a_way_out_has_no_parts():
    of = world(row(3, 3))
    assert sweeps(of).room_parts(frozenset()) == {}
