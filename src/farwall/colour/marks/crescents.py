"""Missed crescents: what two circles of the wand leave between them, sought by its form.

A crescent of a told size and turn is laid on every place of the floor and weighed against mottle of
the floor's own waves: a matched filter in noise that is not white [turin-1960], here for -ln Y held
to three spreads, so that glare's rim and a stone do not shout. Forms: circles of 0.16 to 0.33 m, as
an arm draws them (common practice, no source), 6 cm at the thickest.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import Bools, Ground, blurred
from farwall.colour.marks.nouns import Floats32
from farwall.nouns import dataclass

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
    floor, null = (_Held(_small(one, shrink), seen, point_m) for one in (ground.flat, mottle))
    # A form is drawn once and laid on both.
    for n, form in enumerate(forms):
        drawn = _waves(_drawn(form, point_m, floor.shape))
        floor.lay(n, drawn)
        null.lay(n, drawn)
    answer, which = floor.answer(), floor.which
    most_null = float(null.answer()[seen].max())
    usual = math.sqrt(max(most_null, 0.5 * _USUAL) * _USUAL)
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


class _Held:
    """A picture held to three spreads, and the best answer at each place so far."""

    def __init__(self, flat: Floats32, seen: Bools, point_m: float) -> None:
        near = np.sqrt(np.maximum(blurred(flat**2, _LOCAL_M / point_m), 1e-12))
        held = np.clip(flat / np.maximum(near, 0.4 * np.median(near[seen])), -3, 3) * seen
        self.seen = seen
        self.shape = (_quick_length(seen.shape[0] + 24), _quick_length(seen.shape[1] + 24))
        spectrum = _waves(held.astype(np.float32), self.shape)
        self._power = _power(spectrum, self.shape)
        self._white = spectrum / self._power
        self._best = np.full(seen.shape, -np.inf, dtype=np.float32)
        self.which = np.zeros(seen.shape, dtype=np.int16)

    def lay(self, number: int, drawn: NDArray[np.complex64]) -> None:
        """One form on every place."""
        scale = math.sqrt(float(np.mean(abs(drawn) ** 2 / self._power)))
        rows, columns = self.seen.shape
        out = np.fft.irfft2(self._white * np.conj(drawn), s=self.shape)[:rows, :columns]
        out = out / max(scale, 1e-9)
        better = out > self._best
        np.copyto(self._best, out, where=better)
        np.copyto(self.which, np.int16(number), where=better)

    def answer(self) -> Floats32:
        """The best answer at each place, in spreads."""
        best, seen = self._best, self.seen
        middle = np.median(best[seen])
        spread = float(np.percentile(abs(best[seen] - middle), 68)) or 1.0
        return np.asarray((best - middle) / spread, dtype=np.float32)


def _waves(of: Floats32, shape: tuple[int, int] | None = None) -> NDArray[np.complex64]:
    return np.asarray(np.fft.rfft2(of, s=shape), np.complex64)


def _quick_length(least: int) -> int:
    """The next length made of twos, threes and fives, whose waves are reckoned quickly."""
    length = least
    while True:
        rest = length
        for prime in (2, 3, 5):
            while rest % prime == 0:
                rest //= prime
        if rest == 1:
            return length
        length += 1


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
    # Fine points are gathered by rows first, then by columns, in cells of three by three.
    tall = np.add.reduceat(inside, *_cells(r // fine), axis=0)
    both = np.add.reduceat(tall, *_cells(c // fine), axis=1)
    out[np.ix_(np.unique(r // fine), np.unique(c // fine))] = -both / fine**2
    return out


def _cells(of: NDArray[np.intp]) -> tuple[NDArray[np.intp]]:
    """Where each run of the same cell begins."""
    return (np.flatnonzero(np.diff(of, prepend=-1)),)


def _inside(
    y: NDArray[np.float64], x: NDArray[np.float64], radius: float, thick: float, turn: int
) -> NDArray[np.float64]:
    angle = 2 * math.pi * turn / TURNS
    # The middle of the circle lies a radius back from the thickest place.
    dy, dx = y + radius * math.sin(angle), x + radius * math.cos(angle)
    from_arc = abs(np.hypot(dy, dx) - radius)
    near = np.nonzero(from_arc < thick / 2)  # nowhere else is a crescent
    off = np.remainder(np.arctan2(dy[near[0], 0], dx[0, near[1]]) - angle + math.pi, 2 * math.pi)
    off -= math.pi
    half = thick / 2 * np.cos(np.clip(off / _HALF_ANGLE, -1, 1) * math.pi / 2)
    found = np.zeros(from_arc.shape)
    found[near] = from_arc[near] < half
    return found


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
