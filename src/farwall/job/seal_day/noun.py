"""What is told of a seal day beside its plan: the part `sealing` of seal.json."""

from __future__ import annotations

from farwall.facts.plan import Clock
from farwall.floor.geometry import Point
from farwall.job.seal_day.airing import SealAir
from farwall.job.seal_day.ready import Reason
from farwall.nouns import dataclass


@dataclass(frozen=True)
class SealerFacts:
    """The sealer as it was taken: temperatures [°C], humidity [%], margin [K], waits [h]."""

    name: str
    type: str | None
    solvent: bool
    isocyanate: bool | None
    epoxy_amine: bool | None
    coats: int
    m2_per_l: float
    least_slab_c: float
    most_slab_c: float
    most_rh_percent: float
    least_margin_k: float
    recoat_from_h: float
    recoat_to_h: float
    walk_h: float
    furniture_h: float
    told: tuple[str, ...]
    rank: str
    source: str


@dataclass(frozen=True)
class DriedDown:
    """When the floor has dried down (ISO 8601), and the first moment that counted for coat 1."""

    at_low: str | None
    at_likely: str | None
    at_high: str | None
    not_before: str
    asked_from: bool
    rank: str
    source: str


@dataclass(frozen=True)
class Crossing:
    """How far the bands of a field turn from those of the coat below; `why` where they do not."""

    field: str
    over: str
    rooms: tuple[str, ...]
    apart_deg: float | None
    crossed: bool
    why: str


@dataclass(frozen=True)
class CoatHours:
    """One coat: its hours (ISO 8601), the word of the weather over them, litres, containers.

    `open_l`: opened before the first stroke, the gate's reserve in it; `ready_l`: to be at hand,
    enough at the certainty of the job. `recoat` and `abrade`: its clocks, None for the last coat.
    """

    coat: str
    begins_at: str
    ends_at: str
    word: str
    reasons: tuple[str, ...]
    likely_l: float
    open_l: float
    ready_l: float
    open_containers: tuple[dict[str, object], ...]
    at_hand_containers: tuple[dict[str, object], ...]
    recoat: Clock | None
    abrade: Clock | None
    crossings: tuple[Crossing, ...]


@dataclass(frozen=True)
class Patch:
    """The test patch: where, how large [m], when it is laid at the latest and tried (ISO 8601)."""

    room: str
    at: Point
    side_m: float
    whole: bool
    lay_by: str
    wait_low_h: float
    wait_likely_h: float
    wait_high_h: float
    try_at: str
    how: str
    rank: str


@dataclass(frozen=True)
class Barrier:
    """A way in that is barred from the first stroke until shoes may go there (ISO 8601)."""

    exit: str
    opening: str
    from_at: str
    socks_at: str
    shoes_at: str
    how: str


@dataclass(frozen=True)
class SealWindow:
    """A stretch of hours of one word (ISO 8601)."""

    starts_at: str
    ends_at: str
    word: str
    reasons: tuple[str, ...]


@dataclass(frozen=True)
class Sealing:
    """All that is told of a seal day beside its plan.

    `verdict`: no, go with or go. `against`: why no hours hold all coats, empty where some do.
    """

    verdict: str
    against: tuple[str, ...]
    reasons: tuple[Reason, ...]
    sealer: SealerFacts
    dried_down: DriedDown
    coats: tuple[CoatHours, ...]
    test_patch: Patch
    barriers: tuple[Barrier, ...]
    air: tuple[SealAir, ...]
    windows: tuple[SealWindow, ...]
    notes: tuple[str, ...]
