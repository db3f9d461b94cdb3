"""The fumes of a day as nouns of plain values. Minutes are those of the plan; ppm unless told."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.nouns import dataclass


@dataclass(frozen=True)
class Range:
    """A figure with its ends: what is not known was tried high and low, and added in squares."""

    low: float
    likely: float
    high: float


@dataclass(frozen=True)
class Below:
    """From which minute on the air stays below a limit; None: not within two days."""

    limit: str
    likely_min: float | None
    high_min: float | None


@dataclass(frozen=True)
class At:
    """What the air holds at a minute, ppm."""

    at_min: float
    low: float
    likely: float
    high: float


@dataclass(frozen=True)
class RoomFumes:
    """One room: its greatest ppm, when, the greatest mean over 15 minutes, when it is clear."""

    room: str
    name: str
    volume_m3: float
    sprayed: bool
    peak_ppm: Range
    peak_at_min: float
    mean_15_ppm: Range
    below: tuple[Below, ...]
    curve: tuple[At, ...]


@dataclass(frozen=True)
class Sprayer:
    """Who sprays, over the fresh film: the greatest mean over 15 minutes, the mean of the day."""

    minutes: float
    mean_15_ppm: Range
    mean_8_h_ppm: Range


@dataclass(frozen=True)
class Way:
    """A way to let the house stand, and the greatest ppm of any room then.

    clear_min: minutes after the last stroke until every room stays below the hygienists' ceiling.
    """

    key: str
    stands: bool
    fans: int
    air_changes_h: float
    peak_ppm: Range
    clear_min: float | None


@dataclass(frozen=True)
class AirNeeded:
    """Air that holds the mean over 15 minutes at a limit, however much the film then gives off.

    mixing: how many times the air of a well-mixed house is asked for.
    """

    limit: str
    release_g_min: Range
    mixing: float
    flow_m3_h: Range
    flow_cfm: Range
    air_changes_h: Range


@dataclass(frozen=True)
class Unknown:
    """What the figure rests on, and how far it alone moves the likely peak. From, to: ppm."""

    key: str
    low: float
    likely: float
    high: float
    unit: str
    rank: str
    source: str
    peak_from_ppm: float
    peak_to_ppm: float


@dataclass(frozen=True)
class KeptOut:
    """After a coat: until which minute the house is above a limit, likely and at the high end.

    None: not before `next_min`, when the next coat begins, or within two days after the last one.
    """

    coat: str
    ends_min: float
    limit: str
    likely_min: float | None
    high_min: float | None
    next_min: float | None = None


@dataclass(frozen=True)
class Chromate:
    """Mist of chromate where somebody sprays: µg/m³ of chromium VI, while spraying and by the day.

    told: whether the sheet's share of chromate was told; else it is a guess.
    """

    coats: tuple[str, ...]
    told: bool
    while_spraying_ug_m3: Range
    mean_8_h_ug_m3: Range
    limit_ug_m3: float
    action_ug_m3: float
    rank: str


@dataclass(frozen=True)
class Ammonia:
    """Ammonia told as neutraliser: over its wash water, and in the house as it stands."""

    over_liquid_ppm: Range
    in_house_ppm: Range
    flow_m3_h: float
    limit: str
    rank: str


@dataclass(frozen=True)
class LimitTold:
    """A limit as it is shown beside the figures."""

    key: str
    by: str
    kind: str
    ppm: float | None
    mg_m3: float
    year: int | None
    rank: str
    year_rank: str
    source: str


@dataclass(frozen=True)
class Fumes:
    """The fumes of a planned day; `rooms` empty where they could not be reckoned (`warnings`).

    acid_g: HCl that is laid, likely · to_air_percent: share of it that comes into the air.
    temperature_c, standing: what was taken of slab and house.
    """

    rooms: tuple[RoomFumes, ...] = ()
    sprayer: Sprayer | None = None
    ways: tuple[Way, ...] = ()
    needed: AirNeeded | None = None
    kept_out: tuple[KeptOut, ...] = ()
    unknowns: tuple[Unknown, ...] = ()
    limits: tuple[LimitTold, ...] = ()
    chromate: Chromate | None = None
    ammonia: Ammonia | None = None
    acid_g: float | None = None
    to_air_percent: Range | None = None
    temperature_c: float | None = None
    standing: str = ""
    air_changes_h: float | None = None
    rank: str = "guess"
    source: str = ""
    starts_at: str = ""
    warnings: tuple[str, ...] = ()


def worst_of(peaks: Sequence[Range]) -> int:
    """Which of the rooms is the worst: by its high end as it is told, then by its likely.

    One rule for the run sheet and the pages of acid, so that both name the same room.
    """
    return max(range(len(peaks)), key=lambda n: (peaks[n].high, peaks[n].likely, -n))
