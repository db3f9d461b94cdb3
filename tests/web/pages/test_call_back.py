"""The page of a call after hand-over: questions, causes against the log, slips, both languages."""

from __future__ import annotations

import re
from urllib.parse import quote

import pytest
from tests.web.pages.office import Office, faults_of_html

PAGE = "/houses/two/call-back"


@pytest.fixture(scope="module")
def office(tmp_path_factory):
    found = Office(tmp_path_factory.mktemp("office"))
    found.enter()
    found.put_planned("Two rooms")
    found.app.state.live.replanning.tapped = lambda job: None
    yield found
    found.close()


def text_of(office, query=""):
    answer = office.get(f"{PAGE}?{query}" if query else PAGE)
    assert answer.status_code == 200
    assert faults_of_html(answer.text) == []
    return answer.text.replace("&#39;", "'")


def test_at_first_it_only_asks(office):
    text = text_of(office)
    assert "What does it look like?" in text
    assert "Likely causes" not in text
    assert text.count("<select") == 7
    assert f'action="{PAGE}"' in text
    assert 'method="get"' in text


def test_an_answer_gives_causes_with_reasons_and_what_to_take(office):
    text = text_of(office, "look=haze&cleaner=ammonia&where=all+over&when=5")
    first = re.search(r"<h3>([^<]+)</h3>", text)
    assert first[1] == "A cleaner that the sealer does not bear"
    assert "It is cleaned with ammonia." in text
    assert "no verdict: contract and local law win" in text
    assert "moisture meter" in text
    assert '<option value="ammonia" selected>' in text


def test_the_log_of_the_floor_is_held_against_it(office):
    for number in (1, 2):
        office.post("/houses/two/log", data={
            "word": "rinsed", "ph": "5.9", "rag": "grey", "round": str(number),
        }, files={"x": ("", b"")})  # fmt: skip
    text = text_of(office, "look=peeling")
    assert "Last pH 5.9; 7 to 9 passes." in text
    assert re.search(r"<h3>([^<]+)</h3>", text)[1] == (
        "Residue of the stain was left under the sealer"
    )


def test_what_cannot_be_understood_is_said_and_the_form_stays(office):
    text = text_of(office, "look=hazy&when=soon")
    assert "hazy is no answer" in text
    assert "Since when? A day, or months since hand-over: soon is neither a day" in text
    assert "when=" not in text.partition("<form")[0].partition("<h1")[2]
    assert "Likely causes" not in text
    assert "What does it look like?" in text


@pytest.mark.parametrize("when", ["5 months", "5 mo", "hace 5 meses"])
def test_months_are_told_as_people_say_them(office, when):
    told = text_of(office, f"look=haze&when={quote(when)}")
    found, _, form = told.partition("<form")
    assert found == text_of(office, "look=haze&when=5").partition("<form")[0]
    assert f'value="{when}"' in form


def test_strange_answers_do_no_harm(office):
    text = text_of(office, "when=%3Cscript%3E&x=1&room=%00")
    assert "<script>" not in text.replace("<script src", "").replace('<script type="module"', "")


def test_in_spanish_no_english_is_left(office):
    asked = f"{PAGE}?look=haze&cleaner=ammonia&rug=rubber&when=2&where=door"
    text = office.get(asked, headers={"accept-language": "es"}).text
    assert "Causas probables" in text
    assert "Un limpiador que el sellador no aguanta" in text
    assert 'lang="en"' not in text
