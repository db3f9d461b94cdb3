"""What comes of a floor's photo: the floor from above, the marks on it, how well it lies."""

from __future__ import annotations

import base64
from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from farwall.colour.marks.nouns import Mark, Sheet
from farwall.errors import Mistake, Refused
from farwall.readers.floor_photo.nouns import (
    BLOCK_M,
    FloorLook,
    FloorSeen,
    Ground,
    Pair,
    PhotoTold,
    TargetAt,
)
from farwall.readers.floor_photo.opening import coded_of, colours, lab_of, light_in
from farwall.readers.floor_photo.sheet import floor_sheet, laid, on_target

if TYPE_CHECKING:
    from farwall.readers.colour_photo.found import Values

_LOOK_PX, _ABOVE_PX = 1600, 1600
_TARGET = "target="
_CORNER_PX = 0.5
"""By how much a corner of a target that was found errs. Rank: guess."""
_PAPER = (243, 248, 250)
"""#faf8f3, blue first."""
Finder = Callable[[Sheet], tuple[Mark, ...]]


def floor_look(data: bytes) -> FloorLook:
    """The photo as a page shows it. Raises Refused."""
    rgb, shrunk = colours(data)
    small = _smaller(rgb[..., ::-1], _LOOK_PX)
    high, wide = small.shape[:2]
    return FloorLook(_jpeg(small), wide, high, shrunk * rgb.shape[1] / wide)


def floor_seen(
    data: bytes, pairs: Sequence[Pair], room: Ground, find: Finder, target: TargetAt | None = None,
    *, own_values: Values | None = None,
) -> FloorSeen:  # fmt: skip
    """The photo laid on the plan and looked over by `find`. Pairs in points of the file.

    target: where the target in the photo lies on the floor; then its corners are points too, and
    the colours are true to it, by the own_values of its squares where they were measured. Raises
    Refused.
    """
    if target is not None:
        sheet, told = _by_target(data, pairs, room, target, own_values)
    else:
        sheet, told = _by_points(data, pairs, room)
    rows, columns = sheet.floor.shape
    side = sheet.m_per_px
    return FloorSeen(
        told, find(sheet), _jpeg(_from_above(sheet)), sheet.left_m, sheet.top_m, columns * side,
        rows * side, _blocks(sheet),
    )  # fmt: skip


def _by_target(
    data: bytes,
    pairs: Sequence[Pair],
    room: Ground,
    target: TargetAt,
    own_values: Values | None,
) -> tuple[Sheet, PhotoTold]:
    from farwall.readers.colour_photo.read import read_colour_photo

    photo = read_colour_photo(data, own_values=own_values)
    seen = photo.target
    if seen is None or seen.size_mm is None:
        what = "no target whose size is known is seen in the photo."
        remedy = "Lay our own sheet flat on the floor, or set points."
        raise Refused(Mistake("target", what, remedy))
    wide, high = (side / 1000 for side in seen.size_mm)
    corners = on_target(seen.corners_px, (wide, high), target.at, target.direction_deg)
    clicked = _shrunk(pairs, photo.file_px)
    click = None if clicked else _CORNER_PX
    return floor_sheet(photo, (*corners, *clicked), room, click_px=click)


def _by_points(data: bytes, pairs: Sequence[Pair], room: Ground) -> tuple[Sheet, PhotoTold]:
    light = light_in(data)
    pairs = _shrunk(pairs, light.shrunk)
    return laid(light, pairs, room, as_lab=lab_of)


def _shrunk(pairs: Sequence[Pair], by: float) -> tuple[Pair, ...]:
    return tuple(Pair((one.photo[0] / by, one.photo[1] / by), one.floor, one.name) for one in pairs)


def target_from(text: str) -> TargetAt | None:
    """Where the target lies, by `target=x,y,deg` among the points; None where nobody told.

    Raises Refused where it cannot be read.
    """
    told = next((one for one in _parts(text) if one.startswith(_TARGET)), None)
    if told is None:
        return None
    try:
        x, y, direction = map(float, told.removeprefix(_TARGET).split(","))
        if not all(abs(value) < 1e6 for value in (x, y, direction)):
            raise ValueError
    except ValueError:
        what = f"`{told[:40]}` tells no place."
        raise Refused(Mistake("target", what, "Write target=x,y,degrees.")) from None
    return TargetAt((x, y), direction)


