"""What spoils a photo's colours: said in sentences that tell what to do about it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.readers.colour_photo.found import Found
from farwall.readers.colour_photo.markers import placed
from farwall.readers.colour_photo.samples import LINEAR

Real = NDArray[np.float64]
# What is borne before it is said. Rank of all: guess.
_SMALL_PX, _TILT_DEG, _UNEVEN, _SHADOW = 14.0, 48.0, 0.30, 0.06
_SOFT_SHARE, _SOFT_PX = 0.13, 4.0
_FAR_OFF_DE = 3.0
_NAMED = 4

NOT_MEASURED = (
    "Nobody has measured this print: its paper is taken for white, light is evened, and tones and "
    "colours stay the camera's. Measure its squares and give their values."
)
NO_TARGET = (
    "No target is in the photo: its colours are what the camera made of them. Lay the target flat "
    "beside the spot, in the same light."
)


def spoilt(
    rgb: NDArray[np.uint8], found: Found, *, slope: Real, shadow: float, error_de: float
) -> tuple[str, ...]:
    """Sentences, the worst first; empty where nothing spoils it.

    slope: of the light's logarithm across and down the target · shadow: what no plane tells of it.
    """
    told: list[str] = []
    burnt = _names(found, found.patches.burnt)
    if burnt:
        told.append(f"Burnt out and not used: {burnt}. Take it again, darker, and without a flash.")
    shining = _names(found, found.patches.shining)
    if shining:
        told.append(
            f"Uneven and not used: {shining}. A shadow's edge, a shine or a thing lies on them."
        )
    if found.patches.px < _SMALL_PX:
        told.append(
            f"The target is small in the photo: its squares are {found.patches.px:.0f} points "
            "wide. Go nearer."
        )
    if found.tilt_deg > _TILT_DEG:
        told.append(f"The camera looks {found.tilt_deg:.0f}° aslant. Hold it over the target.")
    if _soft(rgb, found):
        told.append("The photo is out of focus or shaken. Touch the target on the screen first.")
    across = 2 * float(np.hypot(slope[0], slope[1]))
    if across > _UNEVEN:
        told.append(
            f"The light changes by {100 * (np.exp(across) - 1):.0f} % across the target. Beside "
            "it the evening is a guess: lay the target nearer to the spot."
        )
    if shadow > _SHADOW:
        told.append("A shadow lies across the target. Beside it the light is not known.")
    if error_de > _FAR_OFF_DE:
        told.append(
            f"Corrected, the squares are still {error_de:.1f} off (CIEDE2000): two lights mix, or "
            "the target is not the one whose values were taken."
        )
    return tuple(told)


def _names(found: Found, which: NDArray[np.bool_]) -> str:
    names = [one.name for one, it in zip(found.target.patches, which, strict=True) if it]
    more = f" and {len(names) - _NAMED} more" if len(names) > _NAMED else ""
    return ", ".join(names[:_NAMED]) + more


def _soft(rgb: NDArray[np.uint8], found: Found) -> bool:
    """Whether the step from a patch to its rim takes a good part of the patch."""
    pitch = found.target.size_mm[0] / (8 if found.target.lit_between else 6)
    wide = [_rise(rgb, found, one.at_mm, pitch) for one in found.target.patches]
    seen = [one for one in wide if one is not None]
    if len(seen) < 4:
        return False
    px = float(np.median(seen))
    return px > max(_SOFT_PX, _SOFT_SHARE * found.patches.px)


def _rise(
    rgb: NDArray[np.uint8], found: Found, at: tuple[float, float], pitch: float
) -> float | None:
    """Points over which the light steps at a patch's right side; None where it hardly does."""
    line = np.column_stack([np.linspace(at[0], at[0] + pitch / 2, 24), np.full(24, at[1])])
    px = placed(found.plane, line) - 0.5
    whole = np.round(px).astype(int)
    if (
        (whole < 0).any()
        or (whole[:, 0] >= rgb.shape[1]).any()
        or (whole[:, 1] >= rgb.shape[0]).any()
    ):
        return None
    light = LINEAR[rgb[whole[:, 1], whole[:, 0]].astype(np.intp)].mean(axis=1)
    step = abs(float(light[-1] - light[0]))
    steepest = float(np.abs(np.diff(light)).max())
    if step < 0.12 or steepest <= 0:
        return None
    apart = float(np.hypot(*(px[-1] - px[0]))) / 23
    return step / steepest * apart
