"""The book does what it says, in both stores."""

import pytest
from tests.store.entries import AT, FACTS, LATER, entry

from farwall.errors import Refused
from farwall.facts.log import Entry, Kept
from farwall.store.book import Book
from farwall.store.nouns import Differs, JobLine, NoSuchJob, Taken


def test_facts_come_back_and_versions_count_up(book):
    assert book.put_facts("quince", FACTS, who="Ann", at=AT, name="Quince Street") == 1
    assert book.put_facts("quince", {**FACTS, "version": 2}, who="Bo", at=LATER) == 2
    assert book.facts("quince") == {**FACTS, "version": 2}
    assert book.facts("quince", 1) == FACTS
    assert [(one.version, one.who, one.at, one.name) for one in book.versions("quince")] == [
        (1, "Ann", AT, "Quince Street"),
        (2, "Bo", LATER, "Quince Street"),
    ]


def test_the_same_facts_again_are_the_same_version(book):
    assert book.put_facts("quince", FACTS, who="Ann", at=AT) == 1
    assert book.put_facts("quince", dict(reversed(FACTS.items())), who="Bo", at=LATER) == 1
    assert book.put_facts("quince", FACTS, who="Bo", at=LATER, name="Another name") == 2
    book.put_facts("quince", {}, who="Bo", at=LATER)
    assert book.put_facts("quince", FACTS, who="Bo", at=LATER) == 4


def test_a_name_with_a_line_end_is_put_on_one_line(book):
    book.put_facts("quince", FACTS, who=" Ann\n", at=AT, name="Quince\nStreet \u200b")
    assert book.jobs()[0].name == "Quince Street \u200b"
    assert book.versions("quince")[0].who == "Ann"
    for name in ("x" * 201, "a\0b"):
        with pytest.raises(Refused):
            book.put_facts("quince", FACTS, who="Ann", at=AT, name=name)


def test_entries_are_kept_once_and_come_back_in_their_places(book):
    book.put_facts("quince", FACTS, who="Ann", at=AT)
    book.put_facts("sorrel", FACTS, who="Ann", at=AT)
    first = [entry("a"), entry("b", job="sorrel"), entry("c", device="red", number=4, era=1)]
    assert book.keep(first, received_at=AT) == Taken(("a", "b", "c"), ())
    again = [entry("c", device="red", number=4, era=1), entry("d"), entry("d")]
    assert book.keep(again, received_at=LATER) == Taken(("d",), ("c",))
    assert book.entries("quince") == [
        Kept(entry("a"), 1, AT),
        Kept(entry("c", device="red", number=4, era=1), 3, AT),
        Kept(entry("d"), 4, LATER),
    ]
    assert [one.place for one in book.entries("quince", after=3)] == [4]


def test_the_same_id_with_other_content_is_refused_and_nothing_is_kept(book):
    book.put_facts("quince", FACTS, who="Ann", at=AT)
    book.keep([entry("a"), entry("b")], received_at=AT)
    offered = [entry("a", who="Bo"), entry("new"), entry("b", number=9)]
    with pytest.raises(Differs) as refusal:
        book.keep(offered, received_at=AT)
    assert refusal.value.ids == ("a", "b")
    with pytest.raises(Differs):
        book.keep([entry("z"), entry("z", who="Bo")], received_at=AT)
    assert [one.entry.id for one in book.entries("quince")] == ["a", "b"]
    assert book.keep([entry("new")], received_at=AT).new == ("new",)
    assert book.entries("quince")[-1].place == 3


def test_entries_of_unknown_jobs_are_refused_and_all_named(book):
    with pytest.raises(NoSuchJob) as refusal:
        book.keep([entry("a"), entry("b", job="sorrel")], received_at=AT)
    assert refusal.value.ids == ("quince", "sorrel")
    for ask in (book.facts, book.entries, book.versions, lambda job: book.jobs(after=job)):
        with pytest.raises(NoSuchJob):
            ask("quince")


def test_all_mistakes_come_at_once(book):
    book.put_facts("quince", FACTS, who="Ann", at=AT)
    bad = [
        entry("a", about={"x": float("nan")}),
        entry("b\n"),
        Entry(id="c", job="quince", word="note", at="yesterday"),
        Entry(id="d", job="quince", word="note", at="2026-05-04T07:00:00"),
    ]
    with pytest.raises(Refused) as refusal:
        book.keep(bad, received_at="now")
    assert len(refusal.value.mistakes) == 5
    assert book.entries("quince") == []


