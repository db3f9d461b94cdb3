"""The sample day on its page: what now, every sample with what was found and what is missing."""

from __future__ import annotations

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.errors import Mistake, Refused
from farwall.facts.log import Entry

AT = "/houses/two/colour/sample-day"
HOUR = "2026-03-02T08"
JPEG = b"\xff\xd8\xff\xe0" + b"invented" * 8


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


def house(**changes):
    """Two rooms with two coats of one stain."""
    coats = [{"id": "first", "stain": "sand", "cut": "1:1"},
             {"id": "second", "stain": "sand", "cut": "1:2"}]  # fmt: skip
    return two_rooms(coats=coats, **changes)


def told(office, *entries):
    """Words of the log, one minute after another, as a phone sent them."""
    made = [
        Entry(
            f"t-{n:03d}", "two", word, f"2026-03-02T08:{n:02d}:00+00:00", "", "phone", n, 0, about
        )
        for n, (word, about) in enumerate(entries, 1)
    ]
    office.book.keep(made, received_at="2026-03-02T09:00:00+00:00")


LAID = {"sample": "B1", "cut": "1:1", "area_m2": 0.72, "before_kg": 2.3, "after_kg": 2.12}


def test_a_house_without_a_sample_is_led_to_the_first_cut(office):
    office.put(house(), name="Two rooms")
    text = office.get(AT).text
    assert faults_of_html(text) == []
    assert "Mix, weigh, lay" in text
    assert "Water first, then stain into the water" in text
    assert "/slab/two?samples" in text
    assert "/houses/two/papers/sample-day.pdf" in text
    for name in ("A1", "B1", "C1", "A2", "B2", "C2"):
        assert f">{name}</b>" in text


def test_what_was_found_and_what_is_missing_stands_with_its_sample(office):
    office.put(house())
    told(office, ("sample-laid", LAID), ("sample-sheen-lost", {"sample": "B1", "after_min": 9.5}),
         ("sample-dry", {"sample": "B1", "after_min": 130}))  # fmt: skip
    text = office.get(AT).text
    row = text.split(">B1</b>")[-1].split("</tr>")[0]
    assert "gloss 9.5 min" in row
    assert "dry 130 min" in row
    # 0.18 kg of a mix of 1.1 kg/L are 0.164 L on 0.72 m²: 4.4 m²/L, 179 ft²/gal
    assert "drank 179 ft²/gal" in row
    assert "slab, by infrared" in row
    assert "after B2" in row


def test_the_page_is_spanish_where_the_browser_is(office):
    office.put(house())
    text = office.get(AT, headers={"accept-language": "es"}).text
    assert "Mezcle, pese, ponga" in text
    assert "Primero el agua, luego el tinte en el agua" in text
    assert 'lang="en"' not in text.split("<main")[-1]


def photo_of(office):
    sha = office.book.put_file(JPEG)
    told(office, ("sample-laid", LAID),
         ("photo", {"file": sha, "sample": "B1", "state": "sealed", "light": "lamp"}))  # fmt: skip
    return sha


def test_the_colour_of_a_photo_is_read_and_entered_once(office, monkeypatch):
    office.put(house())
    sha = photo_of(office)
    assert "B1, sealed" in office.get(AT).text
    look = {"lightness": "41.2", "lab_a": "9", "lab_b": "21.5", "error_de": "1.1"}
    seen = []
    monkeypatch.setattr(
        "farwall.web.pages.colour.sample_day.look_told", lambda one, _: seen.append(one) or look
    )
    assert office.post(AT, data={"file": sha}).status_code == 303
    assert seen == [JPEG]
    (entry,) = [e.entry for e in office.book.entries("two") if e.entry.word == "sample-seen"]
    assert entry.about == {
        "sample": "B1", "state": "sealed", "light": "lamp", "file": sha, "lightness": 41.2,
        "lab_a": 9, "lab_b": 21.5, "error_de": 1.1,
    }  # fmt: skip
    assert "Read the colour" not in office.get(AT).text
    again = office.post(AT, data={"file": sha})
    assert again.status_code == 422
    assert "was read already" in again.text


def test_a_photo_that_tells_no_colour_says_why_and_stays(office, monkeypatch):
    office.put(house())
    sha = photo_of(office)

    def no(*_):
        raise Refused(Mistake("", "It is no picture.", "Take it again."))

    monkeypatch.setattr("farwall.web.pages.colour.sample_day.look_told", no)
    answer = office.post(AT, data={"file": sha})
    assert answer.status_code == 422
    assert "It is no picture." in answer.text
    assert "Read the colour" in answer.text


def test_a_helper_may_and_an_owner_may_not_have_it_read(office):
    office.put(house())
    photo_of(office)
    office.enter_as("helper")
    assert "Read the colour" in office.get(AT).text
    office.enter_as("owner")
    assert "Read the colour" not in office.get(AT).text


def test_facts_that_cannot_be_are_told_in_place_of_the_day(office):
    office.put(two_rooms(coats=[{"id": "first", "stain": "none", "cut": "1:1"}]))
    text = office.get(AT).text
    assert "There is no stain" in text
    assert "colour-day-rows" not in text


def test_a_cut_that_is_none_is_told_and_nothing_breaks(office):
    office.put(house())
    told(office, ("sample-laid", {"sample": "odd", "cut": "some of it"}))
    answer = office.get(AT)
    assert answer.status_code == 200
    assert ">odd</b>" in answer.text
