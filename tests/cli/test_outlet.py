"""What is printed where not every letter can be shown: simpler letters, and never an error."""

import json
import os
import subprocess
import sys

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.outlet import simpler
from farwall.facts.plain import plain

ITSELF = "import sys; from farwall.cli.main import main; sys.exit(main())"


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("2,100 ft²", "2,100 ft2"),
        ("70 °F", "70 deg F"),
        ("12 × 14 ft", "12 x 14 ft"),
        ("Baño de señoras", "Bano de senoras"),
        ("5½ in…", "51/2 in..."),
        ("床", "?"),
    ],
)
def test_each_letter_by_its_nearest(text, said):
    assert simpler(text) == said


@given(st.text())
def test_any_text_comes_out_in_plain_letters_and_plain_ones_as_they_are(text):
    assert simpler(text).isascii()
    if text.isascii():
        assert simpler(text) == text


@pytest.fixture
def house(tmp_path):
    """Two rooms as a job file, one of them with a name that few consoles can show."""
    told = plain(job(TWO_ROOMS))
    told["floor"]["rooms"][0]["name"] = "Baño 床"
    path = tmp_path / "job.json"
    path.write_text(json.dumps(told), encoding="utf-8")
    return path


def said(*words, encoding):
    return subprocess.run(
        [sys.executable, "-c", ITSELF, *map(str, words)], check=False, capture_output=True,
        env={**os.environ, "PYTHONIOENCODING": encoding},
    )  # fmt: skip


@pytest.mark.parametrize(("encoding", "name"), [("ascii", b"Bano ?"), ("cp1252", b"Ba\xf1o ?")])
def test_a_plan_is_told_whole_on_a_narrow_console(encoding, name, house, tmp_path):
    done = said("plan", house, "--out", tmp_path / "plan", encoding=encoding)
    assert (done.returncode, done.stderr) == (0, b"")
    assert name in done.stdout


def test_json_is_utf_8_wherever_it_goes(house, tmp_path):
    done = said("plan", house, "--out", tmp_path / "plan", "--json", encoding="ascii")
    assert (done.returncode, done.stderr) == (0, b"")
    rooms = json.loads(done.stdout.decode("utf-8"))["inputs"]["floor"]["rooms"]
    assert rooms[0]["name"] == "Baño 床"
