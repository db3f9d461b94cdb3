"""The page of a house: one page, the lock in words, the same bytes again."""

import copy
from dataclasses import replace

import pypdfium2
import pytest
from tests.days.shop import shop, typical

from farwall.days.calendar import calendar
from farwall.days.document import document
from farwall.papers.chain.sheet import chain_pdf, page_data

TOLD = document(calendar(typical()))
HOUSE = TOLD["houses"][0]


def pages(pdf):
    book = pypdfium2.PdfDocument(pdf)
    return [page.get_textpage().get_text_range() for page in book]


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("coats", [2, 4])
def test_a_house_has_one_page(units, coats):
    question = typical()
    more = replace(question, houses=(replace(question.houses[0], coats=coats, due_day=1),))
    told = document(calendar(more))
    told["houses"][0]["lost_chance"] = 0.4
    assert len(pages(chain_pdf(told, told["houses"][0], units=units))) == 1


def test_the_page_says_when_other_trades_stay_out():
    text = pages(chain_pdf(TOLD, HOUSE))[0]
    assert "All other trades stay out" in text
    assert "from Mon 1 Jan, 7:30 am until Sat 6 Jan, 1:00 pm" in text
    assert "Where drying is slow until" in text
    assert "Nobody works alone with acid" in text
    assert "licensed practice win" in text


def test_every_step_and_milestone_stands_on_it():
    text = pages(chain_pdf(TOLD, HOUSE))[0].replace("\r\n", " ")
    for step in HOUSE["steps"]:
        assert step["name"] in text
    for one in HOUSE["milestones"]:
        assert one["what"] in text


def test_the_same_calendar_gives_the_same_bytes():
    assert chain_pdf(TOLD, HOUSE) == chain_pdf(TOLD, HOUSE)


def test_a_name_in_markup_is_a_name():
    house = copy.deepcopy(HOUSE)
    house["name"] = "#panic() *Lot* $9 <b>"
    told = {**TOLD, "houses": [house]}
    assert "#panic() *Lot* $9 <b>" in pages(chain_pdf(told, house))[0]


def test_a_wait_without_end_says_so():
    house = copy.deepcopy(document(calendar(shop(1)))["houses"][0])
    house["steps"][-1]["ends_high_at"] = None
    rows = page_data(TOLD, {**house, "id": HOUSE["id"]}, units="us")["steps"]
    assert "open end" in rows[-1]["ends"]
