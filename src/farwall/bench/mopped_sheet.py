"""An invented mopped floor's photo laid flat, with the error of the person who tells its places.

Four places of the floor are clicked a few points off. The picture is laid on the plan by the reader
of floors' photos, or by a hand of the bench's own that masks what glares and knows no more: where
the two come to other figures, it is the laying and not the finding.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.bench.mopped_camera import FloorPhoto
from farwall.bench.mopped_floors import MoppedFloor
from farwall.colour.marks.nouns import Mark, Sheet

Click = tuple[tuple[float, float], tuple[float, float]]
"""A place twice: in the photo (points, from its upper left), on the plan (metres)."""
M_PER_PX = 0.005
CLICK_PX = 3.0
"""Standard deviation of a click in a picture of 1600 points. A guess."""
GLARES_FROM, GLARES_ABOVE, GLARE_GROWN_M = 250, 25.0, 0.03
"""Bytes that are full, or L so far above the floor's middle, is glare; grown by so much."""


def clicks_of(floor: MoppedFloor, photo: FloorPhoto, *, part: int = 30) -> tuple[Click, ...]:
    """Four places of the floor as a person clicks them; the same for a seed, a size and a part."""
    import cv2

    wide, high = floor.wide_m, floor.high_m
    plan = np.array([(0, 0), (wide, 0), (wide, high), (0, high)], np.float32)
    true = np.asarray(
        cv2.getPerspectiveTransform(plan, np.array(photo.corners, np.float32)), np.float64
    )
    places = _spread(floor, photo, true)
    seen = cv2.perspectiveTransform(places[None].astype(np.float64), true)[0]
    throws = np.random.Generator(np.random.PCG64([floor.seed, part]))
    error = CLICK_PX * max(photo.wide_px, photo.high_px) / 1600
    seen = seen + throws.normal(0, error, (4, 2))
    return tuple(
        ((float(u), float(v)), (float(x), float(y)))
        for (u, v), (x, y) in zip(seen, places, strict=True)
    )


def sheet_of(data: bytes, clicks: Sequence[Click], wide_m: float, high_m: float) -> Sheet:
    """The photo on the plan of the piece, in points of 5 mm."""
    import cv2

    picture = cv2.imdecode(np.frombuffer(data, np.uint8), cv2.IMREAD_COLOR)
    if picture is None:
        raise ValueError("the bench's own JPEG could not be read")
    size = (round(wide_m / M_PER_PX), round(high_m / M_PER_PX))
    onto = _onto(clicks, high_m)
    flags = cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP
    there = cv2.warpPerspective(np.full(picture.shape[:2], 255, np.uint8), onto, size, flags=flags)
    flat = cv2.warpPerspective(picture, onto, size, flags=flags)
    lab = cv2.cvtColor(flat[..., ::-1].astype(np.float32) / 255, cv2.COLOR_RGB2LAB)
    above = lab[..., 0] > np.median(lab[there == 255, 0]) + GLARES_ABOVE
    glare = ((flat.max(axis=2) >= GLARES_FROM) | above).astype(np.uint8)
    reach = 2 * round(GLARE_GROWN_M / M_PER_PX) + 1
    glare = cv2.dilate(glare, cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (reach, reach)))
    return Sheet(
        np.asarray(lab, np.float32), np.asarray((there == 255) & (glare == 0), np.bool_),
        M_PER_PX, 0.0, high_m,
    )  # fmt: skip


def read_sheet(data: bytes, clicks: Sequence[Click], wide_m: float, high_m: float) -> Sheet:
    """The photo as the reader of floors lays it on the plan. Raises Refused as that does."""
    from farwall.readers.floor_photo.nouns import Ground, Pair
    from farwall.readers.floor_photo.seen import floor_seen

    kept: list[Sheet] = []

    def keep(sheet: Sheet) -> tuple[Mark, ...]:
        kept.append(sheet)
        return ()

    room = ((0.0, 0.0), (wide_m, 0.0), (wide_m, high_m), (0.0, high_m))
    pairs = [Pair(seen, place, "ABCD"[n]) for n, (seen, place) in enumerate(clicks)]
    floor_seen(data, pairs, Ground((room,)), keep)
    return kept[0]


def _onto(clicks: Sequence[Click], high_m: float) -> NDArray[np.float64]:
    """From points of the sheet to points of the photo."""
    import cv2

    sheet = [(x / M_PER_PX - 0.5, (high_m - y) / M_PER_PX - 0.5) for _, (x, y) in clicks]
    photo = [seen for seen, _ in clicks]
    return np.asarray(
        cv2.getPerspectiveTransform(np.array(sheet, np.float32), np.array(photo, np.float32)),
        np.float64,
    )


def _spread(
    floor: MoppedFloor, photo: FloorPhoto, true: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Four places of the floor that the photo shows, as far apart as it allows."""
    import cv2

    gx, gy = np.meshgrid(np.linspace(0, floor.wide_m, 40), np.linspace(0, floor.high_m, 40))
    places = np.stack([gx.ravel(), gy.ravel()], axis=1)
    seen = cv2.perspectiveTransform(places[None], true)[0]
    inside = (seen > 8).all(axis=1) & (seen < [photo.wide_px - 8, photo.high_px - 8]).all(axis=1)
    shown = places[inside]
    middle = shown.mean(axis=0)
    picked = []
    for corner in ((0, 0), (1, 0), (1, 1), (0, 1)):
        aim = np.array(corner) * [floor.wide_m, floor.high_m] - middle
        picked.append(shown[np.argmax((shown - middle) @ (aim / np.linalg.norm(aim)))])
    return np.array(picked)
