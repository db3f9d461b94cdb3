"""Write a set of files whole or not at all."""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Mapping
from pathlib import Path

from farwall.errors import Mistake, Refused


def write_folder(folder: Path, files: Mapping[str, bytes]) -> None:
    """Put `files` (name to content) into `folder`, made when missing.

    Everything is written aside first; a new folder then appears in one
    rename, in an existing one each file is replaced in one rename, and other
    files there are left alone. Raises `Refused` when the place cannot be used.
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
            for name in files:
                (aside / name).replace(folder / name)
        else:
            aside.chmod(0o755)
            aside.rename(folder)
    except OSError as error:
        raise Refused(
            Mistake(str(folder), f"cannot be written ({error.strerror}).", "Name another folder.")
        ) from error
    finally:
        shutil.rmtree(aside, ignore_errors=True)
