"""A picture to lay under a floor: what it is and how large, from its first bytes alone.

Nothing is decoded here. PNG [png]: signature, IHDR. JPEG [jpeg]: markers, frame header; [exif]: the
orientation by which a browser turns a photo before it shows it.
"""

from __future__ import annotations

from typing import Literal

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.web.words import said

MOST_PICTURE_BYTES = 10_000_000
MOST_SIDE_PX = 12_000
MOST_PIXELS = 60_000_000
"""A browser needs four bytes for each: 240 MB. Rank: guess."""
_PNG = b"\x89PNG\r\n\x1a\n"
_ORDERS: dict[bytes, Literal["big", "little"]] = {b"MM": "big", b"II": "little"}
_ORIENTATION, _ON_ITS_SIDE, _MOST_ENTRIES = 0x0112, range(5, 9), 200
_FRAMES = frozenset(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}
_BARE = frozenset({0x01, *range(0xD0, 0xD9)})


@dataclass(frozen=True)
class Picture:
    """kind: its media type · width_px, height_px: as it is shown, turned."""

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
    at, turned = 2, False
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
            if turned:
                wide, high = high, wide
            return Picture("image/jpeg", wide, high)
        if length < 2 or marker == 0xDA:
            return None
        if marker == 0xE1:
            turned = turned or _is_turned(content[at + 4 : at + 2 + length])
        at += 2 + length
    return None


def _is_turned(segment: bytes) -> bool:
    """Whether an Exif segment says that the picture is shown on its side."""
    tiff = segment.removeprefix(b"Exif\x00\x00")
    if tiff == segment or tiff[:2] not in _ORDERS:
        return False
    order = _ORDERS[tiff[:2]]

    def number(at: int, size: int) -> int:
        return int.from_bytes(tiff[at : at + size], order)

    table = number(4, 4)
    for entry in range(min(number(table, 2), _MOST_ENTRIES)):
        at = table + 2 + 12 * entry
        if number(at, 2) == _ORIENTATION:
            return number(at + 8, 2) in _ON_ITS_SIDE
    return False
