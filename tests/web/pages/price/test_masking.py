"""The masking on its page, and the form of its facts, without any script."""

import pytest
from tests.papers.pictures import words as seen
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.web.words import words


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put_planned(name="Two")
    yield found
    found.close()


def form(**more):
    return {"version": "1"} | more


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_page_shows_the_plan_the_rooms_and_each_figure_with_its_rank(office, language):
    answer = office.get("/houses/two/price/masking", headers={"accept-language": language})
    assert answer.status_code == 200
    assert faults_of_html(answer.text) == []
    told = words(language)
    assert "<svg" in answer.text
    for key in ("price-masking-rooms", "price-masking-figures", "price-masking-stages"):
        assert told[key] in answer.text
    rank = {"en": "common practice", "es": "práctica común"}[language]
    assert rank in answer.text
    assert ' style="' not in answer.text[answer.text.index("<main") :]


def test_a_stage_that_was_not_told_is_asked_for(office):
    assert "was not told" in office.get("/houses/two/price/masking").text


def test_stage_heights_and_a_room_left_out_become_facts(office):
    answer = office.post("/houses/two/masking", data=form(**{
        "supplies.masking.stage": "before mud", "supplies.masking.film_m": "40",
        "supplies.masking.room_film_m.0": "96", "supplies.masking.not_masked": "ticks",
        "supplies.masking.not_masked.back": "yes",
    }))  # fmt: skip
    assert answer.headers["location"] == "/houses/two/masking?kept=yes"
    masking = office.book.facts("two")["supplies"]["masking"]
    assert masking["stage"] == "before mud"
    assert masking["film_m"] == pytest.approx(40 * 0.0254)
    assert masking["room_film_m"] == {"front": pytest.approx(96 * 0.0254)}
    assert masking["not_masked"] == ["back"]
    text = office.get("/houses/two/masking").text
    assert 'name="supplies.masking.not_masked.back" value="yes" checked' in text
    assert 'value="96"' in text
    assert faults_of_html(text) == []


def test_a_room_ticked_before_is_masked_again_when_its_tick_is_gone(office):
    office.post("/houses/two/masking", data=form(**{
        "supplies.masking.not_masked": "ticks", "supplies.masking.not_masked.back": "yes",
    }))  # fmt: skip
    office.post("/houses/two/masking", data={
        "version": "2", "supplies.masking.not_masked": "ticks",
    })  # fmt: skip
    assert not office.book.facts("two")["supplies"]["masking"].get("not_masked")


def test_a_thing_is_added_by_the_empty_row_and_taken_away_by_its_tick(office):
    row = "supplies.masking.items.0"
    office.post("/houses/two/masking", data=form(**{
        f"{row}.kind": "register", f"{row}.count": "3", f"{row}.room": "front",
        f"{row}.take_out": "yes", f"{row}.length_m": "", f"{row}.height_m": "",
        f"{row}.note": "brass",
    }))  # fmt: skip
    (item,) = office.book.facts("two")["supplies"]["masking"]["items"]
    assert item == {
        "kind": "register", "count": 3, "room": "front", "take_out": True, "note": "brass",
    }  # fmt: skip
    assert "3 × register: take it out" in office.get("/houses/two/price/masking").text
    office.post("/houses/two/masking", data={"version": "2", f"{row}.away": "yes"})
    assert office.book.facts("two")["supplies"]["masking"]["items"] == []


def test_an_empty_row_as_a_browser_sends_it_is_no_thing(office):
    """The choice between staying and taking out has no empty answer: it stands there by itself."""
    row = "supplies.masking.items.0"
    answer = office.post("/houses/two/masking", data=form(**{
        f"{row}.count": "", f"{row}.kind": "", f"{row}.room": "", f"{row}.take_out": "no",
        f"{row}.length_m": "", f"{row}.height_m": "", f"{row}.note": "",
    }))  # fmt: skip
    assert answer.headers["location"] == "/houses/two/masking?kept=same"


def test_a_thing_of_no_kind_and_a_height_beyond_reason_are_refused_beside_their_blanks(office):
    answer = office.post("/houses/two/masking", data=form(**{
        "supplies.masking.film_m": "4000", "supplies.masking.items.0.note": "what is it",
        "supplies.masking.items.0.kind": "",
    }))  # fmt: skip
    assert answer.status_code == 422
    assert answer.text.count('aria-invalid="true"') == 2
    assert len(office.book.versions("two")) == 1


def test_the_house_in_metric_reads_and_takes_centimetres(tmp_path):
    office = Office(tmp_path / "metric")
    office.enter()
    office.put(two_rooms(wishes={"units": "metric"}), name="Two")
    office.post("/houses/two/masking", data=form(**{"supplies.masking.film_m": "122"}))
    assert office.book.facts("two")["supplies"]["masking"]["film_m"] == pytest.approx(1.22)
    office.close()


def test_the_paper_is_in_the_list_and_opens(office):
    assert "/houses/two/papers/masking.pdf" in office.get("/houses/two/papers").text
    answer = office.get("/houses/two/papers/masking.pdf")
    assert answer.content.startswith(b"%PDF")


def with_a_drain(tmp_path):
    """An office with a house planned whose list has a drain, and the version of its facts."""
    office = Office(tmp_path / "placing")
    office.enter()
    office.put(two_rooms(supplies={"masking": {"items": [{"kind": "drain"}]}}), name="Two")
    office.get("/houses/two/price/masking")  # a plan is begun, and the test waits for it
    return office


def test_a_thing_is_placed_by_a_click_on_the_plan_and_its_place_taken_away(tmp_path):
    office = with_a_drain(tmp_path)
    text = office.get("/houses/two/masking/place/0").text
    assert 'type="image"' in text
    assert faults_of_html(text) == []
    svg = office.get("/houses/two/masking/plan.svg")
    assert svg.headers["content-type"].startswith("image/svg+xml")
    one = next(word for word in seen(svg.text) if word.text == "2")
    told = {"version": "1", "at.x": f"{one.box[0]:.0f}", "at.y": f"{one.box[1] + 4:.0f}"}
    answer = office.post("/houses/two/masking/place/0", data=told)
    assert answer.headers["location"] == "/houses/two/price/masking"
    (item,) = office.book.facts("two")["supplies"]["masking"]["items"]
    assert item["room"] == two_rooms()["floor"]["rooms"][1]["id"]
    assert len(item["at"]) == 2
    office.post("/houses/two/masking/place/0", data={"version": "2", "away": "yes"})
    (item,) = office.book.facts("two")["supplies"]["masking"]["items"]
    assert "at" not in item
    office.close()


def test_a_click_beside_the_floor_or_into_older_facts_is_refused(tmp_path):
    office = with_a_drain(tmp_path)
    for told in (
        {"version": "1", "at.x": "1", "at.y": "1"}, {"version": "1"},
        {"version": "0", "at.x": "300", "at.y": "200"},
    ):  # fmt: skip
        answer = office.post("/houses/two/masking/place/0", data=told)
        assert answer.status_code == 422
        assert 'role="alert"' in answer.text
    assert len(office.book.versions("two")) == 1
    office.close()


@pytest.mark.parametrize("number", ["1", "x", "-1", "999999999999"])
def test_there_is_no_page_for_a_thing_that_is_not_in_the_list(tmp_path, number):
    office = with_a_drain(tmp_path)
    assert office.get(f"/houses/two/masking/place/{number}").status_code == 404
    office.close()
