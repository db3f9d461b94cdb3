"""A light patch of stain stays; a cloud of another colour and a reflection are taken out."""

import cv2
import numpy as np
import pytest
from tests.colour.marks.drawn import cloud

from farwall.colour.marks.cleared import cleared
from farwall.colour.marks.ground import ground_of
from farwall.colour.marks.nouns import Mark, Sheet
from farwall.colour.marks.patches import SHINES_L, without_clouds

STEP_M, SHAPE, AT_M, RADIUS_M = 0.005, (480, 640), (1.6, 1.2), 0.2
STAIN, RUST = np.array([0.8, 1.0, 1.3]), np.array([0.35, 1.0, 1.6])
"""-ln of red, green and blue: more stain, and more of what its clouds are of."""


def floor(stain=0.0, rust=0.0, *, blur_m=0.01):
    """A stained floor with clouds of rust, and so much less of either on a round piece."""
    y, x = ((np.arange(n) + 0.5) * STEP_M for n in SHAPE)
    inside = RADIUS_M - np.hypot(x[None, :] - AT_M[0], y[:, None] - AT_M[1])
    piece = 1 / (1 + np.exp(-np.clip(inside / blur_m, -40, 40)))
    clouds = 0.08 * cloud(3, SHAPE, 1.3) - rust * piece
    depth = 1.0 + 0.01 * cloud(4, SHAPE, 0.6) - stain * piece
    light = np.exp(-(depth[..., None] * STAIN + clouds[..., None] * RUST)).astype(np.float32)
    lab = np.asarray(cv2.cvtColor(light, cv2.COLOR_LRGB2LAB), np.float32)
    return Sheet(lab, np.ones(SHAPE, bool), STEP_M, 0.0, SHAPE[0] * STEP_M)


def mark(kind="light patch", lighter=4.0):
    turn = np.linspace(0, 2 * np.pi, 60, endpoint=False)
    at = (AT_M[0], SHAPE[0] * STEP_M - AT_M[1])
    ring = tuple(
        (float(at[0] + RADIUS_M * np.cos(a)), float(at[1] + RADIUS_M * np.sin(a))) for a in turn
    )
    return Mark(kind, at, ring, 0.9, lighter, 0.4, 0.4, "")


def kept(sheet, one, *, shine=False):
    ground = ground_of(sheet)
    mirrored = np.full(ground.seen.shape, shine)
    return without_clouds(sheet, ground, cleared(sheet, ground), mirrored, [one]) == [one]


def test_less_stain_stays_and_a_cloud_of_another_colour_does_not():
    assert kept(floor(stain=0.25), mark())
    assert not kept(floor(rust=0.25), mark())


def test_what_is_soft_all_round_is_no_patch():
    assert not kept(floor(stain=0.25, blur_m=0.12), mark())


@pytest.mark.parametrize(("lighter", "shine"), [(SHINES_L - 1, True), (SHINES_L + 9, False)])
def test_only_what_shines_and_is_very_light_is_a_reflection(lighter, shine):
    assert kept(floor(stain=0.25), mark(lighter=lighter), shine=shine)
    assert not kept(floor(stain=0.25), mark(lighter=SHINES_L + 1), shine=True)


def test_other_marks_are_left_alone():
    assert kept(floor(rust=0.25), mark("ring"))
