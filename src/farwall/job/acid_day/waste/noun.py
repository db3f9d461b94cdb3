"""What the part on waste water holds. Sentences are in English; doors say them otherwise."""

from __future__ import annotations

from farwall.nouns import dataclass


@dataclass(frozen=True)
class MetalIn:
    """A metal in the rinse water: grams laid, mg/L before anything settles, local limits beside.

    A high end of None: the sheet gives none. `settles`: `falls out`, `much stays` or `stays`, at
    pH 8 to 9 by the sum alone. `against`: `above`, `may be above` or `below` the local limits that
    were read; these bind nobody but those who live under them.
    """

    metal: str
    laid_low_g: float
    laid_high_g: float | None
    low_mg_l: float
    high_mg_l: float | None
    local_low_mg_l: float
    local_high_mg_l: float
    settles: str
    against: str


@dataclass(frozen=True)
class WordSaid:
    """A licensed or official word as told, and what keeps it from being leaned on."""

    way: str
    who: str
    office: str
    on: str
    until: str
    in_writing: bool
    said: str
    faults: tuple[str, ...]


@dataclass(frozen=True)
class Against:
    """A test beside the limits of one word: what may be said, and why."""

    office: str
    word: str
    why: tuple[str, ...]


@dataclass(frozen=True)
class ShareSeen:
    """Share of a metal that washed off, %, as a test of all the water shows it."""

    metal: str
    low_percent: float | None
    high_percent: float | None


@dataclass(frozen=True)
class TestRead:
    """A drum that was tested: beside each word that names a way for it, and by federal rules."""

    __test__ = False

    drum: str
    on: str
    by: str
    against: tuple[Against, ...]
    hazards: tuple[str, ...]
    shares: tuple[ShareSeen, ...]


@dataclass(frozen=True)
class Waste:
    """The waste water of a job. [L, kg, g, mg/L, %]

    `unread`: stains whose list of contents nobody entered. `route`: the way as surveyed; `refusal`:
    why it is none. `asks`: what must be asked before anything leaves. `rests`: value, rank, source.
    """

    area_m2: float = 0.0
    water_low_l: float = 0.0
    water_likely_l: float = 0.0
    water_high_l: float = 0.0
    water_rank: str = ""
    drums_full: int = 0
    drums_spare: int = 0
    drum_holds_l: float = 0.0
    drum_full_kg: float = 0.0
    water_kg: float = 0.0
    washed_off_low_percent: float = 0.0
    washed_off_high_percent: float = 0.0
    washed_off_rank: str = ""
    metals: tuple[MetalIn, ...] = ()
    sludge_low_l: float = 0.0
    sludge_high_l: float | None = None
    unread: tuple[str, ...] = ()
    route: str = ""
    refusal: str = ""
    words: tuple[WordSaid, ...] = ()
    tests: tuple[TestRead, ...] = ()
    chromate: tuple[str, ...] = ()
    chromium: tuple[str, ...] = ()
    dust: tuple[str, ...] = ()
    clear: tuple[str, ...] = ()
    steps: tuple[str, ...] = ()
    asks: tuple[str, ...] = ()
    warnings: tuple[str, ...] = ()
