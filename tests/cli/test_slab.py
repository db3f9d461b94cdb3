"""`farwall slab`: the run sheet for a phone as one file."""

import pytest
from tests.midday import EXAMPLES, day_of

from farwall.cli.main import main
from farwall.papers.json_text import json_text
from farwall.readers.plan_json import plan_to_dict


@pytest.fixture
def monday(tmp_path):
    folder = tmp_path / "monday"
    folder.mkdir()
    (folder / "plan.json").write_text(json_text(plan_to_dict(day_of("quince-street"))))
    return folder


def test_one_file_is_written_and_its_weight_told(monday, capsys):
    out = monday / "slab.html"
    assert main(["slab", str(monday / "plan.json"), "--out", str(out)]) == 0
    said = capsys.readouterr()
    assert f"{out.stat().st_size / 1000:.0f} KB" in said.out
    assert "No job.json lies beside the plan" in said.err
    assert '"id":"Quince Street, lot 9"' in out.read_text()
    assert 'id="paper-packed"' in out.read_text()
    assert out.stat().st_size < 2_500_000, "22 pages of paper and the page"
    assert main(["slab", str(monday / "plan.json"), "--out", str(out), "--no-paper"]) == 0
    assert 30_000 < out.stat().st_size < 125_000
    assert 'id="paper-packed"' not in out.read_text()


def test_the_job_beside_the_plan_gives_the_id_and_a_told_one_wins(monday, capsys):
    facts = (EXAMPLES / "quince-street" / "job.json").read_text()
    (monday / "job.json").write_text(facts.replace("{", '{"id": "lot-9",', 1))
    out = monday / "slab.html"
    main(["slab", str(monday / "plan.json"), "--out", str(out), "--job", "mine"])
    assert "No job.json" not in capsys.readouterr().err
    assert '"id":"mine"' in out.read_text()


def test_a_plan_that_is_not_there_is_refused_calmly(tmp_path, capsys):
    assert main(["slab", str(tmp_path / "no.json"), "--out", str(tmp_path / "x.html")]) == 2
    assert "Traceback" not in capsys.readouterr().err
    assert not (tmp_path / "x.html").exists()
