"""A few kills of writers in either store, and that the trial sees a book which lies."""

import os

import pytest

from farwall.bench import book_kills
from farwall.bench.book_kills import kill_postgres, kill_sqlite
from farwall.bench.book_postgres import NoServer
from farwall.bench.book_writer import found_wrong, write_on


def test_killed_writers_lose_nothing_that_was_acknowledged():
    found = kill_sqlite(12)
    assert found.kills == 12
    assert found.acknowledged > 0
    assert found.wrong == []


def test_killed_writers_of_a_server_lose_nothing_that_was_acknowledged():
    try:
        found = kill_postgres(8)
    except NoServer as why:
        pytest.skip(f"no PostgreSQL here: {why}")
    assert found.kills == 8
    assert found.wrong == []


def test_an_entry_acknowledged_and_not_there_is_seen(tmp_path):
    hear, say = os.pipe()
    write_on(str(tmp_path), files=tmp_path / "files", name="w", say=say, most=30)
    os.close(say)
    with os.fdopen(hear) as pipe:
        said = set(pipe.read().split())
    assert found_wrong(str(tmp_path), files=tmp_path / "files", said=said) == ([], 0)
    wrong, unsaid = found_wrong(str(tmp_path), files=tmp_path / "files", said={*said, "never"})
    assert (wrong, unsaid) == (["lost: never"], 0)


def test_a_writer_that_says_ids_before_they_are_kept_is_caught(monkeypatch):
    def lies(told, *, files, name, say):
        number = 0
        while True:
            os.write(say, f"{name}-{number}\n".encode())
            number += 1

    monkeypatch.setattr(book_kills, "write_on", lies)
    assert any("lost" in one for one in kill_sqlite(2).wrong)
