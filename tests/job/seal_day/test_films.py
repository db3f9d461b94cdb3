"""The wet edge of a sealer by type, sheet, slab and air."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies.air import conditions

from farwall.air.conditions import Conditions
from farwall.evidence import Rank
from farwall.facts.sealer import Sealer
from farwall.job.seal_day.films import BY_TYPE, UNKNOWN, film_of, has_solvent, pace, wet_edge

MILD = Conditions()


@pytest.mark.parametrize("kind", BY_TYPE)
def test_on_a_mild_day_the_edge_is_that_of_its_type_and_a_guess(kind):
    found = wet_edge(Sealer(type=kind), MILD)
    assert (found.low, found.likely, found.high) == BY_TYPE[kind].wet_edge_min
    assert found.rank is Rank.GUESS


def test_a_sealer_nobody_named_has_the_shortest_edge_and_may_hold_all_that_hurts():
    assert min(one.wet_edge_min[0] for one in BY_TYPE.values()) == UNKNOWN.wet_edge_min[0]
    assert has_solvent(Sealer())
    assert film_of(Sealer()).sensitisers


def test_solvent_goes_off_twice_as_fast_over_a_slab_ten_kelvin_warmer():
    """By hand: 4 min on a mild day, 2 min at 31 °C, the same air moving."""
    warm = Conditions(surface_c=31.0)
    assert wet_edge(Sealer(type="solvent acrylic"), warm).low == pytest.approx(2.0)


def test_the_sheet_wins_and_is_only_ever_shortened():
    told = Sealer(type="water acrylic", wet_edge_min=15)
    assert wet_edge(told, MILD).low == 15
    assert wet_edge(told, MILD).rank is Rank.MEASURED
    assert wet_edge(told, Conditions(13, 13, 80, 0.1)).low == 15
    assert wet_edge(told, Conditions(29, 32, 30, 0.4)).low < 8


def test_the_sheet_says_whether_there_is_solvent():
    assert has_solvent(Sealer(type="solvent acrylic"))
    assert not has_solvent(Sealer(type="solvent acrylic", solvent=False))
    assert has_solvent(Sealer(type="penetrating", solvent=True))


@given(conditions, st.sampled_from([*BY_TYPE, None]))
def test_a_pace_stays_within_its_bounds_and_ends_in_order(now, kind):
    sealer = Sealer(type=kind)
    assert 0.7 <= pace(sealer, now) <= 4
    found = wet_edge(sealer, now)
    assert 0 < found.low <= found.likely <= found.high
