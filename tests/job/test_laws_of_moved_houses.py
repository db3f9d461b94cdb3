"""A house in a mirror or turned keeps its figures: a law of every drawn house.

Measured on 14 houses, 23 fields: in a mirror and turned by a right angle area, front, litres,
bands and verdicts were the same to the last told digit, ages to 4e-4; only the bound by growth,
which asks every few places, moved by up to 4 %. Turned by 17 and 40 degrees fronts moved by up
to 0.5 % and litres by up to 3.4 %; ages by up to 10 %, for corners are kept to 0.1 mm, and one
field of 23 came out with another number of bands.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.affinity import rotate, scale
from tests.spray.hand_floors import moved
from tests.strategies.houses import house

from farwall.job.plan_job import plan_job
from farwall.readers.job_json import job_from

RIGHT_ANGLES = {
    "mirrored": lambda shape: scale(shape, -1, 1, origin=(0, 0)),
    "quarter-turned": lambda shape: rotate(shape, 90, origin=(0, 0)),
}


def small_house(seed):
    """The first house from `seed` on with two or three rooms, one coat, no saw cut."""
    while True:
        told = house(seed)
        if 2 <= len(told["floor"]["rooms"]) <= 3 and not told["floor"]["saw_cuts"]:
            told["coats"] = told["coats"][:1]
            return job_from(told, about="house")
        seed += 1


def moved_job(of, move):
    class Here:
        floor, exits = of.floor, of.exits

    return replace(of, floor=moved(Here, move).floor)


def by_rooms(plan):
    return {field.rooms: field for field in plan.fields}


def litres(field):
    return sum(band.litres for band in field.bands)


@settings(max_examples=6)
@given(st.integers(0, 10**6), st.sampled_from(sorted(RIGHT_ANGLES)))
def test_a_mirror_or_a_quarter_turn_changes_no_figure(seed, move):
    """But the bound by growth: by 5 % at most."""
    of = small_house(seed)
    here, there = by_rooms(plan_job(of)), by_rooms(plan_job(moved_job(of, RIGHT_ANGLES[move])))
    assert set(there) == set(here)
    for rooms, field in here.items():
        other = there[rooms]
        assert (other.verdict, len(other.bands)) == (field.verdict, len(field.bands))
        assert other.area_m2 == pytest.approx(field.area_m2, abs=2e-3)
        assert other.equivalent_front_m == pytest.approx(field.equivalent_front_m, abs=1.1e-3)
        assert litres(other) == pytest.approx(litres(field), rel=1e-3)
        assert other.peak_age_min == pytest.approx(field.peak_age_min, rel=0.01, abs=0.02)
        assert other.bound_m == pytest.approx(field.bound_m, rel=0.05)


@settings(max_examples=5)
@given(st.integers(0, 10**6), st.floats(1.0, 89.0))
def test_at_any_other_angle_area_and_front_move_by_3_percent_at_most(seed, degrees):
    of = small_house(seed)
    there = by_rooms(plan_job(moved_job(of, lambda shape: rotate(shape, degrees, origin=(0, 0)))))
    here = by_rooms(plan_job(of))
    if set(there) != set(here):
        return  # a field at the edge of its budget may be cut otherwise
    for rooms, field in here.items():
        assert there[rooms].area_m2 == pytest.approx(field.area_m2, rel=0.001)
        assert there[rooms].equivalent_front_m == pytest.approx(field.equivalent_front_m, rel=0.03)
