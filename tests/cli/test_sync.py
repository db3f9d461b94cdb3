"""`farwall sync`: two laptops without signal, one book, real HTTP."""

from __future__ import annotations

import json
import shutil
import socket
import threading
import time
from datetime import UTC, datetime

import pytest
import uvicorn
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.main import main
from farwall.cli.sync_state import NAME
from farwall.facts.plain import plain
from farwall.store.book import Book
from farwall.web.app import app_for
from farwall.web.door import Door

KEY = "a key of our own, invented"


class Served:
    """A book behind a door, and what stops it."""

    def __init__(self, folder):
        self.book = Book.open(folder)
        door = Door(self.book, KEY, lambda: datetime.now(UTC))
        with socket.socket() as one:
            one.bind(("127.0.0.1", 0))
            self.port = one.getsockname()[1]
        config = uvicorn.Config(app_for(door), port=self.port, log_level="error", ws="none")
        self.server = uvicorn.Server(config)
        self.thread = threading.Thread(target=self.server.run)
        self.thread.start()
        while not self.server.started:
            time.sleep(0.02)

    def stop(self):
        self.server.should_exit = True
        self.thread.join()
        self.book.close()


@pytest.fixture
def served(tmp_path):
    found = Served(tmp_path / "book")
    yield found
    found.stop()


@pytest.fixture
def laptops(tmp_path):
    """Two folders with the same plan and its facts."""
    facts = tmp_path / "job.json"
    facts.write_text(json.dumps(plain(job(TWO_ROOMS, id="two-rooms"), omit_empty=True)))
    main(["plan", str(facts), "--out", str(tmp_path / "ann")])
    shutil.copy(facts, tmp_path / "ann" / "job.json")
    shutil.copytree(tmp_path / "ann", tmp_path / "bea")
    return tmp_path / "ann", tmp_path / "bea"


def log(folder, *words, device):
    assert main(["log", str(folder), *words, "--device", device]) in (0, 1)


def sync(served, folder, device="desk", *more):
    to = f"http://127.0.0.1:{served.port}"
    return main(
        ["sync", str(folder), "--to", to, "--key", KEY, "--device", device, "--json", *more]
    )


def told(capsys):
    return json.loads(capsys.readouterr().out)[0]


def texts(folder):
    lines = (folder / "log.jsonl").read_text().splitlines()
    return sorted(json.loads(line)["entry"]["about"].get("text", "") for line in lines)


def test_what_each_logged_alone_both_have_afterwards(served, laptops, capsys):
    ann, bea = laptops
    log(ann, "note", "text=from Ann", device="ann")
    log(bea, "note", "text=from Bea", device="bea")
    log(bea, "note", "text=Bea again", device="bea")
    capsys.readouterr()
    assert sync(served, ann, "ann") == 0
    assert (told(capsys)["sent"], len(served.book.entries("two-rooms"))) == (1, 1)
    assert sync(served, bea, "bea") == 0
    first = told(capsys)
    assert (first["sent"], first["fetched"], first["waiting"]) == (2, 1, 0)
    sync(served, ann, "ann")
    again = told(capsys)
    assert (again["sent"], again["known"], again["fetched"]) == (0, 0, 2)
    assert texts(ann) == texts(bea) == ["Bea again", "from Ann", "from Bea"]


def test_a_folder_that_lost_its_state_sends_all_and_nothing_is_doubled(served, laptops, capsys):
    ann, _ = laptops
    log(ann, "note", "text=one", device="ann")
    sync(served, ann, "ann")
    (ann / NAME).unlink()
    capsys.readouterr()
    sync(served, ann, "ann")
    assert told(capsys)["known"] == 1
    assert len(served.book.entries("two-rooms")) == 1


def test_a_book_put_back_from_an_older_copy_gets_back_what_it_lost(laptops, tmp_path, capsys):
    ann, bea = laptops
    served = Served(tmp_path / "book")
    served.book.put_facts("two-rooms", {"version": 1}, who="Ann", at=datetime.now(UTC).isoformat())
    served.book.backup(tmp_path / "copy")
    log(ann, "note", "text=lost by the book", device="ann")
    sync(served, ann, "ann")
    log(bea, "note", "text=from Bea", device="bea")
    served.stop()
    shutil.rmtree(tmp_path / "book")
    from farwall.store.backing import restore

    restore(tmp_path / "copy", tmp_path / "book")
    served = Served(tmp_path / "book")
    try:
        sync(served, ann, "ann")
        sync(served, bea, "bea")
        sync(served, ann, "ann")
        kept = [one.entry.about["text"] for one in served.book.entries("two-rooms")]
    finally:
        served.stop()
    assert sorted(kept) == ["from Bea", "lost by the book"]
    assert texts(ann) == texts(bea) == ["from Bea", "lost by the book"]


def test_no_signal_is_told_calmly_and_all_goes_on_waiting(laptops, capsys):
    ann, _ = laptops
    log(ann, "note", "text=one", device="ann")
    capsys.readouterr()
    code = main(["sync", str(ann), "--to", "http://127.0.0.1:9", "--key", KEY])
    assert code == 1
    assert "Nothing is lost" in capsys.readouterr().err
    assert texts(ann) == ["one"]


def test_another_key_is_refused(served, laptops, capsys):
    ann, _ = laptops
    to = f"http://127.0.0.1:{served.port}"
    assert main(["sync", str(ann), "--to", to, "--key", "another one"]) == 2
    assert "asks for its key" in capsys.readouterr().err
