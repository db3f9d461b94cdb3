"""The part on strength of the page, and the form of the sheets, over HTTP."""

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    stains = [{"id": "sand", "name": "wet sand", "hcl_percent_low": 10, "hcl_percent_high": 20,
               "contents": [{"substance": "iron(III) chloride", "mass_percent_low": 5}]},
              {"id": "moss"}]  # fmt: skip
    coats = [{"id": "one", "stain": "sand", "cut": "1:1", "added_acid_fl_oz_per_gal": 8},
             {"id": "two", "stain": "moss", "cut": "1:2"}]  # fmt: skip
    found.put(two_rooms(stains=stains, coats=coats), name="Two")
    yield found
    found.close()


ENGLISH = (
    "In the tub",
    "Coat 1: wet sand at 1:1",
    "Coat 2, mix 1",
    "Added acid makes of that",
    "of water, then",
    "Fumes rise",
    "ferric from 5 %",
    "was not read for chromate yet",
    "The acid in moss was not told",
    "Enter what the sheets say",
)
SPANISH = (
    "En la tina",
    "Mano 1: wet sand a 1:1",
    "Mano 2, mezcla 1",
    "El ácido agregado lo multiplica por",
    "de agua, luego",
    "suben vapores",
    "férrico desde 5 %",
    "nadie ha buscado cromato",
    "No se anotó el ácido de moss",
    "Anotar lo que dicen las hojas",
)


@pytest.mark.parametrize(("language", "words"), [("en", ENGLISH), ("es", SPANISH)])
def test_the_page_tells_strength_and_asks_for_what_is_missing(office, language, words):
    office.get("/houses/two/acid/strength")  # has it planned
    answer = office.get("/houses/two/acid/strength", headers={"accept-language": language})
    assert answer.status_code == 200
    assert faults_of_html(answer.text) == []
    for one in words:
        assert one in answer.text


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_form_is_sound_and_asks_sheet_by_sheet(office, language):
    answer = office.get("/houses/two/sheets", headers={"accept-language": language})
    assert answer.status_code == 200
    assert faults_of_html(answer.text) == []
    assert "wet sand</h2>" in answer.text
    assert 'name="stains.1.contents.0.substance"' in answer.text


def test_what_is_typed_is_kept_and_comes_back(office):
    told = {"version": "1", "stains.1.hcl_percent_high": "12", "stains.1.oxidiser": "yes"}
    answer = office.post("/houses/two/sheets", data=told)
    assert answer.headers["location"] == "/houses/two/sheets?kept=yes"
    moss = office.book.facts("two")["stains"][1]
    assert moss == {"id": "moss", "hcl_percent_high": 12, "oxidiser": True}


def test_acid_that_a_sheet_forbids_is_refused_beside_the_form(office):
    told = {"version": "1", "stains.0.oxidiser": "yes"}
    answer = office.post("/houses/two/sheets", data=told)
    assert answer.status_code == 422
    assert "chlorine" in answer.text
    assert len(office.book.versions("two")) == 1
