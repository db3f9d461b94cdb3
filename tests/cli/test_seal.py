"""`farwall seal`: from a job file to seal.json, a sheet, a drawing and an exit code."""

from __future__ import annotations

import json
import re
from dataclasses import replace

import pypdfium2
import pytest
from tests.job.go.jobs import GOOD
from tests.midday import day_of

from farwall.cli.main import main
from farwall.facts.checks import Watch
from farwall.facts.job import Wishes
from farwall.facts.plain import plain
from farwall.facts.sealer import Sealer
from farwall.papers.json_text import json_text
from farwall.readers.plan_json import plan_to_dict, read_plan

START = "2026-05-14T08:00:00-06:00"
CLEAN = Watch(rinse_ph=7.5, rag="clean")
SOLVENT = Sealer(type="solvent acrylic", solvent_g_l=600, solvent_limit_mg_m3=500)
JOB = replace(GOOD, starts_at=START, sealer=SOLVENT, watch=CLEAN)


@pytest.fixture
def run(tmp_path, capsys):
    """Seal a job with some words on the command line: exit code, stdout, stderr, folder."""

    def asked(facts, *words):
        path = tmp_path / "job.json"
        path.write_text(json.dumps(plain(facts, omit_empty=True)), encoding="utf-8")
        code = main(["seal", str(path), *words])
        told = capsys.readouterr()
        return code, told.out, told.err

    return asked


def test_three_files_are_written_and_the_checker_reads_the_plan(run, tmp_path, capsys):
    code, out, _ = run(JOB, "--out", str(tmp_path / "day"))
    assert code == 0
    assert {one.name for one in (tmp_path / "day").iterdir()} == {
        "seal.json", "seal.svg", "seal-sheet.pdf"
    }  # fmt: skip
    assert "Replayed on the floor: nobody steps on wet sealer" in out
    assert main(["check", str(tmp_path / "day" / "seal.json")]) == 0
    assert "The plan stands" in capsys.readouterr().out
    assert {field.coat for field in read_plan(tmp_path / "day" / "seal.json").fields} == {
        "seal-1", "seal-2"
    }  # fmt: skip


def test_the_sheet_says_hours_waits_cautions_and_boxes_to_tick(run, tmp_path):
    run(JOB, "--out", str(tmp_path / "day"))
    pdf = pypdfium2.PdfDocument(tmp_path / "day" / "seal-sheet.pdf")
    text = " ".join(page.get_textpage().get_text_range() for page in pdf).replace("\r\n", " ")
    for words in (
        "Seal day", "Coat 1", "Coat 2", "Test patch first", "abrade first", "hour begun",
        "dew point", "pilot lights", "air changes an hour", "licensed practice win",
        "turned", "start only with",
    ):  # fmt: skip
        assert words in text
    assert "tank" not in text
    assert "spray" not in text


def test_the_drawing_speaks_of_laying_and_shows_both_coats(run, tmp_path):
    run(JOB, "--out", str(tmp_path / "day"))
    svg = (tmp_path / "day" / "seal.svg").read_text()
    assert "Sealer, coat 1" in svg
    assert "Sealer, coat 2" in svg
    assert "laid first" in svg
    assert "sprayed" not in svg


def test_json_is_one_document_and_the_exit_says_no(run, tmp_path):
    dirty = replace(JOB, watch=Watch(rinse_ph=5.0, rag="dirty"))
    code, out, _ = run(dirty, "--out", str(tmp_path / "day"), "--json")
    assert code == 1
    sealing = json.loads(out)["sealing"]
    assert sealing["verdict"] == "no"
    assert {one["code"] for one in sealing["reasons"]} == {"not neutralised", "residue"}


@pytest.mark.parametrize("words", [("--from", "tomorrow"), ("--from", "2026-05-18T08:00:00")])
def test_a_moment_that_is_none_is_the_callers_mistake(run, tmp_path, words):
    code, _, err = run(JOB, "--out", str(tmp_path / "day"), *words)
    assert code == 2
    assert "--from" in err
    assert not (tmp_path / "day").exists()


def test_without_a_folder_nothing_is_planned(run):
    code, _, err = run(JOB)
    assert code == 2
    assert "--out" in err


def test_a_us_sheet_tells_what_it_rests_on_in_us_units(run, tmp_path):
    run(replace(JOB, sealer=None), "--out", str(tmp_path / "day"))
    pdf = pypdfium2.PdfDocument(tmp_path / "day" / "seal-sheet.pdf")
    text = (
        " ".join(page.get_textpage().get_text_range() for page in pdf)
        .replace("\r\n", " ")
        .replace("\u00a0", " ")
    )
    assert "1.00 gal in a full tray" in text
    assert "m2/" not in text
    assert "common-practice" not in text


def test_what_the_log_tells_of_a_room_wins_over_what_was_typed(run, tmp_path, capsys):
    folder = tmp_path / "monday"
    folder.mkdir()
    (folder / "plan.json").write_text(json_text(plan_to_dict(day_of("quince-street"))))
    at = "at=2026-05-15T09:00:00-06:00"
    assert main(["log", str(folder), "rinsed", "room=bath", "ph=5", "rag=coloured", at]) in {0, 1}
    capsys.readouterr()
    assert run(JOB, "--out", str(tmp_path / "typed"))[0] == 0
    code, out, _ = run(JOB, "--out", str(tmp_path / "logged"), "--log", str(folder))
    assert code == 1
    assert "the floor reads pH 5" in out
    code, _, err = run(JOB, "--out", str(tmp_path / "none"), "--log", str(tmp_path))
    assert code == 2
    assert "there is no log.jsonl" in err


def test_sheet_and_drawing_are_spanish_where_they_are_asked_for_so(run, tmp_path):
    facts = replace(JOB, revision=4)
    run(
        facts,
        "--out",
        str(tmp_path / "day"),
        "--language",
        "es",
        "--screens",
        "https://b.example/7",
    )
    pdf = pypdfium2.PdfDocument(tmp_path / "day" / "seal-sheet.pdf")
    text = " ".join(page.get_textpage().get_text_range() for page in pdf).replace("\r\n", " ")
    for words in ("Día de sellado", "Mano 2", "datos 4 · entradas", "Página 1 de", "charola"):
        assert words in text
    for words in ("tanque", "rocía", "Seal day", "facts 4"):
        assert words not in text
    assert "se pone primero" in (tmp_path / "day" / "seal.svg").read_text()
    assert "Nobody works alone" in (tmp_path / "day" / "seal.json").read_text()


def test_the_lines_tell_hours_by_the_units_of_the_job(run, tmp_path):
    _, us, _ = run(JOB, "--out", str(tmp_path / "us"))
    assert re.search(r"\nCoat 1: .* \d+:\d\d am to \d+:\d\d [ap]m, ", us)
    _, metric, _ = run(replace(JOB, wishes=Wishes(units="metric")), "--out", str(tmp_path / "si"))
    assert re.search(r"\nCoat 1: .* \d+:\d\d to \d+:\d\d, ", metric)
