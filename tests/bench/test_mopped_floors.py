"""Invented mopped floors: their truth lies in the picture, and nothing else does."""

from functools import cache

import numpy as np
import pytest
from shapely import Polygon

from farwall.bench.mopped_camera import photograph
from farwall.bench.mopped_floors import LEAST_L, mopped
from farwall.bench.mopped_marks import MAKERS
from farwall.bench.mopped_slab import slab
from farwall.bench.mopped_stain import lightness, looks, stained
from farwall.facts.log_colour import MARKS

SEEDS = (41, 42, 43, 46)

drawn = cache(mopped)


def unmarked(floor):
    """L of the same floor before any mark is laid on it."""
    ground = slab(floor.seed, floor.wide_m, floor.high_m, floor.m_per_px)
    return lightness(looks(stained(floor.seed, ground)))


def inside(floor, rings):
    import cv2

    mask = np.zeros(floor.look.shape[:2], np.uint8)
    for ring in rings:
        at = [(x / floor.m_per_px, (floor.high_m - y) / floor.m_per_px) for x, y in ring]
        cv2.fillPoly(mask, [np.round(np.array(at)).astype(np.int32)], 1)
    return mask > 0


def test_the_kinds_are_those_that_are_looked_for():
    assert set(MAKERS) == set(MARKS)
    assert sum(odds for odds, *_ in MAKERS.values()) == pytest.approx(1.0)


def test_a_floor_is_the_same_again_and_another_seed_is_another():
    first, again = drawn(46), mopped(46)
    assert np.array_equal(first.look, again.look)
    assert (first.marks, first.decoys) == (again.marks, again.decoys)
    assert drawn(41).look.shape != first.look.shape


@pytest.mark.parametrize("seed", SEEDS)
def test_a_mark_changes_its_own_ground_by_its_sign_and_leaves_the_rest(seed):
    floor = drawn(seed)
    changed = lightness(floor.look) - unmarked(floor)
    for mark in floor.marks:
        mean = changed[inside(floor, mark.rings)].mean()
        assert abs(mark.lighter) >= LEAST_L
        assert mean * mark.lighter > 0, mark.kind
        assert abs(mean) > 0.25 * abs(mark.lighter), mark.kind
    away = ~inside(floor, [ring for mark in floor.marks for ring in mark.rings])
    assert np.quantile(np.abs(changed[away]), 0.9) < 0.5


def test_a_floor_without_marks_is_free_of_any():
    free = [seed for seed in SEEDS if not drawn(seed).marks]
    assert free
    for seed in free:
        assert np.array_equal(lightness(drawn(seed).look), unmarked(drawn(seed)))


@pytest.mark.parametrize("seed", SEEDS)
def test_outlines_lie_in_the_piece(seed):
    floor = drawn(seed)
    for mark in floor.marks:
        assert mark.rings, mark.kind
        for ring in mark.rings:
            assert all(0 <= x <= floor.wide_m and 0 <= y <= floor.high_m for x, y in ring)
            assert Polygon(ring).area > 0


def test_a_lap_runs_along_its_line():
    laps = [(drawn(s), m) for s in SEEDS for m in drawn(s).marks if m.kind == "lap line"]
    assert laps
    for floor, mark in laps:
        changed = lightness(floor.look) - unmarked(floor)
        for line in mark.lines:
            at = np.array(line) / floor.m_per_px
            rows = np.clip(floor.high_m / floor.m_per_px - at[:, 1], 0, changed.shape[0] - 1)
            columns = np.clip(at[:, 0], 0, changed.shape[1] - 1)
            assert changed[rows.astype(int), columns.astype(int)].mean() < -0.3


def test_the_photo_is_a_jpeg_of_the_floor_and_the_same_again():
    import cv2

    floor = drawn(46)
    photo = photograph(floor, long_px=480)
    assert photo.data == photograph(floor, long_px=480).data
    picture = cv2.imdecode(np.frombuffer(photo.data, np.uint8), cv2.IMREAD_COLOR)
    assert picture.shape[:2] == (photo.high_px, photo.wide_px)
    assert max(picture.shape) == 480
