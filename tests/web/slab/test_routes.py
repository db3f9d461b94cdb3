"""The page over HTTP: open as a page, shut as to the plan, strict in what it may run."""

from __future__ import annotations

import asyncio
import base64
import hashlib
import re
from datetime import UTC, datetime
from random import Random
from uuid import UUID

import httpx
import pytest
from tests.web.slab.house import JOB, KEY, planned

from farwall.facts.log import Entry
from farwall.store.book import Book
from farwall.web.app import app_for
from farwall.web.door import Door
from farwall.web.slab.routes import KINDS

SHOWN = {"Authorization": f"Bearer {KEY}"}


@pytest.fixture
def ask(tmp_path):
    with Book.open(planned(tmp_path)) as book:
        app = app_for(Door(book, KEY, lambda: datetime.now(UTC)))

        def asked(path, **headers):
            async def once():
                transport = httpx.ASGITransport(app=app)
                async with httpx.AsyncClient(transport=transport, base_url="http://slab") as client:
                    return await client.get(path, headers=headers)

            return asyncio.run(once())

        yield asked
        app.state.live.door.writing.shutdown()


def test_the_page_asks_for_no_key_and_holds_nothing_of_the_job(ask):
    page = ask(f"/slab/{JOB}")
    assert page.status_code == 200
    assert page.text == ask("/slab/another").text
    assert KEY not in page.text


def test_the_plan_asks_for_the_key(ask):
    assert ask(f"/api/jobs/{JOB}/sheet").status_code == 401
    told = ask(f"/api/jobs/{JOB}/sheet", **SHOWN)
    assert told.json()["id"] == JOB
    assert len(told.json()["fields"]) == 16
    assert told.json()["units"] == "us"


def test_files_and_plan_come_packed_where_the_browser_takes_it_and_bare_where_not(ask):
    paths = ("/slab/files/slab.js", f"/api/jobs/{JOB}/sheet")
    for path in paths:
        packed = ask(path, **SHOWN, **{"accept-encoding": "br, gzip"})
        bare = ask(path, **SHOWN, **{"accept-encoding": "gzip;q=0, identity"})
        assert packed.headers["content-encoding"] == "gzip"
        assert "content-encoding" not in bare.headers
        assert packed.content == bare.content  # what came was unpacked by the client
        assert {packed.headers["vary"], bare.headers["vary"]} == {"accept-encoding"}
        assert int(packed.headers["content-length"]) < len(bare.content) / 2


def test_a_long_log_weighs_little_on_its_way(ask, tmp_path):
    """A new phone fetches all of it; bare it would be 0.3 KB for each entry."""
    drawn, at = Random(1), "2026-06-01T09:00:00+00:00"
    taps = [
        Entry(id=str(UUID(int=drawn.getrandbits(128))), job=JOB, word="drip", at=at, device="a",
              number=n + 1) for n in range(100)
    ]  # fmt: skip
    with Book.open(tmp_path / "book") as book:
        book.keep(taps, received_at=at)
    told = ask(f"/api/jobs/{JOB}/entries", **SHOWN, **{"accept-encoding": "gzip"})
    assert len(told.json()["entries"]) == 100
    assert int(told.headers["content-length"]) < 100 * 60
    now = ask(f"/api/jobs/{JOB}/now", **SHOWN, **{"accept-encoding": "gzip"})
    assert now.headers["content-encoding"] == "gzip"


def test_what_holds_a_key_is_not_packed(ask):
    """A packed body tells by its length what is in it; pages of the office stay bare."""
    for path in ("/enter", f"/api/jobs/{JOB}", "/api/jobs"):
        told = ask(path, **SHOWN, **{"accept-encoding": "gzip"})
        assert "content-encoding" not in told.headers


def test_the_rest_of_the_day_asks_for_the_key_and_is_told_calmly_before_there_is_one(ask):
    path = f"/api/jobs/{JOB}/sheet/rest"
    assert ask(path).status_code == 401
    told = {"upto": -1, "at": 0.0, "entries": 0, "sheet": None, "no": []}
    assert ask(path, **SHOWN).json() == told
    assert ask("/api/jobs/nowhere/sheet/rest", **SHOWN).status_code == 404


