"""`farwall call-back`: causes on the terminal and as JSON, slips with exit code 2."""

from __future__ import annotations

import json
import re
from functools import cache

import pytest
from tests.midday import EXAMPLES, day_of
from tests.papers.office.houses import whole_log

from farwall.cli.main import main
from farwall.readers.job_json import read_job
from farwall.readers.kept_json import kept_to_dict

JOB = EXAMPLES / "quince-street" / "job.json"


@pytest.fixture(autouse=True)
def planned(monkeypatch):
    """The plan of the example, made once for all tests."""
    monkeypatch.setattr("farwall.job.plan_job.plan_job", lambda *_, **__: day_of("quince-street"))


@cache
def lines():
    log = whole_log(read_job(JOB), day_of("quince-street"))
    return "".join(f"{json.dumps(kept_to_dict(one))}\n" for one in log.kept)


def test_without_a_log_the_causes_come_by_what_is_told(capsys):
    assert main(["call-back", str(JOB), "look=mat marks", "rug=rubber", "months=1"]) == 0
    text = capsys.readouterr().out
    assert text.startswith("1. A rug, mat or foot with rubber or plastic marked the sealer.")
    assert "The log has no record" in text
    assert "no verdict" in text


@pytest.mark.parametrize(
    ("words", "level"),
    [(["look=haze"], True), (["look=peeling"], True), (["look=footprints", "months=8"], False)],
)
def test_causes_of_one_number_are_told_to_be_equally_likely(words, level, capsys):
    assert main(["call-back", str(JOB), *words]) == 0
    text = capsys.readouterr().out
    numbers = re.findall(r"^(\d)\. ", text, re.MULTILINE)
    assert level == (len(set(numbers)) < len(numbers) == 3)
    assert level == ("Those of one number are equally likely" in text)


def test_with_a_log_its_records_speak(capsys, tmp_path):
    (tmp_path / "log.jsonl").write_text(lines())
    words = ["call-back", str(JOB), "look=haze", "where=door", "--log", str(tmp_path), "--json"]
    assert main(words) == 0
    found = json.loads(capsys.readouterr().out)
    assert any("Last pH" in one for one in found["records"])
    assert found["likely"][0]["place"] == 1
    assert found["rank"] == "common practice"
    assert found["version"] == 1


def test_all_slips_come_at_once(capsys):
    assert main(["call-back", str(JOB), "look=hazy", "wher=door"]) == 2
    said = capsys.readouterr().err
    assert "hazy is no answer" in said
    assert "wher=door" in said
