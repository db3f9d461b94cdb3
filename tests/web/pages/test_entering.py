"""The key first: nothing is shown without it, and forms come from this site only."""

import pytest
from tests.web.pages.office import KEY, Office, faults_of_html

from farwall.web.pages.headers import CSP


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    yield found
    found.close()


@pytest.mark.parametrize(
    "path",
    ["/", "/houses/two", "/houses/two/moment.svg", "/houses/two/run-sheet.pdf",
     "/houses/two/state"],
)  # fmt: skip
def test_without_the_key_every_page_leads_to_the_door(office, path):
    answer = office.get(path)
    assert answer.status_code == 303
    assert answer.headers["location"] == f"/enter?to={path}"
    assert not answer.content


@pytest.mark.parametrize("path", ["/houses/sample", "/houses/bring", "/houses/two/facts"])
def test_without_the_key_no_form_is_taken(office, path):
    assert office.post(path).status_code == 303
    assert office.book.jobs() == []


def test_the_key_lets_in_by_a_cookie_that_no_script_and_no_other_site_gets(office):
    answer = office.post("/enter", data={"key": KEY, "to": "/houses/two?minute=3"})
    assert (answer.status_code, answer.headers["location"]) == (303, "/houses/two?minute=3")
    cookie = answer.headers["set-cookie"]
    assert "HttpOnly" in cookie
    assert "samesite=strict" in cookie.lower()
    assert "Secure" not in cookie
    assert KEY not in cookie
    assert office.get("/").status_code == 200


def test_over_https_the_cookie_is_for_https_only(tmp_path):
    office = Office(tmp_path, scheme="https")
    assert "Secure" in office.enter().headers["set-cookie"]
    office.close()


@pytest.mark.parametrize("to", ["//evil.example/", "https://evil.example/", "/\\evil.example", ""])
def test_after_the_key_nobody_is_led_elsewhere(office, to):
    answer = office.post("/enter", data={"key": KEY, "to": to})
    assert answer.headers["location"] == "/"


def test_a_wrong_key_is_told_and_the_sixth_waits(office):
    codes = [office.post("/enter", data={"key": "no"}).status_code for _ in range(6)]
    assert codes == [403] * 5 + [429]
    assert office.post("/enter", data={"key": KEY}).headers["retry-after"] == "60"


def test_leaving_ends_the_session_itself_and_not_the_cookie_alone(office):
    office.enter()
    kept = dict(office.cookies)
    assert office.post("/leave").headers["location"] == "/enter"
    office.cookies.update(kept)
    assert office.get("/").status_code == 303


@pytest.mark.parametrize(
    "headers",
    [
        {"origin": "http://evil.example"},
        {"origin": "null"},
        {"origin": "http://farwall", "sec-fetch-site": "cross-site"},
        {"origin": "http://farwall", "sec-fetch-site": "same-site"},
        {"origin": ""},
    ],
)
def test_a_form_from_elsewhere_is_turned_away(office, headers):
    office.enter()
    answer = office.post("/houses/sample", headers=headers)
    assert answer.status_code == 403
    assert office.book.jobs() == []


def test_a_form_that_does_not_say_where_it_is_from_is_turned_away(office):
    office.enter()
    assert office.ask("POST", "/houses/sample").status_code == 403


@pytest.mark.parametrize("path", ["/enter", "/", "/static/office.js", "/api/clock", "/no-such"])
def test_every_answer_carries_the_safe_headers(office, path):
    office.enter()
    headers = office.get(path).headers
    assert headers["content-security-policy"] == CSP
    assert "unsafe" not in CSP
    assert headers["x-content-type-options"] == "nosniff"
    assert headers["referrer-policy"] == "same-origin"


def test_the_door_is_sound_html_and_holds_no_key(office):
    text = office.get("/enter").text
    assert faults_of_html(text) == []
    assert KEY not in text


def test_what_stands_in_the_address_is_escaped(office):
    text = office.get("/enter", params={"to": '/"><script>x</script>'}).text
    assert "<script>x" not in text
    assert faults_of_html(text) == []


def test_the_files_of_the_pages_are_not_sent_twice(office):
    first = office.get("/static/office.css")
    again = office.get("/static/office.css", headers={"if-none-match": first.headers["etag"]})
    assert first.headers["content-type"].startswith("text/css")
    assert again.status_code == 304
    assert office.get("/static/office.exe").status_code == 404


def test_the_api_keeps_its_own_key(office):
    office.enter()
    assert office.get("/api/jobs").status_code == 401
    bearer = {"authorization": f"Bearer {KEY}"}
    assert office.get("/api/jobs", headers=bearer).status_code == 200
