"""Hatching, treads, grid lines, borders and furniture: each by its own reason, by hand."""

from itertools import pairwise

import pytest

from farwall.readers.lines.frames import find_frame, find_title
from farwall.readers.lines.furniture import find_furniture
from farwall.readers.lines.grids import find_bubbles, find_grid
from farwall.readers.lines.hatching import FEWEST, find_patterns
from farwall.readers.lines.parallels import Strokes, in_twos
from farwall.readers.lines.sheet import Ring, Role, Stroke, Swing, Words

Box = tuple[float, float, float, float]


def one(x0: float, y0: float, x1: float, y1: float) -> Stroke:
    return Stroke((x0, y0), (x1, y1), "0", Role.OTHER)


def box(x0: float, y0: float, x1: float, y1: float) -> list[Stroke]:
    corners = [(x0, y0), (x1, y0), (x1, y1), (x0, y1), (x0, y0)]
    return [Stroke(a, b, "0", Role.OTHER) for a, b in pairwise(corners)]


def boards(count: int, gap: float, long: float = 3.0) -> list[Stroke]:
    return [one(0, n * gap, long, n * gap) for n in range(count)]


def walls(wide: float = 6.0, high: float = 5.0) -> list[Stroke]:
    """A room in walls 0.2 m deep, both faces closed."""
    return [*box(0, 0, wide, high), *box(-0.2, -0.2, wide + 0.2, high + 0.2)]


@pytest.mark.parametrize(("count", "found"), [(FEWEST - 1, 0), (FEWEST, 1), (20, 1)])
def test_six_strokes_at_one_distance_are_a_pattern(count: int, found: int) -> None:
    patterns = find_patterns(Strokes(boards(count, 0.15)))
    assert len(patterns) == found
    assert sum(len(p.strokes) for p in patterns) == found * count


def test_walls_in_twos_are_no_pattern() -> None:
    faces = [one(0, y + side, 8, y + side) for y in (0, 3, 6, 9, 12) for side in (0.0, 0.1)]
    assert find_patterns(Strokes(faces)) == []
    assert in_twos(Strokes(faces))


def test_a_wall_at_the_rim_of_boards_stays() -> None:
    room = box(0, 0, 3, 3)
    inside = [one(0, n * 0.15, 3, n * 0.15) for n in range(1, 20)]
    (pattern,) = find_patterns(Strokes([*room, *inside]))
    assert pattern.strokes == frozenset(range(4, 23))


def test_strokes_as_far_apart_as_treads_are_told_as_treads() -> None:
    (pattern,) = find_patterns(Strokes(boards(12, 0.28, long=1.0)))
    assert (pattern.treads, pattern.gap_m) == (True, pytest.approx(0.28, abs=0.01))
    (pattern,) = find_patterns(Strokes(boards(12, 0.1, long=1.0)))
    assert not pattern.treads


def test_a_line_into_a_lettered_circle_is_a_grid_line() -> None:
    from math import cos, pi, sin

    rim = [(2 + 0.3 * cos(n * pi / 12), 9.3 + 0.3 * sin(n * pi / 12)) for n in range(24)]
    circle = [Stroke(a, b, "0", Role.OTHER) for a, b in pairwise([*rim, rim[0]])]
    given = [*walls(), one(2, -2, 2, 9.0), *circle]
    bubbles = find_bubbles([Ring(tuple(rim), "0", Role.OTHER)], [Words("A", (2, 9.3), 0.2, 0, "0")])
    assert find_grid(Strokes(given), bubbles) == set(range(8, len(given)))
    assert find_bubbles([Ring(tuple(rim), "0", Role.OTHER)], []) == []


def test_a_line_across_the_whole_that_ends_in_the_open_is_a_grid_line() -> None:
    given = [*walls(), one(-3, 2.5, 9, 2.5)]
    assert find_grid(Strokes(given), []) == {8}
    within = [*walls(), one(0, 2.5, 6, 2.5)]
    assert find_grid(Strokes(within), []) == set()


def test_a_border_goes_with_its_title_and_a_house_stays() -> None:
    house = [*walls(), one(3, 0, 3, 5), one(3.1, 0, 3.1, 5)]
    frame = [*box(-3, -3, 9, 8), one(5, -3, 5, -2), one(5, -2, 9, -2)]
    assert find_frame(Strokes([*house, *frame]), []) == set(range(len(house), len(house) + 6))
    assert find_frame(Strokes(house), []) == set()


def test_a_door_that_hangs_on_it_makes_a_box_a_wall() -> None:
    swing = Swing((-3, 1), ((-3, 2), (-2, 1)), 1.0, 90, "0", Role.OTHER)
    house = [*walls(), one(3, 0, 3, 5), one(3.1, 0, 3.1, 5)]
    assert find_frame(Strokes([*house, *box(-3, -3, 9, 8)]), [swing]) == set()


def test_a_table_of_scale_and_date_is_a_title_block() -> None:
    table = [*box(0, 0, 4, 1), one(0, 0.5, 4, 0.5)]
    words = [Words("SCALE 1:50", (2, 0.2), 0.1, 0, "0"), Words("DATE", (2, 0.7), 0.1, 0, "0")]
    assert find_title(Strokes([*table, *box(8, 8, 12, 12)]), words, []) == set(range(5))
    assert find_title(Strokes(table), words[:1], []) == set()


def test_furniture_goes_posts_and_pieces_of_wall_stay() -> None:
    table, post, wall = box(2, 2, 3.6, 2.8), box(5, 4, 5.4, 4.4), box(1, 1, 1.12, 2.2)
    found = find_furniture(Strokes([*walls(), *table, *post, *wall]), [], [])
    assert found == set(range(8, 12))


def test_a_bed_against_the_wall_goes_and_the_wall_stays() -> None:
    bed = [one(4.6, 5, 4.6, 3), one(4.6, 3, 6, 3), *box(4.8, 4.4, 5.8, 4.8)]
    assert find_furniture(Strokes([*walls(), *bed]), [], []) == set(range(8, 14))


def test_a_small_closed_piece_that_bears_a_rooms_name_stays() -> None:
    closet = box(2, 2, 3.6, 3.4)
    words = [Words("CLOSET", (2.8, 2.7), 0.15, 0, "0")]
    assert find_furniture(Strokes([*walls(), *closet]), words, []) == set()
