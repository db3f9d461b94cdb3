"""Sessions, tries and deeds are kept in the book, by seals, and outlast a restart."""

from concurrent.futures import ThreadPoolExecutor

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError
from tests.store.entries import AT

from farwall.errors import Mistake
from farwall.store.book import Book
from farwall.store.comings import Comings, seal_of
from farwall.store.nouns import BookTrouble
from farwall.store.people import People

IDLE = {"browser": 10.0, "device": 40.0}


@pytest.fixture
def comings(book):
    return Comings(book)


@pytest.fixture
def ann(book):
    return People(book).name_first("Ann", "hash", AT)


def test_a_session_ends_unseen_or_at_its_end(comings, ann):
    comings.begin("b", ann.id, kind="browser", now_s=0.0, ends_s=100.0)
    comings.begin("d", ann.id, kind="device", now_s=0.0, ends_s=30.0)
    assert comings.session("b", now_s=9.0, idle_s=IDLE).person.name == "Ann"
    assert comings.session("b", now_s=10.0, idle_s=IDLE) is None
    assert comings.session("d", now_s=29.0, idle_s=IDLE) is not None
    assert comings.session("d", now_s=30.0, idle_s=IDLE) is None
    assert comings.session("", now_s=0.0, idle_s=IDLE) is None


def test_a_book_that_takes_nothing_is_read_all_the_same_and_its_sessions_end_no_later(
    comings, ann, monkeypatch
):
    comings.begin("b", ann.id, kind="browser", now_s=0.0, ends_s=1000.0)

    def full(*_):
        raise BookTrouble(Mistake("book", "The disk is full."))

    monkeypatch.setattr("farwall.store.comings.writing", full)
    idle = {"browser": 100.0}
    assert comings.session("b", now_s=90.0, idle_s=idle).person.name == "Ann"
    assert comings.session("b", now_s=100.0, idle_s=idle) is None


def test_who_is_seen_stays(comings, ann):
    idle = {"browser": 100.0}
    comings.begin("b", ann.id, kind="browser", now_s=0.0, ends_s=1000.0)
    for now_s in (90.0, 180.0, 270.0):
        assert comings.session("b", now_s=now_s, idle_s=idle) is not None
    assert comings.session("b", now_s=370.0, idle_s=idle) is None
    assert People(comings.book).all()[0].seen_s == 270.0


def test_leaving_ends_one_and_leaving_all_ends_all(comings, ann):
    for token in ("a", "b", "c"):
        comings.begin(token, ann.id, kind="browser", now_s=0.0, ends_s=9.0)
    comings.leave("a")
    assert {one.seal for one in comings.sessions(ann.id, now_s=1.0)} == {seal_of("b"), seal_of("c")}
    comings.leave_all(ann.id)
    assert comings.sessions(ann.id, now_s=1.0) == []


def test_no_token_lies_in_the_book(book, comings, ann):
    comings.begin("a token of our own", ann.id, kind="browser", now_s=0.0, ends_s=9.0)
    with book.engine.connect() as connection:
        kept = connection.execute(text("SELECT * FROM session")).one()
    assert "a token of our own" not in str(kept)


VESSELS = {"ann": (4, 0.1), "here": (9, 1.0)}


def test_tries_run_out_with_time_and_outlast_a_restart(place):
    with Book.open(**place) as book:
        assert [Comings(book).try_once(VESSELS, now_s=100.0) for _ in range(5)] == [True] * 4 + [
            False
        ]
    with Book.open(**place) as book:
        again = Comings(book)
        assert again.tried("ann", now_s=110.0, per_s=0.1) == pytest.approx(3.0)
        assert again.tried("here", now_s=110.0, per_s=1.0) == 0.0
        assert again.tried("bo", now_s=110.0, per_s=1.0) == 0.0
        again.take_back("ann")
        assert again.tried("ann", now_s=100.0, per_s=0.1) == pytest.approx(3.0)
        again.forgive("ann")
        assert again.tried("ann", now_s=100.0, per_s=0.1) == 0.0


def test_a_full_vessel_adds_to_none(comings):
    for _ in range(7):
        comings.try_once(VESSELS, now_s=0.0)
    assert comings.tried("here", now_s=0.0, per_s=1.0) == 4.0


def test_many_at_once_are_no_more_than_so_many(comings):
    with ThreadPoolExecutor(8) as pool:
        went = list(pool.map(lambda _: comings.try_once(VESSELS, now_s=0.0), range(16)))
    assert sum(went) == 4


def test_a_clock_that_goes_back_forgives_nothing(comings):
    comings.try_once(VESSELS, now_s=100.0)
    assert comings.tried("ann", now_s=0.0, per_s=1.0) == 1.0


def test_what_was_done_is_told_newest_first_and_cannot_be_changed(book, comings):
    for word in ("signed-in", "invited", "left"):
        comings.note(AT, "Ann", word, {"role": "helper"})
    assert [(one.number, one.word) for one in comings.done()] == [
        (3, "left"), (2, "invited"), (1, "signed-in"),
    ]  # fmt: skip
    assert [one.number for one in comings.done(limit=1, before=3)] == [2]
    for statement in ("UPDATE done SET who = 'Bo'", "DELETE FROM done"):
        with pytest.raises(DBAPIError, match="never changed"), book.engine.begin() as connection:
            connection.execute(text(statement))
    assert book.check() == []


@pytest.mark.parametrize(
    ("statement", "codes"),
    [
        ("UPDATE done SET who = 'Bo' WHERE number = 2", {"altered"}),
        ("DELETE FROM done WHERE number = 1", {"gap", "altered"}),
        ("DELETE FROM done WHERE number = 3", {"gap"}),
        ("UPDATE person SET role = 'king'", {"altered"}),
    ],
)
def test_a_deed_taken_away_or_altered_is_seen(book, comings, ann, statement, codes):
    for word in ("signed-in", "invited", "left"):
        comings.note(AT, "Ann", word, {})
    with book.engine.begin() as connection:
        if book.where.folder:
            connection.execute(text("DROP TRIGGER done_no_update"))
            connection.execute(text("DROP TRIGGER done_no_delete"))
        else:
            connection.execute(text("SET LOCAL session_replication_role = replica"))
        connection.execute(text(statement))
    assert {one.code for one in book.check()} == codes
