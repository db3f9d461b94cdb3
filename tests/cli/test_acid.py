"""`farwall acid`: from a job file to acid.json, papers, and a short word on each part."""

from __future__ import annotations

import json
import re
from dataclasses import replace

import pytest
from tests.job.acid_day.waste_house import JOB

from farwall.cli.main import main
from farwall.facts.plain import plain
from farwall.job.acid_day.say import WHOLE, WINS
from farwall.papers.acid_files import PAPERS

PARTS = set(WHOLE)


@pytest.fixture
def run(tmp_path, capsys):
    """Ask with some words: exit code, stdout, stderr."""
    path = tmp_path / "job.json"
    path.write_text(json.dumps(plain(JOB, omit_empty=True)), encoding="utf-8")

    def asked(*words):
        code = main(["acid", str(path), *words])
        told = capsys.readouterr()
        return code, told.out, told.err

    return asked


def test_a_few_lines_of_each_part_and_where_the_rest_is(run, tmp_path):
    code, out, _ = run("--out", str(tmp_path / "acid"))
    assert code == 0
    assert len(out.splitlines()) < 40
    assert all(f"--part {one}" in out for one in PARTS)
    assert out.rstrip().endswith(WINS)
    assert {one.name for one in (tmp_path / "acid").iterdir()} == {"acid.json", *PAPERS}


def test_a_part_is_told_whole_and_alone(run, tmp_path):
    _, out, _ = run("--out", str(tmp_path / "acid"), "--part", "washing")
    assert out.startswith("Wash day\n")
    assert "Strength" not in out
    assert "--part" not in out


def test_json_is_the_file_that_is_written_without_false_figures(run, tmp_path):
    _, out, _ = run("--out", str(tmp_path / "acid"), "--json")
    document = json.loads(out)
    assert document == json.loads((tmp_path / "acid" / "acid.json").read_text("utf-8"))
    assert set(document) == {"job", "inputs_hash", "starts_at", "version", *PARTS}
    assert not [one for one in numbers(document) if one != float(f"{one:.6g}")]


def numbers(value):
    inner = list(value.values()) if isinstance(value, dict) else value
    if isinstance(inner, float):
        yield inner
    if isinstance(inner, list):
        for one in inner:
            yield from numbers(one)


def test_what_is_no_part_and_no_folder_is_refused(run, tmp_path):
    code, _, err = run("--out", str(tmp_path / "acid"), "--part", "fmes")
    assert code == 2
    assert "there is no part fmes" in err
    code, _, err = run()
    assert code == 2
    assert "--out" in err


@pytest.mark.parametrize(("units", "us"), [("us", True), ("metric", False)])
def test_hours_are_told_by_the_units_of_the_job_and_coats_by_number(tmp_path, capsys, units, us):
    path = tmp_path / "job.json"
    told = replace(JOB, wishes=replace(JOB.wishes, units=units))
    path.write_text(json.dumps(plain(told, omit_empty=True)), encoding="utf-8")
    parts = ("--part", "fumes", "--part", "people", "--part", "washing")
    main(["acid", str(path), "--out", str(tmp_path / "acid"), *parts])
    out = capsys.readouterr().out
    halves = re.findall(r"\b\d+:\d\d\b( [ap]m)?", out)
    assert len(halves) > 10
    assert {bool(half) for half in halves} == {us}
    assert ": coat 1 " in out
