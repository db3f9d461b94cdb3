"""How unsure all that was seen is: the photo, the spot, and the patch's own thirst and shade.

The error of a photo is one for all that was taken in it, so its part of the covariance has no more
than three ranks a photo, and the whole is undone photo by photo (Woodbury's identity, textbook).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.nouns import Told
from farwall.nouns import dataclass

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Noise:
    """The inverse of a covariance of all looks, and the logarithm of its determinant."""

    weight: Floats
    log_size: float


def noise_of(own: Floats, told: Told) -> Noise:
    """Of patches that differ by `own` covariances, (patches, 3, 3), each its own, and by photos.

    own: each positive definite.
    """
    count, photos = len(own), int(told.photos.max(initial=-1)) + 1
    alone = np.linalg.inv(own)
    reach = told.blur[:, None, None] * alone * np.array(told.prior.photo)
    shared = told.blur[:, None, None] * np.array(told.prior.photo)[:, None] * reach
    of_photo = np.tile(np.eye(3), (photos, 1, 1))
    np.add.at(of_photo, told.photos, shared)
    turned = (reach @ np.linalg.inv(of_photo)[told.photos]).reshape(-1, 3)
    same = told.photos[:, None] == told.photos
    weight = (turned @ reach.reshape(-1, 3).T).reshape(count, 3, count, 3)
    weight *= -same[:, None, :, None].astype(np.float64)
    every = np.arange(count)
    weight[every, :, every, :] += alone
    size = np.linalg.slogdet(own)[1].sum() + np.linalg.slogdet(of_photo)[1].sum()
    return Noise(weight.reshape(3 * count, 3 * count), float(size))
