"""The sample day on a phone: judged there as the book judges it, in words that the book sends."""

from __future__ import annotations

import asyncio
import json
import random
from dataclasses import replace
from datetime import UTC, datetime
from types import SimpleNamespace

import httpx
from tests.job.colour.sample_day.drawn import EXAMPLES, Told, drawn_day, quince
from tests.web.slab.house import KEY
from tests.web.slab.node import replayed

from farwall.facts.log import Entry
from farwall.job.colour.sample_day import course_of, day_of
from farwall.job.colour.sample_day.says import FIGURE_NAMES, HELD, SAYS, WINS
from farwall.phrasebook import said_whole, speaking
from farwall.readers.job_json import job_from
from farwall.readers.log_json import entry_to_dict
from farwall.store.book import Book
from farwall.web.app import app_for
from farwall.web.door import Door
from farwall.web.slab.sampling import course_told

JOB = job_from(json.loads((EXAMPLES / "quince-street" / "job.json").read_text()), "The job")


def test_four_hundred_drawn_days_stand_alike_on_the_phone_and_in_the_book(tmp_path):
    dice = random.Random(71)
    course = course_of(JOB)
    days = [(drawn_day(dice, course, f"s{n}"), dice.choice((0, 40, 700, 4000))) for n in range(400)]
    told = [{"own": [entry_to_dict(e) for e in day.entries], "at": at} for day, at in days]
    drawn = {"course": course_told(JOB, course, name="q"), "days": told}
    found = replayed("sample", drawn, tmp_path)
    seen = set()
    for (day, at), theirs in zip(days, found, strict=True):
        mine = day_of(course, day.happened, at_min=at)
        assert (theirs["begun"], theirs["signed"]) == (mine.begun, mine.signed)
        assert [(t["sample"], t["step"], t["from"]) for t in theirs["tasks"]] == [
            (t.sample, t.step, t.from_min) for t in mine.tasks
        ]
        for one, other in zip(mine.stands, theirs["stands"], strict=True):
            assert (other["sample"], other["step"], other["from"], other["waits"]) == (
                one.sample, one.step, one.from_min, one.waits_for,
            )  # fmt: skip
            assert tuple(other["missing"]) == one.missing
            assert [(r["name"], r["from"]) for r in other["running"]] == [
                (r.name, r.from_min) for r in one.running
            ]
            seen |= {one.step, *(task.step for task in mine.tasks)}
    assert len(seen) >= 12, sorted(seen)


def test_every_word_of_a_step_is_said_whole_in_spanish():
    texts = [text for one in SAYS.values() for text in (one.name, one.short, one.do, one.caution)]
    with speaking("es"):
        lacks = [one for one in (*texts, *FIGURE_NAMES.values(), *HELD.values(), WINS)
                 if one and not said_whole(one)]  # fmt: skip
    assert lacks == []


def asked(book, path, **headers):
    app = app_for(Door(book, KEY, lambda: datetime.now(UTC)))

    async def once():
        transport = httpx.ASGITransport(app=app)
        async with httpx.AsyncClient(transport=transport, base_url="http://slab") as client:
            return await client.get(path, headers=headers)

    try:
        return asyncio.run(once())
    finally:
        app.state.live.door.writing.shutdown()


def test_the_day_is_told_before_there_is_a_plan_and_asks_for_the_key(tmp_path):
    facts = json.loads((EXAMPLES / "quince-street" / "job.json").read_text())
    path = "/api/jobs/q/sample-day"
    with Book.open(tmp_path / "book") as book:
        book.put_facts("q", facts, who="", name="Quince", at=facts["starts_at"])
        assert asked(book, path).status_code == 401
        told = Told(course_of(quince()).starts_at)
        told("sample-laid", -3000, sample="B1", cut="1:1", before_kg=2.3)
        book.keep([_of("q", one) for one in told.entries], received_at=facts["starts_at"])
        answer = asked(book, path, Authorization=f"Bearer {KEY}")
        assert answer.status_code == 200
        found = answer.json()
        assert found["course"]["name"] == "Quince"
        assert found["course"]["says"]["es"]["lay"][0] == "Mezcle, pese, ponga"
        assert found["day"]["begun"]
        assert found["place"] == 1
        stand = next(one for one in found["day"]["stands"] if one["sample"] == "B1")
        assert (stand["step"], "weighed" in stand["missing"]) == ("sheen", True)
        assert (
            asked(book, "/api/jobs/none/sample-day", Authorization=f"Bearer {KEY}").status_code
            == 404
        )


def _of(job: str, one: Entry) -> Entry:
    from dataclasses import replace

    return replace(one, job=job)


def test_a_stain_is_called_as_the_job_has_it_else_the_plan_else_as_what_stands_in():
    course = course_of(JOB)
    assert course_told(JOB, course, name="q")["stains"]["light"] == "light earth"
    bare = replace(JOB, stains=(), coats=())
    assert course_told(bare, course, name="q")["stains"] == {
        "light": "light colour", "dark": "dark colour"
    }  # fmt: skip
    spanish = replace(bare, wishes=replace(bare.wishes, language="es"))
    assert course_told(spanish, course, name="q")["stains"]["light"] == "color claro"
    plan = SimpleNamespace(stain_names={"light": "light colour", "s7": "umber seven"})
    assert course_told(bare, course, name="q", plan=plan)["stains"]["s7"] == "umber seven"
