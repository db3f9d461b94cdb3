"""The facts that this screen may change, as its form shows them."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.papers.words import length
from farwall.store.book import Book
from farwall.units import M_PER_IN
from farwall.web.pages.forms.flat import flat_merged, lines_told
from farwall.web.words import said


@dataclass(frozen=True)
class FactForm:
    """What stands in the fields; `version`: of the facts that they were made from."""

    version: int
    units: Units
    helper: str
    sprayers: str
    day: str
    start: str
    band: str


def fact_form(
    facts: Mapping[str, Any], version: int, *, told: Mapping[str, Any] | None = None
) -> FactForm:
    """The form of a job's facts, with what was typed where that was refused."""
    from farwall.readers.job_json import job_from

    job = job_from(facts, "The job")
    start = _start(job)
    made = {
        "helper": "yes" if job.crew.helper else "no",
        "sprayers": str(job.crew.sprayers),
        "day": start.date().isoformat(),
        "start": start.strftime("%H:%M"),
        "band": band_told(job),
    }
    if told is not None:
        made |= {key: str(told[key])[:40] for key in made if key in told}
    return FactForm(version, job.wishes.units, **made)


FACTS = ("helper", "sprayers", "day", "start", "band")
"""Names of the blanks."""


def over_newest(
    before: FactForm, now: FactForm, typed: Mapping[str, Any]
) -> tuple[FactForm, tuple[str, ...]]:
    """What was typed into the form of older facts, laid over the newest; what is said of it.

    before, now: the forms as the older and the newest facts fill them.
    """
    told = {key: str(typed[key]).strip()[:40] for key in FACTS if key in typed}
    if before.units != now.units and told.get("band", before.band) != before.band:
        told["band"] = _band_in(told["band"], now.units)
    was, stands = ({key: str(getattr(one, key)) for key in FACTS} for one in (before, now))
    if told.get("band") == before.band:
        told["band"] = was["band"] = stands["band"]
    found = flat_merged(was, stands, told)
    names = {key: said(f"fact-{key}") for key in FACTS if key != "band"}
    names["band"] = said(f"fact-band-{now.units}")
    return (
        FactForm(now.version, now.units, **found.told),
        tuple(lines_told(found, names, said("facts-other-merged"))),
    )


def _band_in(text: str, units: Units) -> str:
    """A width typed in the other units, in these; as it is where it is no number."""
    try:
        value = float(text.replace(",", "."))
    except ValueError:
        return text
    inches = M_PER_IN / 0.01
    return f"{value / inches if units == 'us' else value * inches:.1f}".removesuffix(".0")


def start_of(job: Job) -> datetime:
    """When the job begins, with its offset; a stand-in where no day is set."""
    return _start(job)


def _start(job: Job) -> datetime:
    return datetime.fromisoformat(settle(job).starts_at)


def band_told(job: Job) -> str:
    """The band width as the form has it: inches or cm, no more digits than are there."""
    unit_m = M_PER_IN if job.wishes.units == "us" else 0.01
    return f"{settle(job).tools.band_m / unit_m:.1f}".removesuffix(".0")


def version_in_words(book: Book, job: str, version: int) -> str:
    """`facts_in_words` of a version in the book, in the language of whoever asks."""
    from farwall.readers.job_json import job_from

    return facts_in_words(job_from(book.facts(job, version), f"The job {job}"))


def facts_in_words(job: Job) -> str:
    """`a helper, one sprayer, start 8:00, bands 3' 7"`."""
    start = _start(job)
    return ", ".join([
        said("told-helper" if job.crew.helper else "told-alone"),
        said("told-two" if job.crew.sprayers == 2 else "told-one"),
        said("told-start", at=f"{start.hour}:{start.minute:02d}"),
        said("told-band", width=length(settle(job).tools.band_m, job.wishes.units, both=False)),
    ])  # fmt: skip
