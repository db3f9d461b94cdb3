"""Nouns of the calendar: steps of a house, waits, hours ahead, crews, and what came out.

Times are minutes from `begins`, the midnight before the first day, on the
clock of the site; dates are whole days from there.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from datetime import datetime
from typing import Literal

from farwall.evidence import Rank, Span
from farwall.nouns import dataclass

Place = Literal["any", "coat", "rinse", "seal"]
"""When a step may be done: in working hours; while the slab lets stain; till evening; in a
window for sealer."""
Pace = Literal["film", "slab", "sealer", "clock"]
"""What hurries a wait: air over a film; air and slab; air over sealer; nothing."""


@dataclass(frozen=True)
class Wait:
    """Minutes of a mild day that must pass before a step, and the longest it may wait."""

    name: str
    minutes: Span
    pace: Pace
    longest_min: float | None = None


@dataclass(frozen=True)
class Step:
    """One task of the chain: `labour_h` of people at 1,500 ft², and what it waits for.

    `split`: may be left at night and gone on with. Waits count from the end
    of the step before. `not_before_min`: it is not begun before, from `begins`.
    """

    id: str
    name: str
    labour_h: Span
    place: Place
    split: bool
    waits: tuple[Wait, ...] = ()
    not_before_min: float | None = None


@dataclass(frozen=True)
class HourAhead:
    """One hour on site: whether stain or sealer may go down, and how fast waits run.

    A pace of 1 is the mild day; `wet` says that it rains or that doors are shut. `clock`: hours
    that pass in it, 1 but where the clock is put forward (0) or back (2).
    """

    coat: bool
    seal: bool
    film: float
    slab: float
    sealer: float
    wet: bool = False
    clock: float = 1.0


MILD_HOUR = HourAhead(coat=True, seal=True, film=1.0, slab=1.0, sealer=1.0)


@dataclass(frozen=True)
class Ahead:
    """Hours from `begins` on; `rank` and `source` say what they rest on.

    `coat_lost`, `seal_lost`: for each day the chance that it is lost, empty when not known.
    """

    begins: datetime
    hours: tuple[HourAhead, ...]
    rank: Rank
    source: str
    coat_lost: tuple[float, ...] = ()
    seal_lost: tuple[float, ...] = ()

    @property
    def days(self) -> int:
        """Whole days that are told."""
        return len(self.hours) // 24


@dataclass(frozen=True)
class DayCrew:
    """A van with its people; one of them judges colour."""

    id: str
    people: int = 2


@dataclass(frozen=True)
class Away:
    """A day on which another trade has the house: `day` from `begins`."""

    house: str
    trade: str
    day: int


@dataclass(frozen=True)
class House:
    """A house to be done: net area, coats, the day it is free and the day it is due (from 0).

    `seal_coats`: of sealer, before the finish. `waits`: by the id of the step that
    they hold back, where they differ from the usual ones. `ahead`: its own hours
    (heated, its sealer, its windows), else those of the question.
    """

    id: str
    name: str
    area_m2: float
    coats: int = 2
    free_from_day: int = 0
    due_day: int | None = None
    seal_coats: int = 2
    waits: Mapping[str, tuple[Wait, ...]] = field(default_factory=dict)
    ahead: Ahead | None = None
    labour_h: tuple[tuple[str, Span], ...] = ()
    """Hours at 1,500 ft² by step, `coat` and `seal` for one coat: what closed jobs taught."""
    not_before_min: tuple[tuple[str, float], ...] = ()
    """Minutes from `begins` before which a step, by its id, is not begun: a plan has its hours."""


@dataclass(frozen=True)
class Before:
    """What a house had in an earlier answer: its crew and the minute each step began."""

    crew: str
    starts_min: dict[str, float]


@dataclass(frozen=True)
class Question:
    """Everything that a calendar depends on."""

    houses: tuple[House, ...]
    crews: tuple[DayCrew, ...]
    ahead: Ahead
    away: tuple[Away, ...] = ()
    before: dict[str, Before] = field(default_factory=dict)

    def ahead_of(self, house: House) -> Ahead:
        """The hours that a house has: its own, else those of all."""
        return self.ahead if house.ahead is None else house.ahead


@dataclass(frozen=True)
class Placed:
    """A step with its likely times, and how early or late its end may fall. [min]

    `minutes` is the work in it; `wait` names what was waited for longest.
    """

    id: str
    name: str
    start_min: float
    end_min: float
    minutes: float
    place: Place
    split: bool
    end_low_min: float
    end_high_min: float | None
    wait: str = ""
    ready_min: float | None = None


@dataclass(frozen=True)
class HouseDays:
    """One house in the calendar: its crew, its steps, and the lock on other trades. [min]

    `lock_end_high_min`: the end of the lock where all goes ill, None when that has no end.
    """

    house: House
    crew: DayCrew
    steps: tuple[Placed, ...]
    lock_start_min: float
    lock_end_min: float
    lock_end_high_min: float | None
    lost_chance: float | None
    late_days: int

    @property
    def last_day(self) -> int:
        """The day of the last step, from 0."""
        return int(self.steps[-1].end_min // 1440)


@dataclass(frozen=True)
class Proof:
    """What an answer costs and what none can undercut. [days, summed over houses]

    Holds for starts at morning or noon, and coats and sealer held back as was offered.
    """

    cost_days: float
    bound_days: float
    columns: int
    method: str

    @property
    def gap_percent(self) -> float:
        """How much better another answer might be, at most."""
        return 100.0 * max(0.0, self.cost_days - self.bound_days) / max(self.cost_days, 1e-9)


@dataclass(frozen=True)
class Calendar:
    """The answer: every house placed, with its proof; houses by the day they begin."""

    question: Question
    houses: tuple[HouseDays, ...]
    proof: Proof
