"""What is masked, as plain values. Lengths in metres, areas in square metres."""

from __future__ import annotations

from farwall.facts.supplies import GapSeal
from farwall.floor.geometry import Point
from farwall.job.office.masking.rules import GAPS_BY
from farwall.nouns import dataclass


@dataclass(frozen=True)
class FilmRun:
    """A stretch along which film is hung without a break, and how high it stands.

    what: `wall`, or the kind of fixture whose foot it is · film_m: 0 where none is hung · why: key
    of the rule that set the height.
    """

    what: str
    line: tuple[Point, ...]
    length_m: float
    film_m: float
    why: str


@dataclass(frozen=True)
class Jamb:
    """One side of a framed opening: two jambs and the head, wrapped from the side of a room.

    depth_m: of the frame on this side; measured: whether the plan shows it · wrap_m: both jambs
    and the head in a line.
    """

    opening: str
    room: str
    line: tuple[Point, Point]
    width_m: float
    depth_m: float
    measured: bool
    wrap_m: float


@dataclass(frozen=True)
class Gap:
    """The gap between a door and its frame that tape seals: both sides and the head, once."""

    opening: str
    length_m: float


@dataclass(frozen=True)
class Dam:
    """A rolled towel in film across an outside door, with its returns along the wall.

    opening: empty where only the list of the job knows the door.
    """

    opening: str
    room: str
    line: tuple[Point, ...]
    length_m: float


@dataclass(frozen=True)
class ItemMasked:
    """Something that is plugged, taped, wrapped or taken out. letter: its mark on the drawing."""

    letter: str
    kind: str
    room: str
    at: Point | None
    count: int
    length_m: float | None
    height_m: float | None
    take_out: bool
    note: str
    film_m2: float
    tape_m: float


@dataclass(frozen=True)
class RoomMasked:
    """A room. number: its mark on the drawing and in the list.

    wall_m: all of its edge that is masked, walls, jambs and feet of fixtures · film_m: how high
    film usually stands here · kick_m: of it feet of cabinets · corners: that film is led around ·
    joins: where film laps film or a jamb · film_m2, tape_m: with laps and loss.
    """

    room: str
    name: str
    wall_m: float
    film_m: float
    jambs: int
    number: int = 0
    storey: str = ""
    kick_m: float = 0.0
    corners: int = 0
    joins: int = 0
    film_m2: float = 0.0
    tape_m: float = 0.0
    runs: tuple[FilmRun, ...] = ()
    sides: tuple[Jamb, ...] = ()


@dataclass(frozen=True)
class MaskFigure:
    """A figure in all: low, likely, high in its unit, the rule that gives it, and its rank."""

    name: str
    low: float
    likely: float
    high: float
    unit: str
    rule: str
    rank: str
    source: str


@dataclass(frozen=True)
class Masked:
    """All rooms, and in all.

    wall_m: edge that is masked · film_m2: film for walls, jambs, dams and things, with laps and
    loss · jambs: sides of framed openings that are wrapped · dams: outside doors that want one.
    stage: of the build; stage_told: whether the job says so. film_lengths_m: height and length of
    film to be hung, of each height · paper_m: of masking no taller than a 12 in strip, for which
    paper serves · wrap_m: of jambs and heads · jamb_feet: ends of jambs sealed with putty ·
    doors: leaves whose gap is sealed, gap_m long, with `gaps_by` · kick_m: feet of cabinets ·
    corners: of walls.
    """

    rooms: tuple[RoomMasked, ...]
    wall_m: float
    film_m2: float
    jambs: int
    dams: int
    warnings: tuple[str, ...] = ()
    stage: str = "after paint"
    stage_told: bool = False
    film_lengths_m: tuple[tuple[float, float], ...] = ()
    paper_m: float = 0.0
    tape_m: float = 0.0
    wrap_m: float = 0.0
    jamb_feet: int = 0
    doors: int = 0
    gap_m: float = 0.0
    gaps_by: GapSeal = GAPS_BY
    dam_m: float = 0.0
    kick_m: float = 0.0
    corners: int = 0
    joins: int = 0
    gaps: tuple[Gap, ...] = ()
    dam_list: tuple[Dam, ...] = ()
    items: tuple[ItemMasked, ...] = ()
    not_masked: tuple[str, ...] = ()
    figures: tuple[MaskFigure, ...] = ()
