"""Why a house moved, told in English and in Spanish."""

import re
from datetime import date

import pytest
from tests.days.shop import typical
from tests.job.test_plan_days import MONDAY, ONE, OTHER

from farwall.days.moved_why import Against, Late, Why
from farwall.days.nouns import Away
from farwall.days.practice import chain_of
from farwall.job.plan_days import Ask, plan_days
from farwall.job.say_days import said_days
from farwall.job.say_moved import said_why
from farwall.phrasebook import in_spanish
from farwall.web.pages.told import reads_english

STEPS = {one.id: one for one in chain_of(typical().houses[0])}
KINDS = ("trade", "hours", "window", "crew", "waits", "no sooner")


def every_reason():
    for kind in KINDS:
        for step in ("coat-1", "seal-1", "neutralise", "mask"):
            bare = kind in {"trade", "crew", "no sooner"}
            against = Against(kind, None if bare else STEPS[step])
            other = Against("crew")
            yield Why((Away("house", "plumber", 2),), (3,), 9, ((against, 5), (other, 1)))
    for kind in ("hours", "rest", "crew"):
        yield Why((), (), 0, (), (Late(kind, STEPS["seal-1"], 7, 28),))


@pytest.mark.parametrize("why", list(every_reason()))
def test_every_reason_is_spanish_too(why):
    for one in said_why(why, typical().ahead):
        spanish = in_spanish(one, frozenset({"plumber"}))
        assert spanish is not None, one
        assert not reads_english(spanish), spanish


def test_a_trade_is_told_as_what_moved_the_house_and_no_reason_where_nothing_moved():
    answer = plan_days(
        [ONE, OTHER], Ask(begins=MONDAY, crews=2, away=(("elm", "plumber", date(2026, 6, 9)),))
    )
    said = said_days(answer, us=False)
    assert re.search(r"The plumber has the house on Tue 9 Jun, and it is shut to all others", said)
    assert said.count("has the house on") == 1


def test_rain_is_told_as_what_moved_the_house():
    answer = plan_days([ONE], Ask(begins=MONDAY, rain=(date(2026, 6, 9),)))
    assert "Rain on Tue 9 Jun: no stain and no sealer" in said_days(answer, us=False)
