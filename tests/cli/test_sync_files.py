"""Photos between two laptops by one book: sent before their entries, fetched after them."""

import hashlib
import json
import shutil

import pytest
from tests.cli.test_sync import KEY, log, served, sync, told
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.main import main
from farwall.facts.plain import plain
from farwall.job.plan_job import plan_job
from farwall.papers.json_text import json_text
from farwall.readers.plan_json import plan_to_dict
from farwall.store.files import file_path

__all__ = ["served"]
TWO = job(TWO_ROOMS, id="two-rooms")
PHOTO = b"\xff\xd8 a photo, invented"
SHA = hashlib.sha256(PHOTO).hexdigest()


@pytest.fixture(scope="module")
def document():
    return json_text(plan_to_dict(plan_job(TWO)))


@pytest.fixture
def laptops(tmp_path, document):
    for name in ("ann", "bea"):
        folder = tmp_path / name
        folder.mkdir()
        (folder / "plan.json").write_text(document)
        (folder / "job.json").write_text(json.dumps(plain(TWO, omit_empty=True)))
    (tmp_path / "IMG_1.jpg").write_bytes(PHOTO)
    return tmp_path / "ann", tmp_path / "bea"


def took(folder):
    log(folder, "photo", f"file={folder.parent / 'IMG_1.jpg'}", "room=back", device=folder.name)


def here(folder):
    return file_path(folder / "files", SHA)


def test_a_photo_goes_by_the_book_to_the_other_laptop_and_twice_is_harmless(
    served, laptops, capsys
):
    ann, bea = laptops
    took(ann)
    capsys.readouterr()
    for sent, known in ((1, 0), (0, 0)):
        assert sync(served, ann, "ann") == 0
        found = told(capsys)
        assert (found["photos_sent"], found["sent"], found["known"]) == (sent, sent, known)
        assert served.book.file(SHA) == PHOTO
        assert served.book.check() == []
    for fetched in (1, 0):
        assert sync(served, bea, "bea") == 0
        found = told(capsys)
        assert (found["photos_fetched"], found["fetched"]) == (fetched, fetched)
        assert here(bea).read_bytes() == PHOTO
    assert served.book.check() == []


def test_an_entry_whose_photo_is_nowhere_waits_and_the_others_go(served, laptops, capsys):
    ann, _ = laptops
    took(ann)
    log(ann, "note", "text=by itself", device="ann")
    here(ann).unlink()
    capsys.readouterr()
    assert sync(served, ann, "ann") == 1
    found = told(capsys)
    assert (found["sent"], found["waiting"], found["lacking"]) == (1, 1, [SHA])
    assert "neither here nor in the book" in next(iter(found["turned"].values()))[0]
    assert served.book.check() == []
    here(ann).write_bytes(PHOTO)  # found again
    assert sync(served, ann, "ann") == 0
    found = told(capsys)
    assert (found["sent"], found["waiting"], found["lacking"], found["turned"]) == (1, 0, [], {})
    assert [one.entry.word for one in served.book.entries("two-rooms")] == ["note", "photo"]
    assert served.book.check() == []


def test_a_photo_that_is_damaged_here_is_not_sent(served, laptops, capsys):
    ann, _ = laptops
    took(ann)
    here(ann).write_bytes(b"half of")
    capsys.readouterr()
    assert sync(served, ann, "ann") == 1
    assert "damaged here" in next(iter(told(capsys)["turned"].values()))[0]
    assert served.book.entries("two-rooms") == []


def test_a_photo_that_the_book_lost_is_sent_again_on_another_day(
    served, laptops, capsys, monkeypatch
):
    ann, _ = laptops
    took(ann)
    sync(served, ann, "ann")
    file_path(served.book.where.files, SHA).unlink()
    assert [one.code for one in served.book.check()] == ["missing-file"]
    monkeypatch.setattr("farwall.cli.sync._today", lambda: "2099-01-01")
    capsys.readouterr()
    assert sync(served, ann, "ann") == 0
    assert told(capsys)["photos_sent"] == 1
    assert served.book.check() == []


def test_a_photo_that_is_lost_here_is_fetched_again(served, laptops, capsys):
    ann, _ = laptops
    took(ann)
    sync(served, ann, "ann")
    shutil.rmtree(ann / "files")
    capsys.readouterr()
    assert sync(served, ann, "ann") == 0
    assert told(capsys)["photos_fetched"] == 1
    assert here(ann).read_bytes() == PHOTO


def test_no_signal_leaves_all_as_it_was(laptops, capsys):
    ann, _ = laptops
    took(ann)
    assert main(["sync", str(ann), "--to", "http://127.0.0.1:9", "--key", KEY]) == 1
    assert here(ann).read_bytes() == PHOTO
