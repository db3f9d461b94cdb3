"""The colour of a marked spot of a photo."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from farwall.colour.lab import lab_of_xyz, xyz_of_lab
from farwall.errors import Mistake, Refused
from farwall.facts.samples import Light, Look, State
from farwall.nouns import dataclass
from farwall.readers.colour_photo.nouns import ColourPhoto, TargetSeen
from farwall.readers.colour_photo.tube import FLOOR_OFF_DE, SAID

Corner = tuple[float, float]
_LEAST_POINTS = 40
_TRIM = 0.05
_GLARE_L, _MOST_GLARE = 97.0, 0.02


@dataclass(frozen=True)
class SpotSeen:
    """The mean colour of a spot, how much its lightness varies, on how many points it rests.

    error_de: what the target says is left, and no less than `tube.FLOOR_OFF_DE` under a tube.
    """

    lab: tuple[float, float, float]
    spread_lightness: float
    points: int
    error_de: float | None
    warnings: tuple[str, ...] = ()

    def look(self, state: State, *, photo: str = "", light: Light | None = None) -> Look:
        """It as a look at a sample or a floor that stood in that state."""
        return Look(
            state, self.lab, self.error_de, photo, light, 1, round(self.spread_lightness, 2)
        )


def spot_of(photo: ColourPhoto, polygon_px: Sequence[Corner]) -> SpotSeen:
    """The spot within a polygon, in points of `photo.lab`. Raises Refused for one too small.

    The mean is that of light, not of L; the lightest and darkest twentieth are left out.
    """
    import cv2

    mask = np.zeros(photo.lab.shape[:2], np.uint8)
    if len(polygon_px) >= 3:
        cv2.fillPoly(mask, [np.round(np.array(polygon_px) - 0.5).astype(np.int32)], 1)
    inside = photo.lab[mask > 0].astype(np.float64)
    if len(inside) < _LEAST_POINTS:
        raise Refused(
            Mistake("spot", f"It holds {len(inside)} points of the photo.", "Mark a larger one.")
        )
    order = np.argsort(inside[:, 0])
    off = int(_TRIM * len(order))
    kept = inside[order[off : len(order) - off]]
    lightness, a, b = lab_of_xyz(xyz_of_lab(kept).mean(axis=0))
    glare = float((inside[:, 0] > _GLARE_L).mean())
    told = ("Light shines on the spot: stand so that no window mirrors in it.",)
    error = None if photo.target is None or photo.rank == "guess" else _error_de(photo.target)
    return SpotSeen(
        (float(np.clip(lightness, 0, 100)), float(a), float(b)), float(kept[:, 0].std()),
        len(inside), error, told if glare > _MOST_GLARE else (),
    )  # fmt: skip


def _error_de(target: TargetSeen) -> float:
    return max(target.error_de, FLOOR_OFF_DE) if SAID in target.warnings else target.error_de
