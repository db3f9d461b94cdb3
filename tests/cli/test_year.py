"""`farwall year`: two files and the months, from a weather file of either layout."""

import json
from datetime import datetime

import pytest
from tests.strategies.weather import epw_text, forecast_text

from farwall.cli.main import main


@pytest.fixture
def weather(tmp_path):
    path = tmp_path / "invented.epw"
    path.write_text(epw_text())
    return path


def test_it_writes_a_picture_and_a_document(weather, tmp_path, capsys):
    out = tmp_path / "out"
    assert main(["year", str(weather), "--out", str(out), "--name", "High plain"]) == 0
    said = capsys.readouterr().out
    assert sorted(one.name for one in out.iterdir()) == ["year.json", "year.svg"]
    assert said.startswith("High plain. House shut, no heat;")
    assert "September" in said
    told = json.loads((out / "year.json").read_text())
    assert told["place"]["name"] == "High plain"
    assert told["house"] == "shut"


def test_the_house_and_the_sealer_are_told(weather, tmp_path, capsys):
    words = ["year", str(weather), "--out", str(tmp_path / "o"), "--house", "heated",
             "--sealer", "penetrating", "--json"]  # fmt: skip
    assert main(words) == 0
    told = json.loads(capsys.readouterr().out)
    assert told == json.loads((tmp_path / "o" / "year.json").read_text())
    assert told["house"] == "heated"
    assert told["sealer"]["name"] == "penetrating"


def test_weather_of_a_few_months_is_refused(tmp_path, capsys):
    path = tmp_path / "short.epw"
    path.write_text(epw_text(months=(5, 6)))
    assert main(["year", str(path), "--out", str(tmp_path / "o")]) == 2
    assert not (tmp_path / "o").exists()
    assert capsys.readouterr().err


def test_a_forecast_is_refused_as_what_it_is(tmp_path, capsys):
    path = tmp_path / "next-days.csv"
    begins = datetime.fromisoformat("2026-06-07T00:00:00-06:00")
    path.write_text(forecast_text(begins, hours=48), encoding="utf-8")
    assert main(["year", str(path), "--out", str(tmp_path / "o")]) == 2
    assert not (tmp_path / "o").exists()
    told = capsys.readouterr().err
    assert "next-days.csv is a forecast of 48 hours" in told
    assert "EPW" in told
