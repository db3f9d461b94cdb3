"""The page of buying: what the terminal says, ways side by side, a price list brought and kept."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job
from tests.web.pages.office import Office, faults_of_html

from farwall.facts.plain import plain
from farwall.readers.price_list import price_list_in
from farwall.web.firm import FIRM
from farwall.web.pages.price.wares import WARES, wares_of

PRICES = (
    "what,colour,size,price,seller,delivery,free from\n"
    "masking tape,,60 yd,7.90,Elder Yard,25,400\n"
    "masking film,,100 ft,12.50,Elder Yard,,\n"
    "bananas,,1 kg,1,Elder Yard,,\n"
)


def facts(**more):
    made = replace(job(TWO_ROOMS), id="elm", name="Elm Row",
                   starts_at="2026-06-08T08:00:00-06:00", **more)  # fmt: skip
    return json.loads(json.dumps(plain(made, omit_empty=True)))


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put(facts(), name="Elm Row")
    yield found
    found.close()


PAGE = "/houses/elm/price/buying"


def page_of(office, path=PAGE):
    for _ in range(60):
        text = office.get(path).text
        if "data-wait" not in text:
            return text
    raise AssertionError("no plan came")


def bring(office, content, name="prices.csv"):
    return office.post(f"{PAGE}/list", files={"file": (name, content)})


def test_without_a_list_every_price_is_named_a_guess(office):
    text = page_of(office)
    assert faults_of_html(text) == []
    assert "rests on invented prices" in text
    assert "No seller named yet" in text
    assert "second trip" in text
    assert "No price list was brought yet" in text


def test_a_list_is_read_kept_and_used_and_what_it_left_out_is_told(office):
    page_of(office)
    answer = bring(office, PRICES.encode())
    assert answer.status_code == 303
    assert wares_of(office.book) == price_list_in(PRICES.encode()).prices
    text = page_of(office)
    assert faults_of_html(text) == []
    assert "Elder Yard" in text
    assert "prices.csv" in text
    assert "bananas" in text
    assert not [one for one in office.book.check() if one.code == "loose-file"]


def test_what_is_no_list_is_turned_away_and_the_one_before_stays(office):
    page_of(office)
    bring(office, PRICES.encode())
    answer = bring(office, b"alpha,beta\n1,2\n")
    assert answer.status_code == 422
    assert faults_of_html(answer.text) == []
    assert "The one before stays" in answer.text
    assert wares_of(office.book) is not None
    empty = office.post(f"{PAGE}/list", data={"nothing": "1"})
    assert empty.status_code == 422
    assert "No file was chosen" in empty.text


def test_a_second_list_is_a_second_version(office):
    page_of(office)
    bring(office, PRICES.encode())
    bring(office, PRICES.replace("7.90", "8.90").encode())
    first = office.book.document(WARES, FIRM, 1)
    assert first["list"]["wares"][0]["price"] == "7.9"
    assert office.book.document(WARES, FIRM)["list"]["wares"][0]["price"] == "8.9"


@pytest.mark.parametrize("suffix", ["xlsx", "csv"])
def test_an_empty_list_can_be_fetched(office, suffix):
    answer = office.get(f"/price-list.{suffix}")
    assert answer.status_code == 200
    assert f"price-list.{suffix}" in answer.headers["content-disposition"]
    assert len(answer.content) > 300
