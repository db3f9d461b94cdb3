"""A photo made fit for a page or a paper: small, its colours those of one light."""

from __future__ import annotations

from farwall.nouns import dataclass


@dataclass(frozen=True)
class PhotoShown:
    """JPEG bytes made here, never a stranger's own.

    error_de: CIEDE2000 that is left by the target in it; None: none was in it or nobody measured
    it, and the colours are what the camera made of them · taken_at: as the camera wrote it.
    """

    jpeg: bytes
    width_px: int
    height_px: int
    error_de: float | None
    taken_at: str = ""
