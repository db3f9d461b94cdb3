"""`farwall plan`: from a job file to a folder, an exit code and calm words."""

from __future__ import annotations

import json

import jsonschema
import pytest
from tests.shapes import PLAIN_ROOM, TWO_ROOMS
from tests.spray.hand_floors import HALL_OF_THREE, hall, job, without_opening
from tests.strategies.weather import epw_text

from farwall.cli.main import main
from farwall.facts.job import Survey, Wishes
from farwall.facts.plain import plain
from farwall.facts.samples import Sample

WRITTEN = {"plan.json", "run-sheet.pdf", "floor.svg", "moments.svg"}


def job_file(folder, place=TWO_ROOMS, **facts):
    """A job as a file; its path as text."""
    path = folder / "job.json"
    path.write_text(json.dumps(plain(job(place, **facts))), encoding="utf-8")
    return str(path)


@pytest.fixture
def planned(tmp_path, capsys):
    """Plan a place with some words on the command line: exit code, stdout, stderr, folder."""

    def run(*words, place=TWO_ROOMS, out="plan", **facts):
        folder = tmp_path / out
        code = main(["plan", job_file(tmp_path, place, **facts), "--out", str(folder), *words])
        shown = capsys.readouterr()
        return code, shown.out, shown.err, folder

    return run


def names(folder):
    return {path.name for path in folder.iterdir()} if folder.exists() else set()


def test_a_plan_that_fits_gives_0_and_three_files(planned):
    code, out, err, folder = planned()
    assert (code, err) == (0, "")
    assert names(folder) == WRITTEN
    assert "fits" in out
    assert "run-sheet.pdf" in out
    assert (folder / "run-sheet.pdf").read_bytes().startswith(b"%PDF")
    assert b"<svg" in (folder / "floor.svg").read_bytes()[:200]


def test_what_is_written_holds_to_the_published_schema_and_the_checker(planned, capsys):
    _, _, _, folder = planned()
    main(["schema", "plan"])
    schema = json.loads(capsys.readouterr().out)
    jsonschema.validate(json.loads((folder / "plan.json").read_text()), schema)
    assert main(["check", str(folder / "plan.json")]) == 0


def test_a_field_that_cannot_be_done_is_written_all_the_same_and_gives_1(planned):
    code, out, err, folder = planned(place=hall(9, 5), samples=sheen(1.0))
    assert (code, err) == (1, "")
    assert names(folder) == WRITTEN
    assert "CANNOT" in out


def sheen(minutes):
    return (Sample("board", coat="one", sheen_loss_min=minutes),)


def test_a_slab_too_hot_gives_1_with_the_reason(planned):
    code, out, _, folder = planned(survey=Survey(slab_c=32.2, air_c=30.0))
    assert code == 1
    assert "above 85 °F (29.4 °C)" in out
    assert names(folder) == WRITTEN


def test_json_prints_one_document_and_nothing_else(planned):
    code, out, err, folder = planned("--json")
    assert (code, err) == (0, "")
    document = json.loads(out)
    assert document == json.loads((folder / "plan.json").read_text())
    assert out.count("\n") == 1


def test_a_room_without_a_door_gives_1_and_its_name_and_no_folder(planned):
    code, out, err, folder = planned(place=without_opening(HALL_OF_THREE, "middle-door"))
    assert (code, out) == (1, "")
    assert "No way in to Middle:" in err
    assert not folder.exists()


def test_a_wanted_order_is_kept(planned):
    code, _, _, folder = planned("--order", "right, left", place=HALL_OF_THREE)
    assert code == 0
    fields = json.loads((folder / "plan.json").read_text())["fields"]
    assert [field["rooms"][0] for field in fields][:2] == ["right", "left"]


def test_an_order_that_shuts_somebody_in_gives_1_and_says_so(planned):
    code, out, err, folder = planned("--order", "hall,left", place=HALL_OF_THREE)
    assert (code, out) == (1, "")
    assert "shuts somebody in" in err
    assert "Leave the order of the rooms open" in err
    assert not folder.exists()


def test_unknown_rooms_of_an_order_are_all_named_with_the_nearest_known_one(planned):
    code, out, err, folder = planned("--order", "halll,attic", place=HALL_OF_THREE)
    assert (code, out) == (2, "")
    assert "halll" in err
    assert "Did you mean hall?" in err
    assert "attic" in err
    assert not folder.exists()


def test_a_missing_job_file_gives_2_and_a_calm_line(tmp_path, capsys):
    code = main(["plan", str(tmp_path / "nowhere.json"), "--out", str(tmp_path / "plan")])
    shown = capsys.readouterr()
    assert (code, shown.out) == (2, "")
    assert "nowhere.json" in shown.err
    assert "Traceback" not in shown.err
    assert not (tmp_path / "plan").exists()


