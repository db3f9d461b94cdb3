"""How patches look under parameters of a form; how thirst and shade of a patch move its look."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.dose import Form, Schedules, body_of_depth, counted, wet_of_body
from farwall.colour.nouns import AT_FLOOR, Places
from farwall.colour.prior import Prior

Floats = NDArray[np.float64]
HAIR = 1e-4
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
    n = 3 * stains
    rooms = (theta.shape[1] - n - 7 - stains - 3 * (stains > 1)) // 2
    last = n + 8 + 2 * rooms
    strength = np.exp(theta[:, :n]).reshape(len(theta), stains, 3)
    floor = places >= AT_FLOOR
    bare = theta[:, None, n + 1 : n + 4] + np.where(
        floor[None, :, None], theta[:, None, n + 4 : n + 7], 0.0
    )
    thirsts = thirst + np.where(floor[None], theta[:, n + 7, None], 0.0)
    if rooms and (places > AT_FLOOR).any():
        thirsts = thirsts + _of_room(theta[:, n + 8 : n + 8 + rooms], places)
        bare = bare + _of_room(theta[:, n + 8 + rooms : last], places)[..., None]
    takes = np.exp(
        np.concatenate((np.zeros((len(theta), 1)), theta[:, last : last + stains - 1]), 1)
    )
    counts = counted(
        form, laid, stains, factor=np.exp(thirsts), lime=np.exp(theta[:, n, None]), takes=takes
    )
    added = np.einsum("pns,psc->pnc", counts, strength)
    if stains > 1:
        meets = np.maximum(theta[:, None, last + stains - 1 :], LEAST_MEETING)
        added = added + meets * meeting(counts, strength)
    depth = np.exp(bare) + added
    return wet_of_body(body_of_depth(depth, form))


def meeting(counts: Floats, strength: Floats) -> Floats:
    """How much two colours lie in each other's way, by channel: (rows, patches, 3).

    Twice d1·d2/(d1 + d2) of the depths of either, summed over pairs: nothing where one is absent,
    their own where they are alike. A channel is as broad as a third of the spectrum; colours that
    darken different parts of it add to more, or to less, than they would in the same part.
    """
    found = np.zeros((*counts.shape[:2], 3))
    each = counts[..., None] * strength[:, None]
    stains = counts.shape[-1]
    for one in range(stains):
        for other in range(one + 1, stains):
            first, second = each[:, :, one], each[:, :, other]
            found += 2 * first * second / np.maximum(first + second, 1e-12)
    return found


def _of_room(own: Floats, places: Places) -> Floats:
    """What each patch has of its room; outside rooms nothing."""
    padded = np.concatenate((np.zeros((len(own), 1)), own), axis=1)
    return np.asarray(padded[:, np.maximum(places, 0)])


def patch_moves(
    form: Form, theta: Floats, laid: Schedules, stains: int, *, places: Places, prior: Prior,
    usual: Floats | None = None,
) -> tuple[Floats, Floats]:  # fmt: skip
    """By how much Lab of a patch moves with one spread of its thirst, and of its shade.

    usual: its look, where that is known already.
    """
    n = 3 * stains
    if usual is None:
        usual = looks(form, theta, laid, stains, places=places)
    thirsty = looks(form, theta, laid, stains, places=places, thirst=HAIR)
    shaded = theta.copy()
    shaded[:, n + 1 : n + 4] += HAIR
    dark = looks(form, shaded, laid, stains, places=places)
    return (
        (thirsty - usual) / HAIR * prior.patch_thirst,
        (dark - usual) / HAIR * prior.patch_shade,
    )
