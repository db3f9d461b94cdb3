"""Disks, rights and neighbours that fail: a calm word, and nothing acknowledged is lost."""

import os
import resource
import signal
import sqlite3
import subprocess
import sys
import threading
from contextlib import closing
from pathlib import Path

import pytest
from tests.store.entries import AT, entry

from farwall.bench.book_writer import fork
from farwall.cli.main import main
from farwall.store.book import Book
from farwall.store.nouns import BookTrouble

NOBODY = 65534


def in_a_child(work, pipe_size=65536):
    """What `work` returned, as text, from a process of its own; its limits and rights end there."""
    hear, say = os.pipe()
    child = fork()
    if child == 0:
        try:
            os.write(say, str(work()).encode())
            os._exit(0)
        except BaseException as error:
            os.write(say, f"{type(error).__name__}: {error}".encode())
            os._exit(1)
    os.close(say)
    with os.fdopen(hear, "rb") as pipe:
        said = pipe.read().decode()
    return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]), said


def filled(folder):
    with Book.open(folder) as book:
        book.put_facts("quince", {}, who="Ann", at=AT)
        book.keep([entry("first")], received_at=AT)


def write_until_trouble(folder):
    """Ids acknowledged before the store refused; the trouble's own words behind a bar."""
    kept = []
    try:
        with Book.open(folder) as book:
            for number in range(5000):
                text = {"text": "a long note " * 200}
                kept += book.keep([entry(f"n{number}", about=text)], received_at=AT).new
    except BookTrouble as trouble:
        return ",".join(kept) + "|" + str(trouble)
    return ",".join(kept) + "|no trouble"


def holds(folder, said):
    """The acknowledged ids are all there and the book is whole; back come the trouble's words."""
    ids, words = said.split("|", 1)
    with Book.open(folder) as book:
        assert book.check() == []
        there = {one.entry.id for one in book.entries("quince")}
        assert there >= {"first", *ids.split(",")}
        assert book.keep([entry("after")], received_at=AT).new == ("after",)
    return words


def test_a_file_that_may_not_grow_is_told_calmly_and_nothing_is_lost(tmp_path):
    filled(tmp_path / "book")

    def work():
        signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
        resource.setrlimit(resource.RLIMIT_FSIZE, (600_000, 600_000))
        return write_until_trouble(tmp_path / "book")

    code, said = in_a_child(work)
    assert code == 0, said
    words = holds(tmp_path / "book", said)
    assert "disk" in words
    assert said.count(",") > 10


def test_a_full_disk_is_told_calmly_and_nothing_is_lost(tmp_path):
    small = tmp_path / "small"
    small.mkdir()
    mount = ["mount", "-t", "tmpfs", "-o", "size=1500k", "tmpfs", str(small)]
    if os.geteuid() != 0 or subprocess.run(mount, check=False, capture_output=True).returncode:
        pytest.skip("a small disk can only be mounted as root, with the right to mount")
    try:
        filled(small / "book")
        words = write_until_trouble(small / "book")
        assert "The disk is full. Make room" in words
        with Book.open(small / "book") as book, pytest.raises(BookTrouble, match="not kept"):
            book.put_file(os.urandom(2_000_000))
        assert not list((small / "book" / "files").rglob(".part-*"))
        grown = ["mount", "-o", "remount,size=8m", str(small)]
        subprocess.run(grown, check=True, capture_output=True)
        holds(small / "book", words)
    finally:
        subprocess.run(["umount", str(small)], check=True)


@pytest.mark.parametrize("file_mode", [0o444, 0o644])
def test_a_folder_that_may_only_be_read_is_told_calmly(tmp_path, file_mode):
    filled(tmp_path / "book")
    # Nobody has to reach the folder at all.
    for folder in (tmp_path, *tmp_path.parents[:3]):  # a worker has a folder of its own between
        if folder.stat().st_uid == os.geteuid():
            folder.chmod(folder.stat().st_mode | 0o011)
    for path in (tmp_path / "book").iterdir():
        path.chmod(file_mode)
    (tmp_path / "book").chmod(0o555)

    def work():
        if os.geteuid() == 0:
            os.setgroups([])
            os.setuid(NOBODY)
        return write_until_trouble(tmp_path / "book")

    try:
        code, said = in_a_child(work)
    finally:
        (tmp_path / "book").chmod(0o755)
        for path in (tmp_path / "book").iterdir():
            path.chmod(0o644)
    assert code == 0, said
    assert said.startswith("|")
    assert "read" in said or "opened" in said
    with Book.open(tmp_path / "book") as book:
        assert book.check() == []


def test_a_place_where_no_folder_can_be_made_is_told_calmly(tmp_path):
    (tmp_path / "file").write_text("in the way")
    with pytest.raises(BookTrouble, match="cannot be used as a book"):
        Book.open(tmp_path / "file" / "book")


