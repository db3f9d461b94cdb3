"""Rows along halls: every room counted once, wings one above the other."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.bench.dice import Dice
from farwall.bench.layout import lay_out


@given(st.integers(3, 200), st.integers(0, 2**32))
def test_halls_lobbies_rooms_and_closets_add_up(rooms, seed):
    wings = lay_out(rooms, Dice(seed))
    names = [
        name
        for wing in wings
        for name in (
            wing.hall,
            *([wing.lobby] if wing.lobby else []),
            *(room.id for row in wing.rows for room in row.rooms),
            *(room.closet.id for row in wing.rows for room in row.rooms if room.closet),
        )
    ]
    assert len(names) == len(set(names)) == rooms


@given(st.integers(3, 200), st.integers(0, 2**32))
def test_wings_lie_one_above_the_other_and_rows_beside_their_hall(rooms, seed):
    wings = lay_out(rooms, Dice(seed))
    floor_y = 0
    for wing in wings:
        assert wing.span[0] == floor_y
        assert wing.rows[0].at(0, 0) == (0, wing.y0)
        assert wing.rows[0].at(5, 10) == (5, wing.y0 - 10)
        assert wing.rows[1].at(5, 10) == (5, wing.y1 + 10)
        floor_y = wing.span[1]
        for row in wing.rows:
            ends = [(room.u0, room.u1) for room in row.rooms]
            assert ends == sorted(ends)
            assert all(one[1] == two[0] for one, two in pairwise(ends))


def test_two_rooms_are_too_few_for_a_hall_between():
    with pytest.raises(ValueError, match="2 rooms"):
        lay_out(2, Dice(1))
