"""What a firm's closed jobs taught, kept in its book: plans and live days take it from there."""

import json
from pathlib import Path

import pytest
from tests.job.test_lessons import JOBS, LESSONS
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.main import main
from farwall.facts.plain import plain
from farwall.readers.lessons_json import closed_text, lessons_text
from farwall.store.book import Book
from farwall.web.firm import lessons_of

VAN = str(Path(__file__).parents[2] / "examples" / "van" / "van.json")
START = "2026-06-08T08:00:00+00:00"


@pytest.fixture
def facts(tmp_path):
    path = tmp_path / "two.json"
    told = plain(job(TWO_ROOMS, id="two", starts_at=START), omit_empty=True)
    path.write_text(json.dumps({**told, "samples": [], "coats": told["coats"]}))
    return path


@pytest.fixture
def book(tmp_path, facts, capsys):
    """A book in which the lessons of some closed jobs are kept."""
    address, closed = str(tmp_path / "book"), tmp_path / "closed.jsonl"
    closed.write_text(closed_text(JOBS))
    main(["book", "add", str(facts), "--id", "two", "--book", address])
    assert main(["learn", str(closed), "--book", address, "--keep"]) == 0
    assert "version 1 of its lessons" in capsys.readouterr().err
    return address


def test_learn_keeps_them_in_the_book_and_the_book_is_whole(book):
    with Book.open(book) as opened:
        assert lessons_of(opened) == LESSONS
        assert opened.check() == []


def test_keep_asks_for_a_book(tmp_path, capsys):
    path = tmp_path / "lessons.json"
    path.write_text(lessons_text(LESSONS))
    assert main(["learn", str(path), "--keep"]) == 2
    assert "--book" in capsys.readouterr().err


def test_a_plan_by_the_book_is_the_plan_by_the_file(book, facts, tmp_path, capsys):
    path = tmp_path / "lessons.json"
    path.write_text(lessons_text(LESSONS))
    main(["plan", str(facts), "--out", str(tmp_path / "a"), "--book", book])
    main(["plan", str(facts), "--out", str(tmp_path / "b"), "--lessons", str(path)])
    main(["plan", str(facts), "--out", str(tmp_path / "c")])
    a, b, c = ((tmp_path / name / "plan.json").read_bytes() for name in "abc")
    assert a == b != c


def test_the_log_takes_them_from_the_book_or_from_a_file(book, facts, tmp_path, capsys):
    path = tmp_path / "lessons.json"
    path.write_text(lessons_text(LESSONS))
    main(["plan", str(facts), "--out", str(tmp_path / "a"), "--lessons", str(path)])
    (tmp_path / "a" / "job.json").write_text(facts.read_text())
    plan = json.loads((tmp_path / "a" / "plan.json").read_text())
    coat = plan["inputs"]["coats"][0]["id"]
    end = max(field["end_min"] for field in plan["fields"] if field["coat"] == coat)
    found = []
    for place in (
        [str(tmp_path / "a"), "--lessons", str(path)],
        ["two", "--book", book],
        [str(tmp_path / "a")],
    ):
        main(["log", *place, "coat-done", f"coat={coat}", f"at_min={end}"])
        main(["log", *place, "still-damp", f"coat={coat}", f"at_min={end + 200}"])
        capsys.readouterr()
        main(["log", *place, "--json", f"at_min={end + 201}"])
        found.append(json.loads(capsys.readouterr().out)["now"]["waits"])
    assert found[0] == found[1] != found[2]


@pytest.fixture
def held(monkeypatch):
    """How many books are open."""
    count = [0]
    begins, ends = Book.__init__, Book.close

    def begun(self, *told):
        begins(self, *told)
        count[0] += 1

    def ended(self):
        ends(self)
        count[0] -= 1

    monkeypatch.setattr(Book, "__init__", begun)
    monkeypatch.setattr(Book, "close", ended)
    return count


@pytest.mark.parametrize(
    "words",
    [
        ["log", "two"],
        ["log", "two", "handed-over"],
        ["log", "nobody"],
        ["learn"],
        ["van", VAN, "--after", "two"],
    ],
    ids=["log", "an entry", "a job that is not there", "learn", "van"],
)
def test_a_command_lets_go_of_every_book_that_it_opened(words, book, held):
    """Before, `learn` held one more open for each closed job: of some hundred the system runs out
    of files."""
    if words == ["learn"]:
        main(["log", "two", "handed-over", "--book", book])
        held[0] = 0
    main([*words, "--book", book])
    assert held == [0]
