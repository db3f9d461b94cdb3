"""Links: one use, 48 hours, for one role; a helper's phone without a password; the first lead."""

import html
import re
from datetime import timedelta

import httpx
import pytest
from tests.web.pages.office import KEY, PASSWORD, START, faults_of_html, two_rooms

from farwall.store.comings import Comings
from farwall.store.people import People
from farwall.web.people.links import link_for_first

GOOD = {"password": PASSWORD, "again": PASSWORD, "way": "password"}


def link(office, role="helper"):
    office.enter_as("lead")
    page = office.post("/people/invite", data={"role": role})
    assert faults_of_html(page.text) == []
    office.cookies = httpx.Cookies()
    return re.search(r"http://farwall(/join/[\w-]+)", page.text)[1]


def test_a_link_brings_somebody_in_under_its_role(office):
    path = link(office, "owner")
    shown = office.get(path)
    assert shown.status_code == 200
    assert faults_of_html(shown.text) == []
    assert office.post(path, data={"name": "Dee", **GOOD}).headers["location"] == "/"
    assert office.get("/").status_code == 200
    assert People(office.book).named("Dee")[0].role == "owner"


def test_it_is_good_once_and_looking_at_it_does_not_spend_it(office):
    path = link(office)
    for _ in range(3):
        assert office.get(path).status_code == 200
    office.post(path, data={"name": "Dee", **GOOD})
    assert office.get(path).status_code == 404
    assert office.post(path, data={"name": "Eve", **GOOD}).status_code == 404
    assert People(office.book).named("Eve") is None


@pytest.mark.parametrize(("passed_h", "code"), [(47.9, 200), (48.1, 404)])
def test_it_ends_after_48_hours(office, passed_h, code):
    path = link(office)
    office.clock = START + timedelta(hours=passed_h)
    assert office.get(path).status_code == code


@pytest.mark.parametrize(
    "told",
    [
        {"name": "", **GOOD},
        {"name": "Ann Field", **GOOD},
        {"name": "Dee", **GOOD, "again": PASSWORD + "x"},
        {"name": "Dee", "password": "short", "again": "short"},
        {"name": "Dee Dee Dee Dee", "password": "deedeedeedeedee", "again": "deedeedeedeedee"},
        {},
    ],
)
def test_what_will_not_do_is_told_and_leaves_the_link_good(office, told):
    path = link(office)
    answer = office.post(path, data=told)
    assert answer.status_code == 422
    assert PASSWORD not in answer.text
    assert faults_of_html(answer.text) == []
    assert office.get(path).status_code == 200


def test_a_helper_may_come_by_the_phone_alone_which_a_lead_can_end(office):
    office.put(two_rooms(), name="Two <b>rooms</b>")
    path = link(office)
    assert (
        office.post(path, data={"name": "Cy", "way": "device"}).headers["location"] == "/me/phone"
    )
    page = office.get("/me/phone")
    assert faults_of_html(page.text) == []
    assert office.get("/houses/two").status_code == 200
    assert office.post("/houses/sample").status_code == 403
    token = re.search(r'href="/slab/two#([\w-]+)"', html.unescape(page.text))[1]
    bearer = {"authorization": f"Bearer {token}"}
    assert office.get("/api/jobs/two/sheet", headers=bearer).status_code in {200, 409}
    sent = {"device": "p", "era": 0, "sent_at": START.isoformat(), "entries": []}
    assert office.ask("POST", "/api/entries", headers=bearer, json=sent).status_code == 200
    assert office.ask("PUT", "/api/jobs/two/facts", headers=bearer, json={}).status_code == 403
    assert office.sign_in("Cy", "").status_code == 403
    one = People(office.book).named("Cy")[0]
    office.enter_as("lead")
    assert office.post(f"/people/{one.id}/end").status_code == 303
    assert office.get("/api/jobs", headers=bearer).status_code == 401
    assert office.get("/me/phone").headers["location"] == "/"


@pytest.mark.parametrize("role", ["lead", "office", "owner"])
def test_nobody_but_a_helper_comes_without_a_password(office, role):
    path = link(office, role)
    assert office.post(path, data={"name": "Cy", "way": "device"}).status_code == 422


def test_the_first_start_gives_a_link_and_no_password(office):
    path = link_for_first(office.book, START.timestamp())
    page = office.get(path)
    assert faults_of_html(page.text) == []
    office.post(path, data={"name": "Ann Field", **GOOD})
    assert office.get("/people").status_code == 200
    assert office.get(path).status_code == 404


