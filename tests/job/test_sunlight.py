"""The sun through a job's windows: whose room, which half hours, what is missing for it."""

import subprocess
import sys
from dataclasses import replace

import pytest
from tests.job.sun_house import EAST, WEST, covered, sun_job
from tests.strategies.weather import epw_text

from farwall.facts.job import Place
from farwall.floor.nouns import Window
from farwall.job.sun_heat import heat_by_room
from farwall.job.sunlight import missing_for_sun, panes_of, place_of, sunlight_of
from farwall.readers.epw import parse_epw
from farwall.readers.job_json import job_to_text


def of_day(job, number=0):
    found = sunlight_of(job)
    assert found is not None
    return found.day(number)


def test_the_east_room_has_sun_before_noon_and_the_west_room_after():
    """At 40° N on the clock of its own meridian noon lies 12 h after midnight, 8:00 + 240 min."""
    patches = of_day(sun_job(at="08:00"))
    east = [one for one in patches if one.room == "east"]
    west = [one for one in patches if one.room == "west"]
    assert east
    assert west
    assert max(one.to_min for one in east) <= 240 + 30
    assert min(one.from_min for one in west) >= 240 - 30


def test_patches_are_half_hours_of_the_wall_clock_whenever_the_day_begins():
    for one in of_day(sun_job(at="08:17")):
        assert (one.from_min + 17) % 30 == pytest.approx(0)
        assert one.to_min - one.from_min == pytest.approx(30)


def test_no_patch_leaves_its_room():
    job = sun_job()
    shapes = {room.id: room.polygon.shape for room in job.floor.rooms}
    for one in of_day(job):
        assert one.polygon.shape.difference(shapes[one.room].buffer(0.001)).area < 1e-6


def test_low_evening_sun_goes_through_the_doorway_into_the_hall():
    """Window and door lie in line from west to east, where the sun sets at the equinox."""
    late = [one for one in of_day(sun_job(day="2026-03-20")) if one.from_min > 60]
    assert any(one.room == "hall" for one in late)


def test_a_later_day_has_its_own_sun():
    later = of_day(sun_job(), 1)
    assert all(24 * 60 - 930 <= one.from_min < 48 * 60 - 930 for one in later)
    assert later


def test_a_covered_window_lets_no_sun_in():
    assert sunlight_of(covered(sun_job())) is None
    half = sun_job(WEST, replace(EAST, covered=True))
    assert {one.room for one in of_day(half)} <= {"west", "hall"}


def test_each_window_looks_its_way_and_north_turns_it():
    job = sun_job()
    assert [pane.looks for pane in panes_of(job.floor)] == ["west", "east"]
    turned = replace(job.floor, north_deg=90.0)
    assert [pane.looks for pane in panes_of(turned)] == ["south", "north"]


def test_a_window_far_from_every_room_is_left_out():
    lost = Window(((-3.0, 1.0), (-3.0, 2.0)), id="shed")
    assert [pane.name for pane in panes_of(sun_job(WEST, lost).floor)] == ["west-window"]


def test_what_is_missing_is_named_and_no_sun_is_reckoned():
    job = sun_job(place=Place(), starts_at=None)
    bare = replace(job, floor=replace(job.floor, north_deg=None))
    assert sunlight_of(bare) is None
    assert missing_for_sun(bare) == (
        "floor.north_deg",
        "place.latitude_deg and place.longitude_deg",
        "starts_at",
    )
    assert missing_for_sun(covered(bare)) == ()


def test_the_place_told_wins_over_that_of_the_weather_file():
    weather = parse_epw(epw_text())
    assert place_of(sun_job(), weather) == (40.0, -105.0)
    found = place_of(sun_job(place=Place()), weather)
    assert found == (weather.place.latitude_deg, weather.place.longitude_deg)


def test_panes_of_a_room_are_those_whose_sun_reaches_it_then():
    found = sunlight_of(sun_job(at="08:00"))
    assert found is not None
    assert [pane.name for pane in found.panes_of("east", 0.0, 60.0)] == ["east-window"]
    assert found.panes_of("west", 0.0, 60.0) == ()


def test_heat_follows_the_beam_of_the_file_and_spreads_over_the_floor_by_hand():
    """By hand: half of the beam is half of the heat; a dark hour gives none."""
    found = sunlight_of(sun_job(at="16:00"))
    assert found is not None
    full = heat_by_room(found, found.starts_at, 3, direct_w_m2=[800.0, 800.0, None])
    half = heat_by_room(found, found.starts_at, 3, direct_w_m2=[400.0, 0.0, None])
    assert full["west"][0] == pytest.approx(2 * half["west"][0])
    assert half["west"][1] == 0.0
    assert full["west"][2] == half["west"][2] > 0
    assert "east" not in full


@pytest.mark.parametrize("north", ["none", "12"])
def test_a_job_without_windows_never_loads_what_reckons_the_sun(north, tmp_path):
    """It takes two seconds to import; windows without a north do not pay for it either."""
    job = sun_job() if north == "none" else sun_job(at="08:00")
    floor = (
        replace(job.floor, north_deg=None)
        if north == "none"
        else replace(job.floor, windows=(), north_deg=12.0)
    )
    path = tmp_path / "job.json"
    path.write_text(job_to_text(replace(job, floor=floor)))
    code = (
        "import sys; from farwall.readers.job_json import read_job; "
        "from farwall.job.plan_job import plan_job; plan_job(read_job(sys.argv[1])); "
        "sys.exit(any(name.split('.')[0] in ('pvlib', 'pandas') for name in sys.modules))"
    )
    assert subprocess.run([sys.executable, "-c", code, str(path)], check=False).returncode == 0
