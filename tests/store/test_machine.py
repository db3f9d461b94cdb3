"""Whatever is done to a book in whatever order, it says what a plain dict would say."""

import itertools
import shutil
import tempfile
from pathlib import Path

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, rule

from farwall.facts.log import Entry
from farwall.store.book import Book
from farwall.store.nouns import Differs, NoSuchJob

AT = "2026-05-04T07:00:00-05:00"
JOBS = st.sampled_from(["quince", "sorrel", "thistle"])
TEXT = st.text(st.characters(exclude_categories=["Cs"]), max_size=8)
PLAIN = st.recursive(
    st.none()
    | st.booleans()
    | st.integers(-(2**53) + 1, 2**53 - 1)
    | st.floats(allow_nan=False, allow_infinity=False)
    | TEXT,
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(TEXT, inner, max_size=3),
    max_leaves=5,
)
VALUES = st.dictionaries(TEXT, PLAIN, max_size=3)
ENTRIES = st.builds(
    Entry,
    id=st.sampled_from([f"e{number}" for number in range(12)]),
    job=JOBS,
    word=st.sampled_from(["note", "handed-over", "set-aside", "struck"]),
    at=st.just(AT),
    who=st.sampled_from(["", "Ann"]),
    device=st.sampled_from(["", "red", "blue"]),
    era=st.integers(0, 1),
    about=st.fixed_dictionaries({"entry": st.sampled_from(["e1", "e2"])}, optional={"x": PLAIN}),
)


class BookMachine(RuleBasedStateMachine):
    """A book beside a dict of the same; `fresh` makes the words that open a new book."""

    fresh = None

    @initialize()
    def begin(self):
        self.place, self.aside = type(self).fresh()
        self.book = Book.open(**self.place)
        self.facts, self.kept, self.clocks, self.documents = {}, [], {}, {}

    def teardown(self):
        self.book.close()
        shutil.rmtree(self.aside, ignore_errors=True)

    @rule(job=JOBS, facts=VALUES)
    def put_facts(self, job, facts):
        versions = self.facts.setdefault(job, [])
        if not versions or not _same(versions[-1], facts):
            versions.append(facts)
        assert self.book.put_facts(job, facts, who="Ann", at=AT) == len(versions)

    @rule(entries=st.lists(ENTRIES, max_size=5))
    def keep(self, entries):
        known = {one.id: one for one in self.kept}
        offered = {}
        unlike = set()
        for one in entries:
            there = offered.setdefault(one.id, known.get(one.id, one))
            if not _same(there, one):
                unlike.add(one.id)
        jobs = {one.job for one in offered.values() if one.id not in known} - set(self.facts)
        if unlike or jobs:
            with pytest.raises(Differs if unlike else NoSuchJob) as refusal:
                self.book.keep(entries, received_at=AT)
            assert set(refusal.value.ids) == (unlike or jobs)
            return
        taken = self.book.keep(entries, received_at=AT)
        new = [one for one in offered.values() if one.id not in known]
        assert taken.new == tuple(one.id for one in new)
        assert set(taken.known) == set(offered) - set(taken.new)
        self.kept += new

    @rule(device=st.sampled_from(["red", "blue"]), era=st.integers(0, 1), off_s=st.integers(-9, 9))
    def tell_clock(self, device, era, off_s):
        self.book.keep([], received_at=AT, clock_off_s={(device, era): off_s})
        self.clocks[device, era] = off_s

    @rule(name=st.sampled_from(["red", "blue"]), value=VALUES)
    def put_document(self, name, value):
        versions = self.documents.setdefault(name, [])
        if not versions or not _same(versions[-1], value):
            versions.append(value)
        assert self.book.put_document("van", name, value) == len(versions)

    @rule()
    def open_again(self):
        self.book.close()
        self.book = Book.open(**self.place)

    @invariant()
    def says_the_same(self):
        assert [one.id for one in self.book.jobs()] == list(reversed(self.facts))
        for line in self.book.jobs():
            entries = [(place, one) for place, one in enumerate(self.kept, 1) if one.job == line.id]
            assert (line.versions, line.entries) == (len(self.facts[line.id]), len(entries))
            assert line.closed == _says([one for _, one in entries], "handed-over")
            assert line.aside == _says([one for _, one in entries], "set-aside")
            assert self.book.facts(line.id) == self.facts[line.id][-1]
            assert self.book.facts(line.id, 1) == self.facts[line.id][0]
            found = self.book.entries(line.id)
            assert [(one.place, one.entry) for one in found] == entries
            for one in found:
                told = self.clocks.get((one.entry.device, one.entry.era))
                assert one.clock_off_s == told
        assert self.book.documents("van") == {
            key: self.documents[key][-1] for key in self.documents
        }

    @invariant()
    def is_whole(self):
        assert self.book.check() == []


def _same(one, other):
    """Equal, and true is not 1: in JSON they differ."""
    return repr(_typed(one)) == repr(_typed(other))


def _typed(value):
    if isinstance(value, Entry):
        return _typed(vars(value))
    if isinstance(value, dict):
        return sorted((key, _typed(item)) for key, item in value.items())
    if isinstance(value, list):
        return [_typed(item) for item in value]
    if isinstance(value, int | float) and not isinstance(value, bool):
        return float(value) + 0.0
    return value


def _says(entries, word):
    """By an entry of this word that no standing strike names; said otherwise than in the source.

    Entries are judged one by one as soon as all their strikes are; what never is, is in a ring.
    """
    by = {one.id: set() for one in entries}
    for one in entries:
        target = one.about["entry"]
        if one.word == "struck" and target != one.id and target in by:
            by[target].add(one.id)
    struck = {}
    for _ in entries:
        for name, strikes in by.items():
            if strikes <= struck.keys():
                struck[name] = any(not struck[strike] for strike in strikes)
    return any(
        one.word == word and not any(struck.get(strike) is False for strike in by[one.id])
        for one in entries
    )


@pytest.mark.parametrize("store", ["sqlite", "postgres"])
def test_a_book_says_what_a_dict_would_say(store, request):
    server = request.getfixturevalue("server") if store == "postgres" else None
    numbers = itertools.count(1)

    def fresh():
        aside = Path(tempfile.mkdtemp(prefix="farwall-machine-"))
        if server is None:
            return {"told": str(aside)}, aside
        return {"told": server.new_database(f"machine_{next(numbers)}"), "files": aside}, aside

    machine = type("Machine", (BookMachine,), {"fresh": staticmethod(fresh)})
    few = 25 if store == "sqlite" else 8
    machine.TestCase.settings = settings(max_examples=few, stateful_step_count=15)
    machine.TestCase("runTest").runTest()
