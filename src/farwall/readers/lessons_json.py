"""Closed jobs and lessons as files: every mistake of a file at once.

Closed jobs come as one object, a list of them, or one a line (JSON lines).
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import date
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

from farwall.errors import Mistake, Refused
from farwall.facts.closed import CLOSED_VERSION, ClosedJob
from farwall.facts.lessons import LESSONS_VERSION, Lessons
from farwall.facts.plain import plain
from farwall.readers import json_text
from farwall.readers.json_text import Place, place_text
from farwall.readers.refusal import refusal
from farwall.readers.shape import did_you_mean, entries, keys_of
from farwall.readers.wording import in_words, shown

if TYPE_CHECKING:
    from pydantic import TypeAdapter

Noun = TypeVar("Noun", ClosedJob, Lessons)

MOST_MISTAKES = 100
_LATER = {ClosedJob: CLOSED_VERSION, Lessons: LESSONS_VERSION}
_CALLED = {ClosedJob: "closed job", Lessons: "file of lessons"}


def read_closed(path: Path | str) -> tuple[ClosedJob, ...]:
    """The closed jobs in a file. Raises Refused with every mistake in it."""
    path = Path(path)
    about = f"{path.name} tells no closed jobs yet"
    return _all_closed(_documents(json_text.read_text(path), about), about)


def closed_from(data: object, about: str) -> tuple[ClosedJob, ...]:
    """Closed jobs in plain JSON values, one or a list; `about` names where they come from."""
    about = f"{about} tells no closed jobs yet"
    each = data if isinstance(data, list) else [data]
    places: list[Place] = [(n,) for n in range(len(each))] if isinstance(data, list) else [()]
    return _all_closed(list(zip(places, each, strict=True)), about)


def read_lessons(path: Path | str) -> Lessons:
    """The lessons in a file. Raises Refused with every mistake in it."""
    path = Path(path)
    about = f"{path.name} holds no lessons"
    parsed = json_text.parse(json_text.read_text(path), about=f"{about}.")
    return _lessons(parsed.data, list(parsed.mistakes), about)


def lessons_from(data: object, about: str) -> Lessons:
    """The lessons in plain JSON values. Raises Refused; `about` names where they come from."""
    return _lessons(data, [], f"{about} holds no lessons")


def _lessons(data: object, mistakes: list[Mistake], about: str) -> Lessons:
    found = _noun(data, Lessons, (), mistakes)
    if found is None or mistakes:
        raise refusal(mistakes, about)
    return found


def lessons_text(lessons: Lessons) -> str:
    """The lessons as the text of a file."""
    return json.dumps(plain(lessons), indent=1, ensure_ascii=False, allow_nan=False) + "\n"


def closed_text(jobs: Sequence[ClosedJob]) -> str:
    """Closed jobs as JSON lines, what is not told left out."""
    lines = [json.dumps(plain(one, omit_empty=True), ensure_ascii=False) for one in jobs]
    return "".join(f"{line}\n" for line in lines)


def is_lessons(path: Path | str) -> bool:
    """Whether a file holds lessons rather than closed jobs; Refused when it is no JSON at all."""
    path = Path(path)
    each = _documents(json_text.read_text(path), f"{path.name} cannot be read")
    return len(each) == 1 and isinstance(each[0][1], dict) and "lessons" in each[0][1]


def _documents(text: str, about: str) -> list[tuple[Place, object]]:
    """What a file holds, each with its place; lines are told as lines only where they are that."""
    lines = [(n, line) for n, line in enumerate(text.splitlines(), 1) if line.strip()]
    if len(lines) > 1 and all(line.strip().startswith("{") for _, line in lines):
        mistakes: list[Mistake] = []
        found: list[tuple[Place, object]] = []
        for number, line in lines:
            try:
                parsed = json_text.parse(line, about=about)
            except Refused as refused:
                mistakes += [
                    Mistake(f"line {number}, {one.where}", one.what, one.remedy)
                    for one in refused.mistakes
                ]
                continue
            mistakes += parsed.mistakes
            found.append(((f"line {number}",), parsed.data))
        if mistakes:
            raise refusal(mistakes, about)
        return found
    parsed = json_text.parse(text, about=f"{about}.")
    if parsed.mistakes:
        raise refusal(list(parsed.mistakes), about)
    if isinstance(parsed.data, list):
        return [((n,), one) for n, one in enumerate(parsed.data)]
    return [((), parsed.data)]


def _all_closed(each: Sequence[tuple[Place, object]], about: str) -> tuple[ClosedJob, ...]:
    mistakes: list[Mistake] = []
    found = []
    for place, data in each:
        job = _noun(data, ClosedJob, place, mistakes)
        if job is not None:
            mistakes += _date_mistakes(job, place)
            found.append(job)
    if mistakes:
        raise refusal(mistakes, about)
    return tuple(found)


def _date_mistakes(job: ClosedJob, place: Place) -> list[Mistake]:
    try:
        date.fromisoformat(job.closed_on)
    except ValueError:
        where = place_text((*place, "closed_on"))
        return [Mistake(where, f"{shown(job.closed_on)} is no date.", "Write it as 2027-05-14.")]
    return []


def _noun(data: object, noun: type[Noun], place: Place, mistakes: list[Mistake]) -> Noun | None:
    """The noun in plain values, or None with the mistakes added."""
    from pydantic import ValidationError

    if not isinstance(data, dict):
        what = f"A {_CALLED[noun]} is an object, not {shown(data)}."
        mistakes.append(Mistake(place_text(place), what, "Write { … }."))
        return None
    version = data.get("version")
    if isinstance(version, int) and not isinstance(version, bool) and version > _LATER[noun]:
        what = f"This was made by a later Farwall (version {version})."
        mistakes.append(Mistake(place_text((*place, "version")), what, "Use that Farwall."))
        return None
    before = len(mistakes)
    for entry in list(entries(data, noun, place)):
        known = list(keys_of(entry.noun))
        for key in [key for key in entry.values if key not in known]:
            del entry.values[key]
            what = f"`{shown(key).strip(chr(34))}` is not a key here."
            where = place_text(entry.place)
            mistakes.append(Mistake(where, what, did_you_mean(key, known)))
    kind: Any = noun
    try:
        found: Any = _adapter(kind).validate_json(json.dumps(data), strict=True)
    except ValidationError as error:
        faults = [_moved(dict(one), place) for one in error.errors(include_url=False)]
        mistakes += in_words(faults, {})
        return None
    return found if len(mistakes) == before else None


def _moved(fault: dict[str, Any], place: Place) -> dict[str, Any]:
    """A fault of one noun, its place told from the file's beginning."""
    return fault | {"loc": (*place, *fault["loc"])}


@cache
def _adapter(noun: Any) -> TypeAdapter[Any]:
    from pydantic import TypeAdapter

    return TypeAdapter(noun)
