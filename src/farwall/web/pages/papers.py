"""The papers of a house, made when somebody asks for them."""

from __future__ import annotations

from farwall.web.pages.shown import Shown

PAPERS = {
    "run-sheet.pdf": "paper-sheet",
    "floor.svg": "paper-floor",
    "moments.svg": "paper-moments",
}


def paper(shown: Shown, name: str) -> bytes:
    """The content of a paper of `PAPERS`. Raises KeyError for another."""
    if name == "run-sheet.pdf":
        from farwall.papers.run_sheet.sheet import run_sheet_begun

        notes = shown.job.wishes.notes
        begun = run_sheet_begun(shown.plan, job_name=shown.plan.job, units=shown.units, notes=notes)
        return begun()
    if name == "floor.svg":
        from farwall.papers.floor_drawing import floor_svg

        return floor_svg(shown.plan, units=shown.units).encode()
    if name == "moments.svg":
        from farwall.papers.film_strip import film_strip_svg

        return film_strip_svg(shown.plan, units=shown.units).encode()
    raise KeyError(name)
