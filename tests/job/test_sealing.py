"""When a job's floor may be sealed, in words and hours."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from tests.job.go.jobs import GOOD, surveyed, with_parts

from farwall.air.sealing import Window
from farwall.facts.job import Sighting
from farwall.facts.sealer import Sealer
from farwall.job.sealing import (
    WHICH,
    coats_in_words,
    limits_in_words,
    sealing_of,
    window_in_words,
)

START = datetime(2026, 5, 14, 8, tzinfo=UTC)


def test_without_weather_or_all_readings_nothing_is_guessed():
    assert sealing_of(GOOD, None, starts_at=START) is None


def test_readings_alone_give_one_hour_and_say_that_the_night_is_not_in_them():
    found = sealing_of(surveyed(rh_percent=45), None, starts_at=START)
    assert len(found.hours) == 1
    assert found.hours[0].word == "go"
    assert any("night" in note for note in found.notes)
    assert found.coats == ()


def test_a_sealer_that_nobody_named_is_asked_for():
    assert WHICH in sealing_of(surveyed(rh_percent=45), None, starts_at=START).notes
    named = with_parts(
        survey=surveyed(rh_percent=45).survey, sealer=Sealer("epoxy", least_slab_c=13.0)
    )
    found = sealing_of(named, None, starts_at=START)
    assert WHICH not in found.notes
    assert limits_in_words(found.limits).startswith("epoxy: slab 13 °C (55 °F) to 29 °C")
    told = limits_in_words(found.limits, us=True)
    assert told.startswith("epoxy: slab 55 °F (13 °C) to ")
    assert "5 °F (3 K) or more above the dew point" in told


@pytest.mark.parametrize(("hours", "words"), [(6, "dew: 2.9 K"), (7, "(dew)")])
def test_a_long_window_tells_kinds_and_a_short_one_its_figures(hours, words):
    window = Window(START, START + timedelta(hours=hours), "no", ("dew: 2.9 K",))
    assert words in window_in_words(window)
    assert window_in_words(window).startswith("Thu 14 May 8:00 to 1")
    assert window_in_words(window, us=True).startswith("Thu 14 May 8:00 am to ")


def test_coats_wait_for_the_floor_to_be_dry(weather_at_21_c):
    found = sealing_of(with_parts(sealer=Sealer("water acrylic")), weather_at_21_c, starts_at=START)
    first, second = found.coats
    assert first >= found.dried.sure_at
    assert first - found.dried.sure_at < timedelta(hours=1)
    assert second - first >= timedelta(hours=found.limits.recoat_from_h)
    assert coats_in_words(found).startswith("earliest: first coat")


def test_a_closet_seen_dry_early_brings_the_first_coat_of_sealer_forward(weather_at_21_c):
    """The dry-down was counted as 48 h whatever the floor said; now its own clock is asked."""
    usual = sealing_of(with_parts(sealer=Sealer("water acrylic")), weather_at_21_c, starts_at=START)
    seen = Sighting("dry-down before sealing", 12 * 60, room="closet")
    quick = with_parts(sealer=Sealer("water acrylic"), seen=(seen,))
    found = sealing_of(quick, weather_at_21_c, starts_at=START)
    assert found.coats[0] < usual.coats[0] - timedelta(hours=24)
    assert "at the late end, likely" in coats_in_words(found)


@pytest.fixture
def weather_at_21_c(tmp_path):
    """A forecast of two weeks, 21 °C and 45 % all along."""
    from farwall.readers.any_weather import read_weather

    rows = ["time,air_c,rh_percent,wind_m_s"]
    rows += [f"{(START + timedelta(hours=n)).isoformat()},21,45,2" for n in range(-24, 24 * 13)]
    path = tmp_path / "forecast.csv"
    path.write_text("\n".join(rows) + "\n")
    return read_weather(path)