@pytest.mark.parametrize("page", range(2, 12))
def test_a_corrupt_page_is_found_and_told_calmly(tmp_path, page, capsys):
    filled(tmp_path)
    with Book.open(tmp_path) as book:
        book.keep([entry(f"n{one}") for one in range(200)], received_at=AT)
    path = tmp_path / "book.sqlite"
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        size = connection.execute("PRAGMA page_size").fetchone()[0]
        used = connection.execute("PRAGMA page_count").fetchone()[0]
    assert used >= 12
    raw = bytearray(path.read_bytes())
    raw[(page - 1) * size : page * size] = bytes([0xA5]) * size
    path.write_bytes(raw)
    assert main(["book", "check", "--book", str(tmp_path)]) == 1
    assert "damaged" in capsys.readouterr().out


def test_a_neighbour_who_holds_the_book_is_waited_for_and_then_told(tmp_path, monkeypatch):
    filled(tmp_path)
    monkeypatch.setattr("farwall.store.engine.WAIT_S", 0.2)
    with closing(sqlite3.connect(tmp_path / "book.sqlite", isolation_level=None)) as neighbour:
        neighbour.execute("BEGIN IMMEDIATE")
        with Book.open(tmp_path) as book:
            assert len(book.entries("quince")) == 1  # reading goes on
            with pytest.raises(BookTrouble, match="Another program holds the book"):
                book.keep([entry("second")], received_at=AT)
            neighbour.execute("ROLLBACK")
            assert book.keep([entry("second")], received_at=AT).new == ("second",)


def test_too_many_at_once_are_asked_to_wait(tmp_path):
    filled(tmp_path)
    with Book.open(tmp_path) as book:
        book.engine.pool._timeout = 0.1
        held = [book.engine.connect() for _ in range(15)]
        with pytest.raises(BookTrouble, match="Too many ask at once") as trouble:
            book.jobs()
        assert not trouble.value.damaged
        for one in held:
            one.close()
        assert len(book.jobs()) == 1


WRITER = """
import sys
from pathlib import Path
from farwall.facts.log import Entry
from farwall.store.book import Book
told, files, name = sys.argv[1:]
with Book.open(told, files=Path(files)) as book:
    for number in range(60):
        mine = Entry(f"{name}-{number}", "quince", "note", "2026-05-04T07:00:00-05:00")
        ours = Entry(f"both-{number}", "quince", "note", "2026-05-04T07:00:00-05:00")
        book.keep([mine, ours], received_at="2026-05-04T07:00:00-05:00")
"""


def test_two_programs_writing_at_once_lose_nothing_and_double_nothing(book):
    book.put_facts("quince", {}, who="Ann", at=AT)
    told = str(book.where.folder or book.where.url.replace("+psycopg", ""))
    words = [sys.executable, "-c", WRITER, told, str(book.where.files)]
    both = [subprocess.Popen([*words, name]) for name in ("red", "blue")]
    assert [one.wait() for one in both] == [0, 0]
    found = book.entries("quince")
    assert [one.place for one in found] == list(range(1, 181))
    assert len({one.entry.id for one in found}) == 180
    assert book.check() == []


def test_who_reads_on_from_a_place_misses_nothing_while_others_write(book):
    book.put_facts("quince", {}, who="Ann", at=AT)
    done = threading.Event()

    def write(name):
        for number in range(25):
            book.keep([entry(f"{name}-{number}")], received_at=AT)

    writers = [threading.Thread(target=write, args=(name,)) for name in "abc"]
    seen = []

    def read():
        while True:
            last = done.is_set()
            seen.extend(book.entries("quince", after=seen[-1].place if seen else 0))
            if last:
                return

    reader = threading.Thread(target=read)
    for one in (*writers, reader):
        one.start()
    for one in writers:
        one.join()
    done.set()
    reader.join()
    assert [one.place for one in seen] == list(range(1, 76))


def test_a_server_that_is_not_there_is_told_calmly_and_without_the_password(tmp_path):
    pytest.importorskip("psycopg")
    address = f"postgresql://ann:secret@/book?host={tmp_path}"
    with pytest.raises(BookTrouble, match="server does not answer") as trouble:
        Book.open(address, files=tmp_path)
    assert "secret" not in str(trouble.value)


def test_a_database_that_is_not_there_is_told_calmly(server, tmp_path):
    with pytest.raises(BookTrouble, match="createdb"):
        Book.open(server.address("nowhere"), files=tmp_path)


def test_a_backup_into_a_place_that_cannot_be_written_leaves_nothing(tmp_path):
    filled(tmp_path / "book")
    (tmp_path / "file").write_text("in the way")
    with Book.open(tmp_path / "book") as book, pytest.raises(BookTrouble, match="cannot be"):
        book.backup(Path(tmp_path / "file" / "backup"))
    assert sorted(one.name for one in tmp_path.iterdir()) == ["book", "file"]