def test_clocks_are_those_told_last_of_that_era(book):
    book.put_facts("quince", FACTS, who="Ann", at=AT)
    told = [entry("a", device="red"), entry("b", device="red", era=1), entry("c", device="blue")]
    book.keep(told, received_at=AT, clock_off_s={("red", 0): 3.5, ("red", 1): -7200.0})
    book.keep([], received_at=LATER, clock_off_s={("red", 0): 4.25})
    assert [one.clock_off_s for one in book.entries("quince")] == [4.25, -7200.0, None]


def test_the_list_of_jobs_counts_and_says_what_is_closed(book):
    for name in ("quince", "sorrel", "thistle"):
        book.put_facts(name, FACTS, who="Ann", at=AT, name=name.title())
    book.keep([entry("a"), entry("b", word="handed-over")], received_at=LATER)
    assert book.jobs() == [
        JobLine("thistle", 3, "Thistle", 1, 0, AT, closed=False),
        JobLine("sorrel", 2, "Sorrel", 1, 0, AT, closed=False),
        JobLine("quince", 1, "Quince", 1, 2, LATER, closed=True),
    ]
    assert [one.id for one in book.jobs(limit=1, after="thistle")] == ["sorrel"]
    book.keep([entry("s", word="struck", about={"entry": "b"})], received_at=AT)
    assert book.jobs(after="sorrel") == [JobLine("quince", 1, "Quince", 1, 3, LATER, closed=False)]
    book.keep([entry("t", word="struck", about={"entry": "s"})], received_at=AT)
    assert book.jobs()[-1].closed


def test_a_house_set_aside_stays_in_the_book_and_comes_back_by_a_strike(book):
    book.put_facts("quince", FACTS, who="Ann", at=AT)
    book.put_facts("sorrel", FACTS, who="Ann", at=AT)
    book.keep([entry("a", word="set-aside")], received_at=AT)
    assert [(one.id, one.aside) for one in book.jobs()] == [("sorrel", False), ("quince", True)]
    assert [one.id for one in book.in_hand()] == ["sorrel"]
    assert book.facts("quince") == FACTS
    assert book.check() == []
    book.keep([entry("s", word="struck", about={"entry": "a"})], received_at=AT)
    assert [one.id for one in book.in_hand()] == ["sorrel", "quince"]
    assert book.check() == []


def test_documents_have_versions_too(book):
    assert book.document("van", "red") is None
    assert book.put_document("van", "red", {"tank_l": 15}) == 1
    assert book.put_document("van", "red", {"tank_l": 15.0}) == 1
    assert book.put_document("van", "red", {"tank_l": 10}) == 2
    book.put_document("van", "blue", {})
    book.put_document("plan", "red", {"n": 1})
    assert book.document("van", "red") == {"tank_l": 10}
    assert book.document("van", "red", 1) == {"tank_l": 15}
    assert book.documents("van") == {"blue": {}, "red": {"tank_l": 10}}


def test_files_are_named_by_what_is_in_them(book):
    # by hand: SHA-256 of "abc", FIPS 180-2, appendix B.1
    sha = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
    assert book.put_file(b"abc") == book.put_file(b"abc") == sha
    assert book.file(sha) == b"abc"
    assert (book.where.files / "ba" / sha[2:]).is_file()
    with pytest.raises(Refused):
        book.file("0" * 64)
    with pytest.raises(Refused):
        book.file("../../etc/passwd")


def test_a_damaged_file_is_mended_by_putting_it_in_again(book):
    sha = book.put_file(b"abc")
    book.put_file(b"another")
    (book.where.files / sha[:2] / sha[2:]).write_bytes(b"abx")
    with pytest.raises(Refused, match="damaged"):
        book.file(sha)
    book.put_file(b"abc")
    assert book.file(sha) == b"abc"


def test_a_book_opened_again_has_all_of_it(place):
    with Book.open(**place) as book:
        book.put_facts("quince", FACTS, who="Ann", at=AT)
        book.keep([entry("a", about={"litres": 2.5, "text": "ß → \u0000 “"})], received_at=AT)
    with Book.open(**place) as book:
        assert book.facts("quince") == FACTS
        assert book.entries("quince")[0].entry.about == {"litres": 2.5, "text": "ß → \u0000 “"}
        assert book.keep([entry("b")], received_at=AT).new == ("b",)
