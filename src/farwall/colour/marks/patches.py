"""What tells a light patch of the stain from a light cloud of mottle, and from a mirrored light.

A patch took less stain: it differs from the floor beside it by the floor's own mean colour, and its
rim is steep all round. A cloud differs mostly by another line of colours, so that little is left of
it where mottle is thinned (`cleared`). And what is very much lighter and lies where the floor
shines is a reflection. All bounds were chosen on 369 invented floors with 10 patches that were
proposed and 74 false ones, of which they leave 9 and 27; rank: measured here.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import Bools, Ground, blurred
from farwall.colour.marks.nouns import Floats32, Mark, Sheet

LEAST_LEFT = 0.5
"""Of its contrast so much has to be left where mottle is thinned."""
LEAST_STEEP = 2.4
"""There its rim has to be so many times as steep as the floor is in the middle."""
SHINES, SHINES_L = 0.5, 8.0
"""Of which so much shines and which is so many L lighter than beside it is no patch."""
_BESIDE_M, _SOFT_M = 0.05, 0.012
_EVERY = 5


def without_clouds(
    sheet: Sheet, ground: Ground, thin: Ground, shine: Bools, marks: Sequence[Mark]
) -> list[Mark]:
    """The marks without light patches that are as well clouds of mottle or reflections.

    thin: the ground with mottle thinned · shine: where the floor mirrors light.
    """
    patches = [one for one in marks if one.kind == "light patch"]
    if not patches:
        return list(marks)
    steep = _steepness(thin)
    usual = float(np.median(steep[::_EVERY, ::_EVERY][thin.seen[::_EVERY, ::_EVERY]]))
    gone = []
    for one in patches:
        inside = _inside(sheet, ground, one)
        rim = inside & ~_morphed(inside, "erode", 1)
        left = _lighter(thin, inside) / max(_lighter(ground, inside), 1e-4)
        shines = one.lighter >= SHINES_L and float(shine[inside].mean()) >= SHINES
        if shines or left < LEAST_LEFT or float(steep[rim].mean()) < LEAST_STEEP * usual:
            gone.append(one)
    return [one for one in marks if one not in gone]


def _steepness(of: Ground) -> Floats32:
    import cv2

    soft = blurred(of.dark, _SOFT_M / of.step_m)
    x, y = (cv2.Sobel(soft, cv2.CV_32F, n, 1 - n, ksize=3) for n in (1, 0))
    return np.asarray(np.hypot(x, y), np.float32)


def _inside(sheet: Sheet, ground: Ground, mark: Mark) -> Bools:
    import cv2

    canvas = np.zeros(ground.dark.shape, np.uint8)
    ring = (np.array(mark.outline) - [sheet.left_m, sheet.top_m]) * [1, -1] / ground.step_m
    cv2.fillPoly(canvas, [ring.round().astype(np.int32).reshape(-1, 1, 2)], (1,))
    return np.asarray(canvas > 0)


def _lighter(of: Ground, inside: Bools) -> float:
    """How much lighter it is than the 5 cm around it, in -ln Y; 0 where either is not known."""
    around = _morphed(inside, "dilate", round(_BESIDE_M / of.step_m)) & of.known
    around &= ~_morphed(inside, "dilate", 2)
    within = inside & of.known
    if not within.any() or not around.any():
        return 0.0
    return float(np.median(of.dark[around]) - np.median(of.dark[within]))


def _morphed(of: Bools, how: str, reach: int) -> Bools:
    import cv2

    size = (2 * reach + 1, 2 * reach + 1)
    shape = cv2.MORPH_ELLIPSE if reach > 2 else cv2.MORPH_RECT
    core: NDArray[np.uint8] = np.asarray(cv2.getStructuringElement(shape, size), np.uint8)
    done = (cv2.erode if how == "erode" else cv2.dilate)(of.astype(np.uint8), core)
    return np.asarray(done > 0)
