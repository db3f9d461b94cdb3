"""What the entries of a log come to: nouns, no reckoning. Minutes count from the plan's start."""

from __future__ import annotations

from collections.abc import Mapping

from farwall.facts.job import Sighting
from farwall.facts.plain import Plain
from farwall.nouns import dataclass

_HAIR_L = 0.05
"""A slip of reading a scale is no contradiction. Rank: guess."""


@dataclass(frozen=True)
class Happened:
    """An entry in its place: its minute by the corrected clock.

    off_min: by how much its own clock was put right, 0 when it was taken as it is.
    """

    id: str
    word: str
    at_min: float
    about: Mapping[str, Plain]
    who: str = ""
    device: str = ""
    off_min: float = 0.0

    def text(self, key: str) -> str:
        """A text or id that it carries, empty when it does not."""
        value = self.about.get(key)
        return value if isinstance(value, str) else ""

    def number(self, key: str) -> float | None:
        """A number that it carries, None when it does not."""
        value = self.about.get(key)
        known = isinstance(value, int | float) and not isinstance(value, bool)
        return float(value) if known else None  # type: ignore[arg-type]


@dataclass(frozen=True)
class Sprayed:
    """A band that is done. told: its end was entered; else it lies between told ones as planned."""

    band: str
    start_min: float
    end_min: float
    told: bool


@dataclass(frozen=True)
class Level:
    """A moment at which all that is left was known: tub and tanks. Litres.

    mixed_l: what was entered as mixed for the coat by then · bands, planned_l, area_m2: how many
    bands of the coat were done, what the plan had for them, and their floor.
    """

    at_min: float
    mixed_l: float
    tub_l: float
    tank_l: float
    bands: int
    planned_l: float
    area_m2: float

    @property
    def hand_l(self) -> float:
        """What is left, in tub and tanks together."""
        return self.tub_l + self.tank_l


@dataclass(frozen=True)
class FieldStory:
    """A field that is begun: its bands done in order. end_min: None while some are to do.

    used_l: what it took, where tub and tank were known at both its ends; None where not.
    """

    field: str
    coat: str
    start_min: float
    end_min: float | None
    bands: tuple[Sprayed, ...]
    area_m2: float
    planned_l: float
    used_l: float | None = None

    @property
    def l_per_m2(self) -> float | None:
        """Litres a square metre that it took."""
        return None if self.used_l is None or self.area_m2 <= 0 else self.used_l / self.area_m2


@dataclass(frozen=True)
class CoatStory:
    """A coat so far. mixed_l, filled_l: None when none was entered; tub_l, tank_l: None, unknown.

    end_min: when its last band was done, None while some are to do. left_over_l: as entered.
    used_l: taken so far, known only where mixing, tub and tank were entered. tub_look: the last
    time that the tub alone was told, later than any level; what tanks held then is 0 there.
    """

    coat: str
    start_min: float | None
    end_min: float | None
    fields: tuple[FieldStory, ...]
    mixed_l: float | None
    filled_l: float | None
    tub_l: float | None
    tank_l: float | None
    levels: tuple[Level, ...]
    left_over_l: float | None = None
    tub_look: Level | None = None

    @property
    def done(self) -> tuple[Sprayed, ...]:
        """All its bands that are done, in order."""
        every = [band for field in self.fields for band in field.bands]
        return tuple(sorted(every, key=lambda one: (one.end_min, one.start_min, one.band)))

    @property
    def used_l(self) -> float | None:
        """Litres taken up to the last level; None where more is left there than was mixed."""
        if self.mixed_l is None or not self.levels:
            return None
        used = self.levels[-1].mixed_l - self.levels[-1].hand_l
        return used if used > -_HAIR_L else None

    @property
    def l_per_m2(self) -> float | None:
        """Litres a square metre up to the last level."""
        used = self.used_l
        if used is None or self.levels[-1].area_m2 <= 0:
            return None
        return used / self.levels[-1].area_m2


@dataclass(frozen=True)
class Reading:
    """Slab and air as measured at a minute; None: not measured then."""

    at_min: float
    room: str
    slab_c: float | None
    air_c: float | None
    rh_percent: float | None
    air_speed_m_s: float | None
    tile_kg_m2_h: float | None = None


@dataclass(frozen=True)
class Seen:
    """A wait that was looked at, as the clocks take it, and when it was looked at."""

    at_min: float
    sighting: Sighting


@dataclass(frozen=True)
class Closed:
    """A room that is closed, from when, until when if that was told; free_min: freed again."""

    room: str
    from_min: float
    until_min: float | None
    free_min: float | None
    why: str = ""

    def holds(self, at_min: float) -> bool:
        """Whether somebody is still to be reckoned with in it at that minute."""
        ends = [one for one in (self.until_min, self.free_min) if one is not None]
        return self.from_min <= at_min and all(at_min < one for one in ends)


@dataclass(frozen=True)
class Story:
    """A job's day or days as entered, in order; what was struck beside it, what cannot be so.

    doubled: what another phone had told already, so that it does not count again.
    The same entries tell the same story in whatever order and however often they came.
    """

    starts_at: str
    happened: tuple[Happened, ...] = ()
    struck: tuple[Happened, ...] = ()
    doubled: tuple[Happened, ...] = ()
    coats: tuple[CoatStory, ...] = ()
    readings: tuple[Reading, ...] = ()
    closed: tuple[Closed, ...] = ()
    sightings: tuple[Seen, ...] = ()
    hours_h: Mapping[str, float] | None = None
    contradictions: tuple[str, ...] = ()

    def of(self, *words: str) -> tuple[Happened, ...]:
        """What happened of these words, in order."""
        return tuple(one for one in self.happened if one.word in words)

    def last(self, *words: str) -> Happened | None:
        """The last thing of these words, None when there is none."""
        found = self.of(*words)
        return found[-1] if found else None

    def coat(self, coat: str) -> CoatStory | None:
        """The coat of that id, None when nothing of it was entered."""
        return next((one for one in self.coats if one.coat == coat), None)

    def done(self) -> dict[str, Sprayed]:
        """Every band that is done, by id."""
        return {band.band: band for coat in self.coats for band in coat.done}

    def closed_at(self, at_min: float) -> tuple[Closed, ...]:
        """Rooms closed at that minute, each once, the last word on it."""
        last = {one.room: one for one in self.closed if one.from_min <= at_min}
        return tuple(one for one in last.values() if one.holds(at_min))

    @property
    def ends_min(self) -> float:
        """The minute of the last thing that happened; 0 for an empty log."""
        return self.happened[-1].at_min if self.happened else 0.0
