"""Lines of pages put on a sheet: arcs, chords, rings, slivers, windows, grids, glyphs."""

from math import cos, radians, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.readers.lines.hand import Hand, Ink, Subpath
from farwall.readers.lines.lattice import lattice_lines
from farwall.readers.lines.lettered import settle, with_units
from farwall.readers.lines.lettering import Run, usual_width, words_of
from farwall.readers.lines.matrices import bezier
from farwall.readers.lines.pen import MOST_STROKES, Pen, Piece
from farwall.readers.lines.sheet import Measure, Role, Stroke
from farwall.readers.lines.windows import within

Point = tuple[float, float]


def around(radius: float, start: float, end: float, count: int) -> list[Point]:
    turns = [radians(start + (end - start) * i / count) for i in range(count + 1)]
    return [(radius * cos(t), radius * sin(t)) for t in turns]


def traced(*pieces: Piece, closed: bool = False, sliver: float = 0.0) -> Pen:
    pen = Pen()
    pen.trace(pieces, layer="", role=Role.OTHER, closed=closed, sliver=sliver)
    return pen


@given(st.floats(0.1, 1e4), st.floats(0, 360), st.floats(20, 170), st.booleans())
def test_arcs_are_swings_drawn_as_curves_or_as_chords(
    radius: float, start: float, sweep: float, curve: bool
) -> None:
    count = max(6, round(sweep / 10))
    pen = traced(Piece(around(radius, start, start + sweep, count), curve=curve))
    [swing] = pen.swings
    assert swing.radius == pytest.approx(radius, rel=1e-6)
    assert swing.sweep_deg == pytest.approx(sweep, rel=1e-6)
    assert swing.centre == pytest.approx((0, 0), abs=1e-6 * radius)
    assert all(stroke.curve for stroke in pen.strokes)


def test_two_arcs_of_one_circle_are_one_swing() -> None:
    first, second = around(2, 0, 45, 8), around(2, 45, 90, 8)
    [swing] = traced(Piece(first, curve=True), Piece(second, curve=True)).swings
    assert swing.sweep_deg == pytest.approx(90)


def test_a_bezier_quarter_is_a_circle_within_tolerance_and_an_ellipse_is_not() -> None:
    reach = 0.5522847498
    quarter = bezier([(1, 0), (1, reach), (reach, 1), (0, 1)])
    assert traced(Piece(quarter, curve=True)).swings[0].radius == pytest.approx(1, rel=1e-3)
    flat = [(2 * x, y) for x, y in quarter]
    assert traced(Piece(flat, curve=True)).swings == []


def test_a_whole_circle_and_a_wall_with_corners_are_no_swings() -> None:
    assert traced(Piece(around(1, 0, 360, 36), curve=True)).swings == []
    assert traced(Piece([(0, 0), (5, 0), (5, 3), (9, 3), (9, 8), (2, 8), (2, 4)])).swings == []


def test_closed_straight_lines_are_rings() -> None:
    box = Piece([(0, 0), (4, 0), (4, 3), (0, 3)])
    assert len(traced(box, closed=True).rings[0].points) == 4
    assert len(traced(box, closed=True).strokes) == 4
    assert traced(box).rings == []


def test_a_line_drawn_as_a_filled_box_is_its_middle() -> None:
    [stroke] = traced(Piece([(0, 0), (4, 0), (4, 0.1), (0, 0.1)]), closed=True, sliver=0.2).strokes
    assert {stroke.start, stroke.end} == {(0, 0.05), (4, 0.05)}


def test_points_beyond_any_page_and_too_many_are_turned_away() -> None:
    with pytest.raises(ValueError, match="beyond"):
        traced(Piece([(0, 0), (float("nan"), 1)]))
    with pytest.raises(Refused, match="pieces of lines"):
        traced(Piece([(0.0, 0.0)] * (MOST_STROKES + 1)))


def test_the_colour_of_the_paper_is_not_seen() -> None:
    hand = Hand((100, 100))
    page = Subpath([Piece([(0, 0), (100, 0), (100, 100), (0, 100)])], closed=True)
    hand.draw([page], Ink("", "#000000"))
    assert not hand.sees(Ink("#000000", ""))
    assert hand.sees(Ink("#ffffff", ""))
    assert hand.pen.strokes == []


def test_lines_end_at_their_window() -> None:
    box = Subpath([Piece([(-5, 5), (15, 5), (15, 9)])], closed=True)
    ends = [piece.points for path in within([box], (0, 0, 10, 10)) for piece in path.pieces]
    assert ends[0] == [(0, 5), (10, 5)]
    assert all(0 <= x <= 10 for line in ends for x, _ in line)


def test_a_lattice_is_told_from_walls() -> None:
    def stroke(*ends: Point) -> Stroke:
        return Stroke(ends[0], ends[1], "", Role.OTHER)

    grid = [stroke((x, -1), (x, 31)) for x in (0, 10, 20, 30)]
    grid += [stroke((-1, y), (31, y)) for y in (0, 10, 20, 30)]
    walls = [stroke((2, y), (28, y)) for y in (1, 1.2, 29, 29.2)]
    walls += [stroke((x, 1), (x, 29.2)) for x in (2, 2.2, 27.8, 28)]
    assert lattice_lines(grid + walls) == grid
    assert lattice_lines(walls) == []


@pytest.mark.parametrize("turned", [0, 90, 37])
def test_a_glyph_each_becomes_words(turned: int) -> None:
    runs, along = [], 0.0
    for letter in "GRAPHIC SCALE":
        t = radians(turned)
        runs.append(Run(letter, (along * cos(t), along * sin(t)), 10, turned))
        along += usual_width(letter) * 10
    runs += [Run("    ", (0, 0), 10, turned), Run("48", (300, 300), 10, turned)]
    assert sorted(words.text for words in words_of(runs)) == ["48", "GRAPHIC SCALE"]


def test_numbers_far_apart_stay_apart() -> None:
    runs = [Run(text, (x, 0), 10, 0) for text, x in (("0", 0), ("16", 100), ("32", 200))]
    assert [words.text for words in words_of(runs)] == ["0", "16", "32"]


def test_bare_numbers_need_company() -> None:
    few = [Measure(70, "3500"), Measure(60, "3000")]
    assert with_units(few) == ((), 0)
    many = [*few, Measure(90, "4500"), Measure(10, "A")]
    written, bare = with_units(many)
    assert [one.text for one in written] == ["3500 mm", "3000 mm", "4500 mm"]
    assert bare == 3
    assert settle(written)
    assert not settle([Measure(70, "3.5 m"), Measure(10, "9 m")])


@pytest.mark.parametrize("bad", [float("nan"), float("inf"), 1e300])
def test_lettering_without_a_place_is_dropped(bad: float) -> None:
    runs = [Run("A", (bad, 0), 10, 0), Run("B", (0, 0), bad, 0), Run("C", (0, 0), 10, bad)]
    assert words_of(runs) == []
