"""A photo's colours as a small picture that any screen shows."""

from __future__ import annotations

import io

import numpy as np

from farwall.colour.lab import srgb_of_lab
from farwall.evidence import Rank
from farwall.facts.photo_shown import PhotoShown
from farwall.readers.colour_photo.nouns import ColourPhoto

_QUALITY = 88


def photo_shown(photo: ColourPhoto, *, most_px: int = 1100) -> PhotoShown:
    """The photo as JPEG in sRGB, its longer side at most so many points.

    The light is D50 whatever it was taken by, where a measured target was in it; what no screen
    shows is cut off.
    """
    import cv2
    from PIL import Image

    high, wide = photo.lab.shape[:2]
    share = min(1.0, most_px / max(high, wide))
    size = (max(1, round(wide * share)), max(1, round(high * share)))
    small = cv2.resize(photo.lab, size, interpolation=cv2.INTER_AREA)
    coded = np.round(255 * srgb_of_lab(small)).astype(np.uint8)
    into = io.BytesIO()
    Image.fromarray(coded).save(into, "JPEG", quality=_QUALITY)
    known = photo.target is not None and photo.rank is Rank.MEASURED
    error = photo.target.error_de if photo.target is not None and known else None
    return PhotoShown(into.getvalue(), size[0], size[1], error, photo.taken_at)
