"""What the sun does to the fields of a plan, and what film or another hour would do about it.

Each figure is reckoned again: the same bands and walks, their edges held to open times without
the sun, or begun earlier or later. Advice is given only where the sun decides: where an edge
dies by it, or is left with less than a fifth of its time.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from farwall.air.weather import Forecast, WeatherFile
from farwall.evidence import Rank
from farwall.facts import default_table as table
from farwall.facts.job import Job
from farwall.facts.numbered import by_number
from farwall.facts.plan import Ground
from farwall.facts.settled import SettledCoat
from farwall.facts.sunlight import SunAdvice, SunOnFloor
from farwall.floor.nouns import Floor
from farwall.job.lasting import Lasting
from farwall.job.sunlight import Pane, Sunlight, missing_for_sun
from farwall.nouns import dataclass
from farwall.spray.lives import Held, Lives, held_to
from farwall.spray.plan_coat import LaidField
from farwall.spray.remedies.case import TIGHT
from farwall.units import clock_words

SOURCE = "reda-andreas-2004, ineichen-2008, house-guess"
_FROM_H, _TO_H = 5, 20
"""Hours of the day in which a crew may be asked to begin. Rank: guess."""
_TRY_MIN = 15
_GAIN_MIN = 0.05


def sun_on_floor(lasting: Lasting, laid: Sequence[LaidField], floor: Floor) -> SunOnFloor | None:
    """Patches on each day on which something is sprayed, and advice; None without a known sun."""
    sunlight = lasting.sunlight
    if sunlight is None:
        return None
    days = sorted({sunlight.day_of(one.field.start_min) for one in laid})
    coats = {coat.id: coat for coat in lasting.job.coats}
    found = [_advised(_Case(lasting, sunlight, one, coats[one.field.coat], floor)) for one in laid]
    return SunOnFloor(
        patches=tuple(patch for day in days for patch in sunlight.day(day)),
        advice=tuple(one for one in found if one is not None),
        windows=lasting.job.job.floor.windows,
        north_deg=sunlight.north_deg,
        rank=Rank.GUESS.value,
        source=SOURCE,
    )


def sun_warnings(
    job: Job, weather: WeatherFile | Forecast | None, sun: SunOnFloor | None
) -> tuple[str, ...]:
    """The advice in words; or what is missing where there are windows and no sun is reckoned."""
    if sun is not None:
        dying = [one.what for one in sun.advice if one.spare_min < 0]
        tight = len(sun.advice) - len(dying)
        if not tight:
            return tuple(dying)
        fields = "1 field" if tight == 1 else f"{tight} fields"
        little = f"Sun through windows leaves {fields} little to spare: see the page on it."
        return (*dying, little)
    lacks = missing_for_sun(job, weather)
    if not lacks:
        return ()
    bare = sum(not window.covered for window in job.floor.windows)
    of = "1 window" if bare == 1 else f"{bare} windows"
    return (f"The sun of {of} is not reckoned: put {', '.join(lacks)} into the job.",)


def sun_grounds(job: Job, sun: SunOnFloor | None) -> tuple[Ground, ...]:
    """The window sizes that had to be guessed, where a sun was reckoned with them."""
    if sun is None:
        return ()
    bare = [window for window in job.floor.windows if not window.covered]
    rows = (
        (table.SILL_M, any(window.sill_m is None for window in bare)),
        (table.WINDOW_HEIGHT_M, any(window.height_m is None for window in bare)),
        (table.REVEAL_M, any(window.reveal_m is None for window in bare)),
    )
    return tuple(
        Ground(one.name, f"{one.usual:g}", one.unit, one.rank.value, one.source)
        for one, guessed in rows
        if guessed
    )


@dataclass(frozen=True)
class _Case:
    """One field as laid, with what is needed to hold its edges once more."""

    lasting: Lasting
    sunlight: Sunlight
    laid: LaidField
    coat: SettledCoat
    floor: Floor

    def held(self, *, later_min: float = 0.0, bare: bool = True) -> Held | None:
        """The field's edges, begun so much later, with its windows bare or covered.

        None when the slab may not be stained then.
        """
        field = self.laid.field
        from_min, to_min = field.start_min + later_min, field.end_min + later_min
        rooms = tuple(self.laid.lives.floors)
        if any(self.lasting.refusal(rooms, at) is not None for at in (from_min, to_min)):
            return None
        lasting = self.lasting if bare else replace(self.lasting, sunlight=None)
        lives = Lives(
            lasting.open_times(rooms, self.coat, from_min, to_min), self.laid.lives.floors
        )
        times = [(one.start_min + later_min, one.end_min - one.start_min) for one in field.bands]
        return held_to(lives, self.laid.moments, times)

    def time(self, minute: float) -> str:
        """A minute of the plan on the wall, in the job's manner."""
        return clock_words(self.clock(minute), us=self.lasting.job.job.wishes.units == "us")

    def clock(self, minute: float) -> datetime:
        """The moment of a minute of the plan."""
        return self.sunlight.starts_at + timedelta(minutes=minute)


