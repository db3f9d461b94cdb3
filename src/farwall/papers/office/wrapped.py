"""Papers that other packages set, as papers of the bundles: same language, size and revision."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Protocol

from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
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


class OfAcid(Protocol):
    """A maker of a paper of the acid day; `screens`: address of the house in the firm's book."""

    def __call__(self, ground: Ground, day: AcidDay, /, *, screens: str) -> bytes:
        """PDF bytes."""


def of_acid(make: OfAcid) -> Callable[[PaperGround], bytes]:
    """A paper of the acid day, in the language of the bundle."""

    def made(ground: PaperGround) -> bytes:
        told = ground.ground.acid_ground
        wishes = replace(told.job.wishes, language=ground.language)
        on = replace(told, job=replace(told.job, wishes=wishes))
        return make(on, ground.acid, screens=ground.screens)

    return made
