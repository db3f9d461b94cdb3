"""The files of a plan: plan.json, the run sheet, the floor and its moments, as bytes."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from farwall.beside import Beside, at_once
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.papers.film_strip import film_strip_svg
from farwall.papers.floor_drawing import field_svg, floor_svg
from farwall.papers.json_text import json_text
from farwall.papers.run_sheet.margins import Paper
from farwall.papers.run_sheet.sheet import run_sheet_begun
from farwall.papers.wall_clock import Units
from farwall.papers.words import names_in
from farwall.phrasebook import Language, speaking


def plan_files(plan: Plan, job: Job, document: dict[str, object]) -> dict[str, bytes]:
    """File names with their content; `document` is the plan as plain JSON."""
    return plan_files_begun(plan, job, document)()


def plan_files_begun(
    plan: Plan, job: Job, document: dict[str, object], *, beside: Beside = at_once
) -> Callable[[], dict[str, bytes]]:
    """The same files, the run sheet set beside what is done until they are asked for.

    beside: begins some work beside other work, and gives what waits for its result.
    """
    wishes = job.wishes
    return _begun(
        plan, document, units=wishes.units, notes=wishes.notes, language=wishes.language,
        paper=wishes.paper, revision=job.revision, beside=beside,
    )  # fmt: skip


def files_of(
    plan: Plan,
    document: dict[str, object],
    *,
    units: Units,
    notes: str = "",
    language: Language = "en",
    revision: int | None = None,
) -> dict[str, bytes]:
    """The same files when no job is at hand, as in mid-day.

    revision: of the facts; None where nobody told it: then the sheet names none, rather than a
    wrong one.
    """
    begun = _begun(plan, document, units=units, notes=notes, language=language, revision=revision)
    return begun()


def _begun(
    plan: Plan,
    document: dict[str, object],
    *,
    units: Units,
    notes: str,
    language: Language = "en",
    paper: Paper | None = None,
    revision: int | None = 1,
    beside: Beside = at_once,
) -> Callable[[], dict[str, bytes]]:
    sheet = run_sheet_begun(
        plan, job_name=plan.job, units=units, notes=notes, language=language, paper=paper,
        revision=revision, beside=beside,
    )  # fmt: skip
    with speaking(language, names_in(plan)):
        drawn = {
            "plan.json": (json_text(document) + "\n").encode(),
            "floor.svg": floor_svg(plan, units=units).encode(),
            "moments.svg": film_strip_svg(plan, units=units).encode(),
        }
    return lambda: {**drawn, "run-sheet.pdf": sheet()}


def picture_files(
    plan: Plan, *, coat: str | None = None, minutes: Sequence[float] = (), units: Units = "us"
) -> dict[str, bytes]:
    """The drawings of one coat: its floor, its moments, and each of its fields by number."""
    chosen = coat if coat is not None else next((field.coat for field in plan.fields), "")
    fields = sorted((f for f in plan.fields if f.coat == chosen), key=lambda f: f.order)
    return {
        "floor.svg": floor_svg(plan, units=units, coat=coat).encode(),
        "moments.svg": film_strip_svg(plan, coat=coat, minutes=minutes, units=units).encode(),
        **{
            f"field-{n}.svg": field_svg(plan, field, units=units).encode()
            for n, field in enumerate(fields, 1)
        },
    }
