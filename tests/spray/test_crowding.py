"""Bounds by floor that crowds about a place: by hand on corridors, below every sweep made."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import AWKWARD, box, outside, place, poly
from tests.spray.grounds import bare, field, ground, world_of
from tests.spray.hand_floors import L_ROOM, hall
from tests.strategies.houses import houses

from farwall.floor.nouns import Room
from farwall.spray.bound import strongest_bound_m
from farwall.spray.crowding import (
    about_any_m,
    crowding,
    crowding_m,
    cut_off_m,
    exit_last_m,
    span_m,
)
from farwall.spray.front import front_of, kept_walkable
from farwall.spray.fronts import levelled_front, plain_fronts, shortest_known

WIDE_M = 1.2


def corridor(wide_m=WIDE_M, arm_m=8.0):
    """Two arms, left in the middle of a side."""
    return place(
        [Room("hall", box(-arm_m, 0, 2 * arm_m, wide_m))],
        [outside("end", ((-0.4, 0), (0.4, 0)), "hall")],
    )


def tee(wide_m=WIDE_M, arm_m=8.0, stem_m=5.0):
    """Two arms and a stem, left at its foot."""
    half = wide_m / 2
    shape = poly(
        (-arm_m, 0), (-half, 0), (-half, -stem_m), (half, -stem_m), (half, 0), (arm_m, 0),
        (arm_m, wide_m), (-arm_m, wide_m),
    )  # fmt: skip
    return place([Room("tee", shape)], [outside("foot", ((-0.4, -stem_m), (0.4, -stem_m)), "tee")])


@pytest.mark.parametrize(
    ("walk_m", "depth_m", "span"),
    [
        (0.0, 1.0, 1.0), (0.5, 1.0, 1.0), (1.0, 1.0, 1.0), (1.05, 1.0, 1.05), (1.2, 1.0, 2.0),
        (2.0, 1.0, 2.0), (2.2, 1.0, 2.2), (2.3, 1.0, 3.0), (12.3, 1.0, 12.3), (0.7, 0.5, 1.0),
    ],
)  # fmt: skip
def test_what_a_walk_lets_a_change_by_hand(walk_m, depth_m, span):
    """By hand: hops of 1 to 1.1 depths count their length, shorter ones a whole depth."""
    assert span_m(np.array([walk_m]), depth_m)[0] == pytest.approx(span)


@given(st.floats(0, 30), st.floats(0, 30), st.floats(0.4, 1.5))
def test_a_longer_walk_never_lets_a_change_by_less(one, other, depth_m):
    short, long = span_m(np.array(sorted((one, other))), depth_m)
    assert short <= long + 1e-9
    assert long >= max(one, other) - 1e-9


@given(st.integers(1, 40), st.integers(0, 2**32 - 1))
def test_crowding_counted_place_by_place(count, seed):
    """Sorted one by one, without the steps of a centimetre, which make it at most 1 % less."""
    dice = np.random.default_rng(seed)
    walk_m, area_m2 = dice.uniform(0.5, 6, (1, count)), dice.uniform(0, 1, count)
    order = np.argsort(walk_m[0])
    floor = np.cumsum(area_m2[order]) / span_m(walk_m[0][order], 1.0)
    found = crowding(walk_m, area_m2, 1.0)[0]
    assert found <= floor.max() + 1e-9
    # a walk of 1.1 depths that is rounded up may fall out of a hop: it is counted at the next
    assert found >= 0.5 * floor.max()


def test_two_arms_left_in_their_middle_by_hand():
    """By hand: within 8 m of the door lie both arms, 2 x 8 m x 1.2 m: 2.4 m. Half a step and half
    a diagonal beyond, and the corners that lie farther, are left out."""
    found = exit_last_m(ground(corridor()), 1.0, finer=True)
    assert 0.93 * 2.4 <= found <= 2.4


def test_two_arms_behind_a_stem_by_hand():
    """By hand: of a T of corridors 1.2 m wide the last body that leaves the crossing leaves both
    arms sprayed but for 0.9 m: about 2.4 m, while growth about the exit gives hardly more than
    (2 x 8 + 5) x 1.2 / 13 = 1.94 m."""
    here = ground(tee())
    assert exit_last_m(here, 1.0) <= 1.94
    assert 2.0 <= cut_off_m(here, 1.0) <= 2.4


def test_four_arms_crowd_about_their_crossing_by_hand():
    """By hand: within r of the crossing lie about 4 r x 1.2 m, sprayed within 2 r E: 2.4 m."""
    shape = poly(
        (-6, 0), (-0.6, 0), (-0.6, -6), (0.6, -6), (0.6, 0), (6, 0), (6, 1.2), (0.6, 1.2),
        (0.6, 7.2), (-0.6, 7.2), (-0.6, 1.2), (-6, 1.2),
    )  # fmt: skip
    here = ground(place([Room("cross", shape)], [outside("end", ((-0.4, -6), (0.4, -6)), "cross")]))
    assert 2.1 <= about_any_m(here, 1.0) <= 2.4
    assert 2.4 < cut_off_m(here, 1.0) <= 3.6, "three arms beyond the fourth"


def test_a_straight_hall_is_bound_by_no_more_than_its_width():
    assert crowding_m(ground(hall(8, 2)), 1.0) <= 2.0


@pytest.mark.parametrize("name", [*AWKWARD, "ell", "tee", "corridor"])
@pytest.mark.parametrize("band_m", [0.6, 1.0])
def test_no_front_undercuts_the_strongest_bound(name, band_m):
    of = {"ell": L_ROOM, "tee": tee(2.0, 4.0), "corridor": corridor(), **AWKWARD}[name]
    here = ground(of, band_m=band_m)
    plain = plain_fronts(here)
    bound_m = strongest_bound_m(here, band_m)
    for front in [*plain, levelled_front(here, plain)]:
        assert front.equivalent_m >= bound_m * (1 - 1e-6), front.name


@settings(max_examples=12)
@given(houses, st.sampled_from([0.6, 0.9, 1.2]), st.integers(0, 2**32 - 1))
def test_no_sweep_of_any_house_undercuts_the_strongest_bound(job, band_m, seed):
    """Plain and levelled ones, and smooth ones by chance made walkable."""
    of = world_of(job)
    out = next(seam for seam in of.seams if seam.is_way_out)
    here = field(of, out.a, by=out.id, band_m=band_m).ground
    dice = np.random.default_rng(seed)
    x, y = here.lattice.xy.T
    wish = [
        np.sin(x * dice.normal() + y * dice.normal()) - dice.uniform() * here.out_m
        for _ in range(3)
    ]
    plain = plain_fronts(here)
    made = [*plain, levelled_front(here, plain), *(front_of(here, late, "wish") for late in wish)]
    bound_m = strongest_bound_m(here, band_m)
    assert bound_m > 0
    for front in made:
        assert front.equivalent_m >= bound_m * (1 - 1e-6), front.name


def test_the_long_search_finds_no_front_below_the_bound_and_none_longer_than_the_short_one():
    here = ground(tee(2.0, 4.0))
    plain = plain_fronts(here)
    found = shortest_known(here, plain)
    assert strongest_bound_m(here, 1.0) <= found.equivalent_m
    assert found.equivalent_m <= min(front.equivalent_m for front in plain)


def test_a_sweep_that_does_not_end_at_the_exit_may_undercut_the_bound():
    """What is assumed is needed: from end to end the corridor has a front of its width, 1.2 m, but
    whoever sprays the last of it stands at its far end."""
    here = ground(corridor())
    late = here.lattice.xy[:, 0]
    assert bare(here, late).equivalent_m == pytest.approx(WIDE_M, rel=0.01)
    assert exit_last_m(here, 1.0) > 1.5 * WIDE_M
    assert kept_walkable(here, late).max() < late.max() - 1
