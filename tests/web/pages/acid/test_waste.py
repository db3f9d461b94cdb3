"""The waste water on the acid page, its form, its paper: over HTTP, in both languages."""

import json

import pytest
from tests.web.pages.office import START, Office, faults_of_html, two_rooms

STAIN = {
    "id": "umber", "name": "umber", "density_kg_l": 1.25, "chromate": False,
    "contents": [{"substance": "copper(II) chloride", "mass_percent_low": 1,
                  "mass_percent_high": 10},
                 {"substance": "manganese(II) chloride", "mass_percent_low": 10}],
}  # fmt: skip
FACTS = {
    "stains": [STAIN], "coats": [{"id": "c1", "stain": "umber", "cut": "1:1"}],
    "survey": two_rooms()["survey"] | {"waste": "drums"},
}  # fmt: skip
SPANISH = {"accept-language": "es"}
WORD = {
    "version": "1", "discharge.words.0.way": "sewer", "discharge.words.0.who": "Ana Poole",
    "discharge.words.0.office": "Sewer district", "discharge.words.0.on": "2026-01-02",
    "discharge.words.0.in_writing": "yes", "discharge.words.0.limits.least_ph": "5.5",
    "discharge.words.0.limits.copper_mg_l": "1",
    "discharge.tests.0.drum": "1", "discharge.tests.0.found_ph": "8",
    "discharge.tests.0.copper_mg_l": "12", "discharge.tests.0.water_l": "20",
}  # fmt: skip


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put(two_rooms(**FACTS), name="Two")
    yield found
    found.close()


def part(office, **more):
    office.get("/houses/two")  # the plan is made meanwhile
    text = office.get("/houses/two/acid/waste", **more).text
    assert faults_of_html(text) == []
    return text[text.index('id="acid-waste"') :]


def test_the_part_shows_metals_limits_and_the_ways_on(office):
    text = part(office)
    for one in ("copper", "0.06 to 6", "much stays", "Clear is not clean", "no way out"):
        assert (one in text) is (one != "no way out")
    assert "/houses/two/waste" in text
    assert "/houses/two/papers/waste-page.pdf" in text
    assert "Hexavalent chromium changes the job" not in text


def test_the_part_in_spanish_says_no_english(office):
    text = part(office, headers=SPANISH)
    for one in ("cobre", "queda mucho", "Clara no es limpia", "y más"):
        assert one in text
    for one in ("copper", "stays", "drum", "sewer", " and more", "Never", "hazardous"):
        assert one not in text


def test_a_way_that_is_none_is_refused_on_the_page(office):
    office.put(two_rooms(**FACTS | {"survey": FACTS["survey"] | {"waste": "storm drain"}}))
    assert "No: there is only a storm drain" in part(office)


def test_chromate_changes_the_page(office):
    office.put(two_rooms(**FACTS | {"stains": [STAIN | {"chromate": True}]}))
    text = part(office)
    assert "Hexavalent chromium changes the job" in text
    assert "0.5 µg/m³" in text


def test_what_is_typed_becomes_facts_and_is_held_to_its_limits(office):
    answer = office.post("/houses/two/waste", data=WORD)
    assert answer.headers["location"] == "/houses/two/waste?kept=yes"
    said = office.book.facts("two")["discharge"]
    assert said["words"][0]["limits"] == {"least_ph": 5.5, "copper_mg_l": 1}
    assert said["words"][0]["in_writing"] is True
    assert said["tests"][0]["water_l"] == pytest.approx(20 * 3.785411784)
    text = part(office)
    assert "above." in text
    assert "copper 12 against 1." in text
    assert "measured here" in text
    spanish = part(office, headers=SPANISH)
    assert "por encima." in spanish
    assert "cobre 12 contra 1." in spanish


def test_milligrams_a_litre_are_no_gallons(office):
    text = office.get("/houses/two/waste").text
    assert "Copper, mg/L" in text


def test_a_word_without_name_or_day_is_refused_beside_its_blank(office):
    told = {"version": "1", "discharge.words.0.way": "sewer", "discharge.words.0.on": "soon"}
    answer = office.post("/houses/two/waste", data=told)
    assert answer.status_code == 422
    assert len(office.book.versions("two")) == 1
    assert answer.text.count('aria-invalid="true"') >= 2
    told |= {"discharge.words.0.who": "Ana", "discharge.words.0.office": "District"}
    answer = office.post("/houses/two/waste", data=told)
    assert answer.status_code == 422
    assert "is not a day" in answer.text


def test_a_new_row_left_as_it_stands_is_no_row(office):
    """What a browser sends of rows that nobody touched."""
    empty = {"version": "1", "discharge.words.0.in_writing": "", "discharge.words.0.who": "",
             "discharge.words.0.way": "", "discharge.tests.0.drum": ""}  # fmt: skip
    answer = office.post("/houses/two/waste", data=empty)
    assert answer.headers["location"].endswith("kept=same")
    text = office.get("/houses/two/waste").text
    box = text[text.index('name="discharge.words.0.in_writing"') :]
    assert box[: box.index("</select>")].count("selected") == 1
    assert 'value="" selected' in box[: box.index("</select>")]


def test_each_stain_is_asked_by_its_name_what_washes_off(office):
    text = office.get("/houses/two/waste").text
    assert "umber" in text
    answer = office.post("/houses/two/waste", data={"version": "1", "stains.0.washed_off_percent":
                                                    "4"})  # fmt: skip
    assert answer.headers["location"].endswith("kept=yes")
    assert office.book.facts("two")["stains"][0]["washed_off_percent"] == 4


def test_the_paper_is_handed_out_with_the_log_in_it(office):
    office.get("/houses/two")
    names = office.get("/houses/two/papers").text
    assert "page for the utility" in names
    answer = office.get("/houses/two/papers/waste-page.pdf")
    assert answer.status_code == 200
    assert answer.content.startswith(b"%PDF")
    plain = answer.content
    office.post("/houses/two/log", data={
        "word": "waste", "drum": "7", "gal": "40", "way": "hauled", "manifest": "M-7",
        "id": "0190f0e0-0000-7000-8000-000000000001", "day": START.date().isoformat(),
        "time": "09:00",
    })  # fmt: skip
    assert len(office.book.entries("two")) == 1, json.dumps(office.get("/houses/two/log").text)[
        :300
    ]
    assert office.get("/houses/two/papers/waste-page.pdf").content != plain
