"""A house in a mirror or turned keeps its area and its fronts: a law of every drawn house.

Measured on 91 fields of 54 houses. In a mirror and turned by a right angle area, front and verdict
were the same to the last told digit in all of them. Not the same, and so not held here: the bound
by growth, which asks every few places (up to 5 %), and what the climbs of the directions of passes
end with: ages in a mirror within 0.1 % in 84 of 100 fields, but up to 21 % off, litres up to 4 %,
another number of bands in 2 of 68. At other angles fronts moved by up to 5 %, ages by up to 47 %.
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
def test_a_mirror_or_a_quarter_turn_changes_neither_fields_nor_fronts(seed, move):
    of = small_house(seed)
    here, there = by_rooms(plan_job(of)), by_rooms(plan_job(moved_job(of, RIGHT_ANGLES[move])))
    assert set(there) == set(here)
    for rooms, field in here.items():
        assert there[rooms].area_m2 == pytest.approx(field.area_m2, abs=2e-3)
        assert there[rooms].equivalent_front_m == pytest.approx(
            field.equivalent_front_m, abs=1.1e-3
        )
        assert there[rooms].bound_m == pytest.approx(field.bound_m, rel=0.1)
        assert litres(there[rooms]) == pytest.approx(litres(field), rel=0.1)


@settings(max_examples=5)
@given(st.integers(0, 10**6), st.floats(1.0, 89.0))
def test_at_any_other_angle_area_and_front_move_little(seed, degrees):
    """Fronts by 10 % at most (5 % seen), where the house is cut into the same fields."""
    of = small_house(seed)
    there = by_rooms(plan_job(moved_job(of, lambda shape: rotate(shape, degrees, origin=(0, 0)))))
    here = by_rooms(plan_job(of))
    for rooms in set(here) & set(there):
        field = here[rooms]
        assert there[rooms].area_m2 == pytest.approx(field.area_m2, rel=0.001)
        assert there[rooms].equivalent_front_m == pytest.approx(field.equivalent_front_m, rel=0.1)
