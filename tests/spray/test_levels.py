"""Levels one band's depth apart: a hall by hand, and laws of the levels of any front."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import AWKWARD, outside, place, poly
from tests.spray.grounds import along, bare, ground
from tests.spray.hand_floors import L_ROOM, hall

from farwall.floor.nouns import Room
from farwall.spray.front import front_of
from farwall.spray.fronts import levelled_front, plain_fronts
from farwall.spray.levels import band_levels, ground_half


def test_levels_of_a_hall_by_hand():
    """By hand: 8 m x 2 m in bands of 1 m: eight bands, a level every 2 m2; the first may be less
    by the half of a place (0.2 m2), which then is in the last."""
    here = ground(hall(8, 2))
    found = band_levels(here, bare(here, -along(here)), 1.0)
    assert len(found.sprayed_m2) == 7
    assert np.diff(found.sprayed_m2) == pytest.approx([2.0] * 6, rel=0.01)
    assert found.sprayed_m2[0] == pytest.approx(2.0, abs=0.2)
    assert found.depth_m == pytest.approx(1.0, rel=0.01)


@pytest.mark.parametrize(("length", "bands"), [(4.0, 4), (4.2, 5), (4.5, 5), (5.0, 5)])
def test_bands_are_as_few_as_can_be_and_even_by_hand(length, bands):
    """By hand: 4.5 m in bands of at most 1 m are five of 0.9 m; 4.2 m five of 0.84 m. A twentieth
    of a band may be joined to the last where that spares one, and no more."""
    here = ground(hall(length, 2))
    found = band_levels(here, bare(here, -along(here)), 1.0)
    assert len(found.sprayed_m2) + 1 == bands
    assert np.diff(found.sprayed_m2) == pytest.approx(2 * length / bands, rel=0.06)
    assert found.depth_m == pytest.approx(length / bands, rel=0.06)


def test_one_band_has_no_level():
    here = ground(hall(0.9, 2))
    assert band_levels(here, bare(here, -along(here)), 1.0).sprayed_m2 == ()


def test_the_slow_side_sets_the_pace_by_hand():
    """By hand: a hall whose far half is 0.8 m wide and whose near half 4 m: bands of 0.8 m2, then
    of 4 m2."""
    room = Room(
        "room", poly((0, 0), (4, 0), (4, 1.6), (8, 1.6), (8, 2.4), (4, 2.4), (4, 4), (0, 4))
    )
    here = ground(place([room], [outside("wide", ((0, 0), (0, 4)), "room")]))
    found = band_levels(here, bare(here, -along(here)), 1.0)
    steps = np.diff([0.0, *found.sprayed_m2])
    assert len(steps) == 7
    assert steps[1:3] == pytest.approx([0.8, 0.8], abs=0.02)
    assert steps[-2:] == pytest.approx([4.0, 4.0], abs=0.05)


def test_half_a_place_by_hand():
    """By hand: a front of 2 m crosses a place of 0.2 m with 0.4 m2: half of it is 0.2 m2."""
    assert ground_half(ground(hall(8, 2)), np.array([2.0])) == pytest.approx([0.2])


@pytest.mark.parametrize("name", [*AWKWARD, "ell"])
@pytest.mark.parametrize("band_m", [0.6, 1.0])
def test_levels_rise_and_leave_no_band_without_floor(name, band_m):
    here = ground({"ell": L_ROOM, **AWKWARD}[name], band_m=band_m)
    plain = plain_fronts(here)
    for front in [*plain, levelled_front(here, plain)]:
        found = band_levels(here, front, band_m)
        assert (np.diff([0.0, *found.sprayed_m2]) > 0.05).all()
        assert found.sprayed_m2[-1] < here.lattice.floor.area
        assert 0 < found.depth_m <= band_m


@pytest.mark.parametrize("name", [*AWKWARD, "ell"])
def test_no_band_takes_less_time_than_the_front_gives_it(name):
    """No band is larger than E times its depth, by more than half a place at its two ends: the
    levels are those of the front that was measured."""
    here = ground({"ell": L_ROOM, **AWKWARD}[name])
    for front in plain_fronts(here):
        found = band_levels(here, front, 1.0)
        most = front.equivalent_m * (1.0 + here.lattice.grid.step_m)
        assert np.diff([0.0, *found.sprayed_m2]).max() <= most


@settings(max_examples=15)
@given(st.floats(1.5, 9.0), st.floats(1.2, 5.0), st.sampled_from([0.6, 0.8, 1.0, 1.2]))
def test_a_hall_has_as_many_bands_as_its_length_holds(length, width, band_m):
    here = ground(hall(length, width), band_m=band_m)
    found = band_levels(here, bare(here, -along(here)), band_m)
    bands = len(found.sprayed_m2) + 1
    assert np.ceil(length / band_m - 0.06) <= bands <= np.ceil(length / band_m + 0.02)


@settings(max_examples=10)
@given(st.floats(3.0, 9.0), st.floats(0.5, 0.95))
def test_shallower_bands_are_no_fewer(length, share):
    here = ground(hall(length, 2))
    front = front_of(here, -here.out_m, "rings")
    deep, shallow = (band_levels(here, front, depth) for depth in (1.0, share))
    assert len(shallow.sprayed_m2) >= len(deep.sprayed_m2)
