"""What is bright beside a hole is cut out; what is bright alone stays."""

from dataclasses import replace

import numpy as np
from tests.colour.marks.drawn import grid, plain, sheet_of, soft

from farwall.colour.marks.cleared import cleared
from farwall.colour.marks.glare import NEAREST_M, shine_on, unglared
from farwall.colour.marks.ground import ground_of

STEP_M = 0.004


def laid(light, burnt, slab=None):
    """The floor with so much light on it, burnt where told; the ground and what is left of it."""
    sheet = replace(sheet_of(plain(1) - light), floor=~burnt)
    ground = ground_of(sheet)
    lines = np.zeros(ground.seen.shape, bool) if slab is None else slab
    return ground, unglared(ground, cleared(sheet, ground), lines, shine_on(ground))


def test_a_bright_thing_is_cut_out_where_it_hangs_on_a_hole_and_stays_where_it_is_alone():
    x, y = grid(plain(1), STEP_M)
    beside, alone = (soft(0.07 - np.hypot(x - at, y - 1.4), 0.005) for at in (0.35, 2.4))
    ground, bare = laid(0.9 * (beside + alone), x < 0.3)
    row = round(1.4 / ground.step_m)
    near, far = (round(at / ground.step_m) for at in (0.37, 2.4))
    assert ground.known[row, near]
    assert not bare.known[row, near]
    assert not bare.seen[row, near + round(NEAREST_M / ground.step_m)]
    assert bare.known[row, far]
    assert bare.seen[row, far]
    assert bare.flat[row, far] < -0.3


def test_what_is_larger_than_any_crescent_is_cut_out_alone():
    x, y = grid(plain(1), STEP_M)
    ground, bare = laid(
        1.2 * soft(0.06 - abs(x - 1.8), 0.005) * soft(1.0 - abs(y - 1.4), 0.005), x < 0.02
    )
    row, column = round(1.4 / ground.step_m), round(1.8 / ground.step_m)
    assert not bare.known[row, column]


def test_cracks_are_filled_from_beside_count_as_floor_and_nothing_is_proposed_on_them():
    slab = np.zeros(ground_of(sheet_of(plain(1))).seen.shape, bool)
    slab[200:210] = True
    x, _ = grid(plain(1), STEP_M)
    _, bare = laid(np.zeros(x.shape), x < 0.02, slab)
    assert not bare.seen[200:210].any()
    assert bare.known[200:210, 60:].all()
    assert bare.seen[300, 300]


def test_a_floor_that_is_all_crack_or_all_hidden_has_nothing_seen():
    slab = np.ones(ground_of(sheet_of(plain(1))).seen.shape, bool)
    x, _ = grid(plain(1), STEP_M)
    _, bare = laid(np.zeros(x.shape), x < 0.02, slab)
    assert not bare.seen.any()
