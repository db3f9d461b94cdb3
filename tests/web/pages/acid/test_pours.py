"""May this be poured: the page, the form that asks it, the form of the materials."""

import html
import re
from urllib.parse import urlencode

import pytest


def ask(own, **asked):
    return own.get("/houses/two/pour?" + urlencode(asked))


def words(answer):
    return html.unescape(re.sub(r"<[^>]+>", "", answer.text))


def test_the_page_asks_and_answers_without_script(own):
    assert "May this be poured?" in words(own.get("/houses/two/pour"))
    no = words(ask(own, vessel="open tub", first="sand", then="bleach"))
    assert "Refused" in no
    assert "Chlorine gas comes off at once" in no
    yes = words(ask(own, vessel="open tub", first="water", then="sand"))
    assert "Allowed, with care" in yes
    assert "Refused" not in yes


def test_order_vessel_and_what_was_left_are_heeded(own):
    assert "Refused" in words(ask(own, vessel="open tub", first="sand", then="water"))
    assert "Refused" in words(ask(own, vessel="metal pail", first="sand"))
    assert "Refused" in words(ask(own, vessel="floor", first="mix-sand", left="bleach"))
    assert "Refused" not in words(ask(own, vessel="floor", first="mix-sand", left="dried-sand"))


@pytest.mark.parametrize(
    "asked", [{"vessel": "bathtub", "first": "water"}, {"first": "<b>soup</b>"}, {"left": "water"}]
)
def test_what_nobody_knows_comes_back_with_a_word_and_no_verdict(own, asked):
    answer = ask(own, **asked)
    assert answer.status_code == 422
    assert "Allowed" not in words(answer)
    assert "<b>soup" not in answer.text


def test_the_materials_are_entered_and_then_asked_about(own):
    page = own.get("/houses/two/materials")
    version = re.search(r'name="version" value="(\d+)"', page.text)[1]
    told = {"version": version, "materials.0.id": "pail", "materials.0.name": "blue bottle",
            "materials.0.kind": "etching acid", "materials.0.sheet_read": "no"}  # fmt: skip
    assert own.post("/houses/two/materials", data=told).status_code == 303
    said = words(ask(own, vessel="floor", first="pail"))
    assert "blue bottle" in said
    assert "Refused" in said
    assert "An etch before the stain takes the lime away" in said


def test_in_spanish_every_sentence_of_an_answer_is_spanish(own):
    asked = urlencode({"vessel": "sprayer", "first": "bicarbonate", "then": "sand",
                       "left": "ammonia water"})  # fmt: skip
    said = own.get(f"/houses/two/pour?{asked}", headers={"accept-language": "es"}).text
    assert "No se permite" in said
    assert 'lang="en"' not in said.split("acid-pours-answer")[1].split("<form")[0]


def test_the_standing_table_of_the_house_is_one_page_that_asks_too(own):
    page = own.get("/houses/two/acid/pours")
    told = words(page)
    assert page.status_code == 200
    assert "Never together" in told
    assert "sand with bleach, pool chlorine." in told
    assert "Sanding the stained floor dry: Refused." in told
    assert 'action="/houses/two/pour"' in page.text
    assert "/houses/two/acid/pours" in own.get("/houses/two/pour").text