def points_from(text: str) -> tuple[tuple[Pair, ...], TargetAt | None]:
    """Pairs and the place of the target. Raises Refused with every mistake of both."""
    mistakes: list[Mistake] = []
    pairs: tuple[Pair, ...] = ()
    target: TargetAt | None = None
    try:
        pairs = pairs_from(text)
    except Refused as refusal:
        mistakes += refusal.mistakes
    try:
        target = target_from(text)
    except Refused as refusal:
        mistakes += refusal.mistakes
    if mistakes:
        raise Refused(*mistakes)
    return pairs, target


def target_text(target: TargetAt) -> str:
    """As `target_from` reads it."""
    return f"{_TARGET}{target.at[0]:.3f},{target.at[1]:.3f},{target.direction_deg:.1f}"


def _parts(text: str) -> list[str]:
    return [one.strip() for one in text.split(";") if one.strip()]


def pairs_from(text: str) -> tuple[Pair, ...]:
    """Pairs written `px,py=x,y;…`, a name before each where it has one: `A:px,py=x,y`.

    px, py: points of the upright photo · x, y: metres of the plan. Raises Refused with every one
    that cannot be read.
    """
    pairs: list[Pair] = []
    mistakes: list[Mistake] = []
    told = [one for one in _parts(text) if not one.startswith(_TARGET)]
    for number, one in enumerate(told, 1):
        name, colon, places = one.rpartition(":")
        numbers = [part for half in places.split("=") for part in half.split(",")]
        try:
            px, py, x, y = map(float, numbers)
            if places.count("=") != 1 or not all(abs(v) < 1e6 for v in (px, py, x, y)):
                raise ValueError
        except ValueError:
            mistakes.append(
                Mistake(f"point {number}", f"`{one.strip()[:40]}` is no pair.",
                        "Write px,py=x,y: points of the photo, metres of the plan.")
            )  # fmt: skip
            continue
        pairs.append(Pair((px, py), (x, y), name.strip() if colon else _letter(number)))
    if mistakes:
        raise Refused(*mistakes)
    return tuple(pairs)


def pairs_text(pairs: Sequence[Pair]) -> str:
    """Pairs as `pairs_from` reads them, to 0.1 of a point and 1 mm."""
    return ";".join(
        f"{one.name}:{one.photo[0]:.1f},{one.photo[1]:.1f}={one.floor[0]:.3f},{one.floor[1]:.3f}"
        for one in pairs
    )


def _letter(number: int) -> str:
    return chr(ord("A") + number - 1) if number <= 26 else str(number)


def _blocks(sheet: Sheet) -> tuple[str, ...]:
    side = round(BLOCK_M / sheet.m_per_px)
    rows, columns = sheet.floor.shape
    padded = np.pad(sheet.floor, ((0, -rows % side), (0, -columns % side)))
    high, wide = (length // side for length in padded.shape)
    share = padded.reshape(high, side, wide, side).mean(axis=(1, 3))
    return tuple("".join("1" if one else "0" for one in row) for row in share >= 0.5)


def _from_above(sheet: Sheet) -> npt.NDArray[np.uint8]:
    shown = coded_of(sheet.lab)[..., ::-1].copy()
    shown[~sheet.floor] = _PAPER
    return _smaller(shown, _ABOVE_PX)


def _smaller(picture: npt.NDArray[np.uint8], most_px: int) -> npt.NDArray[np.uint8]:
    import cv2

    factor = min(1.0, most_px / max(picture.shape[:2]))
    if factor == 1:
        return picture
    small = cv2.resize(picture, None, fx=factor, fy=factor, interpolation=cv2.INTER_AREA)
    return np.asarray(small, np.uint8)


def _jpeg(picture: npt.NDArray[np.uint8]) -> str:
    import cv2

    done, data = cv2.imencode(".jpg", np.ascontiguousarray(picture), [cv2.IMWRITE_JPEG_QUALITY, 88])
    if not done:
        raise ValueError("the picture could not be kept")
    return base64.b64encode(bytes(data)).decode("ascii")
