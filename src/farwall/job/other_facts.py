"""What else might hold of slab and air for a field: another hour, a filmed window, a new sample.

Each is a changed fact of the job; the clocks are then asked as they are for the plan itself.
Nothing here shuts out air: a draught is never taken away.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from functools import cached_property

import shapely

from farwall.air.weather import Forecast, WeatherFile
from farwall.errors import FarwallError
from farwall.facts.defaults import settle
from farwall.facts.job import Job, RoomSurvey
from farwall.facts.numbered import by_number
from farwall.facts.plan import OpenTime
from farwall.facts.samples import Sample
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.floor.nouns import Window
from farwall.job.lasting import Lasting, lasting_of
from farwall.mix.cut import Cut, parse_cut
from farwall.nouns import dataclass
from farwall.spray.verdict import Otherwise
from farwall.units import clock_words, ft2_per_gal_from_m2_per_l

_FROM_H, _TO_H = 5, 20
"""Hours of the day at which a crew may be asked to begin. Rank: guess."""
_HEAVIER = (0.85, 0.7)
"""Shares of the coverage that are tried: litres a square metre grow by 18 and by 43 %. Guess."""
_ROOM = 1.25
"""A budget that is so many times the oldest edge leaves a fifth of itself to spare."""
_BETTER = 1.02
_AT_WINDOW_M = 0.6

_DARKER = (
    "More mix on the floor, and wet for longer: it may come darker, and blotches or puddles are "
    "more likely. Too dark is final: lay a new sample at this weight first. The sheet of the "
    "material in hand wins."
)
_OTHER_DAY = "All fields move with it: plan the job again from that start before trusting it."
_NO_AIR = "Film the glass only; windows and doors stay as open as the lungs need."


@dataclass(frozen=True)
class OtherFacts:
    """Other facts for the fields of a job. `settled` holds it with every gap filled."""

    job: Job
    settled: SettledJob
    weather: WeatherFile | Forecast | None
    lasting: Lasting

    def for_field(
        self, rooms: tuple[str, ...], coat: SettledCoat, at_min: float, peak_min: float
    ) -> Sequence[Otherwise]:
        """Facts under which an edge in these rooms would live longer, the cheapest first.

        peak_min: how old the field's oldest edge gets; what it is weighed against.
        """
        now = self.lasting.shortest(rooms, coat, at_min)
        found: list[Otherwise] = []
        if now.low > 0:
            found += self._sampled(rooms, coat, at_min, peak_min, now)
            found += self._filmed(rooms, coat, at_min)
            found += self._heavier(rooms, coat, at_min, peak_min)
        found += self._other_hour(rooms, coat, at_min, peak_min)
        return [one for one in found if not one.sure or one.lasting.low > _BETTER * now.low]

    def cost(self, coat: SettledCoat, litres: float) -> str | None:
        """What so many litres of mix cost in stain, by the cheapest container told in the job."""
        from decimal import ROUND_HALF_UP, Decimal, InvalidOperation

        told = [one for one in self.job.prices.containers if one.stain in {"", coat.stain.id}]
        try:
            per_l = [Decimal(one.price) / Decimal(str(one.size_l)) for one in told]
        except InvalidOperation:
            return None
        if not per_l:
            return None
        stain_l = Decimal(str(litres * parse_cut(coat.cut).stain_share))
        amount = (min(per_l) * stain_l).quantize(Decimal("0.01"), rounding=ROUND_HALF_UP)
        return f"{amount} {self.job.prices.currency}"

    def _with(self, job: Job) -> Lasting:
        """The clocks of a job with other facts, started when this one starts."""
        settled = settle(job, starts_at=self.settled.starts_at)
        return lasting_of(replace(settled, firm_waits=self.settled.firm_waits), self.weather)

    def _sampled(
        self,
        rooms: tuple[str, ...],
        coat: SettledCoat,
        at_min: float,
        peak_min: float,
        now: OpenTime,
    ) -> Iterator[Otherwise]:
        """A timed sample, taken as likely as the clocks have it: only the sample will tell.

        Its budget grows with its minutes, so that the minutes it needs follow from one asking.
        Not offered where they lie beyond the high end of what the clocks allow.
        """
        if coat.sample is not None and coat.sample.sheen_loss_min is not None:
            return
        timed = replace(coat, samples=(Sample("to be timed", sheen_loss_min=now.likely),))
        then = self.lasting.shortest(rooms, timed, at_min)
        if then.low <= 0:
            return
        fits = peak_min <= now.low
        needed = now.likely * peak_min * (_ROOM if fits else 1.0) / then.low
        if needed > now.high:
            return
        number = by_number([one.id for one in self.settled.coats], coat.id)
        gives = "has a fifth of its time to spare" if fits else "fits"
        yield Otherwise(
            "sample",
            f"Time the sheen loss of a sample of coat {number} on this slab, 4 minutes' work: half "
            f"of it is the budget. At {needed:.0f} min or more this field {gives}. Likely are "
            f"{now.likely:.0f} min; the range then narrows from {now.low:.0f}-{now.high:.0f} min "
            f"to {then.low:.0f}-{then.high:.0f}.",
            then,
            caution="If the sample is shorter, the budget shrinks: the sample wins.",
            sure=False,
        )

    def _filmed(
        self, rooms: tuple[str, ...], coat: SettledCoat, at_min: float
    ) -> Iterator[Otherwise]:
        """The sun kept off these rooms: a film on the glass, its patch told as none."""
        survey = self.job.survey
        lit = [room for room in rooms if survey.rooms.get(room, RoomSurvey()).sun]
        here = shapely.union_all([self.job.floor.room_by_id[room].polygon.shape for room in rooms])
        glass = [one for one in self.job.floor.windows if _near(one, here)]
        if not lit and not glass:
            return
        shaded = {room: replace(survey.rooms[room], sun=False) for room in lit}
        floor = replace(
            self.job.floor,
            windows=tuple(one for one in self.job.floor.windows if one not in glass),
        )
        job = replace(
            self.job,
            floor=floor,
            survey=replace(survey, rooms={**survey.rooms, **shaded}),
        )
        names = " and ".join(self.job.floor.room_by_id[room].label for room in lit or rooms)
        then = self._with(job).shortest(rooms, coat, at_min)
        yield Otherwise(
            "window", f"Film on the window of {names}: no sun patch.", then, caution=_NO_AIR
        )

    def _heavier(
        self, rooms: tuple[str, ...], coat: SettledCoat, at_min: float, peak_min: float
    ) -> Iterator[Otherwise]:
        """A heavier coat at a weaker cut, the same stain on each square metre in more water."""
        for share in _HEAVIER:
            m2_per_l = coat.m2_per_l * share
            laid = replace(coat, m2_per_l=m2_per_l, l_per_m2=1 / m2_per_l)
            then = self.lasting.shortest(rooms, laid, at_min)
            if then.low >= _ROOM * peak_min:
                break
        cut = parse_cut(coat.cut)
        weaker = Cut(1.0, round(1 / (cut.stain_share * share) - 1, 2))
        yield Otherwise(
            "film",
            f"A heavier coat at a weaker cut: {self._coverage(laid.m2_per_l)} at {weaker}, the "
            "same stain on the same floor in more water; the film stays wet longer.",
            then,
            l_per_m2=laid.l_per_m2,
            caution=_DARKER,
        )

    def _coverage(self, m2_per_l: float) -> str:
        """In both manners, the job's own first."""
        si = f"{m2_per_l:.1f} m²/L"
        us = f"{ft2_per_gal_from_m2_per_l(m2_per_l):.0f} ft²/gal"
        return f"{us} ({si})" if self.job.wishes.units == "us" else f"{si} ({us})"

    def _other_hour(
        self, rooms: tuple[str, ...], coat: SettledCoat, at_min: float, peak_min: float
    ) -> Iterator[Otherwise]:
        """The hour of the day in which the edge lives longest, by weather and sun."""
        if self.weather is None and self.lasting.sunlight is None:
            return
        day = (datetime.fromisoformat(self.settled.starts_at) + timedelta(minutes=at_min)).date()
        lives = self._by_hour(rooms, coat, (day - self._midnight.date()).days)
        best = max(lives, key=lambda hour: (round(lives[hour].low, 2), -hour))
        if lives[best].low <= 0:
            return
        first, last = _run(best, {hour for hour in lives if lives[hour].low >= peak_min})
        first_at, last_at = self._hour(first), self._hour(last + 1)
        span = f"; it fits from {first_at} until {last_at}" if last >= first else ""
        yield Otherwise(
            "hour",
            f"Begin this field at {self._hour(best)}{span}: an edge then lives "
            f"{lives[best].low:.1f} min.",
            lives[best],
            caution=_OTHER_DAY,
        )

    def _hour(self, hour: int) -> str:
        """A full hour of the day in the job's manner."""
        at = self._midnight + timedelta(hours=hour)
        return clock_words(at, us=self.job.wishes.units == "us")

    @cached_property
    def _midnight(self) -> datetime:
        start = datetime.fromisoformat(self.settled.starts_at)
        return start.replace(hour=0, minute=0, second=0, microsecond=0)

    @cached_property
    def _from_midnight(self) -> Lasting | None:
        """The clocks counted from midnight of the first day, None where the weather has a gap."""
        job = replace(self.job, starts_at=self._midnight.isoformat())
        try:
            settled = replace(settle(job), firm_waits=self.settled.firm_waits)
            return lasting_of(settled, self.weather)
        except FarwallError:
            return None

    def _by_hour(self, rooms: tuple[str, ...], coat: SettledCoat, days: int) -> dict[int, OpenTime]:
        nothing = OpenTime(0.0, 0.0, 0.0)
        if self._from_midnight is None:
            return {_FROM_H: nothing}
        return {
            hour: self._from_midnight.shortest(rooms, coat, 60.0 * (24 * days + hour) + 1)
            for hour in range(_FROM_H, _TO_H)
        }


def _near(window: Window, floor: shapely.geometry.base.BaseGeometry) -> bool:
    return bool(shapely.LineString(window.line).distance(floor) <= _AT_WINDOW_M)


def _run(best: int, good: set[int]) -> tuple[int, int]:
    """First and last hour of the run of good hours about the best; empty when that is not good."""
    if best not in good:
        return best, best - 1
    first = last = best
    while first - 1 in good:
        first -= 1
    while last + 1 in good:
        last += 1
    return first, last
