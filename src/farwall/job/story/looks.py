"""What was measured and looked at: readings, closed rooms, and waits as the clocks take them."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import datetime

from farwall.air.beside import TISSUE
from farwall.air.conditions import SENSE
from farwall.air.waits import HOUR_MIN
from farwall.facts.job import Sighting
from farwall.facts.plan import Plan
from farwall.job.story.noun import Closed, Happened, Reading, Seen
from farwall.job.story.spraying import Spraying

_CLOCK = re.compile(r"(\d{1,2}):(\d{2})")
_HERE_M2 = 0.01

ClockName = str
OPEN_TIME, RECOAT, NEUTRALISE = "open time", "dry to recoat", "dry to neutralise"
_NAMED = {
    "recoat": RECOAT,
    "neutralise": NEUTRALISE,
    "dry-down": "dry-down before sealing",
    "seal": "next coat of sealer",
}
_MEASURED = {
    "slab_c": ("The slab", "°C"), "air_c": ("The air", "°C"),
    "rh_percent": ("Humidity of the air", "%"), "air_speed_m_s": ("Air over the floor", "m/s"),
}  # fmt: skip
_SLIP_SHARE = 0.25
"""Dry in less of the plan's earliest end is a slip of the finger (rank: guess): on fresh concrete
air four times as thirsty as planned is hardly met, and a floor called dry is walked on."""


def reading_of(one: Happened) -> Reading:
    """Slab and air as an entry tells them; what no thermometer shows is left out."""
    return Reading(
        one.at_min,
        one.text("room"),
        _sensible(one, "slab_c", "surface_c"),
        _sensible(one, "air_c", "air_c"),
        _sensible(one, "rh_percent", "rh_percent"),
        _air_speed(one),
        one.number("tile_kg_m2_h"),
    )


def _air_speed(one: Happened) -> float | None:
    """By the vane, else by what the strip of tissue does."""
    told = _sensible(one, "air_speed_m_s", "air_speed_m_s")
    return told if told is not None else dict(TISSUE).get(one.text("tissue"))


def _sensible(one: Happened, key: str, measure: str) -> float | None:
    value = one.number(key)
    low, high, _ = SENSE[measure]
    return value if value is not None and low <= value <= high else None


def closed_rooms(happened: Sequence[Happened], starts_at: str) -> tuple[Closed, ...]:
    """Every closing of a room, with its end where one was told."""
    found: list[Closed] = []
    for one in happened:
        room = one.text("room")
        if one.word == "room-closed":
            until = _until(one.text("until"), one.at_min, starts_at)
            found.append(Closed(room, one.at_min, until, None, one.text("why")))
        elif one.word == "room-free":
            found = [
                Closed(c.room, c.from_min, c.until_min, one.at_min, c.why)
                if c.room == room and c.free_min is None
                else c
                for c in found
            ]
    return tuple(found)


def _until(text: str, at_min: float, starts_at: str) -> float | None:
    """Minutes from the plan's start: a clock time after `at_min`, or minutes as they are."""
    clock = _CLOCK.fullmatch(text.strip())
    if clock is None:
        return None
    start = datetime.fromisoformat(starts_at)
    minute = (int(clock[1]) - start.hour) * 60 + int(clock[2]) - start.minute - start.second / 60
    while minute <= at_min:  # the next time that the clock shows it
        minute += 12 * 60 if int(clock[1]) <= 12 else 24 * 60
    return float(minute)


def _span(minutes: float) -> str:
    return f"{minutes:.0f} min" if minutes < 2 * HOUR_MIN else f"{minutes / HOUR_MIN:.0f} h"


