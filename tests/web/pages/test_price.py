"""The pages of price and hours, and the form of rates and offers."""

import re

import pytest
from tests.web.pages.office import Office, faults_of_html

from farwall.web.pages.price.lines import range_line, scale_of


@pytest.fixture
def entered(tmp_path):
    found = Office(tmp_path)
    found.put_planned(name="Two rooms")
    found.enter()
    yield found
    found.close()


def test_the_price_stands_with_its_range_and_as_a_line(entered):
    text = entered.get("/houses/two/price").text
    assert re.search(r"Ask <strong>[\d,]+ USD</strong> <span>\([\d,]+ to [\d,]+ at the ends", text)
    assert re.search(r"Four such jobs in five cost [\d,]+ to [\d,]+, likely [\d,]+\.", text)
    assert 'role="img"' in text
    assert "Invented figures stand in for" in text


def test_no_style_and_no_script_stand_in_the_line(entered):
    text = entered.get("/houses/two/price").text
    assert "style=" not in text
    assert "<script>" not in text


def test_the_hours_of_every_task_have_their_ends(entered):
    text = entered.get("/houses/two/price/hours").text
    assert text.count('<p class="price-hours-figure">') == text.count("<li>\n<h3>") >= 10
    assert "days on site" in text


def test_rates_and_an_offer_are_kept_and_priced(entered):
    rates = {
        "version": "1", "prices.rates.labour_per_h": "62.50", "prices.rates.overhead_percent": "18",
    }  # fmt: skip
    form = {
        "version": "2", "prices.offers.0.name": "All of it, twice sealed",
        "prices.offers.0.sealer_coats": "2", "prices.offers.0.finish_coats": "0",
    }  # fmt: skip
    assert entered.post("/houses/two/terms", data=rates).status_code == 303
    assert entered.post("/houses/two/offers", data=form).status_code == 303
    facts = entered.book.facts("two", 3)["prices"]
    assert facts["rates"] == {"labour_per_h": "62.50", "overhead_percent": 18}
    assert facts["offers"] == [
        {"name": "All of it, twice sealed", "sealer_coats": 2, "finish_coats": 0, "id": "offer-1"}
    ]
    text = entered.get("/houses/two/price").text
    assert "All of it, twice sealed" in text
    assert "62.50 USD (measured here)" in text


@pytest.mark.parametrize(
    ("field", "typed", "said"),
    [
        ("prices.call_backs.cost", "sixty", "is no amount"),
        ("prices.offers.0.rooms", "attic", "there is no room"),
    ],
)
def test_what_is_no_amount_and_no_room_comes_back_with_its_mistake(entered, field, typed, said):
    form = {"version": "1", "prices.offers.0.name": "One", field: typed}
    back = entered.post("/houses/two/offers", data=form)
    assert back.status_code == 422
    assert said in back.text
    assert typed in back.text


def test_a_line_lies_on_its_scale():
    scale = scale_of([100, 500])
    assert scale.x(100) < scale.x(300) < scale.x(500)
    assert scale.x(300) == pytest.approx((scale.x(100) + scale.x(500)) / 2)
    assert scale.ticks == [100, 200, 300, 400, 500]
    drawn = range_line(scale, 200, 250, 400, mark=450, said="a < b")
    assert 'aria-label="a &lt; b"' in drawn
    assert f'width="{scale.x(400) - scale.x(200):g}"' in drawn


def test_a_scale_of_one_amount_has_a_tick():
    assert range_line(scale_of([5.0, 5.0]), 5, 5, 5, ticks=True)


@pytest.mark.parametrize("part", ["price", "price/hours"])
def test_a_spanish_page_leaves_nothing_in_english(entered, part):
    text = entered.get(f"/houses/two/{part}", headers={"accept-language": "es"}).text
    assert '<html lang="es"' in text
    assert 'lang="en"' not in text
    assert faults_of_html(text) == []
