"""Opens a photo for its colours: turned, of bearable size, brought to sRGB where a profile says."""

from __future__ import annotations

import io
import re
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from farwall.nouns import dataclass
from farwall.readers.photo.opening import looked_at

if TYPE_CHECKING:
    from PIL import Image

WORKING_PX = 2000
"""Of the longer side: a patch of a sheet that fills a quarter of it has thirty. Rank: guess."""
_TAKEN, _EXIF, _TURN = (36867, 306), 0x8769, 274
"""EXIF: when it was taken, else when the file was written; the folder that holds the first; which
way it was held."""
_WHEN = re.compile(r"(\d{4}):(\d\d):(\d\d) (\d\d):(\d\d):(\d\d)")


@dataclass(frozen=True)
class Coded:
    """A photo as the file codes it: (rows, columns, red green blue), 8 bits of sRGB.

    file_px: pixels of the file to one of these · taken_at: ISO 8601, empty where nobody wrote it.
    """

    rgb: NDArray[np.uint8]
    file_px: float
    taken_at: str


def opened_colour(data: bytes) -> Coded:
    """The photo, JPEG, PNG or HEIC. Raises Refused for what is none, or broken, or too large."""
    return looked_at(data, _coded)


def _coded(picture: Image.Image) -> Coded:
    from PIL import Image, ImageOps

    longer = max(picture.size)
    taken = _taken(picture)
    profile = picture.info.get("icc_profile")
    if picture.format in {"JPEG", "MPO"} and longer > WORKING_PX:
        share = WORKING_PX / longer
        picture.draft("RGB", (int(picture.size[0] * share), int(picture.size[1] * share)))
    plain = on_white(picture)
    if (now := max(plain.size)) > WORKING_PX:
        share = WORKING_PX / now
        size = (max(1, round(plain.width * share)), max(1, round(plain.height * share)))
        plain = plain.resize(size, Image.Resampling.BOX)
    plain.info["exif"] = picture.info.get("exif", b"")
    turned = ImageOps.exif_transpose(plain)
    rgb = np.asarray(in_srgb(turned, profile), np.uint8)
    return Coded(rgb, longer / max(rgb.shape[:2]), taken)


def upright(picture: Image.Image) -> Image.Image:
    """Turned as its EXIF says; itself, and no copy of it, where it says nothing."""
    from PIL import ImageOps

    if picture.getexif().get(_TURN, 1) == 1:
        return picture
    return ImageOps.exif_transpose(picture)


def on_white(picture: Image.Image) -> Image.Image:
    """Any mode as red, green, blue, itself where it is; what is transparent lies on white."""
    from PIL import Image

    if picture.mode in {"LA", "PA", "RGBA"} or "transparency" in picture.info:
        clear = picture.convert("RGBA")
        white = Image.new("RGBA", clear.size, "white")
        return Image.alpha_composite(white, clear).convert("RGB")
    if picture.mode.startswith("I"):
        return Image.fromarray((np.asarray(picture, np.float64) / 257).clip(0, 255).astype(np.uint8)
                               ).convert("RGB")  # fmt: skip
    return picture if picture.mode == "RGB" else picture.convert("RGB")


def in_srgb(picture: Image.Image, profile: bytes | None) -> Image.Image:
    """Telephones write wider colours and say so; a profile that cannot be read is passed over."""
    if not profile:
        return picture
    from PIL import ImageCms

    try:
        own = ImageCms.ImageCmsProfile(io.BytesIO(profile))
        meant = ImageCms.createProfile("sRGB")
        return ImageCms.profileToProfile(picture, own, meant, outputMode="RGB") or picture
    except (ImageCms.PyCMSError, OSError, ValueError):
        return picture


def _taken(picture: Image.Image) -> str:
    exif = picture.getexif()
    inner = exif.get_ifd(_EXIF)
    for found in (inner.get(_TAKEN[0]), exif.get(_TAKEN[1])):
        match = _WHEN.match(str(found or ""))
        if match:
            year, month, day, hour, minute, second = match.groups()
            return f"{year}-{month}-{day}T{hour}:{minute}:{second}"
    return ""
