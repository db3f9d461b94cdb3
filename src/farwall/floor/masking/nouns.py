"""What the edge of a room is made of.

A *run* is a stretch along which film can be hung without a break: it ends at a corner and at an
opening. A *mouth* is where an opening leaves the edge without a wall. A *reveal* is the side of an
opening in the depth of its wall. A stretch is *hidden* where no hand comes between two edges.
"""

from __future__ import annotations

from typing import Literal

from farwall.floor.geometry import Point
from farwall.nouns import dataclass

RunKind = Literal["wall", "reveal", "fixture", "hidden"]


@dataclass(frozen=True)
class Run:
    """A stretch of the edge, the floor to its left. length_m: along all its points.

    of: the opening whose reveal it is, or the fixture's place among those of the floor.
    """

    kind: RunKind
    line: tuple[Point, ...]
    length_m: float
    of: str = ""


@dataclass(frozen=True)
class Mouth:
    """Where an opening lies on the edge of a room; its length there. [m]"""

    opening: str
    line: tuple[Point, Point]
    length_m: float


@dataclass(frozen=True)
class RoomEdge:
    """The whole edge of the floor of a room that is not kept dry.

    corners: where two runs of wall or fixture meet at more than 20 degrees · perimeter_m: of the
    net floor, which runs and mouths make up between them.
    """

    room: str
    runs: tuple[Run, ...]
    mouths: tuple[Mouth, ...]
    corners: int
    perimeter_m: float

    def of_kind(self, *kinds: RunKind) -> tuple[Run, ...]:
        """The runs of these kinds."""
        return tuple(one for one in self.runs if one.kind in kinds)
