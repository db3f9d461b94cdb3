"""`farwall acid`: the waste water in lines and in acid.json; the log of the water on its paper."""

import json

import pypdfium2
import pytest
from tests.job.acid_day.waste_house import JOB, ground
from tests.job.story.entries import Log

from farwall.cli.main import main
from farwall.readers.job_json import job_to_text
from farwall.readers.kept_json import kept_to_dict


@pytest.fixture
def facts(tmp_path):
    file = tmp_path / "job.json"
    file.write_text(job_to_text(JOB))
    return file


def logged(folder, text=""):
    log = Log(ground().plan)
    log("waste", 600.0, drum="7", litres=170.0, way="hauled", manifest="M-7")
    lines = [json.dumps(kept_to_dict(one)) for one in log.kept]
    (folder / "log.jsonl").write_text("\n".join([*lines, text]))


def test_the_waste_water_is_said_and_written(facts, tmp_path, capsys):
    words = ["acid", str(facts), "--out", str(tmp_path / "out"), "--part", "waste"]
    assert main(words) == 0
    said = capsys.readouterr().out
    assert "Waste water" in said
    assert "Clear is not clean" in said
    waste = json.loads((tmp_path / "out" / "acid.json").read_text())["waste"]
    assert {one["metal"] for one in waste["metals"]} == {"copper", "manganese", "iron"}
    assert waste["washed_off_rank"] == "guess"


def test_the_log_of_the_water_stands_on_its_paper(facts, tmp_path, capsys):
    logged(tmp_path, "torn")
    out = tmp_path / "out"
    code = main(["acid", str(facts), "--out", str(out), "--json", "--log", str(tmp_path)])
    told = capsys.readouterr()
    assert code == 0
    assert json.loads(told.out)["waste"]["drums_full"] >= 1
    assert "line 2" in told.err
    page = pypdfium2.PdfDocument((out / "waste-page.pdf").read_bytes())[1]
    assert "M-7" in page.get_textpage().get_text_range()


def test_a_folder_without_a_log_is_told(facts, tmp_path, capsys):
    empty = tmp_path / "none"
    empty.mkdir()
    code = main(["acid", str(facts), "--out", str(tmp_path / "out"), "--log", str(empty)])
    assert code == 2
    assert "there is no log.jsonl" in capsys.readouterr().err
