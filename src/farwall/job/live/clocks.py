"""The waits as the floor has taught them: the plan's own, moved by what was seen and measured.

The step of Bayes is that of `job.waits`: the clock is asked twice, with the morning's facts and
with the day's, and the plan's own range is stretched by what lies between the two answers. So
a plan that was made with the weather keeps it.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from functools import cached_property
from statistics import NormalDist

from farwall.air.weather import Forecast, WeatherFile
from farwall.facts.defaults import settle
from farwall.facts.job import Job, Sighting
from farwall.facts.lessons import Lessons
from farwall.facts.plan import Clock, Plan
from farwall.facts.samples import Sample
from farwall.facts.settled import SettledJob
from farwall.job.lasting import Lasting, lasting_of
from farwall.job.lessons import with_lessons
from farwall.job.live.noun import LiveClock
from farwall.job.live.stained import stained
from farwall.job.story.noun import Story
from farwall.job.waits import Waits

OPEN_TIME = "open time"
_NINE_TENTHS = NormalDist().inv_cdf(0.9)
"""A clock's ends hold four times in five: its low and high lie so many deviations off."""
_KEYS = ("slab_c", "air_c", "rh_percent", "air_speed_m_s")


class LiveClocks:
    """The clocks of a job's day with what its story has seen; `lessons` as the plan had them."""

    def __init__(
        self,
        job: Job,
        plan: Plan,
        story: Story,
        weather: WeatherFile | Forecast | None = None,
        lessons: Lessons | None = None,
    ) -> None:
        self._plan = plan
        self._story = story
        self._job = job
        self._weather = weather
        self._lessons = lessons
        self._morning = self._lasting(job)

    @cached_property
    def _today(self) -> Lasting:
        """The same facts with the last readings of the day, and all that was watched."""
        survey = self._job.survey
        for reading in self._story.readings:
            told = {key: getattr(reading, key) for key in (*_KEYS, "tile_kg_m2_h")}
            survey = replace(survey, **{k: v for k, v in told.items() if v is not None})
        before = (self._at_its_time(one) for one in self._job.seen)
        job = replace(
            self._job,
            survey=survey,
            seen=(*before, *self._seen_today),
            samples=tuple(self._sampled(one) for one in self._job.samples),
        )
        return self._lasting(job)

    @cached_property
    def _seen_today(self) -> tuple[Sighting, ...]:
        return tuple(self._at_its_time(one.sighting) for one in self._story.sightings)

    def _lasting(self, job: Job) -> Lasting:
        """The job as its plan had it: with what the firm's closed jobs taught."""
        settled = settle(job, starts_at=self._plan.starts_at)
        return lasting_of(with_lessons(settled, self._lessons), self._weather)

    def _at_its_time(self, one: Sighting) -> Sighting:
        """What was not told of a look is the morning's, not what was measured later."""
        then = self._morning.conditions(0.0)
        usual = dict(zip(_KEYS, (then.surface_c, then.air_c, then.rh_percent,
                                 then.air_speed_m_s), strict=True))  # fmt: skip
        missing = {key: value for key, value in usual.items() if getattr(one, key) is None}
        read = one.air_read and one.air_speed_m_s is not None
        return replace(one, air_read=read, **missing)  # type: ignore[arg-type]

    def _sampled(self, one: Sample) -> Sample:
        then = self._morning.conditions(0.0)
        if one.sheen_loss_min is None:
            return one
        slab = one.slab_c if one.slab_c is not None else then.surface_c
        return replace(
            one,
            slab_c=slab,
            air_c=one.air_c if one.air_c is not None else then.air_c,
            rh_percent=one.rh_percent if one.rh_percent is not None else then.rh_percent,
            air_speed_m_s=(
                one.air_speed_m_s if one.air_speed_m_s is not None else then.air_speed_m_s
            ),
        )

    @property
    def settled_today(self) -> SettledJob:
        """The job with all that was measured and watched on the day."""
        return self._today.job

    @property
    def slab_c(self) -> float:
        """The slab as last measured, else as the morning has it."""
        told = [r.slab_c for r in self._story.readings if r.slab_c is not None]
        return told[-1] if told else self._morning.conditions(0.0).surface_c

    def open_time(self, coat: str, at_min: float) -> LiveClock | None:
        """How long an edge of this coat stays live."""
        return self._moved(coat, OPEN_TIME, at_min, at_min)

    def waits(self) -> Iterator[LiveClock]:
        """What is waited for after each coat that is done, in the plan's order."""
        last = self._plan.inputs.coats[-1].id
        ended = stained(self._plan, self._story)
        laid = ended.coat if ended is not None and ended.coat else last
        for clock in self._plan.clocks:
            if clock.name == OPEN_TIME or (clock.coat == laid != last):
                continue  # no coat comes over the one laid last: what follows it are the last's
            over = laid if clock.coat == last else clock.coat
            told = self._story.coat(over)
            if told is None or told.end_min is None:
                continue
            begins = self._begins(clock, told.end_min)
            found = self._moved(clock.coat, clock.name, told.end_min, begins)
            if found is not None:
                yield self._not_before_damp(_of_coat(found, over))

    def _not_before_damp(self, wait: LiveClock) -> LiveClock:
        """A coat is dry when its slowest room is: not by the last look that found one damp."""
        last: dict[str, tuple[bool, float]] = {}
        for one in self._story.sightings:
            seen = one.sighting
            if (seen.coat, seen.clock) == (wait.clock.coat, wait.clock.name):
                last[seen.room or ""] = (seen.ended, one.at_min)
        damp = max((at for ended, at in last.values() if not ended), default=None)
        if damp is None or wait.begins_min is None:
            return wait
        return replace(wait, clock=_not_before(wait.clock, damp - wait.begins_min))

    def _begins(self, clock: Clock, end_min: float) -> float | None:
        """When a wait began in truth; None while what it waits on is not done."""
        if clock.name in {"dry to recoat", "dry to neutralise", "dwell"}:
            return end_min
        before = {"dry-down before sealing": ("rinsed",)}.get(clock.name, ("sealed",))
        last = self._story.last(*before)
        return None if last is None else last.at_min

    def _moved(
        self, coat: str, name: str, at_min: float, begins: float | None
    ) -> LiveClock | None:  # fmt: skip
        planned = next((c for c in self._plan.clocks if (c.coat, c.name) == (coat, name)), None)
        if planned is None:
            return None
        seen = sum(one.sighting.clock == name for one in self._story.sightings)
        before = self._clock(self._morning, coat, name, at_min)
        after = self._clock(self._today, coat, name, at_min)
        if before is None or after is None or before == after:
            return LiveClock(planned, planned, begins, seen)
        ends = [
            _stretched(getattr(planned, key), getattr(before, key), getattr(after, key))
            for key in ("low_min", "likely_min", "high_min")
        ]
        moved = replace(
            planned,
            low_min=ends[0] if ends[0] is not None else planned.low_min,
            likely_min=ends[1],
            high_min=ends[2],
            rank=after.rank,
            source=after.source,
        )
        return LiveClock(moved, planned, begins, seen)

    def _clock(self, lasting: Lasting, coat: str, name: str, at_min: float) -> Clock | None:
        waits, settled = Waits(lasting, self._seen_today), lasting.job.coat(coat)
        last = coat == lasting.job.coats[-1].id
        if name == OPEN_TIME:
            return waits.open_time(settled, at_min)
        dry = waits.dry(settled, at_min, last=last)
        if dry.name == name:
            return dry
        return next((c for c in waits.after(settled, at_min, dry) if c.name == name), None)


