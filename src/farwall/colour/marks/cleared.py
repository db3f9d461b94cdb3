"""The floor with its mottle thinned by its own colours, for lap lines alone.

More stain moves a floor along one line of colours, its clouds mostly along another. So red, green
and blue are weighed, for waves of each length, so that the mottle varies least while a change along
the floor's own mean colour keeps its size [capon-1969]; the colour of a lap is known only about, so
the weights are held back by a load [cox-1987]. On invented floors a lap stands out of mottle 1.2
times as much in the median, and on nine in ten of them no less than before (measured here).
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import BACKGROUND_M, Bools, Ground, blurred, filled, seen_of
from farwall.colour.marks.nouns import Floats32, Sheet

Floats = NDArray[np.float64]

WAVES_M = (0.01, 0.02, 0.04, 0.08, 0.16, BACKGROUND_M)
"""Bounds of the lengths of waves that are weighed apart, as widths of a blur. [m]"""
LOAD = 0.03
"""Share of the mottle's variance that is added to each colour's. Chosen on invented floors."""
FINGERS_M = 0.05
"""A lap runs on, so it is followed nearer to glare than another mark would be. Rank: guess."""
STREAK = 5.0
"""What is brighter than the floor beside it by so many spreads is glare that burned nothing out."""
_LUMINANCE = (0.2126, 0.7152, 0.0722)
_LEAST_LIGHT = 0.004
_SRGB_OF_XYZ = np.array(
    [[3.2406, -1.5372, -0.4986], [-0.9689, 1.8758, 0.0415], [0.0557, -0.2040, 1.0570]]
)
_FROM_WHITE = (_SRGB_OF_XYZ * np.linalg.inv(_SRGB_OF_XYZ).sum(axis=1)).astype(np.float32)
_EVERY = 3


def cleared(sheet: Sheet, ground: Ground) -> Ground:
    """The ground for lap lines: mottle thinned, seen nearer to glare, streaks of light left out."""
    if not ground.known[::_EVERY, ::_EVERY].any():
        return ground
    dark = _thinned(ground, _logs(sheet, ground))
    near = seen_of(ground.known, ground.step_m, FINGERS_M) & ~_streaks(ground)
    return replace(
        ground, dark=dark, flat=dark - blurred(dark, BACKGROUND_M / ground.step_m), seen=near
    )


def _logs(sheet: Sheet, ground: Ground) -> list[Floats32]:
    """-ln of linear red, green and blue, on the points of the ground, holes filled."""
    import cv2

    size = ground.dark.shape[::-1]
    floor = sheet.floor & np.isfinite(sheet.lab[..., 0])
    share = cv2.resize(floor.astype(np.float32), size, interpolation=cv2.INTER_AREA)
    only = np.where(floor[..., None], sheet.lab, 0).astype(np.float32)
    lab = cv2.resize(only, size, interpolation=cv2.INTER_AREA) / np.maximum(share, 1e-6)[..., None]
    logs = -np.log(np.clip(light_of(np.asarray(lab, np.float32)), _LEAST_LIGHT, 1))
    whole = filled(logs, ground.known, ground.step_m)
    return [np.ascontiguousarray(whole[..., n]) for n in range(3)]


def light_of(lab: Floats32) -> Floats32:
    """Linear red, green and blue of CIELAB, as if its white were that of sRGB: only how they vary
    counts here. Source: [iec-61966-2-1]."""
    import cv2

    y = (lab[..., 0] + 16) / 116
    f = cv2.merge((y + lab[..., 1] / 500, y, y - lab[..., 2] / 200))
    ratio = f * f
    ratio *= f
    if f.min() <= 6 / 29:
        low = f <= 6 / 29
        ratio[low] = 3 * (6 / 29) ** 2 * (f[low] - 4 / 29)
    return np.asarray(cv2.transform(ratio, _FROM_WHITE), np.float32)


def _thinned(ground: Ground, logs: list[Floats32]) -> Floats32:
    usual = np.array([np.median(one[ground.known]) for one in logs], np.float64)
    like = usual / max(float(usual @ _LUMINANCE), 1e-3)
    out, finer = ground.dark.copy(), _blurs([ground.dark, *logs], WAVES_M[0], ground.step_m)
    for width_m in WAVES_M[1:]:
        coarser = _blurs([ground.dark, *logs], width_m, ground.step_m)
        waves = [one - other for one, other in zip(finer, coarser, strict=True)]
        weights = _weights(waves, ground.known, like)
        out += sum(np.float32(w) * one for w, one in zip(weights, waves[1:], strict=True))
        out -= waves[0]
        finer = coarser
    return np.asarray(out, np.float32)


def _blurs(of: list[Floats32], width_m: float, step_m: float) -> list[Floats32]:
    return [blurred(one, width_m / step_m) for one in of]


def _weights(waves: list[Floats32], known: Bools, like: Floats) -> Floats:
    """Of red, green and blue: least variance, a change by `like` keeping its size."""
    few = np.stack([one[::_EVERY, ::_EVERY][known[::_EVERY, ::_EVERY]] for one in waves])
    low, high = np.percentile(few, [1, 99], axis=1)
    held = np.clip(few, low[:, None], high[:, None]).astype(np.float64)
    load = LOAD * float(held[0].var()) + 1e-9
    weights = np.linalg.solve(np.cov(held[1:]) + load * np.eye(3), like)
    return np.asarray(weights / (weights @ like), np.float64)


def _streaks(ground: Ground) -> Bools:
    """Light in streaks that the reader let through, and a point or two beside."""
    import cv2

    soft = blurred(ground.flat, 0.01 / ground.step_m)
    spread = float(np.median(np.abs(ground.flat[::5, ::5]))) / 0.6745
    bright = (soft < -STREAK * max(spread, 1e-4)).astype(np.uint8)
    return np.asarray(cv2.dilate(bright, np.ones((5, 5), np.uint8)) > 0)
