"""A floor walked with a tape: rooms added one by one, a slip named, then a house."""

import pytest
from tests.readers.walk.test_read import EXAMPLE, SLIPPED
from tests.web.pages.office import Office, faults_of_html

from farwall.readers.job_json import job_from
from farwall.web.pages.walk_form import RoomBlanks, blanks_in, lines_of, more_walls

TEXT = EXAMPLE.decode().split("\n", 1)[1]


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


def room(name, *walls, turns=(), ways=(), check=("1", "3", "")):
    form = {"name": name}
    for n, long in enumerate(walls, 1):
        form[f"wall.{n}"] = long
        form[f"turn.{n}"] = turns[n - 1] if turns else "right"
    for n, way in enumerate(ways, 1):
        form |= {f"way.{n}.{key}": value for key, value in way.items()}
    return form | dict(zip(("check.from", "check.to", "check.long"), check, strict=True))


DEN = room(
    "Den", "10'", "8'", "10'", "8'",
    ways=({"kind": "door", "wall": "1", "at": "2'", "wide": "3'", "deep": "", "to": ""},),
    check=("1", "3", "12' 9 5/8\""),
)  # fmt: skip


def post(office, **form):
    return office.post("/walk", data={"house": "Sage Court", "units": "us", "walk": "", **form})


def test_the_empty_form_is_sound_in_both_languages(office):
    for language in ("en", "es"):
        text = office.get("/walk", headers={"accept-language": language}).text
        assert faults_of_html(text) == []
        assert "<svg" not in text


def test_a_room_is_added_and_drawn_and_the_blanks_are_empty_again(office):
    answer = post(office, do="add", **DEN)
    assert answer.status_code == 200
    assert faults_of_html(answer.text) == []
    assert "room Den\n10&#39;, right\n8&#39;, right" in answer.text
    assert "door in wall 1 at 2&#39; wide 3&#39; to outside" in answer.text
    assert 'name="name" value=""' in answer.text
    assert "80 ft² in one room" in answer.text
    assert "<svg" in answer.text


def test_what_is_not_understood_stays_in_its_blanks(office):
    answer = post(office, do="add", **{**DEN, "wall.2": "banana"})
    assert answer.status_code == 422
    assert "banana` is no length" in answer.text
    assert 'value="banana"' in answer.text
    assert "room Den" not in answer.text


def test_more_walls_keep_what_was_typed(office):
    text = post(office, do="more", **DEN).text
    assert 'name="wall.6"' in text
    assert 'value="Den"' in text


def test_the_example_closes(office):
    text = post(office, do="see", walk=TEXT).text
    assert "417 ft² in 4 rooms" in text
    assert "Measure again" not in text
    assert "1 in 1,458" in text


def test_the_wall_that_slipped_is_named_in_both_languages(office):
    slipped = SLIPPED.decode().split("\n", 1)[1]
    text = post(office, do="see", walk=slipped).text
    assert "Wall 2 of Hall: 20&#39; 11 7/8&#34; was read, 11 7/8 in too long" in text
    assert 'stroke-dasharray="9 4"' in text
    assert faults_of_html(text) == []
    spanish = office.post(
        "/walk",
        data={"house": "X", "units": "us", "walk": slipped, "do": "see"},
        headers={"accept-language": "es"},
    ).text
    assert "Pared 2 de Hall: se leyó 20&#39; 11 7/8&#34;, sobran 11 7/8 pulg" in spanish


def test_a_walk_becomes_a_house(office):
    answer = post(office, do="make", walk=TEXT)
    assert answer.headers["location"] == "/houses/sage-court/first"
    job = job_from(office.book.facts("sage-court"), "the house")
    assert [one.label for one in job.floor.rooms] == ["Hall", "Living room", "Bedroom", "Bath"]
    assert len(job.floor.openings) == 4
    assert len(job.exits) == 1
    assert job.wishes.units == "us"


def test_without_a_way_out_no_house_is_made(office):
    answer = post(office, do="make", **{**DEN, "way.1.at": "", "way.1.wide": ""})
    assert answer.status_code == 422
    assert "nobody may be shut in" in answer.text
    assert "<svg" in answer.text


def test_metres(office):
    form = {**room("Baño", "3,81", "2.1", "3.81", "2.1"), "units": "metric", "do": "add"}
    text = post(office, **form).text
    assert "8.0 m² in one room" in text


def test_words_between_tags_are_escaped(office):
    text = post(office, do="add", **{**DEN, "name": "<b>Den"}).text
    assert "<b>Den" not in text
    assert "&lt;b&gt;Den" in text


def test_blank_sheets_are_a_pdf(office):
    answer = office.get("/walk/sheet.pdf")
    assert answer.headers["content-type"] == "application/pdf"
    assert answer.content.startswith(b"%PDF")


def test_lines_of_a_room():
    told = room("Bed, room", "12 foot, 6", "9'", "12' 6\"", "9'", turns=("left",) * 4)
    assert lines_of(blanks_in(told)) == [
        "room Bed room", "12 foot 6, left", "9', left", "12' 6\", left", "9', left",
    ]  # fmt: skip
    assert not RoomBlanks().told
    assert len(more_walls(RoomBlanks()).walls) == 6


def test_a_walk_in_a_file_can_be_brought(office):
    answer = office.post("/houses/bring", files={"file": ("walk.txt", EXAMPLE)}, data={})
    assert answer.status_code == 303
    job = answer.headers["location"].split("/")[2]
    assert len(office.book.facts(job)["floor"]["rooms"]) == 4
