"""What a plan warns of where its coats meet the end of a day's light, as sentences."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import datetime, timedelta
from itertools import pairwise

from farwall.days.work_hours import WORK_FROM_MIN
from farwall.facts.job import Coat, Job
from farwall.facts.numbered import by_number
from farwall.facts.plan import Clock, Field
from farwall.job.coats import last_step_min
from farwall.job.daylight import Daylight, LightEnds
from farwall.job.mix_needs import SEEN
from farwall.job.story.figures import volume
from farwall.nouns import dataclass
from farwall.units import clock_words

_HAIR_MIN = 0.5
_MARGIN_MIN = 30.0
"""A day that has to end at a stop line is planned to end so long before dark. Rank: guess."""
_TOLD_TO_MIN = 5
"""A moment to begin by is told to five minutes, the sooner one."""


def light_warnings(
    job: Job,
    light: Daylight,
    fields: Sequence[Field],
    clocks: Sequence[Clock],
    coats: Sequence[Coat],
) -> tuple[str, ...]:
    """Which coats go on past the light of their day, and which wait for a morning, and why.

    fields and clocks: as planned; coats: in their order.
    """  # fmt: skip
    rooms = {room.id: room.label for room in job.floor.rooms}
    told = _Told(light, tuple(coat.id for coat in coats), job.wishes.units == "us", rooms)
    laid = [_Laid(coat, [one for one in fields if one.coat == coat.id]) for coat in coats]
    found = [line for one in laid for line in told.late(one)]
    for below, above in pairwise(laid):
        clock = next((one for one in clocks if one.coat == below.coat.id), None)
        found.extend(told.waiting(below, above, clock))
    return tuple(found)


@dataclass(frozen=True)
class _Laid:
    """One coat on the clock."""

    coat: Coat
    fields: Sequence[Field]

    @property
    def begins_min(self) -> float:
        steps = (walk.path[0][2] for one in self.fields for walk in one.walks)
        fillings = (fill.at_min for one in self.fields for fill in one.refills)
        return min(*steps, *fillings)

    @property
    def ends_min(self) -> float:
        return last_step_min(self.fields)

    @property
    def lasts_min(self) -> float:
        return self.ends_min - self.begins_min


@dataclass(frozen=True)
class _Told:
    """The words, with coats by their numbers and times on the wall."""

    light: Daylight
    coats: tuple[str, ...]
    us: bool
    rooms: Mapping[str, str]

    def late(self, one: _Laid) -> Iterator[str]:
        """Where a coat goes on past the light of the day on which it begins."""
        ends = self.light.ends(one.begins_min)
        over_min = one.ends_min - ends.at_min
        if over_min <= 0 or one.coat.not_before is not None:
            return
        number = self._number(one)
        if not self._by_day(one.begins_min - over_min, one.begins_min):
            yield (
                f"Coat {number} takes {one.lasts_min / 60:.0f} hours at a stretch, more than a "
                f"day has light{self._pause(one, ends.at_min)}"
            )
            return
        yield (
            f"Coat {number} goes on to {self._clock(one.ends_min)}, past {self._dark(ends)}. "
            f"Begin by {self._by(one.begins_min - over_min)}, or see to "
            "lamps that shine across the floor."
        )

    def waiting(self, below: _Laid, above: _Laid, clock: Clock | None) -> Iterator[str]:
        """Where a coat could begin sooner by its clock, but would go on in the dark."""
        if clock is None or clock.high_min is None or above.coat.not_before is not None:
            return
        dry = below.ends_min + clock.high_min
        if above.begins_min <= dry + _HAIR_MIN or self.light.holds(dry, above.lasts_min):
            return
        ends = self.light.ends(dry)
        over_min = dry + above.lasts_min - ends.at_min
        why = (
            f"it would end after {self._dark(ends)} (with lamps, tell its not_before)"
            if over_min > 0
            else "nobody is at work yet"
        )
        day = (self._moment(above.begins_min).date() - self.light.starts_at.date()).days + 1
        yield (
            f"Coat {self._number(above)} waits until {self._clock(above.begins_min)} of day {day}: "
            f"dry below only at {self._clock(dry)}, {why}.{self._sooner(below, over_min)}"
        )

    def _sooner(self, below: _Laid, over_min: float) -> str:
        """By when the coat below has to be begun, where a morning leaves time for both."""
        begins = below.begins_min - over_min
        if (
            over_min <= 0
            or self.light.of_day(begins) < WORK_FROM_MIN
            or not self._same_day(begins, below.begins_min)
        ):
            return ""
        return f" Begun by {self._by(begins)}, both fit on one day."

    def _pause(self, one: _Laid, light_ends_min: float) -> str:
        """The fields, in order, that end well before dark, and where the morning goes on."""
        ordered = sorted(one.fields, key=lambda field: field.end_min)
        before = [each for each in ordered if each.end_min <= light_ends_min - _MARGIN_MIN]
        rest = ordered[len(before) :]
        if not before or not rest:
            return "."
        return (
            f": stop after field {self._named(before[-1])} at {self._clock(before[-1].end_min)}, "
            f"{self._litres(before)} sprayed, and plan the rest anew in the morning, from field "
            f"{self._named(rest[0])} on, {self._litres(rest)}.{self._seen(before, rest)}"
        )

    def _seen(self, before: Sequence[Field], rest: Sequence[Field]) -> str:
        """Where the floors of two days are seen together."""
        for field in rest:
            mine = {line.id for line in field.stop_lines if line.kind in SEEN}
            for other in before:
                if mine & {line.id for line in other.stop_lines}:
                    return (
                        f" Field {self._named(field)} is then seen beside field "
                        f"{self._named(other)} with no leaf between: one lot for both days."
                    )
        return ""

    def _named(self, field: Field) -> str:
        names = ", ".join(self.rooms.get(room, room) for room in field.rooms)
        return f"{by_number(self.coats, field.id)} ({names})"

    def _litres(self, fields: Sequence[Field]) -> str:
        return volume(sum(band.litres for one in fields for band in one.bands), us=self.us)

    def _by_day(self, at_min: float, begins_min: float) -> bool:
        """Whether it is a working hour of the day on which a coat is begun."""
        first = min(self.light.of_day(0.0), WORK_FROM_MIN)
        return self.light.of_day(at_min) >= first and self._same_day(at_min, begins_min)

    def _dark(self, ends: LightEnds) -> str:
        at = self._clock(ends.at_min)
        return f"sunset at {at}" if ends.sun else f"{at}, our guess of the last light"

    def _by(self, at_min: float) -> str:
        early = self.light.of_day(at_min) % _TOLD_TO_MIN
        return self._clock(at_min - early)

    def _clock(self, at_min: float) -> str:
        return clock_words(self._moment(at_min), us=self.us)

    def _moment(self, at_min: float) -> datetime:
        return self.light.starts_at + timedelta(minutes=at_min)

    def _same_day(self, at_min: float, other_min: float) -> bool:
        return self._moment(at_min).date() == self._moment(other_min).date()

    def _number(self, one: _Laid) -> int:
        return self.coats.index(one.coat.id) + 1
