"""A photo laid on the plan as a `Sheet`: only floor of the room, seen well enough to be judged."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING, Protocol

import numpy as np

from farwall.colour.marks.nouns import Sheet
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.readers.floor_photo.flatten import (
    MOST_LEVELS,
    Floats32,
    Picture,
    drawn,
    flattened,
)
from farwall.readers.floor_photo.glare import BURNT_LIGHTNESS, BURNT_SHARE, glare_on
from farwall.readers.floor_photo.light_field import evened
from farwall.readers.floor_photo.nouns import Ground, Mask, Pair, PhotoTold, Real
from farwall.readers.floor_photo.plane import Plane, plane_of

if TYPE_CHECKING:
    from farwall.readers.colour_photo.nouns import ColourPhoto

AsLab = Callable[[Floats32], Floats32]
CELL_M = 0.005
MOST_CELLS = 6_000_000
"""150 m² of 5 mm; more floor than that is laid in larger cells."""
FLATTEST = 0.26
"""Shorter to longer stretch of the floor in the photo: about the cosine of the angle between the
view and the plumb line, here 75°. Flatter than that more than a fifth of the light is mirrored
([fresnel-1823], water) and a mark is drawn out four times. Rank: guess from that."""
COARSEST_M = 0.015
"""Floor that one point of the photo covers along its longer way: a drip is two of these. Guess."""
MOST_PLACE_MM = 150.0
"""Floor whose place is less sure than this by the clicks is not looked at. Rank: guess."""
_WALL_M = 0.03
"""Beside walls and fixtures the base or a shoe is seen, not the floor. Rank: guess."""
_STEP = 8


@dataclass(frozen=True)
class _Grid:
    """Cells of the plan: left and top of the first, rows and columns, side."""

    left_m: float
    top_m: float
    shape: tuple[int, int]
    m_per_px: float

    def middles(self, step: int = 1) -> tuple[Real, Real]:
        """x and y of the middles of every `step`th block of cells, as rows and columns."""
        rows, columns = (-(-side // step) for side in self.shape)
        x = self.left_m + (np.arange(columns) * step + step / 2) * self.m_per_px
        y = self.top_m - (np.arange(rows) * step + step / 2) * self.m_per_px
        gx, gy = np.meshgrid(x, y)
        return gx, gy

    def covered(self, rings: Sequence[Sequence[tuple[float, float]]]) -> Mask:
        return drawn(rings, self.shape, (self.left_m, self.top_m), self.m_per_px)


@dataclass(frozen=True)
class _Seen:
    """What of the grid is in the picture, and of that what is far; x, y and cell size there."""

    inside: Mask
    far: Mask
    at: tuple[Floats32, Floats32]
    px_per_cell: Floats32
    place_mm: tuple[float, float]


def floor_sheet(
    photo: ColourPhoto, pairs: Sequence[Pair], room: Ground, *, click_px: float | None = None
) -> tuple[Sheet, PhotoTold]:
    """The photo flattened over the room, at 5 mm a cell, and what that came to.

    pairs: in points of `photo.lab` · click_px: by how much such a point errs. Raises Refused where
    the points fix no plane, or nothing of the room is seen. Source of the plane:
    [hartley-zisserman]; of the limits: guesses with their names above.
    """
    true = photo.target is not None
    return laid(
        Whole(photo.lab),
        pairs,
        room,
        as_lab=lambda cells: cells,
        true_colour=true,
        click_px=click_px,
    )


class Shot(Protocol):
    """A photo whose rows are told as they are asked for."""

    @property
    def size(self) -> tuple[int, int]:
        """Columns and rows."""

    def rows(self, top: int, low: int) -> tuple[Picture, Picture | None]:
        """From one row to before another: (rows, columns, 3), and 255 where the camera ran out of
        light, 0 elsewhere; None where that is not known and lightness tells."""


@dataclass(frozen=True)
class Whole:
    """A photo that lies in memory already."""

    picture: Picture
    burnt: Picture | None = None

    @property
    def size(self) -> tuple[int, int]:
        """Columns and rows."""
        high, wide = self.picture.shape[:2]
        return wide, high

    def rows(self, top: int, low: int) -> tuple[Picture, Picture | None]:
        """As `Shot` tells them."""
        return self.picture[top:low], None if self.burnt is None else self.burnt[top:low]


def laid(
    shot: Shot, pairs: Sequence[Pair], room: Ground, *, as_lab: AsLab,
    true_colour: bool = False, click_px: float | None = None,
) -> tuple[Sheet, PhotoTold]:  # fmt: skip
    """The same from any picture; `as_lab` makes CIELAB of flattened cells."""
    plane = plane_of(pairs, shot.size, click_px=click_px)
    grid = _grid(plane, room, shot.size)
    seen = _seen(plane, grid, shot.size)
    whole = grid.covered(room.rings) & seen.inside
    floor = whole & _off_edges(grid, room)
    near = floor & ~seen.far
    if near.sum() * grid.m_per_px**2 < 0.25:
        raise _nothing()
    top, low = rows_of(seen.at[1][near], shot.size[1])
    picture, burnt = shot.rows(top, low)
    at = seen.at[0], seen.at[1] - np.float32(top)
    lab = as_lab(flattened(picture, at, seen.px_per_cell))
    if burnt is None:
        hot = lab[..., 0] >= BURNT_LIGHTNESS
    else:
        hot = flattened(burnt, at, seen.px_per_cell) >= 255 * BURNT_SHARE
    shine = glare_on(lab[..., 0], near, hot, grid.m_per_px)
    clear = near & ~shine
    if not clear.any():
        raise _nothing()
    even = evened(lab, clear)
    even[~clear] = 0.0
    sheet = Sheet(even, clear, grid.m_per_px, grid.left_m, grid.top_m, true_colour)
    cell_m2 = grid.m_per_px**2
    off = np.array(plane.off_mm)
    told = PhotoTold(
        pairs=len(pairs), rms_mm=float(np.sqrt((off**2).mean())), worst_mm=float(off.max()),
        worst=pairs[int(off.argmax())].name, place_mm=seen.place_mm[0],
        place_most_mm=seen.place_mm[1], room_m2=_area_m2(room),
        seen_m2=float(clear.sum()) * cell_m2,
        glare_m2=float(shine.sum()) * cell_m2, far_m2=float((floor & seen.far).sum()) * cell_m2,
        m_per_px=grid.m_per_px,
    )  # fmt: skip
    return sheet, told


def rows_of(y: Floats32, high: int) -> tuple[int, int]:
    """From which row of a photo to before which the floor is told by: enough beyond its outermost
    places that `flattened` sees no rim, and where its halves lie as in the whole."""
    halved = 2**MOST_LEVELS
    top = max(0, int(y.min()) - 4 * halved) // halved * halved
    return top, min(high, int(y.max()) + 4 * halved)


def on_target(
    corners_px: Sequence[tuple[float, float]], size_m: tuple[float, float],
    at_m: tuple[float, float], direction_deg: float,
) -> tuple[Pair, ...]:  # fmt: skip
    """The four corners of a target that lies on the floor as pairs.

    corners_px: clockwise in the photo from its upper left one, as it is read · size_m: wide and
    high · at_m: where that corner lies on the plan · direction_deg: which way its upper edge runs
    from there, counter-clockwise from x.
    """
    turn = np.deg2rad(direction_deg)
    right = np.array([np.cos(turn), np.sin(turn)])
    down = np.array([right[1], -right[0]])
    wide, high = size_m
    corners = ((0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high))
    pairs = []
    for name, photo, (a, b) in zip("1234", corners_px, corners, strict=True):
        x, y = np.array(at_m) + a * right + b * down
        pairs.append(Pair(photo, (float(x), float(y)), f"target {name}"))
    return tuple(pairs)


def _grid(plane: Plane, room: Ground, size: tuple[int, int]) -> _Grid:
    """Cells over what of the room may be judged, on lines that all photos of a house share."""
    ring = np.array(room.rings[0], np.float64)
    low, far = ring.min(axis=0), ring.max(axis=0)
    rough = _over(low, far, CELL_M * 10)
    seen = _seen(plane, rough, size)
    use = seen.inside & ~seen.far & rough.covered(room.rings)
    rows, columns = np.flatnonzero(use.any(axis=1)), np.flatnonzero(use.any(axis=0))
    if not len(rows):
        raise _nothing()
    step = rough.m_per_px
    near_low = (rough.left_m + columns[0] * step, rough.top_m - (rows[-1] + 1) * step)
    near_far = (rough.left_m + (columns[-1] + 1) * step, rough.top_m - rows[0] * step)
    cell = CELL_M
    while np.prod((np.array(near_far) - near_low) / cell) > MOST_CELLS:
        cell *= 2
    return _over(np.array(near_low), np.array(near_far), cell)


def _over(low: Real, far: Real, cell: float) -> _Grid:
    left, bottom = (np.floor(low / cell + 1e-6)).tolist()
    right, top = (np.ceil(far / cell - 1e-6)).tolist()
    shape = max(1, int(top - bottom)), max(1, int(right - left))
    return _Grid(left * cell, top * cell, shape, cell)


def _seen(plane: Plane, grid: _Grid, size: tuple[int, int]) -> _Seen:
    import cv2

    gx, gy = grid.middles()
    p = plane.to_photo
    depth = p[2, 0] * gx + p[2, 1] * gy + p[2, 2]
    ahead = depth > 1e-9
    safe = np.where(ahead, depth, 1.0)
    x = ((p[0, 0] * gx + p[0, 1] * gy + p[0, 2]) / safe).astype(np.float32)
    y = ((p[1, 0] * gx + p[1, 1] * gy + p[1, 2]) / safe).astype(np.float32)
    wide, high = size
    inside = ahead & (x >= 1) & (y >= 1) & (x <= wide - 1) & (y <= high - 1)
    # What changes slowly is reckoned for blocks of cells.
    bx, by = grid.middles(_STEP)
    places = np.column_stack([bx.ravel(), by.ravel()])
    before = plane.photo_places(places)[1] > 1e-9
    long, short = plane.stretch(places)
    error = np.where(before, plane.place_error_mm(places), np.inf)
    flat = short / np.maximum(long, 1e-12) < FLATTEST
    coarse = 1 / np.maximum(short, 1e-9) > COARSEST_M
    bad = (~before | flat | coarse | (error > MOST_PLACE_MM)).reshape(bx.shape)
    sides = np.sqrt(np.maximum(long * short, 0.0)).reshape(bx.shape) * grid.m_per_px
    grown = [
        cv2.resize(
            np.repeat(np.repeat(one.astype(np.float32), 2, axis=0), 2, axis=1),
            None, fx=_STEP / 2, fy=_STEP / 2, interpolation=cv2.INTER_LINEAR,
        )[: grid.shape[0], : grid.shape[1]]
        for one in (bad, np.minimum(sides, 1e4))
    ]  # fmt: skip
    inside_blocks = cv2.resize(
        inside.astype(np.uint8), bx.shape[::-1], interpolation=cv2.INTER_NEAREST
    ).ravel().astype(bool)  # fmt: skip
    fine = error[inside_blocks & ~bad.ravel()]
    place = (float(np.median(fine)), float(np.quantile(fine, 0.9))) if len(fine) else (0.0, 0.0)
    return _Seen(inside, grown[0] > 0.5, (x, y), np.asarray(grown[1], np.float32), place)


def _off_edges(grid: _Grid, room: Ground) -> Mask:
    """Where neither wall nor fixture is near."""
    import cv2

    side = 2 * max(1, round(_WALL_M / grid.m_per_px)) + 1
    core = np.ones((side, side), np.uint8)
    # The edge of the grid is no wall where the room goes on beyond it.
    wider = replace(
        grid, left_m=grid.left_m - side * grid.m_per_px, top_m=grid.top_m + side * grid.m_per_px,
        shape=(grid.shape[0] + 2 * side, grid.shape[1] + 2 * side),
    )  # fmt: skip
    beyond = wider.covered(room.rings)
    for rings in room.dry:
        beyond &= ~wider.covered(rings)
    lean = cv2.erode(beyond.astype(np.uint8), core)[side:-side, side:-side]
    return np.asarray(lean.astype(bool))


def _area_m2(room: Ground) -> float:
    import shapely
    from shapely.geometry.base import BaseGeometry

    shape: BaseGeometry = shapely.Polygon(room.rings[0], room.rings[1:])
    for rings in room.dry:
        shape = shape.difference(shapely.Polygon(rings[0], rings[1:]))
    return float(shape.area)


def _nothing() -> Refused:
    what = "Nothing of the room's floor is seen well enough to be judged."
    remedy = (
        "Look down more steeply and from nearer, keep mirrored light out of the picture, and check "
        "that the points are those of this room."
    )
    return Refused(Mistake("photo", what, remedy))
