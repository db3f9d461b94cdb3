"""The sample day in words for its page: what now, each sample, how long, photos to be read."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import datetime, timedelta
from typing import Any

from farwall.facts.job import Job
from farwall.facts.log import Kept
from farwall.facts.samples import Sample
from farwall.job.colour.sample_day import course_of, day_of
from farwall.job.colour.sample_day.lasts import lasts_of
from farwall.job.colour.sample_day.nouns import Course, Day, Planned, Stand
from farwall.job.colour.sample_day.says import BEFORE, FIGURE_NAMES, HELD, SAYS
from farwall.job.colour.sample_day.standing import samples_in
from farwall.job.colour.told import samples_of
from farwall.job.story.noun import Happened
from farwall.job.story.order import in_order
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.papers.words import minutes
from farwall.phrasebook import told
from farwall.units import ft2_from_m2, ft2_per_gal_from_m2_per_l
from farwall.web.words import said

_MOST_NEXT = 4


@dataclass(frozen=True)
class Ground:
    """What the page is made of, reckoned once. at_min: the minute of the course that it is."""

    job: Job
    course: Course
    happened: tuple[Happened, ...]
    day: Day
    samples: dict[str, Sample]
    at_min: float


def ground_of(job: Job, plan: Any, kept: Sequence[Kept], now: datetime) -> Ground:
    """The day of a job as it stands now. Raises Refused for a cut that is none."""
    course = course_of(job, plan)
    at_min = (now - datetime.fromisoformat(course.starts_at)).total_seconds() / 60
    happened = in_order(kept, starts_at=course.starts_at).happened
    day = day_of(course, happened, at_min=at_min)
    samples = {one.id.casefold(): one for one in samples_of(job, kept)}
    return Ground(job, course, happened, day, samples, at_min)


def day_shown(ground: Ground) -> dict[str, Any]:
    """What the template is given."""
    planned = samples_in(ground.course, ground.happened)
    by_id = {one.id: one for one in planned}
    ready = [one for one in ground.day.tasks if not _waits(one.from_min, ground)]
    tasks = [*ready, *(one for one in ground.day.tasks if one not in ready)]
    return {
        "now": [_task(one, by_id, ground) for one in tasks[:1]],
        "next": [_task(one, by_id, ground) for one in tasks[1 : _MOST_NEXT + 1]],
        "signed": ground.day.signed,
        "lasts": [_lasting(one) for one in lasts_of(ground.course)],
        "rows": [_row(one, stand, ground) for one, stand in zip(planned, ground.day.stands,
                                                               strict=True)],
        "before": [_step(code) for code in BEFORE],
        "steps": [_step(code) for code in SAYS if code not in {*BEFORE, "done", "out"}],
        "held": [told(text) for text in HELD.values()],
        "photos": photos_to_read(ground.happened),
    }  # fmt: skip


def _waits(from_min: float | None, ground: Ground) -> bool:
    return from_min is not None and from_min > ground.at_min


def _step(code: str) -> dict[str, str]:
    one = SAYS[code]
    return {"name": one.name, "do": one.do, "caution": one.caution}


def _task(one: Any, by_id: dict[str, Planned], ground: Ground) -> dict[str, Any]:
    sample = by_id.get(one.sample)
    at = clock_at(ground, one.from_min) if _waits(one.from_min, ground) else ""
    return {
        "sample": one.sample, **_step(one.step), "at": at,
        "mix": mix_words(sample) if sample is not None and one.step == "lay" else "",
    }  # fmt: skip


def mix_words(one: Planned) -> str:
    """`240 mL water, then 80 mL stain into it`; empty where the cut is not known."""
    if one.mix is None:
        return ""
    if not one.mix.water_ml:
        return said("colour-day-neat", stain=one.mix.stain_ml)
    return said("colour-day-mix", water=one.mix.water_ml, stain=one.mix.stain_ml)


def clock_at(ground: Ground, minute: float | None) -> str:
    """The hour of a minute on the clock of the house, with its day."""
    if minute is None:
        return ""
    at = datetime.fromisoformat(ground.course.starts_at) + timedelta(minutes=minute)
    return f"{at.day}.{at.month}. {at.hour}:{at.minute:02d}" if _metric(ground) else (
        f"{at.month}/{at.day} {at.hour}:{at.minute:02d}"
    )  # fmt: skip


def _metric(ground: Ground) -> bool:
    return ground.job.wishes.units == "metric"


def _lasting(one: Any) -> dict[str, str]:
    ends = (one.low_min, one.likely_min, one.high_min)
    if None in ends:
        return {"what": one.what, "told": said("colour-day-unknown")}
    low, likely, high = (hours(end) for end in ends)
    return {"what": one.what, "told": said("colour-day-range", low=low, likely=likely, high=high)}


def hours(value_min: float) -> str:
    """Minutes up to two hours, then hours, from two days on days; whole ones or halves."""
    if value_min < 120:
        return f"{value_min:.0f} min"
    if value_min < 2880:
        return f"{round(value_min / 30) / 2:g} h"
    return f"{round(value_min / 720) / 2:g} d"


def _row(one: Planned, stand: Stand, ground: Ground) -> dict[str, Any]:
    return {
        "id": one.id, "cut": told(one.cut),
        "rung": said(f"colour-day-{one.rung}") if one.rung else "",
        "where": _where(one, ground), "mix": mix_words(one) if stand.step == "lay" else "",
        "step": SAYS[stand.step].name, "when": _when(stand, ground),
        "found": found_words(ground.samples.get(one.id.casefold()), ground.job.wishes.units),
        "missing": [FIGURE_NAMES[code] for code in stand.missing],
    }  # fmt: skip


def _where(one: Planned, ground: Ground) -> str:
    rooms = ground.job.floor.room_by_id
    room = rooms[one.room].label if one.room in rooms else one.room
    parts = [
        spot(one.area_m2, ground.job.wishes.units), room or said("colour-day-place-none"),
        said("colour-day-over", id=one.over) if one.over else "", told(one.why) if one.why else "",
    ]  # fmt: skip
    return ", ".join(part for part in parts if part)


def spot(area_m2: float, units: Units) -> str:
    """`7.8 ft²` or `0.72 m²`."""
    return f"{ft2_from_m2(area_m2):.1f} ft²" if units == "us" else f"{area_m2:.2f} m²"


def _when(stand: Stand, ground: Ground) -> str:
    if stand.waits_for:
        return said("colour-day-after", id=stand.waits_for)
    for run in stand.running:
        low, high = run.low_min, run.high_min
        if run.name in {"sheen", "dry"} and low is not None:
            since = minutes(max(ground.at_min - run.from_min, 0.0))
            top = "…" if high is None else minutes(high)
            return said(f"colour-day-running-{run.name}", since=since, low=minutes(low), high=top)
        if run.name == stand.step.replace("wash", "dwell").replace("seal", "dry-down"):
            return said(f"colour-day-running-{run.name}", at=clock_at(ground, stand.from_min))
    return ""


def found_words(one: Sample | None, units: Units) -> list[str]:
    """What was measured at a sample, each figure in words."""
    if one is None:
        return []
    drank = drank_words(one, units)
    figures: Iterable[tuple[str, object | None, dict[str, object]]] = (
        ("drank", one.m2_per_l, {"drank": drank}),
        ("sheen", one.sheen_loss_min, {"min": _short(one.sheen_loss_min)}),
        ("dry", one.dry_min, {"min": _short(one.dry_min)}),
        ("dwell", one.dwell_h, {"h": _short(one.dwell_h)}),
        ("scrubs", one.scrubs, {"n": one.scrubs}),
        ("ph", one.after_ph, {"ph": _short(one.after_ph)}),
    )
    parts = [said(f"colour-day-found-{key}", **put) for key, value, put in figures if value]
    if one.rag:
        parts.append(said("colour-day-found-rag", rag=said(f"colour-day-rag-{one.rag}")))
    last = {look.state: look for look in one.looks}
    parts += [
        said("colour-day-found-look", state=said(f"colour-day-state-{state}"),
             lightness=f"{look.lab[0]:.0f}")
        for state, look in last.items()
    ]  # fmt: skip
    if one.verdict:
        parts.append(said(f"colour-day-found-verdict-{one.verdict}"))
    return parts


def drank_words(one: Sample, units: Units) -> str:
    """Coverage of a sample, `190 ft²/gal`; empty where it is not known."""
    if one.m2_per_l is None:
        return ""
    if units == "us":
        return f"{ft2_per_gal_from_m2_per_l(one.m2_per_l):.0f} ft²/gal"
    return f"{one.m2_per_l:.1f} m²/L"


def _short(value: float | None) -> str:
    return "" if value is None else f"{round(value, 1):g}"


def photos_to_read(happened: Iterable[Happened]) -> list[dict[str, str]]:
    """Photos of a sample in a state that no look was read from yet, in their order."""
    every = list(happened)
    read = {one.text("file") for one in every if one.word == "sample-seen"}
    found = [one for one in every if one.word == "photo" and one.text("sample")]
    return [
        {"sample": one.text("sample"), "state": one.text("state"), "light": one.text("light"),
         "file": one.text("file")}
        for one in found if one.text("state") and one.text("file") not in read
    ]  # fmt: skip
