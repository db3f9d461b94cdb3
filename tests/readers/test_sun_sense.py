"""What a job says of windows and place: every disagreement, its place and its remedy."""

import pytest
from tests.job.sun_house import sun_job

from farwall.errors import Refused
from farwall.floor.geojson import floor_collection, floor_from_collection
from farwall.floor.nouns import Window
from farwall.readers.job_json import job_from, job_to_dict
from farwall.readers.job_settings import with_settings

FULL = Window(((0.0, 0.8), (0.0, 3.2)), 0.2, 2.0, "w", "west", 0.2, covered=True)


def told(**place):
    raw = job_to_dict(sun_job())
    raw["place"] = place
    return raw


def places(raw):
    with pytest.raises(Refused) as refused:
        job_from(raw, "it")
    return [one.where for one in refused.value.mistakes]


def test_a_sound_place_and_its_windows_come_back_as_they_were():
    job = sun_job(FULL)
    assert job_from(job_to_dict(job), "it") == job


def test_a_window_keeps_all_it_says_as_a_feature():
    floor = sun_job(FULL).floor
    assert floor_from_collection(floor_collection(floor))[0].windows == (FULL,)


def test_all_mistakes_come_at_once():
    raw = told(latitude_deg=95.0, time_zone="America/Nowhere")
    raw["floor"]["windows"][0] |= {"room": "atic", "line": [[0, 1], [0, 1]], "reveal_m": 3}
    assert set(places(raw)) == {
        "place",
        "place.latitude_deg",
        "place.time_zone",
        "floor.windows[0].room",
        "floor.windows[0].line",
        "floor.windows[0].reveal_m",
    }


def test_two_windows_of_one_id_are_refused():
    raw = told()
    raw["floor"]["windows"][1]["id"] = "west-window"
    assert places(raw) == ["floor.windows[1].id"]


def test_a_clock_that_is_an_hour_off_is_refused():
    """21 June 15:30 at UTC-7 is no time of New York, and is one of Denver only in winter."""
    near = {"latitude_deg": 40.0, "longitude_deg": -105.0}
    assert places(told(**near, time_zone="America/Denver")) == ["place.time_zone"]
    assert job_from(told(**near, time_zone="America/Phoenix"), "it").place.time_zone


def test_windows_can_be_typed_where_a_drawing_has_none():
    raw = job_to_dict(sun_job())
    words = [
        "floor.windows.2.line=[[8.5, 4], [9.5, 4]]",
        "floor.windows.2.sill_ft=3",
        "floor.windows.west-window.covered=true",
        "place.latitude_deg=41",
    ]
    job = job_from(with_settings(raw, words), "it")
    assert job.floor.windows[2].line == ((8.5, 4.0), (9.5, 4.0))
    assert job.floor.windows[2].sill_m == pytest.approx(0.9144)
    assert job.floor.windows[0].covered
    assert job.place.latitude_deg == 41


def test_a_line_that_is_none_is_a_mistake_and_no_crash():
    raw = with_settings(job_to_dict(sun_job()), ["floor.windows.0.line=[[0, 1"])
    assert places(raw) == ["floor.windows[0].line"]