class Looks:
    """Waits looked at while a log is gone through; `spraying` is fed before."""

    def __init__(self, plan: Plan, spraying: Spraying) -> None:
        self._plan = plan
        self._spraying = spraying
        self._readings: list[Reading] = []
        self._rinsed_min: float | None = None
        self._sealed_min: float | None = None
        self.sightings: list[Seen] = []
        self.contradictions: list[str] = []
        self.slips: list[Happened] = []

    @property
    def readings(self) -> tuple[Reading, ...]:
        """All readings, in order."""
        return tuple(self._readings)

    def feed(self, one: Happened) -> None:
        """Take what happened into account."""
        if one.word == "reading":
            self._readings.append(reading_of(one))
            for key in _MEASURED:
                if one.number(key) is not None and getattr(self._readings[-1], key) is None:
                    told = f"{_MEASURED[key][0]}, {one.number(key):g} {_MEASURED[key][1]}"
                    at = f"at {one.at_min:.0f} min"
                    self.contradictions.append(f"{told} {at}: beyond reason and passed over.")
        elif one.word in {"rinsed", "neutralised"}:
            self._rinsed_min = one.at_min
        elif one.word == "sealed":
            self._sealed_min = one.at_min
        elif one.word == "sheen-lost":
            self._look(one, OPEN_TIME, ended=True)
        elif one.word in {"still-damp", "dry"}:
            self._look(one, self._clock(one), ended=one.word == "dry")

    def _coat(self, one: Happened) -> str:
        return one.text("coat") or self._spraying.floor_coat

    def _clock(self, one: Happened) -> str:
        named = one.text("clock")
        if named:
            return _NAMED[named]
        if self._sealed_min is not None:
            return _NAMED["seal"]
        if self._rinsed_min is not None:
            return _NAMED["dry-down"]
        return NEUTRALISE if self._coat(one) == self._plan.inputs.coats[-1].id else RECOAT

    def _look(self, one: Happened, clock: str, *, ended: bool) -> None:
        coat, room = self._coat(one), one.text("room")
        band = one.text("band")
        after = one.number("after_min")
        if after is None:
            since = self._since(clock, coat, room, band)
            after = None if since is None else one.at_min - since
        if after is None or after <= 0:
            self.contradictions.append(
                f"{one.word} at {one.at_min:.0f} min: nothing is entered of what it waits for, so "
                "no clock can learn from it; tell after_min."
            )
            return
        if ended and after < self._soonest_min(clock, coat):
            self._pass_over(one, clock, coat, after)
            return
        if not room and band in self._spraying.owner:
            room = self._spraying.owner[band].rooms[0]
        slab = _sensible(one, "slab_c", "surface_c")
        self.sightings.append(
            Seen(
                one.at_min,
                Sighting(
                    clock,  # type: ignore[arg-type]
                    round(after, 3),
                    ended=ended,
                    room=room or None,
                    coat=coat,
                    slab_c=slab if slab is not None else self._latest("slab_c", room),
                    air_c=self._latest("air_c", room),
                    rh_percent=self._latest("rh_percent", room),
                    air_speed_m_s=self._latest("air_speed_m_s", room),
                    tile_kg_m2_h=self._latest("tile_kg_m2_h", room),
                ),
            )
        )

    def _soonest_min(self, clock: str, coat: str) -> float:
        """Sooner than this no wait of the kind is over; an edge may die at any time."""
        return 0.0 if clock == OPEN_TIME else _SLIP_SHARE * self._earliest_min(clock, coat)

    def _earliest_min(self, clock: str, coat: str) -> float:
        """The low end that the plan has of a wait; 0 where it has none."""
        ends = [one.low_min for one in self._plan.clocks if (one.name, one.coat) == (clock, coat)]
        return ends[0] if ends else 0.0

    def _pass_over(self, one: Happened, clock: str, coat: str, after_min: float) -> None:
        earliest = self._earliest_min(clock, coat)
        self.slips.append(one)
        self.contradictions.append(
            f"Told too soon: {clock} after {_span(after_min)}, where the plan has "
            f"{_span(earliest)} at the earliest; passed over as a slip. Look again, and enter it "
            "then."
        )

    def _since(self, clock: str, coat: str, room: str, band: str) -> float | None:
        """When began what is waited for: the coat there, the last rinse, the last sealer."""
        if clock == _NAMED["dry-down"]:
            return self._rinsed_min
        if clock == _NAMED["seal"]:
            return self._sealed_min
        done = self._spraying.done
        if band in done:
            return done[band].end_min
        own = [name for name in done if self._spraying.owner[name].coat == coat]
        there = [name for name in own if not room or room in self.rooms_of(name)]
        return max((done[name].end_min for name in there), default=None)

    def rooms_of(self, band: str) -> tuple[str, ...]:
        """The rooms that a band lies in."""
        own = self._spraying.owner[band]
        if len(own.rooms) == 1:
            return own.rooms
        shape = next(b for b in own.bands if b.id == band).polygon.shape
        return tuple(
            room.id
            for room in self._plan.inputs.floor.rooms
            if room.id in own.rooms and room.polygon.shape.intersection(shape).area > _HERE_M2
        )

    def _latest(self, key: str, room: str) -> float | None:
        """The last value measured, in this room if it was measured there, else anywhere."""
        told = [(r.room, getattr(r, key)) for r in self._readings if getattr(r, key) is not None]
        here = [value for place, value in told if place == room]
        if here:
            return float(here[-1])
        return float(told[-1][1]) if told else None
