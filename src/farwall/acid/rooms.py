"""Several rooms joined by doors: a vapour that is given off in them, carried between and out.

Each room is well mixed; air comes in clean and goes out with what the room holds, and as much
passes through a door one way as the other. For room i

    V_i dC_i/dt = G_i + Σ_j q_ij (C_j - C_i) - o_i C_i

so the matrix is symmetric once scaled by the root of the volumes, its exponential comes exactly
from its eigenvectors, and a release that is steady through a step is carried without error. The
law of one room is that of `acid.room` [hygiene-basics]; the joining is arithmetic of mass.
"""

from __future__ import annotations

from typing import Any

import numpy as np
import numpy.typing as npt

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

Array = npt.NDArray[np.float64]
G = 9.81
DOOR_DISCHARGE, DOOR_M = 0.6, 2.0
"""Discharge of a doorway and its height: from memory; two-way flow as [brown-solvason-1962]."""


@dataclass(frozen=True)
class Rooms:
    """Air of a house, rooms last; leading axes are cases of the same house.

    volume_m3: (R,) · out_m3_min: (…, R), clean air into each room and out of it again ·
    between_m3_min: (…, R, R), symmetric, through doors. Raises `Refused` where the shapes or the
    signs do not fit.
    """

    volume_m3: Array
    out_m3_min: Array
    between_m3_min: Array

    def __post_init__(self) -> None:
        rooms = self.volume_m3.shape[-1]
        wrong = []
        if not (self.volume_m3 > 0).all():
            wrong.append(Mistake("volume_m3", "A room has no volume.", "Give more than 0."))
        if (self.out_m3_min < 0).any() or (self.between_m3_min < 0).any():
            wrong.append(Mistake("air", "Less than no air passes.", "Give 0 or more."))
        if self.between_m3_min.shape[-2:] != (rooms, rooms) or not np.allclose(
            self.between_m3_min, np.swapaxes(self.between_m3_min, -1, -2)
        ):
            wrong.append(
                Mistake("between", "A door passes more air one way.", "Give both ways the same.")
            )
        if wrong:
            raise Refused(*wrong, about="The air of this house cannot be reckoned with.")


@dataclass(frozen=True)
class Step:
    """One step: what stays where (`keeps`), what a release adds to each room (`gains`, min/m³)."""

    keeps: Array
    gains: Array

    def after(self, held: Array, released: Array) -> Array:
        """The air after the step: held (…, R) as it was, released (…, R) per minute through it."""
        kept: Array = (
            np.matmul(self.keeps, held[..., None]) + np.matmul(self.gains, released[..., None])
        )[..., 0]
        return kept


def step_of(rooms: Rooms, minutes: float) -> Step:
    """The exact step of so many minutes."""
    root = np.sqrt(rooms.volume_m3)
    leaving = rooms.out_m3_min + rooms.between_m3_min.sum(axis=-1)
    flows = _diagonal(leaving) - rooms.between_m3_min * (1 - np.eye(root.shape[-1]))
    flows -= _diagonal(np.diagonal(rooms.between_m3_min, axis1=-2, axis2=-1))
    rates, ways = np.linalg.eigh(flows / (root[..., :, None] * root[..., None, :]))
    rates = np.maximum(rates, 0.0)
    back = np.swapaxes(ways, -1, -2)
    fall = np.exp(-rates * minutes)
    # (1 - exp(-r t))/r, which goes to t where no air passes at all.
    gain = np.where(rates * minutes > 1e-9, -np.expm1(-rates * minutes) / np.maximum(rates, 1e-300),
                    minutes)  # fmt: skip
    keeps = np.matmul(ways * fall[..., None, :], back) * (root[..., None, :] / root[..., :, None])
    gains = np.matmul(ways * gain[..., None, :], back) / (root[..., :, None] * root[..., None, :])
    return Step(np.maximum(keeps, 0.0), np.maximum(gains, 0.0))


def air_of(rooms: Rooms, released_per_min: Array, *, step_min: float) -> Array:
    """What each room holds at the ends of all steps, the clean air before the first. (T+1, …, R)

    released_per_min: (T, …, R), steady through each step, in any unit of mass; what comes back is
    that unit in a cubic metre.
    """
    step = step_of(rooms, step_min)
    held: list[Array] = [np.zeros(np.broadcast_shapes(released_per_min.shape[1:],
                                                      rooms.out_m3_min.shape))]  # fmt: skip
    for now in released_per_min:
        held.append(step.after(held[-1], now))
    return np.stack(held)


def doorway_m3_min(*, width_m: float, warmer_k: float, air_c: float = 21.0,
                   height_m: float = DOOR_M) -> float:  # fmt: skip
    """Air that changes sides through an open doorway, each way. [m³/min]

    C/3·w·h·√(g·h·ΔT/T): warm air goes out above, cool comes in below. Source:
    [brown-solvason-1962], form and coefficient from memory. warmer_k: between the rooms; within a
    house some tenths of a kelvin, which nobody measures.
    """
    rise = G * height_m * max(warmer_k, 0.0) / (air_c + 273.15)
    return DOOR_DISCHARGE / 3 * width_m * height_m * float(np.sqrt(rise)) * 60


def mean_over(minutes: float, held: Array, *, step_min: float) -> Array:
    """The greatest mean over so many minutes running, for what `air_of` gives. (…, R)"""
    steps = max(1, round(minutes / step_min))
    if held.shape[0] <= steps:
        whole: Array = held.mean(axis=0)
        return whole
    middle = (held[1:] + held[:-1]) / 2
    total: Any = np.concatenate([np.zeros_like(middle[:1]), np.cumsum(middle, axis=0)])
    greatest: Array = (total[steps:] - total[:-steps]).max(axis=0) / steps
    return greatest


def _diagonal(values: Array) -> Array:
    return values[..., None] * np.eye(values.shape[-1])
