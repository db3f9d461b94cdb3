"""`check` sees each thing that can be wrong with a book, and nothing in one that is whole."""

import sqlite3
from contextlib import closing

import pytest
from sqlalchemy import text
from tests.store.entries import AT, entry

from farwall.errors import Refused
from farwall.store.nouns import BookTrouble


def codes(book):
    return {(one.code, one.harm) for one in book.check()}


def spoil(book, statement):
    """Change a row behind the book's back, with no look at what refers to it."""
    if book.where.folder:
        with closing(sqlite3.connect(book.where.folder / "book.sqlite")) as connection:
            connection.execute(statement)
            connection.commit()
        return
    with book.engine.begin() as connection:
        connection.execute(text("SET LOCAL session_replication_role = replica"))
        connection.execute(text(statement))


def test_a_whole_book_has_no_fault(full):
    assert full.check() == []


def test_an_empty_book_has_no_fault(book):
    assert book.check() == []


@pytest.mark.parametrize(
    ("statement", "code"),
    [
        ("UPDATE entry SET body = replace(body, 'said a', 'said b') WHERE id = 'a'", "altered"),
        ("UPDATE entry SET received_at = '2026-05-04T07:00:01-05:00' WHERE id = 'a'", "altered"),
        ("UPDATE entry SET job = 'sorrel' WHERE id = 'a'", "altered"),
        ("UPDATE entry SET place = 9 WHERE id = 'a'", "gap"),
        ("DELETE FROM entry WHERE id = 'a'", "gap"),
        ("DELETE FROM entry WHERE place = 4", "gap"),
        ("UPDATE facts SET who = 'Bo' WHERE version = 2", "altered"),
        ("UPDATE facts SET body = replace(body, '3', '4') WHERE version = 2", "altered"),
        ("DELETE FROM facts WHERE job = 'quince' AND version = 1", "gap"),
        ("DELETE FROM facts WHERE job = 'sorrel'", "orphan"),
        ("DELETE FROM job WHERE id = 'sorrel'", "orphan"),
        ("UPDATE document SET body = '{}'", "altered"),
        ("DELETE FROM clock WHERE number = 1", "gap"),
        ("UPDATE line SET entries = 7 WHERE job = 'quince'", "line"),
        ("UPDATE line SET closed = NOT closed WHERE job = 'quince'", "line"),
        ("UPDATE line SET aside = NOT aside WHERE job = 'quince'", "line"),
        ("DELETE FROM line WHERE job = 'sorrel'", "line"),
        ("UPDATE entry SET body = '{' WHERE id = 'h'", "altered"),
        ("UPDATE entry SET body = '[]' WHERE id = 'h'", "damaged"),
        ("UPDATE facts SET at = 'once' WHERE version = 2", "damaged"),
        ("UPDATE counter SET value = 9 WHERE name = 'place'", "gap"),
    ],
)
def test_an_altered_row_is_seen(full, statement, code):
    spoil(full, statement)
    assert (code, True) in codes(full)


def test_a_missing_and_a_damaged_file_are_seen(full):
    (path,) = [one for one in full.where.files.rglob("*") if one.is_file()]
    path.write_bytes(b"another photo")
    assert codes(full) == {("altered", True)}
    path.unlink()
    assert codes(full) == {("missing-file", True)}


def test_files_that_nobody_names_are_told_as_no_harm(full):
    full.put_file(b"not named yet")
    (full.where.files / "ab").mkdir(exist_ok=True)
    (full.where.files / "ab" / ".part-x").write_bytes(b"cut sho")
    assert [(one.code, one.harm) for one in full.check()] == [("loose-file", False)] * 2


def test_a_file_that_a_document_names_is_not_loose(full):
    full.put_document("sheet", "stain", {"file": full.put_file(b"the maker's sheet")})
    assert full.check() == []


def test_a_clock_of_the_book_that_went_back_is_told_as_no_harm(full):
    full.keep([entry("z")], received_at="2026-05-04T05:59:00-05:00")
    assert codes(full) == {("clock-back", False)}


def test_a_spoilt_row_is_told_calmly_to_who_reads_it(full):
    spoil(full, "UPDATE entry SET body = '{' WHERE id = 'a'")
    with pytest.raises(BookTrouble, match="cannot be read") as trouble:
        full.entries("quince")
    assert trouble.value.damaged


def test_a_missing_line_is_told_calmly_to_who_writes(full):
    spoil(full, "DELETE FROM line WHERE job = 'quince'")
    with pytest.raises(BookTrouble, match="cannot be read"):
        full.keep([entry("new")], received_at=AT)
    spoil(full, "UPDATE entry SET body = replace(body, 'era', 'eon')")
    with pytest.raises(Refused, match="Use a later one"):
        full.entries("sorrel")
