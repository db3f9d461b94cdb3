"""The plan: derived from the facts, never edited. Names and keys are promised to callers.

Minutes count from `starts_at`; places are metres in the frame of the floor.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from farwall.facts.go import Go
from farwall.facts.job import Coat, Crew
from farwall.floor.geometry import Point, PolygonGeometry
from farwall.floor.nouns import Exit, Fixture, Opening, Room, SawCut

TimedPoint = tuple[float, float, float]
"""x in metres, y in metres, minutes from the start."""

Verdict = Literal["fits", "helper", "two", "stop-line", "cannot"]
StopKind = Literal["door", "cased", "outside", "saw cut"]

PLAN_VERSION = 1


@dataclass(frozen=True)
class PlanTools:
    """The tools as the plan used them: no value left open."""

    tank_l: float
    band_m: float
    spray_m2_min: float
    walk_m_min: float
    refill_min: float
    swap_min: float
    overlap_m: float
    reach_m: float


@dataclass(frozen=True)
class PlanFloor:
    """The rooms of the plan; their polygons and any thresholds are the whole floor."""

    rooms: tuple[Room, ...]


@dataclass(frozen=True)
class PlanInputs:
    """All that a replay needs. `l_per_m2` gives litres a square metre by coat id."""

    floor: PlanFloor
    openings: tuple[Opening, ...]
    exits: tuple[Exit, ...]
    fixtures: tuple[Fixture, ...]
    saw_cuts: tuple[SawCut, ...]
    crew: Crew
    tools: PlanTools
    coats: tuple[Coat, ...]
    l_per_m2: dict[str, float]


@dataclass(frozen=True)
class OpenTime:
    """Minutes that an edge stays live. `low` is the budget that the plan holds to."""

    low: float
    likely: float
    high: float
    rank: str = ""
    source: str = ""


@dataclass(frozen=True)
class Band:
    """A strip sprayed before stepping back.

    `path` is where the person's body centre goes while spraying; the litres
    count the wet overlap onto earlier bands, the polygon leaves it out.
    """

    id: str
    order: int
    sprayer: int
    polygon: PolygonGeometry
    path: tuple[TimedPoint, ...]
    litres: float
    start_min: float
    end_min: float
    edge_age_min: float = 0.0
    """The greatest age at which it meets the edge of a band sprayed before it."""


@dataclass(frozen=True)
class Refill:
    """A tank filled or swapped: `litres` is what the sprayer carries more than before."""

    at_min: float
    minutes: float
    at: Point
    litres: float
    by: str


@dataclass(frozen=True)
class Walk:
    """A walk without spraying, `who` being `sprayer`, `sprayer 2` or `helper`."""

    who: str
    path: tuple[TimedPoint, ...]


@dataclass(frozen=True)
class StopLine:
    """Where spraying ends on purpose; `id` is the opening or saw cut it lies on."""

    id: str
    kind: StopKind
    line: tuple[Point, ...]


@dataclass(frozen=True)
class Remedy:
    """Something that would make the field possible or safer, with the peak age it gives."""

    code: str
    what: str
    peak_age_min: float | None = None


@dataclass(frozen=True)
class Field:
    """Floor sprayed in one go, between stop lines, in one coat."""

    id: str
    coat: str
    rooms: tuple[str, ...]
    exit: str
    area_m2: float
    order: int
    start_min: float
    end_min: float
    verdict: Verdict
    remedies: tuple[Remedy, ...]
    equivalent_front_m: float
    bound_m: float
    peak_age_min: float
    open_time_min: OpenTime
    bands: tuple[Band, ...]
    refills: tuple[Refill, ...]
    walks: tuple[Walk, ...]
    stop_lines: tuple[StopLine, ...]
    band_m: float | None = None


@dataclass(frozen=True)
class Mix:
    """What is mixed together in one tub: one coat, one cut, one or more fields."""

    id: str
    coat: str
    cut: str
    stain_l: float
    water_l: float
    acid_l: float
    fields: tuple[str, ...]


@dataclass(frozen=True)
class Clock:
    """A wait with its range in minutes; `None` where it does not come to an end."""

    coat: str
    name: str
    low_min: float
    likely_min: float | None
    high_min: float | None
    rank: str
    source: str = ""
    begins_min: float | None = None
    """Minute from which it counts; None: from the end of its coat."""


@dataclass(frozen=True)
class Ground:
    """What the plan rests on: one value, its unit, its rank and where it comes from."""

    name: str
    value: str
    unit: str
    rank: str
    source: str


@dataclass(frozen=True)
class Plan:
    """The whole derived plan."""

    version: int
    job: str
    inputs_hash: str
    starts_at: str
    inputs: PlanInputs
    fields: tuple[Field, ...]
    mixes: tuple[Mix, ...]
    clocks: tuple[Clock, ...]
    cautions: tuple[str, ...]
    grounds: tuple[Ground, ...] = ()
    buying: dict[str, object] | None = None
    warnings: tuple[str, ...] = ()
    go: Go | None = None
