"""Squares of our own sheet as a corrected photo shows them: a print measured by another target."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.lab import lab_of_xyz, xyz_of_lab
from farwall.readers.colour_photo.found import PAPER, PAPER_LAB, Found
from farwall.readers.colour_photo.markers import placed
from farwall.readers.colour_photo.nouns import PatchSeen

Real = NDArray[np.float64]
_INNER = 0.28
"""Half of what is read of a square, of its side."""


def print_seen(lab: NDArray[np.float32], own: Found) -> tuple[PatchSeen, ...]:
    """Each square, and `paper`, with what the printer was asked for and what the photo shows.

    The light over the sheet is evened once more by its own paper.
    """
    target = own.target
    gap = (target.size_mm[0] / 8 - target.patches[0].side_mm) / 2
    squares = [_mean(lab, own, one.at_mm, _INNER * one.side_mm) for one in target.patches]
    papers = np.array([
        _mean(lab, own, (one.at_mm[0] + one.side_mm / 2 + gap, one.at_mm[1]), 0.35 * gap)
        for one in target.patches
    ])  # fmt: skip
    level = papers[:, 1]
    even = [xyz * np.median(level) / here for xyz, here in zip(squares, level, strict=True)]
    shown = [*lab_of_xyz(np.array(even)), lab_of_xyz(np.median(papers, axis=0))]
    names = [*((one.name, one.lab or PAPER_LAB) for one in target.patches), (PAPER, PAPER_LAB)]
    return tuple(
        PatchSeen(name, asked, (float(seen[0]), float(seen[1]), float(seen[2])))
        for (name, asked), seen in zip(names, shown, strict=True)
    )


def _mean(lab: NDArray[np.float32], own: Found, at: tuple[float, float], half: float) -> Real:
    """Mean XYZ of a grid of 9 by 9 places about one."""
    steps = np.linspace(-half, half, 9)
    grid = np.array([(at[0] + dx, at[1] + dy) for dx in steps for dy in steps])
    whole = np.round(placed(own.plane, grid) - 0.5).astype(int)
    columns = np.clip(whole[:, 0], 0, lab.shape[1] - 1)
    rows = np.clip(whole[:, 1], 0, lab.shape[0] - 1)
    return np.asarray(xyz_of_lab(lab[rows, columns]).mean(axis=0))
