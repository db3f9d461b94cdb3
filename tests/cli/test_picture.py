"""`farwall picture`: drawings of a plan, and calm words for what cannot be drawn."""

import json

import pytest
from tests.papers.invented_plan import small_house

from farwall.cli.main import main
from farwall.papers.json_text import json_text
from farwall.readers.plan_json import plan_to_dict


@pytest.fixture
def plan_file(tmp_path):
    path = tmp_path / "plan.json"
    path.write_text(json_text(plan_to_dict(small_house())), encoding="utf-8")
    return path


def test_it_draws_the_floor_the_moments_and_each_field(plan_file, tmp_path, capsys):
    out = tmp_path / "drawn"
    assert main(["picture", str(plan_file), "--out", str(out), "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    fields = [f for f in small_house().fields if f.coat == small_house().fields[0].coat]
    wanted = {"floor.svg", "moments.svg", *(f"field-{n}.svg" for n in range(1, len(fields) + 1))}
    assert {path.name for path in out.iterdir()} == wanted == set(told["files"])
    assert all(b"<svg" in path.read_bytes()[:200] for path in out.iterdir())


def test_moments_can_be_asked_for(plan_file, tmp_path):
    out = tmp_path / "drawn"
    assert main(["picture", str(plan_file), "--out", str(out), "--at", "2,7.5"]) == 0
    assert (out / "moments.svg").read_text(encoding="utf-8").count("in the tank") == 2


def test_a_strange_coat_and_strange_moments_are_refused_together(plan_file, tmp_path, capsys):
    words = ["picture", str(plan_file), "--out", str(tmp_path / "drawn")]
    assert main([*words, "--coat", "third", "--at", "noon,-3"]) == 2
    told = capsys.readouterr().err
    assert "no coat third" in told
    assert "noon is not a minute" in told
    assert "-3 is not a minute" in told
    assert not (tmp_path / "drawn").exists()
