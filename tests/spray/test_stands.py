"""Until when each stand is tied to the way out."""

from __future__ import annotations

import numpy as np
from hypothesis import given
from hypothesis import strategies as st
from tests.shapes import AWKWARD, L_HALL
from tests.spray.grounds import ground

from farwall.spray.stands import Stands, flooded


def row_of(count, at_exit=(0,)):
    """Stands in a row, each beside the next; the first is at the way out."""
    places = np.arange(count)
    near = np.stack([np.maximum(places - 1, 0), np.minimum(places + 1, count - 1)], axis=1)
    return Stands(places, places[:, None], near, np.isin(places, at_exit))


def as_told(stands, wanted, step):
    """The same by the definition, exact: the least on each way, all ways of ever more moves."""
    given_ = np.where(stands.at_exit, wanted, -np.inf)
    while True:
        moved = given_[stands.near].max(axis=1) - step
        better = np.maximum(given_, np.minimum(wanted, moved))
        if (better == given_).all():
            return given_
        given_ = better


def test_a_row_by_hand():
    """From the exit 5: 4 as wished; 3.5 - 0.5 for 9; 1 as wished; 0.5 and 0 behind it."""
    found = flooded(row_of(6), np.array([5.0, 4.0, 9.0, 1.0, 7.0, 7.0]), 0.5)
    assert found.tolist() == [5.0, 4.0, 3.5, 1.0, 0.5, 0.0]


def test_without_a_way_out_nothing_is_tied():
    found = flooded(row_of(3, at_exit=()), np.array([1.0, 2.0, 3.0]), 0.1)
    assert np.isneginf(found).all()


@given(st.data())
def test_on_awkward_floors_it_is_the_best_of_all_ways_to_the_last_digit(data):
    place = data.draw(st.sampled_from(sorted(AWKWARD)))
    stands = ground(AWKWARD[place]).stands
    seed = data.draw(st.integers(0, 2**32 - 1))
    step = data.draw(st.sampled_from([0.0, 0.01, 0.3]))
    wanted = np.random.default_rng(seed).normal(size=len(stands.places))
    assert (flooded(stands, wanted, step) == as_told(stands, wanted, step)).all()


def test_tables_that_lie_row_by_row_say_the_same():
    field = ground(L_HALL)
    late = np.random.default_rng(1).normal(size=len(field.lattice))
    assert (late[field.in_reach].max(axis=1) == late[field.reach_rows].max(axis=0)).all()
    near = field.lattice.near
    assert (late[near].min(axis=1) == late[field.lattice.near_rows].min(axis=0)).all()


@given(st.data())
def test_a_sweep_with_hollows_is_told_to_the_last_digit(data):
    """As sweeps are: nearly all stands rise to the way out, some lie in hollows."""
    field = ground(AWKWARD[data.draw(st.sampled_from(sorted(AWKWARD)))])
    rng = np.random.default_rng(data.draw(st.integers(0, 2**32 - 1)))
    late = -field.out_m[field.stands.places]
    spoilt = rng.random(len(late)) < data.draw(st.sampled_from([0.0, 0.02, 0.2]))
    wanted = np.where(spoilt, late - rng.random(len(late)), late)
    for step in (0.0, 1e-4, 0.05):
        assert (flooded(field.stands, wanted, step) == as_told(field.stands, wanted, step)).all()
