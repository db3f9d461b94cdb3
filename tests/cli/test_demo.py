"""`farwall demo`: the whole way on an invented house."""

from __future__ import annotations

import json

import pytest

from farwall.cli.main import main

WRITTEN = {"job.json", "plan.json", "run-sheet.pdf", "floor.svg", "moments.svg"}


@pytest.fixture(scope="module")
def shown(tmp_path_factory):
    """The demo once for all tests here: exit code, words, folder."""
    folder = tmp_path_factory.mktemp("demo") / "farwall-demo"
    with pytest.MonkeyPatch.context() as patch:
        patch.chdir(folder.parent)
        out = []
        patch.setattr("builtins.print", lambda *words, **_: out.append(" ".join(map(str, words))))
        code = main(["demo"])
    return code, "\n".join(out), folder


def test_it_writes_its_job_and_the_files_of_a_plan_where_it_stands(shown):
    code, _, folder = shown
    assert code == 0
    assert {path.name for path in folder.iterdir()} == WRITTEN


def test_it_says_that_the_house_is_invented_and_what_to_open(shown):
    _, words, _ = shown
    assert "invented house" in words
    assert "run-sheet.pdf" in words
    assert "nobody steps on wet stain" in words


def test_its_plan_stands_before_the_checker_with_its_own_job(shown):
    _, _, folder = shown
    assert main(["check", str(folder / "plan.json"), "--job", str(folder / "job.json")]) == 0


def test_it_shows_what_a_demo_is_for(shown):
    """Two colours each with its own cut, a helper, a refill and a stop line."""
    _, _, folder = shown
    plan = json.loads((folder / "plan.json").read_text())
    coats = plan["inputs"]["coats"]
    assert len({coat["stain"] for coat in coats}) == 2
    assert len({coat["cut"] for coat in coats}) == 2
    assert plan["inputs"]["crew"]["helper"] is True
    assert any(refill["by"] == "helper" for f in plan["fields"] for refill in f["refills"])
    kinds = {stop["kind"] for field in plan["fields"] for stop in field["stop_lines"]}
    assert {"door", "outside"} <= kinds
    assert all(field["verdict"] in {"fits", "helper"} for field in plan["fields"])


def test_its_job_is_one_that_anybody_may_plan_again(shown, tmp_path, capsys):
    _, _, folder = shown
    code = main(["plan", str(folder / "job.json"), "--out", str(tmp_path / "again")])
    capsys.readouterr()
    assert code == 0
    again = (tmp_path / "again" / "plan.json").read_bytes()
    assert again == (folder / "plan.json").read_bytes()


def test_it_goes_where_it_is_told(tmp_path, monkeypatch):
    asked = []
    monkeypatch.setattr("farwall.cli.plan.plan_into", lambda job, out, **_: asked.append(out) or 0)
    assert main(["demo", "--out", str(tmp_path / "some where")]) == 0
    assert asked == [tmp_path / "some where"]
