"""What a line is like: the floor unrolled along it, and the figures of its cross-section."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import Ground
from farwall.colour.marks.nouns import Floats32
from farwall.colour.marks.sampled import between, smoothed
from farwall.nouns import dataclass

Floats = NDArray[np.float64]
REACH_M = 0.14
_SMOOTH_M = 0.04


@dataclass(frozen=True)
class Profile:
    """Figures of a line.

    length_m along it, chord_m from end to end · spread_m: how far it strays from a straight line
    (root of mean square) · bend_per_m: curvature of the best arc · ridge: height of its middle over
    both sides, in -ln Y, darker above 0 · step: one side over the other · width_m: of the ridge at
    half its height · held: share of its pieces that agree in sign · sharp: what of the change
    happens within 1 cm · grain: spread of the floor beside it · ends: how many meet the rim.
    """

    length_m: float
    chord_m: float
    spread_m: float
    bend_per_m: float
    ridge: float
    step: float
    width_m: float
    held: float
    sharp: float
    grain: float
    ends: int
    centre: tuple[float, float]


def profile_of(ground: Ground, points: Floats) -> tuple[Profile, Floats]:
    """The figures of a line, and its points centred on it, 1 cm apart; rows and columns."""
    step_m = ground.step_m
    line = _even(points, 0.01 / step_m)
    line = _smooth(line, _SMOOTH_M / 0.01)
    line = _centred(ground, line)
    across = np.arange(-round(REACH_M / step_m), round(REACH_M / step_m) + 1)
    unrolled = _unrolled(ground.dark, line, across)
    offset = across * step_m
    figures = _section(unrolled, np.asarray(offset, dtype=np.float64))
    length = float(np.hypot(*np.diff(line, axis=0).T).sum() * step_m)
    spread, bend, chord = _form(line * step_m)
    rows, columns = ground.flat.shape
    rim = 0.06 / step_m
    ends = sum(bool(min(r, c, rows - r, columns - c) < rim) for r, c in (line[0], line[-1]))
    middle = line[len(line) // 2]
    return Profile(
        length, chord, spread, bend, *figures, ends, (float(middle[0]), float(middle[1]))
    ), line  # fmt: skip


def _even(points: Floats, apart: float) -> Floats:
    along = np.concatenate(([0.0], np.cumsum(np.hypot(*np.diff(points, axis=0).T))))
    count = max(int(along[-1] / apart), 4)
    at = np.linspace(0, along[-1], count)
    return np.stack([np.interp(at, along, points[:, i]) for i in (0, 1)], axis=1)


def _smooth(line: Floats, sigma: float) -> Floats:
    if len(line) < 6:
        return line
    return smoothed(line, min(sigma, len(line) / 6))


def _normals(line: Floats) -> Floats:
    ahead = np.gradient(line, axis=0)
    long = np.maximum(np.hypot(ahead[:, 0], ahead[:, 1]), 1e-9)[:, None]
    return np.stack((ahead[:, 1], -ahead[:, 0]), axis=1) / long


def _unrolled(dark: Floats32, line: Floats, across: NDArray[np.intp]) -> Floats:
    at = line[:, None, :] + _normals(line)[:, None, :] * across[None, :, None]
    return between(dark, at[..., 0], at[..., 1])


def _centred(ground: Ground, line: Floats) -> Floats:
    """Moved across, piece by piece, to where the floor changes as it does on average."""
    across = np.arange(-round(0.06 / ground.step_m), round(0.06 / ground.step_m) + 1)
    strip = _unrolled(ground.dark, line, across)
    strip = strip - strip.mean(axis=1, keepdims=True)
    strip = _smooth(strip, 2.0)
    reach = max(round(0.02 / ground.step_m), 1)
    mean = strip.mean(axis=0)
    inner = mean[reach:-reach]
    inner = inner - inner.mean()
    scores = np.stack([
        strip[:, k : k + len(inner)] @ inner for k in range(2 * reach + 1)
    ], axis=1)  # fmt: skip
    moved = _smooth(scores.argmax(axis=1).astype(float)[:, None] - reach, 3.0)
    return line + _normals(line) * moved


Figures = tuple[float, float, float, float, float, float]
"""ridge, step, width_m, held, sharp, grain."""


def _section(unrolled: Floats, offset: Floats) -> Figures:
    beside = abs(offset) > 0.05
    mean = unrolled.mean(axis=0)
    left, right = offset < -0.015, offset > 0.015
    near = abs(offset) < 0.11
    lo, hi = mean[left & near].mean(), mean[right & near].mean()
    level = np.interp(offset, [-0.03, 0.03], [lo, hi])
    bump = mean - level
    top = int(np.argmax(abs(bump) * (abs(offset) < 0.05)))
    ridge = float(bump[top])
    over = bump / ridge > 0.5 if ridge else np.zeros(len(bump), dtype=bool)
    low = high = top
    while low > 0 and over[low - 1]:
        low -= 1
    while high < len(over) - 1 and over[high + 1]:
        high += 1
    width = float((high - low + 1) * (offset[1] - offset[0]))
    gaps = np.gradient(mean, offset)
    total = max(float(np.ptp(mean[abs(offset) < 0.08])), 1e-6)
    sharp = float(abs(gaps[abs(offset) < 0.04]).max() * 0.01 / total)
    pieces = max(len(unrolled) // 8, 1)
    parts = np.array_split(unrolled, pieces)
    shape = mean - mean.mean()
    agreed = [float(((p.mean(axis=0) - p.mean()) @ shape) > 0) for p in parts]
    grain = float(np.std(unrolled[:, beside] - unrolled[:, beside].mean(axis=0)))
    return ridge, float(hi - lo), width, float(np.mean(agreed)), sharp, max(grain, 1e-6)


def _form(line: Floats) -> tuple[float, float, float]:
    """Strays from straight [m], curvature [1/m], chord [m]."""
    middle = line.mean(axis=0)
    off = line - middle
    _, axes = np.linalg.eigh(off.T @ off)
    along, across = off @ axes[:, 1], off @ axes[:, 0]
    chord = float(np.ptp(along))
    spread = float(np.sqrt(np.mean(across**2)))
    a = np.stack((along**2, along, np.ones_like(along)), axis=1)
    bend = abs(float(np.linalg.lstsq(a, across, rcond=None)[0][0]) * 2)
    return spread, bend, chord
