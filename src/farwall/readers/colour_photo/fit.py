"""From the light of a photo to XYZ: how the light lies, how tones are bent, how channels mix.

Three things are unknown and are sought together. The tone curve: the logarithm of light is that of
what sRGB decodes and a polynomial of the coded value, the same for all channels. The lie of the
light: by the paper beside each patch or else a plane of its logarithm, and a lens that darkens
its corners by the square of the distance from the middle. The mixing: 3 × 3, or the
root polynomial of the second degree, whose terms keep their ratio when the light changes
[finlayson-2015]. For given tones and light the mixing is a linear least-squares problem, in
differences of CIELAB to the first order; so only tones and light are searched (variable
projection, from memory).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.ciede2000 import quick_de2000
from farwall.colour.lab import XYZ_OF_SRGB, lab_of_xyz, xyz_of_lab
from farwall.nouns import dataclass
from farwall.readers.colour_photo.mixing import Mixing, gains, mixed, scaled, terms

Real = NDArray[np.float64]
MIXINGS: tuple[Mixing, ...] = ("grey", "linear", "root polynomial")
_COLOURED = 8.0
_LEAST_COLOURED: dict[Mixing, int] = {"grey": 0, "linear": 8, "root polynomial": 10}
"""Patches of some chroma that a mixing asks for. Rank: guess."""
_TONES = 4
_LEAST_LIGHT = 1e-4
_USUAL = 3.0
"""Medians of the misses at which a patch counts half. Rank: guess."""
_STEPS = 5
_TONE_HOLD = np.array([0.8, 0.8, 0.5, 0.5])
"""How far tone parameters lie from those of sRGB before a patch has spoken. Rank: guess."""
_LIE_HOLD = np.array([0.35, 0.35, 0.25])
"""The same of the slope of light, across and down, and of how far corners are darker."""
_PAPER_NOISE = 0.005
_FALL, _FALL_DARK = 0.006, 0.0004
"""Of the logarithm of light across a patch: what noise and a patch's own unevenness do. Guess."""
_BETTER = 0.93
"""A mixing of more terms is taken only where its patches left out come this much closer."""


@dataclass(frozen=True)
class Falls:
    """Light on one side of patches and on the other, and the step of `Seen.place` between them."""

    there: Real
    here: Real
    apart: Real


@dataclass(frozen=True)
class Seen:
    """Patches that are used: light, where they lie, paper beside, own Lab.

    place: rows of three: from -1 to 1 across the target and as far down, and the square of the
    distance from the middle of the photo, 1 in its corners · paper: light of the bare paper beside
    each, or None: then the lie of the light is sought, also by how it falls across each patch.
    """

    light: Real
    place: Real
    paper: Real | None
    lab: Real
    falls: Falls | None = None


@dataclass(frozen=True)
class Fit:
    """What was found. tones: of the curve · lie: of the logarithm of light, by `Seen.place` · mix:
    rows terms, columns XYZ · trust: of each patch, 1 for one that fits the others."""

    mixing: Mixing
    tones: Real
    lie: Real
    mix: Real
    trust: Real | None = None

    def even(self, seen: Seen) -> Real:
        """Light of patches as it were the same on all, tones straight."""
        return _evened(seen, self.tones, self.lie)

    def xyz(self, even: Real) -> Real:
        """XYZ under D50 of light that is even and straight."""
        return terms(even, self.mixing) @ self.mix


def straight(light: Real, tones: Real) -> Real:
    """Light with its tones straightened; white stays white."""
    lit = np.maximum(light, _LEAST_LIGHT)
    coded = 2 * lit ** (1 / 2.4) - 1
    off = coded * (tones[0] + coded * (tones[1] + coded * (tones[2] + coded * tones[3])))
    return np.asarray(lit * np.exp(off - tones.sum()))


def _evened(seen: Seen, tones: Real, lie: Real) -> Real:
    found = straight(seen.light, tones)
    if seen.paper is not None:
        lit = straight(seen.paper, tones).mean(axis=-1, keepdims=True)
        return np.asarray(found / lit * np.exp(np.log(lit).mean()))
    return np.asarray(found / np.exp(seen.place @ lie)[..., None])


def best_fit(seen: Seen) -> tuple[Fit, Real]:
    """The fit, and CIEDE2000 of each patch when the mixing is found without it.

    Of the mixings the one whose patches left out come closest; the simpler one where it is near.
    Few patches, or greys alone: three gains.
    """
    tried: list[tuple[Fit, Real]] = []
    coloured = int((np.hypot(seen.lab[:, 1], seen.lab[:, 2]) > _COLOURED).sum())
    for mixing in MIXINGS:
        if coloured < _LEAST_COLOURED[mixing]:
            continue
        fit = _fit(seen, mixing)
        tried.append((fit, left_out(seen, fit)))
    best = tried[0]
    for other in tried[1:]:
        if np.mean(other[1]) < _BETTER * np.mean(best[1]):
            best = other
    return best


