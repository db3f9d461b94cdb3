"""Sun on the floor as a plan tells it: patches by room and half hour, and what to do about them."""

from __future__ import annotations

from farwall.floor.geometry import PolygonGeometry
from farwall.floor.nouns import Window
from farwall.nouns import dataclass


@dataclass(frozen=True)
class SunPatch:
    """Floor of a room that the sun reaches at some moment between two minutes of the plan."""

    room: str
    from_min: float
    to_min: float
    polygon: PolygonGeometry
    absorbed_w_m2: float


@dataclass(frozen=True)
class SunAdvice:
    """What film or a blanket would do for a field, or an earlier start: both reckoned again.

    `spray_before_min` and `spray_after_min` are the starts nearest to the planned one at which,
    with the windows bare, no edge dies; or, where none dies as planned, a minute more is to spare
    (less where film gives less). None where no hour of the day does.
    """

    field: str
    room: str
    windows: tuple[str, ...]
    cover_by_min: float
    spray_before_min: float | None
    spray_after_min: float | None
    spare_min: float
    spare_covered_min: float
    which: str
    """The windows in words."""
    what: str


@dataclass(frozen=True)
class SunOnFloor:
    """Where the sun falls on the days on which something is sprayed, under a clear sky."""

    patches: tuple[SunPatch, ...]
    advice: tuple[SunAdvice, ...]
    windows: tuple[Window, ...]
    north_deg: float
    rank: str
    source: str
