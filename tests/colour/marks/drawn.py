"""Quick mopped floors with marks at told places, for the finder's own tests. Not the bench."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.nouns import Sheet

Floats = NDArray[np.float64]
Laid = tuple[str, tuple[float, float]]
"""Kind, and its middle in metres: x from the left, y down from the top."""


def cloud(seed: int, shape: tuple[int, int], slope: float) -> Floats:
    """Noise of unit spread whose power falls with frequency."""
    draw = np.random.default_rng(seed)
    f = np.hypot(np.fft.fftfreq(shape[0])[:, None], np.fft.rfftfreq(shape[1])[None, :])
    f[0, 0] = 1.0
    spectrum = np.fft.rfft2(draw.normal(size=shape)) * f**-slope
    spectrum[0, 0] = 0
    made = np.fft.irfft2(spectrum, s=shape)
    return np.asarray(made / made.std())


def plain(seed: int, width_m: float = 3.6, depth_m: float = 2.8, step_m: float = 0.004) -> Floats:
    """Optical depth of a floor without a mark."""
    shape = (round(depth_m / step_m), round(width_m / step_m))
    return 1.4 + 0.16 * cloud(seed, shape, 1.25) + 0.05 * cloud(seed + 500, shape, 0.5)


def sheet_of(depth: Floats, step_m: float = 0.004) -> Sheet:
    """The floor as a picture in CIELAB."""
    y = 0.75 * np.exp(-depth)
    f = np.cbrt(y)
    lab = np.stack((116 * f - 16, 8 + 4 * depth, 14 + 6 * depth), axis=-1)
    return Sheet(lab.astype(np.float32), np.ones(depth.shape, dtype=bool), step_m)


def grid(depth: Floats, step_m: float) -> tuple[Floats, Floats]:
    """x and y down of every point [m]."""
    rows, columns = depth.shape
    return np.meshgrid((np.arange(columns) + 0.5) * step_m, (np.arange(rows) + 0.5) * step_m)


def soft(inside: Floats, blur_m: float) -> Floats:
    """1 where the signed distance [m] lies inside, 0 outside, soft over `blur_m`."""
    return np.asarray(1 / (1 + np.exp(-np.clip(inside / blur_m, -40, 40))))


def lap_line(depth: Floats, seed: int, step_m: float = 0.004) -> tuple[Floats, Laid]:
    """A dark ragged band across the floor."""
    x, y = grid(depth, step_m)
    draw = np.random.default_rng(seed)
    middle, tilt = draw.uniform(0.9, 1.9), draw.uniform(-0.15, 0.15)
    wave = 0.02 * cloud(seed + 7, (8, depth.shape[1]), 1.2)[0]
    line = middle + tilt * (x - x.mean()) + wave[None, :]
    half = draw.uniform(0.015, 0.04)
    return depth + 0.3 * soft(half - abs(y - line), 0.006), ("lap line", (x.mean(), middle))


def step(depth: Floats, seed: int, step_m: float = 0.004) -> tuple[Floats, Laid]:
    """One tone on this side, another on that."""
    x, y = grid(depth, step_m)
    draw = np.random.default_rng(seed)
    middle = draw.uniform(1.2, 2.2)
    wave = 0.015 * cloud(seed + 7, (8, depth.shape[0]), 1.2)[0]
    return (
        depth + 0.25 * soft(x - middle - wave[:, None], 0.008),
        ("lap line", (middle, float(y.mean()))),
    )


def crescent(depth: Floats, seed: int, step_m: float = 0.004) -> tuple[Floats, Laid]:
    """A lighter sickle."""
    x, y = grid(depth, step_m)
    draw = np.random.default_rng(seed)
    cx, cy = draw.uniform(0.9, x.max() - 0.9), draw.uniform(0.8, y.max() - 0.8)
    r, wide, half = draw.uniform(0.2, 0.45), draw.uniform(0.03, 0.07), draw.uniform(0.5, 0.8)
    turn = draw.uniform(0, 2 * np.pi)
    angle = np.angle(np.exp(1j * (np.arctan2(y - cy, x - cx) - turn)))
    thick = wide / 2 * np.sqrt(np.clip(1 - (angle / half) ** 2, 0, None))
    sickle = soft(thick - abs(np.hypot(x - cx, y - cy) - r), 0.004) * (abs(angle) < half)
    at = (cx + r * np.cos(turn), cy + r * np.sin(turn))
    return depth - 0.4 * sickle, ("missed crescent", at)


def patch(depth: Floats, seed: int, step_m: float = 0.004) -> tuple[Floats, Laid]:
    """A lighter area without a form."""
    x, y = grid(depth, step_m)
    draw = np.random.default_rng(seed)
    cx, cy = draw.uniform(0.7, x.max() - 0.7), draw.uniform(0.7, y.max() - 0.7)
    r = draw.uniform(0.1, 0.25) * (1 + 0.25 * cloud(seed + 3, depth.shape, 1.6))
    return depth - 0.4 * soft(r - np.hypot(x - cx, y - cy), 0.012), ("light patch", (cx, cy))


def drip(depth: Floats, seed: int, step_m: float = 0.004) -> tuple[Floats, Laid]:
    """A dark dot."""
    x, y = grid(depth, step_m)
    draw = np.random.default_rng(seed)
    cx, cy = draw.uniform(0.3, x.max() - 0.3), draw.uniform(0.3, y.max() - 0.3)
    r = draw.uniform(0.006, 0.015)
    return depth + 0.6 * soft(r - np.hypot(x - cx, y - cy), 0.002), ("drip", (cx, cy))


def ring(depth: Floats, seed: int, step_m: float = 0.004) -> tuple[Floats, Laid]:
    """A closed darker line around a puddle that dried."""
    x, y = grid(depth, step_m)
    draw = np.random.default_rng(seed)
    cx, cy = draw.uniform(0.7, x.max() - 0.7), draw.uniform(0.7, y.max() - 0.7)
    angle = np.arctan2(y - cy, x - cx)
    r = draw.uniform(0.12, 0.3) * (
        1 + 0.12 * np.cos(2 * angle + draw.uniform(0, 6)) + 0.07 * np.cos(3 * angle)
    )
    line = soft(0.01 - abs(np.hypot(x - cx, y - cy) - r), 0.004)
    return depth + 0.4 * line, ("ring", (cx, cy))


def tape(depth: Floats, seed: int, step_m: float = 0.004) -> tuple[Floats, Laid]:
    """A straight lighter strip with sharp edges."""
    x, y = grid(depth, step_m)
    draw = np.random.default_rng(seed)
    cx, cy, turn = draw.uniform(1.2, 2.2), draw.uniform(1.0, 1.8), draw.uniform(0, np.pi)
    along = (x - cx) * np.cos(turn) + (y - cy) * np.sin(turn)
    across = -(x - cx) * np.sin(turn) + (y - cy) * np.cos(turn)
    half, long = draw.uniform(0.02, 0.03), draw.uniform(0.4, 0.9)
    inside = np.minimum(half - abs(across), long - abs(along))
    return depth - 0.3 * soft(inside, 0.0015), ("tape ghost", (cx, cy))


def stripes(depth: Floats, seed: int, step_m: float = 0.004) -> tuple[Floats, Laid]:
    """Rows of spraying."""
    x, y = grid(depth, step_m)
    draw = np.random.default_rng(seed)
    turn, apart = draw.uniform(0, np.pi), draw.uniform(0.25, 0.4)
    across = -(x - x.mean()) * np.sin(turn) + (y - y.mean()) * np.cos(turn)
    return (
        depth + 0.12 * np.cos(2 * np.pi * across / apart),
        ("stripe", (float(x.mean()), float(y.mean()))),
    )


def footprint(depth: Floats, seed: int, step_m: float = 0.004) -> tuple[Floats, Laid]:
    """Two soles, one before the other."""
    x, y = grid(depth, step_m)
    draw = np.random.default_rng(seed)
    cx, cy = draw.uniform(1.2, 2.2), draw.uniform(1.0, 1.8)
    turn = draw.uniform(0, 2 * np.pi)
    for side in (-1.0, 1.0):
        along = (x - cx) * np.cos(turn) + (y - cy) * np.sin(turn) - 0.3 * side
        across = -(x - cx) * np.sin(turn) + (y - cy) * np.cos(turn) - 0.09 * side
        front = 0.052 - np.hypot((along - 0.07) / 1.5, across)
        heel = 0.036 - np.hypot((along + 0.09) / 1.3, across)
        waist = np.minimum(0.028 - abs(across), 0.1 - abs(along))
        sole = np.maximum(np.maximum(front, heel), waist)
        depth = depth + 0.35 * soft(sole, 0.004)
    return depth, ("footprint", (cx, cy))


DRAWN: dict[str, Callable[..., tuple[Floats, Laid]]] = {
    "lap line": lap_line, "step": step, "missed crescent": crescent, "light patch": patch,
    "drip": drip, "ring": ring, "tape ghost": tape, "stripe": stripes, "footprint": footprint,
}  # fmt: skip
