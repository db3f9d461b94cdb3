"""When houses are set to begin, read without their whole facts; documents counted by kind."""

import pytest

from farwall.store.book import Book

AT = "2026-06-08T08:00:00+00:00"


@pytest.fixture
def book(tmp_path):
    with Book.open(tmp_path / "book") as found:
        yield found


def put(book, job, **facts):
    book.put_facts(job, facts, who="Ann", at=AT)


def test_it_is_that_of_the_newest_facts_and_no_other_of_that_name(book):
    put(book, "elm", starts_at=AT, survey={"starts_at": "no"})
    put(book, "elm", starts_at="2026-07-01T07:00:00-06:00", watch={"starts_at": "no"})
    assert book.starts_at(["elm"]) == {"elm": "2026-07-01T07:00:00-06:00"}


def test_where_none_is_told_it_is_empty_and_a_job_that_is_none_is_left_out(book):
    put(book, "fir", name="x")
    put(book, "oak", starts_at=3)
    assert book.starts_at(["fir", "oak", "gone"]) == {"fir": "", "oak": ""}
    assert book.starts_at([]) == {}


def test_more_than_one_question_holds_are_asked_in_parts(book):
    names = [f"h-{n}" for n in range(1201)]
    for name in names[::400]:
        put(book, name, starts_at=AT)
    assert book.starts_at(names) == dict.fromkeys(names[::400], AT)


def test_documents_are_counted_by_kind_and_versions(book):
    assert book.documents_put("van") == 0
    for n in range(3):
        book.put_document("van", "firm", {"n": n})
    book.put_document("other", "firm", {})
    assert book.documents_put("van") == 3
