"""The floor unrolled along a known edge, and how much each place answers to a strip lying there.

Two bands that met dry leave a strip of two doses. Laid across an edge, the floor is weighed by such
strips of several widths, in noise that has the powers of the floor's own waves [turin-1960]; what
falls off evenly or in a bow across the corridor is no strip and is taken out (least squares).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import Bools
from farwall.colour.marks.nouns import Floats32
from farwall.colour.marks.sampled import between, smoothed
from farwall.nouns import dataclass

Floats = NDArray[np.float64]

PIECE_M, POINT_M = 0.08, 0.01
"""Length of a piece along the edge, and how far places across it lie apart."""
WIDTHS_M = (0.07, 0.11, 0.15, 0.19, 0.23, 0.27)
"""Widths of the strip that two bands share. A guess: a band is overlapped by a hand's width."""
WINDOW_M = 0.40
"""To each side of a place so much of the floor is weighed."""
_SOFT_M = 0.015
_FINE = 4
"""Lines along the edge to a piece of it."""
_LEAST_POWER = 0.02
_RINGS = 60


@dataclass(frozen=True)
class Corridor:
    """answers: (widths, pieces, places across), in spreads of a floor without a mark, darker above
    0 · seen: (pieces, places) · places: (pieces, places, 2), rows and columns on the ground ·
    across_m: of each place from the edge.
    """

    answers: Floats
    seen: Bools
    places: Floats
    across_m: Floats


def corridor_of(
    dark: Floats32, known: Bools, step_m: float, line: Floats, kernels: Floats, *, reach_m: float
) -> Corridor | None:
    """The corridor of so much to each side of a line; None where the line is too short or hidden.

    dark: -ln Y, holes filled · known: where it was seen · step_m: side of its points · line: (n, 2)
    rows and columns · kernels: of `kernels_of`.
    """
    middle = _even(line, PIECE_M / _FINE / step_m)
    pieces = len(middle) // _FINE
    if pieces < 6:
        return None
    middle = middle[: pieces * _FINE]
    side = _aside(middle)
    half = len(kernels[0]) // 2
    count = round(reach_m / POINT_M)
    wide = np.asarray(np.arange(-count - half, count + half + 1) * POINT_M, np.float64)
    at = middle[:, None, :] + side[:, None, :] * (wide / step_m)[None, :, None]
    rows, columns = at[..., 0], at[..., 1]
    of = between(dark, rows, columns)
    high, long = dark.shape
    inside = (rows > 0) & (rows < high - 1) & (columns > 0) & (columns < long - 1)
    seen = known[
        np.clip(rows.astype(int), 0, high - 1), np.clip(columns.astype(int), 0, long - 1)
    ] & inside  # fmt: skip
    of = of.reshape(pieces, _FINE, -1).mean(axis=1)
    shown = seen.reshape(pieces, _FINE, -1).mean(axis=1) > 0.5
    own = slice(half, half + 2 * count + 1)
    if not shown[:, own].any():
        return None
    return Corridor(
        _weighed(of, kernels),
        shown[:, own],
        at.reshape(pieces, _FINE, -1, 2).mean(axis=1)[:, own],
        wide[own],
    )


def _weighed(of: Floats, kernels: Floats) -> Floats:
    """(widths, pieces, places): each window of a piece by each kernel."""
    long = len(kernels[0])
    places = of.shape[1] - long + 1
    # All windows at once: a matrix whose columns are the kernels, each moved to its place.
    moved = np.zeros((len(kernels), places, of.shape[1]))
    at = np.arange(places)
    for n, kernel in enumerate(kernels.T):
        moved[:, at, at + n] = kernel[:, None]
    return np.asarray(of @ moved.transpose(0, 2, 1), np.float64)


def kernels_of(flat: Floats32, step_m: float) -> Floats:
    """Weights across an edge for each width, (widths, places), 1 cm apart.

    In noise of the floor's powers their answers have spread 1 for a line without end, so those of
    pieces have to be brought to their own spread.
    """
    half = round(WINDOW_M / POINT_M)
    across = np.asarray(np.arange(-half, half + 1) * POINT_M, np.float64)
    noise = _together(flat, step_m, len(across))
    bow = np.stack([across**n / WINDOW_M**n for n in range(4)], axis=1)
    inverse = np.linalg.inv(noise)
    square = inverse @ bow
    free = inverse - square @ np.linalg.solve(bow.T @ square, square.T)
    made = []
    for width in WIDTHS_M:
        strip = _stepped(across + width / 2) * _stepped(width / 2 - across)
        weights = free @ strip
        made.append(weights / np.sqrt(max(float(weights @ noise @ weights), 1e-12)))
    return np.array(made)


def _stepped(by_m: Floats) -> Floats:
    return np.asarray(1 / (1 + np.exp(-by_m / _SOFT_M)), np.float64)


def _together(flat: Floats32, step_m: float, count: int) -> Floats:
    """How places across a long line of the floor vary together (count, count), from its powers."""
    held = np.clip(flat, *np.percentile(flat, (1, 99)))
    power = np.abs(np.fft.rfft2((held - held.mean()).astype(np.float32))) ** 2
    waves = np.hypot(
        np.fft.fftfreq(flat.shape[0], step_m)[:, None],
        np.fft.rfftfreq(flat.shape[1], step_m)[None, :],
    )
    edges = np.linspace(0, 0.5 / POINT_M, _RINGS + 1)
    ring = np.clip(np.digitize(waves.ravel(), edges) - 1, 0, _RINGS)
    total = np.bincount(ring, weights=power.ravel(), minlength=_RINGS + 1)[:_RINGS]
    mean = total / np.maximum(np.bincount(ring, minlength=_RINGS + 1)[:_RINGS], 1)
    mean = mean + _LEAST_POWER * mean.max()
    middle = (edges[:-1] + edges[1:]) / 2
    apart = np.arange(count) * POINT_M
    shared = (mean[None, :] * np.cos(2 * np.pi * apart[:, None] * middle[None, :])).sum(axis=1)
    lag = np.abs(np.arange(count)[:, None] - np.arange(count)[None, :])
    return np.asarray(shared[lag] / shared[0], np.float64)


def _even(line: Floats, apart: float) -> Floats:
    along = np.concatenate(([0.0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))))
    at = np.arange(0, along[-1], apart)
    return np.stack([np.interp(at, along, line[:, n]) for n in (0, 1)], axis=1)


def _aside(line: Floats) -> Floats:
    """Unit vectors across the line, turned slowly so that no fold comes of a waver."""
    calm = smoothed(line, 12.0)
    ahead = np.gradient(calm, axis=0)
    long = np.maximum(np.hypot(ahead[:, 0], ahead[:, 1]), 1e-9)[:, None]
    return np.asarray(np.stack((ahead[:, 1], -ahead[:, 0]), axis=1) / long, np.float64)
