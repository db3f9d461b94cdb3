"""The tables move up and down, by themselves at opening, once, and never over a later book."""

import os
from concurrent.futures import ThreadPoolExecutor

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import inspect, text
from tests.store.entries import AT, entry

from farwall.bench.book_writer import fork
from farwall.errors import Refused
from farwall.store import lines, moving
from farwall.store.address import address
from farwall.store.book import Book
from farwall.store.engine import engine_for
from farwall.store.tables import META


def tables(book):
    with book.engine.connect() as connection:
        return set(inspect(connection).get_table_names()) - {"alembic_version"}


def version(book):
    with book.engine.connect() as connection:
        return moving.version(connection)


def test_down_one_and_up_again_loses_nothing(full):
    full.keep([entry("z", job="sorrel", word="set-aside")], received_at=AT)
    jobs, entries = full.jobs(), full.entries("quince")
    assert [one.aside for one in jobs] == [True, False]
    moving.move(full.engine, full.where, "r3")
    moving.move(full.engine, full.where, "r2")
    assert "person" not in tables(full)
    moving.move(full.engine, full.where, "r1")
    assert version(full) == "r1"
    assert "line" not in tables(full)
    moving.move(full.engine, full.where, "head")
    assert version(full) == moving.NEWEST
    assert (full.jobs(), full.entries("quince")) == (jobs, entries)
    assert full.check() == []


def test_down_to_base_and_back_is_an_empty_book(full):
    moving.move(full.engine, full.where, "base")
    assert tables(full) == set()
    moving.move(full.engine, full.where, "head")
    assert full.jobs() == []
    assert [one for one in full.check() if one.harm] == []
    full.put_facts("quince", {}, who="Ann", at=AT)
    assert full.keep([entry("a")], received_at=AT).new == ("a",)


def test_the_moves_make_the_tables_that_the_code_knows(book):
    with book.engine.connect() as connection:
        context = MigrationContext.configure(connection)
        assert compare_metadata(context, META) == []


def test_an_older_book_is_brought_up_to_date_when_it_is_opened(full, place):
    moving.move(full.engine, full.where, "r1")
    with Book.open(**place) as again:
        assert version(again) == moving.NEWEST
        assert [one.id for one in again.jobs()] == ["sorrel", "quince"]


def test_a_book_by_a_later_farwall_is_refused_and_left_alone(full, place):
    with full.engine.begin() as connection:
        connection.execute(text("UPDATE alembic_version SET version_num = 'r99'"))
    with pytest.raises(Refused, match="later Farwall"):
        Book.open(**place)
    assert version(full) == "r99"


def test_many_who_open_a_new_book_at_once_make_it_once(new_address):
    place = new_address()

    def one(number):
        with Book.open(**place) as book:
            book.put_facts(f"job-{number}", {}, who="Ann", at=AT)

    with ThreadPoolExecutor(4) as pool:
        list(pool.map(one, range(4)))
    with Book.open(**place) as book:
        assert len(book.jobs()) == 4
        assert book.check() == []


def test_a_move_that_was_cut_short_has_not_happened(place, monkeypatch):
    """The process dies inside the second step: the first is undone with it."""
    where = address(place["told"], files=place.get("files"))
    child = fork()
    if child == 0:
        monkeypatch.setattr(lines, "count_again", lambda connection: os._exit(7))
        try:
            moving.bring_up_to_date(engine_for(where), where)
        finally:
            os._exit(1)
    assert os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]) == 7
    with Book.open(**place) as book:
        assert book.check() == []
        assert version(book) == moving.NEWEST
