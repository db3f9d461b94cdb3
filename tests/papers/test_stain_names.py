"""A house that names no stain: the names that Farwall gives are told in the paper's language."""

from dataclasses import replace

import pypdfium2
import pytest
from tests.papers.office.grounds import bare_job

from farwall.facts.defaults import DEFAULT_STAINS
from farwall.job.office import OfficeGround
from farwall.job.plan_job import plan_job
from farwall.papers.acid.cards.working import _batches
from farwall.papers.office.bundles import BY_FILE
from farwall.papers.office.ground import PaperGround

NAMES = [stain.name for stain in DEFAULT_STAINS]
TELL = ("batch-log.pdf", "sample-day.pdf", "care.pdf", "shopping-list.pdf", "waste-page.pdf",
        "run-sheet.pdf")  # fmt: skip
"""Papers that name a stain. A label and a card have both languages side by side."""


JOB = bare_job(stains=(), coats=())
PLAN = plan_job(JOB)


def text_of(name, language):
    job = replace(JOB, wishes=replace(JOB.wishes, language=language))
    document = pypdfium2.PdfDocument(
        BY_FILE[name].make(PaperGround(OfficeGround(job, PLAN), language))
    )
    pages = [page.get_textpage().get_text_bounded() for page in document]
    return " ".join(" ".join(pages).split())


@pytest.mark.parametrize("name", TELL)
def test_the_names_are_english_on_an_english_paper_and_spanish_on_a_spanish_one(name):
    english, spanish = text_of(name, "en"), text_of(name, "es")
    told = [one for one in NAMES if one in english]
    assert told
    for one in told:
        assert one not in spanish
        assert {"light colour": "color claro", "dark colour": "color oscuro"}[one] in spanish


def test_labels_and_cards_have_them_in_both_languages():
    text = text_of("labels.pdf", "en")
    assert "light colour 1:1" in text
    assert "color claro 1:1" in text
    (card, *_) = _batches(PLAN, "us")
    assert card.batches[0].of == ("light colour 1:1", "color claro 1:1")
