"""Hours run together into boxes: every cell once, and few boxes for many cells."""

import numpy as np
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays

from farwall.papers.svg import Svg
from farwall.papers.year_marks import boxes, draw_cells, filled, patterns


@given(arrays(bool, st.tuples(st.integers(1, 12), st.integers(1, 24))))
def test_boxes_cover_each_cell_once_and_no_other(cells):
    drawn = np.zeros(cells.shape, dtype=int)
    for hour, day, wide, high in boxes(cells):
        drawn[day : day + high, hour : hour + wide] += 1
    assert (drawn == cells).all()


def test_a_whole_year_is_one_box_by_hand():
    assert boxes(np.ones((365, 24), dtype=bool)) == [(0, 0, 24, 365)]


def test_nothing_is_drawn_of_nothing_and_hatches_are_there():
    svg = Svg(width=10, height=10, family="sans-serif", ident="year")
    patterns(svg)
    draw_cells(svg, np.zeros((3, 24), dtype=bool), 0, 0, "red")
    assert "red" not in str(svg)
    for name in ("cold", "warm", "damp", "slow", "unrinsed"):
        assert f'id="year-{name}"' in str(svg)
        assert filled(svg, name) == f"url(#year-{name})"
