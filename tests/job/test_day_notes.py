"""What is said beside a calendar, and of which houses."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta, timezone

import pytest
from tests.job.sun_house import sun_job
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job
from tests.strategies.weather import epw_text

from farwall.facts.job import Sighting, Site, Survey
from farwall.facts.sealer import Sealer
from farwall.job.house_days import begun_before
from farwall.job.plan_days import Ask, plan_days
from farwall.job.say_days import said_days
from farwall.job.site import UNSAID_VENT
from farwall.phrasebook import in_spanish
from farwall.readers.epw import parse_epw

ELM = replace(
    job(TWO_ROOMS), id="elm", name="Elm Row 3", starts_at=None,
    sealer=Sealer(type="water acrylic"),
)  # fmt: skip
BEGINS = date(2026, 6, 8)
FIR = replace(ELM, id="fir", name="Fir Row 4")


@pytest.fixture(scope="module")
def year():
    return parse_epw(epw_text())


def notes(*jobs, weather=None, **ask):
    asked = {"begins": BEGINS, "zone": timezone(timedelta(hours=-6))} | ask
    answer = plan_days(jobs, Ask(crews=len(jobs), **asked), weather=weather)
    assert answer.document["notes"] == list(answer.notes)
    assert all(one in said_days(answer, us=True) for one in answer.notes)
    return answer.notes


def test_of_a_house_with_a_sealer_and_nothing_else_there_is_nothing_to_say():
    assert notes(ELM) == ()


def test_a_house_whose_run_sheet_is_of_another_day_is_named():
    coated = replace(ELM, starts_at="2026-06-08T08:00:00-06:00")  # no broom has been there by then
    (said,) = notes(coated, FIR, begins=BEGINS)
    assert said.startswith("Elm Row 3: Coat 1 does not fall on the day")
    begins = begun_before(coated, Ask()).begins
    assert notes(coated, begins=begins) == ()


def test_a_sealer_that_is_not_told_is_named_with_its_houses():
    assert notes(replace(ELM, sealer=Sealer()))[0].startswith("Which sealer is not told")
    some = notes(ELM, replace(FIR, sealer=Sealer()))
    assert [one.partition(":")[0] for one in some] == ["Fir Row 4"]


def test_watched_waits_are_named():
    seen = (Sighting("dry-down before sealing", 2000.0),)
    assert notes(replace(ELM, seen=seen)) == (
        "By what was watched on this floor: dry-down before sealing.",
    )


def test_a_heater_is_said_with_what_it_holds_and_whether_it_is_vented(year):
    told = notes(replace(ELM, site=Site(heater_kw=9.0)), weather=year, begins=date(2026, 4, 6))
    assert UNSAID_VENT in told
    assert any("70 °F (21 °C)" in one for one in told)


def test_sun_on_the_slab_is_said_where_there_are_windows(year):
    sunny = replace(sun_job(at="08:00", survey=Survey()), id="sun", sealer=ELM.sealer)
    told = notes(sunny, weather=year, begins=date(2026, 6, 22))
    assert any("slab in the sun" in one for one in told)


def test_a_house_that_is_shut_for_weeks_is_told_to_be_warmed():
    """Thirty days of rain come between stain and sealer."""
    rain = tuple(date(2026, 6, 11) + timedelta(days=n) for n in range(30))
    told = notes(ELM, begins=date(2026, 6, 8), rain=rain)
    assert any(one.startswith("More than 21 days") for one in told)


@pytest.mark.parametrize(
    ("age_days", "begins", "told"),
    [
        # By hand: 10 days old on Monday 8 June; coat 1 comes on Tuesday 9, at 11; 28 on 26 June.
        (10.0, date(2026, 6, 8), ("about 11 days old", "28 days are asked for", "Fri 26 Jun")),
        # The same slab, begun on Friday 26 June: coat 1 comes at 31 days.
        (10.0, date(2026, 6, 26), ()),
        (28.0, date(2026, 6, 8), ()),
    ],
)
def test_a_slab_too_young_for_the_first_coat_is_said(age_days, begins, told):
    survey = Survey(slab_age_days=age_days, sheet_slab_age_days=28.0)
    told_on = replace(ELM, survey=survey, starts_at="2026-06-08T08:00:00-06:00")
    found = [one for one in notes(told_on, begins=begins) if "young" in one]
    assert len(found) == bool(told)
    assert all(words in found[0] for words in told)
    assert all(in_spanish(one, frozenset()) for one in found)
