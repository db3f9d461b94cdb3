"""`farwall book`, from text to exit code."""

import json
import sqlite3
from contextlib import closing

import pytest
from tests.shapes import L_HALL

from farwall.cli.main import main
from farwall.facts.log import Entry
from farwall.facts.plain import plain
from farwall.store.book import Book

AT = "2026-05-04T07:00:00-05:00"


@pytest.fixture
def job(tmp_path):
    path = tmp_path / "l-hall.json"
    facts = plain({"version": 1, "floor": L_HALL.floor, "exits": L_HALL.exits}, omit_empty=True)
    path.write_text(json.dumps(facts))
    return path


@pytest.fixture
def farwall(capsys, tmp_path):
    """Runs `farwall book …` on a book of its own: exit code, what it said, what it complained."""

    def run(*words, book="book"):
        code = main(["book", *map(str, words), "--book", str(tmp_path / book)])
        said = capsys.readouterr()
        return code, said.out, said.err

    return run


@pytest.fixture
def filled(farwall, job, tmp_path):
    farwall("add", job, "--who", "Ann")
    with Book.open(tmp_path / "book") as book:
        said = Entry("a", "l-hall", "mixed", AT, "Bo", about={"coat": "first", "litres": 9.5})
        book.keep([said], received_at=AT)
    return farwall


def test_an_empty_book_says_how_to_begin(farwall):
    code, said, _ = farwall()
    assert code == 0
    assert "farwall book add JOB.json" in said


def test_a_job_is_added_listed_and_shown(filled, job):
    code, said, _ = filled()
    assert code == 0
    assert said.splitlines()[1].split()[:3] == ["l-hall", "1", "1"]
    assert filled("show")[1] == said  # without a job, as without a word
    code, said, _ = filled("show", "l-hall")
    assert code == 0
    assert "mixed         coat first, litres 9.5  (Bo)" in said
    listed = json.loads(filled("--json")[1])
    assert [(one["id"], one["entries"], one["closed"]) for one in listed["jobs"]] == [
        ("l-hall", 1, False)
    ]
    assert json.loads(filled("add", job, "--id", "other", "--json")[1]) == {
        "job": "other",
        "version": 1,
    }


def test_the_facts_come_out_as_a_job_file(filled, tmp_path):
    said = filled("show", "l-hall", "--facts")[1]
    (tmp_path / "again.json").write_text(said)
    code, told, _ = filled("add", tmp_path / "again.json", "--id", "l-hall")
    assert code == 0
    assert "version 1" in told


def test_show_as_json_has_versions_and_entries(filled):
    told = json.loads(filled("show", "l-hall", "--json")[1])
    assert told["versions"][0]["who"] == "Ann"
    assert told["entries"][0]["entry"]["about"] == {"coat": "first", "litres": 9.5}


def test_an_unknown_job_and_a_spoilt_job_file_are_refused(filled, tmp_path):
    farwall = filled
    code, said, complained = farwall("show", "nowhere")
    assert (code, said) == (2, "")
    assert "job nowhere: is not in the book." in complained
    (tmp_path / "bad.json").write_text("{")
    assert farwall("add", tmp_path / "bad.json")[0] == 2


def test_a_job_is_set_aside_listed_so_and_brought_back(filled, tmp_path):
    code, said, _ = filled("aside", "l-hall", "--why", "entered twice", "--who", "Ann")
    assert code == 0
    assert "nothing is erased" in said
    assert "Its log has 1 entry" in said
    assert "farwall book back l-hall" in said
    assert filled()[1].splitlines()[1].split()[4] == "aside"
    assert json.loads(filled("aside", "l-hall", "--json")[1]) == {"job": "l-hall", "aside": True}
    with Book.open(tmp_path / "book") as book:
        assert book.in_hand() == []
        assert [one.entry.word for one in book.entries("l-hall")] == ["mixed", "set-aside"]
    assert filled("back", "l-hall")[0] == 0
    assert filled()[1].splitlines()[1].split()[4] == "open"
    code, _, wrong = filled("aside", "nowhere")
    assert code == 2
    assert "is not in the book" in wrong


def test_check_tells_a_whole_book_from_an_altered_one(filled, tmp_path):
    assert filled("check")[0] == 0
    assert json.loads(filled("check", "--json")[1])["faults"] == []
    with closing(sqlite3.connect(tmp_path / "book" / "book.sqlite")) as connection:
        connection.execute("UPDATE entry SET body = replace(body, '9.5', '8.5')")
        connection.commit()
    code, said, _ = filled("check")
    assert code == 1
    assert "altered" in said
    faults = json.loads(filled("check", "--json")[1])["faults"]
    assert [(one["code"], one["harm"]) for one in faults] == [("altered", True)]


def test_what_merely_lies_about_is_told_and_no_fault(filled, tmp_path):
    with Book.open(tmp_path / "book") as book:
        book.put_file(b"not named yet")
    code, said, _ = filled("check")
    assert code == 0
    assert "(no harm)" in said


