"""The command as a process of its own: all it says is written before it ends, with its code."""

from __future__ import annotations

import json
import subprocess
import sys

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

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
