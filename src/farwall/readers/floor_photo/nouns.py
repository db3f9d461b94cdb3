"""What a person tells of a floor's photo, and what laying it on the plan came to."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.nouns import Mark
from farwall.floor.geometry import Point, Ring
from farwall.floor.nouns import Floor
from farwall.nouns import dataclass

Mask = NDArray[np.bool_]
Real = NDArray[np.float64]
BLOCK_M = 0.1


@dataclass(frozen=True)
class Pair:
    """One point twice: in the photo [px of the upright file, from its upper left], on the plan [m].

    name: what a person calls it, such as `A`.
    """

    photo: Point
    floor: Point
    name: str = ""


@dataclass(frozen=True)
class TargetAt:
    """Where the target lies on the floor: its upper left corner as it is read [m], and which way
    its upper edge runs from there, counter-clockwise from x. [deg]"""

    at: Point
    direction_deg: float


@dataclass(frozen=True)
class Ground:
    """The floor that is looked for in a photo: rings of the room, and of what stands dry in it."""

    rings: tuple[Ring, ...]
    dry: tuple[tuple[Ring, ...], ...] = ()


@dataclass(frozen=True)
class PhotoTold:
    """What laying a photo on the plan came to.

    pairs: how many points · rms_mm, worst_mm: what they are off on the floor after the least
    squares, 0 with four points, which leave nothing over · worst: name of the point farthest off ·
    place_mm, place_most_mm: how far a place on the floor that is seen may be off by the clicks
    alone, median and the largest of nine in ten · room_m2: floor of the room · seen_m2: of it
    looked at · glare_m2: in the picture, and hidden by the mirrored light · far_m2: in the picture,
    too far or too flat to be judged · checked: whether more than four points were told.
    """

    pairs: int
    rms_mm: float
    worst_mm: float
    worst: str
    place_mm: float
    place_most_mm: float
    room_m2: float
    seen_m2: float
    glare_m2: float
    far_m2: float
    m_per_px: float

    @property
    def checked(self) -> bool:
        """Whether the points were more than the four that fix a plane."""
        return self.pairs > 4


@dataclass(frozen=True)
class FloorLook:
    """A floor's photo made fit for a page. file_px: points of the file to one of the picture."""

    picture_base64: str
    width_px: int
    height_px: int
    file_px: float


@dataclass(frozen=True)
class FloorSeen:
    """A floor's photo laid on the plan.

    picture_base64: JPEG of the floor from above, paper where nothing is judged; its left and top
    edge on the plan and its size · marks: as they are proposed · seen: blocks of 0.1 m from the
    upper left, a row a text, `1` where at least half of the block was looked at.
    """

    told: PhotoTold
    marks: tuple[Mark, ...]
    picture_base64: str
    left_m: float
    top_m: float
    wide_m: float
    high_m: float
    seen: tuple[str, ...]

    def saw(self, x_m: float, y_m: float) -> bool:
        """Whether a place of the plan was looked at."""
        row, column = int((self.top_m - y_m) // BLOCK_M), int((x_m - self.left_m) // BLOCK_M)
        if not 0 <= row < len(self.seen) or not 0 <= column < len(self.seen[row]):
            return False
        return self.seen[row][column] == "1"


def seen_by_any_m2(photos: Sequence[FloorSeen]) -> float:
    """Floor that at least one of the photos looked at, to blocks of 0.1 m. [m²]"""
    blocks = {
        (column + round(one.left_m / BLOCK_M), row - round(one.top_m / BLOCK_M))
        for one in photos
        for row, cells in enumerate(one.seen)
        for column, cell in enumerate(cells)
        if cell == "1"
    }
    return len(blocks) * BLOCK_M**2


def ground_of(floor: Floor, room: str) -> Ground:
    """The room of a floor with the fixtures that stand in it. Raises KeyError for no such room."""
    shape = floor.room_by_id[room].polygon
    dry = tuple(
        one.polygon.coordinates for one in floor.fixtures
        if one.polygon.shape.intersects(shape.shape)
    )  # fmt: skip
    return Ground(shape.coordinates, dry)
