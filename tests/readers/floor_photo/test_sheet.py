"""A photo laid on the plan: places, sizes, what is masked."""

from __future__ import annotations

import numpy as np
import pytest
from tests.floor_photos import (
    PATCH,
    PATCH_M,
    ROOM,
    SHINE,
    SHINE_M,
    camera,
    pairs,
    photograph,
    seen_at,
)

from farwall.errors import Refused
from farwall.evidence import Rank
from farwall.readers.colour_photo.nouns import ColourPhoto
from farwall.readers.floor_photo.nouns import Ground, Pair
from farwall.readers.floor_photo.opening import burnt, lab_of, linear
from farwall.readers.floor_photo.sheet import (
    CELL_M,
    FLATTEST,
    Whole,
    floor_sheet,
    laid,
    on_target,
    rows_of,
)

BENCH = Ground(ROOM.rings, ((((4.0, 2.0), (4.5, 2.0), (4.5, 2.5), (4.0, 2.5), (4.0, 2.0)),),))


def _laid(room=ROOM, off_px=0.0, *, shine=True):
    seen = photograph(camera(), shine=shine)
    shot = Whole(linear(seen), burnt(seen))
    return laid(shot, pairs(camera(), off_px), room, as_lab=lab_of)


def _cell(sheet, place):
    return (round((sheet.top_m - place[1]) / sheet.m_per_px),
            round((place[0] - sheet.left_m) / sheet.m_per_px))  # fmt: skip


def test_a_light_patch_lies_where_it_is_and_is_as_large_as_it_is():
    sheet, told = _laid(shine=False)
    lightness = np.where(sheet.floor, sheet.lab[..., 0], 0)
    light = lightness > np.median(lightness[sheet.floor]) + 9
    rows, columns = np.nonzero(light)
    x, y = sheet.place(rows.mean() + 0.5, columns.mean() + 0.5)
    assert (x, y) == pytest.approx(PATCH, abs=CELL_M)
    assert light.sum() * CELL_M**2 == pytest.approx(np.pi * PATCH_M**2, rel=0.04)
    assert told.glare_m2 == 0
    assert told.room_m2 == pytest.approx(24.0)
    assert told.seen_m2 == pytest.approx(sheet.floor.sum() * CELL_M**2)


def test_clicks_that_err_are_told_in_millimetres_on_the_floor():
    _, told = _laid(off_px=2.0)
    assert told.checked
    assert 0.3 < told.rms_mm <= told.worst_mm < 20
    assert told.worst in "ABCDE"
    assert 1 < told.place_mm < told.place_most_mm < 150


def test_mirrored_light_is_masked_and_the_light_patch_is_not():
    sheet, told = _laid()
    row, column = _cell(sheet, SHINE)
    assert not sheet.floor[row, column]
    row, column = _cell(sheet, PATCH)
    assert sheet.floor[row, column]
    a, b = SHINE_M
    assert np.pi * a * b < told.glare_m2 < np.pi * (a + 0.08) * (b + 0.08)


def test_nothing_outside_the_room_nor_under_a_fixture_is_floor():
    sheet, told = _laid(BENCH)
    assert told.room_m2 == pytest.approx(24.0 - 0.25)
    for place, open_floor in (((4.25, 2.25), False), ((4.6, 2.25), True), ((3.98, 2.25), False),
                              ((3.0, 3.99), False), ((3.0, 3.9), True)):  # fmt: skip
        row, column = _cell(sheet, place)
        assert sheet.floor[row, column] is np.bool_(open_floor), place


def test_floor_seen_too_flat_is_masked():
    """From 0.5 m above the floor, what lies beyond 75° from the plumb line is not judged."""
    matrix = camera((3.0, -0.6, 0.5), (3.0, 1.2))
    corners = {"A": (2.6, 0.6), "B": (3.4, 0.6), "C": (3.9, 2.4), "D": (2.1, 2.4)}
    told_in = [Pair(seen_at(matrix, place), place, name) for name, place in corners.items()]
    seen = photograph(matrix)
    sheet, told = laid(Whole(linear(seen)), told_in, ROOM, as_lab=lab_of)
    far_m = 0.5 * np.sqrt(1 - FLATTEST**2) / FLATTEST - 0.6
    assert sheet.top_m == pytest.approx(far_m, abs=0.25)
    assert told.seen_m2 < 3


def test_a_photo_of_known_colour_gives_the_same_floor():
    seen = photograph(camera(), shine=False)
    lab = lab_of(linear(seen).astype(np.float32))
    sheet, _ = floor_sheet(ColourPhoto(lab, None, Rank.GUESS), pairs(camera()), ROOM)
    other, _ = _laid(shine=False)
    both = sheet.floor & other.floor
    assert both.mean() > 0.3
    assert np.abs(sheet.lab - other.lab)[both].max() < 2.0
    assert not sheet.true_colour


def test_a_target_of_known_size_lays_the_photo_by_itself():
    matrix = camera()
    corners = [(2.8, 2.2), (3.22, 2.2), (3.22, 1.9), (2.8, 1.9)]
    told_in = on_target([seen_at(matrix, p) for p in corners], (0.42, 0.3), (2.8, 2.2), 0.0)
    assert [p.floor for p in told_in] == [pytest.approx(p) for p in corners]
    turned = on_target([(0, 0)] * 4, (0.42, 0.3), (1.0, 1.0), 90.0)
    assert turned[1].floor == pytest.approx((1.0, 1.42))
    assert turned[2].floor == pytest.approx((1.3, 1.42))


def test_another_room_is_not_seen():
    away = Ground((((20.0, 0.0), (24.0, 0.0), (24.0, 4.0), (20.0, 4.0), (20.0, 0.0)),))
    with pytest.raises(Refused, match="Nothing of the room"):
        _laid(away)


def test_the_same_room_lies_on_the_same_lines_in_every_photo():
    first, _ = _laid()
    matrix = camera((3.6, -0.6, 1.7), (3.0, 2.1))
    seen = photograph(matrix)
    second, _ = laid(Whole(linear(seen)), pairs(matrix), ROOM, as_lab=lab_of)
    for a, b in ((first.left_m, second.left_m), (first.top_m, second.top_m)):
        assert (a - b) / CELL_M == pytest.approx(round((a - b) / CELL_M), abs=1e-6)


def test_the_rows_that_are_asked_for_are_enough():
    """What lies beyond them may be anything."""
    seen = photograph(camera())
    asked = []

    class Torn(Whole):
        def rows(self, top, low):
            asked.append((top, low))
            self.picture[:top], self.picture[low:] = 0, 65535
            return super().rows(top, low)

    away = pairs(camera())
    whole, _ = laid(Whole(linear(seen), burnt(seen)), away, ROOM, as_lab=lab_of)
    part, _ = laid(Torn(linear(seen), burnt(seen)), away, ROOM, as_lab=lab_of)
    assert (part.lab == whole.lab).all()
    assert (part.floor == whole.floor).all()
    ((top, low),) = asked
    assert top % 64 == 0
    assert low <= seen.shape[0]
    assert rows_of(np.array([1000.0, 2000.0], np.float32), 4000) == (704, 2256)
    assert rows_of(np.array([30.0, 90.0], np.float32), 100) == (0, 100)
