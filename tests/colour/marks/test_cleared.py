"""Mottle thinned by the floor's own colours: a change along its mean colour keeps its size."""

from dataclasses import replace

import cv2
import numpy as np
import pytest
from tests.colour.marks.drawn import cloud

from farwall.colour.marks.cleared import FINGERS_M, cleared, light_of
from farwall.colour.marks.ground import HAND_M, filled, ground_of
from farwall.colour.marks.nouns import Sheet

STEP_M, SHAPE = 0.005, (480, 640)
STAIN = np.array([0.8, 1.0, 1.3])
"""-ln of red, green and blue for stain of one strength: the floor's mean colour."""
RUST = np.array([0.35, 1.0, 1.6])
"""And how its clouds differ: another line of colours."""


def sheet_of(stain, clouds):
    """A floor of so much stain, with clouds of rust on it; both (rows, columns)."""
    light = np.exp(-(stain[..., None] * STAIN + clouds[..., None] * RUST)).astype(np.float32)
    return Sheet(cv2.cvtColor(light, cv2.COLOR_LRGB2LAB), np.ones(SHAPE, bool), STEP_M)


def strip(deep):
    stain = np.full(SHAPE, 1.4)
    stain[230:250] += deep
    return stain


def test_clouds_of_another_colour_grow_fainter_and_a_strip_of_stain_does_not():
    clouds = 0.12 * cloud(3, SHAPE, 1.2)
    bare, marked = (sheet_of(strip(deep), clouds) for deep in (0.0, 0.1))
    before = [ground_of(one).flat for one in (bare, marked)]
    after = [cleared(one, ground_of(one)).flat for one in (bare, marked)]
    assert after[0].std() < 0.6 * before[0].std()
    height = [(two - one)[235:245].mean() for one, two in (before, after)]
    assert height[1] == pytest.approx(height[0], rel=0.15)


def test_a_grey_floor_stays_as_it_was():
    grey = np.exp(-(1.4 + 0.15 * cloud(4, SHAPE, 1.2)))
    light = np.repeat(grey[..., None], 3, axis=-1).astype(np.float32)
    sheet = Sheet(cv2.cvtColor(light, cv2.COLOR_LRGB2LAB), np.ones(SHAPE, bool), STEP_M)
    ground = ground_of(sheet)
    assert np.abs(cleared(sheet, ground).flat - ground.flat).max() < 0.01


def test_a_brighter_photo_changes_hardly_anything():
    sheet = sheet_of(strip(0.1), 0.12 * cloud(3, SHAPE, 1.2))
    light = cv2.cvtColor(sheet.lab, cv2.COLOR_LAB2LRGB) * np.float32(1.2)
    brighter = replace(sheet, lab=cv2.cvtColor(light, cv2.COLOR_LRGB2LAB))
    one, other = (cleared(each, ground_of(each)).flat for each in (sheet, brighter))
    assert (one - other).std() < 0.1 * one.std()


def test_it_sees_nearer_to_glare_and_leaves_streaks_of_light_out():
    sheet = sheet_of(strip(0.0), 0.05 * cloud(5, SHAPE, 1.2))
    floor = sheet.floor.copy()
    floor[:, 300:340] = False
    lab = sheet.lab.copy()
    lab[100:120, 100:200, 0] = 95.0
    sheet = replace(sheet, floor=floor, lab=lab)
    ground = ground_of(sheet)
    own = cleared(sheet, ground)
    edge = 340 + round((HAND_M + FINGERS_M) / 2 / STEP_M)
    assert not ground.seen[240, edge]
    assert own.seen[240, edge]
    assert not own.seen[240, 342]
    assert ground.seen[110, 150]
    assert not own.seen[105:115, 110:190].any()


def test_a_sheet_that_shows_no_floor_is_left_alone():
    sheet = sheet_of(strip(0.0), 0.05 * cloud(6, SHAPE, 1.2))
    ground = ground_of(sheet)
    dark = replace(ground, known=np.zeros_like(ground.known), seen=np.zeros_like(ground.seen))
    assert cleared(sheet, dark) is dark


def test_three_layers_are_filled_at_once_as_one_by_one():
    layers = np.stack([cloud(n, SHAPE, 1.2) for n in range(3)], axis=-1).astype(np.float32)
    known = np.ones(SHAPE, bool)
    known[100:300, 200:420] = False
    known[:, :60] = False
    once = filled(layers, known, STEP_M)
    for n in range(3):
        alone = filled(np.ascontiguousarray(layers[..., n]), known, STEP_M)
        assert np.abs(once[..., n] - alone).max() < 1e-5
        assert np.array_equal(once[known][:, n], layers[known][:, n])


def test_light_of_a_colour_is_that_of_the_large_library_under_its_own_white():
    throws = np.random.default_rng(5)
    lab = throws.uniform((1, -20, -20), (95, 40, 40), (50, 60, 3)).astype(np.float32)
    theirs = cv2.cvtColor(lab, cv2.COLOR_LAB2LRGB)
    assert np.clip(light_of(lab), 0, 1) == pytest.approx(theirs, abs=2e-4)
