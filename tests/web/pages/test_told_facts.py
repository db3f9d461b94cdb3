"""The forms of a house over HTTP: kept as a version, refused whole, told beside the blank."""

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.errors import Mistake
from farwall.store.nouns import BookTrouble
from farwall.web.pages.told_facts import SCREENS


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put(two_rooms(wishes={"units": "metric"}), name="Two")
    yield found
    found.close()


@pytest.mark.parametrize("name", SCREENS)
@pytest.mark.parametrize("language", ["en", "es"])
def test_a_form_is_sound_and_says_whose_it_is(office, name, language):
    answer = office.get(f"/houses/two/{name}", headers={"accept-language": language})
    assert answer.status_code == 200
    assert faults_of_html(answer.text) == []
    assert "Two: " in answer.text
    assert f'<html lang="{language}"' in answer.text


def test_every_blank_has_a_name_for_who_hears_the_page(office):
    for name in SCREENS:
        text = office.get(f"/houses/two/{name}").text
        main = text[text.index("<main") :]
        boxes = [one for one in main.split("<")
                 if one.startswith(("input id=", "select id="))]  # fmt: skip
        assert boxes
        assert all('aria-label="' in one for one in boxes)


def test_what_is_typed_becomes_a_version_and_the_page_says_so(office):
    told = {"version": "1", "survey.slab_c": "18.5", "survey.rooms.0.drop_s": "9"}
    answer = office.post("/houses/two/survey", data=told)
    assert answer.headers["location"] == "/houses/two/survey?kept=yes"
    assert len(office.book.versions("two")) == 2
    survey = office.book.facts("two")["survey"]
    before = two_rooms()["survey"]
    assert survey == before | {"slab_c": 18.5, "rooms": {"front": {"drop_s": 9}}}
    text = office.get("/houses/two/survey?kept=yes").text
    assert "Kept as facts 2" in text
    assert 'value="18.5"' in text


def test_nothing_typed_is_no_new_version(office):
    answer = office.post("/houses/two/survey", data={"version": "1"})
    assert answer.headers["location"] == "/houses/two/survey?kept=same"
    assert len(office.book.versions("two")) == 1


def test_refused_nothing_is_kept_and_all_of_it_stands_beside_its_blank(office):
    told = {"version": "1", "survey.slab_c": "warm", "survey.rh_percent": "300",
            "survey.air_c": "20"}  # fmt: skip
    answer = office.post("/houses/two/survey", data=told)
    assert answer.status_code == 422
    assert len(office.book.versions("two")) == 1
    text = answer.text
    assert faults_of_html(text) == []
    assert 'id="slips" role="alert" tabindex="-1" autofocus' in text
    for name in ("survey-slab-c", "survey-rh-percent"):
        assert f'<a href="#b-{name}">' in text
        assert f'aria-describedby="b-{name}-wrong"' in text
        assert f'id="b-{name}-wrong"' in text
    assert 'value="warm"' in text
    assert 'value="20"' in text  # what was right is not lost


def test_who_types_into_older_facts_is_told_so(office):
    office.put(two_rooms(name="Changed meanwhile"), name="Two")
    answer = office.post("/houses/two/survey", data={"version": "1", "survey.slab_c": "18"})
    assert answer.status_code == 422
    assert "somebody else has changed the facts" in answer.text
    assert len(office.book.versions("two")) == 2


def test_kept_again_it_empties_nothing_that_the_other_told(office):
    other = two_rooms(wishes={"units": "metric"})
    other["survey"]["drop_s"] = 14
    office.put(other, name="Two")
    typed = {"survey.drop_s": "", "survey.slab_c": "18"}
    late = office.post("/houses/two/survey", data={"version": "1", **typed})
    assert late.status_code == 422
    assert 'value="14"' in late.text  # theirs stands beside what was typed
    assert 'value="18"' in late.text
    told = {"version": "2", **typed, "survey.drop_s": "14"}
    assert office.post("/houses/two/survey", data=told).status_code == 303
    survey = office.book.facts("two")["survey"]
    assert (survey["drop_s"], survey["slab_c"]) == (14, 18)


def test_a_book_that_takes_nothing_leaves_what_was_typed_in_its_blank(office, monkeypatch):
    def full(*_, **__):
        raise BookTrouble(Mistake("book", "The disk is full.", "Make room."))

    monkeypatch.setattr(office.book, "put_facts", full)
    answer = office.post("/houses/two/survey", data={"version": "1", "survey.slab_c": "18"})
    assert answer.status_code == 503
    assert "The disk is full. Make room." in answer.text
    assert 'value="18"' in answer.text
    assert len(office.book.versions("two")) == 1


def test_a_form_of_another_site_is_no_form_of_ours(office):
    answer = office.post("/houses/two/survey", data={"version": "1", "survey.slab_c": "18"},
                         headers={"origin": "http://elsewhere"})  # fmt: skip
    assert answer.status_code == 403
    assert len(office.book.versions("two")) == 1


def test_the_go_sheet_moves_with_what_is_kept(office):
    before = office.get("/houses/two/survey").text
    assert "Not yet: a question is open" in before
    office.post("/houses/two/survey", data={"version": "1", "survey.slab_age_days": "10"})
    after = office.get("/houses/two/survey").text
    assert '<p class="verdict danger">No.</p>' in after
    assert "10 days old, younger than 21 days" in after


def test_the_first_questions_lead_to_the_plan(office):
    answer = office.post("/houses/two/first", data={"version": "1", "tools.tank_l": "10"})
    assert answer.headers["location"] == "/houses/two"
    assert office.book.facts("two")["tools"]["tank_l"] == 10
    assert 'id="tape"' in office.get("/houses/two").text


def test_a_window_is_put_into_a_wall_once_north_is_told(office):
    window = {"version": "1", "window.room": "back", "window.faces": "N", "window.width": "1.2"}
    refused = office.post("/houses/two/survey/window", data=window)
    assert refused.status_code == 422
    assert "north must be told" in refused.text
    office.post("/houses/two/survey", data={"version": "1", "floor.north_deg": "0"})
    kept = office.post("/houses/two/survey/window", data=window | {"version": "2"})
    assert kept.headers["location"] == "/houses/two/survey?kept=yes#part-windows"
    (line,) = [one["line"] for one in office.book.facts("two")["floor"]["windows"]]
    assert sorted(line) == [
        [1.4, 6.0],
        [2.6, 6.0],
    ]  # the middle of the wall at y = 6 of a room 4 m wide
    assert "facing north" in office.get("/houses/two/survey").text


def test_a_wall_between_rooms_takes_no_window(office):
    office.post("/houses/two/survey", data={"version": "1", "floor.north_deg": "0"})
    told = {"version": "2", "window.room": "front", "window.faces": "N", "window.width": "1.2"}
    answer = office.post("/houses/two/survey/window", data=told)
    assert answer.status_code == 422
    assert "no outside wall of Front room" in answer.text


def test_a_house_that_is_not_there_is_told(office):
    assert office.get("/houses/nobody/survey").status_code == 404


def test_who_may_only_look_sees_the_facts_and_no_key_to_keep_them(office):
    office.enter_as("owner")
    text = office.get("/houses/two/survey").text
    assert faults_of_html(text) == []
    assert '<fieldset class="all" disabled>' in text
    assert '<p class="save">' not in text
    assert 'action="/houses/two/survey/window"' not in text
    told = {"version": "1", "survey.slab_c": "18"}
    assert office.post("/houses/two/survey", data=told).status_code == 403
    assert len(office.book.versions("two")) == 1
