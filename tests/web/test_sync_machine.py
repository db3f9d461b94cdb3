"""Phones without signal, answers lost, a book put back: nothing lost, nothing twice."""

from __future__ import annotations

import tempfile
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, rule
from tests.store.entries import FACTS
from tests.web.pages.office import new_book

from farwall.facts.log import Entry
from farwall.readers.log_json import entry_to_dict
from farwall.store.backing import restore
from farwall.store.book import Book
from farwall.web.phone import Phone, answered, tapped, to_ask, to_offer, told
from farwall.web.taking import offer_from, take

JOB = "quince"
PHONES = st.sampled_from(["phone-a", "phone-b"])
FATES = st.sampled_from(["arrives", "request lost", "answer lost", "arrives twice"])


class Signal(RuleBasedStateMachine):
    """The model: every entry ever tapped, by id."""

    @initialize()
    def begin(self):
        self.folder = Path(tempfile.mkdtemp())
        self.book = new_book(self.folder / "book")
        self.clock = datetime(2026, 6, 8, 8, tzinfo=UTC)
        self.book.put_facts(JOB, FACTS, who="Ann", at=self.clock.isoformat())
        self.phones = {name: Phone(name) for name in ("phone-a", "phone-b")}
        self.wrong = dict.fromkeys(self.phones, timedelta())
        self.tapped: dict[str, Entry] = {}
        self.copies: list[tuple[Path, datetime]] = []
        self.books = 1

    @rule(name=PHONES, count=st.integers(1, 3))
    def tap(self, name, count):
        for _ in range(count):
            number = len(self.tapped)
            at = (self.clock + self.wrong[name]).isoformat()
            one = Entry(f"{name}-{number}", JOB, "note", at, device=name, number=number,
                        about={"text": f"entry {number}"})  # fmt: skip
            self.tapped[one.id] = one
            self.phones[name] = tapped(self.phones[name], one)

    @rule(name=PHONES, hours=st.integers(-6, 6))
    def clock_goes_wrong(self, name, hours):
        self.wrong[name] = timedelta(hours=hours)

    @rule(name=PHONES, fate=FATES, most=st.integers(1, 4))
    def send(self, name, fate, most):
        self.exchange(name, fate, most)

    @rule()
    def a_day_passes(self):
        self.clock += timedelta(days=1)

    @rule()
    def copy(self):
        to = self.folder / f"copy-{len(self.copies)}"
        self.book.backup(to)
        self.copies.append((to, self.clock))

    @rule()
    def put_yesterdays_copy_back(self):
        young = [to for to, at in self.copies if self.clock - at <= timedelta(days=20)]
        if young:
            self.book.close()
            where = self.folder / f"book-{self.books}"
            self.books += 1
            restore(young[-1], where)
            self.book = Book.open(where)

    def exchange(self, name, fate, most):
        phone, today = self.phones[name], self.clock.date().isoformat()
        asked = to_ask(phone, today)
        if asked and fate == "arrives":
            phone = told(phone, missing=self.book.missing(asked), today=today)
        data = {
            "device": name, "sent_at": (self.clock + self.wrong[name]).isoformat(),
            "entries": [entry_to_dict(one) for one in to_offer(phone, most=most)],
        }  # fmt: skip
        if fate != "request lost":
            for _ in range(2 if fate == "arrives twice" else 1):
                answer = take(self.book, offer_from(data), received_at=self.clock.isoformat())
            if fate != "answer lost":
                turned = {one.id: one.why for one in answer.turned}
                phone = answered(phone, taken=(*answer.new, *answer.known), turned=turned,
                                 places=answer.places, today=today)  # fmt: skip
        self.phones[name] = phone

    def teardown(self):
        if not hasattr(self, "book"):
            return
        self.clock += timedelta(days=1)  # on the next day everything is in signal again
        for name in self.phones:
            for _ in range(2 + len(self.tapped)):
                self.exchange(name, "arrives", 50)
                if not self.phones[name].waiting:
                    break
        kept = self.book.entries(JOB)
        assert {one.entry.id: one.entry for one in kept} == self.tapped
        assert len(kept) == len(self.tapped)
        assert self.book.check() == []
        self.book.close()


Signal.TestCase.settings = settings(
    max_examples=12, stateful_step_count=25, deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
)  # fmt: skip


@pytest.mark.slow
class TestSignal(Signal.TestCase):
    """Runs the machine."""
