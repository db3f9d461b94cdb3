"""What a person tells who walks a floor with a tape; metres, degrees, places counted from 0.

Corner k of a room is where its wall k begins. A turn is told at the end of a wall: above zero to
the left, below zero to the right. All lengths are as read on the tape.
"""

from __future__ import annotations

from farwall.floor.nouns import OpeningKind
from farwall.nouns import dataclass

RIGHT, LEFT = -90.0, 90.0


@dataclass(frozen=True)
class WalkWall:
    """A wall as read on the tape, None where it was not measured; then the turn at its end."""

    length_m: float | None
    turn_deg: float = RIGHT
    told: str = ""


@dataclass(frozen=True)
class WalkWay:
    """An opening in a wall: from the corner where the wall begins to its near jamb, then its width.

    rest_m: from its far jamb to the end of the wall; depth_m: of the wall it stands in; to: the
    name of the room behind it, empty for outside. `mark` tells two doors between the same rooms
    apart.
    """

    wall: int
    at_m: float
    width_m: float
    kind: OpeningKind = "door"
    to: str = ""
    depth_m: float | None = None
    rest_m: float | None = None
    mark: str = ""


@dataclass(frozen=True)
class Diagonal:
    """A check from corner to corner of a room."""

    start: int
    end: int
    length_m: float
    told: str = ""


@dataclass(frozen=True)
class Across:
    """A check square across a room from one wall to another, taken in the middle of the first.

    at_m: how far from the beginning of the first wall, where not in its middle.
    """

    wall: int
    other: int
    length_m: float
    at_m: float | None = None
    told: str = ""


@dataclass(frozen=True)
class Shared:
    """Two rooms back to back: their walls are the two faces of one wall of this depth."""

    room: int
    wall: int
    other_room: int
    other_wall: int
    depth_m: float


@dataclass(frozen=True)
class WalkRoom:
    """One room, walked once round."""

    name: str
    walls: tuple[WalkWall, ...]
    ways: tuple[WalkWay, ...] = ()
    diagonals: tuple[Diagonal, ...] = ()
    across: tuple[Across, ...] = ()


@dataclass(frozen=True)
class Walk:
    """All rooms of a floor; us: told in feet, else in metres (for showing and for slips)."""

    rooms: tuple[WalkRoom, ...]
    shared: tuple[Shared, ...] = ()
    us: bool = True


@dataclass(frozen=True)
class Spread:
    """How far readings and right angles stray, one standard deviation each.

    Tape, offset and a share of the length: 4 mm + 0.4 mm/m, a guess for a pocket tape read by one
    person. Right angles 0.25 degrees, a guess; an angle that was told, 1 degree, a guess. Depth of
    a wall 6 mm, a guess: its faces are rarely parallel.
    """

    tape_m: float = 0.004
    tape_per_m: float = 0.0004
    square_deg: float = 0.25
    angle_deg: float = 1.0
    depth_m: float = 0.006

    def of_tape(self, length_m: float) -> float:
        """Standard deviation of a length read on the tape [m]."""
        return self.tape_m + self.tape_per_m * abs(length_m)
