"""What was answered on the phone, and what it comes to. Plain values; None where nobody asked."""

from __future__ import annotations

from typing import Literal

from farwall.nouns import dataclass

SlabIs = Literal["not poured", "new", "old"]
LiesOnIt = Literal["bare", "carpet", "glue", "black mastic", "vinyl tile", "old paint"]
FilmOnIt = Literal["nothing", "removed", "cure", "cure and seal", "sealer", "paint", "unknown"]
Overlay = Literal["none", "leveller", "overlay"]
Acid = Literal["nowhere", "part", "whole"]
Trades = Literal["closed", "zones", "overhead"]
Way = Literal["sewer", "sewer in writing", "drums", "hauled", "septic", "storm drain", "no way"]
Household = Literal["nobody", "goes out", "stays"]
Work = Literal["one colour", "cuts and colours", "several colours", "stencil"]
Colour = Literal["range", "uniform", "chart"]
Word = Literal["decline", "visit", "fine", "open"]
Verdict = Literal["decline", "visit", "range"]


@dataclass(frozen=True)
class Enquiry:
    """Twelve answers, and what the caller wishes for: `area_m2`, `work`, `colour_wanted`.

    slab_age_days: as of today · needed_in_days: days from today until the floor is to be used ·
    pours: how many, additions and trenches counted · circuits: of 20 A, for the finisher alone ·
    household: who lives there while it is done · least: smallest job that the firm takes, as text.
    """

    slab: SlabIs | None = None
    slab_age_days: float | None = None
    covering: LiesOnIt | None = None
    film: FilmOnIt | None = None
    acid_before: Acid | None = None
    overlay: Overlay | None = None
    heated: bool | None = None
    pours: int | None = None
    trades: Trades | None = None
    needed_in_days: float | None = None
    water: bool | None = None
    circuits: int | None = None
    heat: bool | None = None
    waste: Way | None = None
    household: Household | None = None
    plants: bool | None = None
    area_m2: float | None = None
    work: Work | None = None
    colour_wanted: Colour | None = None
    least: str | None = None


@dataclass(frozen=True)
class Found:
    """What an answer came to. `question`: 1 to 12, 0 for a wish.

    word: `decline` as it stands, `visit` must be looked at or priced, `open` was not answered ·
    change: what would change it, or what is done with it.
    """

    question: int
    about: str
    word: Word
    reason: str
    change: str
    rank: str
    source: str


@dataclass(frozen=True)
class RoughPart:
    """A published price that the range is made of, or stands beside: for one square foot.

    used: whether it is in the range, or shown beside it because texts differ.
    """

    what: str
    low: str
    high: str
    used: bool
    rank: str
    source: str


@dataclass(frozen=True)
class RoughRange:
    """A rough range in whole money, and what it is made of. `priced_ft2`: the area that is priced.

    `floor`: why a small floor is priced as a larger one; empty where it is not.
    """

    currency: str
    low: str
    high: str
    area_ft2: float
    priced_ft2: float
    floor: str
    parts: tuple[RoughPart, ...]


@dataclass(frozen=True)
class Answer:
    """What the call comes to. A range may stand beside a visit; never beside a decline."""

    verdict: Verdict
    words: str
    found: tuple[Found, ...]
    rough: RoughRange | None
    warnings: tuple[str, ...]
