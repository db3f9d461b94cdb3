"""Two sprayers on a field: halves, apart, each with a tank; laws held on many floors."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
import shapely
from tests.shapes import AWKWARD
from tests.spray.hand_floors import LARGE_HALL, ROUND, hall, job, row, world
from tests.spray.sweeping import swept, way_out
from tests.spray.test_schedule import tank

from farwall.errors import Unanswerable
from farwall.facts.job import Crew, Tools
from farwall.facts.plain import plain
from farwall.facts.samples import Sample
from farwall.job.plan_job import plan_job
from farwall.spray.apart import APART_M, least_gap_m
from farwall.spray.check import check_plan, replay_ages
from farwall.spray.crew import crew_of, second_base, time_by_two, time_crew, with_second
from farwall.spray.dry import DryGround
from farwall.spray.halves import halves_of
from farwall.spray.plan_coat import base_point
from farwall.spray.refills import Flow
from farwall.spray.schedule import Day, time_sweep

L_PER_M2 = 0.5
TWO = Crew(sprayers=2)
WITH_HELPER = Crew(sprayers=2, helper=True)
ROW = row(5, 5)


def at_work(place, *, tools=ROUND, helper=False, by=time_by_two):
    of = world(place)
    found = swept(of, tools=tools)
    base = base_point(of, way_out(of))
    day = with_second(Day(0.0, base, 0.0, DryGround.of(of), base), of)
    flow = Flow("one", L_PER_M2, helper, tools, found.wetted_m2 * L_PER_M2)
    return found, *by(found, day, flow, field_id="F")


def test_a_hall_six_metres_wide_is_halved_by_hand():
    """By hand: bands of 6 m² at 3 m² a minute are 2 min for one, and 1 min for two; each edge
    waits for one band and the walk back over half of it, some 2 m."""
    _, done, _ = at_work(hall(8, 6))
    assert {band.sprayer for band in done.bands} == {1, 2}
    areas = [band.polygon.shape.area for band in done.bands]
    assert sum(areas) == pytest.approx(48.0, abs=0.01)
    assert max(areas) - min(areas) < 0.4
    assert done.peak_age_min == pytest.approx(1.0 + 2.24 / 60, abs=0.25)


def test_both_begin_a_band_together_and_are_apart_all_along():
    _, done, _ = at_work(hall(8, 6))
    for one, two in zip(done.bands[::2], done.bands[1::2], strict=True):
        assert (one.sprayer, two.sprayer) == (1, 2)
        assert one.start_min == two.start_min
        assert least_gap_m(one.path, two.path) >= APART_M - 0.005


def test_each_keeps_a_side_of_the_hall():
    _, done, _ = at_work(hall(8, 6))
    for one, two in pairwise(band for band in done.bands if band.sprayer == 1):
        assert abs(one.polygon.shape.centroid.y - two.polygon.shape.centroid.y) < 0.5


def test_a_passage_is_too_narrow_for_two():
    with pytest.raises(Unanswerable, match="room for two"):
        at_work(hall(8, 1.2))
    _, done, after = at_work(hall(8, 1.2), by=time_crew)
    assert {band.sprayer for band in done.bands} == {1}
    assert after.second.at == after.second.base


@pytest.mark.parametrize("helper", [False, True], ids=["alone", "with a helper"])
@pytest.mark.parametrize("tank_l", [40.0, 6.0, 4.0])
def test_neither_tank_is_ever_below_nothing_nor_over_its_size(helper, tank_l):
    _, done, after = at_work(hall(9, 5), tools=tank(tank_l), helper=helper)
    by = {1: ("sprayer", "helper"), 2: ("sprayer 2", "helper to sprayer 2")}
    for sprayer, words in by.items():
        events = [(r.at_min + r.minutes, 0, r.litres) for r in done.refills if r.by in words]
        events += [(b.end_min, 1, -b.litres) for b in done.bands if b.sprayer == sprayer]
        left = 0.0
        for _, _, litres in sorted(events):
            left += litres
            assert -1e-6 <= left <= tank_l + 1e-6
        holds = after.tank_l if sprayer == 1 else after.second.tank_l
        assert left == pytest.approx(holds, abs=1e-3)


def test_the_second_fills_beside_the_tub_and_off_the_way_to_it():
    of = world(hall(8, 2))
    base = base_point(of, way_out(of))
    second = second_base(of, base)
    assert shapely.Point(base).distance(shapely.Point(second)) >= APART_M
    assert of.outside.buffer(0.01).contains(shapely.Point(second))


@pytest.mark.parametrize("name", AWKWARD)
def test_both_are_apart_dry_and_out_on_every_awkward_floor(name):
    """The independent checker replays both; two are at work where that keeps the edge younger."""
    plan = plan_job(job(AWKWARD[name], crew=WITH_HELPER, samples=timed_at(30)))
    written = plain(plan)
    assert check_plan(written) == []
    ages = replay_ages(written)
    for field in plan.fields:
        assert ages[field.id] == pytest.approx(field.peak_age_min, abs=0.05)


def timed_at(minutes):
    return (Sample("board", coat="one", sheen_loss_min=minutes),)


@pytest.mark.parametrize("crew", [TWO, WITH_HELPER], ids=["alone", "with a helper"])
@pytest.mark.parametrize("place", [ROW, hall(9, 6), LARGE_HALL], ids=["row", "hall", "large"])
def test_plans_for_two_stand_before_the_checker(place, crew):
    tools = replace(ROUND, tank_l=7.57)
    plan = plan_job(job(place, crew=crew, samples=timed_at(40), tools=job_tools(tools)))
    assert [f for f in check_plan(plain(plan)) if f.code != "dead-edge"] == []
    if place is not ROW:  # there, with a helper, one is as quick
        assert any(band.sprayer == 2 for field in plan.fields for band in field.bands)


def job_tools(tools):
    return Tools(
        tools.tank_l, tools.band_m, tools.spray_m2_min, tools.walk_m_min, tools.refill_min,
        tools.swap_min, tools.overlap_m, tools.reach_m,
    )  # fmt: skip


def test_two_are_never_older_than_one_where_the_edge_is_short_of_time():
    for place in (hall(8, 2), hall(8, 5), AWKWARD["ell"] if "ell" in AWKWARD else hall(6, 3)):
        of = world(place)
        found = swept(of)
        base = base_point(of, way_out(of))
        day = Day(0.0, base, 0.0, DryGround.of(of), base)
        flow = Flow("one", 0.2, False, ROUND, found.wetted_m2 * 0.2)
        one = time_sweep(found, day, flow, field_id="F")[0].peak_age_min

        alone, both = (
            time_crew(found, crew_of(sprayers, day, of), flow, field_id="trial")[0].peak_age_min
            for sprayers in (1, 2)
        )
        assert alone == one
        assert both <= one + 0.011


def test_only_two_can_do_a_hall_that_is_too_wide_for_one():
    """By hand: 9 m wide, one needs 3 min a band of 1 m, two 1.5 min: lives 2.4 at the low end."""
    plan = plan_job(job(hall(6, 9), crew=TWO, samples=timed_at(4.4)))
    field = plan.fields[0]
    assert field.verdict in {"two", "fits"}
    assert field.peak_age_min <= field.open_time_min.low
    one = plan_job(job(hall(6, 9), samples=timed_at(4.4))).fields[0]
    assert field.peak_age_min < one.peak_age_min


def test_the_plan_says_where_one_rests():
    plan = plan_job(job(hall(8, 1.2), crew=TWO))
    assert any("rests or fills tanks in 1 of 1 fields" in warning for warning in plan.warnings)


def test_a_half_is_the_floor_of_the_band_and_its_ends_are_apart():
    found = swept(hall(8, 6))
    for each in found.passes:
        halves = halves_of(each, each.path, ROUND)
        assert halves is not None
        assert sum(h.strip.area_m2 for h in halves) == pytest.approx(each.strip.area_m2, abs=1e-3)
        ends = [shapely.Point(half.path[-1]) for half in halves]
        assert ends[0].distance(ends[1]) >= APART_M
