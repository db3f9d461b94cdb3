"""The papers of a house, made when somebody asks for them."""

from __future__ import annotations

from farwall.facts.job import Job
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, Language, speaking
from farwall.web.pages.shown import Shown

PAPERS = {
    "run-sheet.pdf": "paper-sheet",
    "floor.svg": "paper-floor",
    "moments.svg": "paper-moments",
}


def language_of_paper(job: Job) -> Language:
    """Spanish where the job wishes for it or the page that is looked at is Spanish."""
    return "es" if "es" in {job.wishes.language, LANGUAGE.get()} else "en"


def paper(shown: Shown, name: str, *, screens: str = "") -> bytes:
    """The content of a paper of `PAPERS`. Raises KeyError for another.

    screens: the address of the house, as a telephone reaches it.
    """
    language = language_of_paper(shown.job)
    if name == "run-sheet.pdf":
        from farwall.papers.run_sheet.sheet import run_sheet_pdf

        return run_sheet_pdf(
            shown.plan, job_name=shown.plan.job, units=shown.units, notes=shown.job.wishes.notes,
            language=language, paper=shown.job.wishes.paper, revision=shown.job.revision,
            screens=screens,
        )  # fmt: skip
    with speaking(language, names_in(shown.plan)):
        if name == "floor.svg":
            from farwall.papers.floor_drawing import floor_svg

            return floor_svg(shown.plan, units=shown.units).encode()
        if name == "moments.svg":
            from farwall.papers.film_strip import film_strip_svg

            return film_strip_svg(shown.plan, units=shown.units).encode()
    raise KeyError(name)
