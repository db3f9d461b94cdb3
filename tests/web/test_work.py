"""The slow work of a door: what the checker finds is told as the job tells it, in Spanish too."""

import pytest
from tests.web.pages.office import two_rooms

from farwall.phrasebook import in_spanish
from farwall.web.work import plan_of

SLOW_HAND = {"spray_m2_min": 0.35}
"""Two square metres take six minutes: no edge lives so long."""


@pytest.mark.parametrize(("units", "place"), [("us", "16' 3\")"), ("metric", "4.95 m)")])
def test_faults_name_rooms_hours_and_places_in_the_units_of_the_job(units, place):
    made = plan_of(two_rooms(tools=SLOW_HAND, wishes={"units": units}), "two")
    dead = next(one for one in made.faults if one.startswith("dead-edge: "))
    assert "in Back room at (" in dead
    assert place in dead
    assert "band 1.1.2" in dead
    assert dead.startswith("dead-edge: At 8:29 am (" if units == "us" else "dead-edge: At 8:29 (")
    spanish = in_spanish(dead, frozenset({"Back room"}))
    assert spanish is not None
    assert spanish.startswith("orilla muerta: A las 8:29")
