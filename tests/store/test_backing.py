"""What went out comes in again, in either store; a backup is taken while others write."""

import hashlib
import json
import threading

import pytest
from tests.shapes import L_HALL
from tests.store.entries import AT, LATER, entry

from farwall.errors import Refused
from farwall.facts.plain import plain
from farwall.store.book import Book, restore
from farwall.store.open_format import READ_BACK


def content(book):
    """All that a book says, but for how its store keeps it."""
    jobs = book.jobs()
    return {
        "jobs": jobs,
        "versions": {one.id: book.versions(one.id) for one in jobs},
        "facts": {
            (one.id, line.version): book.facts(one.id, line.version)
            for one in jobs
            for line in book.versions(one.id)
        },
        "entries": {one.id: book.entries(one.id) for one in jobs},
        "van": book.documents("van"),
        "files": sorted(one.name for one in book.where.files.rglob("*") if one.is_file()),
    }


@pytest.fixture
def house(full):
    """A full book with a true floor, a note that looks like a formula, numbers of every kind."""
    facts = plain({"version": 1, "floor": L_HALL.floor, "exits": L_HALL.exits}, omit_empty=True)
    full.put_facts("l-hall", facts, who="Bo", at=AT, name="L hall")
    about = {"text": "ß\n“,;", "a": 1e20, "b": 1e-7, "c": 0.1 + 0.2, "d": None, "e": [True, {}]}
    full.keep([entry("n", job="l-hall", who="=1+1", about=about)], received_at=LATER)
    full.keep([], received_at=LATER, clock_off_s={("red", 0): 0.1 + 0.2})
    full.put_document("van", "red", {"tank_l": 9.5})
    return full


def test_what_went_out_comes_in_again_in_either_store(house, new_address, tmp_path):
    house.out(tmp_path / "out")
    where = new_address()
    with Book.open(**where) as other:
        other.take_in(tmp_path / "out")
        assert content(other) == content(house)
        assert other.check() == []
        other.out(tmp_path / "again")
        assert other.keep([entry("later")], received_at=LATER).new == ("later",)
        assert other.entries("quince")[-1].place == 6
    assert tree(tmp_path / "again") == tree(tmp_path / "out")


def tree(folder):
    files = (one for one in sorted(folder.rglob("*")) if one.is_file())
    return {str(one.relative_to(folder)): one.read_bytes() for one in files}


def test_the_open_formats_say_what_there_is(house, tmp_path):
    house.out(tmp_path / "out")
    told = tree(tmp_path / "out")
    sha = hashlib.sha256(b"a photo").hexdigest()
    assert told[f"files/{sha[:2]}/{sha[2:]}"] == b"a photo"
    entries = [json.loads(line) for line in told["entries.jsonl"].splitlines()]
    assert [one["place"] for one in entries] == [1, 2, 3, 4, 5]
    assert entries[1]["clock_off_s"] == 0.1 + 0.2
    jobs = [json.loads(line) for line in told["jobs.jsonl"].splitlines()]
    assert [(one["job"], one["version"]) for one in jobs] == [
        ("quince", 1),
        ("quince", 2),
        ("sorrel", 1),
        ("l-hall", 1),
    ]
    floor = json.loads(told["floors/00003-l-hall.geojson"])
    assert {one["properties"]["kind"] for one in floor["features"]} >= {"room", "exit"}
    table = told["entries.csv"].decode().splitlines()
    assert len(table) == 6
    assert "'=1+1" in table[-1]


@pytest.mark.parametrize("name", READ_BACK)
def test_a_line_lost_or_changed_outside_is_noticed(house, new_address, tmp_path, name):
    house.out(tmp_path / "out")
    path = tmp_path / "out" / name
    path.write_bytes(b"".join(path.read_bytes().splitlines(keepends=True)[1:]))
    with Book.open(**new_address()) as other:
        with pytest.raises(Refused, match="not as it was written"):
            other.take_in(tmp_path / "out")
        assert other.jobs() == []


def test_without_the_manifest_every_line_is_judged_and_all_mistakes_told(house, tmp_path):
    house.out(tmp_path / "out")
    (tmp_path / "out" / "manifest.json").unlink()
    path = tmp_path / "out" / "entries.jsonl"
    lines = path.read_text().splitlines()
    bad = ["{", "[]", '{"place": 3}', lines[0], lines[4].replace('"place":5', '"place":7')]
    path.write_text("\n".join([lines[0], *bad]) + "\n")
    with Book.open(tmp_path / "new") as other:
        with pytest.raises(Refused) as refusal:
            other.take_in(tmp_path / "out")
        assert len(refusal.value.mistakes) == 5
        assert all("entries.jsonl, line" in one.where for one in refusal.value.mistakes)
        assert other.jobs() == []
        assert other.check() == []


def test_a_book_with_something_in_it_takes_nothing_in(house, tmp_path):
    house.out(tmp_path / "out")
    with pytest.raises(Refused, match="with something in it"):
        house.take_in(tmp_path / "out")


def test_a_backup_restores_into_either_store_and_stays_as_it_is(house, new_address, tmp_path):
    house.backup(tmp_path / "backup")
    before = tree(tmp_path / "backup")
    for where in (new_address(), {"told": str(tmp_path / "sqlite")}):
        restore(tmp_path / "backup", where["told"], files=where.get("files"))
        with Book.open(**where) as other:
            assert content(other) == content(house)
            assert other.check() == []
    assert tree(tmp_path / "backup") == before
    with pytest.raises(Refused, match="is there already"):
        house.backup(tmp_path / "backup")
    with pytest.raises(Refused, match="with something in it"):
        restore(tmp_path / "backup", tmp_path / "sqlite")
    with pytest.raises(Refused, match="holds no backup"):
        restore(tmp_path / "nothing", tmp_path / "sqlite")


def test_a_backup_taken_while_others_write_is_whole(house, tmp_path):
    stop = threading.Event()
    kept = []

    def write():
        while not stop.is_set():
            sha = house.put_file(f"photo {len(kept)}".encode())
            photo = entry(f"w{len(kept)}", word="photo", about={"file": sha})
            kept.extend(house.keep([photo], received_at=LATER).new)

    writer = threading.Thread(target=write)
    writer.start()
    try:
        before = []
        for number in range(3):
            before.append(list(kept))
            house.backup(tmp_path / f"backup-{number}")
    finally:
        stop.set()
        writer.join()
    for number in range(3):
        restore(tmp_path / f"backup-{number}", tmp_path / f"again-{number}")
        with Book.open(tmp_path / f"again-{number}") as again:
            assert [one for one in again.check() if one.harm] == []
            assert {one.entry.id for one in again.entries("quince")} >= set(before[number])
