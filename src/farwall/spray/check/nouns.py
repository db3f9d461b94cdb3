"""The checker's own nouns. They resemble the plan's on purpose and share no code with them.

Metres, minutes, litres. A `path` is an array of rows x, y, t.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

Path = NDArray[np.float64]
"""Rows of x in metres, y in metres, t in minutes."""

BODY_M = 0.25
"""Radius of the disc that stands for a person."""
PLACE_M = 0.01
"""Tolerance on places and distances."""
CLEAR_M = BODY_M - PLACE_M
"""Room that a body's centre needs to everything that it may not touch."""
TIME_MIN = 0.05
"""Tolerance on moments."""
AREA_M2 = 0.01
"""Tolerance on areas, or `SHARE` of them where that is more."""
LITRE = 0.01
"""Tolerance on litres."""
SHARE = 0.001
HAIR = 1e-7
"""Below this, in metres or minutes, floats differ by their own rounding."""


class Unreadable(ValueError):
    """The plan (or the job) is not in the promised form; `mistakes` names each place."""

    def __init__(self, mistakes: tuple[str, ...]) -> None:
        self.mistakes = mistakes
        super().__init__("\n".join(mistakes))


@dataclass(frozen=True)
class Fault:
    """Something wrong with a plan: its code, the field's id, the minute, a sentence.

    `field` is empty and `at_min` 0 where a fault belongs to the whole plan.
    """

    code: str
    field: str
    at_min: float
    what: str


@dataclass(frozen=True, eq=False)
class Room:
    """A room with its polygon."""

    id: str
    label: str
    storey: str
    shape: BaseGeometry


@dataclass(frozen=True, eq=False)
class Opening:
    """A way through a wall; `threshold` is the floor in the depth of the wall."""

    id: str
    kind: str
    line: shapely.LineString
    rooms: tuple[str, ...]
    threshold: BaseGeometry | None


@dataclass(frozen=True)
class Exit:
    """A way out of the house by an opening."""

    id: str
    opening: str


@dataclass(frozen=True, eq=False)
class Fixture:
    """Something that is kept dry and walked around."""

    label: str
    shape: BaseGeometry


@dataclass(frozen=True, eq=False)
class SawCut:
    """A shallow cut in the slab."""

    id: str
    line: shapely.LineString


@dataclass(frozen=True)
class House:
    """The floor with all that stands on it and leads out of it."""

    rooms: tuple[Room, ...]
    openings: tuple[Opening, ...]
    exits: tuple[Exit, ...]
    fixtures: tuple[Fixture, ...]
    saw_cuts: tuple[SawCut, ...]


@dataclass(frozen=True)
class Tools:
    """Tank and pace; `None` where the plan does not say."""

    tank_l: float
    spray_m2_min: float
    walk_m_min: float
    overlap_m: float
    refill_min: float | None
    swap_min: float | None
    reach_m: float | None


@dataclass(frozen=True)
class Coat:
    """A coat: its cut as (stain, water) where one is given, and litres a square metre."""

    id: str
    cut: tuple[float, float] | None
    l_per_m2: float


@dataclass(frozen=True, eq=False)
class Band:
    """A strip sprayed before stepping back."""

    id: str
    field: str
    coat: str
    order: int
    sprayer: int
    shape: BaseGeometry
    path: Path
    litres: float
    start_min: float
    end_min: float

    @property
    def who(self) -> str:
        """The person who sprays it, in the words of `walks`."""
        return "sprayer" if self.sprayer == 1 else f"sprayer {self.sprayer}"

    @cached_property
    def begins(self) -> float:
        """When the replay sees it begin: the first moment of its path."""
        return float(self.path[0, 2])

    @cached_property
    def ends(self) -> float:
        """When the replay sees it end: the last moment of its path."""
        return float(self.path[-1, 2])


@dataclass(frozen=True)
class Refill:
    """Litres more in a tank from `at_min` + `minutes` on."""

    at_min: float
    minutes: float
    at: tuple[float, float]
    litres: float
    by: str

    @property
    def ready_min(self) -> float:
        """When the litres are in the tank."""
        return self.at_min + self.minutes


@dataclass(frozen=True, eq=False)
class Walk:
    """A walk without spraying."""

    who: str
    path: Path


@dataclass(frozen=True, eq=False)
class StopLine:
    """Where spraying ends on purpose."""

    id: str
    kind: str
    line: shapely.LineString


