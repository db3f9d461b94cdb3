"""Opens a picture from strangers: known kinds only, its size judged before it is decoded.

PNG, JPEG and HEIC by Pillow and pi-heif; turned as its EXIF says; of an animation the first frame;
any mode of colour or depth becomes light from 0 (black) to 255.
"""

from __future__ import annotations

import io
import warnings
from typing import TYPE_CHECKING, TypeVar

import numpy as np
import numpy.typing as npt

from farwall.errors import Mistake, Refused
from farwall.readers.photo.kinds import is_heic

if TYPE_CHECKING:
    from collections.abc import Callable

    from PIL import Image

Grey = npt.NDArray[np.uint8]
Found = TypeVar("Found")
MOST_BYTES = 60_000_000
MOST_SIDE_PX = 20_000
MOST_PIXELS = 64_000_000
"""A telephone's largest pictures have 50 million; a sheet of 914 mm scanned at 200 dpi has 35.
A decoded colour picture of that size takes 190 MB. Rank: guess."""
LEAST_SIDE_PX = 200
WORKING_PIXELS = 12_500_000
"""Larger pictures are made smaller: no wall of a plan needs more. Rank: guess."""
_KINDS = ("PNG", "JPEG")
"""As Pillow opens them: a telephone's JPEG of several pictures (MPO) is opened as a JPEG."""
_AGAIN = "Take the photo again, or send it as JPEG or PNG."


def opened(data: bytes) -> tuple[Grey, float]:
    """Light of the picture, rows from the top, and the pixels of the file to one of these.

    Raises Refused for what is no such picture, is broken, or too large or small.
    """
    return looked_at(data, _light)


def looked_at(data: bytes, look: Callable[[Image.Image], Found]) -> Found:
    """What `look` makes of the picture, opened and not decoded yet.

    Raises Refused for what is no such picture, is broken, or too large or small.
    """
    from PIL import Image

    if len(data) > MOST_BYTES:
        raise _refused(f"The picture has more than {MOST_BYTES // 10**6} million bytes.")
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        try:
            with _picture(data) as picture:
                _check(*picture.size)
                return look(picture)
        except Refused:
            raise
        except MemoryError:
            raise _refused("The picture needs more memory than there is.") from None
        except (
            OSError,
            ValueError,
            SyntaxError,
            TypeError,
            KeyError,
            EOFError,
            RuntimeError,
            IndexError,
            OverflowError,
            AttributeError,
            ZeroDivisionError,
        ) as error:  # what Pillow's readers raise
            raise _refused("The picture is broken or cut short.") from error
        except Image.DecompressionBombError as error:  # its head is read before ours is asked
            raise _refused(f"The picture claims more than {MOST_PIXELS:,} pixels.") from error


def _picture(data: bytes) -> Image.Image:
    from PIL import Image

    if not is_heic(data):
        return Image.open(io.BytesIO(data), formats=_KINDS)
    import pi_heif  # type: ignore[import-untyped]

    pi_heif.register_heif_opener()
    return Image.open(io.BytesIO(data), formats=["HEIF"])


def _check(wide: int, high: int) -> None:
    if wide < LEAST_SIDE_PX or high < LEAST_SIDE_PX:
        raise _refused(f"The picture has only {wide} × {high} pixels.")
    if wide > MOST_SIDE_PX or high > MOST_SIDE_PX or wide * high > MOST_PIXELS:
        raise _refused(f"The picture has {wide} × {high} pixels: too many.")


def _light(picture: Image.Image) -> tuple[Grey, float]:
    from PIL import Image, ImageOps

    wide, high = picture.size
    smaller = (wide * high / WORKING_PIXELS) ** 0.5
    if smaller > 1 and picture.format in {"JPEG", "MPO"}:
        picture.draft("L", (int(wide / smaller), int(high / smaller)))
    turned = ImageOps.exif_transpose(picture)
    grey = _grey(turned)
    now = (grey.width * grey.height / WORKING_PIXELS) ** 0.5
    if now > 1.01:
        size = (round(grey.width / now), round(grey.height / now))
        grey = grey.resize(size, Image.Resampling.BOX)
    return np.asarray(grey, np.uint8), max(wide, high) / max(grey.size)


def _grey(picture: Image.Image) -> Image.Image:
    """Any mode as 8 bits of light; what is transparent lies on white paper."""
    from PIL import Image

    if picture.mode in {"I", "F", "I;16", "I;16B", "I;16L"}:
        deep = np.nan_to_num(np.asarray(picture, np.float64))
        low, high = float(deep.min()), float(deep.max())
        spread = (deep - low) / max(high - low, 1.0)
        return Image.fromarray((spread * 255).astype(np.uint8))
    if picture.mode in {"LA", "PA", "RGBA"} or "transparency" in picture.info:
        clear = picture.convert("RGBA")
        white = Image.new("RGBA", clear.size, "white")
        return Image.alpha_composite(white, clear).convert("L")
    return picture.convert("L")


def _refused(what: str) -> Refused:
    return Refused(Mistake("", what, _AGAIN))
