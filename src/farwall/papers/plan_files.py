"""The files of a plan: plan.json, the run sheet and the floor drawing, as bytes."""

from __future__ import annotations

from farwall.beside import Beside, at_once
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.papers.floor_drawing import floor_svg
from farwall.papers.json_text import json_text
from farwall.papers.run_sheet import run_sheet_pdf


def plan_files(
    plan: Plan, job: Job, document: dict[str, object], *, beside: Beside = at_once
) -> dict[str, bytes]:
    """File names with their content; `document` is the plan as plain JSON.

    beside: begins some work beside other work, and gives what waits for its result.
    """
    units = job.wishes.units
    return {
        "plan.json": (json_text(document) + "\n").encode(),
        "floor.svg": floor_svg(plan, units=units).encode(),
        "run-sheet.pdf": run_sheet_pdf(
            plan, job_name=plan.job, units=units, notes=job.wishes.notes, beside=beside
        ),
    }
