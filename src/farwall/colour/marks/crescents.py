"""Missed crescents: what two circles of the wand leave between them, sought by its form.

A crescent of a told size and turn is laid on every place of the floor and weighed against mottle of
the floor's own waves: a matched filter in noise that is not white [turin-1960], here for -ln Y held
to three spreads, so that glare's rim and a stone do not shout. Forms: circles of 0.16 to 0.33 m, as
an arm draws them (common practice, no source), 6 cm at the thickest.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import Bools, Ground, blurred
from farwall.colour.marks.nouns import Floats32

POINT_M = 0.02
RADII_M = (0.16, 0.23, 0.33)
THICK_M = (0.06,)
TURNS = 16
_HALF_ANGLE = 1.05
_USUAL = 4.6
"""Largest answer in the mottle of a floor about 3 m wide, in spreads. Measured here."""
_APART_M = 0.25
_LOCAL_M = 0.4


@dataclass(frozen=True)
class Crescent:
    """at: (row, column) of its thickest place · over: its answer by the largest in mottle."""

    at: tuple[float, float]
    radius_m: float
    thick_m: float
    turn: float
    over: float
    outline: NDArray[np.float64]


def crescents_of(
    ground: Ground, mottle: Floats32, *, least: float, most: int = 4
) -> list[Crescent]:
    """Crescents whose answer is at least `least` times the largest in mottle, the surest first."""
    shrink = max(round(POINT_M / ground.step_m), 1)
    point_m = ground.step_m * shrink
    seen = _small(ground.seen.astype(np.float32), shrink) > 0.5
    if min(seen.shape) < 16 or not seen.any():
        return []
    forms = [(r, t, k) for r in RADII_M for t in THICK_M for k in range(TURNS)]
    answer, which = _answers(_small(ground.flat, shrink), seen, forms, point_m)
    null, _ = _answers(_small(mottle, shrink), seen, forms, point_m)
    usual = math.sqrt(max(float(null[seen].max()), 0.5 * _USUAL) * _USUAL)
    found: list[Crescent] = []
    answer = np.where(seen, answer, 0)
    apart = _APART_M / point_m
    rows, columns = np.ogrid[: seen.shape[0], : seen.shape[1]]
    while len(found) < most:
        row, column = (int(n) for n in np.unravel_index(int(answer.argmax()), answer.shape))
        over = float(answer[row, column]) / usual
        if over < least:
            break
        at = ((row + 0.5) * shrink, (column + 0.5) * shrink)
        found.append(_crescent(forms[int(which[row, column])], at, over, ground.step_m))
        answer[np.hypot(rows - row, columns - column) < apart] = 0
    return found


def _small(of: Floats32, shrink: int) -> Floats32:
    import cv2

    size = (of.shape[1] // shrink, of.shape[0] // shrink)
    return np.asarray(cv2.resize(of, size, interpolation=cv2.INTER_AREA), dtype=np.float32)


def _answers(
    flat: Floats32, seen: Bools, forms: list[tuple[float, float, int]], point_m: float
) -> tuple[Floats32, NDArray[np.int16]]:
    """The best answer at each place, in spreads, and which form gave it."""
    from scipy import fft

    near = np.sqrt(np.maximum(blurred(flat**2, _LOCAL_M / point_m), 1e-12))
    held = np.clip(flat / np.maximum(near, 0.4 * np.median(near[seen])), -3, 3) * seen
    shape = tuple(fft.next_fast_len(n + 24, real=True) for n in held.shape)
    spectrum = fft.rfft2(held.astype(np.float32), s=shape)
    power = _power(spectrum, shape)
    white = spectrum / power
    best = np.full(held.shape, -np.inf, dtype=np.float32)
    which = np.zeros(held.shape, dtype=np.int16)
    for n, form in enumerate(forms):
        drawn = fft.rfft2(_drawn(form, point_m, shape), s=shape)
        scale = math.sqrt(float(np.mean(abs(drawn) ** 2 / power)))
        out = fft.irfft2(white * np.conj(drawn), s=shape)[: held.shape[0], : held.shape[1]]
        out = out / max(scale, 1e-9)
        better = out > best
        best[better], which[better] = out[better], n
    spread = float(np.percentile(abs(best[seen] - np.median(best[seen])), 68)) or 1.0
    return np.asarray((best - np.median(best[seen])) / spread, dtype=np.float32), which


def _power(spectrum: NDArray[np.complex64], shape: tuple[int, ...]) -> Floats32:
    """The power of waves by their length alone, smoothed."""
    f = np.hypot(np.fft.fftfreq(shape[0])[:, None], np.fft.rfftfreq(shape[1])[None, :])
    ring = np.minimum((f * 60).astype(int), 42)
    count = np.bincount(ring.ravel())
    mean = np.bincount(ring.ravel(), weights=(abs(spectrum) ** 2).ravel()) / np.maximum(count, 1)
    kind = np.convolve(np.pad(mean, 1, mode="edge"), [0.25, 0.5, 0.25], mode="valid")
    floor = 0.02 * float(kind.max())
    return np.asarray(np.interp(f * 60, np.arange(len(kind)) + 0.5, kind) + floor, np.float32)


def _drawn(form: tuple[float, float, int], point_m: float, shape: tuple[int, ...]) -> Floats32:
    """The crescent, lighter (below 0), its thickest place at the corner (0, 0), wrapped round."""
    radius, thick, turn = form
    fine = 3
    rows = (np.fft.fftfreq(shape[0] * fine) * shape[0] * fine + 0.5) * point_m / fine
    columns = (np.fft.fftfreq(shape[1] * fine) * shape[1] * fine + 0.5) * point_m / fine
    keep = radius * 2.2
    r, c = np.flatnonzero(abs(rows) < keep), np.flatnonzero(abs(columns) < keep)
    inside = _inside(rows[r][:, None], columns[c][None, :], radius, thick, turn)
    out = np.zeros(shape, dtype=np.float32)
    np.add.at(out, ((r // fine)[:, None], (c // fine)[None, :]), -inside / fine**2)
    return out


def _inside(
    y: NDArray[np.float64], x: NDArray[np.float64], radius: float, thick: float, turn: int
) -> NDArray[np.float64]:
    angle = 2 * math.pi * turn / TURNS
    # The middle of the circle lies a radius back from the thickest place.
    dy, dx = y + radius * math.sin(angle), x + radius * math.cos(angle)
    off = np.angle(np.exp(1j * (np.arctan2(dy, dx) - angle)))
    half = thick / 2 * np.cos(np.clip(off / _HALF_ANGLE, -1, 1) * math.pi / 2)
    return np.asarray((abs(np.hypot(dy, dx) - radius) < half) * 1.0)


def _crescent(
    form: tuple[float, float, int], at: tuple[float, float], over: float, step_m: float
) -> Crescent:
    radius, thick, turn = form
    angle = 2 * math.pi * turn / TURNS
    off = np.linspace(-_HALF_ANGLE, _HALF_ANGLE, 15)
    half = np.maximum(thick / 2 * np.cos(off / _HALF_ANGLE * math.pi / 2), 0.006)
    ring = []
    for far, order in ((radius + half, slice(None)), (radius - half, slice(None, None, -1))):
        down = far * np.sin(off + angle) - radius * math.sin(angle)
        right = far * np.cos(off + angle) - radius * math.cos(angle)
        ring.append(np.stack((down, right), axis=1)[order] / step_m + at)
    return Crescent(at, radius, thick, angle, over, np.concatenate(ring))
