"""What each patch of a target shows in the photo: its light, how much of it is burnt, how even."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from farwall.colour.lab import linear_of_srgb
from farwall.colour.targets.nouns import Patch, Target
from farwall.nouns import dataclass

Real = NDArray[np.float64]
_INNER = 0.56
"""Of a patch's side that is read: its edges are soft."""
SIDE_AWAY = _INNER / 3
"""From a patch's middle to the middle of its outer thirds, of its side."""
_TRIM = 0.15
_BURNT, _MOST_BURNT = 254, 0.02
_UNEVEN = 0.16
"""Spread of light in a patch, of its mean, above which something lies or shines on it. Guess."""
_GUTTER_LONG, _GUTTER_WIDE = 0.5, 0.38
LINEAR: Real = linear_of_srgb(np.arange(256) / 255.0)


@dataclass(frozen=True)
class Sampled:
    """A target as it lies in the photo, patch by patch.

    light: rows patches, red green blue, linear as sRGB decodes it · sides: rows patches, of its
    left, right, upper and lower part, by which the light falls across it · paper: of the bare paper
    beside each, None where a target has none · burnt, shining: patches not to be used · px: side of
    the smallest patch in the photo.
    """

    light: Real
    sides: Real
    paper: Real | None
    burnt: NDArray[np.bool_]
    shining: NDArray[np.bool_]
    px: float


def sampled(rgb: NDArray[np.uint8], plane: Real, target: Target) -> Sampled:
    """The patches of a target that lies in the photo as `plane` says (mm to px)."""
    import cv2

    per_mm = _px_per_mm(plane, target)
    scale = float(np.clip(per_mm, 1.0, 8.0))
    wide, high = (round(one * scale) for one in target.size_mm)
    to_flat = np.diag([scale, scale, 1.0]) @ np.linalg.inv(plane)
    half = np.array([[1.0, 0, -0.5], [0, 1.0, -0.5], [0, 0, 1.0]])
    flat = cv2.warpPerspective(
        rgb, half @ to_flat @ np.linalg.inv(half), (wide, high), flags=cv2.INTER_LINEAR,
        borderMode=cv2.BORDER_REPLICATE,
    )  # fmt: skip
    reads = [_patch(np.asarray(flat), one, scale) for one in target.patches]
    paper = None
    if target.lit_between:
        paper = np.array([_paper(np.asarray(flat), one, target, scale) for one in target.patches])
    sides = min(one.side_mm for one in target.patches)
    return Sampled(
        np.array([one[0] for one in reads]), _sides(np.asarray(flat), target, scale), paper,
        np.array([one[1] for one in reads]),
        np.array([one[2] for one in reads]), sides * per_mm,
    )  # fmt: skip


def _px_per_mm(plane: Real, target: Target) -> float:
    from farwall.readers.colour_photo.markers import placed

    wide, high = target.size_mm
    corners = placed(plane, np.array([(0, 0), (wide, 0), (wide, high), (0, high)]))
    sides = [np.hypot(*(corners[(k + 1) % 4] - corners[k])) for k in range(4)]
    return float(min(sides[0] / wide, sides[1] / high, sides[2] / wide, sides[3] / high))


def _cut(flat: NDArray[np.uint8], at: tuple[float, float], across: float, down: float) -> Real:
    x, y = at
    rows = slice(max(0, round(y - down / 2)), max(1, round(y + down / 2)))
    columns = slice(max(0, round(x - across / 2)), max(1, round(x + across / 2)))
    return np.asarray(flat[rows, columns].reshape(-1, 3))


def _patch(flat: NDArray[np.uint8], one: Patch, scale: float) -> tuple[Real, bool, bool]:
    side = max(2.0, _INNER * one.side_mm * scale)
    coded = _cut(flat, (one.at_mm[0] * scale, one.at_mm[1] * scale), side, side)
    light = LINEAR[coded.astype(np.intp)]
    burnt = bool((coded.max(axis=1) >= _BURNT).mean() > _MOST_BURNT)
    order = np.argsort(light.sum(axis=1))
    off = int(_TRIM * len(order))
    kept = light[order[off : len(order) - off]] if len(order) > 8 else light
    mean = kept.mean(axis=0)
    shining = bool(kept.sum(axis=1).std() > _UNEVEN * max(float(mean.sum()), 0.02))
    return mean, burnt, shining


def _sides(flat: NDArray[np.uint8], target: Target, scale: float) -> Real:
    """Light of the outer thirds of each patch's inner part: left, right, upper, lower."""
    found = []
    for one in target.patches:
        side, away = _INNER * one.side_mm * scale, SIDE_AWAY * one.side_mm * scale
        x, y = one.at_mm[0] * scale, one.at_mm[1] * scale
        wide = max(1.0, side / 3)
        cuts = (((x - away, y), wide, side), ((x + away, y), wide, side),
                ((x, y - away), side, wide), ((x, y + away), side, wide))  # fmt: skip
        found.append([LINEAR[_cut(flat, *one).astype(np.intp)].mean(axis=0) for one in cuts])
    return np.array(found)


def _paper(flat: NDArray[np.uint8], one: Patch, target: Target, scale: float) -> Real:
    """Light of the paper on the four sides of a patch; the darker half of a side is left out."""
    pitch = _pitch(target)
    gap = pitch - one.side_mm
    x, y = one.at_mm
    long, wide = _GUTTER_LONG * one.side_mm * scale, max(1.0, _GUTTER_WIDE * gap * scale)
    reads = []
    for dx, dy in ((pitch / 2, 0), (-pitch / 2, 0), (0, pitch / 2), (0, -pitch / 2)):
        size = (wide, long) if dx else (long, wide)
        at = (
            float(np.clip((x + dx) * scale, wide / 2, flat.shape[1] - wide / 2)),
            float(np.clip((y + dy) * scale, wide / 2, flat.shape[0] - wide / 2)),
        )
        coded = _cut(flat, at, *size)
        bright = coded.sum(axis=1) >= np.median(coded.sum(axis=1))
        reads.append(LINEAR[coded[bright].astype(np.intp)].mean(axis=0))
    return np.asarray(np.mean(reads, axis=0))


def _pitch(target: Target) -> float:
    xs = sorted({one.at_mm[0] for one in target.patches})
    return min(b - a for a, b in pairwise(xs))
