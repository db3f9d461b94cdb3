"""Write a set of files whole or not at all."""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Mapping, Sequence
from pathlib import Path

from farwall.errors import Mistake, Refused


def write_folder(folder: Path, files: Mapping[str, bytes]) -> None:
    """Put `files` (name to content) into `folder`, made when missing.

    Everything is written aside first; a new folder then appears in one
    rename. In an existing one each file is replaced in one rename, all are put
    back when one of them fails, and other files there are left alone. Raises
    `Refused` when the place cannot be used.
    """
    if folder.exists() and not folder.is_dir():
        raise Refused(Mistake(str(folder), "is a file.", "Name a folder to write into."))
    try:
        folder.parent.mkdir(parents=True, exist_ok=True)
        aside = Path(tempfile.mkdtemp(prefix=f".{folder.name}-", dir=folder.parent))
    except OSError as error:
        raise Refused(
            Mistake(str(folder), f"cannot be written ({error.strerror}).", "Name another folder.")
        ) from error
    try:
        for name, content in files.items():
            (aside / name).write_bytes(content)
        if folder.exists():
            _replace_all(aside, folder, list(files))
        else:
            aside.chmod(0o755)
            aside.rename(folder)
    except OSError as error:
        raise Refused(
            Mistake(str(folder), f"cannot be written ({error.strerror}).", "Name another folder.")
        ) from error
    finally:
        shutil.rmtree(aside, ignore_errors=True)


def _replace_all(aside: Path, folder: Path, names: Sequence[str]) -> None:
    """Move the files from `aside` into `folder`; when one cannot be moved, none has been."""
    before = aside / ".before"
    before.mkdir()
    kept: list[str] = []
    placed: list[str] = []
    try:
        for name in names:
            if (folder / name).is_dir():
                raise IsADirectoryError(None, f"{name} is a folder there")
            if (folder / name).exists():
                (folder / name).replace(before / name)
                kept.append(name)
            (aside / name).replace(folder / name)
            placed.append(name)
    except OSError:
        for name in placed:
            (folder / name).unlink()
        for name in kept:
            (before / name).replace(folder / name)
        raise
