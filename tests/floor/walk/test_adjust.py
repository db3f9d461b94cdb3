from dataclasses import replace
from math import sqrt

import pytest
from hypothesis import given
from tests.strategies.walks import rectangle, walks

from farwall.floor.walk.adjust import adjusted, dropped
from farwall.floor.walk.lay import lay_of
from farwall.floor.walk.net import net_of
from farwall.floor.walk.nouns import Diagonal, Spread, Walk, WalkRoom, WalkWall

STIFF = Spread(tape_per_m=0.0, square_deg=0.0001)


def solved(walk, spread=None):
    net = net_of(walk, lay_of(walk), spread)
    return net, adjusted(net)


def of_walls(net, values):
    return {row.wall: float(values[i]) for i, row in enumerate(net.rows) if row.kind == "wall"}


@given(walks)
def test_an_exact_walk_needs_nothing_added(walk):
    _, fit = solved(walk)
    assert abs(fit.v).max() < 1e-6
    assert fit.chi2 < 1e-6


def test_by_hand_a_rectangle_with_one_long_wall_shares_it_out():
    """By hand: walls 4.00, 3.00, 4.10, 3.00 m, all readings alike. Square, the 0.10 m between the
    two long walls would be halved, +0.05 and -0.05, each held by half. Squares stray by 0.003 m
    where readings do by 0.004 m, so that the two short walls take their share of the misclosure:
    of four numbers with variances 16, 9, 16, 9, the readings take 32/50, each half of that.
    """
    walls = tuple(WalkWall(one) for one in (4.0, 3.0, 4.1, 3.0))
    net, fit = solved(Walk((WalkRoom("Den", walls),)), STIFF)
    added, r, w = (of_walls(net, one) for one in (fit.v, fit.r, fit.w))
    assert added[0] == pytest.approx(0.032, abs=1e-5)
    assert added[2] == pytest.approx(-0.032, abs=1e-5)
    assert abs(added[1]) < 1e-6
    assert r[0] == pytest.approx(0.32, abs=1e-4)
    assert w[0] == pytest.approx(0.032 / (0.004 * sqrt(0.32)), rel=1e-3)


@given(walks)
def test_redundancy_numbers_add_up_to_readings_less_unknowns(walk):
    net, fit = solved(walk)
    assert fit.freedom == pytest.approx(len(net.rows) - net.unknowns, abs=1e-3)


@given(walks)
def test_one_more_diagonal_never_loosens_a_wall(walk):
    room = walk.rooms[0]
    net, before = solved(walk)
    (ax, ay), (bx, by) = ((before.x[k], before.x[k + 1]) for k in (0, 4))
    far = sqrt((ax - bx) ** 2 + (ay - by) ** 2)
    more = replace(room, diagonals=(*room.diagonals, Diagonal(0, 2, far)))
    net2, after = solved(Walk((more,)))
    for wall, r in of_walls(net, before.r).items():
        assert of_walls(net2, after.r)[wall] >= r - 1e-6


def test_a_wall_that_nobody_measured_is_reckoned_from_the_others():
    walls = tuple(WalkWall(one) for one in (4.0, None, 4.0, 3.0))
    _, fit = solved(Walk((WalkRoom("Den", walls),)))
    assert fit.x[4] - fit.x[2] == pytest.approx(3.0, abs=1e-4)


def test_a_diagonal_that_disagrees_moves_the_walls_towards_it():
    room = rectangle(3.0, 4.0, diagonals=((0, 2),))
    long = replace(room, diagonals=(Diagonal(0, 2, 5.02),))
    net, fit = solved(Walk((long,)))
    assert sum(of_walls(net, fit.v).values()) > 0.005


@given(walks)
def test_a_row_dropped_quickly_is_a_row_left_out(walk):
    room = walk.rooms[0]
    long = replace(room.walls[1], length_m=room.walls[1].length_m + 0.25)
    net, whole = solved(Walk((replace(room, walls=(room.walls[0], long, *room.walls[2:])),)))
    for i, row in enumerate(net.rows):
        if row.kind in {"wall", "diagonal"} and whole.r[i] > 0.05:
            quick, slow = dropped(net, whole, i), adjusted(net, without=[i])
            assert quick.off_m == pytest.approx(-slow.v[i], abs=3e-4)
            assert quick.chi2 == pytest.approx(slow.chi2, rel=0.01, abs=0.05)
            spread = slow.design[i] @ slow.inverse @ slow.design[i]
            assert quick.spread_m == pytest.approx(
                sqrt(row.sigma_m**2 + spread), rel=0.1
            )  # diagonals turn
