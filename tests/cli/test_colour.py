"""`farwall colour fit` and `next`: the invented house with its log, and a house without samples."""

from __future__ import annotations

import json

import pytest
from tests.job.colour.fennel import FOLDER, facts

from farwall.cli.main import main

JOB = str(FOLDER / "job.json")


@pytest.fixture
def run(capsys):
    """Ask with some words: exit code, stdout, stderr."""

    def asked(*words):
        code = main(["colour", *words])
        told = capsys.readouterr()
        return code, told.out, told.err

    return asked


def test_next_says_what_to_lay_and_why(run):
    code, out, err = run("next", JOB, "--log", str(FOLDER))
    assert (code, err) == (0, "")
    assert out.startswith("Lay umber, 1:")
    assert "Chance of too dark" in out
    assert "common practice, no source" in out
    assert "Too dark is final" in out


def test_next_as_json_of_one_room(run):
    code, out, _ = run("next", JOB, "--log", str(FOLDER / "log.jsonl"), "--room", "bath", "--json")
    document = json.loads(out)
    assert code == 0
    assert document["rooms"] == ["bath"]
    assert document["chance_too_dark"]["value"] <= document["chance_too_dark"]["most"] == 0.03


def test_fit_as_json(run):
    code, out, _ = run("fit", JOB, "--json")
    document = json.loads(out)
    assert code == 0
    assert {one["stain"] for one in document["swatches"]} == {"umber", "moss"}


def test_a_house_without_samples_is_no_answer(run, tmp_path):
    bare = tmp_path / "job.json"
    bare.write_text(json.dumps({**facts(), "samples": []}), encoding="utf-8")
    for part in ("next", "fit"):
        code, out, err = run(part, str(bare))
        assert (code, out) == (1, "")
        assert "Approve a sample" in err


def test_an_unknown_room_is_the_callers_mistake(run):
    code, _, err = run("next", JOB, "--room", "attic")
    assert code == 2
    assert "great-room" in err
