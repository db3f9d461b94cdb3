"""Before and after: two photos of a place are chosen, the firm's print brings its values."""

import io
import re
from datetime import timedelta

import pypdfium2
import pytest
from PIL import Image
from tests.web.pages.office import START, Office, faults_of_html

from farwall.errors import Refused
from farwall.readers.colour_photo.values import values_in
from farwall.web.firm import keep_print_values, print_values
from farwall.web.words import words

PATH = "/houses/two/colour/pairs"
CSV = b"patch,L,a,b\nB3,66.1,6.2,17.0\npaper,94,0,1\n"
EN = words("en")


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.clock = START + timedelta(hours=6)
    found.enter()
    found.put_planned("Two rooms")
    found.app.state.live.replanning.tapped = lambda job: None
    yield found
    found.close()


def picture(shade):
    held = io.BytesIO()
    Image.new("RGB", (320, 240), (shade, 120, 90)).save(held, "PNG")
    return held.getvalue()


def taken(office, shade, room, time):
    data = {"word": "photo", "room": room, "day": "2026-06-08", "time": time}
    files = {"file": (f"{shade}.png", picture(shade))}
    answer = office.post("/houses/two/log", data=data, files=files)
    assert answer.status_code == 303, re.findall(r"<li>.*?</li>", answer.text)


def ids(office, name):
    return re.findall(rf'name="{name}" value="([^"]+)"', office.get(PATH).text)


def test_photos_of_a_place_stand_there_to_be_chosen_and_the_paper_shows_those_two(office):
    for shade, time in ((40, "09:00"), (90, "10:00"), (200, "11:00")):
        taken(office, shade, "front", time)
    taken(office, 60, "back", "12:00")
    text = office.get(PATH).text
    assert faults_of_html(text) == []
    assert text.count('type="radio"') == 6  # one photo alone is no choice
    assert EN["colour-pairs-one"] in text
    before, after = ids(office, "before")[1], ids(office, "after")[2]
    paper = office.get(f"/houses/two/papers/before-after.pdf?before={before}&after={after}")
    document = pypdfium2.PdfDocument(paper.content)
    assert len(document) == 1
    page = document[0].get_textpage().get_text_bounded()
    assert "10:00" in page
    assert "11:00" in page
    assert "9:00 " not in page
    same = office.get(f"/houses/two/papers/before-after.pdf?before={before}&after={before}")
    assert same.status_code == 422
    assert "two different photos" in same.text


def test_without_photos_it_says_so(office):
    assert EN["colour-pairs-none"] in office.get(PATH).text


def test_the_firms_print_is_kept_read_with_and_forgotten(office, monkeypatch):
    assert print_values(office.book) == {}
    answer = office.post(PATH, files={"file": ("print.csv", CSV)})
    assert answer.status_code == 303
    values = {"B3": (66.1, 6.2, 17.0), "paper": (94.0, 0.0, 1.0)}
    assert print_values(office.book) == values
    assert EN["colour-pairs-measured"].format(n=2) in office.get(PATH).text
    asked = []

    def apart(content, *, name="", own_values=None):
        asked.append(own_values)
        raise Refused

    monkeypatch.setattr("farwall.readers.apart.colours.photo_shown_apart", apart)
    for shade, time in ((40, "09:00"), (90, "10:00")):
        taken(office, shade, "front", time)
    office.get("/houses/two/papers/before-after.pdf")
    assert asked[0] == values
    assert office.post(PATH, data={"forget": "yes"}).status_code == 303
    assert print_values(office.book) == {}


def test_what_is_no_table_is_refused_with_every_mistake(office):
    answer = office.post(PATH, files={"file": ("print.csv", b"patch,L,a,b\nZZ,1,2,3\nB3,x,1,2\n")})
    assert answer.status_code == 422
    assert "ZZ" in answer.text
    assert "B3" in answer.text
    assert print_values(office.book) == {}


def test_values_come_back_as_they_were_kept(office):
    keep_print_values(office.book, values_in(CSV))
    assert print_values(office.book) == values_in(CSV)
