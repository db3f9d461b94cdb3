"""The live day over HTTP: a tap is kept and answered at once, many are answered by one re-plan."""

from __future__ import annotations

import asyncio
import json
import sys
from datetime import UTC, datetime, timedelta

import httpx
import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job
from tests.web.pages.office import Hands, new_book

import farwall.job.live.again  # noqa: F401 - put into sys.modules
from farwall.facts.plain import plain
from farwall.job.story.order import in_order
from farwall.web.app import app_for
from farwall.web.door import Door
from farwall.web.live_jobs import LiveJobs

KEY = "a key of our own, invented"
START = datetime(2026, 6, 8, 8, tzinfo=UTC)


class Day:
    """A day on the slab: a book, its door, and a clock that the test moves."""

    def __init__(self, folder):
        self.book = new_book(folder / "book")
        facts = plain(job(TWO_ROOMS, id="two", starts_at=START.isoformat()), omit_empty=True)
        self.book.put_facts("two", json.loads(json.dumps(facts)), who="Ann", at=START.isoformat())
        self.clock, self.taps = START, 0
        door = Door(self.book, KEY, lambda: self.clock)
        jobs = LiveJobs(self.book, make_hands=Hands)
        self.app = app_for(door, jobs=jobs)
        self.live = self.app.state.live

    async def ask(self, method, path, **more):
        transport = httpx.ASGITransport(app=self.app)
        headers = {"Authorization": f"Bearer {KEY}"}
        async with httpx.AsyncClient(
            transport=transport, base_url="http://farwall", headers=headers
        ) as client:
            return await client.request(method, path, **more)

    async def tap(self, word, **about):
        self.taps += 1  # ids rise as those that a device makes by the clock do
        body = {
            "id": f"tap-{self.taps:04d}",
            "word": word,
            "at": self.clock.isoformat(),
            "about": about,
        }
        return await self.ask("POST", "/api/jobs/two/log", json=body)


@pytest.fixture
def day(tmp_path, monkeypatch):
    # The package gives its function the module's name, so the module is asked for by that name.
    monkeypatch.setattr(sys.modules["farwall.job.live.again"], "SETTLE_S", 0.5)
    found = Day(tmp_path)
    yield found
    found.live.jobs.close()
    found.live.door.writing.shutdown()
    found.book.close()


def lived(day, script):
    async def run():
        first = await day.ask("GET", "/api/jobs/two/now")
        await day.live.settled()
        result = await script(first)
        await day.live.settled()
        return result

    return asyncio.run(run())


def test_the_plan_is_made_when_somebody_first_asks_and_then_there_is_a_now(day):
    async def script(first):
        return first, await day.ask("GET", "/api/jobs/two/now")

    first, then = lived(day, script)
    assert first.status_code == 409
    assert "being made" in first.json()["error"]
    assert then.status_code == 200
    assert then.json()["said"]
    assert day.book.document("plan", "two") is not None


def test_a_tap_is_kept_and_answered_with_what_to_do_now(day):
    async def script(_):
        plan = (await day.ask("GET", "/api/jobs/two/plan")).json()["plan"]
        coat = plan["inputs"]["coats"][0]["id"]
        mixed = sum(m["stain_l"] + m["water_l"] for m in plan["mixes"] if m["coat"] == coat)
        return await day.tap("mixed", coat=coat, litres=mixed, tub_l=mixed)

    answer = lived(day, script).json()
    assert [one.entry.word for one in day.book.entries("two")] == ["mixed"]
    assert answer["now"]["in_hand"]["known"]
    assert answer["said"]


