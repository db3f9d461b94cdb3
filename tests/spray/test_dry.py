"""Dry ground: a straight step is judged without drawing it, and as the drawn ground would."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import AWKWARD
from tests.spray.hand_floors import ROUND, hall, world
from tests.spray.sweeping import sweeper

from farwall.spray.bands import Strip
from farwall.spray.dry import DryGround
from farwall.spray.shortest import ON_M
from farwall.spray.world import KEEP_OFF_M, STAND_OFF_M, mitred

DOUBT_M = 2 * ON_M + 0.002
"""Within so much of an edge the two may differ: drawn arcs have chords, strips are tidied."""


def strip(x0, y0, x1, y1):
    return Strip((("hall", shapely.box(x0, y0, x1, y1)),), 0)


def test_a_step_beside_a_strip_by_hand():
    """By hand: a strip up to x = 3 keeps a body's centre off until 3.2525."""
    dry = DryGround.of(world(hall(8, 2))).without(strip(2, 0, 3, 2))
    assert dry.straight((3.3, 0.5), (6, 1.5))
    assert not dry.straight((3.2, 0.5), (6, 1.5))
    assert not dry.straight((1, 1), (6, 1))
    assert dry.straight((1, 1), (1.7, 1))


def test_a_step_along_a_wall_by_hand():
    """By hand: a body's centre keeps 0.253 m off the wall; outside is ground by the way out."""
    dry = DryGround.of(world(hall(8, 2)))
    assert dry.straight((1, 0.26), (7, 0.26))
    assert not dry.straight((1, 0.24), (7, 0.26))
    assert dry.straight((1, 1), (-1.0, 1))
    assert not dry.straight((7, 1), (9, 1))


def test_the_drawn_ground_by_hand():
    """By hand: 8 m x 2 m less 0.2535 m along the walls, less what a strip of 1 m keeps off."""
    dry = DryGround.of(world(hall(8, 2)))
    hole = dry.shape.area - dry.without(strip(3, 0, 4, 2)).shape.area
    assert hole == pytest.approx((1 + 2 * KEEP_OFF_M) * (2 - 2 * STAND_OFF_M), abs=0.01)


def test_one_more_wet_strip_changes_nothing_before():
    dry = DryGround.of(world(hall(8, 2)))
    first = dry.without(strip(2, 0, 3, 2))
    before = first.shape.area
    second = first.without(strip(3, 0, 4, 2))
    assert first.shape.area == before
    assert second.shape.area < before
    assert not dry.wet


@pytest.mark.parametrize("drawn_between", [False, True])
def test_the_order_of_drawing_changes_nothing(drawn_between):
    """Ground drawn between two strips starts afresh from there."""
    dry = DryGround.of(world(hall(8, 2)))
    both = dry.without(strip(2, 0, 3, 2))
    if drawn_between:
        assert both.shape.area > 0
    both = both.without(strip(3, 0, 4, 2))
    kept = shapely.union_all([strip(2, 0, 3, 2).kept_off, strip(3, 0, 4, 2).kept_off])
    assert both.shape.symmetric_difference(dry.shape.difference(kept)).area < 1e-9


@settings(max_examples=12)
@given(st.sampled_from(sorted(AWKWARD)), st.integers(0, 2**32 - 1), st.data())
def test_a_straight_step_is_judged_as_on_the_drawn_ground(name, seed, data):
    """Random steps, after any number of strips; those that pass within a hair of an edge may be
    judged either way: the ground is asked for a hair wider, and for a hair narrower."""
    laid = sweeper(AWKWARD[name]).laid(ROUND)
    many = data.draw(st.integers(0, len(laid.order)))
    dry = DryGround.of(laid.world)
    for index in laid.order[:many]:
        dry = dry.without(laid.cut.strips[index])
    drawn = shapely.difference(
        laid.world.standing,
        shapely.union_all([laid.cut.strips[i].kept_off for i in laid.order[:many]]),
    )
    assert dry.shape.symmetric_difference(drawn).area < 1e-9
    wide, narrow = mitred(drawn, DOUBT_M), mitred(drawn, -DOUBT_M)
    dice = np.random.default_rng(seed)
    x0, y0, x1, y1 = laid.ground.lattice.floor.bounds
    starts = dice.uniform((x0, y0), (x1, y1), (60, 2))
    ends = starts + dice.normal(0, 0.6, (60, 2))
    judged = [dry.straight(tuple(a), tuple(b)) for a, b in zip(starts, ends, strict=True)]
    lines = shapely.linestrings(np.stack([starts, ends], axis=1))
    assert not (shapely.covers(narrow, lines) & ~np.array(judged)).any()
    assert not (~shapely.covers(wide, lines) & np.array(judged)).any()


def test_a_copy_starts_with_nothing_drawn():
    dry = DryGround.of(world(hall(8, 2)))
    assert dry.shape.area > 0
    assert "shape" not in replace(dry, wet=(strip(2, 0, 3, 2),)).__dict__
