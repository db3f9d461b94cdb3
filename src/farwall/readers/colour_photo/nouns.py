"""What a photo tells of colour, and how far to trust it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.evidence import Rank
from farwall.nouns import dataclass

Corner = tuple[float, float]


@dataclass(frozen=True)
class PatchSeen:
    """A patch of the target: its name, its own Lab, the Lab that the corrected photo shows."""

    name: str
    own_lab: tuple[float, float, float]
    seen_lab: tuple[float, float, float]


@dataclass(frozen=True)
class TargetSeen:
    """A target found in a photo: which, its corners in the photo, what is left after correcting.

    error_de, worst_de: median and largest CIEDE2000 of patches that the correction did not use, or
    left out one at a time · warnings: what spoils it (a patch burnt out, light that changes) ·
    corners_px: of `ColourPhoto.lab`, clockwise from the target's upper left · size_mm: across and
    down between these corners, None where no length is known · correction: which was chosen.
    """

    name: str
    corners_px: tuple[Corner, Corner, Corner, Corner]
    patches: tuple[PatchSeen, ...]
    error_de: float
    worst_de: float
    warnings: tuple[str, ...] = ()
    size_mm: tuple[float, float] | None = None
    correction: str = ""


@dataclass(frozen=True)
class ColourPhoto:
    """A photo as CIELAB, light D50: (rows, columns, 3); measured here with a target, else a guess.

    taken_at: as the camera wrote it, ISO 8601 without offset; empty where it wrote none · file_px:
    pixels of the file, turned as its EXIF says, to one of `lab` · print_seen: squares of our own
    sheet lying beside the target that the photo is corrected by: so a print is measured.
    """

    lab: NDArray[np.float32]
    target: TargetSeen | None
    rank: Rank
    taken_at: str = ""
    warnings: tuple[str, ...] = ()
    file_px: float = 1.0
    print_seen: tuple[PatchSeen, ...] = ()
