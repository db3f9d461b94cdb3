"""A preview keeps what did not change, follows what did, and is rather too strict than too mild."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import box
from tests.spray.hand_floors import ROOMY_TANK, hall, job, row, without_opening

from farwall.bench.dice import Dice
from farwall.bench.drags import dragged
from farwall.errors import FarwallError
from farwall.facts.samples import Sample
from farwall.floor.nouns import Opening, Room
from farwall.job.plan_job import plan_job
from farwall.job.preview import SAFE, keep, preview

EVERYTHING = float("inf")
THREE = row(4, 4, 4)


def timed_at(minutes):
    return (Sample("board", coat="one", sheen_loss_min=minutes),)


@pytest.fixture(scope="module")
def three():
    return keep(job(THREE))


def wider(place, by_m):
    """The last room of a row made deeper along x, its outer wall moved."""
    last = place.floor.rooms[-1]
    x0, y0, x1, y1 = last.polygon.shape.bounds
    rooms = (*place.floor.rooms[:-1], replace(last, polygon=box(x0, y0, x1 + by_m, y1)))
    return replace(place.floor, rooms=rooms)


def test_a_floor_that_did_not_change_keeps_every_figure(three):
    told = preview(three, THREE.floor)
    assert {one.how for one in told.fields} == {"kept"}
    for one, field in zip(told.fields, three.plan.fields, strict=True):
        assert (one.id, one.verdict) == (field.id, field.verdict)
        assert one.peak_age_min == pytest.approx(field.peak_age_min, abs=1e-3)
    assert told.fits


def test_only_the_room_whose_wall_moved_is_told_anew(three):
    told = preview(three, wider(THREE, 0.5))
    how = {one.rooms: one.how for one in told.fields}
    assert how[("c",)] in {"swept", "guessed"}
    assert {how[rooms] for rooms in how if rooms != ("c",)} == {"kept"}


def test_let_go_it_agrees_with_the_full_plan():
    """The same sweep, so the same edge but for walks around wet floor: within 5 %."""
    kept = keep(job(THREE))
    floor = wider(THREE, 0.5)
    told = {one.rooms: one for one in preview(kept, floor, relaid_m2=EVERYTHING).fields}
    full = plan_job(replace(kept.job, floor=floor))
    for field in full.fields:
        assert told[field.rooms].peak_age_min == pytest.approx(field.peak_age_min, rel=0.05)


def test_with_nothing_swept_a_guess_is_weighed_as_if_older(three):
    """Where a wall moves by a hair, the guess is the edge, weighed `SAFE` times as old."""
    told = preview(three, wider(THREE, 0.001), relaid_m2=0.0)
    one = next(one for one in told.fields if one.how == "guessed")
    old = next(field for field in three.plan.fields if field.id == one.id)
    assert one.peak_age_min == pytest.approx(old.peak_age_min, rel=0.02)
    assert one.safe_age_min == pytest.approx(SAFE * one.peak_age_min, abs=0.002)


def test_a_hall_made_too_wide_no_longer_fits():
    """By hand: 3 m of front at 3 m²/min: a minute, of 1.5; 6 m of front are two."""
    kept = keep(job(hall(8, 3), samples=timed_at(3.2), tools=ROOMY_TANK))
    assert preview(kept, kept.job.floor).fits
    wide = hall(8, 6)
    floor = replace(kept.job.floor, rooms=wide.floor.rooms)
    for relaid_m2 in (0.0, EVERYTHING):
        assert not preview(kept, floor, relaid_m2=relaid_m2).fits


def test_a_door_taken_away_is_no_fit_and_asks_for_a_full_plan():
    kept = keep(job(THREE))
    told = preview(kept, without_opening(THREE, "bc").floor)
    assert [one.rooms for one in told.fields if one.how == "again"] == [("c",)]
    assert not told.fits


@settings(deadline=None, max_examples=15)
@given(st.integers(0, 10**6))
def test_a_dragged_wall_leaves_a_house_with_the_same_rooms_and_doors(seed):
    moved = dragged(THREE.floor, Dice(seed))
    if moved is None:
        return
    assert [room.id for room in moved.rooms] == [room.id for room in THREE.floor.rooms]
    for old, new in zip(THREE.floor.openings, moved.openings, strict=True):
        assert _long(old) == pytest.approx(_long(new))
    assert sum(room.polygon.shape.area for room in moved.rooms) > 0


def _long(one: Opening) -> float:
    (x0, y0), (x1, y1) = one.line
    return ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5


def test_walls_dragged_by_chance_are_previewed_or_refused_calmly():
    kept = keep(job(THREE))
    told = 0
    for seed in range(12):
        moved = dragged(THREE.floor, Dice(seed))
        if moved is None:
            continue
        try:
            found = preview(kept, moved)
        except FarwallError:
            continue
        told += 1
        assert len(found.fields) == len(kept.plan.fields)
    assert told > 3


def test_a_room_in_two_pieces_is_planned_again():
    """A room of another shape under the same name keeps its piece; a lost room does not."""
    kept = keep(job(THREE))
    rooms = tuple(room for room in THREE.floor.rooms if room.id != "c")
    floor = replace(THREE.floor, rooms=(*rooms, Room("c2", box(8, 0, 12, 3))))
    floor = replace(
        floor,
        openings=tuple(
            replace(one, rooms=tuple("c2" if name == "c" else name for name in one.rooms))
            for one in floor.openings
        ),
    )
    told = {one.rooms: one.how for one in preview(kept, floor).fields}
    assert told[("c",)] == "again"
