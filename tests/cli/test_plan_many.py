"""`farwall plan-many`: a folder of jobs to a folder of plans, an exit code and calm words."""

from __future__ import annotations

import io
import json
import re

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import HALL_OF_THREE, job

from farwall.cli.main import main
from farwall.cli.many.told import Progress
from farwall.facts.plain import plain


@pytest.fixture
def folder(tmp_path):
    """Two small jobs, one of them in a folder of its own, and a file of Farwall's that is none."""
    home = tmp_path / "jobs"
    (home / "first").mkdir(parents=True)
    (home / "first" / "job.json").write_text(json.dumps(plain(job(TWO_ROOMS))))
    (home / "first" / "plan.json").write_text("{}")
    (home / "second.json").write_text(json.dumps(plain(job(HALL_OF_THREE))))
    return home


def many(folder, out, *words):
    return main(["plan-many", str(folder), "--out", str(out), "--workers", "1", *words])


def test_every_job_gets_its_folder_and_a_line(folder, tmp_path, capsys):
    out = tmp_path / "plans"
    assert many(folder, out) == 0
    assert "2  planned" in capsys.readouterr().out
    assert {path.name for path in out.iterdir()} == {"first", "second", "outcomes.jsonl"}
    for name in ("first", "second"):
        assert (out / name / "run-sheet.pdf").read_bytes().startswith(b"%PDF")
        assert main(["check", str(out / name / "plan.json")]) == 0


def test_a_no_names_rooms_hours_and_the_units_of_its_job(tmp_path):
    """A hand so slow that every edge dies, in a job in feet."""
    home = tmp_path / "jobs"
    home.mkdir()
    facts = plain(job(TWO_ROOMS)) | {"tools": {"tank_l": 40, "spray_m2_min": 0.35}}
    (home / "slow.json").write_text(json.dumps(facts))
    many(home, tmp_path / "plans", "--no-pages")
    noted = (tmp_path / "plans" / "outcomes.jsonl").read_text().splitlines()
    why = json.loads(noted[-1])["why"]
    dead = next(one for one in why if one.startswith("dead-edge: "))
    assert re.search(r"in Back room at \((\d+' )?\d+½?\"", dead)
    assert " am (" in dead
    assert "band 1.1." in dead
    assert any(one.startswith("field 1.1 (") and "Back room" in one for one in why)


def test_the_plan_is_the_one_that_plan_writes(folder, tmp_path):
    many(folder, tmp_path / "plans", "--no-pages")
    main(["plan", str(folder / "first" / "job.json"), "--out", str(tmp_path / "alone")])
    one = (tmp_path / "plans" / "first" / "plan.json").read_bytes()
    assert one == (tmp_path / "alone" / "plan.json").read_bytes()


def test_what_was_planned_is_not_planned_again_and_what_changed_is(folder, tmp_path, capsys):
    out = tmp_path / "plans"
    many(folder, out, "--no-pages")
    (folder / "second.json").write_text(json.dumps(plain(job(TWO_ROOMS, name="changed"))))
    capsys.readouterr()
    assert many(folder, out, "--no-pages", "--json") == 0
    told = json.loads(capsys.readouterr().out)
    assert told["as_before"] == 1
    assert many(folder, out, "--no-pages", "--fresh", "--json") == 0
    assert json.loads(capsys.readouterr().out)["as_before"] == 0


def test_a_run_cut_short_goes_on_where_it_stood(folder, tmp_path, capsys, monkeypatch):
    from farwall.cli.many import workers

    out, true = tmp_path / "plans", workers.here

    def cut_short(jobs, how):
        yield next(true(jobs, how))
        raise KeyboardInterrupt

    monkeypatch.setattr(workers, "here", cut_short)
    assert many(folder, out, "--no-pages") == 130
    told = capsys.readouterr()
    assert not told.out
    assert "Stopped: 1 of 2 jobs done and kept" in told.err
    monkeypatch.setattr(workers, "here", true)
    assert many(folder, out, "--no-pages", "--json") == 0
    assert json.loads(capsys.readouterr().out)["as_before"] == 1


def test_a_bad_job_is_told_and_gives_1(folder, tmp_path, capsys):
    (folder / "bad.json").write_text('{"version": 1}')
    assert many(folder, tmp_path / "plans", "--no-pages") == 1
    out = capsys.readouterr().out
    assert "1  refused" in out
    assert "bad: refused." in out
    assert "2  planned" in out


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ([], "which jobs?"),
        (["nowhere"], "cannot be read"),
        (["EMPTY"], "holds no job"),
        (["JOBS/second.json", "JOBS"], "has the same id"),
        (["JOBS", "--workers", "0"], "at least one"),
    ],
)
def test_what_cannot_be_is_refused_calmly(folder, tmp_path, capsys, words, says):
    (tmp_path / "empty").mkdir()
    there = {"EMPTY": str(tmp_path / "empty"), "JOBS": str(folder)}
    words = [word.replace("JOBS", str(folder)) if "/" in word else there.get(word, word)
             for word in words]  # fmt: skip
    assert main(["plan-many", *words, "--out", str(tmp_path / "plans")]) == 2
    assert says in capsys.readouterr().err


def test_the_line_of_progress_by_hand():
    """By hand: 30 of 120 in 60 s leaves 90 at 2 s each, 180 s, three minutes."""
    progress = Progress(120, out=io.StringIO())
    progress._done = 30
    line = progress.line(60.0)
    assert line == "[======..................] 30 of 120 jobs, about 3 min left"


def test_jobs_of_the_book_are_planned_and_their_plans_kept_there(tmp_path, capsys):
    from farwall.store.book import Book

    at = "2026-06-08T08:00:00+00:00"
    facts = json.loads(json.dumps(plain(job(TWO_ROOMS), omit_empty=True)))
    with Book.open(tmp_path / "book") as book:
        book.put_facts("two", facts, who="Ann", at=at)
        book.put_facts("none", {"version": 1}, who="Ann", at=at)
    words = ["--book", str(tmp_path / "book"), "--out", str(tmp_path / "plans"), "--no-pages"]
    assert main(["plan-many", *words, "--workers", "1"]) == 1
    assert "none: refused" in capsys.readouterr().out
    with Book.open(tmp_path / "book") as book:
        kept = book.document("plan", "two")
        assert book.document("plan", "none") is None
    assert kept == json.loads((tmp_path / "plans" / "two" / "plan.json").read_text())
