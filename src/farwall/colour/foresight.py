"""What a floor will look like after coats that are not laid yet, drawn from what is believed."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtri

from farwall.colour.dose import Laid, schedules
from farwall.colour.looks import looks, looks_and_moves, parts_of
from farwall.colour.nouns import FLOOR, Belief

Floats = NDArray[np.float64]


def foreseen(belief: Belief, ways: Sequence[Sequence[Laid]], *, place: str = FLOOR) -> Floats:
    """Lab of a place's clean wet look after each of these ways of coating it: (draws, ways, 3).

    The same each time; one draw is the same floor in every room. place: "floor", "samples" or a
    room. Raises ValueError where nobody named it.
    """
    laid, places = schedules(ways), np.full(len(ways), belief.place(place))
    return np.concatenate(
        [
            looks(one.form, one.drawn, laid, belief.stains, places=places)
            for one in belief.fits
            if len(one.drawn)
        ]
    )


def darkest(
    belief: Belief, ways: Sequence[Sequence[Laid]], *, share: float, place: str = FLOOR
) -> Floats:
    """L of the patch that all but `share` (0 to 0.5) of a place is lighter than: (draws, ways).

    A patch differs by its thirst and by its own shade; how patchy this floor is, is drawn as well.
    """
    return with_darkest(belief, ways, share=share, place=place)[1]


def with_darkest(
    belief: Belief, ways: Sequence[Sequence[Laid]], *, share: float, place: str = FLOOR
) -> tuple[Floats, Floats]:
    """Both at once: what `foreseen` and `darkest` give."""
    laid, places = schedules(ways), np.full(len(ways), belief.place(place))
    far, means, worst = -ndtri(share), [], []
    for one in belief.fits:
        for rows in parts_of(len(one.drawn), len(ways)):
            mean, thirst, shade = looks_and_moves(
                one.form, one.drawn[rows], laid, belief.stains, places=places, prior=belief.prior
            )
            means.append(mean)
            worst.append(mean[..., 0] - far * one.scale[rows, None] * np.hypot(thirst, shade))
    return np.concatenate(means), np.concatenate(worst)
