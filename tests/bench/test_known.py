"""The shortest front of a planned field: the same floor and the same way out as the plan's."""

from __future__ import annotations

import pytest

from farwall.bench.houses import houses
from farwall.bench.known import best_known
from farwall.bench.nouns import shape_case
from farwall.bench.shapes import SHAPES
from farwall.job.plan_job import plan_job


@pytest.mark.parametrize("name", ["bath with tub", "straight corridor, middle", "thin wedge"])
def test_it_is_at_most_the_plans_and_not_below_the_bound(name):
    case = shape_case(SHAPES[name])
    plan = plan_job(case.job, thorough=True)
    (known,) = best_known(case.job, plan.fields)
    assert plan.fields[0].bound_m <= known.bound_m
    assert known.bound_m * (1 - 1e-6) <= known.front_m <= plan.fields[0].equivalent_front_m


@pytest.mark.parametrize("number", [0, 15])
def test_every_field_of_a_house_is_found_again(monkeypatch, number):
    """The grounds that are searched are as large as the fields of the plan, but for the hairs at
    their walls, and have places beside the way out. House 16 has a piece in which no band's middle
    lies."""
    searched = []

    def at_once(ground, plain, *, enough_m, wanted_m=None):
        if wanted_m is None:  # the first search of two
            searched.append(ground)
        return min(plain, key=lambda front: front.equivalent_m)

    monkeypatch.setattr("farwall.bench.known.shortest_known", at_once)
    monkeypatch.setattr("farwall.bench.known.strides_m", lambda *_, above_m: above_m)
    monkeypatch.setattr("farwall.bench.known.solved_m", lambda *_, above_m, first_m: above_m)
    monkeypatch.setattr("farwall.bench.known.LONG", 2000)
    case = houses()[number]
    plan = plan_job(case.job)
    fields = [field for field in plan.fields if field.coat == plan.fields[0].coat]
    found = best_known(case.job, fields)
    assert len(found) == len(fields) > 1
    for field, ground in zip(fields, searched, strict=True):
        assert ground.lattice.floor.area == pytest.approx(field.area_m2, abs=0.05)
        assert ground.at_exit.any()


def test_the_solver_is_asked_where_a_front_stays_too_far_above_its_bound(monkeypatch):
    """First is asked whether 1/1.35 of what is known can be ruled out; the answer is told."""
    asked = []

    def solved(ground, band_m, *, above_m, first_m):
        asked.append((above_m, first_m))
        return first_m

    def long_way(ground, plain, *, enough_m, wanted_m=None):
        return max(plain, key=lambda front: front.equivalent_m)

    monkeypatch.setattr("farwall.bench.known.shortest_known", long_way)
    monkeypatch.setattr("farwall.bench.known.strides_m", lambda *_, above_m: above_m)
    monkeypatch.setattr("farwall.bench.known.solved_m", solved)
    case = shape_case(SHAPES["bath with tub"])
    plan = plan_job(case.job)
    (known,) = best_known(case.job, plan.fields)
    ((above_m, first_m),) = asked
    assert plan.fields[0].bound_m <= above_m < first_m
    assert first_m - 0.001 <= known.bound_m <= first_m
