"""`farwall job`: a drawing in, a job out; calm when it cannot."""

from __future__ import annotations

import json

import pytest
from tests.strategies.jobs import row_of_rooms

from farwall.cli.main import main
from farwall.facts.job import Job
from farwall.floor.geojson import floor_collection
from farwall.floor.nouns import Exit
from farwall.readers.job_json import job_to_text, read_job

FLOOR = row_of_rooms([4.0, 3.0])


@pytest.fixture
def drawing(tmp_path):
    path = tmp_path / "house.geojson"
    path.write_text(json.dumps(floor_collection(FLOOR, (Exit("out", "door-0"),))))
    return path


def test_a_drawing_becomes_a_job_and_the_defaults_are_named(drawing, tmp_path, capsys):
    out = tmp_path / "job.json"
    assert main(["job", str(drawing), "--out", str(out), "crew.helper=true"]) == 0
    job = read_job(out)
    assert [room.id for room in job.floor.rooms] == ["room-0", "room-1"]
    assert sum(room.polygon.shape.area for room in job.floor.rooms) == pytest.approx(21.0)
    assert job.crew.helper
    said = capsys.readouterr().out
    assert "2 rooms" in said
    assert "tools.tank_l = 7.571 L" in said
    assert "common practice" in said
    assert "farwall plan" in said


def test_settings_and_options_may_stand_in_any_order(drawing, tmp_path):
    out = tmp_path / "job.json"
    assert main(["job", "--out", str(out), str(drawing), "tools.tank_gal=3", "name=a house"]) == 0
    assert main(["job", str(drawing), "name=a house", "--out", str(out), "tools.tank_gal=3"]) == 0
    assert read_job(out).tools.tank_l == pytest.approx(11.356235352)


def test_a_job_is_changed_by_the_same_command(drawing, tmp_path):
    out = tmp_path / "job.json"
    assert main(["job", str(drawing), "--out", str(out), "name=first"]) == 0
    assert main(["job", str(out), "--out", str(out), "survey.slab_f=66"]) == 0
    job = read_job(out)
    assert job.name == "first"
    assert job.survey.slab_c == pytest.approx(18.888889, abs=1e-6)


def test_json_prints_the_job_and_nothing_else(drawing, tmp_path, capsys):
    out = tmp_path / "job.json"
    assert main(["job", str(drawing), "--out", str(out), "--json"]) == 0
    assert json.loads(capsys.readouterr().out) == json.loads(out.read_text())


def test_a_mistake_leaves_what_was_there(drawing, tmp_path, capsys):
    out = tmp_path / "job.json"
    out.write_text("mine")
    assert main(["job", str(drawing), "--out", str(out), "tool.tank_gal=3", "crew.help=1"]) == 2
    said = capsys.readouterr().err
    assert "`tools`" in said
    assert "`helper`" in said
    assert out.read_text() == "mine"
    assert sorted(path.name for path in tmp_path.iterdir()) == ["house.geojson", "job.json"]


def test_without_a_way_out_no_job_is_written(tmp_path, capsys):
    drawing, out = tmp_path / "shut.geojson", tmp_path / "job.json"
    drawing.write_text(json.dumps(floor_collection(FLOOR)))
    assert main(["job", str(drawing), "--out", str(out)]) == 2
    assert "exits.0.opening=door-0" in capsys.readouterr().err
    assert not out.exists()
    told = ["exits.0.opening=door-0", "exits.0.id=out"]
    assert main(["job", str(drawing), "--out", str(out), *told]) == 0


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ([], "Which drawing?"),
        (["nowhere.dxf", "--out", "x.json"], "nowhere.dxf"),
        (["HOUSE"], "Say --out"),
        (["HOUSE", "--out", "no-folder/job.json"], "Name a folder that is there"),
    ],
)
def test_what_is_missing_is_asked_for(drawing, tmp_path, capsys, monkeypatch, words, said):
    monkeypatch.chdir(tmp_path)
    assert main(["job", *(str(drawing) if word == "HOUSE" else word for word in words)]) == 2
    assert said in capsys.readouterr().err


def test_a_broken_job_is_answered_with_its_mistakes(tmp_path, capsys):
    broken = tmp_path / "job.json"
    job = Job(version=1, floor=FLOOR, exits=(Exit("out", "door-0"),))
    broken.write_text(job_to_text(job).replace('"door-0"', '"dor"', 1))
    assert main(["job", str(broken), "--out", str(tmp_path / "new.json")]) == 2
    assert "exits[0].opening" in capsys.readouterr().err
