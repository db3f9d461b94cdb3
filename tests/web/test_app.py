"""The door over HTTP: kept by the time it answers, refused calmly, shut without the key."""

from __future__ import annotations

import hashlib
from datetime import UTC, datetime

import httpx
import pytest
from tests.store.entries import FACTS, entry
from tests.web.pages.office import new_book

from farwall.readers.log_json import entry_to_dict
from farwall.web.app import app_for
from farwall.web.door import MOST_BYTES, Door

KEY = "a key of our own, invented"
NOW = datetime(2026, 6, 8, 12, tzinfo=UTC)
SHOWN = {"Authorization": f"Bearer {KEY}"}


@pytest.fixture
def book(tmp_path):
    with new_book(tmp_path / "book") as found:
        found.put_facts("quince", FACTS, who="Ann", at=NOW.isoformat(), name="Quince Street")
        yield found


@pytest.fixture
def ask(book):
    """Asks the door: method, path, and what httpx takes; back comes the answer."""
    import asyncio

    app = app_for(Door(book, KEY, lambda: NOW))

    def asked(method, path, **more):
        async def once():
            transport = httpx.ASGITransport(app=app)
            async with httpx.AsyncClient(transport=transport, base_url="http://farwall") as client:
                return await client.request(method, path, **{"headers": SHOWN, **more})

        return asyncio.run(once())

    yield asked
    app.state.live.door.writing.shutdown()


def offer(*entries, **more):
    body = {"device": "phone-a", "era": 0, "sent_at": NOW.isoformat(), "entries": list(entries)}
    return {**body, **more}


def test_what_it_acknowledges_is_in_the_book_once(ask, book):
    sent = offer(entry_to_dict(entry("one")), entry_to_dict(entry("two")))
    first, again = ask("POST", "/api/entries", json=sent), ask("POST", "/api/entries", json=sent)
    assert first.json()["new"] == ["one", "two"]
    assert (again.json()["new"], again.json()["known"]) == ([], ["one", "two"])
    assert [kept.entry.id for kept in book.entries("quince")] == ["one", "two"]
    assert first.json()["places"] == again.json()["places"] == 2


def test_the_good_never_waits_for_the_bad(ask, book):
    no_job = entry_to_dict(entry("lost", job="nowhere"))
    bad_word = {**entry_to_dict(entry("odd")), "word": "sprung"}
    found = ask(
        "POST", "/api/entries", json=offer(no_job, 7, entry_to_dict(entry("one")), bad_word)
    )
    told = found.json()
    assert found.status_code == 200
    assert told["new"] == ["one"]
    assert {one["id"] for one in told["turned"]} == {"lost", "null", "odd"}
    assert all(one["why"] for one in told["turned"])


def test_another_entry_under_the_same_id_is_turned_away_and_the_first_stays(ask, book):
    ask("POST", "/api/entries", json=offer(entry_to_dict(entry("one"))))
    other = entry_to_dict(entry("one", about={"text": "another"}))
    told = ask("POST", "/api/entries", json=offer(other, entry_to_dict(entry("two")))).json()
    assert [one["id"] for one in told["turned"]] == ["one"]
    assert told["new"] == ["two"]
    assert book.entries("quince")[0].entry == entry("one")


def test_what_is_turned_away_is_said_in_the_language_of_the_phone(ask):
    """The page of a phone that speaks Spanish once told it in English."""
    ask("POST", "/api/entries", json=offer(entry_to_dict(entry("one"))))
    sent = offer(
        entry_to_dict(entry("lost", job="nowhere")),
        entry_to_dict(entry("one", about={"text": "another"})),
        {**entry_to_dict(entry("odd")), "word": "dryy"},
    )
    spanish = {**SHOWN, "Accept-Language": "es"}
    turned = ask("POST", "/api/entries", json=sent, headers=spanish).json()["turned"]
    why = {one["id"]: one["why"] for one in turned}
    assert why["lost"] == [
        "el libro no tiene el trabajo nowhere: agréguelo y ofrezca esto de nuevo."
    ]
    assert why["one"] == [
        "el libro tiene otra anotación con esta identificación: anótela de nuevo."
    ]
    assert why["odd"][0].startswith("word: esta no es una palabra del registro. ¿Quiso decir")
    english = ask("POST", "/api/entries", json=sent).json()["turned"]
    assert {one["id"]: one["why"][0].split()[-1] for one in english}["lost"] == "again."


