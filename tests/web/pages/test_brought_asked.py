"""A drawing that is asked about: several storeys, no scale; what is said makes the house."""

from __future__ import annotations

import json
import re
from dataclasses import replace

import pytest
from tests.shapes import TWO_ROOMS
from tests.web.pages.office import Office, faults_of_html

from farwall.errors import Refused
from farwall.facts.reading import Reading, Stated, Storey
from farwall.floor.nouns import Floor, Opening, Room
from farwall.job.exchange import collection_of
from farwall.phrasebook import speaking
from farwall.web.pages.brought import brought
from farwall.web.pages.brought_asked import asked_of, said_of
from farwall.web.pages.brought_stated import stated_rows, stated_told


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


def two_storeys() -> bytes:
    """The two rooms twice, one floor over the other, each with its way out."""
    floor = TWO_ROOMS.floor
    up = {room.id: f"up-{room.id}" for room in floor.rooms}
    rooms = [
        *(replace(room, storey="low") for room in floor.rooms),
        *(Room(up[room.id], room.polygon, room.name, "high") for room in floor.rooms),
    ]
    openings = [
        *floor.openings,
        *(Opening(f"up-{o.id}", o.kind, o.line, tuple(up[r] for r in o.rooms), o.width_m)
          for o in floor.openings),
    ]  # fmt: skip
    exits = (
        *TWO_ROOMS.exits,
        *(replace(e, id=f"up-{e.id}", opening=f"up-{e.opening}") for e in TWO_ROOMS.exits),
    )
    storeys = (Storey("low", "Ground floor", 0.0), Storey("high", "Upper floor", 2.7))
    reading = Reading("", "m", "m", 1.0, Floor(tuple(rooms), tuple(openings)), exits, storeys)
    return json.dumps(collection_of(reading)).encode()


def bring(office, content, name="oak.geojson"):
    return office.post("/houses/bring", files={"file": (name, content)})


def test_a_drawing_of_several_storeys_asks_which_one_this_job_is(office):
    answer = bring(office, two_storeys())
    assert answer.status_code == 303
    path = answer.headers["location"]
    assert re.fullmatch(r"/brought/[0-9a-f]{24}", path)
    text = office.get(path).text
    assert faults_of_html(text) == []
    area = sum(room.polygon.shape.area for room in TWO_ROOMS.floor.rooms)
    assert "Ground floor" in text
    assert f"2 rooms, {area:.1f} m²" in text
    assert "floor at +2.70 m (+8.9 ft)" in text
    picture = office.get(f"{path}/picture.svg")
    assert picture.headers["content-type"].startswith("image/svg+xml")
    assert b"Upper floor" in picture.content
    assert office.get("/").text.count("Ground floor") == 0


def test_each_storey_becomes_a_house_of_its_own(office):
    path = bring(office, two_storeys()).headers["location"]
    first = office.post(path, data={"storey": "low"})
    assert first.headers["location"] == "/houses/oak-ground-floor/first"
    assert "in the book already" in office.get(path).text
    second = office.post(path, data={"storey": "high"})
    assert second.headers["location"] == "/houses/oak-upper-floor/first"
    rooms = office.book.facts("oak-upper-floor", 1)["floor"]["rooms"]
    assert {one["storey"] for one in rooms} == {"high"}
    again = office.post(path, data={"storey": "low"})
    assert again.headers["location"] == "/houses/oak-ground-floor"
    assert len(office.book.versions("oak-ground-floor")) == 1


@pytest.mark.parametrize("told", [{}, {"storey": "attic"}, {"storey": ""}])
def test_without_a_storey_nothing_is_brought(office, told):
    path = bring(office, two_storeys()).headers["location"]
    answer = office.post(path, data=told)
    assert answer.status_code == 422
    assert "no storey was chosen" in answer.text
    assert faults_of_html(answer.text) == []


def test_a_page_that_is_not_there_is_said_so(office):
    assert office.get("/brought/0123").status_code == 404
    assert office.get("/brought/0123/picture.svg").status_code == 404
    assert office.post("/brought/0123", data={}).status_code == 404


def a_reading() -> Reading:
    floor = TWO_ROOMS.floor
    return Reading("DXF", "", "", None, floor, shapes_m_per_unit=0.5)


def test_a_length_that_is_known_gives_the_scale_by_hand():
    """Shapes stand at half a metre a unit: 4 m wide are 8 units; 10 m of tape are 1.25 m a unit."""
    asked = asked_of(a_reading())
    assert asked["scale"]
    whole = asked["measures"][0]
    bounds = [room.polygon.shape.bounds for room in TWO_ROOMS.floor.rooms]
    wide = max(b[2] for b in bounds) - min(b[0] for b in bounds)
    assert (whole["room"], whole["way"], whole["units"]) == ("", "across", wide / 0.5)
    said = said_of(asked, {"measure": "0", "length": "10 m", "unit": "in"})
    assert said.scale_m_per_unit == pytest.approx(10 / (wide / 0.5))
    assert said_of(asked, {"unit": "in"}).scale_m_per_unit == 0.0254


@pytest.mark.parametrize(
    "told",
    [{}, {"unit": "parsec"}, {"length": "long", "measure": "0"},
     {"length": "10 m", "measure": "999"}, {"length": "10 m", "measure": "-1"},
     {"length": "9000 m", "measure": "0"}],
)  # fmt: skip
def test_what_gives_no_scale_is_refused(told):
    with pytest.raises(Refused):
        said_of(asked_of(a_reading()), told)


def test_one_storey_with_a_scale_is_not_asked_about():
    assert asked_of(replace(a_reading(), scale_m_per_unit=1.0)) is None
    found = brought(two_storeys(), "oak.geojson", storey="low")
    assert (found.asked, found.id, found.storey) == (None, "oak-ground-floor", "low")


def test_stated_sizes_are_told_beside_the_outlines_in_both_languages():
    """Of rooms of 12 m² each one is stated at 12, one at 15 to the wall centres."""
    rooms = TWO_ROOMS.floor.rooms
    areas = [room.polygon.shape.area for room in rooms]
    stated = {
        rooms[0].id: Stated(areas[0], "net"), rooms[1].id: Stated(areas[1] * 1.25, "wall-centre"),
    }  # fmt: skip
    rows = stated_rows(Reading("IFC", "m", "m", 1.0, TWO_ROOMS.floor, stated=stated))
    english = stated_told(rows)
    assert english[0].startswith("Net areas in the file: 1 of 1 rooms agree")
    assert "middle of the walls" not in english[0]
    assert "middle of the walls" in english[1]
    assert f"stated {areas[1] * 1.25:.1f} m²" in english[1]
    with speaking("es"):
        assert stated_told(rows)[1].startswith("Áreas a ejes de pared")
