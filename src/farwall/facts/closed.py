"""What one closed job tells: figures that lessons are made of, however its log was kept.

SI. All but the job's own id and date may be missing: a job tells what it tells.
"""

from __future__ import annotations

from dataclasses import field
from typing import Annotated, Literal

from annotated_types import Ge, Gt, Le, MaxLen, MinLen

from farwall.facts.job import Finish
from farwall.nouns import dataclass

_Positive = Annotated[float, Gt(0), Le(1e6)]
_NotNegative = Annotated[float, Ge(0), Le(1e6)]
_Share = Annotated[float, Ge(0), Le(1)]
_Word = Annotated[str, MinLen(1), MaxLen(80)]

CLOSED_VERSION = 1
MOST_PEOPLE, MOST_STEPS = 50, 20
"""Hands on one task, and steps of the sample scale, that are believed: more is a slip. Guesses."""

ClockName = Literal[
    "open time",
    "dry to recoat",
    "dry to neutralise",
    "dry-down before sealing",
    "next coat of sealer",
]
TaskName = Literal[
    "protect", "clean", "mask", "coat", "judge", "neutralise", "rinse", "seal", "finish",
    "hand-over", "other",
]  # fmt: skip
Look = Literal["lighter", "right", "darker"]


@dataclass(frozen=True)
class Sprayed:
    """One field in one coat: what it was to take, what it took, by whom, in how many minutes.

    number: 1 for the first coat of the floor, 2 for the next. planned_l: what the plan in hand
    said just before it was begun. sampled: whether that plan rested on a sample of this slab.
    spray_min: minutes of spraying, without walks, fillings and waiting.
    """

    coat: _Word
    field: _Word
    area_m2: _Positive
    used_l: _Positive
    planned_l: _Positive | None = None
    number: Annotated[int, Ge(1), Le(20)] = 1
    sampled: bool = False
    finish: Finish | None = None
    drop_s: _Positive | None = None
    person: Annotated[str, MaxLen(80)] = ""
    spray_min: _Positive | None = None
    stain: Annotated[str, MaxLen(80)] = ""
    lot: Annotated[str, MaxLen(80)] = ""


@dataclass(frozen=True)
class WaitSeen:
    """A wait that was watched: the share of the usual wait, at its own conditions, that had passed.

    As `air.learned.Watched`: ended False when it was not over yet; since, the share at the last
    look that found it unended, 0 when the end itself was seen.
    """

    clock: ClockName
    share: _Positive
    ended: bool = True
    since: _NotNegative = 0.0
    room: Annotated[str, MaxLen(80)] = ""


@dataclass(frozen=True)
class TaskHours:
    """Hours of all hands together on one task, over so much floor; people: how many hands."""

    task: TaskName
    hours: _Positive
    area_m2: _Positive
    people: Annotated[int, Ge(1), Le(MOST_PEOPLE)] | None = None


@dataclass(frozen=True)
class Rinsed:
    """How many rinses it took until the rag was clean."""

    rounds: Annotated[int, Ge(1), Le(50)]
    finish: Finish | None = None
    room: Annotated[str, MaxLen(80)] = ""


@dataclass(frozen=True)
class ColourSeen:
    """The wet look against the sample, with the plant that the concrete came from.

    by_steps: by how many steps of the sample scale it was off; None when that was not told.
    """

    look: Look
    by_steps: Annotated[float, Ge(0), Le(MOST_STEPS)] | None = None
    plant: Annotated[str, MaxLen(80)] = ""
    coat: Annotated[str, MaxLen(80)] = ""


@dataclass(frozen=True)
class StainSeen:
    """How strong the samples of a job found a stain, by its name.

    strength: K/S that a litre of it on a square metre adds in long, middle and short waves (the
    channels of `colour.channels`) · samples: how many patches told of it.
    """

    stain: _Word
    strength: tuple[_Positive, _Positive, _Positive]
    samples: Annotated[int, Ge(1), Le(10_000)] = 1


@dataclass(frozen=True)
class CallBack:
    """The client called after hand-over: what for, and the hours it took.

    cause: what it was found to be, by its name in `CALL_BACK_CAUSES`; empty while nobody said ·
    for_it: by kind of sign that the job's records have, 1 where it spoke for that cause, else 0 ·
    for_others: the share of all other causes that it spoke for.
    """

    what: _Word
    hours: _NotNegative | None = None
    cause: Annotated[str, MaxLen(40)] = ""
    for_it: dict[str, _Share] = field(default_factory=dict)
    for_others: dict[str, _Share] = field(default_factory=dict)


@dataclass(frozen=True)
class ClosedJob:
    """What one closed job tells. `closed_on`: date of hand-over, ISO 8601 (2027-05-14)."""

    version: Literal[1]
    id: _Word
    closed_on: Annotated[str, MinLen(1), MaxLen(40)]
    name: Annotated[str, MaxLen(200)] = ""
    sprayed: tuple[Sprayed, ...] = ()
    waits: tuple[WaitSeen, ...] = ()
    hours: tuple[TaskHours, ...] = ()
    rinsed: tuple[Rinsed, ...] = ()
    colour: tuple[ColourSeen, ...] = ()
    called_back: tuple[CallBack, ...] = ()
    stains: tuple[StainSeen, ...] = ()
