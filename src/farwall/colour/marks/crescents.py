"""Missed crescents: what two circles of the wand leave between them, sought by its form.

A crescent of a told size and turn is laid on every place of the floor and weighed against mottle of
the floor's own waves: a matched filter in noise that is not white [turin-1960], here for -ln Y with
its mottle thinned, held to three spreads of the floor near by, so that a stone does not shout. What
answers best is then judged by its sides (`crescent_sides`).
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.crescent_forms import Form, Waves, waves_of_forms
from farwall.colour.marks.crescent_sides import chance_of, gentler_side, steepness_of
from farwall.colour.marks.ground import Bools, Ground, blurred
from farwall.colour.marks.nouns import Floats32
from farwall.nouns import dataclass

POINT_M = 0.02
CANDIDATES, LEAST_ANSWER = 12, 3.0
"""So many of the best places are judged, none that answers less, in spreads."""
_APART_M, _SAME_M = 0.20, 0.25
_LOCAL_M = 0.4
_HELD, _CAPPED = 3.0, 4.0


@dataclass(frozen=True)
class Crescent:
    """at: (row, column) of its thickest place · answer: of the filter, in spreads of the floor ·
    gentler: how steep its gentler side is, in spreads of changes on this floor.
    """

    at: tuple[float, float]
    form: Form
    answer: float
    gentler: float

    @property
    def sure(self) -> float:
        """How many such finds are crescents, 0 to 1, on invented floors."""
        return chance_of(self.answer, self.gentler)

    def outline(self, step_m: float) -> NDArray[np.float64]:
        """(n, 2): rows and columns."""
        return np.asarray(self.form.outline() / step_m + self.at, np.float64)


def crescents_of(bare: Ground) -> list[Crescent]:
    """Places that look most like crescents, the likeliest first, apart from one another.

    bare: the floor with mottle thinned, glare, cracks and joints cut out (`glare.unglared`).
    """
    places = _candidates(bare)
    if not places:
        return []
    steepness = steepness_of(bare)
    made = []
    for at, form, answer in places:
        gentler = gentler_side(bare, at, form, steepness)
        if gentler is not None:
            made.append(Crescent(at, form, answer, gentler))
    return _apart(sorted(made, key=lambda one: -one.sure), _SAME_M / bare.step_m)


def _apart(found: Sequence[Crescent], points: float) -> list[Crescent]:
    kept: list[Crescent] = []
    for one in found:
        if all(math.dist(one.at, other.at) >= points for other in kept):
            kept.append(one)
    return kept


def _candidates(bare: Ground) -> list[tuple[tuple[float, float], Form, float]]:
    """Where the filter answers best, which form, and how much in spreads."""
    shrink = max(round(POINT_M / bare.step_m), 1)
    point_m = bare.step_m * shrink
    seen, known = (_small(of.astype(np.float32), shrink) > 0.5 for of in (bare.seen, bare.known))
    if min(seen.shape) < 16 or not seen.any() or not known.any():
        return []
    laid = _Laid(_held(_small(bare.flat, shrink), known, point_m))
    forms: list[Form] = []
    for form, waves in waves_of_forms(point_m, laid.shape):
        laid.lay(len(forms), waves)
        forms += [form, form.turned_round]
    answer, which = laid.answer(seen), laid.which
    rows, columns = np.ogrid[: seen.shape[0], : seen.shape[1]]
    found: list[tuple[tuple[float, float], Form, float]] = []
    while len(found) < CANDIDATES:
        row, column = (int(n) for n in np.unravel_index(int(answer.argmax()), answer.shape))
        best = float(answer[row, column])
        if best < LEAST_ANSWER:
            break
        at = ((row + 0.5) * shrink, (column + 0.5) * shrink)
        found.append((at, forms[int(which[row, column])], best))
        answer[np.hypot(rows - row, columns - column) < _APART_M / point_m] = 0
    return found


def _small(of: Floats32, shrink: int) -> Floats32:
    import cv2

    size = (of.shape[1] // shrink, of.shape[0] // shrink)
    return np.asarray(cv2.resize(of, size, interpolation=cv2.INTER_AREA), dtype=np.float32)


def _held(flat: Floats32, known: Bools, point_m: float) -> Floats32:
    """By the spread of the floor near by, and held to three of it; 0 where nothing is known."""
    told = flat[known]
    spread = max(float(np.median(abs(told - np.median(told)))) / 0.6745, 1e-5)
    capped = np.clip(flat, -_CAPPED * spread, _CAPPED * spread) * known
    weight = np.maximum(blurred(known.astype(np.float32), _LOCAL_M / point_m), 0.05)
    near = np.sqrt(np.maximum(blurred(capped**2, _LOCAL_M / point_m) / weight, 1e-12))
    least = 0.4 * np.median(near[known])
    return np.asarray(np.clip(flat / np.maximum(near, least), -_HELD, _HELD) * known, np.float32)


class _Laid:
    """The floor, and the best answer of all forms at each place so far."""

    def __init__(self, held: Floats32) -> None:
        self._size = held.shape
        self.shape = (_quick_length(held.shape[0] + 24), _quick_length(held.shape[1] + 24))
        spectrum = np.asarray(np.fft.rfft2(held, s=self.shape), np.complex64)
        self._power = _power(spectrum, self.shape)
        self._white = spectrum / self._power
        self._best = np.full(held.shape, -np.inf, dtype=np.float32)
        self.which = np.zeros(held.shape, dtype=np.int16)

    def lay(self, number: int, drawn: Waves) -> None:
        """One form on every place, and turned by half a circle as the next number."""
        power = drawn.real**2 + drawn.imag**2
        by = np.float32(1 / max(math.sqrt(float(np.mean(power / self._power))), 1e-9))
        rows, columns = self._size
        white = self._white * by
        for n, waves in enumerate((np.conj(drawn), drawn)):
            out = np.fft.irfft2(white * waves, s=self.shape)[:rows, :columns]
            better = out > self._best
            np.copyto(self._best, out, where=better, casting="same_kind")
            np.copyto(self.which, np.int16(number + n), where=better)

    def answer(self, seen: Bools) -> Floats32:
        """The best answer at each place, in spreads; 0 where nothing may be proposed."""
        best = self._best
        middle = np.median(best[seen])
        spread = float(np.percentile(abs(best[seen] - middle), 68)) or 1.0
        return np.asarray(np.where(seen, (best - middle) / spread, 0), dtype=np.float32)


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


def _power(spectrum: Waves, shape: tuple[int, ...]) -> Floats32:
    """The power of waves by their length alone, smoothed."""
    f = np.hypot(np.fft.fftfreq(shape[0])[:, None], np.fft.rfftfreq(shape[1])[None, :])
    ring = np.minimum((f * 60).astype(int), 42)
    count = np.bincount(ring.ravel())
    mean = np.bincount(ring.ravel(), weights=(abs(spectrum) ** 2).ravel()) / np.maximum(count, 1)
    kind = np.convolve(np.pad(mean, 1, mode="edge"), [0.25, 0.5, 0.25], mode="valid")
    floor = 0.02 * float(kind.max())
    return np.asarray(np.interp(f * 60, np.arange(len(kind)) + 0.5, kind) + floor, np.float32)
