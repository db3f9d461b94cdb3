"""`farwall check`: from a file to an exit code and calm words."""

from __future__ import annotations

import json
from copy import deepcopy

import pytest
from tests.spray.hand_day import rehashed
from tests.spray.hand_plans import PLANS

from farwall.cli.main import main

GOOD = PLANS["two rooms with a door between"]()


@pytest.fixture
def written(tmp_path):
    """Write a value as a file and give its path as text."""

    def write(value, name="plan.json"):
        path = tmp_path / name
        text = value if isinstance(value, str | bytes) else json.dumps(value)
        path.write_bytes(text if isinstance(text, bytes) else text.encode())
        return str(path)

    return write


def job_of(plan):
    """The job that a plan was made from, its bare facts."""
    inputs = plan["inputs"]
    floor = {"rooms": inputs["floor"]["rooms"]}
    floor |= {key: inputs[key] for key in ("openings", "fixtures", "saw_cuts")}
    return deepcopy({"version": 1, "floor": floor, "exits": inputs["exits"]})


def spoilt():
    plan = deepcopy(GOOD)
    plan["fields"][0]["refills"] = []
    return plan


def test_a_plan_that_stands_gives_0(written, capsys):
    assert main(["check", written(GOOD)]) == 0
    assert "The plan stands" in capsys.readouterr().out


def test_a_plan_with_faults_gives_1_and_says_them(written, capsys):
    assert main(["check", written(spoilt())]) == 1
    out = capsys.readouterr().out
    assert "tank-dry" in out
    assert "Do not spray by this plan" in out


def test_json_is_one_document_with_the_promised_keys(written, capsys):
    assert main(["check", written(spoilt()), "--json"]) == 1
    shown = capsys.readouterr()
    faults = json.loads(shown.out)["faults"]
    assert shown.err == ""
    assert {frozenset(fault) for fault in faults} == {
        frozenset({"code", "field", "at_min", "what"})
    }
    assert "tank-dry" in {fault["code"] for fault in faults}


def test_json_of_a_plan_that_stands(written, capsys):
    assert main(["check", written(GOOD), "--json"]) == 0
    assert json.loads(capsys.readouterr().out) == {"faults": []}


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("", "not JSON"),
        ("{", "not JSON"),
        ("[]", "an object with the keys of a plan"),
        ("{}", "inputs: is missing"),
        ('{"a": 1, "a": 2}', "stands twice"),
        ('{"version": NaN}', "NaN is no JSON number"),
        ('{"version": 1e999}', "inputs: is missing"),
        ("[" * 100_000, "nested too deep"),
        (b"\xff\xfe\x00", "UTF-8"),
        ('{"inputs": {"a": ' + "9" * 5000 + "}}", "not JSON"),
    ],
)
def test_what_cannot_be_read_gives_2_and_a_calm_sentence(written, capsys, text, says):
    assert main(["check", written(text)]) == 2
    shown = capsys.readouterr()
    assert shown.out == ""
    assert says in shown.err
    assert "Traceback" not in shown.err


def test_a_file_that_is_not_there_gives_2(tmp_path, capsys):
    assert main(["check", str(tmp_path / "none.json")]) == 2
    assert "none.json" in capsys.readouterr().err


def test_a_folder_gives_2(tmp_path, capsys):
    assert main(["check", str(tmp_path)]) == 2
    assert "Traceback" not in capsys.readouterr().err


def test_the_job_that_the_plan_was_made_from_agrees(written):
    assert main(["check", written(GOOD), "--job", written(job_of(GOOD), "job.json")]) == 0


def test_another_job_gives_1_and_says_where(written, capsys):
    job = job_of(GOOD)
    job["floor"]["openings"][0]["kind"] = "cased"
    assert main(["check", written(GOOD), "--job", written(job, "job.json"), "--json"]) == 1
    faults = json.loads(capsys.readouterr().out)["faults"]
    assert [fault["code"] for fault in faults] == ["other-job"]
    assert "inner" in faults[0]["what"]


def test_a_job_that_cannot_be_read_gives_2(written, capsys):
    assert main(["check", written(GOOD), "--job", written("{}", "job.json")]) == 2
    assert "job.json" in capsys.readouterr().err


def test_a_hash_made_right_after_editing_is_caught_by_the_job(written, capsys):
    """Wider open floor by a changed saw cut: the plan agrees with itself, not with the job."""
    job = job_of(GOOD)
    plan = deepcopy(GOOD)
    plan["inputs"]["saw_cuts"] = [{"id": "new", "line": [[0, 1], [3, 1]]}]
    plan = rehashed(plan)
    assert main(["check", written(plan)]) == 0
    assert main(["check", written(plan), "--job", written(job, "job.json")]) == 1
    assert "saw cut 'new'" in capsys.readouterr().out
