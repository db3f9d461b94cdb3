"""Six spots of a floor out of one photo: boxes on it in two rows, none on the target."""

from __future__ import annotations

from statistics import fmean, stdev
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused
from farwall.readers.apart.colours import read_colour_apart
from farwall.readers.colour_photo.nouns import ColourPhoto
from farwall.readers.colour_photo.spot import spot_of
from farwall.web.words import said

if TYPE_CHECKING:
    from farwall.readers.colour_photo.found import Values

Box = tuple[float, float, float, float]
_ROWS, _COLUMNS = (0.28, 0.72), (0.2, 0.5, 0.8)
_HALF = 0.07
"""Half a side of a box, as a share of the picture's."""
_ROUND = 0.25
"""How far around the target no box lies, as a share of its own size: its shadow and its edge."""


def spots_of_photo(content: bytes, name: str, values: Values | None = None) -> dict[str, str]:
    """The fields of a `colour-seen`: mean of the spots, how many, their spread, the target's error.

    values: of the firm's own print. The photo is read apart, as a stranger's file. Raises Refused
    for what is no picture, or has no floor beside its target.
    """
    photo = read_colour_apart(content, name=name, own_values=values)
    seen = [spot_of(photo, _corners(box)) for box in boxes(photo)]
    told = {
        "lightness": f"{fmean(one.lab[0] for one in seen):.2f}",
        "lab_a": f"{fmean(one.lab[1] for one in seen):.2f}",
        "lab_b": f"{fmean(one.lab[2] for one in seen):.2f}",
        "spots": str(len(seen)),
    }
    if len(seen) > 1:
        told["spread_lightness"] = f"{stdev(one.lab[0] for one in seen):.2f}"
    if seen[0].error_de is not None:
        told["error_de"] = f"{seen[0].error_de:.2f}"
    return told


def boxes(photo: ColourPhoto) -> tuple[Box, ...]:
    """Left, top, right, bottom of the boxes, in points of `photo.lab`. Raises Refused for none."""
    rows, columns = photo.lab.shape[:2]
    every = [
        ((x - _HALF) * columns, (y - _HALF) * rows, (x + _HALF) * columns, (y + _HALF) * rows)
        for y in _ROWS
        for x in _COLUMNS
    ]
    target = _target_box(photo)
    free = [one for one in every if target is None or not _meet(one, target)]
    if not free:
        raise Refused(Mistake(said("colour-next-photo"), said("colour-next-photo-full")))
    return tuple(free)


def _target_box(photo: ColourPhoto) -> Box | None:
    if photo.target is None:
        return None
    xs = [x for x, _ in photo.target.corners_px]
    ys = [y for _, y in photo.target.corners_px]
    wide, high = (max(xs) - min(xs)) * _ROUND, (max(ys) - min(ys)) * _ROUND
    return min(xs) - wide, min(ys) - high, max(xs) + wide, max(ys) + high


def _meet(one: Box, other: Box) -> bool:
    return (
        one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]
    )  # fmt: skip


def _corners(box: Box) -> tuple[tuple[float, float], ...]:
    left, top, right, bottom = box
    return (left, top), (right, top), (right, bottom), (left, bottom)
