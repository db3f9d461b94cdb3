"""The drop map: seconds of each room, hatched where they are many, told in words too."""

from tests.web.pages.office import two_rooms

from farwall.readers.job_json import job_from
from farwall.web.pages.drop_map import drop_map


def drawn(**rooms):
    found = {name: {"drop_s": seconds} for name, seconds in rooms.items()}
    return drop_map(job_from(two_rooms(survey={"rooms": found}), "two"))


def test_each_room_says_its_seconds_or_that_none_were_taken():
    text = drawn(front=9)
    assert 'aria-label="Front room: 9 s; Back room: no drop"' in text
    assert ">9 s</text>" in text


def test_tight_floor_is_hatched_and_shut_floor_crossed():
    assert "url(#tight" not in drawn(front=20, back=9)
    assert 'fill="url(#tightwide0)"' in drawn(front=21)
    assert 'fill="url(#shutwide0)"' in drawn(back=61)


def test_one_is_drawn_for_a_desk_and_one_for_a_phone():
    assert drawn().count("<svg") == 2
