"""The first call on a page: answered beside, nothing kept until a house is made of it."""

import pytest
from tests.web.pages.office import Office, faults_of_html

from farwall.job.enquiry.questions import ASKED
from farwall.readers.job_json import job_from
from farwall.web.words import words

CALL = {
    "slab": "new", "slab_age_days": "45", "covering": "bare", "film": "nothing", "pours": "2",
    "waste": "sewer", "overlay": "leveller", "heated": "yes", "area": "1180", "work": "one colour",
}  # fmt: skip


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_form_is_sound_empty_answered_and_wrong(office, language):
    headers = {"accept-language": language}
    empty = office.get("/enquiry", headers=headers)
    answered = office.post("/enquiry", data=CALL, headers=headers)
    wrong = office.post("/enquiry", data={"circuits": "two"}, headers=headers)
    for one in (empty, answered, wrong):
        assert faults_of_html(one.text) == []
    assert (empty.status_code, answered.status_code, wrong.status_code) == (200, 200, 422)
    assert 'href="#e-circuits"' in wrong.text
    assert 'lang="en">' not in answered.text.partition("<main")[2] or language == "en"


def test_the_answer_stands_beside_and_nothing_is_kept(office):
    text = office.post("/enquiry", data=CALL).text
    assert "Visit: look at it before any word on price." in text
    assert "4,700 to 8,300 USD for 1,180 ft²" in text
    assert 'value="1180"' in text
    assert office.book.jobs() == []


def test_what_is_typed_in_a_hurry_is_the_same_answer(office):
    hurried = CALL | {"area": "1,180 sq ft", "slab_age_days": f"{CALL['slab_age_days']} days"}
    text = office.post("/enquiry", data=hurried).text
    assert "4,700 to 8,300 USD for 1,180 ft²" in text


def test_a_no_is_said_first_and_has_no_price(office):
    text = office.post("/enquiry", data=CALL | {"film": "unknown"}).text
    assert "Decline, as it stands." in text
    assert "USD for" not in text


def test_a_house_is_made_with_what_the_call_told(office):
    answer = office.post("/enquiry/house", data=CALL | {"house": "Alder Lane"})
    assert answer.headers["location"] == "/houses/alder-lane/first"
    job = job_from(office.book.facts("alder-lane"), "the house")
    assert job.floor.rooms[0].polygon.shape.area == pytest.approx(1180 * 0.09290304, rel=1e-4)
    survey = job.survey
    assert (survey.slab_age_days, survey.film, survey.pours) == (45, "nothing", 2)
    assert (survey.covering, survey.waste) == ("leveller", None)  # nobody has the utility's word
    assert survey.hidden.heating_tubes is True


def test_a_house_wants_a_name_and_an_area(office):
    answer = office.post("/enquiry/house", data={"film": "nothing"})
    assert answer.status_code == 422
    assert 'href="#e-house"' in answer.text
    assert 'href="#e-area"' in answer.text
    assert office.book.jobs() == []


def test_who_only_looks_may_ask_and_make_no_house(office):
    office.enter_as("owner")
    assert office.post("/enquiry", data=CALL).status_code == 200
    assert office.post("/enquiry/house", data=CALL | {"house": "A"}).status_code == 403


def test_every_choice_has_its_word_in_both_languages():
    for one in ASKED.arguments:
        name = "area" if one.key == "area_m2" else one.key
        if name == "least":
            continue
        keys = [f"enquiry-{name}", *(f"enquiry-{name}-{c.replace(' ', '-')}" for c in one.choices)]
        for language in ("en", "es"):
            assert [key for key in keys if key not in words(language)] == []


def test_the_list_of_houses_leads_to_it(office):
    assert 'href="/enquiry"' in office.get("/").text