def test_a_clock_three_hours_ahead_is_known_from_then_on(ask, book):
    sent_at = datetime(2026, 6, 8, 15, 0, 1, tzinfo=UTC).isoformat()
    one = entry_to_dict(entry("one", device="phone-a"))
    ask("POST", "/api/entries", json=offer(one, sent_at=sent_at))
    assert book.entries("quince")[0].clock_off_s == 3 * 3600


def test_a_second_phone_sees_what_the_first_has_sent(ask):
    ask("POST", "/api/entries", json=offer(*(entry_to_dict(entry(n)) for n in ("a", "b", "c"))))
    found = ask("GET", "/api/jobs/quince/entries", params={"after": 1}).json()["entries"]
    assert [one["entry"]["id"] for one in found] == ["b", "c"]
    assert [one["place"] for one in found] == [2, 3]


def test_a_place_beyond_all_numbers_of_a_store_has_nothing_or_all_behind_it(ask):
    ask("POST", "/api/entries", json=offer(entry_to_dict(entry("a"))))
    for after, ids in ((10**40, []), (-(10**40), ["a"])):
        found = ask("GET", "/api/jobs/quince/entries", params={"after": after})
        assert found.status_code == 200
        assert [one["entry"]["id"] for one in found.json()["entries"]] == ids


def test_which_ids_are_missing(ask):
    ask("POST", "/api/entries", json=offer(entry_to_dict(entry("a"))))
    assert ask("POST", "/api/have", json={"ids": ["b", "a", "c"]}).json()["missing"] == ["b", "c"]


def test_a_photo_is_kept_under_what_is_in_it(ask):
    photo = b"\xff\xd8 a photo"
    sha = hashlib.sha256(photo).hexdigest()
    for _ in range(2):
        assert ask("PUT", f"/api/files/{sha}", content=photo).json() == {"sha256": sha}
    assert ask("GET", f"/api/files/{sha}").content == photo
    wrong = ask("PUT", f"/api/files/{'0' * 64}", content=photo)
    assert wrong.status_code == 422


@pytest.mark.parametrize("path", ["/api/jobs", "/api/jobs/quince", "/api/jobs/quince/entries"])
@pytest.mark.parametrize("headers", [{}, {"Authorization": "Bearer no"}, {"Authorization": KEY}])
def test_without_the_key_nothing_is_told(ask, path, headers):
    found = ask("GET", path, headers=headers)
    assert found.status_code == 401
    assert "key" in found.json()["error"]
    assert "Quince" not in found.text


def test_the_list_and_a_job(ask):
    assert [one["id"] for one in ask("GET", "/api/jobs").json()["jobs"]] == ["quince"]
    job = ask("GET", "/api/jobs/quince").json()
    assert job["facts"] == FACTS
    assert [one["version"] for one in job["versions"]] == [1]
    assert ask("GET", "/api/jobs/nowhere").status_code == 404
    assert ask("GET", "/api/clock", headers={}).json()["now"].startswith("2026-06-08T12:00")


@pytest.mark.parametrize(
    ("content", "code", "says"),
    [
        (b"{", 422, "no JSON"),
        (b"[]", 422, "no offer"),
        (b"{}", 422, "which device"),
        (b'{"device": "a", "sent_at": "today", "entries": 3, "era": -1}', 422, "a list"),
        (b" " * (MOST_BYTES + 1), 413, "too many"),
    ],
    ids=["torn", "a list", "empty", "all wrong", "too large"],
)
def test_what_cannot_be_read_is_refused_calmly(ask, content, code, says):
    found = ask("POST", "/api/entries", content=content)
    assert found.status_code == code
    assert says in found.text
    assert "Traceback" not in found.text


def test_which_photos_are_missing(ask):
    sha, other = hashlib.sha256(b"a").hexdigest(), hashlib.sha256(b"b").hexdigest()
    ask("PUT", f"/api/files/{sha}", content=b"a")
    asked = ask("POST", "/api/have", json={"ids": [], "files": [other, sha]})
    assert asked.json()["missing_files"] == [other]
    assert ask("POST", "/api/have", json={"ids": [], "files": ["../x"]}).status_code == 422
    assert ask("POST", "/api/have", json={"files": []}).status_code == 422
