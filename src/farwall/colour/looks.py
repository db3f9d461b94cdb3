"""How patches look under parameters of a form; how thirst and shade of a patch move its look."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.colour.dose import (
    Form,
    Schedules,
    body_of_depth,
    counted,
    wet_lightness_of_body,
    wet_of_body,
)
from farwall.colour.nouns import AT_FLOOR, Places
from farwall.colour.prior import Prior

Floats = NDArray[np.float64]
HAIR = 1e-4
_LOOKS_AT_ONCE = 8192
"""Measured here: planes of so many numbers stay in the processor's own memory."""
LEAST_MEETING = -0.45
"""Below a half, more of one colour could look lighter."""


def looks(
    form: Form, theta: Floats, laid: Schedules, stains: int, *, places: Places,
    thirst: float | Floats = 0.0,
) -> Floats:  # fmt: skip
    """Lab of patches under rows of parameters: (rows, patches, 3).

    theta: as `nouns.Fit` orders them · places: of each patch, its number · thirst: log factor of
    doses, one or (rows, patches).
    """
    bare, added = _depths(form, theta, laid, stains, places=places, thirst=thirst)
    return wet_of_body(_body(bare + added, form))


def looks_and_moves(
    form: Form, theta: Floats, laid: Schedules, stains: int, *, places: Places, prior: Prior
) -> tuple[Floats, Floats, Floats]:
    """The same, and by how much L moves with a spread of a patch's thirst, and of its shade.

    The moves: (rows, patches) each.
    """
    bare, added = _depths(form, theta, laid, stains, places=places)
    usual = wet_of_body(_body(bare + added, form))
    shaded = wet_lightness_of_body(_body(bare * np.exp(HAIR) + added, form))
    bare, added = _depths(form, theta, laid, stains, places=places, thirst=HAIR)
    thirsty = wet_lightness_of_body(_body(bare + added, form))
    return (
        usual,
        (thirsty - usual[..., 0]) / HAIR * prior.patch_thirst,
        (shaded - usual[..., 0]) / HAIR * prior.patch_shade,
    )


def _body(depth: Floats, form: Form) -> Floats:
    return body_of_depth(np.moveaxis(depth, 0, -1), form)


def _depths(
    form: Form, theta: Floats, laid: Schedules, stains: int, *, places: Places,
    thirst: float | Floats = 0.0,
) -> tuple[Floats, Floats]:  # fmt: skip
    """Depth of the bare slab and what the coats add to it: (3, rows, patches) each."""
    n = 3 * stains
    rooms = (theta.shape[1] - n - 7 - stains - 3 * (stains > 1)) // 2
    last = n + 8 + 2 * rooms
    strength = np.exp(theta[:, :n]).reshape(len(theta), stains, 3)
    floor = (places >= AT_FLOOR).astype(np.float64)
    # Channels stand first: whole planes of rows and patches are reckoned at a time.
    bare = theta.T[n + 1 : n + 4, :, None] + floor * theta.T[n + 4 : n + 7, :, None]
    thirsts = thirst + floor * theta[:, n + 7, None]
    if rooms and (places > AT_FLOOR).any():
        thirsts = thirsts + _of_room(theta[:, n + 8 : n + 8 + rooms], places)
        bare += _of_room(theta[:, n + 8 + rooms : last], places)
    takes = np.exp(
        np.concatenate((np.zeros((len(theta), 1)), theta[:, last : last + stains - 1]), 1)
    )
    counts = counted(
        form, laid, stains, factor=np.exp(thirsts), lime=np.exp(theta[:, n, None]), takes=takes
    )
    each = [_by_channel(counts[..., one], strength[:, one]) for one in range(stains)]
    added = np.asarray(sum(each))
    if stains > 1:
        meets = np.maximum(theta.T[last + stains - 1 :, :, None], LEAST_MEETING)
        added += meets * _meeting(each)
    return np.exp(bare, out=bare), added


def meeting(counts: Floats, strength: Floats) -> Floats:
    """How much two colours lie in each other's way, by channel: (rows, patches, 3).

    Twice d1·d2/(d1 + d2) of the depths of either, summed over pairs: nothing where one is absent,
    their own where they are alike. A channel is as broad as a third of the spectrum; colours that
    darken different parts of it add to more, or to less, than they would in the same part.
    """
    stains = range(counts.shape[-1])
    each = [_by_channel(counts[..., one], strength[:, one]) for one in stains]
    return np.moveaxis(_meeting(each), 0, -1)


def _by_channel(counts: Floats, strength: Floats) -> Floats:
    """Depth of one stain: (3, rows, patches)."""
    return np.asarray(strength.T[:, :, None] * counts)


def _meeting(each: Sequence[Floats]) -> Floats:
    found = np.zeros(each[0].shape)
    for one, first in enumerate(each):
        for second in each[one + 1 :]:
            found += 2 * first * second / np.maximum(first + second, 1e-12)
    return found


def _of_room(own: Floats, places: Places) -> Floats:
    """What each patch has of its room; outside rooms nothing."""
    padded = np.concatenate((np.zeros((len(own), 1)), own), axis=1)
    return np.asarray(padded[:, np.maximum(places, 0)])


def parts_of(rows: int, patches: int) -> list[slice]:
    """Rows in parts of which the looks stay near the processor; none of no rows."""
    size = max(1, _LOOKS_AT_ONCE // max(1, patches))
    return [slice(at, at + size) for at in range(0, rows, size)]
