"""`farwall export`: from a plan, a job or a drawing to three files, whole or not at all."""

import json

import pytest
from tests.shapes import TWO_ROOMS
from tests.strategies.plans import small_plan

from farwall.cli.main import main
from farwall.facts.job import Job
from farwall.floor.geojson import floor_collection
from farwall.readers.any_plan import read_plan
from farwall.readers.job_json import job_to_text
from farwall.readers.plan_json import plan_to_text

FILES = ["floor.dxf", "floor-layers.svg", "floor.geojson"]


@pytest.fixture
def plan(tmp_path):
    path = tmp_path / "plan.json"
    path.write_text(plan_to_text(small_plan()))
    return path


def test_a_plan_goes_out_with_its_stop_lines(plan, tmp_path, capsys):
    assert main(["export", str(plan), "--out", str(tmp_path / "out"), "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert sorted(told["files"]) == sorted(FILES)
    assert sorted(one.name for one in (tmp_path / "out").iterdir()) == sorted(FILES)
    assert "STOP-LINES" in (tmp_path / "out" / "floor.dxf").read_text()
    for name in FILES:
        assert read_plan(tmp_path / "out" / name).floor.rooms == small_plan().inputs.floor.rooms


def test_a_job_and_a_drawing_go_out_alike(tmp_path):
    job, drawing = tmp_path / "job.json", tmp_path / "house.geojson"
    job.write_text(job_to_text(Job(version=1, floor=TWO_ROOMS.floor, exits=TWO_ROOMS.exits)))
    drawing.write_text(json.dumps(floor_collection(TWO_ROOMS.floor, TWO_ROOMS.exits)))
    for source in (job, drawing):
        out = tmp_path / source.stem
        assert main(["export", str(source), "--out", str(out)]) == 0
        for name in FILES:
            back = read_plan(out / name)
            assert (back.floor, back.exits) == (TWO_ROOMS.floor, TWO_ROOMS.exits)


def test_a_job_that_is_not_the_plans_is_refused(plan, tmp_path, capsys):
    job = tmp_path / "job.json"
    job.write_text(job_to_text(Job(version=1, floor=TWO_ROOMS.floor, exits=TWO_ROOMS.exits)))
    assert main(["export", str(plan), "--job", str(job), "--out", str(tmp_path / "out")]) == 2
    assert "not those of the plan" in capsys.readouterr().err
    assert main(["export", str(job), "--job", str(job), "--out", str(tmp_path / "out")]) == 2
    assert "for a plan only" in capsys.readouterr().err
    assert not (tmp_path / "out").exists()


@pytest.mark.parametrize("text", ["", "{", "[1]", '{"floor": 3}', '{"inputs": {}, "fields": 1}'])
def test_what_is_no_floor_is_refused_and_nothing_is_written(text, tmp_path, capsys):
    path = tmp_path / "x.json"
    path.write_text(text)
    assert main(["export", str(path), "--out", str(tmp_path / "out")]) == 2
    assert capsys.readouterr().err.strip()
    assert not (tmp_path / "out").exists()
