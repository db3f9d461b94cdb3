"""What is small when it comes and huge when it is read: told before it is read.

All limits are guesses, several times what the largest house needs.
"""

from __future__ import annotations

import re

from farwall.errors import Mistake, Refused
from farwall.web.pages.picture import picture_in

MOST_DEEP = 64
"""Brackets within brackets of JSON; a job of ours needs eleven."""
MOST_BRACKETS = 500_000
"""Lists and objects of JSON, a point of a floor being one."""
MOST_PIXELS = 250_000_000
"""Of a photo."""
# Never goes back, and takes a text that is not closed to its end: each byte is looked at once.
_TEXTS = re.compile(rb'"(?:[^"\\]|\\.|\\\Z)*+(?:"|\Z)', re.DOTALL)
_OTHERS = re.compile(rb"[^\[\]{}]+")
_PACKED = (b"PK\x03\x04", b"PK\x05\x06", b"\x1f\x8b", b"BZh", b"7z\xbc\xaf", b"\xfd7zXZ", b"Rar!",
           b"\x28\xb5\x2f\xfd")  # fmt: skip


def insist_bearable_json(content: bytes) -> None:
    """Raises Refused for JSON that is nested too deeply or holds too many lists and objects."""
    many = content.count(b"[") + content.count(b"{")
    if many <= MOST_DEEP:
        return
    bare = _OTHERS.sub(b"", _TEXTS.sub(b"", content))
    if bare.count(b"[") + bare.count(b"{") > MOST_BRACKETS:
        what = f"It holds more than {MOST_BRACKETS:,} lists and objects."
        raise Refused(Mistake("", what, "Hand over one floor, with fewer points."))
    deep = 0
    for one in bare:
        deep += 1 if one in b"[{" else -1
        if deep > MOST_DEEP:
            what = f"It is nested deeper than {MOST_DEEP} brackets."
            raise Refused(Mistake("", what, "Look at where it was made."))


def insist_bearable_file(content: bytes) -> None:
    """Raises Refused for an archive, and for a picture of more points than can be shown."""
    if content.startswith(_PACKED):
        what = "This is an archive or a compressed file."
        raise Refused(Mistake("", what, "Unpack it and send what is in it."))
    found = picture_in(content)
    if found is not None and found.width_px * found.height_px > MOST_PIXELS:
        what = f"This picture says it is {found.width_px} by {found.height_px} points."
        raise Refused(Mistake("", what, f"Send one of at most {MOST_PIXELS:,}."))
