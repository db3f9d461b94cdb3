from dataclasses import replace

import pytest
from tests.strategies.walks import rectangle

from farwall.errors import Refused
from farwall.floor.walk.lay import lay_of
from farwall.floor.walk.nouns import (
    LEFT,
    Across,
    Diagonal,
    Shared,
    Walk,
    WalkRoom,
    WalkWall,
    WalkWay,
)


def joined(**more):
    """Den left of Hall, a door in the middle of the wall between."""
    den = replace(rectangle(3.0, 4.0, name="Den"), ways=(WalkWay(2, 1.0, 0.8, to="Hall"),))
    hall = replace(rectangle(3.0, 2.0, name="Hall"), ways=(WalkWay(0, 1.2, 0.8, to="den"),))
    return Walk((den, hall), **more)


def mistakes(walk):
    with pytest.raises(Refused) as refused:
        lay_of(walk)
    return [str(one) for one in refused.value.mistakes]


def test_rooms_joined_by_a_door_face_each_other():
    lay = lay_of(joined())
    assert len(lay.joins) == 1
    assert lay.parts == (0, 0)
    assert (lay.headings[0][2] - lay.headings[1][0]) % 360 == 180


def test_a_room_walked_the_other_way_round_is_laid_the_same():
    hall = joined().rooms[1]
    left = WalkRoom(
        "Hall", tuple(WalkWall(one, LEFT) for one in (3.0, 2.0, 3.0, 2.0)), hall.ways
    )  # fmt: skip
    lay = lay_of(replace(joined(), rooms=(joined().rooms[0], left)))
    assert lay.hands == (-1, 1)
    assert (lay.headings[0][2] - lay.headings[1][0]) % 360 == 0


def test_a_door_told_from_one_side_is_loose():
    walk = joined()
    lay = lay_of(replace(walk, rooms=(walk.rooms[0], replace(walk.rooms[1], ways=()))))
    assert (lay.loose, lay.joins, lay.parts) == (((0, 0),), (), (0, 1))


def test_a_door_to_a_room_not_walked_is_loose():
    assert lay_of(Walk((joined().rooms[0],))).loose == ((0, 0),)


def test_two_doors_between_the_same_rooms_want_marks():
    walk = joined()
    twice = [replace(one, ways=one.ways * 2) for one in walk.rooms]
    assert len(lay_of(replace(walk, rooms=tuple(twice))).loose) == 4
    marked = [
        replace(one, ways=(replace(one.ways[0], mark="a"), replace(one.ways[0], mark="b")))
        for one in walk.rooms
    ]
    assert len(lay_of(replace(walk, rooms=tuple(marked))).joins) == 2


def test_shared_walls_turn_a_room_that_no_door_joins():
    walk = Walk((rectangle(3.0, 4.0, name="Den"), rectangle(3.0, 2.0, name="Bath")))
    lay = lay_of(replace(walk, shared=(Shared(0, 1, 1, 0, 0.1),)))
    assert lay.parts == (0, 0)
    assert (lay.headings[0][1] - lay.headings[1][0]) % 360 == 180


def test_angles_share_what_a_round_misses():
    walls = [WalkWall(2.0, -90.0), WalkWall(2.0, -44.0), WalkWall(1.4, -44.0), WalkWall(1.0, -90.0),
             WalkWall(3.0, -90.0)]  # fmt: skip
    lay = lay_of(Walk((WalkRoom("Bay", tuple(walls)),)))
    assert (lay.headings[0][3] - lay.headings[0][1]) % 360 == pytest.approx(270.0)


def test_a_turn_to_the_wrong_side_is_named():
    room = rectangle(3.0, 4.0, name="Den")
    wrong = replace(room.walls[1], turn_deg=LEFT)
    said = mistakes(Walk((replace(room, walls=(room.walls[0], wrong, *room.walls[2:])),)))
    assert len(said) == 1
    assert said[0].startswith("Den: its turns make 180 degrees")
    assert said[0].endswith("The turn after wall 2 to the other side would make one round.")


@pytest.mark.parametrize(
    ("room", "word"),
    [
        (WalkRoom("Den", (WalkWall(1.0), WalkWall(1.0))), "2 walls"),
        (replace(rectangle(3, 4), walls=(*rectangle(3, 4).walls[:3], WalkWall(0.0))), "cannot be"),
        (
            replace(rectangle(3, 4), walls=(*rectangle(3, 4).walls[:3], WalkWall(float("nan")))),
            "can",
        ),
        (
            replace(rectangle(3, 4), walls=(*rectangle(3, 4).walls[:3], WalkWall(1.0, 270.0))),
            "turn",
        ),
        (replace(rectangle(3, 4), diagonals=(Diagonal(0, 9, 5.0),)), "no two corners"),
        (replace(rectangle(3, 4), diagonals=(Diagonal(0, 2, float("inf")),)), "cannot be"),
        (replace(rectangle(3, 4), across=(Across(0, 1, 3.0),)), "do not face"),
        (replace(rectangle(3, 4), across=(Across(0, 0, 3.0),)), "no two walls"),
        (replace(rectangle(3, 4), ways=(WalkWay(7, 1.0, 0.8),)), "not there"),
        (replace(rectangle(3, 4), ways=(WalkWay(1, 1.0, 0.01),)), "width"),
        (replace(rectangle(3, 4), ways=(WalkWay(1, float("nan"), 0.8),)), "place"),
        (replace(rectangle(3, 4), ways=(WalkWay(1, 1.0, 0.8, to="room"),)), "its own room"),
    ],
)
def test_what_cannot_be_is_refused_in_words(room, word):
    assert any(word in one for one in mistakes(Walk((room,))))


def test_too_much_for_one_walk_is_refused():
    many = [rectangle(3, 4, name=f"Room {n}") for n in range(61)]
    assert any("60 rooms" in one for one in mistakes(Walk(tuple(many))))
    assert mistakes(Walk(())) == ["There is no room in the walk. Write `room NAME` first."]
    same = mistakes(Walk((rectangle(3, 4), rectangle(3, 4))))
    assert any("this name" in one for one in same)
