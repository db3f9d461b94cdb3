"""A floor typed by its sizes: made whole or not at all, every mistake beside its blank."""

import pytest
from tests.web.pages.office import Office, faults_of_html

from farwall.readers.job_json import job_from
from farwall.web.pages.rooms import rows_in, sized_rooms


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


def told(*rooms, house="Sage Court", units="us"):
    form = {"house": house, "units": units}
    for n, (name, long, wide, way, leads) in enumerate(rooms, 1):
        keys = {"name": name, "long": long, "wide": wide, "way": way, "leads": leads}
        form |= {f"room.{n}.{key}": text for key, text in keys.items()}
    return form


GREAT = ("Great room", "20", "16", "door", "0")
BED = ("Bedroom", "12' 6\"", "11", "door", "1")
NONE = ("", "", "", "door", "1")


def test_the_empty_form_is_sound(office):
    for language in ("en", "es"):
        text = office.get("/rooms", headers={"accept-language": language}).text
        assert faults_of_html(text) == []
    assert text.count("<fieldset") == 6


def test_rooms_become_a_house_with_its_defaults_in_writing(office):
    answer = office.post("/rooms", data=told(GREAT, BED, NONE))
    assert answer.headers["location"] == "/houses/sage-court/first"
    facts = office.book.facts("sage-court")
    job = job_from(facts, "the house")
    areas = [room.polygon.shape.area for room in job.floor.rooms]
    assert areas == pytest.approx([20 * 16 * 0.09290304, 12.5 * 11 * 0.09290304], abs=0.01)
    assert [one.label for one in job.floor.rooms] == ["Great room", "Bedroom"]
    assert job.starts_at == "2026-06-09T08:00:00+00:00"  # the working day after that of the book
    assert job.tools.tank_l == pytest.approx(7.571)
    assert [coat.cut for coat in job.coats] == ["1:1", "1:2"]
    assert job.wishes.units == "us"


def test_two_houses_of_one_name_get_ids_of_their_own(office):
    office.post("/rooms", data=told(GREAT))
    answer = office.post("/rooms", data=told(GREAT))
    assert answer.headers["location"] == "/houses/sage-court-2/first"


def test_more_rooms_keeps_what_was_typed(office):
    text = office.post("/rooms", data=told(GREAT, BED) | {"more": "yes"}).text
    assert text.count("<fieldset") == 6
    assert 'value="Great room"' in text
    assert 'value="12&#39; 6&#34;"' in text
    assert office.book.jobs() == []


def test_all_mistakes_stand_beside_their_blanks_and_nothing_is_kept(office):
    rooms = [("", "20", "16", "door", "0"), ("Bed", "x", "11", "door", "4"), NONE, NONE]
    answer = office.post("/rooms", data=told(*rooms))
    assert answer.status_code == 422
    assert faults_of_html(answer.text) == []
    for place in ("1-name", "2-long", "2-leads"):
        assert f'href="#b-room-{place}"' in answer.text
        assert f'id="b-room-{place}-wrong"' in answer.text
    assert office.book.jobs() == []


@pytest.mark.parametrize(
    ("rooms", "words"),
    [
        ([NONE], "No room is told yet"),
        ([("Bed", "12", "11", "door", "2"), ("Hall", "9", "4", "door", "1")], "No room has a way"),
        ([("Bed", "1", "400", "door", "0")], "long and wide"),
        ([("A", "4", "4", "door", "0")] + [(f"B{n}", "30", "30", "door", "1") for n in range(5)],
         "no wall of A is left"),
    ],
)  # fmt: skip
def test_what_is_no_floor_is_said_in_words(office, rooms, words):
    answer = office.post("/rooms", data=told(*rooms))
    assert answer.status_code == 422
    assert words in answer.text


def test_metres_are_metres():
    form = told(("Room", "4.5", "3", "door", "0"), units="metric")
    (room,), numbers = sized_rooms(rows_in(form, 1), "metric")
    assert (room.long_m, room.wide_m, numbers) == (4.5, 3.0, [1])


def test_rooms_of_one_name_are_told_apart():
    form = told(GREAT, GREAT)
    rooms, _ = sized_rooms(rows_in(form, 2), "us")
    assert [one.id for one in rooms] == ["great-room", "great-room-2"]
