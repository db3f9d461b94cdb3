"""Wall lines that just miss each other are brought together, and nothing else moves."""

from math import dist

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.readers.lines.mend import SNAP_M, mend
from farwall.readers.lines.sheet import Role, Stroke


def wall(*ends: tuple[float, float]) -> Stroke:
    return Stroke(ends[0], ends[1], "WALL", Role.WALL)


def test_a_corner_that_stops_short_meets_where_the_lines_cross_by_hand() -> None:
    mended = mend([wall((0, 0), (3.99, 0)), wall((4, 0.01), (4, 3))])
    assert mended.strokes[0].end == pytest.approx((4, 0))
    assert mended.strokes[1].start == pytest.approx((4, 0))
    ((place, gap),) = mended.places
    assert place == pytest.approx((4, 0))
    assert gap == pytest.approx(0.0141, abs=1e-4)


def test_a_corner_that_runs_over_is_cut_back_by_hand() -> None:
    mended = mend([wall((0, 0), (4.02, 0)), wall((4, -0.01), (4, 3))])
    assert mended.strokes[0].end == pytest.approx((4, 0))
    assert mended.strokes[1].start == pytest.approx((4, 0))


def test_an_end_that_misses_the_middle_of_a_wall_goes_to_it_by_hand() -> None:
    mended = mend([wall((0, 0), (8, 0)), wall((4, 0.02), (4, 3))])
    assert mended.strokes[1].start == pytest.approx((4, 0))
    assert mended.strokes[0] == wall((0, 0), (8, 0))


def test_lines_in_line_meet_half_way() -> None:
    mended = mend([wall((0, 0), (3.99, 0)), wall((4.01, 0), (8, 0))])
    assert mended.strokes[0].end == pytest.approx((4, 0))
    assert mended.strokes[1].start == pytest.approx((4, 0))


@pytest.mark.parametrize("gap", [0.04, 0.1, 0.9])
def test_wider_gaps_stay_open(gap: float) -> None:
    strokes = [wall((0, 0), (4, 0)), wall((4 + gap, 0), (8, 0))]
    assert mend(strokes).strokes == tuple(strokes)


def test_lines_that_meet_are_left_alone() -> None:
    strokes = [wall((0, 0), (4, 0)), wall((4, 0), (4, 3)), wall((4, 3), (0, 0))]
    assert mend(strokes).places == ()
    assert mend([]).strokes == ()


@given(st.floats(-0.01, 0.01), st.floats(-0.01, 0.01), st.floats(0.5, 20), st.floats(0.5, 20))
def test_no_end_moves_farther_than_the_snap(dx: float, dy: float, w: float, h: float) -> None:
    strokes = [wall((0, 0), (w + dx, 0)), wall((w, dy), (w, h))]
    for before, after in zip(strokes, mend(strokes).strokes, strict=True):
        assert dist(before.start, after.start) <= SNAP_M
        assert dist(before.end, after.end) <= SNAP_M
