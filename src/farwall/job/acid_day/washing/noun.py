"""The wash day as nouns: plain values, SI, ranges of three ends."""

from __future__ import annotations

from farwall.acid.rinse_belief import More
from farwall.evidence import Span
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Ends:
    """Low, likely and high in one unit; None where that end is not reached."""

    low: float | None
    likely: float | None
    high: float | None

    @property
    def three(self) -> tuple[float | None, float | None, float | None]:
        """The three in this order."""
        return self.low, self.likely, self.high


def ends_of(told: Span | More) -> Ends:
    """A range that has all its ends."""
    return Ends(told.low, told.likely, told.high)


@dataclass(frozen=True)
class SoFar:
    """What the log tells of a room's rinsing, and what it asks for next.

    `verdict`: read, rinse, scrub, new concrete or enough; `more`: rinses, None where none or not
    known. `rag`, `phs` of the last rinse; `powder`: of the dry swipe.
    """

    rinses: int
    phs: tuple[float, ...]
    rag: str
    powder: bool | None
    verdict: str
    why: str
    do: str
    more: Ends | None


@dataclass(frozen=True)
class WashRoom:
    """A room of the wash day. Areas m², lengths m, litres, minutes, hours of work.

    `way`: the room or way out that one backs into, an id; `wet_m2`: floor to wet at once for a
    scrub, `rinse_m2` for a rinse, so that it is taken up in half the time in which a thin film may
    dry (`dries_min`; None: it does not). `lanes_first` run along `runs`, `lanes_second` across.
    `edge_h` lies within `work_h`. `strips`: pH readings after the last rinse.
    """

    room: str
    name: str
    order: int
    way: str
    way_name: str
    area_m2: float
    edge_m: float
    runs: str
    lanes_first: int
    lanes_second: int
    rinse_l: Ends
    water_l: Ends
    dries_min: float | None
    wet_m2: float
    rinse_m2: float
    scrub_min: Ends
    vacuum_min: Ends
    work_h: Ends
    edge_h: Ends
    strips: int
    so_far: SoFar


@dataclass(frozen=True)
class DrumsTold:
    """Drums for the water of the day: how many, what one weighs full, where they may stand.

    `enough`: whether so many are there, None where nobody said. `van_full`: full ones that the van
    carries at once. `square_m`: side of the floor that each wants, `floor`: fine, spread, ask or no
    (more than the floor bears). `room`: the room of the plan that `at` names, empty where none.
    """

    size_l: float
    holds_l: float
    full: int
    full_high: int
    spares: int
    full_kg: float
    under_kg_m2: float
    had: int | None
    enough: bool | None
    van_full: int | None
    square_m: float | None
    floor: str
    at: str
    room: str


@dataclass(frozen=True)
class WashDay:
    """The wash day: when, in which order, with how much water, and what is asked after a rinse.

    `begins`, `ends`: minutes from the plan's start, `begins_at`: the same in ISO 8601, empty where
    an end is not reached. `least_ph`, `most_ph`: what passes. `people`: hands that `hours` (on the
    clock) are reckoned with. `more_than_a_day`: it does not fit one working day.
    """

    begins: Ends = Ends(None, None, None)
    begins_at: tuple[str, str, str] = ("", "", "")
    rooms: tuple[WashRoom, ...] = ()
    water_from: str = ""
    rinses_l: Ends = Ends(None, None, None)
    scrub_l: Ends = Ends(None, None, None)
    all_l: Ends = Ends(None, None, None)
    rinses: Ends = Ends(None, None, None)
    drums: DrumsTold | None = None
    base: str = ""
    base_g_l: tuple[float, float] | None = None
    tap_ph: float | None = None
    unstained_ph: float | None = None
    least_ph: float = 7.0
    most_ph: float = 9.0
    people: int = 1
    work_h: Ends = Ends(None, None, None)
    hours: Ends = Ends(None, None, None)
    more_than_a_day: bool = False
    hepa: bool = False
    ground_fault: bool | None = None
    grounds: tuple[tuple[str, str, str, str], ...] = ()
    warnings: tuple[str, ...] = ()
