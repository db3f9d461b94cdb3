"""The floor at a moment, held against hand-worked halls and against the planner's own ages."""

from dataclasses import replace

import pytest
import shapely
from tests.papers.invented_plan import small_house

from farwall.facts.plan import Band, Field, Plan
from farwall.floor.geometry import polygon_geometry
from farwall.job.moments import moment_at, oldest_edge, telling_moments

COAT = "first"


def strip(order: int, x0: float, x1: float, start: float, *, up: bool = True) -> Band:
    """A band of a hall 4 m wide, walked along its near side in 2 minutes."""
    ends = ((x1, 0.0, start), (x1, 4.0, start + 2.0))
    path = ends if up else ((x1, 4.0, start), (x1, 0.0, start + 2.0))
    shape = polygon_geometry(shapely.box(x0, 0, x1, 4))
    return Band(f"b{order}", order, 1, shape, path, 0.5, start, start + 2.0)


def hall(*bands: Band) -> Plan:
    plan = small_house()
    field: Field = replace(
        plan.fields[0], bands=bands, walks=(), refills=(), area_m2=4.0 * len(bands),
        start_min=bands[0].start_min, end_min=bands[-1].end_min, verdict="fits",
    )  # fmt: skip
    return replace(plan, fields=(field,))


def test_one_way_every_place_of_an_edge_waits_from_band_to_band():
    """By hand: the second band starts 3 min after the first, so each place is met 3 min later."""
    plan = hall(strip(1, 0, 1, 0.0), strip(2, 1, 2, 3.0))
    edge = oldest_edge(plan.fields[0])
    assert edge is not None
    assert edge.age_min == pytest.approx(3.0, abs=0.02)


def test_there_and_back_the_first_place_waits_for_both_bands():
    """By hand: made at minute 0 at y = 0, met at minute 2 + 2."""
    plan = hall(strip(1, 0, 1, 0.0), strip(2, 1, 2, 2.0, up=False))
    edge = oldest_edge(plan.fields[0])
    assert edge is not None
    assert edge.age_min == pytest.approx(4.0, abs=0.02)
    assert edge.at == pytest.approx((1.0, 0.0), abs=0.03)
    assert edge.at_min == pytest.approx(4.0, abs=0.02)


def test_half_a_band_is_sprayed_at_half_its_time():
    plan = hall(strip(1, 0, 1, 0.0), strip(2, 1, 2, 3.0))
    state = moment_at(plan, plan.fields[0].coat, 1.0)
    assert sum(part.shape.area for part in state.wet) == pytest.approx(2.0, abs=0.5)
    assert state.people[0].at == pytest.approx((1.0, 2.0))
    assert state.people[0].ahead is not None
    assert state.sprayed_share == pytest.approx(0.25, abs=0.07)


def test_the_live_edge_of_a_whole_band_is_its_far_side():
    plan = hall(strip(1, 0, 1, 0.0), strip(2, 1, 2, 3.0))
    state = moment_at(plan, plan.fields[0].coat, 2.5)
    assert state.edge is not None
    assert state.edge.line.length == pytest.approx(4.0, abs=0.1)
    assert state.edge.age_min == pytest.approx(2.5, abs=0.02)
    assert state.edge.at == pytest.approx((1.0, 0.0), abs=0.05)


def test_when_all_is_sprayed_no_edge_is_live():
    plan = hall(strip(1, 0, 1, 0.0), strip(2, 1, 2, 3.0))
    state = moment_at(plan, plan.fields[0].coat, 6.0)
    assert state.edge is None
    assert state.field is None
    assert state.sprayed_share == pytest.approx(1.0)


def test_the_tank_holds_what_was_filled_less_what_was_sprayed():
    plan = small_house()
    filled = sum(r.litres for f in plan.fields for r in f.refills)
    sprayed = sum(b.litres for f in plan.fields for b in f.bands)
    end = max(f.end_min for f in plan.fields) + 1.0
    state = moment_at(plan, plan.fields[-1].coat, end)
    assert state.tank_l == pytest.approx(max(0.0, filled - sprayed), abs=1e-3)


def test_six_moments_rise_and_take_in_the_oldest_edge():
    plan = small_house()
    coat = plan.fields[0].coat
    when = telling_moments(plan, coat)
    assert len(when) == 6
    assert list(when) == sorted(when)
    shares = [moment_at(plan, coat, minute).sprayed_share for minute in when]
    assert shares == sorted(shares)
    fields = [f for f in plan.fields if f.coat == coat]
    worst = max(fields, key=lambda f: f.peak_age_min / f.open_time_min.low)
    edge = oldest_edge(worst)
    assert edge is not None
    assert min(abs(minute - edge.at_min) for minute in when) < 0.03


def test_a_coat_of_which_nothing_can_be_sprayed_has_no_moments():
    plan = small_house()
    none = replace(plan, fields=tuple(replace(f, verdict="cannot") for f in plan.fields))
    assert telling_moments(none, plan.fields[0].coat) == ()


def test_another_coat_is_refused():
    with pytest.raises(KeyError):
        moment_at(small_house(), "third", 0.0)
