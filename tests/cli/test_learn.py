"""`farwall learn`, from text to exit code."""

import json
from dataclasses import replace
from pathlib import Path

import pytest
from tests.papers.office.grounds import bare_job

from farwall.bench.learn_firms import closed_jobs, firm
from farwall.cli.main import main
from farwall.facts.job import Survey
from farwall.readers.job_json import job_to_text
from farwall.readers.lessons_json import closed_text

ROOT = Path(__file__).resolve().parents[2]
JOBS = [one.job for one in closed_jobs(firm(7), count=12)]


@pytest.fixture
def closed(tmp_path):
    path = tmp_path / "closed.json"
    path.write_text(closed_text(JOBS))
    return path


def run(capsys, *words):
    code = main(["learn", *map(str, words)])
    told = capsys.readouterr()
    return code, told.out, told.err


def test_the_table_says_what_from_how_many_jobs_and_how_far_it_moved(capsys, closed):
    code, out, _ = run(capsys, closed)
    assert code == 0
    assert out.startswith("Learned from 12 closed jobs, the last of 2022-02-08.")
    line = next(one for one in out.splitlines() if one.startswith("coverage of coat 1 "))
    assert "ft²/US gal" in line
    assert line.split()[-2:] == ["+12", "%"]
    assert all(len(one) < 130 for one in out.splitlines())


def test_lessons_are_written_looked_into_and_switched_off(capsys, closed, tmp_path):
    lessons = tmp_path / "lessons.json"
    assert run(capsys, closed, "--out", lessons)[0] == 0
    code, out, _ = run(capsys, lessons, "--why", "coverage of coat 1: hard trowel")
    assert code == 0
    assert "learned from 5 jobs" in out
    assert "firm-7-2" in out
    assert "common practice" in out.splitlines()[-1]
    code, out, _ = run(capsys, lessons, "--off", "call-backs", "--json")
    told = json.loads(out)
    assert [one["on"] for one in told["lessons"] if one["name"] == "call-backs"] == [False]


def test_a_job_left_out_and_forgetting_are_said(capsys, closed):
    code, out, _ = run(capsys, closed, "--without", "firm-7-3", "--forget-jobs", 10)
    assert code == 0
    first = out.splitlines()[0]
    assert first == (
        "Learned from 11 closed jobs, the last of 2022-02-08, without firm-7-3; a job counts half "
        "once 10 have followed it."
    )


def test_no_closed_job_leaves_common_practice_and_says_so(capsys, tmp_path):
    (tmp_path / "none.json").write_text("[]")
    code, out, _ = run(capsys, tmp_path / "none.json")
    assert code == 0
    assert "stay those of common practice" in out


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["--why", "coverage of coat"], "Did you mean coverage of coat 1"),
        (["--off", "songs"], "there is no lesson “songs”"),
        (["--without", "songs"], "there is no job “songs”"),
    ],
)
def test_unknown_names_are_the_callers_mistake(capsys, closed, words, said):
    code, _, err = run(capsys, closed, *words)
    assert code == 2
    assert said in err


def test_mistakes_of_several_files_come_together(capsys, tmp_path):
    for name in ("a", "b"):
        (tmp_path / f"{name}.json").write_text('{"version": 1, "id": "x"}')
    code, _, err = run(capsys, tmp_path / "a.json", tmp_path / "b.json")
    assert code == 2
    assert "a.json" in err
    assert "b.json" in err


def test_leaving_out_needs_the_jobs_themselves(capsys, closed, tmp_path):
    run(capsys, closed, "--out", tmp_path / "l.json")
    code, _, err = run(capsys, tmp_path / "l.json", "--without", "firm-7-3")
    assert code == 2
    assert "needs the closed jobs themselves" in err


def test_a_plan_with_lessons_is_another_and_is_kept_apart(capsys, closed, tmp_path):
    """The same job planned without, with, and without lessons again, kept plans and all."""
    house = tmp_path / "house.json"
    house.write_text(job_to_text(replace(bare_job(), survey=Survey(slab_c=21.0, air_c=21.0))))
    lessons = tmp_path / "lessons.json"
    run(capsys, closed, "--out", lessons)
    told = []
    for n, words in enumerate(([], ["--lessons", str(lessons), "--sprayer", "person 1"], [])):
        main(["plan", str(house), "--out", str(tmp_path / str(n)), *words])
        told.append(json.loads((tmp_path / str(n) / "plan.json").read_text()))
    learned = [one["source"] for one in told[1]["grounds"] if one["rank"] == "learned"]
    assert any(one.startswith("learned from 12 jobs") for one in learned)
    assert told[0] == told[2] != told[1]


def test_a_sprayer_needs_lessons(capsys, tmp_path):
    house = str(ROOT / "examples" / "thistle-end" / "job.json")
    assert main(["plan", house, "--out", str(tmp_path / "x"), "--sprayer", "Ada"]) == 2
    assert "it goes with --lessons" in capsys.readouterr().err
