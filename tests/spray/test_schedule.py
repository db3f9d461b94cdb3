"""The sweep on the clock: refills by hand, tanks that never run dry, walks at a person's pace."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
import shapely
from tests.spray.hand_floors import ROUND, hall, world
from tests.spray.sweeping import swept, way_out

from farwall.errors import Unanswerable
from farwall.spray.bands import Strip
from farwall.spray.dry import DryGround
from farwall.spray.plan_coat import base_point
from farwall.spray.refills import Flow
from farwall.spray.routes import length_m
from farwall.spray.schedule import (
    Day,
    NoDryWay,
    route,
    time_sweep,
    timed_path,
)

L_PER_M2 = 0.5


def flow(found, *, helper=False, tools=ROUND):
    return Flow("one", L_PER_M2, helper, tools, found.wetted_m2 * L_PER_M2)


def timed(place, *, helper=False, tools=ROUND):
    """A sweep of the whole place, on the clock from its first stroke on, and the day after it."""
    of = world(place)
    found = swept(of, tools=tools)
    base = base_point(of, way_out(of))
    day = Day(0.0, base, 0.0, DryGround.of(of), base)
    return found, *time_sweep(found, day, flow(found, helper=helper, tools=tools), field_id="F")


def tank(litres):
    return replace(ROUND, tank_l=litres)


@pytest.mark.parametrize("helper", [False, True], ids=["alone", "with a helper"])
@pytest.mark.parametrize("tank_l", [40.0, 6.0, 3.0])
def test_the_tank_is_never_below_its_reserve_nor_over_its_size(helper, tank_l):
    tools = tank(tank_l)
    _, done, after = timed(hall(8, 2), helper=helper, tools=tools)
    events = [(r.at_min + r.minutes, r.litres) for r in done.refills]
    events += [(band.end_min, -band.litres) for band in done.bands]
    left = 0.0
    for _, litres in sorted(events):
        left += litres
        assert -1e-6 <= left <= tank_l + 1e-6
    assert left == pytest.approx(after.tank_l, abs=1e-3)


def test_the_last_filling_takes_what_is_left_and_a_reserve_by_hand():
    """By hand: 8 L still to spray, 15 % more, and 15 % of a tank of 40 L: 9.2 + 6 = 15.2 L."""
    _, done, _ = timed(hall(8, 2))
    assert [refill.litres for refill in done.refills] == pytest.approx([15.2], abs=0.01)


def test_bands_take_their_litres_and_minutes_by_hand():
    """By hand: 2 m² at 3 m² a minute are 0.667 min and 1 L.

    The first and the last two bands may be a quarter of a lattice step, 5 cm, off.
    """
    _, done, _ = timed(hall(8, 2))
    assert sum(band.litres for band in done.bands) == pytest.approx(8.0, abs=0.01)
    for band in done.bands:
        assert band.litres == pytest.approx(1.0, abs=0.05)
    for band in done.bands[1:-2]:
        assert band.litres == pytest.approx(1.0, rel=0.02)
        assert band.end_min - band.start_min == pytest.approx(2 / 3, rel=0.02)
    assert [band.order for band in done.bands] == list(range(1, 9))
    assert [band.id for band in done.bands] == [f"F.{n}" for n in range(1, 9)]


def test_a_refill_alone_is_a_walk_to_the_tub_and_back():
    """Three minutes of filling beside the tub, and both walks on the clock."""
    tools = tank(6.0)
    _, done, after = timed(hall(8, 2), tools=tools)
    inside = done.refills[-1]
    assert inside.at == after.base
    assert inside.minutes == 3.0
    assert inside.by == "sprayer"
    gap = max(two.start_min - one.end_min for one, two in pairwise(done.bands))
    assert gap > 3.0 + 2 * 3 / 60


def test_a_swap_is_half_a_minute_and_the_sprayer_stays():
    """The helper comes with the full tank, and goes back: both walks are in the plan."""
    tools = tank(6.0)
    _, done, _ = timed(hall(8, 2), helper=True, tools=tools)
    inside = done.refills[-1]
    assert (inside.minutes, inside.by) == (0.5, "helper")
    gap = max(two.start_min - one.end_min for one, two in pairwise(done.bands))
    assert gap < 0.5 + 3 / 60
    assert [walk.who for walk in done.walks].count("helper") >= 2


def test_the_oldest_edge_is_older_by_the_pause_of_a_refill():
    _, roomy, _ = timed(hall(8, 2))
    _, alone, _ = timed(hall(8, 2), tools=tank(6.0))
    _, helped, _ = timed(hall(8, 2), tools=tank(6.0), helper=True)
    assert roomy.peak_age_min < helped.peak_age_min < alone.peak_age_min
    assert alone.peak_age_min - roomy.peak_age_min == pytest.approx(3.2, abs=0.3)
    assert helped.peak_age_min - roomy.peak_age_min == pytest.approx(0.5, abs=0.1)


@pytest.mark.parametrize("helper", [False, True])
def test_nobody_is_in_two_places_and_nobody_runs(helper):
    _, done, after = timed(hall(8, 2), helper=helper, tools=tank(3.0))
    for who in ("sprayer", "helper"):
        paths = [walk.path for walk in done.walks if walk.who == who]
        if who == "sprayer":
            paths += [band.path for band in done.bands]
        paths.sort(key=lambda path: path[0][2])
        for one, two in pairwise(paths):
            assert two[0][2] >= one[-1][2] - 1e-6
        for path in paths:
            minutes = path[-1][2] - path[0][2]
            places = [(x, y) for x, y, _ in path]
            assert length_m(places) <= minutes * ROUND.walk_m_min + 0.02
    assert after.minute == pytest.approx(done.bands[-1].end_min)


def test_floor_that_is_wet_is_no_ground_for_the_next_walk():
    found, done, after = timed(hall(8, 2))
    wet = shapely.union_all([each.strip.shape for each in found.passes])
    assert after.free.shape.distance(wet) >= 0.25
    assert after.at == done.bands[-1].path[-1][:2]


def test_a_walk_on_the_clock_by_hand():
    """By hand: 3 m and 4 m at 60 m a minute: 0.05 and 0.1167 min after the start."""
    path = timed_path(((0, 0), (3, 0), (3, 4)), 2.0, 60.0)
    assert [t for _, _, t in path] == pytest.approx([2.0, 2.05, 2.1167], abs=2e-4)


def test_a_walk_over_wet_floor_is_refused():
    """Once the middle of a hall is wet from wall to wall and beyond, nobody gets by."""
    free = DryGround.of(world(hall(8, 2)))
    assert route(free, (7.0, 1.0), (1.0, 1.0)) == ((7.0, 1.0), (1.0, 1.0))
    wet = free.without(Strip((("hall", shapely.box(3, -9, 4, 9)),), level=0))
    with pytest.raises(NoDryWay, match="No dry way") as no:
        route(wet, (7.0, 1.0), (1.0, 1.0))
    assert isinstance(no.value, Unanswerable)
    assert (no.value.start, no.value.end) == ((7.0, 1.0), (1.0, 1.0))
