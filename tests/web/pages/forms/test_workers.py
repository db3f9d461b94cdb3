"""People and emergency by form: rows, several ticks in one blank, days, the firm's own numbers."""

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.web.pages.new_houses import with_firm

ROW = "workers.0"
ADA = {
    "version": "1", f"{ROW}.name": "Ada", f"{ROW}.duties": "ticks",
    f"{ROW}.duties.mixes": "yes", f"{ROW}.duties.sprays": "yes",
    f"{ROW}.respirator": "half face", f"{ROW}.fit_tested": "2026-05-04",
    f"{ROW}.clean_shaven": "no", f"{ROW}.cartridge.acid_gas": "yes",
    f"{ROW}.cartridge.change_after_min": "240", f"{ROW}.gloves": "nitrile",
    "emergency.number": "000 invented", "emergency.look_in_min": "10",
}  # fmt: skip


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put(two_rooms(), name="Two")
    yield found
    found.close()


def test_what_is_told_of_a_person_becomes_facts_and_stands_in_the_form(office):
    answer = office.post("/houses/two/workers", data=ADA)
    assert answer.headers["location"] == "/houses/two/workers?kept=yes"
    facts = office.book.facts("two")
    assert facts["workers"] == [{
        "name": "Ada", "duties": ["mixes", "sprays"], "respirator": "half face",
        "fit_tested": "2026-05-04", "clean_shaven": False, "gloves": "nitrile",
        "cartridge": {"acid_gas": True, "change_after_min": 240}, "id": "person-1",
    }]  # fmt: skip
    assert facts["emergency"] == {"number": "000 invented", "look_in_min": 10}
    text = office.get("/houses/two/workers").text
    assert 'name="workers.0.duties.sprays" value="yes" checked' in text
    assert 'name="workers.0.duties.helps" value="yes">' in text
    assert 'name="workers.0.fit_tested" value="2026-05-04"' in text
    assert faults_of_html(text) == []


def test_unticking_takes_a_duty_away_and_all_of_them_leave_none(office):
    office.post("/houses/two/workers", data=ADA)
    office.post("/houses/two/workers", data={
        "version": "2", f"{ROW}.duties": "ticks", f"{ROW}.duties.sprays": "yes",
    })  # fmt: skip
    assert office.book.facts("two")["workers"][0]["duties"] == ["sprays"]
    office.post("/houses/two/workers", data={"version": "3", f"{ROW}.duties": "ticks"})
    assert "duties" not in office.book.facts("two")["workers"][0]
    same = office.post("/houses/two/workers", data={"version": "4", f"{ROW}.name": "Ada"})
    assert same.headers["location"].endswith("kept=same")


def test_a_row_that_is_ticked_away_goes_and_an_empty_one_is_none(office):
    office.post("/houses/two/workers", data=ADA)
    office.post("/houses/two/workers", data={
        "version": "2", f"{ROW}.away": "yes", "workers.1.duties": "ticks",
    })  # fmt: skip
    assert office.book.facts("two")["workers"] == []


def test_a_day_that_is_none_stands_beside_its_blank_and_the_ticks_stay(office):
    answer = office.post("/houses/two/workers", data=ADA | {f"{ROW}.fit_tested": "soon"})
    assert answer.status_code == 422
    assert "no day" in answer.text
    assert 'href="#b-workers-0-fit-tested"' in answer.text
    assert 'name="workers.0.duties.mixes" value="yes" checked' in answer.text
    assert len(office.book.versions("two")) == 1


def test_two_of_one_name_are_refused(office):
    answer = office.post("/houses/two/workers", data=ADA | {"workers.1.name": "ada"})
    assert answer.status_code in {303, 422}
    office.post("/houses/two/workers", data=ADA)
    again = office.post("/houses/two/workers", data={"version": "2", "workers.1.name": "Ada"})
    assert again.status_code == 422
    assert "called so already" in again.text


def test_in_spanish_the_duties_are_spanish_words_of_the_same_facts(office):
    office.post("/houses/two/workers", data=ADA)
    text = office.get("/houses/two/workers", headers={"accept-language": "es"}).text
    assert "vigila afuera" in text
    assert 'name="workers.0.duties.stands by" value="yes"' in text


def test_a_new_house_begins_with_the_firm_s_numbers_and_not_with_another_house_s_address(office):
    version = office.get("/settings").text.split('name="version" value="')[1].split('"')[0]
    office.post("/settings/firm", data={
        "version": version, "emergency.number": "000 invented", "emergency.poison_centre": "111",
        "emergency.look_in_min": "10",
    })  # fmt: skip
    made = with_firm(two_rooms(emergency={"address": "of this house"}), office.book)
    assert made["emergency"] == {
        "address": "of this house", "number": "000 invented", "poison_centre": "111",
        "look_in_min": 10,
    }  # fmt: skip
    assert "000 invented" in office.get("/settings").text
