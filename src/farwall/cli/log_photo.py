"""Photos told by their file: taken in by what is in them, so that the entry names a SHA-256."""

from __future__ import annotations

import hashlib
import re
from collections.abc import Sequence
from pathlib import Path

from farwall.errors import Mistake, Refused
from farwall.facts.log import Entry
from farwall.facts.log_words import WORDS
from farwall.nouns import dataclass

_SHA = re.compile(r"[0-9a-f]{64}")
_HASH = "hash"


@dataclass(frozen=True)
class Photos:
    """`key=value` with a hash for each path, and the contents that these hashes name."""

    carried: tuple[str, ...]
    contents: tuple[bytes, ...] = ()


def photos_in(event: str, carried: Sequence[str]) -> Photos:
    """The words of an entry with the files that they name read; nothing is written yet.

    A hash stays as it is, and so does what is no file here: the reader of the log says what is
    wrong with it. Raises Refused for every file that cannot be taken in.
    """
    from farwall.readers.log_json import word_named

    try:
        keys = {one.key for one in word_named(event).carried if one.kind == _HASH}
    except Refused:
        return Photos(tuple(carried))  # the reader of the log tells it with all else
    words: list[str] = []
    contents: list[bytes] = []
    mistakes: list[Mistake] = []
    for told in carried:
        key, _, value = told.partition("=")
        path = Path(value.strip()).expanduser()
        named = key.strip().lower() in keys and not _SHA.fullmatch(value.strip())
        if not named or not value.strip() or not path.exists():
            words.append(told)
            continue
        try:
            content = content_of(path)
        except Refused as refusal:
            mistakes += refusal.mistakes
            continue
        words.append(f"{key}={hashlib.sha256(content).hexdigest()}")
        contents.append(content)
    if mistakes:
        raise Refused(*mistakes, about="This cannot be entered:")
    return Photos(tuple(words), tuple(contents))


def content_of(path: Path) -> bytes:
    """What is in a file. Raises Refused where it cannot be read, is empty or too large."""
    from farwall.store.files import MOST_BYTES

    try:
        size = path.stat().st_size
        if size > MOST_BYTES:
            what = f"{size / 1e6:.0f} MB are too much: at most {MOST_BYTES / 1e6:.0f} MB."
            raise Refused(Mistake(str(path), what, "Make it smaller."))
        content = path.read_bytes()
    except OSError as error:
        what = f"it cannot be read ({error.strerror})."
        raise Refused(Mistake(str(path), what, "Name a file.")) from error
    if not content:
        raise Refused(Mistake(str(path), "nothing is in it.", "Name another file."))
    return content


def files_named(entry: Entry) -> tuple[str, ...]:
    """The SHA-256 of each file that an entry names."""
    word = WORDS.get(entry.word)
    carried = word.carried if word is not None else ()
    told = (entry.about.get(one.key) for one in carried if one.kind == _HASH)
    return tuple(sha for sha in told if isinstance(sha, str))
