"""One coat over the house: fields on one clock, bands as wide as the edge allows."""

from __future__ import annotations

from itertools import pairwise

import pytest
import shapely
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import (
    HALL_OF_THREE,
    TWO_WAYS_OUT,
    hall,
    job,
    row,
    seam,
    world,
)

from farwall.facts.job import Coat
from farwall.facts.samples import Sample
from farwall.floor.nouns import SawCut
from farwall.job.plan_job import plan_job
from farwall.spray.plan_coat import base_point, stop_lines
from farwall.spray.routes import gap_m


def timed_at(minutes):
    return (Sample("board", coat="one", sheen_loss_min=minutes),)


def test_the_full_band_is_kept_where_the_edge_lives():
    assert plan_job(job(hall(9, 5), samples=timed_at(20))).fields[0].band_m == pytest.approx(
        1.0, rel=0.01
    )


@pytest.mark.parametrize(("minutes", "band_m"), [(4, 0.85), (3, 0.55)])
def test_bands_are_narrower_where_the_full_width_would_lose_the_edge(minutes, band_m):
    """By hand: 5 m of front are 1.67 min a metre of depth, and some walking."""
    field = plan_job(job(hall(9, 5), samples=timed_at(minutes))).fields[0]
    assert field.verdict == "fits"
    assert field.band_m <= band_m * 1.01
    assert field.peak_age_min <= field.open_time_min.low


def test_when_no_width_holds_the_full_one_stands_and_the_verdict_says_no():
    field = plan_job(job(hall(9, 5), samples=timed_at(1))).fields[0]
    assert field.verdict != "fits"
    assert field.band_m == pytest.approx(1.0, rel=0.01)


def test_fields_follow_each_other_on_one_clock():
    plan = plan_job(job(HALL_OF_THREE))
    for one, two in pairwise(plan.fields):
        assert two.start_min >= one.end_min
        assert two.order == one.order + 1
    assert [field.order for field in plan.fields] == [1, 2, 3, 4]
    assert [field.id for field in plan.fields] == [f"one.{n}" for n in range(1, 5)]


def test_a_field_tells_its_rooms_its_area_and_its_way_out():
    plan = plan_job(job(HALL_OF_THREE))
    last = plan.fields[-1]
    assert last.rooms == ("hall",)
    assert last.exit == "exit-front"
    assert last.area_m2 == pytest.approx(13.5, abs=0.01)
    assert {field.exit for field in plan.fields[:-1]} == {"left-door", "middle-door", "right-door"}


def test_the_sprayer_walks_off_the_floor_at_the_end():
    plan = plan_job(job(HALL_OF_THREE))
    last = plan.fields[-1].walks[-1]
    way_out = seam(world(HALL_OF_THREE), "front")
    assert last.who == "sprayer"
    assert last.path[-1][:2] == base_point(world(HALL_OF_THREE), way_out)


def test_the_tub_stands_outside_a_step_beyond_the_way_out_by_hand():
    """By hand: 1.3 m straight out from the middle of the way out."""
    assert base_point(world(hall(8, 2)), seam(world(hall(8, 2)), "end")) == pytest.approx(
        (-1.3, 1.0), abs=0.01
    )


@pytest.mark.parametrize("place", [TWO_ROOMS, HALL_OF_THREE, TWO_WAYS_OUT])
def test_the_tub_never_stands_on_the_floor(place):
    of = world(place)
    for each in of.seams:
        if each.is_way_out:
            tub = shapely.Point(base_point(of, each))
            assert all(piece.shape.distance(tub) >= 0.25 for piece in of.pieces.values())


def test_stop_lines_are_where_a_field_ends_on_purpose():
    plan = plan_job(job(HALL_OF_THREE))
    by_room = {field.rooms[0]: {(s.id, s.kind) for s in field.stop_lines} for field in plan.fields}
    assert by_room["left"] == {("left-door", "door")}
    assert by_room["hall"] == {
        ("front", "outside"),
        ("left-door", "door"),
        ("middle-door", "door"),
        ("right-door", "door"),
    }


def test_a_saw_cut_is_used_as_a_stop_line():
    plan = plan_job(job(hall(9, 4), SawCut(((4.5, 0.0), (4.5, 4.0)), id="control joint")))
    assert len(plan.fields) == 2
    for field in plan.fields:
        found = next(s for s in field.stop_lines if s.kind == "saw cut")
        assert found.id == "control joint"
        assert [x for x, _ in found.line] == pytest.approx([4.5, 4.5], abs=0.001)


def test_a_wide_opening_is_never_a_stop_line():
    plan = plan_job(job(row(4, 4, kind="wide"), samples=timed_at(1)))
    assert len(plan.fields) == 1
    assert {s.kind for field in plan.fields for s in field.stop_lines} == {"outside"}


def test_a_door_inside_a_field_is_no_stop_line():
    of = world(row(3, 3))
    both = frozenset("ab")
    lines = stop_lines(of, both, {"a": both, "b": both})
    assert [line.id for line in lines] == ["front"]


def test_a_second_coat_comes_after_the_first_is_dry():
    two = (Coat("one", "sand", "1:1", m2_per_l=5.0), Coat("two", "sand", "1:2", m2_per_l=7.0))
    plan = plan_job(job(TWO_ROOMS, coats=two))
    first = [field for field in plan.fields if field.coat == "one"]
    second = [field for field in plan.fields if field.coat == "two"]
    dry = next(clock for clock in plan.clocks if clock.coat == "one")
    assert min(f.start_min for f in second) >= max(f.end_min for f in first) + dry.high_min
    assert [f.rooms for f in second] == [f.rooms for f in first]
    assert [f.order for f in plan.fields] == [1, 2, 3, 4]


def test_the_next_field_begins_where_the_person_stands():
    plan = plan_job(job(row(3, 3, 3)))
    for one, two in pairwise(plan.fields):
        end = one.bands[-1].path[-1][:2]
        first = next(w for w in two.walks if w.who == "sprayer")
        start = first.path[0][:2] if first.path[0][2] <= two.bands[0].start_min else end
        assert gap_m(end, start) < 0.001
