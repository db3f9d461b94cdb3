"""Walls cut at their corners."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.papers.wall_runs import runs_of_ring

CLOCKWISE = [(0.0, 0.0), (0.0, 3.0), (4.0, 3.0), (4.0, 0.0), (0.0, 0.0)]


@pytest.mark.parametrize("first", [0, 1, 2, 3])
def test_the_corner_farthest_up_left_comes_first_wherever_the_ring_begins(first: int):
    ring = [*CLOCKWISE[first:-1], *CLOCKWISE[: first + 1]]
    assert runs_of_ring(ring) == [
        ((0, 3), (4, 3)),
        ((4, 3), (4, 0)),
        ((4, 0), (0, 0)),
        ((0, 0), (0, 3)),
    ]


def test_a_point_on_a_straight_wall_is_no_corner():
    ring = [(0.0, 0.0), (0.0, 3.0), (2.0, 3.0), (4.0, 3.0), (4.0, 0.0), (0.0, 0.0)]
    assert runs_of_ring(ring)[0] == ((0, 3), (2, 3), (4, 3))


def test_two_rebates_in_one_wall_leave_it_one_run():
    """Door rebates 0.1 m deep at x = 0.5-1.5 and 2.5-3.5 of a 4 m north wall."""
    north = [
        (0.0, 3.0), (0.5, 3.0), (0.5, 3.1), (1.5, 3.1), (1.5, 3.0),
        (2.5, 3.0), (2.5, 3.1), (3.5, 3.1), (3.5, 3.0), (4.0, 3.0),
    ]  # fmt: skip
    runs = runs_of_ring([*north, (4.0, 0.0), (0.0, 0.0), (0.0, 3.0)])
    straight = next(run for run in runs if run[0] == (0.0, 3.0))
    assert straight[-1] == (4.0, 3.0)
    assert len(runs) == 4


def test_a_deep_niche_does_end_a_wall():
    """A niche 0.6 m deep is a place of its own: the wall before and behind it are two runs."""
    north = [(0.0, 3.0), (1.0, 3.0), (1.0, 3.6), (2.0, 3.6), (2.0, 3.0), (4.0, 3.0)]
    runs = runs_of_ring([*north, (4.0, 0.0), (0.0, 0.0), (0.0, 3.0)])
    assert len(runs) == 8


# Eighteen sides turn by the corner's own 20 degrees: rounding decides, so they are left out.
@given(st.integers(3, 40).filter(lambda sides: sides != 18), st.floats(0.5, 9.0))
def test_law_runs_close_and_lose_nothing(sides: int, radius: float):
    """Any regular polygon: its runs follow each other and are as long together as the ring."""
    corners = [
        (radius * math.cos(-2 * math.pi * k / sides), radius * math.sin(-2 * math.pi * k / sides))
        for k in range(sides)
    ]
    runs = runs_of_ring([*corners, corners[0]])
    for here, there in zip(runs, [*runs[1:], runs[0]], strict=True):
        assert here[-1] == there[0]
    told = sum(math.dist(a, b) for run in runs for a, b in pairwise(run))
    assert told == pytest.approx(2 * sides * radius * math.sin(math.pi / sides))
    assert len(runs) == (1 if 360 / sides <= 20 else sides)
