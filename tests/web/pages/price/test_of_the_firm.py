"""What things cost the firm is not shown to a helper nor to the house's owner."""

import pytest
from tests.web.pages.office import Office

from farwall.web.pages.house_papers import FIRM_ALONE as PAPERS
from farwall.web.pages.price.page import FIRM_ALONE, PARTS


@pytest.fixture
def entered(tmp_path):
    found = Office(tmp_path)
    found.put_planned(name="Two rooms")
    yield found
    found.close()


@pytest.mark.parametrize("role", ["helper", "owner"])
def test_costs_are_neither_shown_nor_led_to(entered, role):
    entered.enter_as(role)
    assert entered.get("/houses/two/price").headers["location"] == "/houses/two/price/quantities"
    text = entered.get("/houses/two/price/masking").text
    for part in PARTS:
        seen = entered.get(f"/houses/two/price/{part}").status_code
        assert seen == (403 if part in FIRM_ALONE else 200)
        assert (f'href="/houses/two/price/{part}"' in text) is (part not in FIRM_ALONE)
    assert 'href="/houses/two/price"' not in text.partition("price-ways")[2]


@pytest.mark.parametrize("role", ["helper", "owner"])
def test_papers_of_the_firm_are_neither_listed_nor_handed_out(entered, role):
    entered.enter_as(role)
    text = entered.get("/houses/two/papers").text
    for name in PAPERS:
        assert f"/papers/{name}" not in text
        assert entered.get(f"/houses/two/papers/{name}").status_code == 403


def test_the_office_sees_them(entered):
    entered.enter_as("office")
    assert entered.get("/houses/two/price").status_code == 200
    assert "/papers/price-sheet.pdf" in entered.get("/houses/two/papers").text
