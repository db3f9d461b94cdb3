"""The same invented slab photographed before the stain, or before its second coat.

Beside the frozen floors, which draw nothing anew for it: what is shown of the slab is what they
hold of it (paste, trowel, sand, cracks, other pours), from another stand and in another light, with
dust, steps and wet ground of its own, thrown by generators of its own. On some floors a crack came
later or mud was cleaned between. How much a bare slab foretells of the stain is the generator's
guess and nothing that was measured on concrete. A first coat is drawn without marks: those of the
floor count as the second coat's. Frozen before the finder was shown it. Rank of every figure:
guess.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Literal

import numpy as np

from farwall.bench.mopped_floors import M_PER_PX, MoppedFloor
from farwall.bench.mopped_marks import Ground, footprints, light_patch
from farwall.bench.mopped_noise import Chance, Field, chance, clouds, marbled, soft, stepped
from farwall.bench.mopped_slab import Decoy, Slab, slab
from farwall.bench.mopped_stain import DRYING, Stained, looks, stained

When = Literal["bare", "first coat"]
PARTS: dict[When, int] = {"bare": 50, "first coat": 60}
"""First of the generators of each; the next is the camera's, the one after that the clicks'."""
NEW_CRACK, MUD, STEPS, DUSTY = 0.25, 0.15, 0.3, 0.7
"""Shares of floors where one of the cracks came later, a spot of mud was cleaned between, someone
had walked over it, dust was left by the mop."""
_CRACK_M = 0.03
_PX = 1 / M_PER_PX


def before(floor: MoppedFloor, when: When) -> MoppedFloor | None:
    """The floor as it was mopped then, marks and all else of later gone; the same for a seed.

    None for a first coat where the floor has only one.
    """
    ground = slab(floor.seed, floor.wide_m, floor.high_m, floor.m_per_px)
    coats = stained(floor.seed, ground).coats
    if when == "first coat" and len(coats) < 2:
        return None
    throws = chance(floor.seed, PARTS[when])
    was = _without_a_crack(ground, throws)
    look = looks(Stained(was, coats[:1] if when == "first coat" else (), _wet(was, throws)))
    return replace(
        floor, look=np.asarray(look * np.exp(-_soiled(was, throws))[..., None], np.float32),
        relief=was.relief, marks=(),
        decoys=tuple(one for one in was.decoys if one.kind != "drying"),
    )  # fmt: skip


def _without_a_crack(ground: Slab, throws: Chance) -> Slab:
    """On some floors one of the cracks is not there yet; the paste under it stays."""
    cracks = [one for one in ground.decoys if one.kind == "crack"]
    if not cracks or throws.uniform() >= NEW_CRACK:
        return ground
    later = cracks[int(throws.integers(len(cracks)))]
    near = _near(later, ground.shape, ground.shape[0] * ground.m_per_px)
    shut = np.where(near, ground.lines, 0).astype(np.float32)
    return replace(
        ground,
        grey=np.asarray(ground.grey * np.exp(0.9 * shut), np.float32),
        thirst=np.asarray(
            ground.thirst / (1 + 0.25 * soft(shut, 0.012 * _PX)), np.float32
        ),
        lines=np.asarray(ground.lines - shut, np.float32),
        decoys=[one for one in ground.decoys if one is not later],
    )  # fmt: skip


def _near(crack: Decoy, shape: tuple[int, int], high_m: float) -> np.ndarray:
    import cv2

    drawn = np.zeros(shape, np.uint8)
    at = (np.array(crack.line) * [1, -1] + [0, high_m]) / M_PER_PX
    cv2.polylines(drawn, [np.round(at).astype(np.int32)], isClosed=False, color=1,
                  thickness=round(_CRACK_M / M_PER_PX))  # fmt: skip
    return drawn > 0


def _wet(was: Slab, throws: Chance) -> Field:
    """How far the film of the mop is gone, as on the stained floor and as seldom."""
    if throws.uniform() > DRYING:
        return np.zeros(was.shape, np.float32)
    thin = marbled(throws, was.shape, 0.9 * _PX, 0.2 * _PX) + 2 * (was.thirst - 1)
    gone = stepped(thin, float(np.quantile(thin, throws.uniform(0.90, 0.98))), 0.06)
    return np.asarray(gone * throws.uniform(0.3, 1.0), np.float32)


def _soiled(was: Slab, throws: Chance) -> Field:
    """-ln of what is thrown back less for dirt (below 0 for dust, which is light)."""
    ground = Ground(was.shape, _PX, was.thirst)
    dirt = np.zeros(was.shape, np.float32)
    if throws.uniform() < DUSTY:
        left = clouds(throws, was.shape, 0.4 * _PX, 4) + clouds(throws, was.shape, 0.05 * _PX, 3)
        dirt -= np.float32(throws.uniform(0.005, 0.03)) * left
    if throws.uniform() < STEPS:
        for _ in range(int(throws.integers(1, 4))):
            side = throws.choice([-1.0, 1.0])
            dirt += np.float32(side * throws.uniform(0.03, 0.10)) * footprints(ground, throws).body
    if throws.uniform() < MUD:
        dirt += np.float32(throws.uniform(0.08, 0.3)) * light_patch(ground, throws).body
    return dirt