def test_with_the_key_of_an_older_book_the_first_person_is_named(office):
    office.enter()
    page = office.get("/people")
    assert faults_of_html(page.text) == []
    answer = office.post("/people/first", data={"name": "Ann Field", **GOOD})
    assert answer.headers["location"] == "/people"
    kept = dict(office.cookies)
    assert "Ann Field" in office.get("/people").text
    assert office.post("/people/first", data={"name": "Bo", **GOOD}).status_code == 422
    assert len(People(office.book).all()) == 1
    office.cookies = httpx.Cookies(kept)


def test_once_there_is_a_lead_those_who_came_by_the_key_are_out(office):
    office.enter()
    stranger = dict(office.cookies)
    office.post("/people/first", data={"name": "Ann Field", **GOOD})
    office.cookies = httpx.Cookies(stranger)
    assert office.get("/").status_code == 303


def test_a_lead_makes_a_link_for_who_forgot(office):
    office.enter_as("office")
    one = People(office.book).named("Bo the office")[0]
    office.enter_as("lead")
    page = office.post(f"/people/{one.id}/link")
    path = re.search(r"http://farwall(/join/[\w-]+)", page.text)[1]
    office.cookies = httpx.Cookies()
    new = "four grey sponges hang dry"
    assert "Bo the office" in office.get(path).text
    office.post(path, data={"name": "somebody else", "password": new, "again": new})
    assert office.get("/").status_code == 200
    assert office.sign_in("Bo the office", new).status_code == 303
    assert office.sign_in("Bo the office", PASSWORD).status_code == 403


def test_the_square_for_a_phone_carries_the_person_and_never_the_key(office, monkeypatch):
    """Whoever may only look would else read from the screen what opens everything."""
    from farwall.web.pages import phone_ways

    held = []
    drawn = phone_ways._square
    monkeypatch.setattr(
        phone_ways, "_square", lambda text, alt: held.append(text) or drawn(text, alt)
    )
    office.put(two_rooms())
    office.enter_as("owner")
    office.get("/houses/two/phone")
    office.cookies = httpx.Cookies()
    assert KEY not in str(held)
    path = held[0].removeprefix("http://farwall")
    page = office.get(path)
    assert "Bo the owner" in page.text
    assert faults_of_html(page.text) == []
    answer = office.post(path.partition("?")[0], data={"way": "phone", "to": "two"})
    place, _, token = answer.headers["location"].partition("#")
    assert place == "/slab/two"
    bearer = {"authorization": f"Bearer {token}"}
    assert office.get("/api/jobs/two", headers=bearer).status_code == 200
    sent = {"device": "p", "era": 0, "sent_at": START.isoformat(), "entries": []}
    assert office.ask("POST", "/api/entries", headers=bearer, json=sent).status_code == 403
    assert office.get(path).status_code == 404
    assert office.sign_in("Bo the owner").status_code == 303


def test_a_link_for_a_phone_ends_after_half_an_hour_and_chooses_no_password(office):
    from farwall.web.people.links import link_for_phone

    one = office.name()
    path = link_for_phone(office.book, START.timestamp(), one)
    new = {"password": "four grey sponges hang dry", "again": "four grey sponges hang dry"}
    assert office.post(path, data={**new, "way": "password"}).status_code == 404
    assert office.sign_in().status_code == 303
    office.clock = START + timedelta(minutes=31)
    assert office.get(path).status_code == 404


def test_the_last_lead_cannot_be_ended_nor_made_less(office):
    office.enter_as("lead")
    one = People(office.book).named("Ann Field")[0]
    for path, told in (
        (f"/people/{one.id}/end", {}),
        (f"/people/{one.id}/role", {"role": "owner"}),
    ):
        answer = office.post(path, data=told)
        assert answer.status_code == 422
        assert "last lead" in answer.text
    assert office.get("/people").status_code == 200


def test_what_was_done_is_told_to_a_lead_without_secrets(office):
    path = link(office)
    office.post(path, data={"name": "Dee", **GOOD})
    office.enter_as("lead")
    page = office.get("/people/done")
    assert faults_of_html(page.text) == []
    for said in ("made a link for somebody new: helper", "came by a link", "signed in"):
        assert said in page.text
    told = str(Comings(office.book).done())
    for secret in (path.rpartition("/")[2], PASSWORD, KEY):
        assert secret not in told
        assert secret not in page.text
