"""`farwall plan --weather forecast.csv`: its age is said, the plan rests on it."""

from __future__ import annotations

import json
from datetime import UTC, datetime, timedelta

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.main import main
from farwall.facts.job import Survey
from farwall.facts.plain import plain

START = datetime(2027, 5, 4, 8, tzinfo=UTC)


def table(issued_at, *, warm_f=68.0):
    rows = [f"# issued_at: {issued_at.isoformat()}", "time,temperature_f,humidity,wind_mph"]
    times = [START + timedelta(hours=n) for n in range(-48, 96, 3)]
    return "\n".join([*rows, *(f"{one.isoformat()},{warm_f},50,4" for one in times)])


@pytest.fixture
def planned(tmp_path, capsys):
    def run(text, **survey):
        facts = job(TWO_ROOMS, survey=Survey(**survey), starts_at=START.isoformat())
        (tmp_path / "job.json").write_text(json.dumps(plain(facts)), encoding="utf-8")
        (tmp_path / "friday.csv").write_text(text, encoding="utf-8")
        words = ["--out", str(tmp_path / "plan"), "--weather", str(tmp_path / "friday.csv")]
        code = main(["plan", str(tmp_path / "job.json"), *words])
        return code, capsys.readouterr().err, tmp_path / "plan" / "plan.json"

    return run


def test_a_forecast_is_planned_by_and_its_age_is_told(planned):
    code, err, written = planned(table(datetime.now(UTC) - timedelta(hours=9, minutes=5)))
    assert (code, err) == (0, "friday.csv: issued 9 h ago.\n")
    plan = json.loads(written.read_text())
    assert any("station" in one for one in plan["warnings"])
    by_name = {one["name"]: one for one in plan["clocks"]}
    assert by_name["dry to neutralise"]["likely_min"] > 0
    assert by_name["dry-down before sealing"]["begins_min"] > 0


def test_a_cold_slab_under_a_warm_forecast_is_named(planned):
    _, _, written = planned(table(START - timedelta(hours=9)), slab_c=10.6)
    told = json.loads(written.read_text())["warnings"]
    assert any("slab 51 °F" in one and "the slab decides" in one for one in told)
    assert "The forecast was issued 9 h before the first stroke." in told


def test_a_broken_forecast_gives_2_and_every_mistake(planned):
    code, err, written = planned("time,temperature,wind_mph\nnoon,50,5\n")
    assert code == 2
    for part in ("friday.csv", "column temperature", "humidity", "not ISO 8601"):
        assert part in err
    assert not written.exists()
