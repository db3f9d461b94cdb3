"""The page 'Go or no-go' as PDF: whole, calm, the same for the same facts."""

from __future__ import annotations

from dataclasses import replace

import pypdfium2
from tests.job.go.jobs import GOOD, surveyed
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.job import Survey
from farwall.job.go import go_or_no_go
from farwall.papers.go_page import go_pdf, page_words

BARE = job(TWO_ROOMS, survey=Survey())


def texts(facts, **words):
    document = pypdfium2.PdfDocument(go_pdf(go_or_no_go(facts), facts, **words))
    return [page.get_textpage().get_text_bounded() for page in document]


def test_everything_open_is_one_page_with_lines_to_write_on_and_signatures():
    pages = texts(BARE)
    assert len(pages) == 1
    assert "Still to be asked" in pages[0]
    assert "Tests to do" in pages[0]
    assert "finisher" in pages[0]


def test_what_is_in_order_is_named_in_one_line():
    told = page_words(go_or_no_go(GOOD), GOOD)
    assert told["asked"] == []
    assert "past acid" in told["order"]


def test_no_finding_is_lost_on_the_page():
    facts = surveyed(acid_before="whole", waste=None, cracks_accepted=False)
    go = go_or_no_go(facts)
    told = page_words(go, facts)
    shown = [row["rule"].lower() for part in told["told"] for row in part["rows"]]
    named = set(shown) | set(told["order"].lower().split(", "))
    assert len(told["asked"]) == sum(one.verdict == "ask" for one in go.findings)
    assert {one.rule.lower() for one in go.findings if one.verdict != "ask"} == named


def test_the_same_facts_give_the_same_bytes():
    assert go_pdf(go_or_no_go(BARE), BARE) == go_pdf(go_or_no_go(BARE), BARE)


def test_metric_paper_is_a4():
    page = pypdfium2.PdfDocument(go_pdf(go_or_no_go(BARE), BARE, units="metric"))[0]
    assert [round(one) for one in page.get_size()] == [595, 842]


def test_a_name_with_signs_of_the_typesetter_is_set_as_it_stands():
    odd = replace(BARE, name="Lot #9 *north* [$]")
    assert "Lot #9 *north* [$]" in texts(odd)[0]
