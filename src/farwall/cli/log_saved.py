"""A file that a phone saved: its entries, and the photos that they name in the same file.

A photo is a line of its own, `{"photo": SHA-256, "content": base64}`; all else is entries as ever.
"""

from __future__ import annotations

import base64
import binascii
import hashlib
import json
from pathlib import Path

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

MOST_BYTES = 500_000_000
"""Of a saved file: a thousand photos (a guess)."""
_PHOTO = b'{"photo"'


@dataclass(frozen=True)
class Saved:
    """The text of the entries, and what the photos hold."""

    entries: str
    photos: tuple[bytes, ...] = ()


def read_saved(path: Path) -> Saved:
    """What a phone saved. Raises Refused where it cannot be read, with every photo that is torn."""
    try:
        size = path.stat().st_size
        if size > MOST_BYTES:
            what = f"it is larger than {MOST_BYTES // 1_000_000} MB."
            raise Refused(Mistake(path.name, what, "Is it what a phone saved?"))
        raw = path.read_bytes()
    except OSError as error:
        what = f"it cannot be read ({error.strerror or error})."
        raise Refused(Mistake(str(path), what, "Check the name and the folder.")) from None
    return saved_in(raw)


def saved_in(raw: bytes) -> Saved:
    """The same in bytes."""
    from farwall.store.files import MOST_BYTES as MOST_OF_ONE

    lines, photos, mistakes = [], [], []
    for number, line in enumerate(raw.split(b"\n"), 1):
        if not line.lstrip().startswith(_PHOTO):
            lines.append(line)
            continue
        content = _photo(line)
        if content is None or len(content) > MOST_OF_ONE:
            what = (
                "this photo came through torn." if content is None else "this photo is too large."
            )
            mistakes.append(Mistake(f"line {number}", what, "Save it anew on the phone."))
        else:
            photos.append(content)
    try:
        text = b"\n".join(lines).decode("utf-8-sig")
    except UnicodeDecodeError as error:
        what, remedy = "This is not UTF-8 text.", "Save it anew on the phone."
        mistakes.append(Mistake(f"byte {error.start}", what, remedy))
    if mistakes:
        raise Refused(*mistakes, about="What the phone saved cannot be entered:")
    return Saved(text, tuple(photos))


def _photo(line: bytes) -> bytes | None:
    """The photo, when it is the one that its line names; the entry's hash is the proof."""
    try:
        told = json.loads(line)
        content = base64.b64decode(told["content"], validate=True)
        whole = hashlib.sha256(content).hexdigest() == told["photo"]
    except (ValueError, KeyError, TypeError, RecursionError, binascii.Error):
        return None
    return content if whole and content else None
