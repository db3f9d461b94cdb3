"""How patches look under parameters of a form; how thirst and shade of a patch move its look."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.dose import Form, Schedules, body_of_depth, counted, wet_of_body
from farwall.colour.nouns import AT_FLOOR, Places
from farwall.colour.prior import Prior

Floats = NDArray[np.float64]
HAIR = 1e-4


def looks(
    form: Form, theta: Floats, laid: Schedules, stains: int, *, places: Places,
    thirst: float | Floats = 0.0,
) -> Floats:  # fmt: skip
    """Lab of patches under rows of parameters: (rows, patches, 3).

    theta: as `nouns.Fit` orders them · places: of each patch, its number · thirst: log factor of
    doses, one or (rows, patches).
    """
    n = 3 * stains
    rooms = (theta.shape[1] - n - 8) // 2
    strength = np.exp(theta[:, :n]).reshape(len(theta), stains, 3)
    floor = places >= AT_FLOOR
    bare = theta[:, None, n + 1 : n + 4] + np.where(
        floor[None, :, None], theta[:, None, n + 4 : n + 7], 0.0
    )
    thirsts = thirst + np.where(floor[None], theta[:, n + 7, None], 0.0)
    if rooms and (places > AT_FLOOR).any():
        thirsts = thirsts + _of_room(theta[:, n + 8 : n + 8 + rooms], places)
        bare = bare + _of_room(theta[:, n + 8 + rooms :], places)[..., None]
    counts = counted(form, laid, stains, factor=np.exp(thirsts), lime=np.exp(theta[:, n, None]))
    depth = np.exp(bare) + np.einsum("pns,psc->pnc", counts, strength)
    return wet_of_body(body_of_depth(depth, form))


def _of_room(own: Floats, places: Places) -> Floats:
    """What each patch has of its room; outside rooms nothing."""
    padded = np.concatenate((np.zeros((len(own), 1)), own), axis=1)
    return np.asarray(padded[:, np.maximum(places, 0)])


def patch_moves(
    form: Form, theta: Floats, laid: Schedules, stains: int, *, places: Places, prior: Prior
) -> tuple[Floats, Floats]:
    """By how much Lab of a patch moves with one spread of its thirst, and of its shade."""
    n = 3 * stains
    usual = looks(form, theta, laid, stains, places=places)
    thirsty = looks(form, theta, laid, stains, places=places, thirst=HAIR)
    shaded = theta.copy()
    shaded[:, n + 1 : n + 4] += HAIR
    dark = looks(form, shaded, laid, stains, places=places)
    return (
        (thirsty - usual) / HAIR * prior.patch_thirst,
        (dark - usual) / HAIR * prior.patch_shade,
    )