def test_the_last_re_plan_knows_every_tap_and_there_are_fewer_than_taps(day):
    async def script(_):
        plan = (await day.ask("GET", "/api/jobs/two/plan")).json()["plan"]
        bands = [band["id"] for band in plan["fields"][0]["bands"]]
        day.clock = START + timedelta(minutes=plan["fields"][0]["end_min"] + 5)
        for n in range(6):
            await day.tap("band-done", band=bands[min(n, len(bands) - 1)])
        return plan

    lived(day, script)
    assert len(day.book.entries("two")) == 6
    assert 1 <= day.live.replanning.done["two"] < 6
    rest = day.book.document("rest", "two")
    assert rest["upto"] == 6
    assert (rest["no"], rest["faults"]) == ([], [])
    assert rest["plan"]["so_far"]["done"]


def test_an_entry_of_no_sense_is_refused_and_not_kept(day):
    async def script(_):
        return [
            await day.tap("sprung"),
            await day.tap("mixed", coat="first"),
            await day.ask("POST", "/api/jobs/two/log", json={"word": "dry"}),
            await day.ask("POST", "/api/jobs/two/log", content=b"{"),
        ]

    assert [one.status_code for one in lived(day, script)] == [422] * 4
    assert day.book.entries("two") == []


def test_a_tap_sent_twice_is_one_entry(day):
    async def script(_):
        body = {"id": "one", "word": "note", "at": START.isoformat(), "about": {"text": "x"}}
        for _ in range(2):
            assert (await day.ask("POST", "/api/jobs/two/log", json=body)).status_code == 200

    lived(day, script)
    assert len(day.book.entries("two")) == 1


def test_a_tap_told_for_an_earlier_minute_moves_no_other_and_stays_there_itself(day):
    """Before, the minute that was told was taken for the screen's clock: all its entries moved."""

    async def script(_):
        at = START + timedelta(minutes=60)
        day.clock = at
        told = [("now", at, {}), ("past", at - timedelta(minutes=40), {}),
                ("clock", at + timedelta(minutes=4), {"sent_at": 4})]  # fmt: skip
        for name, when, more in told:
            sent = {k: (at + timedelta(minutes=v)).isoformat() for k, v in more.items()}
            body = {"id": name, "word": "note", "at": when.isoformat(), "about": {"text": "x"},
                    "device": "other" if sent else "screen", **sent}  # fmt: skip
            assert (await day.ask("POST", "/api/jobs/two/log", json=body)).status_code == 200

    lived(day, script)
    kept = {one.entry.id: one.clock_off_s for one in day.book.entries("two")}
    assert kept == {"now": None, "past": None, "clock": 240.0}
    happened = in_order(day.book.entries("two"), starts_at=START.isoformat()).happened
    assert {one.id: one.at_min for one in happened} == {"past": 20.0, "now": 60.0, "clock": 60.0}


def test_facts_that_changed_are_planned_anew(day):
    async def script(_):
        facts = {**day.book.facts("two"), "name": "another name"}
        await day.ask("PUT", "/api/jobs/two/facts", json={"facts": facts, "who": "Ann"})
        asked = await day.ask("GET", "/api/jobs/two/now")
        await day.live.settled()
        return asked, (await day.ask("GET", "/api/jobs/two/plan")).json()["plan"]

    asked, plan = lived(day, script)
    assert asked.status_code == 409
    assert plan["job"] == "another name"


def test_facts_that_cannot_be_planned_say_why(day):
    async def script(_):
        body = {"facts": {"version": 1, "exits": []}, "who": "Ann"}
        return await day.ask("PUT", "/api/jobs/two/facts", json=body)

    refused = lived(day, script)
    assert refused.status_code == 422
    assert refused.json()["mistakes"]


def test_a_book_that_keeps_lessons_plans_and_answers_by_them(day):
    from tests.job.test_lessons import LESSONS

    from farwall.web.firm import keep_lessons, lessons_of

    assert lessons_of(day.book) is None
    assert keep_lessons(day.book, LESSONS) == 1
    assert lessons_of(day.book) == LESSONS

    async def script(_):
        return await day.ask("GET", "/api/jobs/two/now")

    assert lived(day, script).status_code == 200
    ranks = {one["rank"] for one in day.book.document("plan", "two")["grounds"]}
    assert "learned" in ranks
