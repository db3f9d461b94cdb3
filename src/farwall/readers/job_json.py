"""A job file to a `Job`, and back: the one place where a job's JSON is judged.

All mistakes come at once, each with its place and what to do. US twins
(`tank_gal` for `tank_l`) are converted here and nowhere else.
"""

from __future__ import annotations

import json
import re
from collections.abc import Mapping
from dataclasses import MISSING, field, fields
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any, cast, get_type_hints

from farwall.errors import Mistake, Refused
from farwall.facts.job import JOB_VERSION, Job
from farwall.facts.plain import plain
from farwall.nouns import dataclass
from farwall.readers import json_text
from farwall.readers.job_floor import (
    far_points,
    floor_from_features,
    mend_rings,
    outline_mistakes,
)
from farwall.readers.job_limits import LIMITS
from farwall.readers.job_sense import sense_mistakes
from farwall.readers.json_text import Place, place_text
from farwall.readers.other_file import drawing, other_file
from farwall.readers.refusal import refusal
from farwall.readers.shape import Entry, did_you_mean, entries, keys_of
from farwall.readers.twins import TWINS, Twin, convert
from farwall.readers.wording import beyond, in_words, shown

if TYPE_CHECKING:
    from pydantic import TypeAdapter

MOST_MISTAKES = 100

# Only structure holds line ends in JSON: a text that looks like a point is not touched.
_POINT = re.compile(r"\[\n\s+(-?[\d.eE+-]+(?:,\n\s+-?[\d.eE+-]+)*)\n\s+\]")


def read_job(path: Path | str) -> Job:
    """The job in a file. Raises Refused with every mistake in it."""
    path = Path(path)
    try:
        text = json_text.read_text(path)
        parsed = json_text.parse(text, about=f"{path.name} is not a job yet.")
    except Refused as refused:
        instead = drawing(_bytes_of(path))
        if instead is None:
            raise
        raise Refused(instead, about=f"{path.name} is not a job yet.") from refused
    return _job(parsed, f"{path.name} is not a job yet")


def _bytes_of(path: Path) -> bytes:
    """A file that could not be read as a job; nothing where it cannot be read at all."""
    try:
        return path.read_bytes() if path.stat().st_size <= json_text.MOST_BYTES else b""
    except OSError:
        return b""


def job_from(data: object, about: str) -> Job:
    """The job in plain JSON values; `about` names where they come from.

    Raises Refused with every mistake, whatever the values are.
    """
    about = f"{about} is not a job yet"
    return _job(json_text.inspect(data, about=f"{about}."), about)


def job_to_dict(job: Job) -> dict[str, object]:
    """The job as plain JSON values: all that it says, in the order of its nouns.

    What it does not say (None, empty text, empty lists) is left out, so that
    `job_from(job_to_dict(job))` is the same job again.
    """
    said = cast("dict[str, object]", plain(job, omit_empty=True))
    # The three required keys stay, whatever they hold.
    floor = cast("dict[str, object]", said["floor"])
    floor.setdefault("rooms", [])
    said.setdefault("exits", [])
    return said


def job_to_text(job: Job) -> str:
    """The job as the text of a file, a point to a line."""
    text = json.dumps(job_to_dict(job), indent=1, ensure_ascii=False, allow_nan=False)
    return _POINT.sub(lambda found: "[" + re.sub(r"\s+", " ", found[1]) + "]", text) + "\n"


@cache
def adapter() -> TypeAdapter[Job]:
    """Pydantic's checker of a job, made once and only when a file is read."""
    from pydantic import TypeAdapter

    return TypeAdapter(Job)


@cache
def _hints() -> dict[str, Any]:
    return get_type_hints(Job, include_extras=True)


@cache
def _of_key(key: str) -> TypeAdapter[Any]:
    """Pydantic's checker of one key of a job, made when a file has that key.

    That of a whole job takes 0.08 s to make, and most jobs tell few of its thirty keys.
    """
    from pydantic import TypeAdapter

    return TypeAdapter(_hints()[key])


@dataclass
class _Findings:
    """What the checks of one file have found so far."""

    mistakes: list[Mistake] = field(default_factory=list)
    written: dict[Place, tuple[Place, Twin]] = field(default_factory=dict)
    told: set[Place] = field(default_factory=set)


