"""From a log to lessons and to the van, by folders and by the book."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.closed_jobs import closed_in_book
from farwall.cli.main import main
from farwall.cli.many.gather import jobs_of_book
from farwall.facts.plain import plain

VAN = Path(__file__).resolve().parents[2] / "examples" / "van" / "van.json"
START = "2026-06-08T08:00:00+00:00"
DAY = (
    ("mixed", "coat=one", "litres=20", "lot=7", "at_min=0"),
    ("coat-done", "coat=one", "tub_l=2", "tank_l=0", "at_min=20"),
    ("hours", "task=coat", "hours=3", "at_min=30"),
    ("handed-over", "at_min=3000"),
)


@pytest.fixture
def folder(tmp_path):
    """A plan with its facts, and the log of its day."""
    facts = tmp_path / "job.json"
    told = plain(job(TWO_ROOMS, id="two", starts_at=START), omit_empty=True)
    facts.write_text(json.dumps(told))
    out = tmp_path / "two"
    main(["plan", str(facts), "--out", str(out)])
    shutil.copy(facts, out / "job.json")
    return out


def lived(place, *more):
    for word, *told in DAY:
        assert main(["log", str(place), word, *told, *more]) in (0, 1)


def test_a_folders_log_teaches(folder, capsys):
    lived(folder)
    capsys.readouterr()
    assert main(["learn", str(folder)]) == 0
    out = capsys.readouterr().out
    assert "Learned from 1 closed job" in out
    assert "hours to coat" in out


def test_the_books_closed_jobs_teach_and_open_ones_do_not(folder, tmp_path, capsys):
    book = str(tmp_path / "book")
    main(["book", "add", str(folder / "job.json"), "--id", "two", "--book", book])
    main(["book", "add", str(folder / "job.json"), "--id", "open", "--book", book])
    lived("two", "--book", book)
    capsys.readouterr()
    assert main(["learn", "--book", book, "--json"]) == 0
    lessons = json.loads(capsys.readouterr().out)
    assert '"two"' in json.dumps(lessons)
    assert '"open"' not in json.dumps(lessons)


def test_a_house_set_aside_teaches_nothing_and_is_not_planned_with_the_book(
    folder, tmp_path, capsys
):
    book = str(tmp_path / "book")
    main(["book", "add", str(folder / "job.json"), "--id", "two", "--book", book])
    main(["book", "add", str(folder / "job.json"), "--id", "open", "--book", book])
    lived("two", "--book", book)
    for name in ("two", "open"):
        main(["book", "aside", name, "--book", book])
    assert list(closed_in_book(book)) == []
    assert jobs_of_book(book) == []
    main(["book", "back", "open", "--book", book])
    assert [one.id for one in jobs_of_book(book)] == ["open"]
    capsys.readouterr()


def test_the_van_knows_what_the_day_took(folder, tmp_path, capsys):
    lived(folder)
    van = json.loads(VAN.read_text())
    stain = json.loads((folder / "plan.json").read_text())["inputs"]["coats"][0]["stain"]
    van["stock"] = [
        {"id": "can", "kind": "stain", "of": stain, "amount": 30, "unit": "l", "lot": "7"}
    ]
    path, out = tmp_path / "van.json", tmp_path / "then.json"
    path.write_text(json.dumps(van))
    capsys.readouterr()
    assert main(["van", str(path), "--after", str(folder), "--out", str(out)]) == 0
    assert 0 < json.loads(out.read_text())["stock"][0]["amount"] < 30
