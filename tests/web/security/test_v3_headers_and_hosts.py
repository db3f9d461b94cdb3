"""What every answer carries, and by which names the server lets itself be asked."""

import asyncio

import httpx
import pytest
from tests.web.pages.office import Office, two_rooms

from farwall.web.app import app_for
from farwall.web.hosts import host_in

PATHS = ["/enter", "/", "/people", "/me", "/api/clock", "/api/jobs", "/no-such", "/api/no-such",
         "/healthz", "/slab/two", "/join/nothing", "/houses/two", "/static/office.css"]  # fmt: skip


@pytest.mark.parametrize("path", PATHS)
def test_every_answer_is_shut_against_other_sites(office, path):
    office.enter_as("lead")
    told = office.get(path).headers
    assert told["cross-origin-opener-policy"] == "same-origin"
    assert told["cross-origin-resource-policy"] == "same-origin"
    assert "default-src 'none'" in told["content-security-policy"]
    assert "frame-ancestors 'none'" in told["content-security-policy"]
    assert told["x-content-type-options"] == "nosniff"
    camera = "camera=(self)" if path.startswith("/slab/") else "camera=()"
    assert camera in told["permissions-policy"]
    assert "access-control-allow-origin" not in told
    assert "server" not in told


@pytest.mark.parametrize("path", [one for one in PATHS if not one.startswith(("/static", "/slab"))])
def test_no_page_and_no_answer_is_kept_by_a_browser(office, path):
    office.enter_as("lead")
    assert office.get(path).headers["cache-control"] == "no-store"


def test_over_https_only_https_is_used_from_then_on_and_never_told_over_http(tmp_path, office):
    assert "strict-transport-security" not in office.get("/enter").headers
    other = Office(tmp_path / "other", scheme="https")
    assert other.get("/enter").headers["strict-transport-security"] == "max-age=2592000"
    other.close()


def asked(office, host, names=("farwall.test",)):
    app = app_for(office.door, names=names)

    async def once():
        transport = httpx.ASGITransport(app=app)
        async with httpx.AsyncClient(transport=transport, base_url="http://192.0.2.7") as client:
            return await client.get("/api/clock", headers={"host": host})

    return asyncio.run(once())


@pytest.mark.parametrize(
    "host",
    ["farwall.test", "FARWALL.test:8750", "farwall.test.", "localhost:8750", "127.0.0.1", "[::1]:1",
     "192.0.2.7", "192.0.2.7:8750"],
)  # fmt: skip
def test_its_own_names_are_answered(office, host):
    assert asked(office, host).status_code == 200


@pytest.mark.parametrize(
    "host",
    ["evil.example", "evil.example:8750", "192.0.2.8", "farwall.test.evil.example", "",
     "a@localhost", "localhost/x", "localhost evil", "[::1",
     "localhost.evil.example", "127.0.0.1.evil.example"],
)  # fmt: skip
def test_another_name_that_leads_here_is_turned_away_with_the_safe_headers(office, host):
    answer = asked(office, host)
    assert answer.status_code == 421
    assert answer.json()["mistakes"]
    assert "default-src 'none'" in answer.headers["content-security-policy"]


def test_with_no_name_told_only_loopback_and_the_address_are_ours(office):
    assert asked(office, "farwall.test", names=()).status_code == 421
    assert asked(office, "localhost", names=()).status_code == 200


@pytest.mark.parametrize("header", ["", ":80", "[", "]", "a:b:c", "\x00", "a\\b", "[::1]x"])
def test_whatever_a_host_header_says_is_read_without_fail(header):
    assert isinstance(host_in(header), str)


def test_an_unknown_address_is_a_page_for_people_and_json_for_programs(office):
    page, told = office.get("/no-such"), office.get("/api/no-such")
    assert (page.status_code, told.status_code) == (404, 404)
    assert page.headers["content-type"].startswith("text/html")
    assert set(told.json()) == {"error", "mistakes"}
    assert office.ask("DELETE", "/api/jobs").status_code == 405
    spanish = office.get("/no-such", headers={"accept-language": "es"})
    assert 'lang="' in spanish.text


def test_what_breaks_is_told_calmly_and_by_a_number(office, monkeypatch):
    from farwall.store.book import Book

    office.enter_as("lead")
    office.put(two_rooms())

    def broken(*_told, **_more):
        raise ZeroDivisionError("the secret word")

    monkeypatch.setattr(Book, "jobs", broken)

    async def once(path):
        transport = httpx.ASGITransport(app=office.app)
        async with httpx.AsyncClient(
            transport=transport, base_url=office.here, cookies=office.cookies
        ) as client:
            key = {"authorization": f"Bearer {office.door.key}"}
            return await client.get(path, headers=key)

    for path in ("/", "/api/jobs"):
        answer = asyncio.run(once(path))
        assert answer.status_code == 500
        assert answer.headers["x-request-id"] in answer.text
        assert "secret word" not in answer.text
        assert "Traceback" not in answer.text
