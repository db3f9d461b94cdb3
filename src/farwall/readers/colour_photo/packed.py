"""A photo's colours as text that a process may hand to another: hundredths of L, a and b."""

from __future__ import annotations

import base64
import binascii

import numpy as np

from farwall.evidence import Rank
from farwall.nouns import dataclass
from farwall.readers.colour_photo.nouns import ColourPhoto, PatchSeen, TargetSeen

_HUNDREDTHS = 100.0
_MOST_SIDE = 8000


@dataclass(frozen=True)
class PackedPhoto:
    """A `ColourPhoto`; lab_base64: rows, columns, L a b as 16-bit hundredths, low byte first."""

    rows: int
    columns: int
    lab_base64: str
    target: TargetSeen | None
    rank: str
    taken_at: str
    warnings: tuple[str, ...]
    file_px: float
    print_seen: tuple[PatchSeen, ...] = ()


def packed(photo: ColourPhoto) -> PackedPhoto:
    """The photo with its colours rounded to hundredths."""
    rows, columns, _ = photo.lab.shape
    whole = np.clip(np.round(photo.lab * np.float32(_HUNDREDTHS)), -32768, 32767).astype("<i2")
    return PackedPhoto(
        rows, columns, base64.b64encode(whole.tobytes()).decode("ascii"), photo.target,
        photo.rank.value, photo.taken_at, photo.warnings, photo.file_px, photo.print_seen,
    )  # fmt: skip


def unpacked(photo: PackedPhoto) -> ColourPhoto:
    """The way back. Raises ValueError for what no photo of ours packs to."""
    rows, columns = photo.rows, photo.columns
    if not (0 < rows <= _MOST_SIDE and 0 < columns <= _MOST_SIDE and photo.file_px > 0):
        raise ValueError("size")
    try:
        data = base64.b64decode(photo.lab_base64, validate=True)
    except binascii.Error as error:
        raise ValueError("base64") from error
    if len(data) != rows * columns * 6:
        raise ValueError("length")
    lab = np.frombuffer(data, "<i2").reshape(rows, columns, 3).astype(np.float32)
    lab /= np.float32(_HUNDREDTHS)
    return ColourPhoto(
        lab, photo.target, Rank(photo.rank), photo.taken_at, photo.warnings, photo.file_px,
        photo.print_seen,
    )  # fmt: skip
