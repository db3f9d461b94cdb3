"""What is told of samples and of how the floor looked: facts of the job and its log, folded.

A measured figure of the facts stands, and the log fills what they are silent about: who corrects a
figure corrects it there. A judgement and an approval are the last that was made, so that those of
the log go before the facts. Looks are all kept. Struck entries are out. Pure.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any

from farwall.facts.defaults import stains_and_coats
from farwall.facts.drank import Drank, drank, made_with
from farwall.facts.job import Job
from farwall.facts.log import Kept
from farwall.facts.samples import STATES, Look, Sample
from farwall.job.story.noun import Happened
from farwall.job.story.order import in_order

_LAID = {
    "cut": "cut", "stain": "stain", "coat": "coat", "room": "room", "over": "over",
    "area_m2": "area_m2", "before_kg": "sprayer_before_kg", "after_kg": "sprayer_after_kg",
    "laid_ml": "laid_ml", "slab_c": "slab_c", "air_c": "air_c", "rh_percent": "rh_percent",
    "drop_s": "drop_s",
}  # fmt: skip
_WASHED = {
    "dwell_h": "dwell_h", "scrubs": "scrubs", "ph_before": "before_ph", "ph": "after_ph",
    "rag": "rag",
}  # fmt: skip
_TOLD: Mapping[str, Mapping[str, str]] = {
    "sample-laid": _LAID,
    "sample-sheen-lost": {"after_min": "sheen_loss_min"},
    "sample-dry": {"after_min": "dry_min"},
    "sample-washed": _WASHED,
    "sample-sealed": {"sealer": "sealer"},
    "sample-judged": {"verdict": "verdict"},
    "sample-approved": {"approved_by": "approved_by"},
}
"""By word: which key of the entry is which of the sample."""
_LAST_WINS = frozenset({"verdict", "approved_by", "approved_on"})


def samples_of(job: Job, kept: Sequence[Kept]) -> tuple[Sample, ...]:
    """The samples of a job, those of its facts first, then the log's as they were begun.

    Coverage that follows from what was laid is filled in, and a dwell that follows from when a
    sample was laid and washed. `over` is handed on as told: `beneath` follows it.
    """
    stains, coats = stains_and_coats(job)
    return tuple(
        _covered(one, drank(one, made_with(one, coats, stains))) for one in as_told(job, kept)
    )


def as_told(job: Job, kept: Sequence[Kept]) -> tuple[Sample, ...]:
    """The same, no coverage filled in: what may be written into the facts of the job."""
    told = {one.id: one for one in job.samples}
    fills: dict[str, dict[str, Any]] = {name: {} for name in told}
    laid_min: dict[str, float] = {}
    happened, starts_at = in_its_order(job, kept)
    for one in happened:
        if one.word not in _TOLD and one.word != "sample-seen":
            continue
        name = _called(one.text("sample"), fills)
        if not name:
            continue
        _take(fills.setdefault(name, {}), one, laid_min, name, job=job, starts_at=starts_at)
    return tuple(_filled(told.get(name, Sample(name)), filled) for name, filled in fills.items())


def scrub_told(kept: Sequence[Kept], job: Job) -> str | None:
    """What the last sample that was scrubbed did by the log; None where it does not tell."""
    happened, _ = in_its_order(job, kept)
    held = [one.text("held") for one in happened if one.word == "sample-washed"]
    return next((one for one in reversed(held) if one), None)


def signed_told(kept: Sequence[Kept], job: Job) -> bool | None:
    """True where the log tells of a sample that was signed; None where it does not."""
    happened, _ = in_its_order(job, kept)
    return True if any(one.word == "sample-approved" for one in happened) else None


def with_told(job: Job, kept: Sequence[Kept]) -> Job:
    """The job with its samples as they are told by facts and log together.

    `survey.sample_scrub` and `survey.sample_signed` are answered too (`survey_told`).
    """
    return replace(survey_told(job, kept), samples=samples_of(job, kept))


def survey_told(job: Job, kept: Sequence[Kept]) -> Job:
    """The job with what go asks of the sample answered by its log, where the facts are silent."""
    if not any(one.entry.word in {"sample-washed", "sample-approved"} for one in kept):
        return job
    survey = job.survey
    if survey.sample_scrub is None:
        survey = replace(survey, sample_scrub=scrub_told(kept, job))  # type: ignore[arg-type]
    if survey.sample_signed is None:
        survey = replace(survey, sample_signed=signed_told(kept, job))
    return replace(job, survey=survey)


def beneath(samples: Sequence[Sample], name: str) -> tuple[Sample, ...] | None:
    """The coats on a square from the lowest up to this sample's own.

    None where one beneath is not told, or where they lie over one another in a ring: nobody knows
    then what was laid before.
    """
    by_id = {one.id: one for one in samples}
    found: list[Sample] = []
    at: str | None = name
    while at is not None:
        one = by_id.get(at)
        if one is None or one in found:
            return None
        found.append(one)
        at = one.over
    return tuple(reversed(found))


def in_its_order(job: Job, kept: Sequence[Kept]) -> tuple[tuple[Happened, ...], str]:
    """What happened by the log, struck entries out, and the moment that its minutes count from."""
    if not kept:
        return (), job.starts_at or ""
    first = min(kept, key=lambda one: (datetime.fromisoformat(one.entry.at), one.entry.id))
    starts_at = job.starts_at or first.entry.at
    return in_order(kept, starts_at=starts_at).happened, starts_at


def moment(starts_at: str, at_min: float) -> str:
    """A minute as ISO 8601, in whole seconds, with the offset of the start."""
    found = datetime.fromisoformat(starts_at) + timedelta(minutes=at_min)
    return found.isoformat(timespec="seconds")


def look_of(one: Happened) -> Look | None:
    """The look that an entry tells of; None where state or colour is missing."""
    state = one.text("state")
    lab = [one.number(key) for key in ("lightness", "lab_a", "lab_b")]
    if state not in STATES or None in lab:
        return None
    spots = one.number("spots")
    return Look(
        state=state,
        lab=tuple(lab),  # type: ignore[arg-type]
        error_de=one.number("error_de"),
        photo=one.text("file"),
        light=one.text("light") or None,  # type: ignore[arg-type]
        spots=int(spots) if spots else 1,
        spread_lightness=one.number("spread_lightness"),
    )


def _called(text: str, known: Mapping[str, object]) -> str:
    """The sample that is meant: as written, or one that differs in capitals and blanks alone."""
    name = text.strip()
    if name in known:
        return name
    return next((one for one in known if one.casefold() == name.casefold()), name)


def _take(
    filled: dict[str, Any],
    one: Happened,
    laid_min: dict[str, float],
    name: str,
    *,
    job: Job,
    starts_at: str,
) -> None:
    """What an entry tells, into what is told of its sample so far; the later entry wins."""
    if one.word == "sample-seen":
        look = look_of(one)
        if look is not None:
            filled["looks"] = (*filled.get("looks", ()), look)
        return
    for key, field in _TOLD[one.word].items():
        value = one.about.get(key)
        if value is not None and value != "":
            filled[field] = int(one.number(key) or 0) if field == "scrubs" else value
    if one.word == "sample-laid":
        laid_min[name] = one.at_min
    elif one.word == "sample-washed" and one.number("dwell_h") is None and name in laid_min:
        dwell_h = (one.at_min - laid_min[name]) / 60
        if dwell_h > 0:
            filled["dwell_h"] = round(dwell_h, 3)
    elif one.word == "sample-sealed" and not one.text("sealer"):
        filled["sealer"] = job.sealer.name or job.sealer.type or ""
    elif one.word == "sample-approved":
        filled["approved_on"] = moment(starts_at, one.at_min)[:10]


def _filled(told: Sample, filled: Mapping[str, Any]) -> Sample:
    """The facts of a sample with what the log tells of it."""
    changes = {
        key: value
        for key, value in filled.items()
        if key in _LAST_WINS or (key != "looks" and getattr(told, key) in {None, ""})
    }
    seen = tuple(one for one in filled.get("looks", ()) if one not in told.looks)
    return replace(told, **changes, looks=(*told.looks, *seen))


def _covered(one: Sample, found: Drank | None) -> Sample:
    return one if found is None else replace(one, m2_per_l=found.m2_per_l)
