"""What a closed job tells the next ones: its plan and the story of its log. Pure.

Only what was entered counts; what was left as planned teaches nothing.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from typing import get_args

from farwall.facts.closed import (
    MOST_PEOPLE,
    MOST_STEPS,
    ClockName,
    ClosedJob,
    ColourSeen,
    Look,
    Rinsed,
    Sprayed,
    TaskHours,
    TaskName,
    WaitSeen,
)
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.log import Kept
from farwall.facts.plan import Plan
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.floor.takeoff import take_off
from farwall.floor.thresholds import join_thresholds
from farwall.job.call_back.closed import closed_call_back
from farwall.job.colour.library import stains_seen
from farwall.job.lasting import lasting_of
from farwall.job.live.clocks import LiveClocks
from farwall.job.rinses import MOST_ROUNDS, Rinses
from farwall.job.story.noun import CoatStory, FieldStory, Happened, Story
from farwall.job.waits import Waits
from farwall.nouns import dataclass

WHOLE = "all fields"
"""The field of a coat whose litres are known for all its fields together and not for each."""


def closed_job(
    job: Job, plan: Plan, story: Story, *, job_id: str, kept: Sequence[Kept] = ()
) -> ClosedJob:
    """What the job tells. Its day is that of hand-over, else of the last entry.

    kept: the entries that the story is of, by which samples of the log are told; without them only
    the samples of the facts tell of stains.
    """
    settled = settle(job, starts_at=plan.starts_at)
    return ClosedJob(
        version=1,
        id=job_id,
        closed_on=_day(plan, story.last("handed-over"), story),
        name=job.name[:200],
        sprayed=tuple(_sprayed(settled, plan, story)),
        waits=tuple(_waits(job, plan, story)),
        hours=tuple(_hours(story, take_off(join_thresholds(job.floor)).net_m2)),
        rinsed=tuple(_rinsed(job, plan, settled, story)),
        colour=tuple(_colour(job, story)),
        called_back=tuple(
            closed_call_back(job, plan, story, one) for one in story.of("called-back")
        ),
        stains=stains_seen(job, plan, kept, story),
    )


def _day(plan: Plan, handed_over: Happened | None, story: Story) -> str:
    at_min = handed_over.at_min if handed_over is not None else story.ends_min
    return (datetime.fromisoformat(plan.starts_at) + timedelta(minutes=at_min)).date().isoformat()


def _sprayed(settled: SettledJob, plan: Plan, story: Story) -> Iterator[Sprayed]:
    for number, coat in enumerate(settled.coats, 1):
        told = story.coat(coat.id)
        if told is None:
            continue
        laid = _Laid(settled, plan, story, coat, number)
        weighed = [one for one in told.fields if one.used_l and one.end_min is not None]
        if weighed:
            yield from map(laid.field, weighed)
        elif (whole := laid.whole(told)) is not None:
            yield whole


@dataclass(frozen=True)
class _Laid:
    """One coat of the job, the `number`th of its floor."""

    settled: SettledJob
    plan: Plan
    story: Story
    coat: SettledCoat
    number: int

    def field(self, one: FieldStory) -> Sprayed:
        """A field that was weighed at both its ends."""
        rooms = next((field.rooms for field in self.plan.fields if field.id == one.field), ())
        return replace(
            self._of(one.field, rooms),
            area_m2=one.area_m2,
            used_l=one.used_l or 0.0,
            planned_l=one.planned_l or None,
            spray_min=_spray_min([one]),
        )

    def whole(self, told: CoatStory) -> Sprayed | None:
        """A coat weighed only at its end, all its fields together; None where it was not."""
        used_l = told.used_l
        if told.end_min is None or used_l is None or used_l <= 0:
            return None
        last = told.levels[-1]
        if last.bands < len(told.done):
            return None
        own = [field for field in self.plan.fields if field.coat == self.coat.id]
        return replace(
            self._of(WHOLE, tuple(room for field in own for room in field.rooms)),
            area_m2=last.area_m2,
            used_l=used_l,
            planned_l=last.planned_l or None,
            spray_min=_spray_min(told.fields),
        )

    def _of(self, field: str, rooms: Sequence[str]) -> Sprayed:
        """What is known of the field before a litre is."""
        floors = [self.settled.room(room) for room in dict.fromkeys(rooms)]
        finishes = {one.finish for one in floors}
        drops = [one.drop_s for one in floors if one.drop_told]
        lots = {o.text("lot") for o in self.story.of("mixed") if o.text("coat") == self.coat.id}
        return Sprayed(
            coat=self.coat.id,
            field=field,
            area_m2=1.0,
            used_l=1.0,
            number=self.number,
            sampled=bool(self.coat.samples),
            finish=next(iter(finishes)) if len(finishes) == 1 else None,
            drop_s=sum(drops) / len(drops) if drops and len(drops) == len(floors) else None,
            person=_person(self.story, field, self.coat),
            stain=self.coat.stain.id,
            lot=next(iter(lots))[:80] if len(lots) == 1 else "",
        )


def _person(story: Story, field: str, coat: SettledCoat) -> str:
    """Who sprayed: whoever entered its bands, where that was one person; else nobody is named."""
    own = f"{coat.id}." if field == WHOLE else field
    sprayed = story.of("field-started", "band-done", "field-done")
    names = {
        one.who
        for one in sprayed
        if one.who and f"{one.text('band') or one.text('field')}.".startswith(f"{own.rstrip('.')}.")
    }
    return next(iter(names))[:80] if len(names) == 1 else ""


def _spray_min(fields: Sequence[FieldStory]) -> float | None:
    """Minutes of spraying, where every band's end was entered; else None."""
    bands = [band for field in fields for band in field.bands]
    if not bands or not all(band.told for band in bands):
        return None
    minutes = sum(band.end_min - band.start_min for band in bands)
    return minutes if minutes > 0 else None


