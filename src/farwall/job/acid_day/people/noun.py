"""People of an acid day as nouns: plain values, minutes from the plan's start."""

from __future__ import annotations

from typing import Literal

from farwall.nouns import dataclass

Duty = Literal["mixes", "sprays", "helps", "scrubs", "seals", "stands by"]
Word = Literal["may", "not yet", "nobody told"]


@dataclass(frozen=True)
class Looked:
    """One thing looked at for a person: `in order`, `missing` or `not told`, and why."""

    item: str
    state: str
    why: str
    source: str


@dataclass(frozen=True)
class DutyWord:
    """Whether a person may do one thing today; why not, or what nobody told."""

    duty: Duty
    word: Word
    why: tuple[str, ...] = ()


@dataclass(frozen=True)
class CartridgeDay:
    """The pair in use over the planned spraying. None: nobody told the maker's schedule.

    change_by_min: the minute of the plan at which the schedule ends, None where it lasts the day.
    """

    change_after_min: float | None
    used_min: float
    planned_min: float
    left_min: float | None
    change_by_min: float | None
    change_by_at: str = ""


@dataclass(frozen=True)
class Person:
    """One of the crew: a word for each duty, everything that was looked at once, cartridges.

    holds_ppm, holds_hygienists_ppm, factor: what the respirator may be asked to hold back by the
    legal and by the hygienists' ceiling, and by how many times it lessens; None where it is not
    told or the duty needs none.
    """

    id: str
    name: str
    duties: tuple[DutyWord, ...]
    looked: tuple[Looked, ...]
    respirator: str = ""
    gloves: str = ""
    spraying_min: float = 0.0
    cartridge: CartridgeDay | None = None
    factor: float | None = None
    holds_ppm: float | None = None
    holds_hygienists_ppm: float | None = None


@dataclass(frozen=True)
class LookIn:
    """One look at who sprays: minute, moment. last: when the coat is done and they come out."""

    at_min: float
    at: str
    coat: str
    last: bool = False


@dataclass(frozen=True)
class KeepOut:
    """Until when everybody else stays out. None, empty: not in sight.

    rinsed: end of the last rinse; free: aired `aired_min` after it. Ends: likely and late.
    """

    who: tuple[str, ...]
    from_at: str
    rinsed_likely_min: float | None
    rinsed_late_min: float | None
    free_likely_at: str
    free_late_at: str
    aired_min: float
    rank: str
    source: str


@dataclass(frozen=True)
class FirstAid:
    """What to do at once for one kind of harm, in plain words."""

    harm: str
    do: str


@dataclass(frozen=True)
class Number:
    """A number or place that the firm entered itself; empty where it did not."""

    what: str
    value: str


@dataclass(frozen=True)
class People:
    """People of the acid day. stops: what keeps the day from beginning as it is told.

    look_in_rank: of the minutes between two looks; spray_spells_min: begin and end of each time
    that somebody is inside to spray.
    """

    people: tuple[Person, ...] = ()
    stands_by: tuple[str, ...] = ()
    look_in_min: float = 15.0
    look_in_rank: str = ""
    look_in_source: str = ""
    look_ins: tuple[LookIn, ...] = ()
    spray_spells_min: tuple[tuple[float, float], ...] = ()
    eyewash_at: str = ""
    keep_out: KeepOut | None = None
    first_aid: tuple[FirstAid, ...] = ()
    numbers: tuple[Number, ...] = ()
    stops: tuple[str, ...] = ()
    warnings: tuple[str, ...] = ()