def test_a_job_that_is_not_there_is_told_calmly(ask):
    told = ask("/api/jobs/nowhere/sheet", **SHOWN)
    assert told.status_code == 404
    assert told.json()["error"]


def test_what_each_room_asks_for_asks_for_the_key_and_knows_every_room(ask):
    path = f"/api/jobs/{JOB}/washing"
    assert ask(path).status_code == 401
    told = ask(path, **SHOWN).json()
    order = ask(f"/api/jobs/{JOB}/sheet", **SHOWN).json()["washing"]["order"]
    assert told["place"] == 0
    assert told["rooms"].keys() == set(order)
    assert {one["code"] for one in told["rooms"].values()} == {"not-rinsed"}
    assert ask("/api/jobs/nowhere/washing", **SHOWN).status_code == 404


def test_the_gate_answers_a_phone_in_its_language_and_no_to_what_it_does_not_know(ask):
    path = f"/api/jobs/{JOB}/pour?thing=water&thing=bleach&thing=vinegar&vessel=open+tub"
    assert ask(path).status_code == 401
    told = ask(path, **SHOWN).json()
    assert told["word"] == "refused"
    assert "Chlorine gas" in told["reasons"][0][1]
    spanish = ask(path, **SHOWN, **{"accept-language": "es"}).json()
    assert "gas de cloro" in spanish["reasons"][0][1]
    for unknown in ("", "?thing=water", "?thing=water&vessel=hat", "?thing=x&vessel=floor"):
        told = ask(f"/api/jobs/{JOB}/pour{unknown}", **SHOWN)
        assert (told.status_code, told.json()["word"]) == (200, "refused"), unknown
    assert ask("/api/jobs/nowhere/pour?thing=water", **SHOWN).status_code == 404


def test_the_table_of_the_gate_is_small_and_asks_for_the_key(ask):
    path = f"/api/jobs/{JOB}/pours"
    assert ask(path).status_code == 401
    told = ask(path, **SHOWN, **{"accept-encoding": "gzip"})
    assert int(told.headers["content-length"]) < 6000
    assert {one[0] for one in told.json()["things"]} > {"water", "bicarbonate", "bleach"}


@pytest.mark.parametrize("name", KINDS)
def test_each_file_is_served_as_what_it_is_under_a_strict_policy(ask, name):
    told = ask(f"/slab/files/{name}")
    assert told.status_code == 200
    assert told.headers["content-type"] == KINDS[name]
    policy = told.headers["content-security-policy"]
    assert re.match(
        r"default-src 'none'; script-src 'self'( 'sha256-\S+')?; style-src '(self|sha256-\S+)'",
        policy,
    )
    assert "unsafe" not in policy
    assert ("sha256-" in policy) == (name == "index.html")
    assert told.headers["x-content-type-options"] == "nosniff"
    assert told.headers["referrer-policy"] == "no-referrer"


def test_the_page_may_hold_this_one_script_and_no_other(ask):
    told = ask(f"/slab/{JOB}")
    inside = re.findall(r"<script>(.*?)</script>", told.text, re.DOTALL)
    digest = base64.b64encode(hashlib.sha256(inside[0].encode()).digest()).decode()
    assert len(inside) == 1
    assert f"script-src 'self' 'sha256-{digest}';" in told.headers["content-security-policy"]


def test_what_has_not_changed_is_not_sent_again(ask):
    tag = ask("/slab/files/slab.js").headers["etag"]
    again = ask("/slab/files/slab.js", **{"if-none-match": tag})
    assert (again.status_code, again.content) == (304, b"")


def test_the_worker_may_answer_for_every_run_sheet_and_nothing_above(ask):
    assert ask("/slab/files/sw.js").headers["service-worker-allowed"] == "/slab/"


@pytest.mark.parametrize("name", ["..%2Fsheet.py", "sheet.py", "%2e%2e"])
def test_no_other_file_can_be_had(ask, name):
    assert ask(f"/slab/files/{name}").status_code == 404
