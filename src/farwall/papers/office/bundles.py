"""All papers of a job, by the moment at which they are handed out."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Literal

from farwall.errors import Mistake, Refused
from farwall.papers.office.blocks import Paper
from farwall.papers.office.care import care
from farwall.papers.office.enquiry import enquiry
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.sample_card import sample_card
from farwall.papers.office.schedule import schedule
from farwall.papers.office.setting import paper_pdf
from farwall.papers.office.slab_protection import slab_protection
from farwall.papers.office.survey import survey
from farwall.papers.office.warranty import warranty

Moment = Literal["before-the-pour", "quote", "day", "hand-over"]
MOMENTS: tuple[Moment, ...] = ("before-the-pour", "quote", "day", "hand-over")


@dataclass(frozen=True)
class Listed:
    """A paper of the list: its file, when it is handed out, and who makes it."""

    file: str
    moment: Moment
    make: Callable[[PaperGround], bytes]


def _set(write: Callable[[PaperGround], Paper]) -> Callable[[PaperGround], bytes]:
    return lambda ground: paper_pdf(write(ground), ground)


def _go(ground: PaperGround) -> bytes:
    from dataclasses import replace

    from farwall.papers.go_page import go_pdf

    job = ground.job
    job = replace(job, wishes=replace(job.wishes, language=ground.language))
    return go_pdf(ground.go, job, units=ground.units, inputs_hash=ground.plan.inputs_hash)


PAPERS: tuple[Listed, ...] = (
    Listed("enquiry.pdf", "before-the-pour", _set(enquiry)),
    Listed("slab-protection.pdf", "before-the-pour", _set(slab_protection)),
    Listed("survey.pdf", "quote", _set(survey)),
    Listed("go.pdf", "quote", _go),
    Listed("sample-card.pdf", "quote", _set(sample_card)),
    Listed("schedule.pdf", "quote", _set(schedule)),
    Listed("care.pdf", "hand-over", _set(care)),
    Listed("warranty.pdf", "hand-over", _set(warranty)),
)
"""In the order in which they are needed."""
BY_FILE = {one.file: one for one in PAPERS}


def chosen(only: Sequence[str]) -> tuple[Listed, ...]:
    """The papers that are asked for, by moment or by name; all where none is. Raises Refused."""
    if not only:
        return PAPERS
    names = {one.file.rpartition(".")[0] for one in PAPERS}
    unknown = [one for one in only if one not in names and one not in MOMENTS]
    if unknown:
        known = ", ".join((*MOMENTS, *sorted(names)))
        raise Refused(
            *(Mistake("--only", f"there is no {one}.", f"There are {known}.") for one in unknown)
        )
    return tuple(one for one in PAPERS if one.moment in only or one.file.rpartition(".")[0] in only)


def office_files(ground: PaperGround, only: Sequence[str] = ()) -> dict[str, bytes]:
    """File names with their content. Raises Refused for a name that there is not."""
    return {one.file: one.make(ground) for one in chosen(only)}
