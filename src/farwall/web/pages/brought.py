"""What somebody brings: a job.json, or a drawing made into one; judged by the readers."""

from __future__ import annotations

import json
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.readers.room_names import slug

MOST_MB = 20
Json = dict[str, Any]


def facts_in(content: bytes, name: str) -> Json:
    """The facts of a job in the bytes of a file of any kind that is read here.

    name: of the file; a house without an id of its own is called by it. Raises Refused with every
    mistake.
    """
    data = _job_data(content)
    if data is not None:
        return facts_of_job(data, name)
    from farwall.job.from_reading import job_from_reading
    from farwall.readers.any_plan import read_bytes
    from farwall.readers.job_json import job_to_dict

    reading = read_bytes(content, name=name)
    job = job_from_reading(reading, job_id=id_from(name))
    facts = job_to_dict(job)
    facts.setdefault("name", _stem(name).replace("_", " ").strip())
    return facts_of_job(facts, name)


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
