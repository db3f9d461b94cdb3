"""Path data against points worked by hand."""

from math import hypot

import pytest

from farwall.readers.svg.paths import subpaths


def ends(data: str) -> list[list[tuple[float, float]]]:
    return [[p for piece in path.pieces for p in piece.points] for path in subpaths(data)]


@pytest.mark.parametrize(
    ("data", "points"),
    [
        ("M1 2L3 4", [[(1, 2), (3, 4)]]),
        ("m1,2 3,4 5,6", [[(1, 2), (4, 6), (9, 12)]]),
        ("M1 2h3v-4H0V0", [[(1, 2), (4, 2), (4, -2), (0, -2), (0, 0)]]),
        ("M.5.5-1-1", [[(0.5, 0.5), (-1, -1)]]),
        ("M0 0L1e1 1E-1", [[(0, 0), (10, 0.1)]]),
        ("M0 0h1zm5 5h1", [[(0, 0), (1, 0)], [(5, 5), (6, 5)]]),
        ("M0 0L1 1 garbage L9 9", [[(0, 0), (1, 1)]]),
        ("M0 0A0 5 0 0 1 4 4", [[(0, 0), (4, 4)]]),
        ("M1 1", []),
    ],
)
def test_straight_lines(data: str, points: list[list[tuple[float, float]]]) -> None:
    assert ends(data) == points


def test_a_close_comes_back_to_the_start() -> None:
    first, second = subpaths("M1 1h3v3z l1 1")
    assert first.closed
    assert second.pieces[0].points[0] == (1, 1)


@pytest.mark.parametrize("flags", ["0 0 1", "0 01", "0,0,1"])
def test_an_arc_stays_on_its_circle(flags: str) -> None:
    [path] = subpaths(f"M5 0A5 5 {flags}0 5" if flags == "0 01" else f"M5 0A5 5 {flags} 0 5")
    points = path.pieces[0].points
    assert path.pieces[0].curve
    assert points[0] == (5, 0)
    assert points[-1] == (0, 5)
    assert [hypot(*p) for p in points] == pytest.approx([5] * len(points))


def test_smooth_curves_mirror_the_control_before() -> None:
    [path] = subpaths("M0 0C0 1 1 1 1 0S2 -1 2 0")
    middle = path.pieces[1].points[8]
    assert middle == pytest.approx((1.5, -0.75))  # mirrored control (1, -1): 3/8 (-1 - 1)


def test_a_quadratic_curve_passes_its_middle() -> None:
    [path] = subpaths("M0 0Q1 2 2 0T4 0")
    assert path.pieces[0].points[8] == pytest.approx((1, 1))
    assert path.pieces[1].points[8] == pytest.approx((3, -1))


def test_no_command_is_no_path() -> None:
    with pytest.raises(ValueError, match="command"):
        subpaths("3 4 5")
