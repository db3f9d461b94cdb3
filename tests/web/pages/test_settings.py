"""Settings: cookies of this browser; what the firm told is what a new house begins with."""

import pytest
from tests.web.pages.office import Office, faults_of_html
from tests.web.pages.test_rooms import GREAT, told

from farwall.web.firm import FIRM
from farwall.web.pages.firm_units import firm_units
from farwall.web.pages.new_houses import NEW_HOUSES, next_working_day


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


def version(text):
    return text.split('name="version" value="')[1].split('"')[0]


def test_the_page_is_sound(office):
    assert faults_of_html(office.get("/settings").text) == []


def test_the_way_to_rates_and_terms_is_told_and_leads_to_the_newest_house(office):
    assert "rates, taxes and terms are told with a house" in office.get("/settings").text
    office.post("/rooms", data=told(GREAT))
    assert 'href="/houses/sage-court/terms"' in office.get("/settings").text


def test_language_and_light_are_kept_by_the_browser(office):
    answer = office.post("/settings", data={"tongue": "es", "light": "sun"})
    assert answer.headers["location"] == "/settings?kept=browser"
    text = office.get("/settings").text
    assert '<html lang="es"' in text
    assert "Ajustes" in text
    assert office.cookies["light"] == "sun"
    office.post("/settings", data={"tongue": "", "light": "paper"})
    assert '<html lang="en"' in office.get("/settings").text


def test_a_language_that_is_none_changes_nothing(office):
    office.post("/settings", data={"tongue": "es", "light": "paper"})
    office.post("/settings", data={"tongue": "xx", "light": "dark"})
    assert office.cookies["tongue"] == "es"


def test_what_the_firm_tells_is_what_a_new_house_begins_with(office):
    page = office.get("/settings").text
    answer = office.post("/settings/firm", data={
        "version": version(page), "crew.helper": "yes", "tools.tank_l": "3.5",
        "stains.0.name": "walnut", "coats.1.cut": "1:4", "wishes.units": "metric",
    })  # fmt: skip
    assert answer.headers["location"] == "/settings?kept=firm"
    office.post("/rooms", data=told(GREAT))
    facts = office.book.facts("sage-court")
    assert facts["crew"]["helper"] is True
    assert facts["tools"]["tank_l"] == pytest.approx(13.249, abs=1e-3)
    assert facts["tools"]["band_m"] == 1.1  # not told by the firm: the default
    assert [one["name"] for one in facts["stains"]] == ["walnut", "dark colour"]
    assert [one["cut"] for one in facts["coats"]] == ["1:1", "1:4"]
    assert '<option value="metric" selected>' in office.get("/rooms").text


def test_feet_that_were_chosen_hold_whatever_the_newest_house_is(office):
    """Feet stand in, so choosing them changed nothing: a metric house turned all pages."""
    office.post("/rooms", data=told(GREAT))
    facts = office.book.facts("sage-court")
    metric = {**facts, "wishes": {**facts.get("wishes", {}), "units": "metric"}}
    office.book.put_facts("sage-court", metric, who="Ann", at="2026-06-08T08:00:00+00:00")
    assert firm_units(office.book) == "metric"
    page = office.get("/settings").text
    office.post("/settings/firm", data={"version": version(page), "wishes.units": "us"})
    assert firm_units(office.book) == "us"
    assert office.book.document(NEW_HOUSES, FIRM) == {"wishes": {"units": "us"}}


def test_refused_or_told_into_an_older_page_nothing_is_kept(office):
    page = office.get("/settings").text
    first = {"version": version(page), "tools.tank_l": "3"}
    assert office.post("/settings/firm", data=first | {"tools.tank_l": "big"}).status_code == 422
    assert office.post("/settings/firm", data=first).status_code == 303
    late = office.post("/settings/firm", data=first | {"tools.tank_l": "2.5"})
    assert late.status_code == 422
    assert "somebody else has changed" in late.text


def test_two_who_tell_the_firm_at_once_lose_nothing(office):
    page = office.get("/settings").text
    was = {"version": version(page), "crew.helper": "", "tools.tank_l": "", "stains.0.name": ""}
    office.post("/settings/firm", data=was | {"tools.tank_l": "3", "stains.0.name": "walnut"})
    mine = was | {"stains.0.name": "umber", "crew.helper": "yes"}
    late = office.post("/settings/firm", data=mine)
    assert late.status_code == 422
    assert faults_of_html(late.text) == []
    assert "Somebody else put walnut here meanwhile" in late.text
    for stands in ('value="3"', 'value="umber"'):  # theirs beside mine
        assert stands in late.text
    again = {"version": version(late.text), "crew.helper": "yes", "tools.tank_l": "3",
             "stains.0.name": "umber"}  # fmt: skip
    assert office.post("/settings/firm", data=again).status_code == 303
    told = office.book.document(NEW_HOUSES, FIRM)
    assert told["crew"]["helper"] is True
    assert told["tools"]["tank_l"] == pytest.approx(11.356, abs=1e-3)
    assert told["stains"][0]["name"] == "umber"


@pytest.mark.parametrize(
    ("now", "starts"),
    [
        ("2026-06-08T10:00:00-06:00", "2026-06-09T08:00:00-06:00"),  # a Monday
        ("2026-06-12T10:00:00-06:00", "2026-06-15T08:00:00-06:00"),  # a Friday
        ("2026-06-13T10:00:00+02:00", "2026-06-15T08:00:00+02:00"),  # a Saturday
    ],
)
def test_a_new_house_begins_at_eight_on_the_next_working_day(now, starts):
    from datetime import datetime

    assert next_working_day(datetime.fromisoformat(now)) == starts
