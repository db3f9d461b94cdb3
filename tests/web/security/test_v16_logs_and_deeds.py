"""What is logged and what is noted: enough to see who did what, and never a secret."""

import io
import json
import logging

import pytest
from tests.web.pages.office import KEY, PASSWORD, START, two_rooms

from farwall.store.comings import Comings
from farwall.web import logs
from farwall.web.people.links import link_for_first


@pytest.fixture
def log():
    """Whatever any logger says, as the server would write it."""
    said, root = io.StringIO(), logging.getLogger()
    handler = logging.StreamHandler(said)
    handler.setFormatter(logs.JsonLine())
    handler.addFilter(lambda record: record.name != "httpx")  # the asking side's own
    levels = root.level, logs.LOG.level
    root.addHandler(handler)
    root.setLevel(logging.DEBUG)
    logs.LOG.setLevel(logging.INFO)
    yield said
    root.removeHandler(handler)
    root.setLevel(levels[0])
    logs.LOG.setLevel(levels[1])


def lines(log):
    return [json.loads(one) for one in log.getvalue().splitlines()]


def answered(log):
    return [one for one in lines(log) if one["what"] == "answered"]


def test_each_answer_is_a_line_with_the_template_and_not_the_path(office, log):
    office.put(two_rooms(), name="A house of somebody")
    office.enter_as("lead")
    answer = office.get("/houses/two/state", params={"minute": "3"})
    found = answered(log)[-1]
    assert found["route"] == "GET /houses/{job}/state"
    assert (found["status"], found["role"]) == (200, "lead")
    assert found["id"] == answer.headers["x-request-id"]
    assert found["ms"] >= 0
    assert found["from"] == "loopback"


def test_an_unknown_path_is_not_written_down(office, log):
    office.get("/no-such-secret-path?token=abc")
    assert answered(log)[-1]["route"] == "GET (none)"
    assert "secret" not in log.getvalue()


def test_no_password_token_key_or_name_is_ever_in_the_log(office, log):
    """Through every way by which a secret comes: forms, links, cookies, headers, errors."""
    path = link_for_first(office.book, START.timestamp())
    told = {"name": "Ann Field", "password": PASSWORD, "again": PASSWORD}
    office.post(path, data=told)
    cookies = list(office.cookies.values())
    office.post("/enter", data={"name": "Ann Field", "password": PASSWORD + "no"})
    office.post("/enter", data={"key": KEY})
    office.get("/api/jobs", headers={"authorization": f"Bearer {KEY}"})
    office.get("/api/jobs", headers={"authorization": f"Bearer {KEY}x"})
    office.ask("PUT", "/api/jobs/two/facts", headers={"authorization": f"Bearer {KEY}"}, json={})
    office.post("/me/password", data={"was": PASSWORD, "password": "x", "again": "x"})
    page = office.post("/people/invite", data={"role": "helper"})
    logging.getLogger("farwall.web").error("broken", exc_info=ValueError(PASSWORD))
    text = log.getvalue()
    assert len(answered(log)) >= 8
    link = page.text.partition("/join/")[2][:43]
    for secret in (PASSWORD, KEY, *cookies, path.rpartition("/")[2], link, "Ann Field"):
        assert secret
        assert secret not in text


def test_of_an_exception_only_its_kind_and_place_are_told(log):
    try:
        raise ValueError("the secret word")
    except ValueError:
        logging.getLogger("elsewhere").exception("the secret word")
    found = lines(log)[-1]
    assert found["kind"] == "ValueError"
    assert any("test_of_an_exception" in one for one in found["where"])
    assert "secret word" not in log.getvalue()


def test_the_log_goes_to_a_file_when_one_is_told(tmp_path):
    root = logging.getLogger()
    before = root.handlers, root.level, logs.LOG.level
    try:
        logs.log_to(str(tmp_path / "log"))
        logs.LOG.info("answered", extra={"told": {"status": 200}})
        root.handlers[0].close()
        told = json.loads((tmp_path / "log").read_text())
        assert (told["what"], told["status"], told["level"]) == ("answered", 200, "info")
    finally:
        root.handlers, level, own = before
        root.setLevel(level)
        logs.LOG.setLevel(own)


def deeds(office):
    return [(one.who, one.word) for one in Comings(office.book).done()]


def test_changed_facts_are_noted_with_who_and_which_house(office):
    office.enter_as("office")
    office.bring(two_rooms())
    newest = Comings(office.book).done()[0]
    assert (newest.who, newest.word) == ("Bo the office", "change")
    assert newest.about["route"] == "POST /houses/bring"
    put = {"facts": two_rooms(), "who": "somebody else"}
    bearer = {"authorization": f"Bearer {KEY}"}
    office.ask("PUT", "/api/jobs/two/facts", headers=bearer, json=put)
    newest = Comings(office.book).done()[0]
    assert (newest.who, newest.about["job"]) == ("the key", "two")


def test_what_was_refused_for_its_content_is_no_deed_and_what_was_denied_is_noted(office):
    office.enter_as("helper")
    before = len(deeds(office))
    office.post("/houses/sample")
    assert deeds(office)[0] == ("Bo the helper", "denied")
    office.enter_as("office")
    before = len(deeds(office))
    office.post("/houses/bring", data={})
    office.get("/")
    assert len(deeds(office)) == before


def test_a_device_s_changes_are_kept_under_the_name_of_its_person(office):
    office.name()
    token = office.sessions.begin(office.name("Cy", "office"), "device")
    put = {"facts": two_rooms(), "who": "somebody else"}
    bearer = {"authorization": f"Bearer {token}"}
    assert office.ask("PUT", "/api/jobs/two/facts", headers=bearer, json=put).status_code == 200
    assert office.book.versions("two")[-1].who == "Cy"


def test_a_book_that_takes_no_note_still_answers_and_says_so_in_the_log(office, log, monkeypatch):
    from farwall.errors import Refused

    office.enter_as("office")

    def full(*_told):
        raise Refused()

    monkeypatch.setattr(Comings, "note", full)
    assert office.bring(two_rooms()).status_code == 303
    assert any(one.get("kind") == "Refused" for one in lines(log))
