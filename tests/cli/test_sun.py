"""`farwall sun`, from its words to its exit code."""

import json
from datetime import datetime
from zoneinfo import ZoneInfoNotFoundError

from tests.job.sun_house import covered, sun_job
from tests.strategies.weather import forecast_text

from farwall.cli.main import main
from farwall.facts.job import Place, Wishes
from farwall.readers.job_json import job_to_text


def written(tmp_path, job):
    path = tmp_path / "job.json"
    path.write_text(job_to_text(job))
    return str(path)


def test_it_prints_each_room_and_draws_the_day(tmp_path, capsys):
    assert main(["sun", written(tmp_path, sun_job()), "--out", str(tmp_path / "out")]) == 0
    told = capsys.readouterr().out
    assert "West room: 12:00 pm to " in told
    assert "by window west-window" in told
    assert "2026-06-21" in told
    assert (tmp_path / "out" / "sun.svg").read_text().startswith("<svg")


def test_as_json_it_tells_rooms_and_patches_of_the_day_asked_for(tmp_path, capsys):
    assert main(["sun", written(tmp_path, sun_job()), "--day", "2026-12-21", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["starts_at"] == "2026-12-21T00:00:00-07:00"
    assert {one["room"] for one in told["rooms"]} == {"west", "hall", "east"}
    assert told["patches"][0]["polygon"]["type"] == "Polygon"


def test_what_is_missing_is_the_callers_mistake(tmp_path, capsys):
    assert main(["sun", written(tmp_path, covered(sun_job()))]) == 2
    assert "floor.windows" in capsys.readouterr().err
    assert main(["sun", written(tmp_path, sun_job()), "--day", "tomorrow"]) == 2
    assert "2026-06-21" in capsys.readouterr().err


def test_a_forecast_is_refused_as_what_it_is(tmp_path, capsys):
    table = tmp_path / "next-days.csv"
    begins = datetime.fromisoformat("2026-06-07T00:00:00-06:00")
    table.write_text(forecast_text(begins, hours=48), encoding="utf-8")
    assert main(["sun", written(tmp_path, sun_job()), "--weather", str(table)]) == 2
    told = capsys.readouterr().err
    assert "next-days.csv is a forecast of 48 hours" in told
    assert "place" in told


def test_a_machine_without_the_list_of_zones_still_tells_the_sun(tmp_path, capsys, monkeypatch):
    def none(name):
        raise ZoneInfoNotFoundError(name)

    place = Place(40.0, -105.0, time_zone="America/Phoenix")
    path = written(tmp_path, sun_job(place=place, wishes=Wishes(units="metric")))
    monkeypatch.setattr("farwall.readers.zones.ZoneInfo", none)
    assert main(["sun", path, "--day", "2026-06-21"]) == 0
    assert "West room: 12:00 to " in capsys.readouterr().out
