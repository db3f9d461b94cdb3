"""A picture to lay under a floor: what it is and how large, from its first bytes alone.

Nothing is decoded here. PNG: ISO/IEC 15948 (signature, IHDR); JPEG: ITU-T T.81, B.1.1.2 and B.2.2
(markers, frame header).
"""

from __future__ import annotations

from dataclasses import dataclass

from farwall.errors import Mistake, Refused
from farwall.web.words import said

MOST_PICTURE_BYTES = 10_000_000
MOST_SIDE_PX = 12_000
MOST_PIXELS = 60_000_000
"""A browser needs four bytes for each: 240 MB. Rank: guess."""
_PNG = b"\x89PNG\r\n\x1a\n"
_FRAMES = frozenset(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}
_BARE = frozenset({0x01, *range(0xD0, 0xD9)})


@dataclass(frozen=True)
class Picture:
    """kind: its media type · width_px, height_px: as stored, not turned."""

    kind: str
    width_px: int
    height_px: int


def picture_of(content: bytes) -> Picture:
    """What a picture is. Raises Refused for any other file and for one too large to be shown."""
    if len(content) > MOST_PICTURE_BYTES:
        raise Refused(Mistake("", said("underlay-too-heavy", most=MOST_PICTURE_BYTES // 10**6)))
    found = picture_in(content)
    if found is None:
        raise Refused(Mistake("", said("underlay-no-picture")))
    wide, high = found.width_px, found.height_px
    if not (0 < wide <= MOST_SIDE_PX and 0 < high <= MOST_SIDE_PX and wide * high <= MOST_PIXELS):
        raise Refused(Mistake("", said("underlay-too-large", wide=wide, high=high)))
    return found


def picture_in(content: bytes) -> Picture | None:
    """What a picture says it is; None for any other file."""
    return _png(content) or _jpeg(content)


def _png(content: bytes) -> Picture | None:
    if not content.startswith(_PNG) or content[12:16] != b"IHDR" or len(content) < 24:
        return None
    wide, high = (int.from_bytes(content[at : at + 4], "big") for at in (16, 20))
    return Picture("image/png", wide, high)


def _jpeg(content: bytes) -> Picture | None:
    """By walking its markers to the frame header."""
    if not content.startswith(b"\xff\xd8\xff"):
        return None
    at = 2
    while at + 9 < len(content):
        if content[at] != 0xFF:
            return None
        marker = content[at + 1]
        if marker == 0xFF:
            at += 1
            continue
        if marker in _BARE:
            at += 2
            continue
        length = int.from_bytes(content[at + 2 : at + 4], "big")
        if marker in _FRAMES:
            high, wide = (int.from_bytes(content[at + n : at + n + 2], "big") for n in (5, 7))
            return Picture("image/jpeg", wide, high)
        if length < 2 or marker == 0xDA:
            return None
        at += 2 + length
    return None
