"""The edges of a sheet followed from corner to corner, however they bow: where its paper ends."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from farwall.floor.geometry import Point
from farwall.readers.photo.opening import Grey

Real = npt.NDArray[np.float64]
_REACH = 0.025
"""Of the picture's longer side: how far an edge may lie off the straight line of its corners."""
_AT_CORNER = 0.007
"""Of it: how far the edge may lie off its corners; what runs farther off is of another sheet."""
_SAMPLES, _FROM = 240, 0.012
_WINDOW, _STEEP, _FINE_PX = 6, 2, 3
_FULL, _LEAST, _SEEN = 50.0, 18.0, 0.85
"""A step of light that is as good as any, one that still tells paper from a table, and how much of
an edge has to show it."""


def find_rims(grey: Grey, corners: tuple[Point, ...]) -> list[Real | None]:
    """Points [px] along each edge of the sheet, from each corner to the next; None where the edge
    is not seen: cut off, hidden, or as light as what lies behind it.
    """
    import cv2

    soft = cv2.GaussianBlur(grey, (0, 0), 1.2).astype(np.float32)
    four = np.array(corners, np.float64) - 0.5
    middle = four.mean(axis=0)
    found = []
    for k in range(4):
        rim = _followed(soft, four[k], four[(k + 1) % 4], middle)
        found.append(None if rim is None else rim + 0.5)
    return found


def _followed(soft: npt.NDArray[np.float32], start: Real, end: Real, middle: Real) -> Real | None:
    import cv2

    way = (end - start) / np.hypot(*(end - start))
    inward = np.array([-way[1], way[0]])
    inward *= np.sign((middle - start) @ inward)
    reach = round(_REACH * max(soft.shape))
    pad = _WINDOW + 2
    steps = np.arange(-reach - pad, reach + pad + 1, dtype=np.float64)
    along = start + np.linspace(_FROM, 1 - _FROM, _SAMPLES)[:, None] * (end - start)
    spots = along[:, None, :] + steps[None, :, None] * inward
    light = cv2.remap(
        soft, spots[..., 0].astype(np.float32), spots[..., 1].astype(np.float32), cv2.INTER_LINEAR,
        borderMode=cv2.BORDER_REPLICATE,
    )  # fmt: skip
    rise = _rise(np.asarray(light, np.float64))[:, pad:-pad]
    track = _best_track(np.clip(rise, 0, _FULL))
    held = rise[np.arange(_SAMPLES), track]
    ends = np.abs(track[[0, -1]] - reach)
    if np.mean(held >= _LEAST) < _SEEN or ends.max() > _AT_CORNER * max(soft.shape):
        return None
    offsets = np.array([_fine(row, int(k) + pad) for row, k in zip(light, track, strict=True)])
    kept = held >= _LEAST
    points = along + (steps[0] + offsets)[:, None] * inward
    return np.asarray(points[kept])


def _rise(light: Real) -> Real:
    """How much lighter the next few pixels inwards are than those outwards: no line drawn along
    the edge of the sheet is as broad as that.
    """
    run = np.cumsum(np.pad(light, ((0, 0), (1, 0))), axis=1)
    mean = (run[:, _WINDOW:] - run[:, :-_WINDOW]) / _WINDOW
    rise = np.zeros_like(light)
    rise[:, _WINDOW : light.shape[1] - _WINDOW + 1] = mean[:, _WINDOW:] - mean[:, :-_WINDOW]
    return rise


def _best_track(rise: Real) -> npt.NDArray[np.intp]:
    """The way along the rows with most rise that never jumps: by the best way to each place."""
    count, wide = rise.shape
    total = rise[0].copy()
    came = np.zeros((count, wide), np.intp)
    places = np.arange(wide)
    for k in range(1, count):
        padded = np.pad(total, _STEEP, constant_values=-np.inf)
        choices = np.stack([padded[n : n + wide] for n in range(2 * _STEEP + 1)])
        best = np.argmax(choices - 0.5 * np.abs(np.arange(-_STEEP, _STEEP + 1))[:, None], axis=0)
        came[k] = np.clip(places + best - _STEEP, 0, wide - 1)
        total = choices[best, places] + rise[k]
    track = np.empty(count, np.intp)
    track[-1] = int(np.argmax(total))
    for k in range(count - 1, 0, -1):
        track[k - 1] = came[k, track[k]]
    return track


def _fine(row: npt.NDArray[np.float32], near: int) -> float:
    """The steepest place near there, to parts of a pixel."""
    slope = np.gradient(row[near - _FINE_PX - 2 : near + _FINE_PX + 3].astype(np.float64))
    inner = slope[1:-1]
    k = int(np.argmax(inner)) + 1
    a, b, c = slope[k - 1], slope[k], slope[k + 1]
    bend = a - 2 * b + c
    shift = 0.5 * (a - c) / bend if bend < -1e-9 else 0.0
    return near - _FINE_PX - 2 + k + float(np.clip(shift, -0.5, 0.5))
