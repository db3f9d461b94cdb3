"""Cells take the mean of what they cover."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.readers.floor_photo.flatten import drawn, flattened
from farwall.readers.floor_photo.light_field import evened


@given(side=st.floats(1, 40))
def test_fine_stripes_become_their_mean_and_not_stripes(side):
    """Stripes of one point each, black and white, under cells of many: no ghost pattern."""
    picture = np.zeros((400, 400, 3), np.uint8)
    picture[:, ::2] = 200
    cells = np.arange(60, 340, side, dtype=np.float32)
    x, y = np.meshgrid(cells, cells)
    found = flattened(picture, (x, y), np.full(x.shape, side, np.float32))
    if side >= 3:
        assert found.std() < 12
    assert found.mean() == pytest.approx(100, abs=30 if side < 3 else 6)


def test_a_picture_seen_point_by_point_is_itself():
    rng = np.random.default_rng(2)
    picture = rng.integers(0, 255, (50, 60, 3), np.uint8)
    x, y = np.meshgrid(np.arange(60) + 0.5, np.arange(50) + 0.5)
    found = flattened(
        picture, (x.astype(np.float32), y.astype(np.float32)), np.ones((50, 60), np.float32)
    )
    assert found == pytest.approx(picture.astype(np.float32))


def test_a_polygon_covers_the_cells_whose_middle_it_holds():
    square = [(0.1, 0.1), (0.3, 0.1), (0.3, 0.2), (0.1, 0.2)]
    mask = drawn([square], (60, 80), (0.0, 0.3), 0.005)
    assert abs(int(mask.sum()) - 40 * 20) <= 130  # the edge counts half a cell more
    assert mask[25, 25]
    assert not mask[15, 25]
    assert not mask[25, 15]


def test_the_fall_of_light_is_taken_out_and_a_mark_stays():
    y, x = np.mgrid[0:400, 0:600] / 400
    lab = np.zeros((400, 600, 3), np.float32)
    light = 0.12 * (0.6 + 0.5 * x + 0.2 * y)
    root = np.cbrt(light)
    lab[..., 0] = 116 * root - 16
    lab[..., 1], lab[..., 2] = 6 * root, 12 * root
    mark = np.zeros((400, 600), bool)
    mark[180:220, 280:320] = True
    lab[mark, 0] += 6
    found = evened(lab, np.ones((400, 600), bool))
    rest = found[~mark]
    assert lab[~mark][:, 0].std() > 3
    assert rest.std(axis=0).max() < 0.6
    assert found[mark][:, 0].mean() - rest[:, 0].mean() == pytest.approx(6, abs=0.5)
    assert rest[:, 0].mean() == pytest.approx(lab[~mark][:, 0].mean(), abs=1.0)
