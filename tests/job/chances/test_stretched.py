"""Tanks and clocks of one field on drawn days, by hand."""

from __future__ import annotations

import numpy as np
import pytest

from farwall.job.chances.replay import Course, Edges
from farwall.job.chances.stretched import Factors, Pause, stretched, worst

THREE = Course(
    spray=np.array([2.0, 2.0, 2.0]),
    along=np.array([0.5, 0.5, 0.5]),
    walk=np.array([1.0, 0.1, 0.1]),
    fill=np.array([3.0, 0.0, 0.0]),
    litres=np.array([2.0, 2.0, 2.0]),
    filled_l=np.array([7.0, np.nan, np.nan]),
    away_m=np.array([5.0, 10.0, 20.0]),
)
"""Three bands of 2 min and 2 L, a tank of 7 L filled before the first."""
PAUSE = Pause(fill_min=3.0, walk_min_m=0.05, tank_l=8.0)


def on(**factors):
    plain = dict.fromkeys(("spraying", "walking", "filling", "thirst"), (1.0,))
    every = {name: np.array(value, dtype=float) for name, value in {**plain, **factors}.items()}
    count = max(len(value) for value in every.values())
    every = {name: np.broadcast_to(value, (count,)) for name, value in every.items()}
    return stretched(THREE, Factors(**every), np.zeros(count), PAUSE)


def test_a_field_as_planned_by_hand():
    """By hand: bands of 2 min with 0.1 min between, counted from the first."""
    found = on()
    assert found.start[:, 0].tolist() == pytest.approx([0.0, 2.1, 4.2])
    assert found.left_l.tolist() == pytest.approx([1.0])


def test_a_thirsty_slab_calls_for_a_filling_that_nobody_planned_by_hand():
    """By hand: at 1.2 times 7.2 L are wanted and 7 L there: before the third band 3 min and 20 m
    at 0.05 min a metre, so it begins at 4.2 + 4. The tank of 8 L then gives 2.4."""
    found = on(thirst=(1.0, 1.2))
    assert found.start[2].tolist() == pytest.approx([4.2, 8.2])
    assert found.left_l.tolist() == pytest.approx([1.0, 5.6])


def test_walking_limits_a_band_that_is_sprayed_faster_than_it_is_walked_by_hand():
    """By hand: five times as fast 2 min become 0.4, but the walk along takes 0.5."""
    assert on(spraying=(0.2,)).minutes[:, 0].tolist() == pytest.approx([0.5] * 3)


def test_ages_by_hand():
    """By hand: made at the start of band 1, met at the end of band 2: 4.1 min; the last pair, from
    end to start, 0.1. Held to 8 and to 0.05 min that is 0.5125 and 2."""
    edges = Edges(
        np.array([0, 1]), np.array([1, 2]), np.array([0.0, 1.0]), np.array([1.0, 0.0]),
        np.array([0, 1]),
    )  # fmt: skip
    most, which = worst(edges, on(), np.array([[8.0], [0.05]]))
    assert (most.tolist(), which.tolist()) == (pytest.approx([2.0]), [1])
    most, which = worst(edges, on(), np.array([[8.0], [1.0]]))
    assert (most.tolist(), which.tolist()) == (pytest.approx([4.1 / 8]), [0])
