"""What holds for every paper of blocks of the first call, the quote and the hand-over."""

from __future__ import annotations

from dataclasses import replace

import pypdfium2
import pytest
from tests.papers.office.grounds import LONG, english_left, ground

from farwall.papers.office.blocks import LAW_WINS
from farwall.papers.office.bundles import BY_FILE, MOMENTS, PAPERS, chosen
from farwall.papers.office.care import care
from farwall.papers.office.enquiry import enquiry
from farwall.papers.office.sample_card import sample_card
from farwall.papers.office.sample_day import sample_day
from farwall.papers.office.schedule import schedule
from farwall.papers.office.setting import WINS, paper_pdf
from farwall.papers.office.slab_protection import slab_protection
from farwall.papers.office.survey import survey
from farwall.papers.office.warranty import warranty
from farwall.web.words import words

MADE = {
    "enquiry.pdf": (enquiry, 1),
    "slab-protection.pdf": (slab_protection, 1),
    "survey.pdf": (survey, 2),
    "sample-day.pdf": (sample_day, 2),
    "sample-card.pdf": (sample_card, 2),
    "schedule.pdf": (schedule, 1),
    "care.pdf": (care, 1),
    "warranty.pdf": (warranty, 1),
}
"""Each with its maker, and how many pages the invented house takes at most."""


def pages_of(pdf):
    return [page.get_textpage().get_text_bounded() for page in pypdfium2.PdfDocument(pdf)]


@pytest.mark.parametrize("name", MADE)
@pytest.mark.parametrize(("which", "also"), [("told", {}), ("bare", {})])
def test_every_sentence_of_a_paper_has_its_spanish(name, which, also):
    one = ground(which, language="es", **also)
    assert english_left(MADE[name][0](one), one) == []


@pytest.mark.parametrize("name", MADE)
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize(("units", "width"), [("us", 612), ("metric", 595)])
def test_a_paper_is_as_short_as_the_trades_on_letter_and_a4(name, language, units, width):
    one = ground(language=language, units=units)
    pdf = BY_FILE[name].make(one)
    document = pypdfium2.PdfDocument(pdf)
    assert len(document) <= MADE[name][1]
    assert round(document[0].get_size()[0]) == width


@pytest.mark.parametrize("name", [*MADE, "go.pdf"])
def test_its_foot_has_job_revision_hash_and_page(name):
    one = ground(revision=3)
    pages = pages_of(BY_FILE[name].make(one))
    for n, text in enumerate(pages, 1):
        flat = " ".join(text.split())
        assert f"Page {n} of {len(pages)} · Quince Street, lot 9 · " in flat
        assert f"facts 3 · inputs {one.plan.inputs_hash[:12]}" in flat
        assert (LAW_WINS if name == "warranty.pdf" else WINS) in flat


@pytest.mark.parametrize("name", MADE)
def test_the_same_facts_give_the_same_bytes(name):
    assert BY_FILE[name].make(ground()) == BY_FILE[name].make(ground())


@pytest.mark.parametrize("name", MADE)
def test_nothing_told_still_makes_the_paper(name):
    text = pages_of(paper_pdf(MADE[name][0](ground("bare")), ground("bare")))
    assert "None" not in " ".join(text)


@pytest.mark.parametrize("name", ["slab-protection.pdf", "enquiry.pdf", "warranty.pdf"])
def test_a_name_of_sixty_letters_stands_whole(name):
    builder = replace(ground().job.builder, name=LONG)
    text = "".join(pages_of(BY_FILE[name].make(ground(builder=builder)))).replace("\u200b", "")
    assert LONG in " ".join(text.split())  # its long words may be broken, no letter is lost


def test_every_paper_has_its_name_and_purpose_in_both_languages():
    for language in ("en", "es"):
        for one in PAPERS:
            key = one.file.replace(".", "-")
            assert {f"papers-name-{key}", f"papers-for-{key}"} <= words(language).keys()


def test_papers_are_chosen_by_moment():
    assert {one.moment for one in PAPERS} <= set(MOMENTS)
    names = [one.file for one in chosen(["before-the-pour"])]
    assert names[:2] == ["enquiry.pdf", "slab-protection.pdf"]
    quote = [one.file for one in chosen(["quote"])]
    assert [one for one in quote if one in {*MADE, "go.pdf"}] == [
        "survey.pdf", "go.pdf", "sample-day.pdf", "sample-card.pdf", "schedule.pdf",
    ]  # fmt: skip
