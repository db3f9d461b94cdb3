"""How far two colours lie apart, as CIEDE2000 has it. Source: [ciede2000]."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from farwall.colour.library import science

Floats = NDArray[np.float64]

OPPOSITE_DEG = 1e-9
"""Hues that lie within this of 180° from each other are taken to be exactly opposite."""
_NUDGE_DEG = 1e-7


def de2000(one: ArrayLike, other: ArrayLike) -> Floats:
    """CIEDE2000 between colours in CIELAB, last axis L, a, b; the shape is that of what remains.

    L from 0 to 100; the formula was fitted to differences of up to about 5. With hues exactly
    opposite the mean hue has two values, and the last bit of a computed angle would choose: as in
    the note to pair 14 of [ciede2000], a gap within `OPPOSITE_DEG` of 180° counts as 180° and the
    mean of the two angles is taken. Not negative; zero for a colour and itself; either order gives
    the same.
    """
    first, second = np.broadcast_arrays(
        np.asarray(one, dtype=np.float64), np.asarray(other, dtype=np.float64)
    )
    found: Any = science().difference.delta_E_CIE2000(first, _not_opposite(first, second))
    return np.asarray(found, dtype=np.float64)


def _not_opposite(first: Floats, second: Floats) -> Floats:
    """`second` with its hue moved by a hair towards the first where the two are opposite."""
    hue, gap = _hues(first, second)
    opposite = np.abs(np.abs(gap) - 180) < OPPOSITE_DEG
    if not opposite.any():
        return second
    turned = np.radians(np.where(opposite, hue - np.copysign(_NUDGE_DEG, gap), hue))
    chroma = np.hypot(second[..., 1], second[..., 2])
    moved = np.stack((second[..., 0], chroma * np.cos(turned), chroma * np.sin(turned)), axis=-1)
    return np.where(opposite[..., None], moved, second)


def _hues(first: Floats, second: Floats) -> tuple[Floats, Floats]:
    """The second's hue angle, 0 to 360, and its gap to the first. [deg]

    The angles are those of a and b: the formula stretches a alike in both, which leaves opposite
    hues opposite.
    """
    angles = [np.degrees(np.arctan2(one[..., 2], one[..., 1])) % 360 for one in (first, second)]
    return angles[1], angles[1] - angles[0]
