"""Which target lies in a photo, with whose values, and its patches as they are seen."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from math import degrees

import numpy as np
from numpy.typing import NDArray

from farwall.colour.targets.common24 import common_24
from farwall.colour.targets.nouns import Lab, Target
from farwall.colour.targets.own import own_target
from farwall.nouns import dataclass
from farwall.readers.colour_photo.fit import Falls, Seen
from farwall.readers.colour_photo.lattice import plane_of_lattice
from farwall.readers.colour_photo.markers import placed, plane_of_markers
from farwall.readers.colour_photo.samples import SIDE_AWAY, Sampled, sampled

Real = NDArray[np.float64]
Values = Mapping[str, Lab]
PAPER = "paper"
PAPER_LAB: Lab = (94.0, 0.0, 0.0)
"""Of office paper where nobody measured it. Rank: guess."""
_LEAST_CHANNEL = 0.0024
"""Of linear light, 8 of 255 as it is coded: below it a camera cuts colours off. Rank: guess."""
_FOCAL = 0.8
"""Of a telephone's lens, in longer sides of the picture (from memory)."""


@dataclass(frozen=True)
class Found:
    """A target in a photo: which, where, its patches; `measured`: names whose own Lab is known."""

    target: Target
    plane: Real
    patches: Sampled
    measured: frozenset[str]
    size_px: tuple[int, int]

    @property
    def usable(self) -> NDArray[np.bool_]:
        """Patches whose Lab is known, and that do not burn, shine or lie outside of sRGB."""
        known = np.array([one.name in self.measured for one in self.target.patches])
        inside = self.patches.light.min(axis=1) > _LEAST_CHANNEL
        return np.asarray(known & inside & ~self.patches.burnt & ~self.patches.shining)

    def places(self, at_mm: Real) -> Real:
        """Places of the target as `Seen.place` has them."""
        return places_of(at_mm, placed(self.plane, at_mm), self.target, self.size_px)

    @property
    def tilt_deg(self) -> float:
        """How far the camera looks aslant at it, the lens being a telephone's."""
        wide, high = self.size_px
        focal = _FOCAL * max(wide, high)
        inside = np.array([[focal, 0, wide / 2], [0, focal, high / 2], [0, 0, 1.0]])
        turned = np.linalg.inv(inside) @ self.plane
        upright = np.cross(turned[:, 0], turned[:, 1])
        size = self.target.size_mm
        ray = turned @ np.array([size[0] / 2, size[1] / 2, 1.0])
        share = abs(upright @ ray) / (np.linalg.norm(upright) * np.linalg.norm(ray))
        return degrees(float(np.arccos(min(1.0, share))))


def places_of(at_mm: Real, at_px: Real, target: Target, size_px: tuple[int, int]) -> Real:
    """Across and down the target from -1 to 1, and the distance from the photo's middle squared."""
    half = np.array(target.size_mm) / 2
    middle = np.array(size_px) / 2
    far = ((at_px - middle) ** 2).sum(axis=-1) / (middle**2).sum()
    return np.column_stack([(at_mm - half) / half[0], far])


def found_target(rgb: NDArray[np.uint8], values: Values | None = None) -> Found | None:
    """The target to correct by; None where there is none.

    values: own Lab by name of patch, measured; they replace what is known of the target. Our own
    sheet counts where it was measured, or where the common target does not lie beside it.
    """
    own = _found(rgb, own_target(), plane_of_markers, values)
    if own is not None and own.measured:
        return own
    return _found(_without(rgb, own), common_24(), plane_of_lattice, values) or own


def own_beside(rgb: NDArray[np.uint8], by: Found) -> Found | None:
    """Our own sheet where it lies beside the target that a photo is corrected by."""
    if by.target.markers:
        return None
    return _found(rgb, own_target(), plane_of_markers, None)


def _found(
    rgb: NDArray[np.uint8],
    target: Target,
    find: Callable[[NDArray[np.uint8], Target], Real | None],
    values: Values | None,
) -> Found | None:
    plane = find(rgb, target)
    if plane is None:
        return None
    told, measured = with_values(target, values)
    size = (rgb.shape[1], rgb.shape[0])
    return Found(told, plane, sampled(rgb, plane, target), measured, size)


def _without(rgb: NDArray[np.uint8], own: Found | None) -> NDArray[np.uint8]:
    """The photo with our own sheet painted over: its squares stand in a lattice too."""
    if own is None:
        return rgb
    import cv2

    wide, high = own.target.size_mm
    corners = placed(own.plane, np.array([(0, 0), (wide, 0), (wide, high), (0, high)]))
    painted = rgb.copy()
    cv2.fillConvexPoly(painted, np.round(corners).astype(np.int32), (128, 128, 128))
    return painted


def with_values(target: Target, values: Values | None) -> tuple[Target, frozenset[str]]:
    """The target with what was measured of it, and the names of patches whose Lab is known."""
    names = {one.name for one in target.patches}
    own = {name: lab for name, lab in (values or {}).items() if name in names}
    if not own:
        return target, frozenset(names if target.known else ())
    patches = tuple(replace(one, lab=own.get(one.name, one.lab)) for one in target.patches)
    return replace(target, patches=patches, known=True), frozenset(own)


def seen_patches(found: Found, which: NDArray[np.bool_]) -> Seen:
    """The patches that `which` names, for the fit."""
    kept = [one for one, use in zip(found.target.patches, which, strict=True) if use]
    paper = found.patches.paper
    return Seen(
        light=found.patches.light[which],
        place=found.places(np.array([one.at_mm for one in kept]).reshape(-1, 2)),
        paper=None if paper is None else paper[which],
        lab=np.array([one.lab for one in kept], np.float64).reshape(-1, 3),
        falls=_falls(found, which),
    )


def _falls(found: Found, which: NDArray[np.bool_]) -> Falls:
    """Light on both sides of each patch and how far these lie apart, across and down."""
    kept = [one for one, use in zip(found.target.patches, which, strict=True) if use]
    middles = np.array([one.at_mm for one in kept]).reshape(-1, 2)
    away = np.array([one.side_mm * SIDE_AWAY for one in kept])
    sides = found.patches.sides[which]
    apart = []
    for axis in range(2):
        step = np.zeros((len(kept), 2))
        step[:, axis] = away
        apart.append(found.places(middles + step) - found.places(middles - step))
    return Falls(
        np.concatenate([sides[:, 1], sides[:, 3]]), np.concatenate([sides[:, 0], sides[:, 2]]),
        np.concatenate(apart),
    )  # fmt: skip


def seen_paper(found: Found, lab: Lab, *, only_middle: bool = False) -> Seen:
    """The bare paper beside each patch, or in the middle, as if it were a patch."""
    paper = found.patches.paper
    assert paper is not None
    places = found.places(np.array([one.at_mm for one in found.target.patches]))
    if only_middle:
        middle = [int(np.argmin(np.abs(places[:, :2]).sum(axis=1)))]
        paper, places = paper[middle], places[middle]
    return Seen(paper, places, paper, np.broadcast_to(np.array(lab), paper.shape).copy())


def joined(one: Seen, other: Seen) -> Seen:
    """Both, of one target with paper between its patches."""
    assert one.paper is not None
    assert other.paper is not None
    return Seen(
        np.concatenate([one.light, other.light]), np.concatenate([one.place, other.place]),
        np.concatenate([one.paper, other.paper]), np.concatenate([one.lab, other.lab]),
    )  # fmt: skip
