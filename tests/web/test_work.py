"""The slow work of a door: what the checker finds is told as the job tells it, in Spanish too."""

import pytest
from tests.midday import day_of
from tests.web.pages.office import two_rooms

from farwall.phrasebook import in_spanish
from farwall.readers.plan_json import plan_to_dict
from farwall.web.work import plan_of, rest_of

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


def test_the_rest_of_a_day_goes_by_the_sun_where_the_place_is_told():
    """At 50° north in mid-November it sets before five: the second coat waits for a morning."""
    plan = plan_to_dict(day_of("quince-street")) | {"starts_at": "2026-11-15T08:00:00-06:00"}
    done = [f"first.{n}" for n in range(1, 9)]
    at = "2026-11-15T09:05:00-06:00"
    told = [
        {"entry": {"id": f, "job": "q", "word": "field-done", "at": at, "about": {"field": f}},
         "place": n, "received_at": at, "clock_off_s": 0.0}
        for n, f in enumerate(done, 1)
    ]  # fmt: skip
    begins = [
        min(f["start_min"] for f in rest_of(plan, told, 510.0, sun=sun).document["fields"]
            if f["coat"] == "second")
        for sun in (None, (50.0, -105.0))
    ]  # fmt: skip
    assert begins[0] == pytest.approx(510, abs=2)
    assert begins[1] == pytest.approx(1440, abs=2)
