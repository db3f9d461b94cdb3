"""The replay goes from event to event; here the same days are walked in small steps.

Whatever a step finds, the replay must have found; what the replay finds by more than a step
can hide, the steps must find too.
"""

from __future__ import annotations

from copy import deepcopy
from itertools import pairwise

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.spray.hand_day import shape_of
from tests.spray.hand_plans import PLANS
from tests.spray.spoil import detour

from farwall.spray.check import check_plan

STEP_M = 0.02
BASES = {
    name: PLANS[name]()
    for name in (
        "a room with an island", "two rooms with a door between", "a helper inside", "an l room",
    )
}  # fmt: skip


def steps(plan):
    """Everybody's places every two centimetres: rows of x, y, minute."""
    rows = []
    for field in plan["fields"]:
        for piece in field["bands"] + field["walks"]:
            for (x0, y0, t0), (x1, y1, t1) in pairwise(piece["path"]):
                count = max(2, int(np.hypot(x1 - x0, y1 - y0) / STEP_M) + 2)
                share = np.linspace(0, 1, count)[:, None]
                ends = np.array([[x0, y0, t0], [x1, y1, t1]])
                rows.append(ends[0] + share * (ends[1] - ends[0]))
    return np.vstack(rows)


def least_gap_to_wet(plan):
    """The least distance of anybody's centre from a band begun by then. One coat only."""
    rows = steps(plan)
    places = shapely.points(rows[:, :2])
    least = np.inf
    for field in plan["fields"]:
        for band in field["bands"]:
            wet = rows[:, 2] >= band["path"][0][2] + 1e-6
            if wet.any():
                least = min(least, shapely.distance(shape_of(band), places[wet]).min())
    return least


def least_gap_to_walls(plan):
    """The least distance of anybody's centre from an edge of a room that is no opening."""
    inputs = plan["inputs"]
    edges = shapely.union_all([shape_of(room).boundary for room in inputs["floor"]["rooms"]])
    ways = [
        shapely.LineString(o["line"]).buffer(1e-4, cap_style="flat") for o in inputs["openings"]
    ]
    solid = [shape_of(fixture) for fixture in inputs["fixtures"]]
    walls = shapely.union_all([edges.difference(shapely.union_all(ways)), *solid])
    return shapely.distance(walls, shapely.points(steps(plan)[:, :2])).min()


@pytest.mark.parametrize("name", BASES)
def test_no_step_of_a_good_day_is_too_near(name):
    assert least_gap_to_wet(BASES[name]) >= 0.24
    assert least_gap_to_walls(BASES[name]) >= 0.24


@given(
    st.sampled_from(sorted(BASES)), st.integers(0, 30), st.floats(-1.5, 7.0), st.floats(-1.5, 7.0)
)
@settings(max_examples=150)
def test_a_detour_is_told_by_the_replay_just_when_small_steps_see_it(name, which, x, y):
    plan = deepcopy(BASES[name])
    walks = [walk for field in plan["fields"] for walk in field["walks"]]
    detour(walks[which % len(walks)], x, y)
    codes = {fault.code for fault in check_plan(plan)}
    for code, gap in (("trodden", least_gap_to_wet(plan)), ("wall", least_gap_to_walls(plan))):
        if gap < 0.24 - 1e-6:
            assert code in codes
        if code in codes:
            assert gap < 0.24 + STEP_M
