"""A day's sun on the floor, told by room: from when to when, how large, through which windows."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, timedelta

from farwall.air.weather import WeatherFile
from farwall.errors import Mistake, Refused
from farwall.facts.job import Job
from farwall.facts.sunlight import SunPatch
from farwall.job.sunlight import Sunlight, missing_for_sun, sunlight_of
from farwall.nouns import dataclass

_DAY_MIN = 24 * 60.0


@dataclass(frozen=True)
class Spell:
    """Sun in a room without a break: its ends and its largest patch, minutes from midnight."""

    from_min: float
    to_min: float
    largest_m2: float
    largest_at_min: float


@dataclass(frozen=True)
class RoomSun:
    """The sun of one room on one day; `share` is the largest part of its floor that is lit."""

    room: str
    name: str
    windows: tuple[str, ...]
    spells: tuple[Spell, ...]
    share: float


@dataclass(frozen=True)
class SunDay:
    """One day: minutes count from its midnight (`starts_at`, ISO 8601 with offset)."""

    starts_at: str
    latitude_deg: float
    longitude_deg: float
    north_deg: float
    rooms: tuple[RoomSun, ...]
    patches: tuple[SunPatch, ...]


def sun_day(
    job: Job, *, midnight: datetime | None = None, weather: WeatherFile | None = None
) -> SunDay:
    """The sun of a job on one day under a clear sky; that of its start unless `midnight` is told.

    midnight: with its offset from UTC, which is the clock that the day is told in.
    Raises `Refused` with all that is missing: windows, north, a place, a day.
    """
    begins = midnight or _midnight(job)
    day = job if begins is None else replace(job, starts_at=begins.isoformat())
    if not any(not window.covered for window in job.floor.windows):
        what = "The floor has no window that is not covered."
        remedy = "Put floor.windows into the job: line, sill_m, height_m of each."
        raise Refused(Mistake("floor.windows", what, remedy), about=_ABOUT)
    lacks = missing_for_sun(day, weather)
    if lacks:
        raise Refused(*(Mistake(one, *_MISSING[one]) for one in lacks), about=_ABOUT)
    sunlight = sunlight_of(day, weather)
    if sunlight is None:
        what = "No window lies at a room."
        raise Refused(
            Mistake("floor.windows", what, "Draw each in the wall of its room."), about=_ABOUT
        )
    patches = sunlight.day(0)
    rooms = tuple(
        _of_room(job, sunlight, room.id, [one for one in patches if one.room == room.id])
        for room in job.floor.rooms
    )
    return SunDay(
        sunlight.starts_at.isoformat(),
        sunlight.latitude_deg,
        sunlight.longitude_deg,
        sunlight.north_deg,
        rooms,
        patches,
    )


def midnight_of(day: date, job: Job, zone: object = None) -> datetime:
    """Midnight of a day on the clock of the job: of its time zone, else of its start."""
    from datetime import tzinfo

    if isinstance(zone, tzinfo):
        return datetime(day.year, day.month, day.day, tzinfo=zone)
    if job.starts_at is None:
        what = "Neither a time zone nor a start is told, so that a day has no clock."
        raise Refused(
            Mistake("place.time_zone", what, "Put one of them into the job."), about=_ABOUT
        )
    clock = datetime.fromisoformat(job.starts_at).tzinfo
    return datetime(day.year, day.month, day.day, tzinfo=clock)


_ABOUT = "The sun on the floor cannot be reckoned yet."
_MISSING = {
    "floor.north_deg": (
        "North is not told.",
        "Give degrees clockwise from the plan's up, such as floor.north_deg=20.",
    ),
    "place.latitude_deg and place.longitude_deg": (
        "Where the house stands is not told.",
        "Give both, or a weather file with --weather.",
    ),
    "starts_at": ("No day is told.", "Put starts_at into the job, or say --day 2026-06-21."),
}


def _midnight(job: Job) -> datetime | None:
    if job.starts_at is None:
        return None
    start = datetime.fromisoformat(job.starts_at)
    return start.replace(hour=0, minute=0, second=0, microsecond=0)


def _of_room(job: Job, sunlight: Sunlight, room: str, patches: list[SunPatch]) -> RoomSun:
    area: dict[float, float] = {}
    ends: dict[float, float] = {}
    for patch in patches:
        area[patch.from_min] = area.get(patch.from_min, 0.0) + patch.polygon.shape.area
        ends[patch.from_min] = patch.to_min
    spells: list[Spell] = []
    for begins in sorted(area):
        now = Spell(begins, ends[begins], area[begins], begins)
        if spells and spells[-1].to_min >= begins:
            before = spells.pop()
            larger = max(before, now, key=lambda one: one.largest_m2)
            now = replace(
                now,
                from_min=before.from_min,
                largest_m2=larger.largest_m2,
                largest_at_min=larger.largest_at_min,
            )
        spells.append(now)
    panes = sunlight.panes_of(room, 0.0, _DAY_MIN) if patches else ()
    return RoomSun(
        room,
        job.floor.room_by_id[room].label,
        tuple(pane.name for pane in panes),
        tuple(replace(one, largest_m2=round(one.largest_m2, 3)) for one in spells),
        round(sunlight.share(room, 0.0, _DAY_MIN), 4) if patches else 0.0,
    )


def clock_at(day: SunDay, minute: float) -> datetime:
    """The moment of a minute of the day."""
    return datetime.fromisoformat(day.starts_at) + timedelta(minutes=minute)
