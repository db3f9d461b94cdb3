"""The rest of a day as a phone takes it over: the same bands, true minutes, of this plan."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from types import SimpleNamespace

import pytest
from tests.midday import day_of
from tests.web.slab.house import JOB, planned

from farwall.facts.log import Entry
from farwall.readers.kept_json import kept_to_dict
from farwall.readers.plan_json import plan_to_dict
from farwall.store.book import Book
from farwall.web.live_jobs import LiveJobs
from farwall.web.slab.laid_anew import rest_for
from farwall.web.work import Made, rest_of

LATE_MIN = 6.0


@pytest.fixture
def book(tmp_path):
    with Book.open(planned(tmp_path)) as found:
        yield found


def told(book, plan, count):
    """The first bands of the day, each six minutes late."""
    bands = sorted((b for f in plan.fields for b in f.bands), key=lambda b: b.end_min)[:count]
    start = datetime.fromisoformat(plan.starts_at)
    entries = [
        Entry(
            f"e-{n:03d}", JOB, "band-done", "", "", "phone", n, 0, {"band": band.id}
        )
        for n, band in enumerate(bands, 1)
    ]  # fmt: skip
    at = [(start + timedelta(minutes=b.end_min + LATE_MIN)).isoformat() for b in bands]
    kept = [replace(one, at=when) for one, when in zip(entries, at, strict=True)]
    book.keep(kept, received_at=at[-1], clock_off_s={})
    return bands


def test_a_late_day_comes_with_its_bands_and_later_minutes_and_says_when_it_is_stale(book):
    found = LiveJobs(book).planned(JOB)
    bands = told(book, found.plan, 12)
    assert rest_for(book, JOB, found).stale
    document = book.document("plan", JOB)
    kept = [kept_to_dict(one) for one in book.entries(JOB)]
    at = bands[-1].end_min + LATE_MIN
    made = rest_of(document, kept, at)
    rest = {"upto": 12, "at_min": at, "faults": [], "no": [], "plan": made.document}
    book.put_document("rest", JOB, rest)
    laid = rest_for(book, JOB, found)
    assert not laid.stale
    phone = laid.for_phone
    assert (phone["upto"], phone["entries"], phone["no"]) == (12, 12, [])
    rows = {row[0]: row for field in phone["sheet"]["fields"] for row in field["bands"]}
    assert rows.keys() == {band.id for field in found.plan.fields for band in field.bands}
    for band in bands:
        assert rows[band.id][3] == pytest.approx(band.end_min + LATE_MIN, abs=0.01)
    told(book, found.plan, 13)
    assert rest_for(book, JOB, found).stale


def test_a_rest_with_faults_or_of_other_facts_is_none(book):
    found = LiveJobs(book).planned(JOB)
    plan = plan_to_dict(day_of("quince-street"))
    rest = {"upto": 3, "at_min": 1.0, "faults": ["x: y"], "no": [], "plan": plan}
    book.put_document("rest", JOB, rest)
    laid = rest_for(book, JOB, found).for_phone
    assert (laid["sheet"], laid["no"]) == (None, ["x: y"])
    book.put_document("rest", JOB, {**rest, "faults": [], "plan": {**plan, "inputs_hash": "0"}})
    laid = rest_for(book, JOB, found).for_phone
    assert (laid["sheet"], laid["no"]) == (None, [])


def test_the_book_lays_the_rest_by_the_place_that_its_facts_tell(book):
    """Else by the calendar's evening: what is told of the place has to reach the slow work."""
    asked = []

    class Hands:
        def submit(self, work, *told):
            asked.append((work, told[-1]))
            return SimpleNamespace(result=lambda: Made(None, no=("later",)))

    facts = dict(book.facts(JOB, 1))
    for place in ({}, {"place": {"latitude_deg": 50.0, "longitude_deg": -105.0}}):
        version = book.put_facts(JOB, facts | place, who="", name="", at="2026-06-08T08:00:00Z")
        book.put_document("plan-of", JOB, {"facts": version, "faults": [], "no": []})
        LiveJobs(book, Hands).lay_anew(JOB, clock=datetime.now(UTC))
    assert asked == [(rest_of, None), (rest_of, (50.0, -105.0))]
