"""A photo opened in its colours, upright, no larger than memory bears, and made CIELAB of."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from farwall.colour.channels import WHITE_D50
from farwall.colour.lab import XYZ_OF_SRGB, linear_of_srgb, srgb_of_linear
from farwall.nouns import dataclass
from farwall.readers.colour_photo.opening import in_srgb, on_white, upright
from farwall.readers.photo.opening import WORKING_PIXELS, looked_at

if TYPE_CHECKING:
    from PIL import Image

Bytes = npt.NDArray[np.uint8]
Linear = npt.NDArray[np.uint16]
Floats32 = npt.NDArray[np.float32]
BURNT = 251
"""A channel at or above this ran out of light; JPEG spreads 255 by a few. Rank: guess."""
_STRIP = 256
_FROM_WHITE = (np.linalg.inv(XYZ_OF_SRGB) * WHITE_D50).astype(np.float32)
_TO_WHITE = (XYZ_OF_SRGB / WHITE_D50[:, None] / 65535).astype(np.float32)


def colours(data: bytes) -> tuple[Bytes, float]:
    """sRGB of the picture (rows, columns, 3), and the pixels of the file to one of these.

    Raises Refused for what is no such picture, is broken, or too large or small.
    """
    return looked_at(data, _rgb)


@dataclass(frozen=True)
class Light:
    """A decoded photo, upright. shrunk: pixels of the file to one of these."""

    coded: Image.Image
    shrunk: float

    @property
    def size(self) -> tuple[int, int]:
        """Columns and rows."""
        return self.coded.size

    def rows(self, top: int, low: int) -> tuple[Linear, Bytes]:
        """From one row to before another: light of the three channels, 65,535 the most, which is
        what is to be averaged, (rows, columns, 3); 255 where a channel ran out of light, else 0.

        Taken strip by strip, so that no more than a strip lies in memory as it is coded.
        """
        wide, high = self.size[0], low - top
        light, hot = np.empty((high, wide, 3), np.uint16), np.empty((high, wide), np.uint8)
        for begin in range(0, high, _STRIP):
            end = min(begin + _STRIP, high)
            strip = np.asarray(self.coded.crop((0, top + begin, wide, top + end)), np.uint8)
            light[begin:end], hot[begin:end] = linear(strip), burnt(strip)
        return light, hot


def light_in(data: bytes) -> Light:
    """The picture, of which any rows tell their light. Raises Refused as `colours` does."""
    return looked_at(data, _light)


def linear(rgb: Bytes) -> Linear:
    """Light of the three channels."""
    import cv2

    return np.asarray(cv2.LUT(rgb, _table()), np.uint16)


def burnt(rgb: Bytes) -> Bytes:
    """255 where a channel ran out of light, 0 elsewhere."""
    import cv2

    return np.asarray(cv2.bitwise_not(cv2.inRange(rgb, (0, 0, 0), (BURNT - 1,) * 3)), np.uint8)


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


def coded_of(lab: Floats32) -> Bytes:
    """sRGB that shows CIELAB, light D50; as `colour.lab`, in half the width and to a 4,000th."""
    import cv2

    fy = (lab[..., 0] + 16) / 116
    f = np.stack((fy + lab[..., 1] / 500, fy, fy - lab[..., 2] / 200), axis=-1)
    ratio = f * f * f
    low = f <= 6 / 29
    if low.any():
        ratio[low] = 3 * (6 / 29) ** 2 * (f[low] - 4 / 29)
    light = cv2.transform(ratio, _FROM_WHITE)
    steps = np.clip(light, 0, 1) * (len(_coded()) - 1) + 0.5
    return np.asarray(_coded()[steps.astype(np.uint16)])


@cache
def _coded() -> Bytes:
    return np.asarray(np.round(srgb_of_linear(np.linspace(0, 1, 4096)) * 255), np.uint8)


@cache
def _table() -> npt.NDArray[np.uint16]:
    return np.round(linear_of_srgb(np.arange(256) / 255) * 65535).astype(np.uint16)


def _rgb(picture: Image.Image) -> tuple[Bytes, float]:
    whole, shrunk = _whole(picture)
    return np.asarray(whole, np.uint8), shrunk


def _light(picture: Image.Image) -> Light:
    whole, shrunk = _whole(picture)
    whole.load()
    return Light(whole, shrunk)


def _whole(picture: Image.Image) -> tuple[Image.Image, float]:
    from PIL import Image

    wide, high = picture.size
    smaller = (wide * high / WORKING_PIXELS) ** 0.5
    if smaller > 1.01 and picture.format in {"JPEG", "MPO"}:
        picture.draft("RGB", (int(wide / smaller), int(high / smaller)))
    profile = picture.info.get("icc_profile")
    whole = on_white(upright(picture))
    now = (whole.width * whole.height / WORKING_PIXELS) ** 0.5
    if now > 1.01:
        size = (round(whole.width / now), round(whole.height / now))
        whole = whole.resize(size, Image.Resampling.BOX)
    return in_srgb(whole, profile), max(wide, high) / max(whole.size)
