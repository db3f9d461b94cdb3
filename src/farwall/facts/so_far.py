"""The day so far: what is sprayed and when, what is left, who stands where.

`SoFar` is what somebody tells in mid-day, with as little as will do. `Past` is what
became of it: every moment settled, written into the plan of the rest and never changed again.
"""

from __future__ import annotations

from typing import Annotated, Literal

from annotated_types import Ge, Le, MinLen

from farwall.floor.geometry import Point
from farwall.nouns import dataclass

SO_FAR_VERSION = 1

HowMixed = Literal["nothing", "boxed", "fresh", "no", "look"]
"""boxed: poured together with all that is left · fresh: a mix of its own, begun behind a closed
leaf · no: neither can be done without a change of shade that is seen · look: nothing yet, tub and
tank are looked at before a band, with `latest_at_l` or more one goes on."""


@dataclass(frozen=True)
class Done:
    """A band, or a whole field, that is sprayed; without minutes it was done as planned."""

    id: Annotated[str, MinLen(1)]
    start_min: Annotated[float, Ge(0)] | None = None
    end_min: Annotated[float, Ge(0)] | None = None


@dataclass(frozen=True)
class ClosedRoom:
    """A room in which somebody stands who must not be sprayed in nor shut in; None: all day."""

    room: Annotated[str, MinLen(1)]
    until_min: Annotated[float, Ge(0)] | None = None


@dataclass(frozen=True)
class SoFar:
    """What is told of a day at a minute of it.

    Neither `done` nor `done_up_to`: all went as planned until now, unless `nothing_done`.
    `done_up_to` is the last band done: it and every band planned before it. `in_hand` is a
    band begun and not yet finished. What is left out (None) is as planned.
    """

    at_min: Annotated[float, Ge(0)]
    done: tuple[Done, ...] = ()
    done_up_to: str | None = None
    in_hand: Done | None = None
    at: Point | None = None
    tank_l: Annotated[float, Ge(0)] | None = None
    tub_l: Annotated[float, Ge(0)] | None = None
    mixed_l: Annotated[float, Ge(0)] | None = None
    closed: tuple[ClosedRoom, ...] = ()
    at_2: Point | None = None
    """Where two spray: of the second, as `at` and `tank_l` are of the first."""
    tank_2_l: Annotated[float, Ge(0)] | None = None
    sprayers: Annotated[int, Ge(1), Le(2)] | None = None
    """1: the second leaves, and the rest is for the first alone."""
    nothing_done: bool = False
    """Nothing is sprayed yet, whatever the plan has by now."""
    version: int = SO_FAR_VERSION


@dataclass(frozen=True)
class BandDone:
    """A band of the past with its minutes, fixed."""

    id: str
    start_min: float
    end_min: float


@dataclass(frozen=True)
class LeftField:
    """A field that is left for another day, and why; as it was planned it stands in `left`."""

    field: str
    why: str


@dataclass(frozen=True)
class MoreMix:
    """Whether more has to be mixed, how much, how, and before which band at the latest.

    `latest_at_l`: what must then still be in tub and tank together, to be poured into the new.
    """

    how: HowMixed
    litres: float
    before_field: str
    before_band: str
    latest_at_l: float
    have_l: float
    why: str


@dataclass(frozen=True)
class Past:
    """The settled past of a plan that was made in mid-day.

    `past_hash` is the SHA-256 of the canonical JSON (RFC 8785) of all other keys
    here and of the bands done as they stand in the plan: who changes either is seen.
    """

    at_min: float
    coat: str
    done: tuple[BandDone, ...]
    at: Point
    tank_l: float
    tub_l: float | None
    closed: tuple[ClosedRoom, ...]
    left: tuple[LeftField, ...]
    past_hash: str
    at_2: Point | None = None
    """Where two spray, or did: of the second sprayer, as `at` and `tank_l` are of the first."""
    tank_2_l: float | None = None
    sprayers: int | None = None
    """How many spray from now on, where the crew is of two."""


@dataclass(frozen=True)
class StopAt:
    """Where to stop soon: nothing is open, a line that hides the seam, or where to feather.

    `minutes`, `litres` and `fills` until there, `bands` those to do; `seam_m` of front that will
    show; `remains` the rooms with floor still to do. `then_line` is the next line that
    hides the seam, reached in `then_min` when there is more time; empty and None when none is.
    """

    how: Literal["nothing open", "line", "feather"]
    field: str
    line: str
    kind: str
    bands: tuple[str, ...]
    minutes: float
    litres: float
    fills: int
    seam_m: float
    room: str
    at: Point | None
    remains: tuple[str, ...]
    then_line: str = ""
    then_min: float | None = None