def test_a_house_set_aside_is_so_in_a_copy(filled, tmp_path):
    filled("aside", "l-hall")
    filled("out", tmp_path / "open")
    filled("in", tmp_path / "open", book="copy")
    with Book.open(tmp_path / "copy") as copy:
        assert [one.aside for one in copy.jobs()] == [True]
        assert copy.check() == []


def test_backup_restore_out_and_in(filled, tmp_path):
    shown = filled("show", "l-hall", "--json")[1]
    assert filled("backup", tmp_path / "backup")[0] == 0
    assert filled("restore", tmp_path / "backup", book="restored")[0] == 0
    assert filled("show", "l-hall", "--json", book="restored")[1] == shown
    assert filled("out", tmp_path / "out")[0] == 0
    told = json.loads(filled("in", tmp_path / "out", "--json", book="taken-in")[1])
    assert told["folder"] == str(tmp_path / "out")
    assert filled("show", "l-hall", "--json", book="taken-in")[1] == shown
    code, _, complained = filled("in", tmp_path / "out")
    assert code == 2
    assert "with something in it" in complained


def test_restore_wants_to_know_where_to(tmp_path, capsys, monkeypatch):
    monkeypatch.delenv("FARWALL_BOOK", raising=False)
    assert main(["book", "restore", str(tmp_path)]) == 2
    assert "--book" in capsys.readouterr().err


def test_the_book_is_found_by_the_environment(tmp_path, capsys, monkeypatch):
    monkeypatch.setenv("FARWALL_BOOK", str(tmp_path / "of-ours"))
    assert main(["book"]) == 0
    assert str(tmp_path / "of-ours") in capsys.readouterr().out
    monkeypatch.delenv("FARWALL_BOOK")
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    assert main(["book"]) == 0
    assert str(tmp_path / "data" / "farwall" / "book") in capsys.readouterr().out
    assert main(["book", "--book", "mysql://x"]) == 2


@pytest.mark.parametrize("spoilt", [b"not a book at all" * 300, b""])
def test_a_file_that_is_no_book_is_told_calmly(farwall, tmp_path, spoilt):
    (tmp_path / "book").mkdir()
    (tmp_path / "book" / "book.sqlite").write_bytes(spoilt)
    code, said, complained = farwall("check")
    if spoilt:
        assert code == 1
        assert "damaged" in said
        assert farwall()[0] == 2
    else:  # an empty file is how SQLite itself begins
        assert code == 0
    assert "Traceback" not in complained


@pytest.mark.parametrize("doing", [["check"], ["show", "x"], ["backup", "to"], ["out", "to"]])
def test_a_slip_in_the_address_makes_no_new_book(farwall, tmp_path, doing):
    code, _, complained = farwall(*doing, book="slip")
    assert code == 2
    assert "holds no book" in complained
    assert not (tmp_path / "slip").exists()


def test_a_drawing_is_kept_by_what_is_in_it_and_the_book_knows_when_it_is_gone(
    farwall, job, tmp_path
):
    drawing = tmp_path / "l-hall.dxf"
    drawing.write_bytes(b"0\nSECTION invented")
    code, said, _ = farwall("add", job, "--plan-file", drawing)
    assert code == 0
    assert "Its drawing l-hall.dxf is kept" in said
    kept = json.loads(farwall("show", "l-hall", "--json")[1])["drawing"]
    assert (kept["name"], kept["facts"]) == ("l-hall.dxf", 1)
    assert f"drawing l-hall.dxf, of facts 1: file {kept['file']}" in farwall("show", "l-hall")[1]
    assert farwall("check")[0] == 0
    with Book.open(tmp_path / "book") as book:
        assert book.file(kept["file"]) == drawing.read_bytes()
        assert book.check() == []
        (book.where.files / kept["file"][:2] / kept["file"][2:]).unlink()
    code, said, _ = farwall("check")
    assert code == 1
    assert "missing-file" in said


def test_a_drawing_that_is_not_there_adds_nothing(farwall, job, tmp_path):
    code, _, said = farwall("add", job, "--plan-file", tmp_path / "none.dxf")
    assert code == 2
    assert "none.dxf" in said
    assert json.loads(farwall("--json")[1])["jobs"] == []


def test_looking_makes_no_book(tmp_path, capsys):
    nowhere = tmp_path / "slip"
    assert main(["book", "--book", str(nowhere)]) == 0
    assert "holds no job yet" in capsys.readouterr().out
    assert main(["learn", "--book", str(nowhere)]) == 2
    assert main(["log", "lot-9", "--book", str(nowhere)]) == 2
    assert main(["plan-many", "--book", str(nowhere), "--out", str(tmp_path / "out")]) == 2
    assert "holds no book. Look at --book" in capsys.readouterr().err
    assert not nowhere.exists()
