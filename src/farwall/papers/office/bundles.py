"""All papers of a job, by the moment at which they are handed out."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from typing import Literal

from farwall.beside import Beside, at_once
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.papers.colour.before_after import before_after, before_after_lacks
from farwall.papers.colour.target import target_sheet
from farwall.papers.masking.paper import masking_paper
from farwall.papers.office.batch_log import batch_log
from farwall.papers.office.blocks import Paper
from farwall.papers.office.call_back_sheet import call_back_sheet
from farwall.papers.office.care import care
from farwall.papers.office.change_order import change_order
from farwall.papers.office.cut_list import cut_list
from farwall.papers.office.enquiry import enquiry
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.invoice import invoice, invoice_file, invoice_lacks
from farwall.papers.office.post_mortem import post_mortem
from farwall.papers.office.price_sheet import price_sheet
from farwall.papers.office.punch_list import punch_list
from farwall.papers.office.quote import quote
from farwall.papers.office.sample_card import sample_card
from farwall.papers.office.sample_day import sample_day
from farwall.papers.office.schedule import schedule
from farwall.papers.office.scope import scope
from farwall.papers.office.seal_record import seal_record
from farwall.papers.office.setting import own_names, paper_pdf
from farwall.papers.office.shopping_list import shopping_list
from farwall.papers.office.slab_protection import slab_protection
from farwall.papers.office.survey import survey
from farwall.papers.office.warranty import warranty
from farwall.papers.office.wash_record import wash_record
from farwall.papers.office.wrapped import labels, run_sheet, wash_day, waste_page
from farwall.papers.shopping_book import shopping_book
from farwall.papers.words import names_in
from farwall.phrasebook import speaking

Moment = Literal["before-the-pour", "quote", "day", "hand-over"]
MOMENTS: tuple[Moment, ...] = ("before-the-pour", "quote", "day", "hand-over")


@dataclass(frozen=True)
class Listed:
    """A paper of the list: its file, when it is handed out, and who makes it.

    lacks: what must be entered before it can be made; where something lacks, a bundle goes without
    it, and who asks for it by its whole name is told.
    """

    file: str
    moment: Moment
    make: Callable[[PaperGround], bytes]
    lacks: Callable[[PaperGround], tuple[Mistake, ...]] | None = None


def _set(write: Callable[[PaperGround], Paper]) -> Callable[[PaperGround], bytes]:
    return partial(_pdf_of, write)


def _pdf_of(write: Callable[[PaperGround], Paper], ground: PaperGround) -> bytes:
    return paper_pdf(written(write, ground), ground)


def written(write: Callable[[PaperGround], Paper], ground: PaperGround) -> Paper:
    """The paper as its maker writes it, in the language of the bundle: clocks and drawings too."""
    with speaking(ground.language, names_in(ground.plan) | own_names(ground)):
        return write(ground)


def _go(ground: PaperGround) -> bytes:
    from dataclasses import replace

    from farwall.papers.go_page import go_pdf

    job = ground.job
    job = replace(job, wishes=replace(job.wishes, language=ground.language))
    return go_pdf(
        ground.go, job, units=ground.units, paper=job.wishes.paper,
        inputs_hash=ground.plan.inputs_hash, screens=ground.screens,
    )  # fmt: skip


PAPERS: tuple[Listed, ...] = (
    Listed("enquiry.pdf", "before-the-pour", _set(enquiry)),
    Listed("slab-protection.pdf", "before-the-pour", _set(slab_protection)),
    Listed("survey.pdf", "quote", _set(survey)),
    Listed("go.pdf", "quote", _go),
    Listed("sample-day.pdf", "quote", _set(sample_day)),
    Listed("sample-card.pdf", "quote", _set(sample_card)),
    Listed("colour-target.pdf", "quote", _set(target_sheet)),
    Listed("shopping-list.pdf", "quote", _set(shopping_list)),
    Listed("shopping-list.xlsx", "quote", shopping_book),
    Listed("quote.pdf", "quote", _set(quote)),
    Listed("scope.pdf", "quote", _set(scope)),
    Listed("price-sheet.pdf", "quote", _set(price_sheet)),
    Listed("schedule.pdf", "quote", _set(schedule)),
    Listed("masking.pdf", "day", _set(masking_paper)),
    Listed("cut-list.pdf", "day", _set(cut_list)),
    Listed("run-sheet.pdf", "day", run_sheet),
    Listed("batch-log.pdf", "day", _set(batch_log)),
    Listed("labels.pdf", "day", labels),
    Listed("change-order.pdf", "day", _set(change_order)),
    Listed("wash-day.pdf", "day", wash_day),
    Listed("wash-record.pdf", "day", _set(wash_record)),
    Listed("waste-page.pdf", "day", waste_page),
    Listed("seal-record.pdf", "day", _set(seal_record)),
    Listed("before-after.pdf", "hand-over", _set(before_after), before_after_lacks),
    Listed("punch-list.pdf", "hand-over", _set(punch_list)),
    Listed("care.pdf", "hand-over", _set(care)),
    Listed("warranty.pdf", "hand-over", _set(warranty)),
    Listed("invoice.pdf", "hand-over", _set(invoice)),
    Listed("invoice.xml", "hand-over", invoice_file, invoice_lacks),
    Listed("call-back.pdf", "hand-over", _set(call_back_sheet)),
    Listed("post-mortem.pdf", "hand-over", _set(post_mortem)),
)
"""In the order in which they are needed."""
BY_FILE = {one.file: one for one in PAPERS}


def chosen(only: Sequence[str]) -> tuple[Listed, ...]:
    """The papers that are asked for, by moment, by name or by file; all where none is. Raises
    Refused."""
    if not only:
        return PAPERS
    names = {_name(one) for one in PAPERS}
    unknown = [one for one in only if one not in names and one not in {*MOMENTS, *BY_FILE}]
    if unknown:
        known = ", ".join((*MOMENTS, *sorted(names)))
        raise Refused(
            *(Mistake("--only", f"there is no {one}.", f"There are {known}.") for one in unknown)
        )
    return tuple(one for one in PAPERS if {one.moment, one.file, _name(one)} & set(only))


def lacking(ground: PaperGround, only: Sequence[str] = ()) -> dict[str, tuple[Mistake, ...]]:
    """Files that cannot be made yet, with what must be entered before."""
    asked = [one for one in chosen(only) if one.lacks is not None]
    found = {one.file: one.lacks(ground) for one in asked if one.lacks is not None}
    return {file: lacks for file, lacks in found.items() if lacks}


_BESIDE = frozenset({"run-sheet.pdf", "labels.pdf", "wash-day.pdf", "waste-page.pdf"})
"""Begun first, for they want neither price nor calendar: together they take half of a bundle."""


def office_files(
    ground: PaperGround, only: Sequence[str] = (), *, beside: Beside = at_once
) -> dict[str, bytes]:
    """File names with their content, without those that cannot be made yet.

    beside: how what wants the plan alone is set beside the rest. Raises Refused for a name that
    there is not, and for a file asked for by its whole name that cannot be made.
    """
    asked = chosen(only)
    aside = [one for one in asked if one.file in _BESIDE]
    begun = beside(lambda: _made(aside, ground))
    lacks = lacking(ground, only)
    if wanted := [one for file, all_ in lacks.items() if file in only for one in all_]:
        raise Refused(*wanted, about="Before that can be written:")
    others = [one for one in asked if one not in aside and one.file not in lacks]
    made = _made(others, ground) | begun()
    return {one.file: made[one.file] for one in asked if one.file in made}


def _made(papers: Sequence[Listed], ground: PaperGround) -> dict[str, bytes]:
    return {one.file: one.make(ground) for one in papers}


def _name(one: Listed) -> str:
    return one.file.rpartition(".")[0]
