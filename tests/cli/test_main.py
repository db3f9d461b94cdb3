"""The command as a process of its own: all it says is written before it ends, with its code."""

from __future__ import annotations

import json
import subprocess
import sys

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.main import main
from farwall.facts.plain import plain

ITSELF = "import sys; from farwall.cli.main import main; sys.exit(main())"


@pytest.fixture
def house(tmp_path):
    """Two rooms as a job file."""
    path = tmp_path / "job.json"
    path.write_text(json.dumps(plain(job(TWO_ROOMS))), encoding="utf-8")
    return path


def farwall(*words, **more):
    return subprocess.run(
        [sys.executable, "-c", ITSELF, *map(str, words)], text=True, check=False, **more
    )


def test_a_plan_is_told_whole_in_a_pipe_and_ends_with_its_code(house, tmp_path):
    done = farwall("plan", house, "--out", tmp_path / "plan", "--json", capture_output=True)
    assert (done.returncode, done.stderr) == (0, "")
    assert json.loads(done.stdout) == json.loads((tmp_path / "plan" / "plan.json").read_text())


def test_a_mistake_of_the_caller_keeps_its_code(tmp_path):
    done = farwall("plan", tmp_path / "none.json", "--out", tmp_path / "p", capture_output=True)
    assert (done.returncode, done.stdout) == (2, "")
    assert "none.json cannot be read" in done.stderr


@pytest.mark.parametrize(
    ("word", "then"),
    [
        ("my jobs/job.json", "farwall plan 'my jobs/job.json' --out DIR"),
        ("house.dxf", "farwall read house.dxf"),
        ("plna", "Did you mean plan?"),
    ],
)
def test_a_word_that_is_no_command_is_told_what_to_write(word, then, capsys):
    assert main([word]) == 2
    told = capsys.readouterr().err
    assert told.startswith(f"{word}: there is no such command.")
    assert then in told
