"""What to do now, as nouns: minutes from the plan's start, litres, ranks. No reckoning here."""

from __future__ import annotations

from farwall.facts.plan import Clock
from farwall.facts.so_far import MoreMix
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Condition:
    """One of the things that a field waits for. holds: None where nobody has told or looked."""

    what: str
    text: str
    holds: bool | None


@dataclass(frozen=True)
class LeanStart:
    """How the last field is looked into, by the plan's way.

    It is begun on `begin_l`; before `look_band` tub and tank are read first: with less than
    `keep_l` left there a batch could no longer be boxed in time.
    """

    begin_l: float
    look_band: str
    keep_l: float


@dataclass(frozen=True)
class FirstBatch:
    """What is mixed before a coat is begun, as the plan has it: litres of mix and its parts."""

    litres: float
    stain_l: float
    water_l: float
    acid_l: float
    cut: str


@dataclass(frozen=True)
class StartIf:
    """The next field, and what must hold before it is begun; `lean`: it is looked into."""

    field: str
    rooms: tuple[str, ...]
    conditions: tuple[Condition, ...]
    lean: LeanStart | None = None

    @property
    def open(self) -> bool:
        """Whether nothing that is known stands against it."""
        return all(one.holds is not False for one in self.conditions)


@dataclass(frozen=True)
class Alarm:
    """Something that must be looked at: when at the latest, what to do then."""

    at_min: float
    kind: str
    what: str


@dataclass(frozen=True)
class Advice:
    """What a rule of the day came to. stop: nothing more is sprayed, or sealed, before it is met.

    The higher the weight, the sooner it is told.
    """

    rule: str
    stop: bool
    reason: str
    do: str
    weight: int
    rank: str
    source: str


@dataclass(frozen=True)
class Drunk:
    """What the slab of a coat takes. Litres a square metre; factor: believed over planned.

    seen_factor: used over planned up to the last time that tub and tank were known; None: never.
    last_field, last_l_per_m2: of the last field that was weighed at both its ends.
    """

    planned_l_per_m2: float
    believed_l_per_m2: float
    factor: float
    seen_factor: float | None
    last_field: str = ""
    last_l_per_m2: float | None = None


@dataclass(frozen=True)
class InHand:
    """What is left of the mix. known: from what was entered; else as the plan has it."""

    have_l: float
    tub_l: float | None
    tank_l: float | None
    known: bool


@dataclass(frozen=True)
class LiveClock:
    """A wait with what was seen on the floor counted, beside the plan's own.

    begins_min: when its coat ended there in truth, None while it has not · over: found over, or
    what follows it is begun.
    """

    clock: Clock
    planned: Clock
    begins_min: float | None
    seen: int
    over: bool = False

    @property
    def moved(self) -> bool:
        """Whether anything that was seen has moved it."""
        return self.clock.likely_min != self.planned.likely_min


@dataclass(frozen=True)
class PersonNow:
    """A person whose respirator is entered: minutes of all days and by day, and of the pair on now.

    pair_left_min: by the maker's schedule; None where nobody told it.
    """

    person: str
    respirator_on: bool
    worn_min: float
    worn_by_day: tuple[tuple[str, float], ...]
    pair_min: float
    pair_left_min: float | None


@dataclass(frozen=True)
class Now:
    """Where a day stands at a minute, and what to do.

    field: the one in hand, empty between fields; band: the next to spray. fields_done, fields_left,
    m2_left: of the coat in hand. open_low_min: minutes that an edge may be left, what was seen
    counted. first_batch: while nothing of the coat is mixed or sprayed. chance_short: the budget
    for running dry inside a field of this coat, 0 to 1. stained: whether the log ends the staining
    though the plan has more. us: told in US units, hours by am and pm,
    as the texts in it are.
    """

    at_min: float
    coat: str
    field: str
    band: str
    fields_done: int
    fields_left: int
    m2_left: float
    drunk: Drunk
    in_hand: InHand
    first_batch: FirstBatch | None
    more_mix: MoreMix | None
    chance_short: float
    open_low_min: float
    open_time: LiveClock | None
    waits: tuple[LiveClock, ...]
    alarms: tuple[Alarm, ...]
    start_if: StartIf | None
    advice: tuple[Advice, ...]
    contradictions: tuple[str, ...]
    people: tuple[PersonNow, ...] = ()
    stained: bool = False
    us: bool = True

    @property
    def stops(self) -> tuple[Advice, ...]:
        """What says no."""
        return tuple(one for one in self.advice if one.stop)
