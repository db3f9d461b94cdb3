"""How far the reader of photos is off on invented ones: squares held out, and stained floor."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.bench.colour_photos import Hard, Shot, photograph
from farwall.bench.colour_scene import LIGHTS, Sheet, common_24, printed
from farwall.colour.difference import de2000
from farwall.colour.targets.common24 import common_24 as known_24
from farwall.colour.targets.own import own_target
from farwall.nouns import dataclass
from farwall.readers.colour_photo.found import Values
from farwall.readers.colour_photo.read import read_colour_photo
from farwall.readers.colour_photo.spot import spot_of

TUNING, JUDGING = 0, 10_000
_PAGE_PX_MM = 3.0
_HELD_OUT = 4
"""Every fourth square of colour is held out of what the reader is given."""


@dataclass(frozen=True)
class Tried:
    """One photo: by which light and target, CIEDE2000 of squares held out and of floor pieces.

    said: the residual error that the reader told; None where it saw no target.
    """

    light: str
    target: str
    squares: tuple[float, ...]
    floors: tuple[float, ...]
    said: float | None


@dataclass(frozen=True)
class Off:
    """What the photos of a light and target came to. said: median of what the reader said."""

    light: str
    target: str
    photos: int
    unseen: int
    squares: float
    squares_p90: float
    floors: float
    floors_p90: float
    said: float


@dataclass(frozen=True)
class Laid:
    """A target that is photographed, and what an instrument reads of its squares."""

    name: str
    sheet: Sheet
    values: Values


def laid_24() -> Laid:
    """The common target; the reader is given the published mean of thirty."""
    values = {one.name: one.lab for one in known_24("average-of-30").patches}
    return Laid("24 patches", common_24(), {k: v for k, v in values.items() if v is not None})


def laid_own(page: NDArray[np.uint8], corner_mm: tuple[float, float]) -> Laid:
    """Our own sheet out of an invented printer; page: at 3 points a millimetre, corner_mm: where
    the target begins on it. The reader is given what an instrument reads."""
    sheet = printed(page, _PAGE_PX_MM)
    x, y = corner_mm
    values = {p.name: sheet.lab_at(x + p.at_mm[0], y + p.at_mm[1]) for p in own_target().patches}
    return Laid("own sheet", sheet, {**values, "paper": sheet.lab_at(5.0, 5.0)})


def own_page() -> tuple[NDArray[np.uint8], tuple[float, float]]:
    """The squares as the paper bears them, on a sheet of Letter's width, and their corner."""
    target = own_target()
    from farwall.colour.targets.own import asked_srgb

    wide, high, corner = 216.0, 190.0, (20.0, 25.0)
    page = np.full((round(high * _PAGE_PX_MM), round(wide * _PAGE_PX_MM), 3), 255, np.uint8)
    for patch in target.patches:
        _fill(page, corner, patch.at_mm, patch.side_mm, asked_srgb(patch))
    for marker in target.markers:
        cell = marker.side_mm / len(marker.cells)
        for row, cells in enumerate(marker.cells):
            for column, white in enumerate(cells):
                at = (
                    marker.at_mm[0] - marker.side_mm / 2 + (column + 0.5) * cell,
                    marker.at_mm[1] - marker.side_mm / 2 + (row + 0.5) * cell,
                )
                _fill(page, corner, at, cell, (255,) * 3 if white else (0,) * 3)
    return page, corner


def _fill(
    page: NDArray[np.uint8], corner: tuple[float, float], at: tuple[float, float], side: float,
    colour: Sequence[int],
) -> None:  # fmt: skip
    edges = [
        round((corner[k] + at[k] + sign * side / 2) * _PAGE_PX_MM)
        for k in range(2)
        for sign in (-1, 1)
    ]
    page[edges[2] : edges[3], edges[0] : edges[1]] = colour


def tried(laid: Laid, light: str, seed: int, hard: Hard | None = None) -> Tried:
    """One photo of it, read with every fourth square of colour held out of the reader's values."""
    shot = photograph(laid.sheet, light, seed=seed, hard=hard)
    held = _held_out(laid, seed)
    given = {name: lab for name, lab in laid.values.items() if name not in held}
    return _read(laid, light, shot, given)


def _held_out(laid: Laid, seed: int) -> tuple[str, ...]:
    coloured = [n for n, lab in laid.values.items() if np.hypot(lab[1], lab[2]) > 5]
    return tuple(coloured[seed % _HELD_OUT :: _HELD_OUT])


def _read(laid: Laid, light: str, shot: Shot, given: Values) -> Tried:
    photo = read_colour_photo(shot.data, own_values=given)
    if photo.target is None:
        return Tried(light, laid.name, (), (), None)
    seen = {one.name: one.seen_lab for one in photo.target.patches}
    squares = [
        float(de2000(seen[name], lab))
        for name, lab in laid.values.items()
        if name in seen and name not in given
    ]
    floors = [float(de2000(spot_of(photo, one.polygon_px).lab, one.lab)) for one in shot.pieces]
    return Tried(light, laid.name, tuple(squares), tuple(floors), photo.target.error_de)


def score_photos(
    laid: Laid,
    seeds: Iterable[int],
    hard: Hard | None = None,
    lights: Sequence[str] = tuple(LIGHTS),
) -> tuple[Off, ...]:
    """Light by light, then all together."""
    photos = [tried(laid, light, seed, hard) for seed in seeds for light in lights]
    each = [_off(name, [one for one in photos if one.light == name]) for name in lights]
    return (*each, _off("all", photos))


def _off(light: str, photos: Sequence[Tried]) -> Off:
    seen = [one for one in photos if one.said is not None]
    squares = [de for one in seen for de in one.squares] or [float("nan")]
    floors = [de for one in seen for de in one.floors] or [float("nan")]
    said = [one.said for one in seen if one.said is not None] or [float("nan")]
    return Off(
        light, photos[0].target, len(photos), len(photos) - len(seen),
        round(float(np.median(squares)), 2), round(float(np.percentile(squares, 90)), 2),
        round(float(np.median(floors)), 2), round(float(np.percentile(floors, 90)), 2),
        round(float(np.median(said)), 2),
    )  # fmt: skip
