"""The bound by several edges at once: by hand, against plain counting, and below every front."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import outside, place, poly
from tests.spray.grounds import ground

from farwall.floor.nouns import Room
from farwall.spray.blocks import Rectangle, blocks_of
from farwall.spray.bound import front_of_rectangle_m
from farwall.spray.edges_at_once import Shares, edges_at_once_m, gain_m2, least_front_m, levels
from farwall.spray.fronts import levelled_front, plain_fronts

DEPTH_M = 1.0


def one(short_m: float, long_m: float) -> Rectangle:
    return Rectangle(frozenset({0}), short_m, long_m)


def told(floor: shapely.Polygon, *, count: int, depth_m: float = DEPTH_M) -> float:
    blocks = blocks_of(floor, 0.0, most=9)
    assert blocks is not None
    return least_front_m(Shares(blocks, levels(count)), depth_m)


@pytest.mark.parametrize(
    ("wet", "walk", "gained"),
    [
        (8.0, 1.0, 2.0),  # a straight front in a hall 2 m wide
        (8.0, 1.5, 3.0),
        (np.pi / 4, 0.1, np.pi / 4 * (1.1**2 - 1)),  # a quarter of a circle of 1 m grows to 1.1 m
        (16 - np.pi / 4, 0.1, np.pi / 4 * (1 - 0.9**2)),  # the last metre about a corner
        (15.0, 9.0, 1.0),
        (0.0, 1.0, 0.0),
        (16.0, 1.0, 0.0),
    ],
)
def test_what_a_hall_gains_by_hand(wet: float, walk: float, gained: float):
    found = gain_m2(one(2.0, 8.0), np.array([wet]), walk)[0]
    assert found == pytest.approx(gained)


@given(
    short=st.floats(0.5, 4), more=st.floats(0, 6), share=st.floats(0.001, 0.999),
    walk=st.floats(0.1, 3),
)  # fmt: skip
def test_the_gain_is_that_of_small_steps_along_the_least_edge(short, more, share, walk):
    """Plain counting: c grows by min(sqrt(pi c), b, sqrt(pi (b l - c))) for each metre."""
    whole = short * (short + more)
    wet, steps = share * whole, 4000
    for _ in range(steps):
        edge = min(np.sqrt(np.pi * wet), short, np.sqrt(np.pi * max(whole - wet, 0.0)))
        wet = min(wet + edge * walk / steps, whole)
    found = float(gain_m2(one(short, short + more), np.array([share * whole]), walk)[0])
    assert found == pytest.approx(wet - share * whole, abs=4e-3 * whole)


@given(
    short=st.floats(0.5, 4), more=st.floats(0, 6), low=st.floats(0, 1), wide=st.floats(0, 1),
    walk=st.floats(0.1, 3), at=st.floats(0, 1),
)  # fmt: skip
def test_between_two_shares_nothing_gains_less_than_at_the_ends(short, more, low, wide, walk, at):
    hall = one(short, short + more)
    ends = np.array([low, low + (1 - low) * wide]) * short * (short + more)
    inner = ends[0] + at * (ends[1] - ends[0])
    found = gain_m2(hall, np.array([*ends, inner]), walk)
    assert found[2] >= min(found[0], found[1]) - 1e-9


def test_a_single_rectangle_has_nearly_the_bound_of_the_rectangle():
    known = float(front_of_rectangle_m(np.array([3.0]), np.array([7.0]), DEPTH_M)[0])
    found = told(shapely.box(0, 0, 7, 3), count=40)
    assert known * 0.98 <= found <= known + 1e-6


def test_a_ring_has_two_edges():
    """A corridor 1 m wide round a core: wherever it is begun, two fronts run round it."""
    ring = shapely.box(0, 0, 12, 12).difference(shapely.box(1, 1, 11, 11))
    assert told(ring, count=4, depth_m=0.5) == pytest.approx(2.0, abs=0.1)
    assert told(ring, count=4, depth_m=0.5) <= 2.0 + 1e-6


def test_a_plus_of_long_arms_has_two_edges_and_a_corridor_one():
    """While the last but one arm is sprayed, the hub has to be parted from another that is dry."""
    plus = shapely.box(5, 0, 6, 11).union(shapely.box(0, 5, 11, 6))
    assert told(plus, count=8, depth_m=0.5) == pytest.approx(2.0, abs=0.1)
    assert told(shapely.box(5, 0, 6, 11), count=20, depth_m=0.5) == pytest.approx(1.0, abs=0.05)


def test_finer_boxes_never_tell_less():
    plus = shapely.box(3, 0, 5, 8).union(shapely.box(0, 3, 8, 5))
    blocks = blocks_of(plus, 0.0, most=9)
    assert blocks is not None
    ends = levels(4)
    finer = np.sort(np.concatenate([ends, (ends[1:] + ends[:-1]) / 2]))
    coarse, fine = (least_front_m(Shares(blocks, each), DEPTH_M) for each in (ends, finer))
    assert fine >= coarse - 2e-3 * coarse


@settings(max_examples=20)
@given(
    widths=st.tuples(*[st.integers(12, 30)] * 3),
    lengths=st.tuples(*[st.integers(10, 35)] * 3),
    at=st.sampled_from(["foot", "left"]),
)
def test_no_front_of_a_drawn_t_is_below_it(widths, lengths, at):
    """Bars and feet of all sizes, left by either end: fronts as they are made, levelled too."""
    (foot, bar, _), (left, right, deep) = [[w / 10 for w in widths], [w / 10 for w in lengths]]
    shape = poly(
        (left, 0), (left + foot, 0), (left + foot, deep), (left + foot + right, deep),
        (left + foot + right, deep + bar), (0, deep + bar), (0, deep), (left, deep),
    )  # fmt: skip
    way = ((left + 0.1, 0), (left + 0.9, 0)) if at == "foot" else ((0, deep + 0.1), (0, deep + 0.9))
    here = ground(place([Room("t", shape)], [outside("out", way, "t")]))
    fronts = plain_fronts(here)
    least = min(one.equivalent_m for one in [*fronts, levelled_front(here, fronts)])
    assert edges_at_once_m(here, 1.0, boxes=4000) <= least * (1 + 1e-6)


def test_what_comes_last_beside_the_way_out_counts():
    """A bath that is left beside its narrow part: the floor about the door stays dry to the end."""
    bath = poly((0, 0), (2.4, 0), (2.4, 1), (3, 1), (3, 1.65), (1.4, 1.65), (1.4, 2.4), (0, 2.4))
    here = ground(
        place([Room("bath", bath)], [outside("out", ((0.1, 0), (0.91, 0)), "bath")]), band_m=1.1
    )
    blocks = blocks_of(here.lattice.floor, 0.0, most=9)
    assert blocks is not None
    without = least_front_m(Shares(blocks, levels(8)), 1.1)
    assert edges_at_once_m(here, 1.1, boxes=8 ** len(blocks)) > 1.05 * without
    assert edges_at_once_m(here, 1.1, boxes=8 ** len(blocks), above_m=5.0) == 0.0


@settings(max_examples=15)
@given(
    hall=st.integers(12, 25),
    wide=st.integers(20, 45),
    deep=st.integers(15, 40),
    opening=st.tuples(st.integers(1, 9), st.integers(8, 16)),
    at=st.sampled_from(["hall", "kitchen"]),
)
def test_no_front_of_two_rooms_with_a_thin_wall_between_is_below_it(hall, wide, deep, opening, at):
    """A kitchen by a hall, joined by an opening in a wall of a millimetre."""
    high, east, north = hall / 10, wide / 10, deep / 10
    west = min(opening[0] / 10, east - 1.0)
    gap = min(west + opening[1] / 10, east - 0.1)
    top = high + 0.001
    shape = poly(
        (0, 0), (8, 0), (8, high), (gap, high), (gap, top), (east, top), (east, top + north),
        (0, top + north), (0, top), (west, top), (west, high), (0, high),
    )  # fmt: skip
    way = ((8, 0.1), (8, 0.9)) if at == "hall" else ((0.1, top + north), (1.0, top + north))
    here = ground(place([Room("k", shape)], [outside("out", way, "k")]))
    fronts = plain_fronts(here)
    least = min(one.equivalent_m for one in [*fronts, levelled_front(here, fronts)])
    assert 0 < edges_at_once_m(here, 1.0, boxes=4000) <= least * (1 + 1e-6)
