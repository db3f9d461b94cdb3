import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.floor.walk.nouns import LEFT, RIGHT, Shared
from farwall.readers.walk.text import walk_from_text
from farwall.units import M_PER_FT, M_PER_IN

KITCHEN = """walk, tape in feet
room Kitchen
12' 6 1/2", right, 10' 2", right, 12' 6 1/2", right, 10' 2", right
door in wall 2 at 3' wide 2' 8" deep 4 1/2" rest 4' 6" to Living room mark A
opening in wall 4 at 1' wide 6' to Hall
puerta de afuera in wall 1 at 1' wide 3'
diagonal 1 to 3 = 16' 1 3/4"
across 1 to 3 = 10' 2" at 5'
"""


def mistakes(text):
    with pytest.raises(Refused) as refused:
        walk_from_text(text)
    return [str(one) for one in refused.value.mistakes]


def test_a_room_in_one_line():
    room = walk_from_text(KITCHEN).rooms[0]
    assert room.name == "Kitchen"
    assert [wall.turn_deg for wall in room.walls] == [RIGHT] * 4
    assert room.walls[0].length_m == pytest.approx(150.5 * M_PER_IN)
    door, opening, out = room.ways
    assert (door.wall, door.kind, door.to, door.mark) == (1, "door", "Living room", "A")
    assert door.depth_m == pytest.approx(4.5 * M_PER_IN)
    assert door.rest_m == pytest.approx(54 * M_PER_IN)
    assert (opening.kind, opening.to) == ("wide", "Hall")
    assert (out.kind, out.to, out.wall) == ("outside", "", 0)
    assert (room.diagonals[0].start, room.diagonals[0].end) == (0, 2)
    assert (room.across[0].wall, room.across[0].other) == (0, 2)
    assert room.across[0].at_m == pytest.approx(5 * M_PER_FT)


def test_the_same_dictated_in_one_breath():
    said = (
        "room kitchen\n"
        "twelve foot six and a half left ten foot two left twelve foot six and a half left "
        "then ten foot two left\n"
        "diagonal one to three sixteen foot one and three quarters"
    )
    room = walk_from_text(said).rooms[0]
    assert [wall.length_m for wall in room.walls] == pytest.approx(
        [one * M_PER_IN for one in (150.5, 122, 150.5, 122)]
    )
    assert [wall.turn_deg for wall in room.walls] == [LEFT] * 4
    assert room.diagonals[0].length_m == pytest.approx(193.75 * M_PER_IN)


def test_spanish_and_metres():
    said = (
        "recorrido, cinta en metros\ncuarto Baño\n"
        "tres metros ochenta y uno, derecha, 2,10, derecha, 3.81, derecha, 2.10\n"
        "puerta en la pared 1 a los 0,50 ancho 0,76 fondo 0,12 hacia Pasillo\n"
        "diagonal de 1 a 3 = 4,35"
    )
    walk = walk_from_text(said)
    assert not walk.us
    room = walk.rooms[0]
    assert [wall.length_m for wall in room.walls] == pytest.approx([3.81, 2.1, 3.81, 2.1])
    assert (room.ways[0].to, room.ways[0].wall) == ("Pasillo", 0)
    assert room.diagonals[0].length_m == pytest.approx(4.35)


def test_a_turn_that_is_not_said_is_to_the_right_and_a_line_may_be_a_wall():
    room = walk_from_text("room A\n10'\n8'\nleft 45 degrees\n5'\n").rooms[0]
    assert [wall.turn_deg for wall in room.walls] == [-90.0, 45.0, -90.0]


def test_a_wall_that_was_not_measured():
    room = walk_from_text("room A\n10', ?, 10', 8'").rooms[0]
    assert room.walls[1].length_m is None


def test_walls_back_to_back():
    text = "room A\n10', 8', 10', 8'\nroom B\n10', 8', 10', 8'\nwall 1 backs on a wall 3, 4 1/2\""
    (one,) = walk_from_text(text).shared
    assert one == Shared(1, 0, 0, 2, pytest.approx(4.5 * M_PER_IN))


def test_every_line_that_is_not_understood_is_named():
    said = mistakes(
        "10'\nroom A\nbanana, right, 10'\ndoor at 3' to Hall\ndiagonal x to 3 = 5'\nleft\nleft\n"
        'wall 1 backs on Nowhere wall 2, 4"'
    )
    assert [one.split(":")[0] for one in said] == [f"line {n}" for n in (1, 3, 4, 5, 7, 8)]


def test_too_long_a_walk_is_refused():
    assert "too long" in mistakes("\n" * 4_000)[0]


@given(st.text(alphabet="room wall left 12'\"½,\n=diagonal to?3#door at wide", max_size=200))
@example("room\nroom\n")
@example("room A\n" + "9" * 400)
@example("room A\ndiagonal 1 to 2 = 1/0")
def test_any_text_is_a_walk_or_refused(text):
    try:
        walk = walk_from_text(text)
    except Refused:
        return
    assert all(wall.length_m is None or wall.length_m > 0 for r in walk.rooms for wall in r.walls)
