"""The key that a device shows: one for a book, made at the first start, in a file only we read."""

from __future__ import annotations

import hmac
import os
import secrets
from pathlib import Path

from farwall.errors import Mistake, Refused

_NAME = "key"
_LEAST = 16


def key_of(folder: Path) -> str:
    """The key of the book in `folder`: FARWALL_KEY, else the file there, made when it is not.

    Raises Refused when it is too short to keep anybody out.
    """
    told = os.environ.get("FARWALL_KEY")
    if told is None:
        path = folder / _NAME
        told = path.read_text().strip() if path.exists() else _made(path)
    if len(told) < _LEAST:
        what = f"the key has fewer than {_LEAST} characters."
        raise Refused(Mistake("FARWALL_KEY", what, "Use a longer one, or none: one is made."))
    return told


def fits(shown: str, key: str) -> bool:
    """Whether the key that was shown is the key; the time it takes tells nothing of it."""
    return hmac.compare_digest(shown.encode(), key.encode())


def _made(path: Path) -> str:
    path.parent.mkdir(parents=True, exist_ok=True)
    key = secrets.token_urlsafe(24)
    file = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(file, "w") as opened:
        opened.write(key + "\n")
    return key
