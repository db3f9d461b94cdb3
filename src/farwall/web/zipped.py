"""A folder as a ZIP file, made while it is sent: no more of it is held than one piece."""

from __future__ import annotations

import zipfile
from collections.abc import Iterator
from pathlib import Path

_PIECE = 1 << 18
_PACKED = frozenset({".jsonl", ".csv", ".json", ".geojson", ".sqlite"})


class _Pipe:
    """What a ZIP is written to: pieces are taken out as they come; nobody goes back in it."""

    def __init__(self) -> None:
        self.parts: list[bytes] = []
        self.at = 0

    def write(self, data: bytes) -> int:
        self.parts.append(bytes(data))
        self.at += len(data)
        return len(data)

    def tell(self) -> int:
        return self.at

    def flush(self) -> None:
        """There is nothing to flush."""

    def taken(self) -> bytes:
        """What has come since the last time."""
        found, self.parts = b"".join(self.parts), []
        return found


def zipped(folder: Path, name: str) -> Iterator[bytes]:
    """The files of a folder as a ZIP, below a folder of that name, in pieces."""
    pipe = _Pipe()
    with zipfile.ZipFile(pipe, "w", allowZip64=True) as out:  # type: ignore[call-overload]
        for path in sorted(one for one in folder.rglob("*") if one.is_file()):
            told = zipfile.ZipInfo(f"{name}/{path.relative_to(folder).as_posix()}")
            packed = path.suffix in _PACKED
            told.compress_type = zipfile.ZIP_DEFLATED if packed else zipfile.ZIP_STORED
            told.external_attr = 0o644 << 16
            with path.open("rb") as source, out.open(told, "w", force_zip64=True) as target:
                while piece := source.read(_PIECE):
                    target.write(piece)
                    yield pipe.taken()
    yield pipe.taken()
