"""The files of a plan: plan.json, the run sheet and the floor drawing, as bytes."""

from __future__ import annotations

from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.papers.floor_drawing import floor_svg
from farwall.papers.json_text import json_text
from farwall.papers.run_sheet import run_sheet_pdf
from farwall.papers.wall_clock import Units


def plan_files(plan: Plan, job: Job, document: dict[str, object]) -> dict[str, bytes]:
    """File names with their content; `document` is the plan as plain JSON."""
    return files_of(plan, document, units=job.wishes.units, notes=job.wishes.notes)


def files_of(
    plan: Plan, document: dict[str, object], *, units: Units, notes: str = ""
) -> dict[str, bytes]:
    """The same files when no job is at hand, as in mid-day."""
    return {
        "plan.json": (json_text(document) + "\n").encode(),
        "floor.svg": floor_svg(plan, units=units).encode(),
        "run-sheet.pdf": run_sheet_pdf(plan, job_name=plan.job, units=units, notes=notes),
    }
