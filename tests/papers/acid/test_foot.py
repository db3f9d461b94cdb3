"""The foot of labels, cards, sign and list: job, revision, hash, page n of N, and the square."""

from __future__ import annotations

import re
from dataclasses import replace

import cv2
import numpy as np
import pypdfium2
import pytest
from tests.papers.acid.ground import DAY, FULL, ground, mixes, overlapping, pages_of
from tests.papers.acid.test_people_sheet import ANN, TOLD, Day
from tests.papers.acid.test_people_sheet import ground as people_ground

from farwall.facts.job import Stain
from farwall.papers.acid.cards.deck import deck_of
from farwall.papers.acid.cards.sheet import cards_pdf, screen_of
from farwall.papers.acid.foot import HASH_SHOWN, Foot
from farwall.papers.acid.labels.sheet import labels_of, labels_pdf
from farwall.papers.acid.people_sheet import keep_out_pdf, people_pdf
from farwall.web.pages.acid.page import PARTS

AT = "https://book.example/houses/quince-street-lot-9"
OF = ground(replace(FULL, revision=4), mixes=mixes(2, acid_l=0.4))
HASH = OF.plan.inputs_hash[:HASH_SHOWN]
SAID = f"facts / datos 4 · inputs / entradas {HASH}"


def squares_on(pdf, number, *, dpi=400):
    """The addresses that a camera reads on a page."""
    drawn = pypdfium2.PdfDocument(pdf)[number].render(scale=dpi / 72).to_numpy()
    found, texts, _, _ = cv2.QRCodeDetector().detectAndDecodeMulti(np.ascontiguousarray(drawn))
    return sorted(texts) if found else []


def test_a_label_keeps_its_foot_when_it_is_cut_from_its_sheet():
    pages = pages_of(labels_pdf(OF))
    found = [
        re.findall(rf"Page (\d+) of (\d+) / Página \1 de \2 · {OF.plan.job} · {SAID}", page)
        for page in pages
    ]
    assert sum(map(len, found)) == len(labels_of(OF))
    for number, on_page in enumerate(found, 1):
        assert set(on_page) == {(str(number), str(len(pages)))}
    assert all(OF.plan.job in page for page in pages)


def test_a_card_has_its_foot_in_its_own_language():
    pages = pages_of(cards_pdf(OF, DAY))
    for number, page in enumerate(pages, 1):
        name = OF.plan.job
        english = f"Page {number} of {len(pages)} · {name} · facts 4 · inputs {HASH}"
        spanish = f"Página {number} de {len(pages)} · {name} · datos 4 · entradas {HASH}"
        assert (english if number % 2 else spanish) in page
        assert (spanish if number % 2 else english) not in page


def test_sign_and_list_have_theirs():
    found = people_ground(ANN, emergency=TOLD, revision=4)
    hash_ = found.plan.inputs_hash[:HASH_SHOWN]
    (sign,) = pages_of(keep_out_pdf(found, Day(found)))
    assert f"facts / datos 4 · inputs / entradas {hash_}" in sign
    assert "Page 1 of 1 / Página 1 de 1" in sign
    assert "licensed practice win" in sign
    assert "práctica con licencia" in sign
    (told,) = pages_of(people_pdf(found, Day(found)))
    assert f"facts 4 · inputs {hash_}" in told
    assert "Page 1 of 1" in told


@pytest.mark.parametrize("units", ["us", "metric"])
def test_the_square_of_a_label_leads_to_its_part_of_the_acid_day(units):
    of = ground(replace(FULL, revision=4), units=units, mixes=mixes(2, acid_l=0.4))
    pdf = labels_pdf(of, screens=AT)
    read = [text for number in range(len(pages_of(pdf))) for text in squares_on(pdf, number)]
    assert sorted(read) == sorted(f"{AT}/{one.screen}" for one in labels_of(of))
    assert {one.screen for one in labels_of(of)} == {
        "acid/strength", "acid/neutralising", "acid/waste",
    }  # fmt: skip


def test_the_square_of_a_card_sign_and_list_is_read_too():
    pdf = cards_pdf(OF, DAY, screens=AT)
    cards = [one for one in deck_of(OF, DAY) for _ in range(2)]
    for number in (0, 6, len(cards) - 1):
        assert squares_on(pdf, number) == [f"{AT}/{screen_of(cards[number])}"]
    found = people_ground(ANN, emergency=TOLD)
    for make in (keep_out_pdf, people_pdf):
        assert squares_on(make(found, Day(found), screens=AT), 0) == [f"{AT}/acid/people"]


def test_every_square_leads_to_a_page_of_the_book():
    screens = {one.screen for one in labels_of(OF)} | {screen_of(one) for one in deck_of(OF, DAY)}
    assert screens - {"acid"} <= {f"acid/{part}" for part in PARTS}


def test_without_an_address_there_is_no_square():
    pdf = labels_pdf(OF)
    assert [squares_on(pdf, n, dpi=150) for n in range(len(pages_of(pdf)))] == (
        [[]] * len(pages_of(pdf))
    )


@pytest.mark.parametrize("screens", ["", AT])
def test_nothing_lies_on_the_foot_and_the_same_job_gives_the_same_bytes(screens):
    assert overlapping(labels_pdf(OF, screens=screens)) == []
    assert overlapping(cards_pdf(OF, DAY, screens=screens)) == []
    assert labels_pdf(OF, screens=screens) == labels_pdf(OF, screens=screens)
    assert cards_pdf(OF, DAY, screens=screens) == cards_pdf(OF, DAY, screens=screens)


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("language", ["en", "es"])
def test_a_sign_with_chromate_still_has_nothing_on_nothing(units, language):
    stains = (Stain("light", chromate=True), Stain("dark"))
    found = people_ground(ANN, units=units, language=language, emergency=TOLD, stains=stains)
    pdf = keep_out_pdf(found, Day(found), screens=AT)
    assert overlapping(pdf) == []
    assert len(pages_of(pdf)) == 1


@pytest.mark.parametrize("name", ["M" * 300, "Quince Street", "", "洗い場の家 3"])
def test_a_long_name_leaves_revision_hash_and_page_whole(name):
    told = replace(OF, plan=replace(OF.plan, job=name))
    foot = Foot(told, ("en", "es"), 500.0, 6.0).on(2, 9, "acid")
    assert foot["foot"].startswith("Page 2 of 9 / Página 2 de 9 · ")
    assert foot["foot"].endswith(f" · {SAID}")
    assert foot["qr"] == ""
    assert len(pages_of(labels_pdf(told))) == len(pages_of(labels_pdf(OF)))
    assert overlapping(labels_pdf(told, screens=AT)) == []
