"""Papers that other packages set, as papers of the bundles: same language, size and revision."""

from __future__ import annotations

from dataclasses import replace

from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.waste import waste_of
from farwall.papers.acid.labels.sheet import labels_pdf
from farwall.papers.acid.wash.sheet import wash_day_pdf
from farwall.papers.acid.waste_page import waste_page_pdf
from farwall.papers.office.ground import PaperGround


def run_sheet(ground: PaperGround) -> bytes:
    """The run sheet of the plan."""
    from farwall.papers.run_sheet.sheet import run_sheet_pdf

    job, wishes = ground.job, ground.job.wishes
    return run_sheet_pdf(
        ground.plan, job_name=ground.plan.job, units=wishes.units, paper=wishes.paper,
        revision=job.revision, notes=wishes.notes, language=ground.language,
        screens=ground.screens,
    )  # fmt: skip


def labels(ground: PaperGround) -> bytes:
    """Labels of jugs, sprayers, pails and drums."""
    return labels_pdf(_of_acid(ground), screens=ground.screens)


def wash_day(ground: PaperGround) -> bytes:
    """The sheet of the wash day."""
    return wash_day_pdf(_of_acid(ground), ground.ground.washing, screens=ground.screens)


def waste_page(ground: PaperGround) -> bytes:
    """The page for the utility."""
    told = _of_acid(ground)
    return waste_page_pdf(told, waste_of(told), screens=ground.screens)


def _of_acid(ground: PaperGround) -> Ground:
    """The facts as the acid day takes them, in the language of the bundle."""
    told = ground.ground.acid_ground
    wishes = replace(told.job.wishes, language=ground.language)
    return replace(told, job=replace(told.job, wishes=wishes))
