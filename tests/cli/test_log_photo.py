"""Photos told by their file: read, hashed, kept beside the log or in the book."""

import hashlib
import json

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.log_file import LOG
from farwall.cli.log_photo import content_of, files_named, photos_in
from farwall.cli.main import main
from farwall.errors import Refused
from farwall.facts.log import Entry
from farwall.facts.plain import plain
from farwall.job.plan_job import plan_job
from farwall.papers.json_text import json_text
from farwall.readers.plan_json import plan_to_dict
from farwall.store import files
from farwall.store.book import Book

PHOTO = b"\xff\xd8 a photo, invented"
SHA = hashlib.sha256(PHOTO).hexdigest()
TWO = job(TWO_ROOMS, id="two-rooms")


@pytest.fixture(scope="module")
def document():
    return json_text(plan_to_dict(plan_job(TWO)))


@pytest.fixture
def monday(tmp_path, document):
    folder = tmp_path / "monday"
    folder.mkdir()
    (folder / "plan.json").write_text(document)
    (folder / "job.json").write_text(json.dumps(plain(TWO, omit_empty=True)))
    return folder


@pytest.fixture
def photo(tmp_path):
    path = tmp_path / "IMG_1.jpg"
    path.write_bytes(PHOTO)
    return path


def test_a_path_becomes_a_hash_and_the_photo_lies_beside_the_log(monday, photo, capsys):
    for _ in range(2):  # twice is two entries and one file
        assert main(["log", str(monday), "photo", f"file={photo}", "room=back", "at_min=1"]) in (
            0,
            1,
        )
    lines = (monday / LOG).read_text().splitlines()
    assert [json.loads(one)["entry"]["about"] for one in lines] == [
        {"file": SHA, "room": "back"}
    ] * 2
    assert (monday / "files" / SHA[:2] / SHA[2:]).read_bytes() == PHOTO
    assert [name for name, _ in files.file_names(monday / "files")] == [SHA]


def test_in_a_book_it_lies_in_the_book_and_the_book_is_whole(tmp_path, photo, capsys, document):
    with Book.open(tmp_path / "book") as book:
        book.put_facts("two-rooms", plain(TWO, omit_empty=True), who="", at="2026-05-04T07:00:00Z")
        book.put_document("plan", "two-rooms", json.loads(document))
    words = ["log", "two-rooms", "photo", f"file={photo}", "at_min=1"]
    assert main([*words, "--book", str(tmp_path / "book")]) in (0, 1)
    with Book.open(tmp_path / "book") as book:
        assert book.entries("two-rooms")[0].entry.about == {"file": SHA}
        assert book.file(SHA) == PHOTO
        assert book.check() == []


def test_what_is_refused_leaves_no_file_behind(monday, photo, capsys):
    assert main(["log", str(monday), "photo", f"file={photo}", "room=nowhere"]) == 2
    assert "no room nowhere" in capsys.readouterr().err
    assert not (monday / "files").exists()
    assert not (monday / LOG).exists()


def test_what_is_no_file_and_no_hash_is_told_with_all_else(monday, capsys):
    assert main(["log", str(monday), "photo", "file=IMG_9.jpg", "room=nowhere"]) == 2
    said = capsys.readouterr().err
    assert "no SHA-256" in said
    assert "no room nowhere" in said


def test_a_hash_stays_a_hash_even_where_a_file_is_called_so(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / SHA).write_bytes(b"another")
    assert photos_in("photo", [f"file={SHA}"]).carried == (f"file={SHA}",)
    assert photos_in("photo", [f"file={SHA}"]).contents == ()


def test_only_values_that_are_files_of_the_book_are_taken_in(photo):
    told = [f"text={photo}"]
    assert photos_in("note", told).carried == tuple(told)
    assert photos_in("no such word", told).carried == tuple(told)


@pytest.mark.parametrize("kind", ["empty", "folder", "large"])
def test_what_cannot_be_taken_in_is_refused_by_name(tmp_path, kind):
    path = tmp_path / "IMG_2.jpg"
    if kind == "folder":
        path.mkdir()
    else:
        path.touch()
    if kind == "large":
        with path.open("wb") as out:
            out.truncate(files.MOST_BYTES + 1)
    with pytest.raises(Refused, match=r"IMG_2\.jpg"):
        content_of(path)
    with pytest.raises(Refused, match=r"IMG_2\.jpg"):
        photos_in("photo", [f"file={path}"])


def test_the_files_that_an_entry_names():
    at = "2026-05-04T07:00:00Z"
    assert files_named(Entry("a", "j", "photo", at, about={"file": SHA})) == (SHA,)
    assert files_named(Entry("a", "j", "note", at, about={"text": SHA})) == ()
    assert files_named(Entry("a", "j", "of a later Farwall", at)) == ()
