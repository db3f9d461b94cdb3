"""Lines of one lateness on triangles, and a piece cut along them."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.affinity import rotate
from tests.shapes import AWKWARD, TWO_ROOMS
from tests.spray.grounds import ground, world_of
from tests.spray.hand_floors import L_ROOM, hall, moved
from tests.strategies.houses import houses

from farwall.spray.contours import cut_along, lines_at, sheet_of
from farwall.spray.fronts import plain_fronts

SLOPES = st.tuples(st.floats(-3, 3), st.floats(-3, 3)).filter(lambda s: np.hypot(*s) > 0.3)


def tilted(lattice, slope, at=0.0):
    return lattice.xy @ np.asarray(slope, dtype=float) + at


def test_a_value_between_four_places_by_hand():
    """By hand: corners 0, 0, 0 and 4 have the middle 1; on the edge between 0 and 4 half way 2; on
    the triangle beneath, half way from its edge (0) to the middle (1), 0.5."""
    lattice = ground(hall(2, 2)).lattice
    values = np.zeros(len(lattice))
    values[lattice.index[5, 5]] = 4.0
    sheet = sheet_of(lattice, 0, values)
    low = lattice.xy[lattice.index[4, 4]]
    asked = low + 0.2 * np.array([(0.5, 0.5), (1.0, 0.5), (0.5, 0.25), (1.0, 1.0), (0.0, 0.0)])
    assert sheet.at(asked) == pytest.approx([1.0, 2.0, 0.5, 4.0, 0.0])


@given(SLOPES, st.integers(0, 2**32 - 1))
def test_a_linear_lateness_is_told_exactly_everywhere(slope, seed):
    """Also between the last places and the walls, where it is carried on."""
    lattice = ground(hall(4, 3)).lattice
    sheet = sheet_of(lattice, 0, tilted(lattice, slope))
    asked = np.random.default_rng(seed).uniform((0, 0), (4, 3), (200, 2))
    assert sheet.at(asked) == pytest.approx(asked @ np.asarray(slope), abs=1e-9)


@given(SLOPES, st.floats(0.2, 0.8), st.sampled_from([0.0, 17.0, 45.0]))
def test_a_linear_lateness_gives_straight_lines_exactly(slope, share, degrees):
    of = moved(hall(4, 3), lambda shape: rotate(shape, degrees, origin=(0, 0)))
    lattice = ground(of).lattice
    late = tilted(lattice, slope)
    level = float(late.min() + share * np.ptp(late))
    (line,) = lines_at(sheet_of(lattice, 0, late), np.array([level]))
    assert line.geom_type == "LineString"
    assert len(line.coords) == 2
    assert tilted_at(line, slope) == pytest.approx(level, abs=2e-5 * np.hypot(*slope))
    inside = shapely.intersection(line, lattice.floor)
    assert shapely.distance(shapely.points(shapely.get_coordinates(inside)),
                            lattice.floor.boundary).max() < 1e-6  # fmt: skip


def tilted_at(line, slope):
    return shapely.get_coordinates(line) @ np.asarray(slope)


def test_a_hall_cut_at_its_quarters_by_hand():
    """By hand: 8 m x 2 m less half a millimetre along the walls, cut at x = 2, 4 and 6."""
    lattice = ground(hall(8, 2)).lattice
    piece = lattice.pieces[0]
    sheet = sheet_of(lattice, 0, lattice.xy[:, 0])
    found = cut_along(piece, sheet, np.array([2.0, 4.0, 6.0]))
    areas = {level: part.area for level, part in found}
    assert len(found) == 4
    assert areas == pytest.approx({0: 3.997, 1: 3.998, 2: 3.998, 3: 3.997}, abs=1e-4)


def test_lines_around_the_middle_are_closed_by_hand():
    """By hand: lateness by the distance from the middle of a room: a circle of 1 m, 3.14 m2."""
    lattice = ground(hall(4, 4)).lattice
    late = np.hypot(*(lattice.xy - [2, 2]).T)
    found = cut_along(lattice.pieces[0], sheet_of(lattice, 0, late), np.array([1.0]))
    inner = [part for level, part in found if level == 0]
    assert len(inner) == 1
    assert inner[0].area == pytest.approx(np.pi, abs=0.2)
    outer = next(part for level, part in found if level == 1)
    assert len(outer.interiors) == 1


@pytest.mark.parametrize("name", [*AWKWARD, "ell"])
def test_cut_parts_add_up_and_lie_between_their_levels(name):
    here = ground({"ell": L_ROOM, **AWKWARD}[name])
    lattice = here.lattice
    for front in plain_fronts(here):
        levels = np.linspace(front.late.min(), front.late.max(), 7)[1:-1]
        for number, piece in enumerate(lattice.pieces):
            _insist(piece, sheet_of(lattice, number, front.late), levels)


@settings(max_examples=12)
@given(houses, st.integers(0, 2**32 - 1), st.integers(1, 6))
def test_any_lateness_cuts_a_piece_into_parts_that_add_up(job, seed, count):
    """Also one that goes up and down from place to place: no line ends inside the floor."""
    of = world_of(job)
    out = next(seam for seam in of.seams if seam.is_way_out)
    lattice = ground(of, out.a, by=out.id).lattice
    late = np.random.default_rng(seed).uniform(0, 1, len(lattice))
    levels = np.linspace(0, 1, count + 2)[1:-1]
    for number, piece in enumerate(lattice.pieces):
        parts = cut_along(piece, sheet_of(lattice, number, late), levels)
        assert sum(part.area for _, part in parts) == pytest.approx(piece.area, rel=1e-4)
        assert all(0 <= level <= count for level, _ in parts)


def _insist(piece, sheet, levels):
    parts = cut_along(piece, sheet, levels)
    assert sum(part.area for _, part in parts) == pytest.approx(piece.area, rel=1e-4)
    assert shapely.union_all([part for _, part in parts]).area == pytest.approx(
        piece.area, rel=1e-4
    )
    bounds = [-np.inf, *levels, np.inf]
    for level, part in parts:
        spots = _spots(part)
        values = sheet.at(spots)
        # Lines are straightened by up to 0.05 m: values may run over by what that is worth.
        assert (values >= bounds[level] - _slack(sheet)).all()
        assert (values <= bounds[level + 1] + _slack(sheet)).all()


def _spots(part):
    x0, y0, x1, y1 = part.bounds
    spots = np.random.default_rng(3).uniform((x0, y0), (x1, y1), (60, 2))
    return spots[shapely.contains_xy(part, spots[:, 0], spots[:, 1])]


def _slack(sheet):
    """What 0.05 m and a hair are worth where the values are steepest."""
    v = sheet.values
    steepest = max(np.nanmax(np.abs(np.diff(v, axis=axis))) for axis in (0, 1))
    return 0.051 * np.sqrt(2) * steepest / sheet.lattice.grid.step_m


def test_a_piece_between_two_levels_stays_whole():
    lattice = ground(hall(8, 2)).lattice
    sheet = sheet_of(lattice, 0, lattice.xy[:, 0])
    assert [level for level, _ in cut_along(lattice.pieces[0], sheet, np.array([-5.0, 20.0]))] == [
        1
    ]


def test_lines_run_on_across_a_doorway():
    """Values of the next room count up to one place beyond the door: both sheets agree on it."""
    lattice = ground(TWO_ROOMS).lattice
    late = tilted(lattice, (1.0, 0.4))
    door = np.linspace((2.2, 3.0), (2.6, 3.0), 9)
    front, back = (sheet_of(lattice, number, late).at(door) for number in (0, 1))
    assert front == pytest.approx(back, abs=1e-9)
