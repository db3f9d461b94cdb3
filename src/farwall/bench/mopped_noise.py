"""Uneven fields for invented floors: clouds of many sizes, warped, streaked; ragged lines."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

if TYPE_CHECKING:
    from collections.abc import Sequence

Field = NDArray[np.float32]
Chance = np.random.Generator
Shape = tuple[int, int]


def chance(seed: int, part: int) -> Chance:
    """Throws for one part of a floor: the same for a seed, whatever the other parts throw."""
    return np.random.Generator(np.random.PCG64([seed, part]))


def clouds(throws: Chance, shape: Shape, cell_px: float, octaves: int, gain: float = 0.55) -> Field:
    """A field of mean 0 and spread 1 whose largest clouds are about `cell_px` wide."""
    total = np.zeros(shape, np.float32)
    size, weight = cell_px, 1.0
    for _ in range(octaves):
        rows, columns = (int(np.ceil(n / size)) + 3 for n in shape)
        coarse = throws.standard_normal((rows, columns)).astype(np.float32)
        ahead = throws.uniform(0.0, 1.0, 2)
        total += np.float32(weight) * _stretched(coarse, shape, size, ahead)
        size, weight = max(size / 2, 1.0), weight * gain
        if size <= 1.0:
            break
    return _even(total)


def _stretched(coarse: Field, shape: Shape, size: float, ahead: NDArray[np.float64]) -> Field:
    import cv2

    move = np.array([[1 / size, 0, 0.5 + ahead[0]], [0, 1 / size, 0.5 + ahead[1]]], np.float64)
    flags = cv2.INTER_CUBIC | cv2.WARP_INVERSE_MAP
    return np.asarray(
        cv2.warpAffine(coarse, move, shape[::-1], flags=flags, borderMode=cv2.BORDER_REFLECT),
        np.float32,
    )


def _even(field: Field) -> Field:
    return np.asarray((field - field.mean()) / max(float(field.std()), 1e-6), np.float32)


def warped(field: Field, right: Field, down: Field) -> Field:
    """The field with every point fetched from so many points further right and down."""
    import cv2

    rows, columns = np.indices(field.shape, np.float32)
    return np.asarray(
        cv2.remap(field, columns + right, rows + down, cv2.INTER_LINEAR,
                  borderMode=cv2.BORDER_REFLECT),
        np.float32,
    )  # fmt: skip


def marbled(throws: Chance, shape: Shape, cell_px: float, fold_px: float) -> Field:
    """Clouds folded into themselves, as liquids leave them where they stood; mean 0, spread 1."""
    base = clouds(throws, shape, cell_px, 5)
    folds = [
        np.asarray(fold_px * clouds(throws, shape, 0.8 * cell_px, 3), np.float32) for _ in "xy"
    ]
    return _even(warped(base, folds[0], folds[1]))


def soft(field: Field, spread_px: float) -> Field:
    """The field blurred; a wide blur is done on fewer points."""
    import cv2

    fewer = int(spread_px // 4)
    if fewer < 2:
        return np.asarray(cv2.GaussianBlur(field, (0, 0), max(spread_px, 0.3)), np.float32)
    high, wide = field.shape
    small = cv2.resize(field, (wide // fewer + 1, high // fewer + 1), interpolation=cv2.INTER_AREA)
    small = cv2.GaussianBlur(small, (0, 0), spread_px / fewer)
    return np.asarray(cv2.resize(small, (wide, high), interpolation=cv2.INTER_LINEAR), np.float32)


def ragged(throws: Chance, count: int, cell: float, octaves: int = 5, gain: float = 0.6) -> Field:
    """A line that wavers about 0 with spread 1, largest waves `cell` points long."""
    total = np.zeros(count)
    size, weight = cell, 1.0
    at = np.arange(count)
    for _ in range(octaves):
        knots = throws.standard_normal(int(np.ceil(count / size)) + 3)
        place = at / size + throws.uniform(0, 1)
        low = place.astype(int)
        part = (1 - np.cos(np.pi * (place - low))) / 2
        total += weight * (knots[low] * (1 - part) + knots[low + 1] * part)
        size, weight = max(size / 2, 1.0), weight * gain
    return np.asarray((total - total.mean()) / max(total.std(), 1e-6), np.float32)


def streaks(throws: Chance, along: int, across: int, length: float) -> Field:
    """Fine lines that run along the second axis, as a blade draws them; spread 1."""
    lines = throws.standard_normal((across, int(along / length) + 3)).astype(np.float32)
    import cv2

    return _even(np.asarray(cv2.resize(lines, (along, across), interpolation=cv2.INTER_CUBIC)))


def stepped(field: Field, at: float, width: float) -> Field:
    """0 below `at`, 1 above it, soft over `width`."""
    return np.asarray(1 / (1 + np.exp(np.clip((at - field) / width, -30, 30))), np.float32)


def one_of(throws: Chance, names: Sequence[str], weights: Sequence[float]) -> str:
    """One name, as likely as its weight says."""
    odds = np.array(weights) / sum(weights)
    return names[int(np.searchsorted(np.cumsum(odds), throws.uniform()))]
