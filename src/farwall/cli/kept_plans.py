"""Plans kept from one call to the next, each by all that it hangs on.

A plan is derived and never edited: the same facts, planned by the same source with the same
libraries, give the same files. So they are looked up by the digest of all of these, and
any change of any of them is another question. They lie in the user's cache folder
(`$XDG_CACHE_HOME/farwall/plans`, else `~/.cache/farwall/plans`), which anybody may empty. What
cannot be read there is passed over, what cannot be written is not kept; neither is an error.
"""

from __future__ import annotations

import hashlib
import json
import os
import platform
import sys
from collections.abc import Callable, Iterator, Mapping
from contextlib import suppress
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING

import farwall

if TYPE_CHECKING:
    from farwall.facts.job import Job

FRESH = "FARWALL_FRESH"
"""Where this is set in the environment, nothing is looked up and nothing kept."""
MOST_BYTES = 64_000_000
"""All kept plans together; the ones not asked for longest go first. A house takes about 1 MB."""
_LIBRARIES = ("numpy", "scipy", "shapely", "typst", "rfc8785")
"""Libraries that figures or pages come from."""
_LAYOUT = 2
"""Of a kept file; another one is another question."""


def are_kept() -> bool:
    """Whether plans are kept here at all."""
    return not os.environ.get(FRESH)


def tool_digest() -> bytes | None:
    """SHA-256 of Farwall's own source, Python and the libraries; None where it cannot be read."""
    whole = hashlib.sha256(json.dumps(_made_by()).encode())
    try:
        for part in _source(Path(farwall.__file__).parent):
            whole.update(hashlib.sha256(part).digest())
    except OSError:
        return None
    return whole.digest()


def key_of(
    job: Job,
    *,
    read: Mapping[str, Path | None],
    order: tuple[str, ...],
    thorough: bool,
    tool: Callable[[], bytes | None] = tool_digest,
) -> str | None:
    """The digest of all that a plan hangs on; None where plans are not kept here.

    read: files read beside the job (weather, van), by what they are. tool: gives `tool_digest`,
    which may have been begun before. SHA-256, in hex, of the job as it was read, the names and
    bytes of these files, order and thoroughness, and the digest of the tool.
    """
    from farwall.facts.plain import plain

    made_by = tool() if are_kept() else None
    if made_by is None:
        return None
    try:
        parts = [
            json.dumps(plain(job), sort_keys=True).encode(),
            json.dumps([list(order), thorough, _LAYOUT]).encode(),
            made_by,
            *_read(read),
        ]
    except OSError:
        return None
    whole = hashlib.sha256()
    for part in parts:
        whole.update(hashlib.sha256(part).digest())
    return whole.hexdigest()


def kept_files(key: str) -> dict[str, bytes] | None:
    """The files of the plan kept under this key, None when there is none or it is damaged."""
    import zipfile  # loaded here: a process that plans takes its digest long before

    folder = _folder()
    if folder is None:
        return None
    path = folder / f"{key}.zip"
    try:
        with zipfile.ZipFile(path) as entry:  # each file is held to its checksum as it is read
            files = {name: entry.read(name) for name in entry.namelist()}
        os.utime(path)
    except (OSError, zipfile.BadZipFile, EOFError, ValueError, NotImplementedError):
        return None
    return files or None


def keep_files(key: str, files: Mapping[str, bytes]) -> None:
    """Keep the files of a plan under this key, whole or not at all; older ones make room."""
    folder = _folder()
    if folder is None:
        return
    with suppress(OSError):
        folder.mkdir(parents=True, exist_ok=True, mode=0o700)
        _write(folder / f"{key}.zip", files)
        _make_room(folder)


def _write(path: Path, files: Mapping[str, bytes]) -> None:
    import tempfile
    import zipfile

    whole = BytesIO()
    with zipfile.ZipFile(whole, "w", zipfile.ZIP_STORED) as entry:
        for name, content in files.items():
            entry.writestr(name, content)
    number, aside = tempfile.mkstemp(dir=path.parent, prefix=".")
    try:
        with os.fdopen(number, "wb") as out:
            out.write(whole.getvalue())
        Path(aside).replace(path)
    except OSError:
        Path(aside).unlink(missing_ok=True)
        raise


def _make_room(folder: Path) -> None:
    """Remove what was not asked for longest, until all kept plans are within `MOST_BYTES`."""
    found = []
    for path in folder.iterdir():
        with suppress(OSError):  # gone by another process
            told = path.stat()
            found.append((told.st_mtime_ns, told.st_size, path))
    left = sum(size for _, size, _ in found)
    for _, size, path in sorted(found):
        if left <= MOST_BYTES:
            break
        path.unlink(missing_ok=True)
        left -= size


def _folder() -> Path | None:
    """Where plans are kept; None where nobody has a home."""
    told = Path(os.environ.get("XDG_CACHE_HOME", ""))
    if not told.is_absolute():  # the XDG base directory specification asks to pass it over
        try:
            told = Path.home() / ".cache"
        except RuntimeError:
            return None
    return told / "farwall" / "plans"


def _made_by() -> list[str]:
    """Python, the machine and the libraries."""
    # Loaded here: it brings the reader of letters, and a fresh plan is done before this is asked.
    from importlib.metadata import PackageNotFoundError, version

    found = [sys.version, platform.machine(), sys.platform]
    for name in _LIBRARIES:
        try:
            found.append(f"{name} {version(name)}")
        except PackageNotFoundError:
            found.append(f"{name} without a version")
    return found


def _read(files: Mapping[str, Path | None]) -> Iterator[bytes]:
    for what, path in sorted(files.items()):
        yield f"{what} {path.name if path else 'not told'}".encode()
        yield path.read_bytes() if path else b""


def _source(folder: Path) -> Iterator[bytes]:
    """The name and the content of each file of Farwall itself."""
    for here, folders, names in os.walk(folder):
        folders[:] = sorted(name for name in folders if name != "__pycache__")
        for name in sorted(names):
            path = os.path.join(here, name)  # noqa: PTH118 - four hundred paths, at once
            yield path.removeprefix(str(folder)).encode()
            yield Path(path).read_bytes()
