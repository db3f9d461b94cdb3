"""The house of a job: what was told, and never an unvented heater."""

from dataclasses import replace

import pytest
from tests.spray.hand_floors import job, row

from farwall.evidence import Rank
from farwall.facts.job import Site
from farwall.job.plan_job import plan_job
from farwall.job.site import (
    HEATED_TO_C,
    UNSAID_VENT,
    UNVENTED,
    heater_warnings,
    house_of,
    kept_warm,
)


def test_a_house_is_shut_unless_told_otherwise():
    bare = house_of(job(row(3, 3)))
    assert (bare.standing, bare.fans, bare.rank) == ("shut", 0, Rank.GUESS)
    assert bare.floor_m2 == pytest.approx(sum(r.polygon.shape.area for r in row(3, 3).floor.rooms))
    told = house_of(job(row(3, 3), site=Site(house="open", fans=2)))
    assert (told.standing, told.fans, told.rank) == ("open", 2, Rank.MEASURED)


@pytest.mark.parametrize(
    ("vented", "heat_kw", "words"),
    [(True, 6.0, ()), (None, 6.0, (UNSAID_VENT,)), (False, 0.0, (UNVENTED,))],
)
def test_an_unvented_heater_gives_no_heat_and_is_warned_of(vented, heat_kw, words):
    facts = job(row(3, 3), site=Site(heater_kw=6.0, heater_vented=vented))
    assert house_of(facts).heat_kw == heat_kw
    assert heater_warnings(facts) == words
    assert set(words) <= set(plan_job(facts).warnings)


def test_over_weeks_a_thermostat_turns_the_heater_down_and_without_one_nothing_differs():
    def told(**site):
        return job(row(3, 3), site=Site(**site))

    warm = told(heater_kw=9.0, heater_vented=True)
    assert kept_warm(warm) == replace(house_of(warm), heat_to_c=HEATED_TO_C)
    assert kept_warm(told()) == house_of(told())
    assert kept_warm(told(heater_kw=9.0, heater_vented=False)).heat_kw == 0
    assert kept_warm(told(), heat_kw=4.0).heat_kw == 4.0