def _waits(job: Job, plan: Plan, story: Story) -> Iterator[WaitSeen]:
    """Waits that were watched on this floor, as shares of what is usual at their conditions."""
    if not story.sightings and not job.seen:
        return
    clocks = LiveClocks(job, plan, story)
    waits = Waits(lasting_of(clocks.settled_today, None))
    for coat in waits.lasting.job.coats:
        for clock in get_args(ClockName):
            for one in waits.seen_of(clock, coat):
                if one.share > 0:
                    yield WaitSeen(clock, one.share, one.ended, one.since, one.room[:80])


def _hours(story: Story, area_m2: float) -> Iterator[TaskHours]:
    for one in story.of("hours"):
        hours, people = one.number("hours"), one.number("people")
        task = next((known for known in get_args(TaskName) if known == one.text("task")), None)
        if hours and task is not None:
            hands = int(people) if people and people <= MOST_PEOPLE else None
            yield TaskHours(task, hours, area_m2, hands)


def _rinsed(job: Job, plan: Plan, settled: SettledJob, story: Story) -> Iterator[Rinsed]:
    """Rinses up to the first clean rag, by room; once for the whole floor where no entry names a
    room."""
    rinses = Rinses(job, plan, story)
    named = any(one.text("room") for one in story.of("rinsed"))
    finishes = {one.finish for one in settled.survey.rooms.values()}
    whole = next(iter(finishes)) if len(finishes) == 1 else None
    for room in rinses.areas if named else [*rinses.areas][:1]:
        rounds = zip(rinses.rounds(room), rinses.counts(room), strict=True)
        count = next((count for one, count in rounds if one.rag == "clean"), None)
        if count is None:
            continue
        found = settled.survey.rooms.get(room) if named else None
        finish = found.finish if found is not None else whole
        yield Rinsed(min(count, MOST_ROUNDS), finish, room[:80] if named else "")


def _colour(job: Job, story: Story) -> Iterator[ColourSeen]:
    plant = job.survey.mix.plant
    for one in story.of("coat-judged"):
        look = next((known for known in get_args(Look) if known == one.text("look")), None)
        if look is not None:
            steps = one.number("steps")
            by = steps if steps is not None and steps <= MOST_STEPS else None
            yield ColourSeen(look, by, plant[:80], one.text("coat"))