def _job(parsed: json_text.JsonText, about: str) -> Job:
    found = _Findings(list(parsed.mistakes))
    if not isinstance(parsed.data, dict):
        what = f"A job is an object, not {shown(parsed.data)}."
        found.mistakes.append(Mistake("", what, "`farwall schema job` shows what it holds."))
        raise refusal(found.mistakes, about)
    raw = parsed.data
    other = other_file(raw)
    if other is not None:
        raise refusal([other], about)
    _refuse_other_versions(raw, about)
    features = floor_from_features(raw)
    if features:
        found.mistakes += features
        found.told.add(("floor",))
    for entry in list(entries(raw, Job)):
        _look_at(entry, found)
    found.mistakes += sense_mistakes(raw)
    found.told |= parsed.spoilt
    job = _typed(raw, found)
    if not any(one.where.startswith(("floor", "exits")) for one in found.mistakes):
        found.mistakes += _floor_faults(raw, found)
    if found.mistakes or job is None:
        raise refusal(found.mistakes, about)
    return job


def _refuse_other_versions(raw: dict[str, object], about: str) -> None:
    """A later version is refused at once: its other keys cannot be judged here."""
    version = raw.get("version")
    if isinstance(version, bool) or not isinstance(version, int | float):
        return
    if version > JOB_VERSION:
        what = f"This job was made by a later Farwall (version {version:g})."
        remedy = f"Use that Farwall; this one knows jobs up to version {JOB_VERSION}."
        raise refusal([Mistake("version", what, remedy)], about)


def _look_at(entry: Entry, found: _Findings) -> None:
    """Convert the twins of one noun, then look at its keys, its figures and its outline."""
    doubled, written = convert(entry)
    found.mistakes += doubled
    found.written |= written
    known = list(keys_of(entry.noun))
    for key in [key for key in entry.values if key not in known]:
        del entry.values[key]
        spellings = known + [twin.other for twin in TWINS.get(entry.noun, ())]
        what = f"`{shown(key).strip(chr(34))}` is not a key here."
        found.mistakes.append(Mistake(place_text(entry.place), what, did_you_mean(key, spellings)))
    _look_at_figures(entry, found)
    if "line" in entry.values:
        found.mistakes += far_points((*entry.place, "line"), entry.values["line"])
    mend_rings(entry)
    found.mistakes += outline_mistakes(entry)


def _look_at_figures(entry: Entry, found: _Findings) -> None:
    for key, value in entry.values.items():
        limit = LIMITS.get((entry.noun, key))
        if limit is None or isinstance(value, bool) or not isinstance(value, int | float):
            continue
        place = (*entry.place, key)
        if value > limit.high:
            found.mistakes.append(beyond(place, value, "at most", limit.high, found.written))
        elif value <= 0 < limit.low:
            found.mistakes.append(beyond(place, value, "more than", 0, found.written))
        elif value < limit.low:
            found.mistakes.append(beyond(place, value, "at least", limit.low, found.written))
        else:
            continue
        found.told.add(place)


def _typed(raw: dict[str, object], found: _Findings) -> Job | None:
    told, faults = judged(raw)
    if not faults:
        return Job(**told)
    untold = [one for one in faults if not _inside(tuple(one["loc"]), found.told)]
    found.mistakes += in_words(untold, found.written)
    return None


def judged(raw: Mapping[str, object]) -> tuple[dict[str, Any], list[dict[str, Any]]]:
    """The keys of a job as its nouns, and pydantic's faults: as `adapter` tells of the whole."""
    from pydantic import ValidationError

    told: dict[str, Any] = {}
    faults: list[dict[str, Any]] = []
    for one in fields(Job):
        key = one.name
        if key in raw:
            try:
                told[key] = _of_key(key).validate_json(json.dumps(raw[key]), strict=True)
            except ValidationError as error:
                each = error.errors(include_url=False)
                faults += [{**fault, "loc": (key, *fault["loc"])} for fault in each]
        elif one.default is MISSING and one.default_factory is MISSING:
            faults.append({"type": "missing", "loc": (key,), "msg": "Field required", "input": raw})
    return told, faults


def _floor_faults(raw: dict[str, object], found: _Findings) -> list[Mistake]:
    """What does not hold together on the ground, told even when other parts have mistakes too."""
    from farwall.floor.faults import faults_of

    if "floor" not in raw or "exits" not in raw:
        return []
    part = {"version": JOB_VERSION, "floor": raw["floor"], "exits": raw["exits"]}
    job = _typed(part, found)
    return [] if job is None else faults_of(job.floor, job.exits)


def _inside(place: Place, told: set[Place]) -> bool:
    return any(place[:depth] in told for depth in range(len(place) + 1))
