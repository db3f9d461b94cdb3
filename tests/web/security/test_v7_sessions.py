"""Sessions: kept by seals, ended by time, by leaving, by a new password; cookies nobody gets."""

from datetime import timedelta

import httpx
import pytest
from sqlalchemy import text
from tests.web.pages.office import PASSWORD, START, Office

NEW = "four grey sponges hang dry"


def entered(office):
    office.enter_as("lead")
    return dict(office.cookies)


def is_in(office, cookies=None):
    if cookies is not None:
        office.cookies = httpx.Cookies(cookies)
    return office.get("/").status_code == 200


def test_a_session_outlasts_a_restart_of_the_server(tmp_path):
    office = Office(tmp_path)
    kept = entered(office)
    office.close()
    again = Office(tmp_path)
    assert is_in(again, kept)
    again.close()


@pytest.mark.parametrize(("passed_h", "stays"), [(11.9, True), (12.1, False)])
def test_unseen_for_twelve_hours_it_ends(office, passed_h, stays):
    entered(office)
    office.clock = START + timedelta(hours=passed_h)
    assert is_in(office) is stays


def test_after_a_week_it_ends_though_it_was_seen(office):
    entered(office)
    for hours in range(6, 7 * 24, 6):
        office.clock = START + timedelta(hours=hours)
        assert is_in(office)
    office.clock = START + timedelta(days=7)
    assert not is_in(office)


def test_signing_in_gives_a_new_token_and_ends_the_one_before(office):
    first = entered(office)
    office.sign_in()
    assert office.cookies["farwall"] != first["farwall"]
    assert is_in(office)
    assert not is_in(office, first)


def test_no_token_that_came_with_the_request_is_taken_over(office):
    office.name()
    office.cookies.set("farwall", "chosen-by-somebody-else", domain="farwall.local")
    office.sign_in()
    assert "chosen-by-somebody-else" not in office.cookies.values() or is_in(office)
    assert not is_in(office, {"farwall": "chosen-by-somebody-else"})


def test_another_password_ends_all_other_sessions(office):
    first = entered(office)
    office.cookies = httpx.Cookies()
    second = entered(office)
    told = {"was": PASSWORD, "password": NEW, "again": NEW}
    assert office.post("/me/password", data=told).status_code == 303
    assert is_in(office)
    assert not is_in(office, second)
    assert not is_in(office, first)
    assert office.sign_in().status_code == 403
    assert office.sign_in(password=NEW).status_code == 303


@pytest.mark.parametrize(
    ("told", "code"),
    [
        ({"was": "wrong but long enough", "password": NEW, "again": NEW}, 403),
        ({"was": PASSWORD, "password": NEW, "again": NEW + "x"}, 422),
        ({"was": PASSWORD, "password": "short", "again": "short"}, 422),
    ],
)
def test_a_password_is_changed_by_the_one_so_far_and_to_a_good_one(office, told, code):
    entered(office)
    assert office.post("/me/password", data=told).status_code == code
    assert office.sign_in().status_code == 303


def test_leaving_all_devices_ends_all(office):
    first = entered(office)
    office.cookies = httpx.Cookies()
    second = entered(office)
    assert office.post("/me/leave-all").headers["location"] == "/enter"
    assert not is_in(office, first)
    assert not is_in(office, second)


def test_leaving_ends_one(office):
    first = entered(office)
    office.cookies = httpx.Cookies()
    second = entered(office)
    office.post("/leave")
    assert not is_in(office, second)
    assert is_in(office, first)


def test_the_cookie_that_knows_a_browser_opens_nothing(office):
    known = entered(office)["farwall-known"]
    assert not is_in(office, {"farwall": known})
    bearer = {"authorization": f"Bearer {known}"}
    assert office.get("/api/jobs", headers=bearer).status_code == 401


def test_a_browser_s_token_opens_no_api(office):
    bearer = {"authorization": f"Bearer {entered(office)['farwall']}"}
    assert office.get("/api/jobs", headers=bearer).status_code == 401


def test_over_https_cookies_are_of_this_host_alone(tmp_path):
    office = Office(tmp_path, scheme="https")
    office.name()
    told = office.sign_in().headers.get_list("set-cookie")
    assert len(told) == 2
    for one in told:
        assert one.startswith("__Host-")
        assert "Secure" in one
        assert "HttpOnly" in one
        assert "Path=/" in one
        assert "Domain" not in one
        assert "samesite=strict" in one.lower()
    assert is_in(office)
    office.close()


def test_no_token_and_no_password_lies_in_the_book(office):
    cookies = entered(office)
    with office.book.engine.connect() as connection:
        tables = ("session", "person", "invite", "tried", "done")
        kept = str([connection.execute(text(f"SELECT * FROM {one}")).all() for one in tables])
    assert "Ann Field" in kept
    for secret in (*cookies.values(), PASSWORD):
        assert secret not in kept
