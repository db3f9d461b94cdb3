"""What would make days possible: heat or a date, each tried out before it is told."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date, datetime

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job
from tests.strategies.weather import epw_text

from farwall.errors import Unanswerable
from farwall.facts.job import Site
from farwall.job.plan_days import Ask, plan_days
from farwall.readers.epw import parse_epw, read_epw

ELM = replace(job(TWO_ROOMS), id="elm", name="Elm Row 3", starts_at="2026-06-08T08:00:00-06:00")
WINTER = Ask(begins=date(2026, 12, 1))
CHICAGO = "data/weather/USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw"


@pytest.fixture(scope="module")
def year():
    return parse_epw(epw_text())


@pytest.fixture(scope="module")
def frozen(year):
    """What a winter's first of December is told."""
    return refused(year, WINTER)


def refused(weather, ask):
    with pytest.raises(Unanswerable) as no:
        plan_days([ELM], ask, weather=weather)
    return no.value


def heated(heat_kw):
    return replace(ELM, site=Site(heater_kw=heat_kw, heater_vented=True))


def told_kw(no):
    return float(re.search(r"site.heater_kw=(\d+)", " ".join(no.remedies))[1])


def test_a_winter_names_the_step_and_what_stands_against_it(frozen):
    assert "What lacks hours is" in frozen.reason
    assert "too cold" in frozen.reason
    assert "vented only" in frozen.remedies[0]


def test_the_heat_that_is_told_works_when_it_is_told_back(year, frozen):
    answer = plan_days([heated(told_kw(frozen))], WINTER, weather=year)
    assert answer.faults == ()
    assert answer.calendar.houses[0].last_day < 30


def test_the_date_that_is_told_is_the_first_that_works(year, frozen):
    told = re.search(r"wait until \w+ (\d+ \w+ \d+)", frozen.remedies[1])[1]
    first = datetime.strptime(told, "%d %b %Y").date()  # noqa: DTZ007
    answer = plan_days([ELM], Ask(begins=first), weather=year)
    assert answer.faults == ()
    assert answer.calendar.houses[0].steps[0].start_min < 1440
    assert answer.calendar.houses[0].last_day <= 21


@pytest.mark.needs_shared
@pytest.mark.parametrize("day", [date(2026, 10, 1), date(2026, 11, 1)])
def test_chicago_in_autumn_lacks_hours_for_sealer_and_has_them_with_heat(shared, day):
    weather = read_epw(shared(CHICAGO))
    no = refused(weather, Ask(begins=day))
    assert "“sealer, coat 1”" in no.reason
    assert re.search(r"too cold \d\d %", no.reason)
    assert "wait until" in no.remedies[1]
    answer = plan_days([heated(told_kw(no))], Ask(begins=day), weather=weather)
    assert answer.faults == ()
    assert answer.calendar.houses[0].last_day <= 21
