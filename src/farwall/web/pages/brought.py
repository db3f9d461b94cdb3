"""What somebody brings: a job.json, or a drawing made into one; judged by the readers."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import field, replace
from typing import TYPE_CHECKING, Any

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.readers.room_names import slug
from farwall.web.bombs import insist_bearable_json
from farwall.web.pages.brought_asked import asked_of, storey_id
from farwall.web.pages.brought_stated import stated_rows

if TYPE_CHECKING:
    from farwall.facts.reading import Note, Reading

MOST_MB = 20
Json = dict[str, Any]


@dataclass(frozen=True)
class Brought:
    """A house as it was brought.

    facts: its job; None where the drawing cannot be a job yet, and `drawn` is to be corrected.
    notes: what the reader mended, left and asks; `unit`: as the drawing was read. asked: what has
    to be said first (a storey, a scale), with the picture of what was read as SVG. storey: the one
    that was chosen. stated: sizes that the file tells, compared with the outlines.
    """

    id: str
    name: str
    facts: Json | None
    drawn: Json | None = None
    notes: Mapping[str, Sequence[Note]] = field(default_factory=dict)
    unit: str = ""
    is_drawing: bool = False
    storey: str = ""
    stated: Sequence[Json] = ()
    asked: Json | None = None
    picture: bytes = b""


def brought(
    content: bytes, name: str, *, scale_m_per_unit: float | None = None, storey: str = ""
) -> Brought:
    """What is in the bytes of a file of any kind that is read here.

    name: of the file; a house without an id of its own is called by it. A drawing that lacks
    something only a person can say (rooms, a way out) is brought to be corrected; one of several
    storeys without `storey`, an id, is asked about. Raises Refused with every mistake.
    """
    if content[:64].lstrip(b"\xef\xbb\xbf \t\r\n").startswith((b"{", b"[")):
        insist_bearable_json(content)
    data = _job_data(content)
    if data is not None:
        facts = facts_of_job(data, name)
        return Brought(str(facts["id"]), str(facts.get("name", "")), facts)
    from farwall.readers.any_plan import read_content
    from farwall.readers.hints import Hints

    hints = Hints(scale_m_per_unit=scale_m_per_unit, floors="shell")
    reading = read_content(content, name=name, hints=hints)
    return _of_drawing(reading, name, storey)


def _of_drawing(reading: Reading, name: str, storey: str) -> Brought:
    from farwall.job.from_reading import job_from_reading
    from farwall.readers.job_json import job_to_dict
    from farwall.web.pages.drawn import drawn_floor

    job_id, called = id_from(name), called_by(name)
    notes = {"mended": reading.mended, "left": reading.left, "asks": reading.asks}
    found = Brought(job_id, called, None, None, notes, reading.length_unit, is_drawing=True)
    found = replace(found, stated=stated_rows(reading))
    if not reading.floor.rooms:
        return replace(found, drawn=drawn_floor(reading.floor))
    asked = asked_of(reading)
    if asked is not None and (asked["scale"] or not storey):
        from farwall.papers.reading.picture import reading_svg

        return replace(
            found, asked=asked, picture=reading_svg(reading, title=called, width=820.0).encode()
        )
    if asked is not None:
        job_id = storey_id(job_id, asked, storey)
        called = f"{called}, {next(s['name'] for s in asked['storeys'] if s['id'] == storey)}"
        found = replace(found, id=job_id, name=called, storey=storey)
    job = job_from_reading(reading, storey=storey or None, job_id=job_id, exits_told=True)
    if not job.exits:
        return replace(found, drawn=drawn_floor(job.floor))
    facts = job_to_dict(job)
    facts.setdefault("name", called)
    facts = facts_of_job(facts, name)
    return replace(found, id=str(facts["id"]), name=str(facts["name"]), facts=facts)


def facts_of_job(facts: Json, name: str = "") -> Json:
    """The facts as given, when a job can be read from them. Raises Refused with every mistake."""
    from farwall.readers.job_json import job_from

    job = job_from(facts, name or "This file")
    if not job.id:
        facts = {**facts, "id": id_from(name)}
    elif "/" in job.id:  # it becomes part of an address
        facts = {**facts, "id": id_from(f"{slug(job.id)}.json")}
    return facts


def id_from(name: str) -> str:
    """An id for a house that has none: the name of its file, as addresses are written."""
    return slug(_stem(name))[:60] or "house"


def called_by(name: str) -> str:
    """What a house is called that has no name but that of its file."""
    return _stem(name).replace("_", " ").strip()


def _stem(name: str) -> str:
    bare = name.replace("\\", "/").rpartition("/")[2]
    return (bare.rpartition(".")[0] or bare)[:80]


def _job_data(content: bytes) -> Json | None:
    """The file's values when it looks like a job of ours, None when it is something else."""
    if not content[:64].lstrip(b"\xef\xbb\xbf \t\r\n").startswith(b"{"):
        return None
    try:
        data = json.loads(content)
    except RecursionError:
        raise Refused(Mistake("", "It is nested too deeply.")) from None
    except ValueError:
        return None
    ours = isinstance(data, dict) and "floor" in data and "type" not in data
    return data if ours else None
