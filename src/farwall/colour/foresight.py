"""What a floor will look like after coats that are not laid yet, drawn from what is believed."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from scipy.special import chdtri, ndtri

from farwall.colour.dose import Form, Laid, schedules
from farwall.colour.looks import looks, patch_moves
from farwall.colour.nouns import FLOOR, Belief

Floats = NDArray[np.float64]


def foreseen(
    belief: Belief, ways: Sequence[Sequence[Laid]], *, place: str = FLOOR, draws: int = 512
) -> Floats:
    """Lab of a place's clean wet look after each of these ways of coating it: (draws, ways, 3).

    The same each time; draws are shared out between the forms by their weights, and one draw is the
    same floor in every room. place: "floor", "samples" or a room. Raises ValueError where nobody
    named it.
    """
    laid, places = schedules(ways), np.full(len(ways), belief.place(place))
    return np.concatenate(
        [
            looks(form, theta, laid, belief.stains, places=places)
            for form, theta, _ in _drawn(belief, draws)
        ]
    )


def darkest(
    belief: Belief, ways: Sequence[Sequence[Laid]], *, share: float, place: str = FLOOR,
    draws: int = 512,
) -> Floats:  # fmt: skip
    """L of the patch that all but `share` (0 to 0.5) of a place is lighter than: (draws, ways).

    A patch differs by its thirst and by its own shade; how patchy this floor is, is drawn as well.
    """
    laid, places = schedules(ways), np.full(len(ways), belief.place(place))
    far, found = -ndtri(share), []
    for form, theta, even in _drawn(belief, draws):
        thirst, shade = patch_moves(
            form, theta, laid, belief.stains, places=places, prior=belief.prior
        )
        mean = looks(form, theta, laid, belief.stains, places=places)[..., 0]
        scale = np.sqrt(belief.patchy * belief.patchy_of / chdtri(belief.patchy_of, even))
        found.append(mean - far * scale[:, None] * np.hypot(thirst[..., 0], shade[..., 0]))
    return np.concatenate(found)


def _drawn(belief: Belief, draws: int) -> list[tuple[Form, Floats, Floats]]:
    """Parameters drawn from each form, and a number between 0 and 1 for each draw."""
    found: list[tuple[Form, Floats, Floats]] = []
    for fit, weight in zip(belief.fits, belief.weights, strict=True):
        count, size = round(draws * weight), len(fit.middle)
        if count:
            even = _even(count, size + 1)
            throws = ndtri(even[:, :size])
            theta = fit.middle + throws @ np.linalg.cholesky(fit.spread).T
            found.append((fit.form, np.asarray(theta), even[:, size]))
    return found


def _even(count: int, size: int) -> Floats:
    """Numbers between 0 and 1 that fill the cube evenly, the same each time.

    Kronecker's sequence on powers of the root of x^(size + 1) = x + 1.
    """
    root = 2.0
    for _ in range(60):
        root = (1 + root) ** (1 / (size + 1))
    steps = (1 / root) ** np.arange(1, size + 1)
    even = (0.5 + np.arange(1, count + 1)[:, None] * steps) % 1
    return np.asarray(np.clip(even, 1e-9, 1 - 1e-9))
