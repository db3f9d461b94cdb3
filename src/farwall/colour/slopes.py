"""Looks under parameters and how they move with each, by differences, in one reckoning.

A patch knows of the many rooms its own alone, and of the floor's change of shade no more than of
its own bare depth: so few rows are reckoned, and each parameter's slope is put together of them.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.dose import Form
from farwall.colour.looks import HAIR, looks
from farwall.colour.nouns import AT_FLOOR, Told
from farwall.nouns import dataclass

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Around:
    """What parameters show and what lies beside them, Lab in a row as in `Told`.

    off: what was seen less what they show · slope: how all looks move with each parameter,
    (looks, parameters) · thirst, shade: how each patch's Lab moves with the logarithm of its own
    thirst and of its own bare depth, (patches, 3).
    """

    theta: Floats
    off: Floats
    slope: Floats
    thirst: Floats
    shade: Floats


def around(form: Form, theta: Floats, told: Told) -> Around:
    """All of it at these parameters, ordered as in `nouns.Fit`."""
    stains, rooms = told.stains, len(told.rooms)
    bare = 3 * stains + 1
    rest = bare + 7 + 2 * rooms
    alone = np.r_[0 : bare + 3, rest : len(theta)]
    count = len(alone)
    many = np.tile(theta, (count + 3, 1))
    many[np.arange(1, count + 1), alone] += HAIR
    thirst = np.zeros((count + 3, 1))
    thirst[count + 1] = HAIR
    many[count + 2, bare : bare + 3] += HAIR
    seen = looks(form, many, told.laid, stains, places=told.places, thirst=thirst)
    moved = (seen[1:] - seen[0]) / HAIR
    slope = np.zeros((len(told.places), 3, len(theta)))
    slope[..., alone] = np.moveaxis(moved[:count], 0, -1)
    floor = (told.places >= AT_FLOOR)[:, None]
    slope[..., bare + 3 : bare + 6] = slope[..., bare : bare + 3] * floor[..., None]
    slope[..., bare + 6] = moved[count] * floor
    inside = (told.places[:, None] == np.arange(1, rooms + 1)).astype(np.float64)[:, None]
    slope[..., bare + 7 : bare + 7 + rooms] = moved[count][..., None] * inside
    slope[..., bare + 7 + rooms : rest] = moved[count + 1][..., None] * inside
    return Around(
        theta, told.labs - seen[0].reshape(-1), slope.reshape(-1, len(theta)),
        moved[count], moved[count + 1],
    )  # fmt: skip
