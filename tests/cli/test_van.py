"""`farwall van`: its state, for a job, after one."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.main import main
from farwall.facts.plain import plain

EXAMPLE = Path(__file__).resolve().parents[2] / "examples" / "van" / "van.json"


@pytest.fixture
def van(tmp_path):
    return shutil.copy(EXAMPLE, tmp_path / "van.json")


def test_its_state_is_told(van, capsys):
    assert main(["van", str(van)]) == 0
    out = capsys.readouterr().out
    assert "old white (cheap, 2.0 gal): NOT for this job" in out
    assert "walnut-a: 2.01 gal (7.6 L) of walnut, lot 7" in out


def test_a_job_gets_a_sprayer_a_spare_and_a_list(van, tmp_path, capsys):
    path = tmp_path / "job.json"
    path.write_text(json.dumps(plain(job(TWO_ROOMS))))
    assert main(["van", str(van), "--job", str(path), "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert (told["sprayer"], told["spare"]) == ("green", "blue")
    assert {one["need"]["kind"] for one in told["shopping"]} >= {"stain", "tape", "gloves"}
    assert main(["van", str(van), "--job", str(path)]) == 0
    assert "Take green; beside it blue." in capsys.readouterr().out


def test_a_van_without_a_spare_is_a_no(van, tmp_path, capsys):
    told = json.loads(Path(van).read_text())
    told["sprayers"] = told["sprayers"][:1]
    Path(van).write_text(json.dumps(told))
    path = tmp_path / "job.json"
    path.write_text(json.dumps(plain(job(TWO_ROOMS))))
    assert main(["van", str(van), "--job", str(path)]) == 1
    assert "NO sound spare" in capsys.readouterr().out


def test_after_a_job_the_file_says_what_is_left(van, tmp_path, capsys):
    out = tmp_path / "then.json"
    words = ["--used", "sprayer=blue:0.71", "tape-1=120", "--on", "2026-06-08", "--out", str(out)]
    assert main(["van", str(van), *words]) == 0
    then = json.loads(out.read_text())
    assert then["sprayers"][0]["uses"] == 12
    assert next(one for one in then["stock"] if one["id"] == "tape-1")["amount"] == 45
    assert "tape-1: 148 ft (45 m) of tape" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["--used", "sprayer=blue"], "which day"),
        (["--used", "sprayer=bleu", "--on", "2026-06-08"], "no sprayer of this name"),
        (["--plan", "plan.json"], "whose floor"),
    ],
)
def test_what_is_missing_is_asked_for(van, capsys, words, says):
    assert main(["van", str(van), *words]) == 2
    assert says in capsys.readouterr().err


def test_the_day_of_the_job_leaves_out_what_is_past_its_own(van, tmp_path, capsys):
    path = tmp_path / "job.json"
    path.write_text(json.dumps(plain(job(TWO_ROOMS))))

    def bought(day):
        main(["van", str(van), "--job", str(path), "--on", day, "--json"])
        lines = json.loads(capsys.readouterr().out)["shopping"]
        return next(one["buy"] for one in lines if one["need"]["kind"] == "cartridges")

    assert bought("2026-05-31") == 0
    assert bought("2026-06-08") == 1
    assert main(["van", str(van), "--job", str(path), "--on", "tomorrow"]) == 2
    assert "--on: tomorrow is no day." in capsys.readouterr().err


def test_a_lot_that_the_van_does_not_have_is_told_with_those_it_has(van, capsys):
    words = ["--used", "stain=walnut:9.5:lot-7", "--on", "2026-06-08"]
    assert main(["van", str(van), *words]) == 0
    out = capsys.readouterr().out
    assert "2.51 gal (9.5 L) of walnut of lot lot-7 more were used than were there." in out
    assert "The van's list has lot 7, 9 of it." in out
