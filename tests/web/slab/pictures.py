"""A photo as a camera makes it: large, with a word of where it was taken."""

from __future__ import annotations

import base64
import struct
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from playwright.sync_api import Browser

DRAW = """(wide) => {
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [wide, wide / 2];
  const pen = canvas.getContext("2d");
  pen.fillStyle = "#7a5230"; pen.fillRect(0, 0, wide, wide / 2);
  pen.fillStyle = "#fff"; pen.fillRect(wide / 4, wide / 8, wide / 2, wide / 8);
  return canvas.toDataURL("image/jpeg", 0.9).split(",")[1];
}"""


def jpeg_with_a_place(browser: Browser, wide: int = 3200) -> bytes:
    """A JPEG of 2:1 with an Exif block [exif] that gives a latitude."""
    page = browser.new_page()
    plain = base64.b64decode(page.evaluate(DRAW, wide))
    page.close()
    assert plain[:2] == b"\xff\xd8"
    return plain[:2] + _exif() + plain[2:]


def _exif() -> bytes:
    """APP1 with one GPS directory: 48 degrees north. Offsets count from the TIFF header."""
    first = struct.pack("<HHHIII", 1, 0x8825, 4, 1, 26, 0)
    north = struct.pack("<HHI4s", 1, 2, 2, b"N\0\0\0")
    latitude = struct.pack("<HHII", 2, 5, 3, 26 + 2 + 24 + 4)
    degrees = struct.pack("<6I", 48, 1, 0, 1, 0, 1)
    gps = struct.pack("<H", 2) + north + latitude + struct.pack("<I", 0) + degrees
    body = b"Exif\0\0" + b"II*\0" + struct.pack("<I", 8) + first + gps
    return b"\xff\xe1" + struct.pack(">H", len(body) + 2) + body


def size_of(jpeg: bytes) -> tuple[int, int]:
    """Width and height by its start of frame."""
    at = 2
    while jpeg[at + 1] not in {0xC0, 0xC2}:
        at += 2 + struct.unpack(">H", jpeg[at + 2 : at + 4])[0]
    high, wide = struct.unpack(">HH", jpeg[at + 5 : at + 9])
    return wide, high
