"""Easing: sweeps changed by linear programs, never longer, walkable, and telling all floor."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import AWKWARD
from tests.spray.grounds import along, ground
from tests.spray.hand_floors import hall

from farwall.spray.easing import _shares, eased
from farwall.spray.front import (
    equivalent_front_m,
    front_of,
    kept_walkable,
    spans_of_places,
    sprayed_before,
)
from farwall.spray.fronts import plain_fronts, plainest
from farwall.spray.stands import ways_out

HALL = ground(hall(8, 2))


def test_a_bent_sweep_of_a_hall_is_eased_to_nearly_straight_by_hand():
    """By hand: straight toward the end wall the front is 2 m, and none is shorter; bent by a wave
    it is several times as long, and a tenth of the 2 m at most is left after easing."""
    wave = 0.8 * np.sin(HALL.lattice.xy[:, 0] * 2.0) * HALL.lattice.xy[:, 1]
    ways = [front_of(HALL, sign * along(HALL) + wave, "bent") for sign in (1, -1)]
    bent = min(ways, key=lambda front: front.equivalent_m)
    found = eased(HALL, bent)
    assert bent.equivalent_m > 5
    assert 2.0 - 1e-6 <= found.equivalent_m < 2.2


@pytest.mark.parametrize("name", sorted(AWKWARD)[:4])
def test_an_eased_sweep_is_never_longer_and_a_body_gets_out(name):
    here = ground(AWKWARD[name])
    begun = plainest(plain_fronts(here))
    found = eased(here, begun, rounds=6)
    assert found.equivalent_m <= begun.equivalent_m
    assert found.equivalent_m == pytest.approx(equivalent_front_m(found.before_m2, here))
    kept = kept_walkable(here, found.late)
    assert np.abs(kept - found.late).max() <= 1e-3 * np.ptp(found.late)
    assert found.before_m2.min() >= -1e-9
    assert found.before_m2.max() <= here.lattice.floor.area + 1e-9


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 2**32 - 1))
def test_small_changes_change_the_floor_before_as_the_shares_tell(seed):
    """Beside the sum over all places one by one, each sprayed over a stretch that stays as long."""
    rng = np.random.default_rng(seed)
    lattice = HALL.lattice
    late = sprayed_before(lattice, along(HALL) + 0.3 * rng.random() * lattice.xy[:, 1])
    low, high, _ = spans_of_places(lattice, late)

    def before(moved):
        """The floor sprayed before each place when places and stretches move along together."""
        done = (late + moved)[:, None] - (low + moved)[None, :]
        share = np.clip(done / (high - low), 0.0, 1.0)
        return share @ lattice.area_m2

    change = 1e-7 * rng.normal(size=len(late))
    share = _shares(HALL, late)
    told = np.asarray(share.sum(axis=1)).ravel() * change - share @ change
    assert before(np.zeros(len(late))) == pytest.approx(sprayed_before(lattice, late), abs=1e-6)
    assert before(change) - before(np.zeros(len(late))) == pytest.approx(told, abs=1e-8)
    assert np.abs(told).max() > 1e-7


def test_ways_out_lead_from_stand_to_stand_and_end_at_the_way_out():
    stands = HALL.stands
    dry = along(HALL)[stands.under_rows].min(axis=0)
    ways = ways_out(stands, dry)
    passed = ways.passed(np.array([0]))
    assert 0 in passed
    assert stands.at_exit[passed].any()
    here = 0
    for _ in range(len(stands.places)):
        assert ways.until[here] <= ways.until[ways.next_one[here]] + 1e-9
        here = ways.next_one[here]
    assert stands.at_exit[here]
