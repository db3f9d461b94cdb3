"""A house set aside by its page: out of list, calendar and van; nothing erased; and back."""

from __future__ import annotations

import pytest
from tests.web.pages.office import KEY, Office, faults_of_html

from farwall.web.pages.days import in_hand


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put_planned("Two rooms")
    yield found
    found.close()


def aside(office, do="aside", **told):
    return office.post("/houses/two/aside", data={"do": do} | told)


def test_it_leaves_list_days_and_van_and_its_page_says_so(office):
    for path in ("/", "/days", "/van"):
        assert "Two rooms" in office.get(path).text, path
    before = office.book.facts("two")
    answer = aside(office, why="the sale <fell> through")
    assert (answer.status_code, answer.headers["location"]) == (303, "/")
    for path in ("/", "/days", "/van"):
        text = office.get(path).text
        assert "Two rooms" not in text, path
        assert faults_of_html(text) == [], path
    assert "Two rooms" in office.get("/?show=aside").text
    text = office.get("/houses/two").text
    assert faults_of_html(text) == []
    assert "This house is set aside" in text
    assert "the sale &lt;fell&gt; through" in text
    (line,) = office.book.jobs()
    assert line.aside
    assert office.book.facts("two") == before


def test_it_comes_back_and_both_are_asked_twice_without_harm(office):
    aside(office)
    aside(office)
    answer = aside(office, do="back")
    assert answer.headers["location"] == "/houses/two"
    aside(office, do="back")
    words = [one.entry.word for one in office.book.entries("two")]
    assert words == ["set-aside", "struck"]
    assert "Two rooms" in office.get("/").text
    assert "This house is set aside" not in office.get("/houses/two").text


def test_a_house_set_aside_and_brought_back_is_as_it_was_before(office):
    """It is planned for another day than the desk's: nothing of it is begun by that."""
    before = office.get("/houses/two").text
    aside(office)
    aside(office, do="back")
    after = office.get("/houses/two").text
    assert "floor as logged" not in after
    assert "As entered on the slab" not in after
    assert after == before
    text = office.get("/houses/two/log").text
    assert faults_of_html(text) == []
    assert "set aside" in text


def test_a_log_of_the_floor_is_cautioned_of(office):
    caution = "what is wet, neutralised or in a drum"
    assert caution not in office.get("/houses/two").text
    office.post("/houses/two/log", data={"word": "note", "text": "x"})
    assert caution in office.get("/houses/two").text


def test_a_helper_sets_nothing_aside_by_page_log_or_phone(office):
    office.enter_as("helper")
    assert "Your role does not go that far" in aside(office).text
    refused = office.post("/houses/two/log", data={"word": "set-aside"})
    assert refused.status_code == 403
    assert "Set this house aside" not in office.get("/houses/two").text
    assert not office.book.jobs()[0].aside


def test_a_house_that_is_not_there_is_told(office):
    assert office.post("/houses/none/aside", data={"do": "aside"}).status_code == 404


def test_the_api_tells_it(office):
    aside(office)
    (line,) = office.ask("GET", "/api/jobs", headers={"authorization": f"Bearer {KEY}"}).json()[
        "jobs"
    ]
    assert line["aside"] is True


def test_a_calendar_that_stands_is_told_without_it():
    stands = {"document": {"houses": [{"id": "elm"}, {"id": "fir"}]}, "ics": "x"}
    assert in_hand(stands, {"elm"}) == {"document": {"houses": [{"id": "fir"}]}, "ics": "x"}
    assert in_hand(None, {"elm"}) is None
    assert in_hand({"document": None}, {"elm"}) == {"document": None}
