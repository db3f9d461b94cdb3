"""Windows in words: which way they look, and a line in the wall that looks there."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.shapes import TWO_ROOMS
from tests.web.pages.office import two_rooms

from farwall.readers.job_json import job_from
from farwall.web.pages.forms.windows import WINDS, wind_of, window_line, window_title

FRONT, BACK = TWO_ROOMS.floor.rooms
"""4 × 3 m each, the front one from y = 0, the back one from y = 3."""


def house(north_deg=0.0, **window):
    facts = two_rooms()
    facts["floor"] |= {"north_deg": north_deg, "windows": [window] if window else []}
    return job_from(facts, "two")


@pytest.mark.parametrize(
    ("line", "wind"),
    [
        (((1, 6), (2, 6)), "N"), (((2, 6), (1, 6)), "N"), (((4, 4), (4, 5)), "E"),
        (((0, 4), (0, 5)), "W"),
    ],
)  # fmt: skip
def test_a_window_looks_away_from_its_room_whichever_way_it_is_drawn(line, wind):
    assert wind_of(line, BACK, 0.0) == wind


@given(st.sampled_from(range(8)), st.sampled_from([((1, 6), (2, 6)), ((4, 4), (4, 5))]))
def test_north_turned_by_an_eighth_turns_every_window_back_by_one(turns, line):
    """North 45° clockwise from up: what looked north looks north-west."""
    before = WINDS.index(wind_of(line, BACK, 0.0))
    assert wind_of(line, BACK, 45.0 * turns) == WINDS[(before - turns) % 8]


@pytest.mark.parametrize("north", [0.0, 20.0, 90.0, 180.0, 333.0])
@pytest.mark.parametrize("wind", ["N", "E", "S", "W"])
def test_a_new_window_looks_where_it_was_told_or_there_is_no_such_wall(north, wind):
    line = window_line(house(north), BACK, wind, 1.2)
    if line is None:  # the wall to the front room is no outside wall
        assert math.isclose((WINDS.index(wind) * 45 + north) % 360, 180, abs_tol=46)
        return
    assert math.dist(*line) == pytest.approx(1.2, abs=1e-3)
    off = abs(WINDS.index(wind_of(line, BACK, north)) - WINDS.index(wind))
    assert min(off, 8 - off) <= 1


def test_without_north_nobody_knows_where_a_wall_looks():
    facts = two_rooms()
    assert window_line(job_from(facts, "two"), BACK, "N", 1.2) is None


def test_a_wall_shorter_than_the_window_takes_none():
    assert window_line(house(), BACK, "N", 4.5) is None


def test_a_title_tells_width_room_and_wind():
    job = house(line=[[1, 6], [2.524, 6]], room="back")
    assert window_title(job, 0) == "5' 0\" wide, in Back room, facing north"
    facts = two_rooms()
    facts["floor"]["windows"] = [{"line": [[1, 6], [2.524, 6]]}]
    assert window_title(job_from(facts, "two"), 0) == "5' 0\" wide, in Back room"
