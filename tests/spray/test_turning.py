"""Ways round: against all 2^n choices, and what the best way round can never be."""

from __future__ import annotations

from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import AWKWARD
from tests.spray.hand_floors import ROUND, hall
from tests.spray.sweeping import oldest_min, swept

from farwall.spray import turning
from farwall.spray.sweep import turnable
from farwall.spray.turning import SAME_AGE_MIN, Turnable, best_ways


@st.composite
def turnables(draw, most=8):
    """Passes of any length along any walks; neighbours meet, and some that lie further apart."""
    count = draw(st.integers(1, most))
    minutes = st.floats(0.1, 3.0)
    table = st.lists(st.lists(minutes, min_size=2, max_size=2), min_size=2, max_size=2)
    pairs = [(i, i + 1) for i in range(count - 1)]
    far = [(i, j) for i in range(count) for j in range(i + 2, count)]
    pairs += draw(st.lists(st.sampled_from(far), unique=True, max_size=4)) if far else []
    turns = tuple(draw(st.booleans()) or k % 3 > 0 for k in range(count))
    return Turnable(
        tuple(draw(minutes) for _ in range(count)),
        tuple(np.array(draw(table)) for _ in range(count)),
        turns,
        {pair: np.array(draw(table)) - 1.5 for pair in pairs},
    )


def choices(passes):
    return product(*((0, 1) if turns else (0,) for turns in passes.turns))


@settings(max_examples=500)
@given(turnables())
def test_no_way_round_is_younger_and_none_as_young_walks_less(passes):
    found = best_ways(passes, [(0,) * len(passes.minutes)])
    assert found.exact
    age, walked = passes.told(found.ways)
    told = [passes.told(ways) for ways in choices(passes)]
    least = min(age for age, _ in told)
    assert age <= least + SAME_AGE_MIN + 1e-6
    assert walked <= min(w for a, w in told if a <= least + SAME_AGE_MIN - 1e-6) + 1e-6


@settings(max_examples=100)
@given(turnables())
def test_where_it_begins_does_not_matter(passes):
    every = list(choices(passes))
    ages = {
        round(passes.told(best_ways(passes, [known]).ways)[0], 6) for known in (every[0], every[-1])
    }
    assert max(ages) - min(ages) <= SAME_AGE_MIN + 1e-6


@pytest.mark.parametrize("name", AWKWARD)
def test_a_swept_floor_is_turned_the_best_way_of_all(name):
    """The numbers that are searched are those of the sweep, and each way round is worth trying."""
    found = swept(AWKWARD[name])
    passes = turnable(found, ROUND)
    as_it_is = (0,) * len(found.passes)
    assert passes.told(as_it_is)[0] == pytest.approx(oldest_min(found), abs=1e-6)
    if len(found.passes) <= 12:
        ages = [passes.told(ways)[0] for ways in choices(passes)]
        assert oldest_min(found) <= min(ages) + SAME_AGE_MIN + 1e-6


def test_a_hall_is_swept_one_way_by_hand():
    """By hand: there and back the first place of an edge waits two bands, one way it waits one."""
    found = swept(hall(8, 3))
    ways = {path[0][1] < path[-1][1] for path in (each.path for each in found.passes[:-1])}
    assert len(ways) == 1


def test_too_many_choices_are_said_to_be_too_many(monkeypatch):
    monkeypatch.setattr(turning, "MOST_LABELS", 1)
    rng = np.random.default_rng(5)
    passes = Turnable(
        (1.0,) * 6,
        tuple(rng.random((2, 2)) for _ in range(6)),
        (True,) * 6,
        {(i, j): rng.random((2, 2)) for i in range(6) for j in range(i + 1, 6)},
    )
    assert not best_ways(passes, [(0,) * 6]).exact
