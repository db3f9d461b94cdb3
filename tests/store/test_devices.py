"""Devices that a book has heard of, and which of their entries have not come."""

import pytest

from farwall.facts.log import Entry
from farwall.store.book import Book

AT = "2026-06-08T08:00:00+00:00"
LATER = "2026-06-08T18:00:00+00:00"


@pytest.fixture
def book(tmp_path):
    with Book.open(tmp_path / "book") as found:
        for job in ("elm", "fir"):
            found.put_facts(job, {"name": job}, who="Ann", at=AT)
        yield found


def entry(job, device, number):
    return Entry(f"{job}-{device}-{number}", job, "note", AT, device=device, number=number,
                 about={"text": "x"})  # fmt: skip


def test_a_new_book_has_heard_of_none(book):
    assert book.devices() == []


def test_a_number_missing_over_all_jobs_is_an_entry_that_has_not_come(book):
    book.keep([entry("elm", "p", 1), entry("fir", "p", 2), entry("elm", "p", 5)], received_at=AT,
              clock_off_s={("p", 0): 90.0})  # fmt: skip
    (one,) = book.devices()
    assert (one.device, one.entries, one.heard_at, one.off_s) == ("p", 3, AT, 90.0)
    assert (one.missing, one.missing_count) == ((3, 4), 2)
    book.keep([entry("fir", "p", 3), entry("fir", "p", 4)], received_at=LATER)
    (one,) = book.devices()
    assert (one.missing, one.missing_count, one.heard_at) == ((), 0, LATER)


def test_a_device_that_counts_each_job_by_itself_tells_nothing_of_what_lacks(book):
    book.keep([entry("elm", "desk", 1), entry("fir", "desk", 1), entry("fir", "desk", 3)],
              received_at=AT)  # fmt: skip
    (one,) = book.devices()
    assert (one.missing, one.missing_count) == ((), None)


def test_what_was_told_for_an_earlier_minute_claims_no_number(book):
    book.keep([Entry("a", "elm", "note", AT, device="p"), entry("elm", "p", 1)], received_at=AT)
    assert book.devices()[0].missing_count == 0


def test_the_one_heard_last_comes_first(book):
    book.keep([entry("elm", "a", 1)], received_at=AT)
    book.keep([entry("elm", "b", 1)], received_at=LATER)
    assert [one.device for one in book.devices()] == ["b", "a"]
