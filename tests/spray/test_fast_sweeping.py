"""Walks by fast sweeping: against exact walks, by hand, against marching, compiled and not."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.spray.walk_floors import WALLS, cut, off_m

from farwall.errors import Refused
from farwall.spray.fast_sweeping import has_numba, walks_on_grid

WAYS = [
    pytest.param(False, id="by lines"),
    pytest.param(
        True,
        id="compiled",
        marks=pytest.mark.skipif(not has_numba(), reason="numba (extra `fast`) is not there"),
    ),
]


def from_corner(columns, rows):
    start = np.full((columns, rows), np.inf)
    start[0, 0] = 0.0
    return np.ones((columns, rows), dtype=bool), start


@pytest.mark.parametrize("compiled", WAYS)
def test_first_places_by_hand(compiled):
    """By hand: beside the start h; askew, where a = b = h, (2 + sqrt(2)) h / 2."""
    free, start = from_corner(3, 3)
    walks = walks_on_grid(free, start, 0.5, order=1, compiled=compiled)
    askew = 1 + np.sqrt(2) / 2
    on = (2 + askew + np.sqrt(2 - (2 - askew) ** 2)) / 2
    assert walks.metres[:, 0] == pytest.approx([0.0, 0.5, 1.0])
    assert walks.metres[1, 1] == pytest.approx(0.5 * askew)
    assert walks.metres[2, 1] == walks.metres[1, 2] == pytest.approx(0.5 * on)
    assert walks.settled


@pytest.mark.parametrize("compiled", WAYS)
@pytest.mark.parametrize("order", [1, 2])
def test_from_a_straight_wall_nothing_is_off(order, compiled):
    """By hand: from the whole first column at 0.1 m the walk is as many steps more as columns."""
    start = np.full((9, 5), np.inf)
    start[0] = 0.1
    walks = walks_on_grid(np.ones((9, 5), bool), start, 0.2, order=order, compiled=compiled)
    assert walks.metres == pytest.approx(np.repeat(0.1 + 0.2 * np.arange(9), 5).reshape(9, 5))


@pytest.mark.parametrize("compiled", WAYS)
def test_a_wall_without_thickness_is_walked_round_by_hand(compiled):
    """By hand: two columns, between them a wall but for the last row: up, over, and back down."""
    free, start = from_corner(2, 5)
    east = np.zeros((2, 5), dtype=bool)
    east[0, 4] = True
    walks = walks_on_grid(free, start, 1.0, order=1, east=east, compiled=compiled)
    assert walks.metres[0] == pytest.approx([0, 1, 2, 3, 4])
    assert walks.metres[1] == pytest.approx([9, 8, 7, 6, 5])


@pytest.mark.parametrize("compiled", WAYS)
def test_what_nobody_reaches_is_infinitely_far(compiled):
    free, start = from_corner(5, 3)
    free[2] = False
    walks = walks_on_grid(free, start, 1.0, compiled=compiled)
    assert np.isinf(walks.metres[2:]).all()
    assert np.isfinite(walks.metres[:2]).all()
    assert walks.settled


@pytest.mark.parametrize(("order", "falls_by"), [(1, 1.7), (2, 3.3)])
def test_on_open_floor_the_error_falls_by_its_order(order, falls_by):
    """Half the step: half of the error (less, by the logarithm of first order), or a quarter."""
    off = []
    for cells in (64, 128, 256):
        of = cut("open", cells)
        walks = walks_on_grid(of.free, of.start_m, of.step_m, order=order)
        off.append(off_m("open", of, walks.metres)[0])
    assert off[0] / off[1] > falls_by
    assert off[1] / off[2] > falls_by


@pytest.mark.parametrize("walls", ["corner", "comb"])
@pytest.mark.parametrize("order", [1, 2])
def test_around_corners_the_error_falls_with_the_step(walls, order):
    """Behind a corner walks fan out of a point: first order both ways."""
    off = []
    for cells in (64, 128, 256):
        of = cut(walls, cells)
        walks = walks_on_grid(of.free, of.start_m, of.step_m, order=order)
        off.append(off_m(walls, of, walks.metres)[0])
    assert off[0] / off[1] > 1.6
    assert off[1] / off[2] > 1.6


@pytest.mark.parametrize("walls", WALLS)
@pytest.mark.parametrize("order", [1, 2])
def test_no_farther_off_than_marching(walls, order):
    """scikit-fmm, the same cells and order: a mean error no larger than its."""
    marching = pytest.importorskip("skfmm", reason="scikit-fmm (group `rival`) is not there")
    for cells in (64, 128):
        of = cut(walls, cells)
        phi = np.ma.MaskedArray(of.to_round_m, ~of.free & (of.to_round_m >= 0))
        other = np.ma.filled(marching.distance(phi, dx=of.step_m, order=order), np.inf)
        ours = walks_on_grid(of.free, of.start_m, of.step_m, order=order)
        assert ours.settled
        assert off_m(walls, of, ours.metres)[0] <= off_m(walls, of, other)[0]


@pytest.mark.skipif(not has_numba(), reason="numba (extra `fast`) is not there")
@settings(max_examples=100, deadline=None)
@given(
    st.integers(1, 24), st.integers(1, 24), st.integers(0, 10**6), st.sampled_from([1, 2]),
    st.sampled_from([0.0, 0.2, 0.4]),
)  # fmt: skip
def test_compiled_or_not_the_same_digits(columns, rows, seed, order, walls):
    """On drawn floors with thick and thin walls: not one bit differs, nor do the rounds."""
    dice = np.random.default_rng(seed)
    free = dice.random((columns, rows)) >= walls
    start = np.where(dice.random((columns, rows)) < 0.05, dice.random((columns, rows)), np.inf)
    thin = {name: dice.random((columns, rows)) >= walls / 2 for name in ("east", "north")}
    one, other = (
        walks_on_grid(free, start, 0.17, order=order, compiled=compiled, **thin)
        for compiled in (False, True)
    )
    assert np.array_equal(one.metres, other.metres)
    assert (one.rounds, one.settled) == (other.rounds, other.settled)


@settings(max_examples=40, deadline=None)
@given(st.integers(2, 14), st.integers(2, 14), st.integers(0, 10**6), st.sampled_from([1, 2]))
def test_in_a_mirror_and_turned_nothing_changes(columns, rows, seed, order):
    """Second order asks two places on: of two sides alike, up to rounding, the farther one. Before
    that rule 103 of 4500 drawn floors had walks up to half a step apart in a mirror."""
    dice = np.random.default_rng(seed)
    free = dice.random((columns, rows)) >= 0.25
    start = np.where(dice.random((columns, rows)) < 0.1, 0.0, np.inf)
    walks = walks_on_grid(free, start, 0.2, order=order).metres
    for moved in (np.flipud, np.fliplr, np.transpose):
        other = walks_on_grid(moved(free), moved(start), 0.2, order=order).metres
        assert np.allclose(moved(walks), other, rtol=0, atol=1e-9)


def test_all_mistakes_come_at_once():
    free = np.ones((2, 3), dtype=bool)
    with pytest.raises(Refused) as no:
        walks_on_grid(free, np.full((3, 2), -1.0), 0.0, order=3, east=np.ones((1, 1), bool))
    assert {m.where for m in no.value.mistakes} == {"start_m", "step_m", "order", "east"}
    assert all(mistake.remedy for mistake in no.value.mistakes)
