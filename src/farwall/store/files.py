"""Files of a book: named by the SHA-256 of what is in them, written whole or not at all."""

from __future__ import annotations

import hashlib
import os
import re
import tempfile
from collections.abc import Iterable, Iterator
from pathlib import Path

from farwall.errors import Mistake, Refused
from farwall.store.nouns import BookTrouble

_NAME = re.compile(r"[0-9a-f]{64}")
PART = ".part-"
MOST_BYTES = 40_000_000
"""No photo is larger; a door takes no more at once."""


def file_path(folder: Path, sha: str) -> Path:
    """Where a file of this hash lies: `ab/cdef…`; raises Refused for what is no hash."""
    if not _NAME.fullmatch(sha):
        raise Refused(Mistake(f"file {sha[:80]}", "is no SHA-256 in small hexadecimal letters."))
    return folder / sha[:2] / sha[2:]


def put_file(folder: Path, content: bytes) -> str:
    """Write the content unless it is there; back comes its SHA-256, and it is on the disk."""
    sha = hashlib.sha256(content).hexdigest()
    path = file_path(folder, sha)
    try:
        if path.is_file() and path.read_bytes() == content:
            # Another may have put it there a moment ago, its name not on the disk yet.
            sync_folder(path.parent)
            sync_folder(folder)
            return sha
        make_folder(path.parent)
        handle, aside = tempfile.mkstemp(prefix=PART, dir=path.parent)
        try:
            with os.fdopen(handle, "wb") as out:
                out.write(content)
                out.flush()
                os.fsync(out.fileno())
            Path(aside).replace(path)
        except BaseException:
            Path(aside).unlink(missing_ok=True)
            raise
        sync_folder(path.parent)
        sync_folder(folder)
    except OSError as error:
        why = Mistake(str(folder), f"The file was not kept ({error.strerror}).", "Make room.")
        raise BookTrouble(why) from error
    return sha


def file(folder: Path, sha: str) -> bytes:
    """The content of a file; raises Refused when it is not there or not what its name says."""
    try:
        content = file_path(folder, sha).read_bytes()
    except FileNotFoundError:
        raise Refused(Mistake(f"file {sha}", "is not in the book.")) from None
    if hashlib.sha256(content).hexdigest() != sha:
        remedy = "Take it from a backup."
        raise Refused(Mistake(f"file {sha}", "is damaged: its content is another.", remedy))
    return content


def missing(folder: Path, shas: Iterable[str]) -> list[str]:
    """Which of these files do not lie there. Raises Refused for what is no hash."""
    return [sha for sha in shas if not file_path(folder, sha).is_file()]


def file_names(folder: Path) -> Iterator[tuple[str, Path]]:
    """Hash and path of every file there, sorted; an empty hash for what does not belong."""
    if not folder.is_dir():
        return
    for path in sorted(one for one in folder.rglob("*") if one.is_file()):
        sha = "".join(path.relative_to(folder).parts)
        belongs = _NAME.fullmatch(sha) and path == file_path(folder, sha)
        yield (sha if belongs else ""), path


def make_folder(folder: Path) -> None:
    """Make a folder and those above it; their names are on the disk. Raises OSError."""
    if folder.is_dir():
        return
    make_folder(folder.parent)
    folder.mkdir(exist_ok=True)
    sync_folder(folder.parent)


def sync_folder(folder: Path) -> None:
    """Bring the names in a folder to the disk, where the system can."""
    try:
        handle = os.open(folder, os.O_RDONLY)
    except OSError:
        return
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
