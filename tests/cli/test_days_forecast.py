"""`farwall days --weather` with a forecast, alone and over a typical year."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import datetime

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job
from tests.strategies.weather import epw_text, forecast_text

from farwall.cli.main import main
from farwall.facts.plain import plain

BEGINS = datetime.fromisoformat("2026-06-07T00:00:00-06:00")


@pytest.fixture
def days(tmp_path, capsys):
    """Lay a house into days under a forecast of eleven days of this air: code, stdout, stderr."""

    def run(*words, air_c=21.0, year=False, hours=264):
        facts = replace(job(TWO_ROOMS), id="elm", starts_at="2026-06-08T08:00:00-06:00")
        house, table = tmp_path / "elm.json", tmp_path / "forecast.csv"
        house.write_text(json.dumps(plain(facts)), encoding="utf-8")
        table.write_text(forecast_text(BEGINS, hours=hours, air_c=air_c), encoding="utf-8")
        more = []
        if year:
            (tmp_path / "year.epw").write_text(epw_text(), encoding="latin-1")
            more = ["--weather", str(tmp_path / "year.epw")]
        code = main(["days", str(house), "--weather", str(table), *more, *words])
        shown = capsys.readouterr()
        return code, shown.out, shown.err

    return run


def test_a_forecast_alone_lays_the_days_and_says_how_old_it_is_and_how_far_it_goes(days):
    code, out, err = days("--from", "2026-06-08")
    assert (code, err) == (0, "")
    assert "It rests on forecast, house-guess (guess)." in out
    assert "until Thu 18 Jun 12:00 am. It will be 26 h old when the first step begins." in out
    assert "mean of its own days (a guess)" in out
    assert "Chance that a day" not in out  # a forecast tells nothing of other years


def test_over_a_year_both_are_told_and_the_chance_is_that_of_the_year(days):
    told = json.loads(days("--json", year=True)[1])
    assert told["rests_on"]["source"] == "forecast, weather file, house-guess"
    assert told["houses"][0]["lost_chance"] is not None
    assert "typical year stands" in told["notes"][0]


def test_what_is_foretold_moves_the_waits(days):
    """Ten degrees colder for eleven days: the paces of each hour are slower, all else the same."""
    mild, cold = (json.loads(days("--json", air_c=air)[1])["hours"]["film"] for air in (21.0, 14.0))
    assert all(slow < fast for slow, fast in zip(cold[:240], mild[:240], strict=True))


def test_a_cold_forecast_is_a_no_without_a_date_that_it_cannot_know(days):
    code, _, err = days(air_c=2.0)
    assert code == 1
    assert "elm" in err.lower()


def test_an_old_forecast_is_refused_with_its_days(days):
    code, _, err = days("--from", "2026-09-08")
    assert code == 2
    assert "2026-06-07" in err
    assert "2026-09-08" in err


def test_two_forecasts_are_refused(days, tmp_path):
    code, _, err = days("--weather", str(tmp_path / "forecast.csv"))
    assert code == 2
    assert "two forecasts" in err
