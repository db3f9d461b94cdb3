"""What a phone carries of the sample day, and what the book answers about it. Pure.

The phone judges by itself from the course and its own entries, as `job/colour/sample_day` does; the
words of every step go along in both languages, so that they stand there without signal.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from farwall.facts.defaults import DEFAULT_STAINS
from farwall.facts.job import Job
from farwall.facts.log import Kept
from farwall.facts.plan import Plan
from farwall.job.colour.sample_day import course_of, day_of
from farwall.job.colour.sample_day.lasts import lasts_of
from farwall.job.colour.sample_day.nouns import Course, Planned
from farwall.job.colour.sample_day.says import FIGURE_NAMES, HELD, SAYS, WINS, Says
from farwall.job.story.order import in_order
from farwall.phrasebook import LANGUAGES, speaking, told

Json = dict[str, Any]
VERSION = 1


def sample_day_of(
    job: Job, plan: Plan | None, kept: Sequence[Kept], *, name: str, at_min: float
) -> Json:
    """The day for a phone: `course` as it carries it, `day` as the book judges it at a minute.

    Raises Refused for a cut that is none.
    """
    course = course_of(job, plan)
    happened = in_order(kept, starts_at=course.starts_at).happened
    day = day_of(course, happened, at_min=at_min)
    return {
        "place": max((one.place for one in kept), default=0),
        "course": course_told(job, course, name=name, plan=plan),
        "lasts": [
            {"what": one.what, "low_min": one.low_min, "likely_min": one.likely_min,
             "high_min": one.high_min}
            for one in lasts_of(course)
        ],
        "day": {
            "at_min": at_min, "begun": day.begun, "signed": day.signed,
            "tasks": [
                {"sample": one.sample, "step": one.step, "from_min": one.from_min}
                for one in day.tasks
            ],
            "stands": [
                {"sample": one.sample, "step": one.step, "from_min": one.from_min,
                 "waits_for": one.waits_for, "missing": list(one.missing)}
                for one in day.stands
            ],
        },
    }  # fmt: skip


def course_told(job: Job, course: Course, *, name: str, plan: Plan | None = None) -> Json:
    """The course as plain values: see `web/src/pure/sample_nouns.ts`. plan: tells what stains are
    called that the job itself does not tell."""
    return {
        "version": VERSION, "name": name, "starts_at": course.starts_at,
        "units": job.wishes.units, "language": job.wishes.language,
        "rooms": {room.id: room.label for room in job.floor.rooms},
        "stains": _stains(job, plan),
        "sealer": job.sealer.name or job.sealer.type or "",
        "samples": [_planned(one) for one in course.samples],
        "waits": [
            {"coat": one.coat, "name": one.name, "low_min": one.low_min,
             "likely_min": one.likely_min, "high_min": one.high_min, "rank": one.rank}
            for one in course.waits
        ],
        "told": {sample: list(marks) for sample, marks in course.told.items()},
        "says": {lang: _said(lang, SAYS) for lang in LANGUAGES},
        "figures": {lang: _words(lang, FIGURE_NAMES) for lang in LANGUAGES},
        "held": {lang: _words(lang, HELD) for lang in LANGUAGES},
        "wins": {lang: _words(lang, {"": WINS})[""] for lang in LANGUAGES},
    }  # fmt: skip


def _stains(job: Job, plan: Plan | None) -> dict[str, str]:
    """What stains are called, by their ids: as the job has it, else the plan, else as those that
    stand in are, whose names are ours and told in the job's language."""
    ours = {one.id: one.name for one in DEFAULT_STAINS}
    found = ours | (plan.stain_names if plan is not None else {})
    with speaking(job.wishes.language):
        found = {one: told(name) if name in ours.values() else name for one, name in found.items()}
    return found | {one.id: one.name or found.get(one.id, one.id) for one in job.stains}


def _planned(one: Planned) -> Json:
    return {
        "id": one.id, "coat": one.coat, "stain": one.stain, "cut": one.cut, "rung": one.rung,
        "over": one.over, "room": one.room, "area_m2": one.area_m2,
        "stain_ml": one.mix.stain_ml if one.mix else None,
        "water_ml": one.mix.water_ml if one.mix else None,
    }  # fmt: skip


def _said(language: Any, says: Mapping[str, Says]) -> dict[str, list[str]]:
    with speaking(language):
        return {
            code: [told(text) for text in (one.name, one.short, one.do, one.caution)]
            for code, one in says.items()
        }


def _words(language: Any, words: Mapping[str, str]) -> dict[str, str]:
    with speaking(language):
        return {code: told(text) for code, text in words.items()}
