"""Where each house stands: by its facts, its plan and its log; renewed where something changed."""

from datetime import date

import pytest

from farwall.facts.log import Entry
from farwall.store.book import Book
from farwall.web.live_jobs import OF
from farwall.web.pages.where_stands import FILTERS, WhereStands, plainly, progress_of

AT = "2026-06-08T08:00:00+00:00"
TODAY = date(2026, 6, 8)


@pytest.fixture
def book(tmp_path):
    with Book.open(tmp_path / "book") as found:
        found.put_facts("elm", {"starts_at": AT}, who="Ann", at=AT, name="Elm Row")
        yield found


@pytest.fixture
def stands(book):
    return WhereStands(book)


def planned(book, facts=1, no=()):
    book.put_document(OF, "elm", {"facts": facts, "faults": [], "no": list(no)})


def entered(book, *words, **about):
    there = len(book.entries("elm"))
    entries = [
        Entry(f"e-{there + n}", "elm", word, AT, device="p", number=there + n, about=about)
        for n, word in enumerate(words, 1)
    ]
    book.keep(entries, received_at=AT)


def word(stands):
    return stands.all()[0].word


def test_a_house_goes_from_to_plan_to_handed_over(book, stands):
    assert word(stands) == "plan"
    planned(book)
    assert word(stands) == "ahead"
    entered(book, "day-started", "band-done")
    assert word(stands) == "work"
    entered(book, "coat-done", coat="a")
    assert word(stands) == "drying"
    entered(book, "dry")
    assert word(stands) == "work"
    entered(book, "handed-over")
    assert word(stands) == "done"


def test_a_house_set_aside_passes_no_filter_but_its_own(book, stands):
    planned(book)
    entered(book, "day-started", "set-aside")
    found = stands.all()[0]
    assert found.word == "aside"
    assert [one for one in ("", *FILTERS) if found.passes(one, TODAY)] == ["aside"]
    entered(book, "struck", entry="e-2")
    assert stands.all()[0].word == "work"


def test_a_house_on_whose_floor_somebody_goes_on_is_listed_though_it_was_set_aside(book, stands):
    planned(book)
    entered(book, "day-started", "set-aside")
    assert stands.all()[0].word == "aside"
    entered(book, "note")
    assert stands.all()[0].word == "aside"
    entered(book, "band-done")  # a phone was on the way
    found = stands.all()[0]
    assert found.word == "work"
    assert found.passes("", TODAY)


def test_changed_facts_a_no_or_no_day_mean_to_plan(book, stands):
    planned(book)
    book.put_facts("elm", {"starts_at": AT, "name": "x"}, who="Ann", at=AT)
    assert word(stands) == "plan"
    planned(book, facts=2, no=["It rains."])
    assert word(stands) == "plan"
    planned(book, facts=2)
    assert word(stands) == "ahead"
    book.put_facts("elm", {}, who="Ann", at=AT)
    planned(book, facts=3)
    assert word(stands) == "plan"


def test_notes_photos_and_what_was_struck_are_no_steps(book, stands):
    planned(book)
    entered(book, "note", "hours")
    assert word(stands) == "ahead"
    entered(book, "coat-done", coat="a")
    entered(book, "struck", entry="e-3")
    assert word(stands) == "ahead"


def test_a_job_that_was_closed_by_mistake_is_in_work_again(book, stands):
    planned(book)
    entered(book, "band-done", "handed-over")
    assert word(stands) == "done"
    entered(book, "struck", entry="e-2")
    assert word(stands) == "work"


def test_a_look_at_a_wait_remembers_which_wait(book):
    entered(book, "rinsed", "still-damp")
    assert (progress_of(book.entries("elm")).word, progress_of(book.entries("elm")).after) == (
        "still-damp", "rinsed",
    )  # fmt: skip


@pytest.mark.parametrize(
    ("today", "passes"), [(date(2026, 6, 8), True), (date(2026, 6, 14), True),
                          (date(2026, 6, 7), False), (date(2026, 6, 15), False)],
)  # fmt: skip
def test_this_week_is_from_monday_to_sunday(book, stands, today, passes):
    planned(book)
    assert stands.all()[0].passes("week", today) is passes


def test_a_filter_that_is_none_lets_all_pass(stands):
    assert stands.all()[0].passes("", TODAY)
    assert stands.all()[0].passes("no-such", TODAY)
    assert not stands.all()[0].passes("done", TODAY)


def test_a_search_does_not_mind_accents_and_capitals():
    assert plainly("Peñón ÁRBOL 3") == "penon arbol 3"
