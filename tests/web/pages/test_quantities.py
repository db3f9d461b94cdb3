"""The list of quantities on its page, and the form of its switches and own figures."""

import re

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.web.words import words

LIST, FORM = "/houses/two/price/quantities", "/houses/two/supplies"


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put_planned(name="Two")
    yield found
    found.close()


def _form_of(text):
    """What a browser would send of the form as it stands."""
    told = dict(re.findall(r'<input type="hidden" name="([^"]+)" value="([^"]*)"', text))
    told |= dict.fromkeys(re.findall(r'name="(on\.\d+)" value="yes" checked', text), "yes")
    told |= dict(re.findall(r'<input [^>]*name="(own\.\d+|\w+)"[^>]*? value="([^"]*)"', text))
    return told


def _number(text, id_):
    return re.search(rf'name="id\.(\d+)" value="{re.escape(id_)}"', text)[1]


@pytest.mark.parametrize("language", ["en", "es"])
def test_both_pages_are_sound_and_in_the_language_asked_for(office, language):
    for path in (LIST, FORM):
        answer = office.get(path, headers={"accept-language": language})
        assert answer.status_code == 200
        assert faults_of_html(answer.text) == []
        for moment in ("stain", "mask", "wash", "seal", "wear", "tools"):
            assert words(language)[f"price-quantities-{moment}"] in answer.text


def test_every_line_says_its_rule_and_rank_one_tap_away(office):
    text = office.get(LIST).text
    rows = re.findall(r'<details class="price-quantities-row.*?</details>', text, re.DOTALL)
    assert len(rows) > 25
    for one in rows:
        assert one.count("<p") >= 2
    assert "of mix at 1:1 on" in text
    assert "common practice, no source" in text


def test_nothing_of_the_spanish_page_is_left_in_english(office):
    """But for what people named themselves."""
    text = office.get(LIST, headers={"accept-language": "es"}).text
    assert re.findall(r'<span lang="en">[^<]*', text) == []
    for name in ("Cinta", "Plástico para cubrir", "Tiras de pH", "Rociadoras nuevas"):
        assert f"<summary><span>{name}</span>" in text


def test_a_switch_and_an_own_figure_are_kept_in_si_and_shown(office):
    """By hand: 100 ft are 30.48 m, 2 lb 0.9072 kg."""
    text = office.get(FORM).text
    told = _form_of(text)
    del told[f"on.{_number(text, 'rags')}"]
    told[f"own.{_number(text, 'tape')}"] = "100"
    told[f"own.{_number(text, 'bicarbonate')}"] = "2"
    told |= {"person_days": "6", "sprayers": "1"}
    answer = office.post(FORM, data=told)
    assert answer.headers["location"] == f"{FORM}?kept=yes"
    held = office.book.facts("two")["supplies"]
    assert held["left_out"] == ["rags"]
    assert held["amounts"]["tape"] == pytest.approx(30.48)
    assert held["amounts"]["bicarbonate"] == pytest.approx(0.90718474)
    assert (held["person_days"], held["sprayers"]) == (6, 1)
    shown = office.get(LIST).text
    assert ">off</strong>" in shown
    assert "your own figure; the rule has" in shown
    assert "100 ft" in shown
    again = office.get(FORM).text
    assert f'name="own.{_number(again, "tape")}" id="own-{_number(again, "tape")}" value="100"' in (
        again
    )
    assert office.post(FORM, data=_form_of(again)).headers["location"] == f"{FORM}?kept=same"


def test_an_emptied_blank_gives_the_rule_its_figure_back(office):
    text = office.get(FORM).text
    told = _form_of(text)
    office.post(FORM, data=told | {f"own.{_number(text, 'bags')}": "40"})
    assert office.book.facts("two")["supplies"] == {"amounts": {"bags": 40}}
    text = office.get(FORM).text
    office.post(FORM, data=_form_of(text) | {f"own.{_number(text, 'bags')}": ""})
    assert "supplies" not in office.book.facts("two")


def test_refused_nothing_is_kept_and_what_was_typed_stays(office):
    text = office.get(FORM).text
    told = _form_of(text) | {f"own.{_number(text, 'bags')}": "many", "sprayers": "1.5"}
    told[f"own.{_number(text, 'tape')}"] = "80"
    answer = office.post(FORM, data=told)
    assert answer.status_code == 422
    assert faults_of_html(answer.text) == []
    assert 'value="many"' in answer.text
    assert 'value="80"' in answer.text
    assert answer.text.count('aria-invalid="true"') == 2
    assert len(office.book.versions("two")) == 1


@pytest.mark.parametrize("typed", ["-3", "1e999", "nan"])
def test_a_figure_that_is_none_is_refused(office, typed):
    text = office.get(FORM).text
    told = _form_of(text) | {f"own.{_number(text, 'bags')}": typed}
    assert office.post(FORM, data=told).status_code == 422


