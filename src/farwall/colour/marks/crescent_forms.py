"""Crescents as they are laid on a floor to seek them: forms of some sizes, in sixteen turns.

What two circles leave between them is thickest in its middle and runs out to its ends; where the
second circle is cut off it is short. Circles of 0.16 to 0.33 m, as an arm draws them (common
practice, no source).
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.nouns import Floats32
from farwall.nouns import dataclass

Floats = NDArray[np.float64]
Waves = NDArray[np.complex64]

TURNS = 16
LONG, SHORT = 1.05, 0.65
"""Half of the arc. [rad]"""
SIZES = (
    (0.16, 0.045, LONG), (0.24, 0.045, LONG), (0.33, 0.045, LONG),
    (0.16, 0.08, LONG), (0.24, 0.08, LONG), (0.33, 0.08, LONG),
    (0.20, 0.03, SHORT), (0.24, 0.055, SHORT),
)  # fmt: skip
"""Radius, thickness [m], half of the arc [rad]. Tried on invented floors."""


@dataclass(frozen=True)
class Form:
    """turn: which way its outer side looks, rows down and columns right [rad]."""

    radius_m: float
    thick_m: float
    half_angle: float
    turn: float

    @property
    def length_m(self) -> float:
        """From end to end."""
        return 2 * self.radius_m * math.sin(self.half_angle)

    @property
    def turned_round(self) -> Form:
        """The same, looking the other way."""
        return replace(self, turn=self.turn + math.pi)

    def half_thick(self, off: Floats) -> Floats:
        """Half its thickness at angles off its middle. [m]"""
        held = np.clip(off / self.half_angle, -1, 1)
        return np.asarray(self.thick_m / 2 * np.cos(held * math.pi / 2))

    def places(self, off: Floats, out_m: Floats) -> tuple[Floats, Floats]:
        """Metres down and right of its thickest place, at angles off its middle and so far out."""
        far, angle = self.radius_m + out_m, off + self.turn
        down = far * np.sin(angle) - self.radius_m * math.sin(self.turn)
        right = far * np.cos(angle) - self.radius_m * math.cos(self.turn)
        return down, right

    def outline(self) -> Floats:
        """(n, 2): down and right of its thickest place. [m]"""
        off = np.linspace(-self.half_angle, self.half_angle, 15)
        half = np.maximum(self.half_thick(off), 0.006)
        outer, inner = (np.stack(self.places(off, side), axis=1) for side in (half, -half))
        return np.concatenate((outer, inner[::-1]))


def waves_of_forms(point_m: float, shape: tuple[int, ...]) -> Iterator[tuple[Form, Waves]]:
    """Forms of the first half of all turns and their waves; turned round, those are mirrored."""
    for radius, thick, half_angle in SIZES:
        for turn in range(TURNS // 2):
            form = Form(radius, thick, half_angle, 2 * math.pi * turn / TURNS)
            yield form, np.asarray(np.fft.rfft2(drawn(form, point_m, shape)), np.complex64)


def drawn(form: Form, point_m: float, shape: tuple[int, ...]) -> Floats32:
    """The crescent, lighter (below 0), its thickest place amid the corner (0, 0), wrapped round."""
    fine = 3
    rows, columns = (
        ((np.fft.fftfreq(n * fine) * n * fine + 0.5) / fine - 0.5) * point_m for n in shape
    )
    keep = 2 * form.radius_m * math.sin(form.half_angle / 2) + form.thick_m
    r, c = np.flatnonzero(abs(rows) < keep), np.flatnonzero(abs(columns) < keep)
    inside = _inside(rows[r][:, None], columns[c][None, :], form)
    out = np.zeros(shape, dtype=np.float32)
    # Fine points are gathered by rows first, then by columns, in cells of three by three.
    tall = np.add.reduceat(inside, *_cells(r // fine), axis=0)
    both = np.add.reduceat(tall, *_cells(c // fine), axis=1)
    out[np.ix_(np.unique(r // fine), np.unique(c // fine))] = -both / fine**2
    return out


def _cells(of: NDArray[np.intp]) -> tuple[NDArray[np.intp]]:
    """Where each run of the same cell begins."""
    return (np.flatnonzero(np.diff(of, prepend=-1)),)


def _inside(y: Floats, x: Floats, form: Form) -> Floats:
    # The middle of the circle lies a radius back from the thickest place.
    dy = y + form.radius_m * math.sin(form.turn)
    dx = x + form.radius_m * math.cos(form.turn)
    from_arc = abs(np.hypot(dy, dx) - form.radius_m)
    near = np.nonzero(from_arc < form.thick_m / 2)  # nowhere else is a crescent
    angle = np.arctan2(dy[near[0], 0], dx[0, near[1]]) - form.turn + math.pi
    off = np.remainder(angle, 2 * math.pi) - math.pi
    found = np.zeros(from_arc.shape)
    found[near] = from_arc[near] < form.half_thick(off)
    return found