def _advised(case: _Case) -> SunAdvice | None:
    """Advice for a field, None where the sun does not decide."""
    field = case.laid.field
    if not any(one.polygon is not None for one in case.laid.lives.open_times):
        return None
    now, covered = case.held(), case.held(bare=False)
    if now is None or covered is None or now.tightest is None:
        return None
    tight = now.spare_min < 0 or now.share > 1 - TIGHT
    if not tight or covered.spare_min <= now.spare_min + _GAIN_MIN:
        return None
    ends = (field.start_min, field.end_min)
    patches = [one for one in case.sunlight.patches(*ends) if one.room in field.rooms]
    lit = dict.fromkeys(one.room for one in patches)
    panes = tuple(
        dict.fromkeys(pane for room in lit for pane in case.sunlight.panes_of(room, *ends))
    )
    if not panes:
        return None
    first = max(field.start_min, min(one.from_min for one in patches))
    cover_by = first - case.clock(first).minute % 5
    enough = 0.0 if now.spare_min < 0 else min(covered.spare_min, now.spare_min + 1.0)
    before, after = _start(case, -_TRY_MIN, enough), _start(case, _TRY_MIN, enough)
    advice = SunAdvice(
        field=field.id,
        room=now.tightest.room,
        windows=tuple(pane.name for pane in panes),
        cover_by_min=round(cover_by, 4),
        spray_before_min=before,
        spray_after_min=after,
        spare_min=now.spare_min,
        spare_covered_min=covered.spare_min,
        which=_which(case, panes),
        what="",
    )
    names = " and ".join(case.floor.room_by_id[room].label for room in field.rooms)
    number = by_number([coat.id for coat in case.lasting.job.coats], field.id)
    return replace(advice, what=advice_words(advice, names, number, case.time))


def _start(case: _Case, step_min: int, enough_min: float) -> float | None:
    """The quarter hour nearest to the planned start, earlier or later, that leaves enough."""
    start = case.laid.field.start_min
    planned = case.clock(start)
    past_min = planned.minute % _TRY_MIN + planned.second / 60 + planned.microsecond / 6e7
    later = -past_min if step_min < 0 else _TRY_MIN - past_min
    while True:
        moment = planned + timedelta(minutes=later)
        if moment.date() != planned.date() or not _FROM_H <= moment.hour < _TO_H:
            return None
        held = case.held(later_min=later)
        if held is not None and held.spare_min >= enough_min:
            return round(start + later, 4)
        later += step_min


def _which(case: _Case, panes: Sequence[Pane]) -> str:
    """The windows in words: `the west and south windows of Great room`."""
    by_id = case.floor.room_by_id
    looks: dict[str, list[str]] = {}
    for pane in panes:
        looks.setdefault(by_id[pane.room].label, []).append(pane.looks)
    return " and ".join(
        f"the {' and '.join(dict.fromkeys(own))} window{'s' * (len(own) > 1)} of {room}"
        for room, own in looks.items()
    )


def advice_words(advice: SunAdvice, rooms: str, number: str, time: Callable[[float], str]) -> str:
    """The advice in a sentence.

    rooms, number: what the field is called, as `Great room` and `1.5`. time: tells a minute of the
    plan.
    """
    times = [
        f"{word} {time(minute)}"
        for word, minute in (
            ("by", advice.spray_before_min),
            ("after", advice.spray_after_min),
        )
        if minute is not None
    ]
    instead = f"; or begin {rooms} {' or '.join(times)}" if times else ""
    return (
        f"Film or blanket {advice.which} before {time(advice.cover_by_min)}, best the day "
        f"before: without its sun the bands of {rooms} ({number}) leave their tightest edge "
        f"{_minutes(advice.spare_covered_min)} min, with it {_minutes(advice.spare_min)}{instead}."
    )


def _minutes(spare_min: float) -> str:
    """To spare, a true minus sign before what is too much."""
    return f"{spare_min:.1f}".replace("-", "\N{MINUS SIGN}")
