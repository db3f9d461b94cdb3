"""A photo made fit for a page: turned and small with its sheet found, or its sheet laid flat."""

from __future__ import annotations

import base64

import numpy as np

from farwall.readers.hints import Hints
from farwall.readers.last_look import looked_over
from farwall.readers.photo.corners import find_corners
from farwall.readers.photo.light import even_light
from farwall.readers.photo.nouns import Shown
from farwall.readers.photo.opening import Grey, opened
from farwall.readers.photo.read import kind_of, lay_flat, read_laid, scale_of

_LOOK_PX, _FLAT_PX = 1800, 2800
"""Of the longer side of what a page shows. Rank: guess."""


def photo_shown(data: bytes, hints: Hints, *, flat: bool = False) -> Shown:
    """The photo as a page shows it, or its sheet laid flat and read. Raises Refused."""
    grey, shrunk = opened(data)
    if not flat:
        small = _smaller(grey, _LOOK_PX)
        corners = tuple((x * shrunk, y * shrunk) for x, y in find_corners(grey))
        high, wide = small.shape
        file_px = shrunk * grey.shape[1] / wide
        return Shown(_kept(small, ".jpg"), wide, high, file_px, corners)
    laid = lay_flat(grey, hints, shrunk=shrunk)
    scale = scale_of(laid, hints)
    read, at_m = read_laid(laid, hints, format_name=kind_of(data))
    even = (even_light(laid.flat.grey) * 255).astype(np.uint8)  # shadows do not go under a drawing
    small = _smaller(even, _FLAT_PX)
    high, wide = small.shape
    per_px = laid.flat.grey.shape[1] / wide
    m_per_px = None if scale is None else scale / (laid.flat.px_per_mm or 1.0) * per_px
    picture = _kept(small, ".jpg")
    return Shown(picture, wide, high, per_px, laid.corners, m_per_px, at_m, looked_over(read))


def _smaller(grey: Grey, most_px: int) -> Grey:
    import cv2

    factor = most_px / max(grey.shape)
    if factor >= 1:
        return grey
    small = cv2.resize(grey, None, fx=factor, fy=factor, interpolation=cv2.INTER_AREA)
    return np.asarray(small, np.uint8)


def _kept(grey: Grey, kind: str) -> str:
    import cv2

    done, data = cv2.imencode(kind, grey, [cv2.IMWRITE_JPEG_QUALITY, 85])
    if not done:
        raise ValueError("the picture could not be kept")
    return base64.b64encode(bytes(data)).decode("ascii")
