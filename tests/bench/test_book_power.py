"""Power cut into a recorded writer; the rebuilt disk held against cases worked by hand."""

from pathlib import Path
from random import Random

import pytest

from farwall.bench.book_power import Call, Disk, cut_power
from farwall.errors import Unanswerable


def images(calls, many=200):
    """What may be on the disk after these calls, drawn many times: name to content."""
    disk = Disk()
    for call in calls:
        disk.take(call)
    return [
        {name: bytes(content) for name, content in disk.left(Random(seed))[0].items()}
        for seed in range(many)
    ]


MADE = [Call("made", "/b/log"), Call("fsync", "/b")]


def test_what_was_synced_is_there_whatever_comes_by_hand():
    calls = [*MADE, Call("written", "/b/log", data=b"one", number=0), Call("fdatasync", "/b/log")]
    calls.append(Call("written", "/b/log", data=b"two", number=3))
    found = {one["/b/log"] for one in images(calls)}
    assert found == {b"one", b"onetwo"}


def test_what_was_not_synced_may_be_lost_torn_or_there_by_hand():
    page = b"a" * 512 + b"b" * 512
    found = {one["/b/log"] for one in images([*MADE, Call("written", "/b/log", "", page)])}
    assert found == {b"", page, page[:512], bytes(512) + page[512:]}


def test_writes_not_synced_fall_in_any_order_by_hand():
    calls = [*MADE]
    calls += [Call("written", "/b/log", data=one, number=at) for at, one in enumerate([b"x", b"y"])]
    found = {one["/b/log"] for one in images(calls)}
    assert found == {b"", b"x", b"xy", b"\0y"}


def test_a_name_is_there_for_certain_once_its_folder_is_synced_by_hand():
    calls = [Call("made", "/b/.part"), Call("written", "/b/.part", data=b"photo", number=-1)]
    calls += [Call("fsync", "/b/.part"), Call("renamed", "/b/.part", "/b/photo")]
    names = {tuple(sorted(one)) for one in images(calls)}
    assert {(), ("/b/photo",)} <= names
    calls.append(Call("fsync", "/b"))
    assert {tuple(one.items()) for one in images(calls)} == {(("/b/photo", b"photo"),)}


def test_a_file_cut_short_and_not_synced_may_be_whole_by_hand():
    calls = [*MADE, Call("written", "/b/log", data=b"abc", number=0), Call("fsync", "/b/log")]
    found = {one["/b/log"] for one in images([*calls, Call("cut", "/b/log", number=1)])}
    assert found == {b"abc", b"a"}


def cuts(many, **more):
    try:
        return cut_power(many, **more)
    except Unanswerable as why:
        pytest.skip(f"nothing could be recorded: {why.reason}")


def test_power_cut_anywhere_loses_nothing_that_was_acknowledged():
    found = cuts(25, entries=120)
    assert found.cuts == 25
    assert found.lost > 0
    assert found.torn > 0
    assert found.wrong == []


def test_a_store_that_does_not_sync_is_caught(monkeypatch, tmp_path):
    """The writer's own store is told not to sync at each commit: then entries are lost."""
    (tmp_path / "sitecustomize.py").write_text(
        "import sqlite3\n"
        "class Lazy(sqlite3.Connection):\n"
        "    def execute(self, words, *more):\n"
        "        return super().execute(words.replace('synchronous=FULL', 'synchronous=NORMAL'))\n"
        "sound = sqlite3.connect\n"
        "sqlite3.connect = lambda *a, **k: sound(*a, factory=Lazy, **k)\n"
        "sqlite3.dbapi2.connect = sqlite3.connect\n"
    )
    monkeypatch.setenv("PYTHONPATH", str(Path(tmp_path)))
    assert any("lost" in one for one in cuts(25, entries=120).wrong)
