"""Which files are pictures, by their first bytes."""

from __future__ import annotations

_HEIC = (b"heic", b"heix", b"hevc", b"heim", b"heis", b"mif1", b"msf1")


def is_png(data: bytes) -> bool:
    """Whether a file is a PNG picture."""
    return data.startswith(b"\x89PNG\r\n\x1a\n")


def is_jpeg(data: bytes) -> bool:
    """Whether a file is a JPEG picture."""
    return data.startswith(b"\xff\xd8\xff")


def is_heic(data: bytes) -> bool:
    """Whether a file is a HEIC picture, as telephones keep them."""
    return data[4:8] == b"ftyp" and any(brand in data[8:40] for brand in _HEIC)


def is_picture(data: bytes) -> bool:
    """Whether a file is a picture that can be opened here."""
    return is_png(data) or is_jpeg(data) or is_heic(data)