def test_figures_out_of_bounds_are_told_in_the_readers_words(office):
    told = _form_of(office.get(FORM).text) | {"person_days": "4000"}
    answer = office.post(FORM, data=told)
    assert answer.status_code == 422
    assert "person_days" in answer.text


def test_who_types_into_older_facts_is_told_so(office):
    told = _form_of(office.get(FORM).text)
    office.put(two_rooms(name="Changed meanwhile"), name="Two")
    answer = office.post(FORM, data=told)
    assert answer.status_code == 422
    assert "somebody else has changed the facts" in answer.text


def test_two_who_switch_and_tell_at_once_lose_nothing(office):
    text = office.get(FORM).text
    was = _form_of(text)
    bags, tape, film = (_number(text, one) for one in ("bags", "tape", "film"))
    theirs = was | {f"own.{bags}": "7", f"own.{tape}": "50", "person_days": "3"}
    assert office.post(FORM, data=theirs).status_code == 303
    mine = was | {f"own.{tape}": "80"}
    del mine[f"on.{film}"]
    late = office.post(FORM, data=mine)
    assert late.status_code == 422
    assert faults_of_html(late.text) == []
    assert "Somebody else put 50 here meanwhile" in late.text
    again = _form_of(late.text)
    assert again["version"] == "2"
    assert (again[f"own.{bags}"], again[f"own.{tape}"], again["person_days"]) == ("7", "80", "3")
    assert f"on.{film}" not in again
    assert office.post(FORM, data=again).status_code == 303
    told = office.book.facts("two")["supplies"]
    assert told["amounts"]["bags"] == 7
    assert told["left_out"] == ["film"]
    assert told["person_days"] == 3


def test_lines_that_are_not_in_the_list_now_keep_their_switch(office):
    office.put(two_rooms(supplies={"left_out": ["paper"], "amounts": {"paper": 3}}), name="Two")
    text = office.get(FORM).text
    office.get(FORM)
    told = _form_of(office.get(FORM).text) | {f"own.{_number(text, 'bags')}": "4"}
    assert office.post(FORM, data=told).status_code == 303
    held = office.book.facts("two")["supplies"]
    assert held == {"left_out": ["paper"], "amounts": {"paper": 3, "bags": 4}}


def test_who_may_only_look_sees_no_button_and_is_refused(office):
    told = _form_of(office.get(FORM).text)
    office.enter_as("owner")
    answer = office.get(FORM)
    if answer.status_code == 200:
        assert "<button>Keep this" not in answer.text
    assert office.post(FORM, data=told | {"sprayers": "1"}).status_code == 403
    assert len(office.book.versions("two")) == 1


def test_a_switch_shows_before_the_plan_is_made_anew(office, monkeypatch):
    async def not_yet(job):
        """No plan is begun."""

    monkeypatch.setattr(office.app.state.live, "plan_soon", not_yet)
    office.put(two_rooms(supplies={"left_out": ["rags"], "amounts": {"bags": 44}}), name="Two")
    text = office.get(LIST).text
    assert text.count(">off</strong>") == 1
    assert ">44</strong>" in text


def test_a_house_without_a_plan_says_that_one_is_being_made(office, monkeypatch):
    async def not_yet(job):
        """No plan is begun."""

    monkeypatch.setattr(office.app.state.live, "plan_soon", not_yet)
    office.put(two_rooms(id="new"), name="New")
    for path in ("/houses/new/supplies", "/houses/new/price/quantities"):
        answer = office.get(path)
        assert answer.status_code == 200
        assert faults_of_html(answer.text) == []
        assert words("en")["plan-being-made"] in answer.text
    refused = office.post("/houses/new/supplies", data={"version": "1"})
    assert refused.status_code == 422
    assert words("en")["price-supplies-no-plan"] in refused.text


def test_how_long_gear_lasts_and_whether_it_is_shared_are_kept_and_shown(office):
    text = office.get(FORM).text
    told = _form_of(text)
    told |= {"kept_gear": "whole", f"lasts.{_number(text, 'sprayer')}": "2"}
    assert office.post(FORM, data=told).headers["location"] == f"{FORM}?kept=yes"
    held = office.book.facts("two")["supplies"]
    assert (held["kept_gear"], held["lasts"]) == ("whole", {"sprayer": 2.0})
    text = office.get(FORM).text
    assert '<option value="whole" selected>' in text
    assert re.search(r'name="lasts\.\d+" value="2"', text)
    again = _form_of(text) | {"kept_gear": "", "version": _form_of(text)["version"]}
    again |= {f"lasts.{_number(text, 'sprayer')}": "half"}
    assert office.post(FORM, data=again).status_code == 422
    again |= {f"lasts.{_number(text, 'sprayer')}": ""}
    assert office.post(FORM, data=again).headers["location"] == f"{FORM}?kept=yes"
    assert not {"kept_gear", "lasts"} & office.book.facts("two").get("supplies", {}).keys()
