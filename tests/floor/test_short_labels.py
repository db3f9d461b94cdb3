"""What rooms are called for short: the first of several names, unless two rooms share it."""

from tests.shapes import box

from farwall.floor.nouns import Room
from farwall.floor.short_labels import short_labels, together

AREA = box(0, 0, 3, 3)


def labels(*names: str) -> list[str]:
    rooms = [Room(f"r{n}", AREA, name) for n, name in enumerate(names)]
    return list(short_labels(rooms).values())


def test_an_open_plan_room_is_called_by_the_first_of_its_names():
    assert labels("Great room + Kitchen + Hall", "Bath") == ["Great room", "Bath"]


def test_two_rooms_that_begin_alike_keep_all_their_names():
    both = ["Hall + Entry", "Hall + Stair"]
    assert labels(*both) == both
    assert labels("Hall", "Hall + Stair") == ["Hall", "Hall + Stair"]


def test_a_room_without_a_name_is_called_by_its_id():
    assert labels("") == ["r0"]


def test_rooms_of_one_name_are_counted():
    assert together(["Closet", "Bath", "Closet"]) == ["2 × Closet", "Bath"]
    assert together([]) == []
