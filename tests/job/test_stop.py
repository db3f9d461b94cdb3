"""Where to stop soon: lines of the floor that hide a seam, told in time."""

import pytest
import shapely
from tests.midday import after, band, bands_of, day_of

from farwall.facts.so_far import SoFar
from farwall.job.replan import replan
from farwall.job.stop import stop


def test_between_two_fields_nothing_is_open():
    plan = day_of("quince-street")
    found = stop(plan, after(plan, "first.5.5"), within_min=2.0)
    assert found.how == "nothing open"
    assert found.minutes == 0
    assert "bed-1" in found.remains
    assert "bed-2" not in found.remains


def test_the_door_of_the_field_is_the_line_when_it_is_reached_in_time():
    """By hand: two bands are left, and their minutes and litres are those of the plan."""
    plan = day_of("quince-street")
    found = stop(plan, after(plan, "first.6.5"), within_min=3.0)
    last, then = band(plan, "first.6.7"), band(plan, "first.6.6")
    assert (found.how, found.line, found.kind) == ("line", "d1", "door")
    assert found.bands == ("first.6.6", "first.6.7")
    assert found.minutes == pytest.approx(last.end_min - band(plan, "first.6.5").end_min, abs=0.02)
    assert found.litres == pytest.approx(last.litres + then.litres, abs=0.01)
    assert found.seam_m == 0
    assert "bed-1" not in found.remains


def test_out_of_time_it_says_where_to_feather_and_what_more_time_would_give():
    plan = day_of("quince-street")
    found = stop(plan, after(plan, "first.6.3"), within_min=2.0)
    assert found.how == "feather"
    assert found.seam_m > 1
    assert found.at is not None
    assert found.minutes <= 2.0
    assert found.then_line == "d1"
    assert found.then_min > 2.0


def test_it_feathers_where_the_least_of_a_seam_shows():
    """Each end of a band within the time is worse or as bad."""
    plan = day_of("quince-street")
    found = stop(plan, after(plan, "first.6.2"), within_min=2.6)
    for minutes in (0.0, 1.0, 2.0):
        sooner = stop(plan, after(plan, "first.6.2"), within_min=minutes)
        assert sooner.how == "feather"
        assert found.seam_m <= sooner.seam_m


def test_a_closet_done_behind_its_own_leaf_is_a_line_in_the_middle_of_a_field():
    """When all of the front lies in an inner doorway nothing shows, whatever is left beyond."""
    plan = day_of("sorrel-rise")
    inner = []
    for one in bands_of(plan, coat=0):
        found = stop(plan, after(plan, one.id), within_min=0.0)
        if found.how == "line":
            inner.append((one.id, found.line))
            assert found.bands == ()
            assert found.seam_m == 0
    assert all(line for _, line in inner)


def test_the_seam_that_is_told_is_the_front_between_done_and_not_done():
    plan = day_of("quince-street")
    told = after(plan, "first.5.3")
    found = stop(plan, told, within_min=0.0)
    done, then = band(plan, "first.5.3").polygon.shape, band(plan, "first.5.4").polygon.shape
    front = shapely.intersection(done.boundary, then.buffer(0.005))
    assert found.seam_m == pytest.approx(front.length, abs=0.1)


def test_the_band_in_hand_is_finished_first():
    plan = day_of("quince-street")
    one = band(plan, "first.5.3")
    now = one.start_min + 0.5
    found = stop(plan, SoFar(at_min=now), within_min=0.1)
    assert found.minutes == pytest.approx(one.end_min - now, abs=0.01)


def test_what_it_promises_is_what_the_day_planned_again_does():
    plan = day_of("sorrel-rise")
    told = after(plan, "coat-1.9.6", tank_l=1.4)
    found = stop(plan, told, within_min=60.0)
    again = replan(plan, told)
    assert found.minutes == pytest.approx(
        band(again, found.bands[-1]).end_min - told.at_min, abs=0.01
    )
    assert found.fills >= 1
