"""The page of the next coat: verdict, swatches in words, a look entered, slips, both languages."""

from __future__ import annotations

import io
import json
from dataclasses import replace

import numpy as np
import pytest
from PIL import Image
from tests.job.colour.fennel import FOLDER, facts, plan
from tests.web.pages.office import KEY, Office, faults_of_html

from farwall.cli.log_file import LogFile
from farwall.facts.plain import plain
from farwall.web.live_jobs import OF, PLAN

JOB = "fennel-court"
PAGE = f"/houses/{JOB}/colour"
SPOTS = {
    f"{axis}{n}": str(value)
    for n in range(1, 7)
    for axis, value in (("l", 44 + n / 10), ("a", 8.7), ("b", 13.7))
}


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put(facts(), name="Fennel Court")
    found.book.put_document(PLAN, JOB, json.loads(json.dumps(plain(plan()))))
    found.book.put_document(OF, JOB, {"facts": 1, "faults": [], "no": []})
    found.app.state.live.replanning.tapped = lambda job: None
    yield found
    found.close()


def logged(office, *words):
    """The example's log, or what of it bears these words."""
    entries = [replace(one.entry, job=JOB) for one in LogFile(FOLDER).entries()]
    kept = [one for one in entries if not words or one.word in words]
    office.book.keep(kept, received_at="2026-06-08T20:00:00+00:00")


def text_of(office, query="", **more):
    answer = office.get(f"{PAGE}?{query}" if query else PAGE, **more)
    assert answer.status_code == 200
    assert faults_of_html(answer.text) == []
    return answer.text.replace("&#39;", "'")


def test_it_says_what_to_lay_and_shows_it_in_words_too(office):
    logged(office)
    text = text_of(office)
    assert "Lay umber, 1:" in text
    assert "Chance of too dark:" in text
    assert text.count('role="img"') == 2
    assert "umber on the bare floor" in text
    assert "moss over umber 1:1" in text
    assert "sample c-4: dark, brown" in text
    assert "A screen is no floor" in text
    assert "common practice, no source" in text
    assert "Too dark is final" in text


def test_in_spanish_nothing_stays_english(office):
    logged(office)
    text = text_of(office, headers={"accept-language": "es"})
    assert "Ponga umber, 1:" in text
    assert 'lang="en"' not in text.partition("<main")[2]


def test_one_room_alone_can_be_asked(office):
    logged(office)
    text = text_of(office, "room=bath")
    assert ", in Bath." in text
    assert '<option value="bath" selected>Bath</option>' in text


def test_a_room_that_is_not_there_is_told_and_the_page_stays(office):
    assert "there is no room attic" in text_of(office, "room=attic")


def test_without_a_look_at_the_coated_floor_it_waits(office):
    logged(office, "mixed", "field-done", "coat-done")
    text = text_of(office)
    assert "Wait: lay nothing yet." in text
    assert "Look at the floor clean and wet, at six spots" in text


def test_a_look_that_is_entered_is_kept_with_its_spread_and_answered_by(office):
    logged(office, "mixed", "field-done", "coat-done")
    form = {"state": "clean wet", "room": "great-room", "error_de": "0.6", "day": "2026-06-08",
            "time": "14:00", **SPOTS}  # fmt: skip
    answer = office.post(PAGE, data=form)
    assert answer.status_code == 303
    about = office.book.entries(JOB)[-1].entry.about
    assert about["lightness"] == pytest.approx(44.35)
    assert about["spots"] == 6
    assert about["spread_lightness"] == pytest.approx(0.19, abs=0.01)
    assert "Lay umber, 1:" in text_of(office)


def test_the_same_form_twice_is_one_entry(office):
    form = {"state": "clean wet", "id": "0190e6a0-0000-7000-8000-000000000001", **SPOTS}
    for _ in range(2):
        assert office.post(PAGE, data=form).status_code == 303
    assert len(office.book.entries(JOB)) == 1


def test_a_photo_alone_is_read_at_six_spots_and_kept(office):
    grey = np.random.default_rng(7).normal(128, 12, (400, 600)).clip(0, 255).astype("uint8")
    content = io.BytesIO()
    Image.fromarray(grey).convert("RGB").save(content, "png")
    answer = office.post(
        PAGE, data={"state": "clean wet"}, files={"file": ("floor.png", content.getvalue())}
    )
    assert answer.status_code == 303, answer.text
    about = office.book.entries(JOB)[-1].entry.about
    assert about["spots"] == 6
    assert 40 < about["lightness"] < 70
    assert "error_de" not in about  # no target in it: a guess
    assert office.book.file(about["file"]) == content.getvalue()


def test_a_file_that_is_no_picture_is_refused(office):
    answer = office.post(
        PAGE, data={"state": "clean wet"}, files={"file": ("floor.png", b"not a picture")}
    )
    assert answer.status_code == 422
    assert office.book.entries(JOB) == []


def test_slips_come_back_together_with_what_was_typed(office):
    form = {"state": "clean wet", "l1": "44", "a1": "x", "l2": "120", "a2": "1", "b2": "1"}
    answer = office.post(PAGE, data=form)
    assert answer.status_code == 422
    assert answer.text.count("three numbers are needed") == 2
    assert 'value="120"' in answer.text
    assert office.book.entries(JOB) == []


def test_nothing_typed_is_a_slip(office):
    answer = office.post(PAGE, data={"state": "clean wet"})
    assert answer.status_code == 422
    assert "one spot at least" in answer.text


def test_a_house_without_samples_says_what_to_measure(office):
    office.put({**facts(), "samples": []})
    office.book.put_document(OF, JOB, {"facts": 2, "faults": [], "no": []})
    text = text_of(office)
    assert "No next coat can be told" in text
    assert "Approve a sample" in text


def test_the_interface_gives_the_same_as_the_command(office):
    logged(office)
    answer = office.get(
        f"/api/jobs/{JOB}/colour?room=bath", headers={"authorization": f"Bearer {KEY}"}
    )
    assert answer.status_code == 200, answer.text
    document = answer.json()
    assert document["rooms"] == ["bath"]
    assert document["chance_too_dark"]["value"] <= 0.03


def test_the_floor_of_the_house_leads_there(office):
    logged(office)
    answer = office.get(f"/houses/{JOB}")
    assert answer.status_code == 200
    assert f'<a href="{PAGE}">Judging the next coat' in answer.text