def _fit(seen: Seen, mixing: Mixing) -> Fit:
    hold = _TONE_HOLD if seen.paper is not None else np.concatenate([_TONE_HOLD, _LIE_HOLD])
    free = len(hold)
    trust = np.ones(len(seen.lab))
    found = np.zeros(free)
    for _ in range(_STEPS):
        here = _misses(found, seen, mixing, trust, hold)
        turn = np.empty((here.size, free))
        for k in range(free):
            moved = found.copy()
            moved[k] += 1e-4
            turn[:, k] = (_misses(moved, seen, mixing, trust, hold) - here) / 1e-4
        move, *_ = np.linalg.lstsq(turn, -here, rcond=None)
        found = found + np.clip(move, -0.3, 0.3)
        trust = _trust(found, seen, mixing, trust)
    even, lie = _evened_by(found, seen), found[_TONES:] if free > _TONES else np.zeros(3)
    return Fit(mixing, found[:_TONES], lie, mixed(even, seen.lab, mixing, trust), trust)


def _evened_by(found: Real, seen: Seen) -> Real:
    lie = found[_TONES:] if found.size > _TONES else np.zeros(3)
    return _evened(seen, found[:_TONES], lie)


def _misses(found: Real, seen: Seen, mixing: Mixing, trust: Real, hold: Real) -> Real:
    """What is left in units of about one CIEDE2000, and how far from what is held."""
    even = _evened_by(found, seen)
    mix = mixed(even, seen.lab, mixing, trust)
    miss = scaled(terms(even, mixing) @ mix - xyz_of_lab(seen.lab), seen.lab)
    across = _fallen(found, seen)
    return np.concatenate([(trust[:, None] * miss).ravel(), across, found / hold])


def _fallen(found: Real, seen: Seen) -> Real:
    """How far the fall of light across each patch is off the lie; far-off ones count less."""
    if seen.falls is None or seen.paper is not None:
        return np.zeros(0)
    tones, lie = found[:_TONES], found[_TONES:]
    there, here = (straight(one, tones).mean(axis=1) for one in (seen.falls.there, seen.falls.here))
    miss = (np.log(there / here) - seen.falls.apart @ lie) / (_FALL + _FALL_DARK / here)
    return np.asarray(np.arcsinh(miss))


def _trust(found: Real, seen: Seen, mixing: Mixing, before: Real) -> Real:
    """Less and less for patches that lie far off what the others say: glare, a finger, a drop."""
    even = _evened_by(found, seen)
    mix = mixed(even, seen.lab, mixing, before)
    miss = np.linalg.norm(
        scaled(terms(even, mixing) @ mix - xyz_of_lab(seen.lab), seen.lab), axis=1
    )
    usual = _USUAL * max(float(np.median(miss)), 0.4)
    return np.asarray(1 / np.sqrt(1 + (miss / usual) ** 4))


def balanced(seen: Seen) -> Fit:
    """Three gains from things taken to be neutral, tones as sRGB has them; no more is known."""
    even = _evened(seen, np.zeros(_TONES), np.zeros(3))
    mix = gains(even, seen.lab, np.ones(len(seen.lab)))
    return Fit("grey", np.zeros(_TONES), np.zeros(3), mix)


def as_it_stands() -> Fit:
    """The photo taken for what sRGB says."""
    return Fit("grey", np.zeros(_TONES), np.zeros(3), XYZ_OF_SRGB.T.copy())


def lie_of_paper(seen: Seen, tones: Real) -> tuple[Real, float]:
    """How the light lies by the paper beside the patches, and what is left of it: a shadow's edge.

    The second: standard deviation of the logarithm of light about the plane.
    """
    assert seen.paper is not None
    lit = np.log(straight(seen.paper, tones).mean(axis=-1))
    middle = seen.place.mean(axis=0)
    off = seen.place - middle
    held = np.diag(_PAPER_NOISE / _LIE_HOLD) ** 2
    lie = np.linalg.solve(off.T @ off + held, off.T @ (lit - lit.mean()))
    return np.asarray(lie), float((lit - lit.mean() - off @ lie).std())


def left_out(seen: Seen, fit: Fit) -> Real:
    """CIEDE2000 of each patch, the mixing found without it; tones and light by all."""
    even = fit.even(seen)
    trust = np.ones(len(seen.lab)) if fit.trust is None else fit.trust
    found = np.empty(len(seen.lab))
    for k in range(len(seen.lab)):
        rest = np.arange(len(seen.lab)) != k
        mix = mixed(even[rest], seen.lab[rest], fit.mixing, trust[rest])
        seen_lab = lab_of_xyz(terms(even[k : k + 1], fit.mixing) @ mix)
        found[k] = quick_de2000(seen_lab, seen.lab[k : k + 1])[0]
    return found
