"""Which sweeps of a field are tried, and what is made once for every way out."""

from __future__ import annotations

import numpy as np
import pytest
from tests.shapes import AWKWARD, TWO_ROOMS, Place, box, door, outside, place
from tests.spray.grounds import field, ground
from tests.spray.hand_floors import (
    SPLIT_BY_A_COUNTER,
    TWO_WAYS_OUT,
    hall,
    job,
    seam,
    without_opening,
    world,
)

from farwall.errors import Unanswerable
from farwall.floor.nouns import Room, SawCut
from farwall.floor.thresholds import join_thresholds
from farwall.spray.building import build_world
from farwall.spray.front import Front
from farwall.spray.fronts import (
    PLAIN_ENOUGH,
    field_ground,
    levelled_front,
    plain_fronts,
    plainest,
)


def told(metres: float, name: str = "") -> Front:
    return Front(name, np.zeros(1), np.zeros(1), metres)


def test_the_plainest_is_the_first_that_is_hardly_longer_by_hand():
    """By hand: of 3, 2.4 and 2 m the first is half as long again, the second a fifth longer."""
    fronts = [told(3.0, "wall"), told(2.4, "straight"), told(2.0, "rings")]
    assert plainest(fronts).name == "straight"
    assert plainest([told(2.0 * PLAIN_ENOUGH + 1e-6, "wall"), told(2.0, "rings")]).name == "rings"


def test_a_hall_is_swept_straight_to_its_open_end():
    fronts = plain_fronts(ground(hall(8, 2)))
    assert plainest(fronts).name == "straight -u"
    assert fronts[-1].name == "rings"


@pytest.mark.parametrize("name", AWKWARD)
def test_every_floor_has_a_plain_front(name):
    fronts = plain_fronts(ground(AWKWARD[name]))
    assert "rings" in {front.name for front in fronts}
    assert plainest(fronts) in fronts
    least = min(front.equivalent_m for front in fronts)
    assert levelled_front(ground(AWKWARD[name]), fronts).equivalent_m <= least


def test_the_lattice_is_made_once_for_every_way_out():
    of = world(TWO_WAYS_OUT)
    kept = {}
    pieces = sorted(of.pieces)
    west, east = (
        field_ground(of, pieces, seam(of, name), 1.0, kept=kept) for name in ("west", "east")
    )
    assert west.ground.lattice is east.ground.lattice
    assert west.ground.ball is east.ground.ball
    assert west.ground.out_m[0] != east.ground.out_m[0]
    other = field_ground(of, pieces, seam(of, "west"), 0.6, kept=kept)
    assert other.ground.lattice is not west.ground.lattice


def test_walks_out_by_hand():
    """By hand: from the west door of the small room to the far wall of the large one 10 m."""
    here = field(TWO_WAYS_OUT, by="west").ground
    assert here.out_m.min() == pytest.approx(0.1, abs=0.02)
    assert 9.8 <= here.out_m.max() <= (10 + 4) * 1.03
    assert (here.lattice.xy[here.at_exit][:, 0] < 0.3).all()


def test_saw_cuts_inside_a_field_are_closed():
    told_job = job(hall(8, 2), SawCut(((4.0, 0.0), (4.0, 2.0)), id="cut"))
    of = build_world(join_thresholds(told_job.floor), told_job.exits)
    assert len(of.pieces) == 2
    here = field_ground(of, sorted(of.pieces), seam(of, "end"), 1.0, kept={})
    assert len(here.pieces) == 1
    assert here.ground.lattice.floor.area == pytest.approx(16.0, abs=0.02)


@pytest.mark.parametrize("of", [SPLIT_BY_A_COUNTER, without_opening(TWO_ROOMS, "between")])
def test_floor_that_falls_apart_is_no_field(of: Place):
    with pytest.raises(Unanswerable, match="falls apart"):
        field(of)


def test_a_sliver_at_the_exit_gets_a_finer_lattice_by_hand():
    """By hand: no place of a grid of 0.2 m lies on a sill 0.08 m deep, the first column is 0.1 m
    off its outer edge; one of 0.1 m puts places 0.05 m off it."""
    sill = place(
        [Room("sill", box(0, 0, 0.08, 3)), Room("room", box(0.08, 0, 4, 3))],
        [
            outside("way-out", ((0, 1), (0, 2)), "sill"),
            door("inner", ((0.08, 1), (0.08, 2)), "sill", "room", kind="wide"),
        ],
    )
    assert field(sill).ground.lattice.grid.step_m == pytest.approx(0.1)
    assert field(sill, "room", by="inner").ground.lattice.grid.step_m == pytest.approx(0.2)
