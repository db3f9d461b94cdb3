"""A photo opened in its colours, upright, no larger than memory bears, and made CIELAB of."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from farwall.colour.channels import WHITE_D50
from farwall.colour.lab import XYZ_OF_SRGB, linear_of_srgb
from farwall.readers.colour_photo.opening import in_srgb, on_white
from farwall.readers.photo.opening import WORKING_PIXELS, looked_at

if TYPE_CHECKING:
    from PIL import Image

Bytes = npt.NDArray[np.uint8]
Linear = npt.NDArray[np.uint16]
Floats32 = npt.NDArray[np.float32]
BURNT = 251
"""A channel at or above this ran out of light; JPEG spreads 255 by a few. Rank: guess."""
_TO_WHITE = (XYZ_OF_SRGB / WHITE_D50[:, None] / 65535).astype(np.float32)


def colours(data: bytes) -> tuple[Bytes, float]:
    """sRGB of the picture (rows, columns, 3), and the pixels of the file to one of these.

    Raises Refused for what is no such picture, is broken, or too large or small.
    """
    return looked_at(data, _rgb)


def linear(rgb: Bytes) -> Linear:
    """Light of the three channels, 65,535 the most: what is to be averaged."""
    import cv2

    return np.asarray(cv2.LUT(rgb, _table()), np.uint16)


def burnt(rgb: Bytes) -> Bytes:
    """255 where a channel ran out of light, 0 elsewhere."""
    import cv2

    most = cv2.max(cv2.max(rgb[..., 0], rgb[..., 1]), rgb[..., 2])
    return np.asarray(cv2.threshold(most, BURNT - 1, 255, cv2.THRESH_BINARY)[1], np.uint8)


def lab_of(cells: Floats32) -> Floats32:
    """CIELAB, light D50, of linear light 0 to 65,535: as `colour.lab`, in half the width.

    The camera's own white and tone are taken for those of sRGB: a guess where no target says more.
    """
    import cv2

    xyz = cv2.transform(cells, _TO_WHITE)
    low = xyz < (6 / 29) ** 3
    root = np.cbrt(np.maximum(xyz, 1e-9))
    root[low] = xyz[low] / (3 * (6 / 29) ** 2) + 4 / 29
    x, y, z = (root[..., k] for k in range(3))
    return np.stack([116 * y - 16, 500 * (x - y), 200 * (y - z)], axis=-1).astype(np.float32)


@cache
def _table() -> npt.NDArray[np.uint16]:
    return np.round(linear_of_srgb(np.arange(256) / 255) * 65535).astype(np.uint16)


def _rgb(picture: Image.Image) -> tuple[Bytes, float]:
    from PIL import Image, ImageOps

    wide, high = picture.size
    smaller = (wide * high / WORKING_PIXELS) ** 0.5
    if smaller > 1.01 and picture.format in {"JPEG", "MPO"}:
        picture.draft("RGB", (int(wide / smaller), int(high / smaller)))
    profile = picture.info.get("icc_profile")
    whole = on_white(ImageOps.exif_transpose(picture))
    now = (whole.width * whole.height / WORKING_PIXELS) ** 0.5
    if now > 1.01:
        size = (round(whole.width / now), round(whole.height / now))
        whole = whole.resize(size, Image.Resampling.BOX)
    return np.asarray(in_srgb(whole, profile), np.uint8), max(wide, high) / max(whole.size)