def test_a_broken_job_file_gives_2_and_every_mistake(tmp_path, capsys):
    path = tmp_path / "job.json"
    path.write_text('{"version": 1, "floor": {"rooms": []}, "exits": [], "wether": 1}')
    code = main(["plan", str(path), "--out", str(tmp_path / "plan")])
    shown = capsys.readouterr()
    assert code == 2
    assert len(shown.err.strip().splitlines()) >= 2
    assert not (tmp_path / "plan").exists()


def test_a_place_that_is_a_file_gives_2_and_leaves_it(planned, tmp_path):
    (tmp_path / "plan").write_text("a letter")
    code, _, err, folder = planned()
    assert code == 2
    assert "is a file" in err
    assert folder.read_text() == "a letter"


def test_a_place_below_a_file_gives_2(planned, tmp_path):
    (tmp_path / "letter").write_text("a letter")
    code, _, err, _ = planned(out="letter/plan")
    assert code == 2
    assert "cannot be written" in err


def test_a_missing_weather_file_gives_2_and_no_folder(planned, tmp_path):
    code, _, err, folder = planned("--weather", str(tmp_path / "sun.epw"))
    assert code == 2
    assert "sun.epw" in err
    assert not folder.exists()


def test_weather_is_taken_where_the_survey_is_silent(planned, tmp_path):
    weather = tmp_path / "an invented year.epw"
    weather.write_text(epw_text())
    facts = {"survey": Survey(), "starts_at": "2027-01-12T08:00:00-06:00"}
    code, out, _, _ = planned("--weather", str(weather), **facts)
    assert code == 1, "a January slab is too cold"
    assert "below 50 °F (10.0 °C)" in out


def test_names_with_spaces_and_letters_of_all_kinds(planned):
    code, out, _, folder = planned(out="Spring jobs/Größe · 9", name="Lot #9 $bath$")
    assert code == 0
    assert names(folder) == WRITTEN
    assert "Lot #9 $bath$" in out


def test_planning_again_leaves_the_same_bytes(planned):
    _, _, _, folder = planned()
    first = {path.name: path.read_bytes() for path in folder.iterdir()}
    _, _, _, folder = planned()
    assert {path.name: path.read_bytes() for path in folder.iterdir()} == first


def test_an_older_plan_stays_when_the_new_one_has_no_answer(planned):
    _, _, _, folder = planned()
    before = {path.name: path.read_bytes() for path in folder.iterdir()}
    code, _, _, folder = planned(place=without_opening(HALL_OF_THREE, "left-door"))
    assert code == 1
    assert {path.name: path.read_bytes() for path in folder.iterdir()} == before


def test_faults_of_the_replay_give_1_and_are_said(planned, monkeypatch):
    """Played: should our own plan not stand, nobody is told that it does."""
    from farwall.spray.check import Fault

    monkeypatch.setattr(
        "farwall.spray.check.check_plan", lambda plan: [Fault("trodden", "one.1", 1.0, "Wet.")]
    )
    code, out, _, folder = planned()
    assert code == 1
    assert "trodden: Wet." in out
    assert names(folder) == WRITTEN


def test_explain_writes_nothing_without_a_folder_and_says_why(tmp_path, capsys):
    code = main(["plan", job_file(tmp_path, HALL_OF_THREE), "--explain"])
    shown = capsys.readouterr()
    assert (code, shown.err) == (0, "")
    assert "Why this order:" in shown.out
    assert names(tmp_path) == {"job.json"}


def test_an_order_that_does_not_stand_gives_1_and_its_reason(tmp_path, capsys):
    words = ["plan", job_file(tmp_path, HALL_OF_THREE), "--explain", "--order", "Hall,left"]
    assert main([*words, "--json"]) == 1
    found = json.loads(capsys.readouterr().out)
    assert found["asked"]["stands"] is False
    assert any("Left" in one for one in found["asked"]["shut_in"])
    assert found["best"]["stands"] is True
    assert found["proof"]["what"]


def test_rooms_may_be_named_as_on_the_plan_and_unknown_ones_get_the_nearest(tmp_path, capsys):
    path = job_file(tmp_path, HALL_OF_THREE)
    assert main(["plan", path, "--explain", "--order", "MIDDLE"]) == 0
    capsys.readouterr()
    assert main(["plan", path, "--explain", "--order", "Midle,Haul"]) == 2
    told = capsys.readouterr().err
    assert "Did you mean middle?" in told
    assert "Did you mean hall?" in told


def test_a_folder_or_a_question_is_needed(tmp_path, capsys):
    assert main(["plan", job_file(tmp_path)]) == 2
    assert "--out" in capsys.readouterr().err


@pytest.mark.parametrize(("units", "tells"), [("us", "12:03 pm"), ("metric", "12:03")])
def test_hours_are_told_by_the_units_of_the_job(planned, units, tells):
    at = "2027-05-04T12:00:00-06:00"
    _, out, _, _ = planned(place=PLAIN_ROOM, starts_at=at, wishes=Wishes(units=units))
    assert f"\n  {tells} 1.1 Room: fits" in out
