"""The order of strips: farther before nearer, near to the best of all orders on small cuts."""

from __future__ import annotations

from itertools import permutations, product
from math import hypot

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import box as rectangle
from tests.shapes import AWKWARD, ISLAND_KITCHEN
from tests.spray.hand_floors import L_ROOM, ROUND, hall
from tests.spray.sweeping import laid

from farwall.spray.bands import Border, Strip, Strips
from farwall.spray.sequence import Pace, order_strips

PACE = Pace(spray_m2_min=2.0, walk_m_min=60.0)


def strips_of(boxes, borders, levels):
    """A cut made by hand: rectangles, which of them meet, and how far each is."""
    return Strips(
        tuple(
            Strip((("room", rectangle(*bounds)),), level)
            for bounds, level in zip(boxes, levels, strict=True)
        ),
        tuple(Border(far, near, shapely.LineString([(0, 0), (1, 0)])) for far, near in borders),
        1.0,
    )


def waits(cut, order, pace=PACE):
    """The longest wait at a border, and all the walking: plain sums, strip after strip."""
    centres = [strip.shape.centroid for strip in cut.strips]
    start, now, walked = {}, 0.0, 0.0
    for before, strip in zip([None, *order], order, strict=False):
        if before is not None:
            one, two = centres[before], centres[strip]
            walked += hypot(one.x - two.x, one.y - two.y) / pace.walk_m_min
            now += hypot(one.x - two.x, one.y - two.y) / pace.walk_m_min
        start[strip] = now
        now += cut.strips[strip].area_m2 / pace.spray_m2_min
    return max((abs(start[b.far] - start[b.near]) for b in cut.borders), default=0.0), walked


def allowed(cut, order):
    """Whether each strip comes after every farther one that it touches."""
    place = {strip: index for index, strip in enumerate(order)}
    return all(
        place[b.far] < place[b.near]
        for b in cut.borders
        if cut.strips[b.far].level > cut.strips[b.near].level
    )


def best_of_all(cut):
    orders = permutations(range(len(cut.strips)))
    return min(waits(cut, order) for order in orders if allowed(cut, order))


FORK = strips_of(
    # Two arms of two strips each, and a stem: 0-1 the long arm, 2-3 the short one, 4 the stem.
    [(0, 0, 3, 1), (0, 1, 3, 2), (5, 0, 6, 1), (5, 1, 6, 2), (0, 2, 6, 3)],
    [(0, 1), (2, 3), (1, 4), (3, 4)],
    [2, 1, 2, 1, 0],
)


def test_a_chain_is_sprayed_from_its_far_end():
    cut = strips_of([(i, 0, i + 1, 2) for i in range(4)], [(0, 1), (1, 2), (2, 3)], [3, 2, 1, 0])
    order, wait = order_strips(cut, PACE)
    assert order == [0, 1, 2, 3]
    assert wait == pytest.approx(1 + 1 / 60, abs=1e-3), (
        "by hand: 2 m² at 2 m² a minute, 1 m of walk"
    )


def test_two_arms_take_turns_by_hand():
    """By hand: strips 0 and 1 take 1.5 min each, 2 and 3 half a minute each, then the stem 4.

    Arm after arm, 0, 1, 2, 3: the end of 1 waits 1.5 + 0.5 + 0.5 = 2.5 min for the stem; the
    short arm first, 2, 3, 0, 1: 3 waits 3.5 min. In turns, 0, 2, 1, 3 or 2, 0, 3, 1, no edge
    waits longer than 2 min and the walks between.
    """
    order, wait = order_strips(FORK, PACE)
    assert order in ([0, 2, 1, 3, 4], [2, 0, 3, 1, 4])
    assert wait == pytest.approx(best_of_all(FORK)[0], abs=2e-3)
    assert 2.0 < wait < 2.0 + 10 / 60


def test_strips_of_one_level_may_go_in_any_order():
    cut = strips_of([(0, 0, 1, 1), (1, 0, 2, 1), (0, 1, 2, 2)], [(0, 1), (0, 2), (1, 2)], [1, 1, 0])
    order, _ = order_strips(cut, PACE)
    assert order[-1] == 2


def test_one_strip_alone():
    cut = strips_of([(0, 0, 2, 1)], [], [0])
    assert order_strips(cut, PACE) == ([0], 0.0)


@st.composite
def trees(draw):
    """Cuts of up to six strips: each but the first is nearer to the exit than one before it."""
    count = draw(st.integers(2, 6))
    spots = draw(st.lists(st.sampled_from(list(product(range(3), range(3)))), min_size=count,
                          max_size=count, unique=True))  # fmt: skip
    sizes = draw(st.lists(st.floats(0.3, 1.0), min_size=count, max_size=count))
    parents = [draw(st.integers(0, n - 1)) for n in range(1, count)]
    levels = [0]
    for parent in parents:
        levels.append(levels[parent] + 1)
    by_level = sorted(range(count), key=lambda n: -levels[n])
    at = {old: new for new, old in enumerate(by_level)}
    boxes = [
        (x * 2, y * 2, x * 2 + 1, y * 2 + size) for (x, y), size in zip(spots, sizes, strict=True)
    ]
    borders = [(at[n], at[parent]) for n, parent in enumerate(parents, start=1)]
    return strips_of([boxes[n] for n in by_level], borders, [levels[n] for n in by_level])


@settings(max_examples=40)
@given(trees())
def test_every_order_is_allowed_and_its_wait_is_told_right(cut):
    order, wait = order_strips(cut, PACE)
    assert sorted(order) == list(range(len(cut.strips)))
    assert allowed(cut, order)
    assert wait == pytest.approx(waits(cut, order)[0], abs=6e-4)


@settings(max_examples=40)
@given(trees())
def test_the_wait_is_near_the_best_of_all_orders(cut):
    """The climb does not claim the best order; on trees of six strips it misses it by little."""
    _, wait = order_strips(cut, PACE)
    best, _ = best_of_all(cut)
    assert best - 1e-3 <= wait <= 1.3 * best + 1e-3


@pytest.mark.parametrize("name", AWKWARD)
def test_on_awkward_floors_every_farther_neighbour_comes_first(name):
    found = laid(AWKWARD[name])
    assert allowed(found.cut, found.order)
    assert found.cut.strips[found.order[-1]].level == 0


@pytest.mark.parametrize("place", [hall(8, 2), L_ROOM], ids=["hall", "ell"])
def test_a_floor_without_branches_is_sprayed_level_by_level(place):
    found = laid(place)
    levels = [found.cut.strips[index].level for index in found.order]
    assert levels == sorted(levels, reverse=True)


def test_both_sides_of_an_island_take_turns():
    """Neither arm is finished before the other: an edge would wait for all of it."""
    found = laid(ISLAND_KITCHEN)
    plain = sum(strip.area_m2 for strip in found.cut.strips) / ROUND.spray_m2_min
    assert found.longest_wait_min < 0.5 * plain