@dataclass(frozen=True, eq=False)
class OpenTime:
    """How long an edge stays live in a room, from a minute on; in a patch, up to another minute."""

    room: str
    from_min: float
    low_min: float
    patch: BaseGeometry | None
    to_min: float


@dataclass(frozen=True, eq=False)
class Field:
    """Floor sprayed in one go in one coat.

    `told_low_min` is the open time told for the whole field; `spare_min` what its
    tightest edge is told to have to spare, None where the plan does not say.
    """

    id: str
    coat: str
    rooms: tuple[str, ...]
    exit: str
    area_m2: float
    order: int
    start_min: float
    end_min: float
    peak_age_min: float
    told_low_min: float
    bands: tuple[Band, ...]
    refills: tuple[Refill, ...]
    walks: tuple[Walk, ...]
    stop_lines: tuple[StopLine, ...]
    open_times: tuple[OpenTime, ...] = ()
    spare_min: float | None = None

    @cached_property
    def limit_min(self) -> float:
        """The shortest open time told anywhere."""
        return min([self.told_low_min, *(one.low_min for one in self.open_times)])

    @cached_property
    def varies(self) -> bool:
        """Whether an edge may live longer in one place or minute than in another.

        An open time of the field below all of its rooms' rules everywhere.
        """
        lows = [one.low_min for one in self.open_times]
        return bool(lows) and max(lows) > min(lows) and self.told_low_min >= min(lows) - TIME_MIN


@dataclass(frozen=True)
class Mix:
    """What is mixed together in one tub."""

    id: str
    coat: str
    stain_l: float
    water_l: float
    acid_l: float
    fields: tuple[str, ...]
    before_band: str = ""
    lots: tuple[str, ...] = ()

    @property
    def litres(self) -> float:
        """All that is in the tub."""
        return self.stain_l + self.water_l + self.acid_l


@dataclass(frozen=True)
class Look:
    """A look into a field before a band: planned litres done and to do, and begun on so much."""

    field: str
    band: str
    at_min: float
    done_l: float
    to_do_l: float
    begin_l: float


@dataclass(frozen=True)
class Clock:
    """A wait in minutes; `None` where it has no such end."""

    coat: str
    name: str
    low_min: float
    likely_min: float | None
    high_min: float | None


@dataclass(frozen=True)
class Closed:
    """A room in which somebody stands until a minute; infinite where no end is told."""

    room: str
    until_min: float


@dataclass(frozen=True)
class SoFar:
    """The fixed past of a plan made in mid-day; `hash_found` is reckoned from it and its bands."""

    at_min: float
    coat: str
    done: tuple[tuple[str, float, float], ...]
    tank_l: float
    closed: tuple[Closed, ...]
    past_hash: str
    hash_found: str
    tank_2_l: float | None = None
    """What is in the second sprayer's tank; None where the past tells of one tank."""

    def is_past(self, ends_min: float) -> bool:
        """Whether what ends at this minute has happened: a fact, whatever its pace was."""
        return ends_min <= self.at_min + TIME_MIN

    def was_done(self, band: Band) -> bool:
        """Whether a band is told as done."""
        return any(name == band.id for name, _, _ in self.done)


@dataclass(frozen=True)
class PlanRead:
    """A plan as the replay needs it; `inputs_hash_found` is reckoned from its inputs."""

    inputs_hash: str
    inputs_hash_found: str
    house: House
    sprayers: int
    helper: bool
    tools: Tools
    coats: dict[str, Coat]
    fields: tuple[Field, ...]
    mixes: tuple[Mix, ...]
    clocks: tuple[Clock, ...]
    so_far: SoFar | None = None
    left: tuple[Field, ...] = ()
    looks: tuple[Look, ...] = ()

    def is_past(self, ends_min: float) -> bool:
        """Whether what ends at this minute is a fact of a day that is told so far."""
        return self.so_far is not None and self.so_far.is_past(ends_min)

    @cached_property
    def bands(self) -> tuple[Band, ...]:
        """All bands in the order of their beginning."""
        every = (band for field in self.fields for band in field.bands)
        return tuple(sorted(every, key=lambda band: band.begins))


@dataclass(frozen=True, eq=False)
class Piece:
    """A stretch of one person's day: a band or a walk."""

    who: str
    field: str
    what: str
    path: Path
    sprays: bool = False


def area_slack(area_m2: float) -> float:
    """How far two areas of this size may differ. [m²]"""
    return max(AREA_M2, SHARE * abs(area_m2))