def _of_coat(wait: LiveClock, coat: str) -> LiveClock:
    """The wait as that of a coat: the one laid last, where the plan had more."""
    if wait.clock.coat == coat:
        return wait
    clock, planned = (replace(one, coat=coat) for one in (wait.clock, wait.planned))
    return replace(wait, clock=clock, planned=planned)


def _stretched(planned: float | None, before: float | None, after: float | None) -> float | None:
    """The plan's end by the ratio of the two answers; an end that is not reached stays so."""
    if after is None or planned is None or not before:
        return after
    return round(planned * after / before, 1)


def _not_before(clock: Clock, least_min: float) -> Clock:
    """The range of a wait that is known to be longer: log-normal, what lies before cut away."""
    low, likely, high = clock.low_min, clock.likely_min, clock.high_min
    if least_min <= low:  # a room looked at while others were still sprayed: before the wait began
        return clock
    beyond, spread = 0.0, 0.0
    if likely is not None and high is not None and 0 < low < likely < high:
        spread = math.log(high / low) / (2 * _NINE_TENTHS)
        beyond = math.erfc(math.log(least_min / likely) / spread / math.sqrt(2)) / 2
    if likely is None or beyond <= 0:  # no range to cut, or nothing is left of it
        least = round(least_min, 1)
        ends = [None if one is None else max(one, least) for one in (likely, high)]
        return replace(clock, low_min=least, likely_min=ends[0], high_min=ends[1])
    cut = [
        round(likely * math.exp(-spread * NormalDist().inv_cdf(beyond * share)), 1)
        for share in (0.9, 0.5, 0.1)
    ]
    return replace(clock, low_min=cut[0], likely_min=cut[1], high_min=cut[2])
