"""`farwall go`: from a job file to a verdict, an exit code and a page."""

from __future__ import annotations

import json
from dataclasses import replace

import pypdfium2
import pytest
from tests.job.go.jobs import GOOD, surveyed
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job
from tests.strategies.weather import epw_text

from farwall.cli.main import main
from farwall.facts.checks import Morning
from farwall.facts.job import Survey
from farwall.facts.plain import plain
from farwall.facts.sealer import Sealer

BARE = job(TWO_ROOMS, survey=Survey())


@pytest.fixture
def run(tmp_path, capsys):
    """Ask about a job with some words on the command line: exit code, stdout, stderr."""

    def asked(facts, *words, command="go"):
        path = tmp_path / "job.json"
        path.write_text(json.dumps(plain(facts)), encoding="utf-8")
        code = main([command, str(path), *words])
        shown = capsys.readouterr()
        return code, shown.out, shown.err

    return asked


@pytest.mark.parametrize(
    ("facts", "code", "word"),
    [
        (GOOD, 0, "Go."),
        (surveyed(trades="zones"), 0, "Go, with work"),
        (surveyed(acid_before="whole"), 1, "No."),
        (BARE, 1, "Not yet"),
    ],
    ids=["go", "go with", "no", "not yet"],
)
def test_the_exit_code_is_the_verdict(run, facts, code, word):
    found, out, err = run(facts)
    assert (found, err) == (code, "")
    assert word in out.splitlines()[0]


def test_json_holds_verdict_findings_and_tests_and_nothing_else_on_stdout(run):
    code, out, _ = run(surveyed(waste="septic", moisture=()), "--json")
    told = json.loads(out)
    assert code == 1
    assert told["verdict"] == "no"
    first = told["findings"][0]
    assert {"rule", "verdict", "reason", "change", "rank", "source", "weight"} <= set(first)
    assert first["rule"] == "waste route"
    assert {one["test"] for one in told["tests"]} == {"meter", "D4263", "F1869", "F2170", "D4262"}


def test_windows_to_seal_come_with_weather(run, tmp_path):
    weather = tmp_path / "place.epw"
    weather.write_text(epw_text(), encoding="latin-1")
    facts = replace(GOOD, sealer=Sealer("water acrylic"), starts_at="2026-05-14T08:00:00-06:00")
    _, out, _ = run(facts, "--weather", str(weather), "--json")
    told = json.loads(out)["sealing"]
    assert told["sealer"] == "water acrylic"
    assert len(told["hours"]) == 240
    assert told["windows"][0]["starts_at"] == told["hours"][0]["starts_at"]
    assert {one["word"] for one in told["hours"]} <= {"go", "care", "no"}
    _, out, _ = run(facts, "--weather", str(weather))
    assert "Sealing: water acrylic: slab 50 °F (10 °C)" in out
    assert "label wins" in out


def test_without_weather_and_readings_nothing_is_said_of_sealing(run):
    assert json.loads(run(GOOD, "--json")[1])["sealing"] is None
    read = surveyed(rh_percent=45)
    assert json.loads(run(read, "--json")[1])["sealing"]["windows"][0]["word"] == "go"


def test_the_page_is_written_and_holds_what_was_found(run, tmp_path):
    code, out, _ = run(surveyed(acid_before="whole"), "--out", str(tmp_path / "out"))
    assert code == 1
    assert "go.pdf" in out
    page = pypdfium2.PdfDocument(tmp_path / "out" / "go.pdf")
    text = page[0].get_textpage().get_text_bounded()
    assert "Go or no-go" in text
    assert "the lime that colour needs is gone" in text
    assert "owner or builder" in text


def test_all_mistakes_come_at_once(tmp_path, capsys):
    facts = plain(GOOD)
    facts["survey"]["film"] = "wax"
    facts["survey"]["patches"] = [{"id": "p", "room": "attic"}]
    facts["survey"]["moisture"] = [{"kind": "F1869", "sheet": "dry"}]
    facts["sealer"] = {"recoat_from_h": 9, "recoat_to_h": 2}
    facts["morning"] = {"tip_l_min": -1}
    path = tmp_path / "job.json"
    path.write_text(json.dumps(facts), encoding="utf-8")
    assert main(["go", str(path)]) == 2
    said = capsys.readouterr().err
    for place in ("survey.film", "survey.patches", "survey.moisture[0]", "sealer", "morning"):
        assert place in said
    assert "survey.patched" in said


def test_a_no_is_the_verdict_of_the_plan_too(run, tmp_path):
    out = str(tmp_path / "plan")
    code, said, _ = run(surveyed(acid_before="whole"), "--out", out, command="plan")
    assert code == 1
    assert said.startswith("No-go: past acid.")
    assert (tmp_path / "plan" / "run-sheet.pdf").exists()
    told = json.loads((tmp_path / "plan" / "plan.json").read_text())["go"]
    assert told["verdict"] == "no"
    code, said, _ = run(BARE, "--out", out, command="plan")
    assert code == 0, "open questions do not stop a plan from being drawn"
    assert "Go or no-go: not yet" in said


def test_the_mornings_flow_plans_again_and_says_what_changed(run, tmp_path):
    weak = replace(GOOD, morning=Morning(tip_l_min=0.4))
    code, said, _ = run(weak, "--out", str(tmp_path / "plan"), command="plan")
    assert code == 0
    assert "Since the morning's check: Spray rate 2.00 m²/min, before 3.00." in said


@pytest.mark.parametrize(
    "morning",
    [Morning(tip_l_min=0.4), Morning(tip_l_min=2.0), Morning(spare_tight=False)],
    ids=["weak tip", "strong tip", "leak"],
)
def test_a_plan_of_the_morning_is_the_plan_of_its_job(run, tmp_path, morning):
    job_now = replace(GOOD, morning=morning)
    run(job_now, "--out", str(tmp_path / "plan"), command="plan")
    plan = str(tmp_path / "plan" / "plan.json")
    assert main(["check", plan, "--job", str(tmp_path / "job.json")]) == 0


def test_a_plan_from_before_the_morning_is_another_jobs(run, tmp_path):
    run(GOOD, "--out", str(tmp_path / "plan"), command="plan")
    (tmp_path / "job.json").write_text(
        json.dumps(plain(replace(GOOD, morning=Morning(tip_l_min=0.4)))), encoding="utf-8"
    )
    plan = str(tmp_path / "plan" / "plan.json")
    assert main(["check", plan, "--job", str(tmp_path / "job.json")]) == 1
