"""Storeys by the height of floors, rooms on a storey that is not theirs, floors in pieces."""

import shapely
from shapely import box

from farwall.facts.reading import Stated, Storey
from farwall.readers.told.levels import by_height, floor_words, part_at, pieces_of, settled
from farwall.readers.told.nouns import ToldSpace
from farwall.readers.told.shells import Plan

STOREYS = (Storey("ground", "Ground", 0.0), Storey("upper", "Upper", 3.0))


def room(own: str, floor_m: float, storey: str = "") -> ToldSpace:
    return ToldSpace(own, box(0, 0, 4, 3), own, storey, floor_m)


def test_rooms_without_a_storey_are_sorted_by_height_and_that_is_said() -> None:
    rooms, storeys, words = by_height([room("a", -2.7), room("b", 0.1), room("c", -2.5)], set())
    assert [r.storey for r in rooms] == ["level-1", "level-2", "level-1"]
    assert [s.elevation_m for s in storeys] == [-2.7, 0.1]
    assert [note.code for note in words] == ["storeys-by-height"]


def test_told_storeys_are_left_alone() -> None:
    rooms, storeys, words = by_height([room("a", 0.0, "ground")], {"ground"})
    assert ([r.storey for r in rooms], storeys, words) == (["ground"], [], [])


def test_an_id_that_is_taken_is_not_given_again() -> None:
    rooms, _, _ = by_height([room("a", 0.0), room("b", 0.0, "level-1")], {"level-1"})
    assert [r.storey for r in rooms] == ["level-2", "level-1"]


def test_a_room_far_from_its_storey_goes_to_the_one_at_its_height() -> None:
    moved, words = settled(room("loft", 3.1, "ground"), STOREYS)
    assert moved.storey == "upper"
    assert "3.10 m" in words[0].what
    assert settled(room("hall", 0.4, "ground"), STOREYS) == (room("hall", 0.4, "ground"), [])
    assert settled(room("tower", 9.0, "ground"), STOREYS)[0].storey == "ground"


def gallery() -> Plan:
    return Plan(box(0, 0, 4, 3), 0.0, 5.5, parts=(Plan(box(4, 0, 6, 3), 3.0, 2.5),))


def test_a_gallery_becomes_a_room_on_the_storey_at_its_height() -> None:
    whole = ToldSpace("hall", box(0, 0, 4, 3), "Hall", "ground", 0.0, stated=Stated(18, "net"))
    first, second = pieces_of(whole, gallery(), STOREYS)
    assert (first.id, second.id) == ("hall", "hall-2")
    assert (first.storey, second.storey) == ("ground", "upper")
    assert (first.stated, second.stated) == (None, None)
    assert second.shape.area == 6


def test_an_opening_finds_the_piece_at_its_foot_and_then_the_nearest() -> None:
    low, high = room("a", 0.0), room("b", 3.0)
    beside = ToldSpace("c", shapely.box(10, 0, 12, 3), "c", floor_m=3.0)
    assert part_at([low, high, beside], 3.05, (2.0, 0.0)).id == "b"
    assert part_at([low, high, beside], 3.05, (11.0, 0.0)).id == "c"
    assert part_at([low, high], 0.1).id == "a"
    assert part_at([low, beside], 2.9, (2.0, 0.0)).id == "a"  # a high window of a tall room
    assert part_at([low, high], None).id == "a"


def test_pieces_and_steps_are_said_in_figures() -> None:
    (word,) = floor_words("Hall", gallery(), 18.0)
    assert "12.00 m² at 0.00 m, 6.00 m² at 3.00 m" in word.what
    assert "18.00 m² for all" in word.what
    step = Plan(box(0, 0, 4, 3), 0.0, steps=((-0.08, 2.0),))
    (word,) = floor_words("Hall", step)
    assert word.what == "2.00 m² of “Hall” lie 0.08 m below the rest of its floor."
