"""A floor without a plan shows the rooms that its reasons name, and leads to them drawn."""

import copy

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.readers.job_json import job_from
from farwall.web.pages.refused_floor import refused_floor, rooms_named


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


def shut(job="two"):
    """The two rooms with a wall where the door between them was."""
    facts = copy.deepcopy(two_rooms(id=job))
    openings = facts["floor"]["openings"]
    facts["floor"]["openings"] = [one for one in openings if len(one["rooms"]) == 1]
    return facts


def test_a_room_is_named_where_its_name_stands_by_itself():
    facts = two_rooms()
    facts["floor"]["rooms"][0]["name"] = "Bath"
    facts["floor"]["rooms"][1]["name"] = "Master bath"
    floor = job_from(facts, "two").floor
    ids = [one["id"] for one in facts["floor"]["rooms"]]

    def named(*reasons):
        return [one.id for one in rooms_named(floor, reasons)]

    assert named("No way in to Bath: no opening joins it.") == ids[:1]
    assert named("No way in to Master bath: no opening joins it.") == ids[1:]
    assert named("No way in to Master bath and Bath.") == ids
    assert named("Bathe it.", "Nothing.") == []


def test_where_no_room_is_named_the_drawing_itself_is_offered():
    found = refused_floor("two", two_rooms(), ["There is no such day."])
    assert found.ways == (("Mend it in the drawing", "/houses/two/draw"),)
    assert "look here" not in found.map


@pytest.mark.parametrize("before", [False, True])
def test_the_page_of_the_house_leads_to_the_room(office, before):
    if before:
        office.put_planned("Two rooms")
    office.put(shut())
    office.book.put_document(
        "plan-of", "two", {"facts": 2 if before else 1, "faults": [],
                           "no": ["No way in to Back room: no opening joins it to a way out."]},
    )  # fmt: skip
    text = office.get("/houses/two").text
    assert faults_of_html(text) == []
    assert '<a href="/houses/two/draw?room=back">Back room in the drawing</a>' in text
    assert "look here" in text
    page = office.get("/houses/two/draw?room=back").text
    assert "&#34;room&#34;: &#34;back&#34;" in page
