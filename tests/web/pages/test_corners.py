"""A photo of a plan is brought: its corners are asked, then it lies flat under the drawing."""

from __future__ import annotations

import pytest
from tests.photos import photo
from tests.web.pages.office import Office, faults_of_html

from farwall.errors import Refused
from farwall.web.pages.corners_form import FIELDS, begun, hints_of
from farwall.web.pages.corners_keep import PHOTO
from farwall.web.pages.drafts import DRAFT, UNDERLAY
from farwall.web.pages.repairs import READING

PATH = "/houses/maple-lane/corners"


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


def bring(office, content=None, name="maple lane.jpg"):
    data = photo("square").data if content is None else content
    return office.post("/houses/bring", files={"file": (name, data)})


def told(office, **other):
    found = begun(office.book.document(PHOTO, "maple-lane"))
    return {**found, "paper": "A3", "drawn": "1:50", **other}


def test_a_photo_leads_to_its_corners_as_they_were_seen(office):
    answer = bring(office)
    assert (answer.status_code, answer.headers["location"]) == (303, PATH)
    kept = office.book.document(PHOTO, "maple-lane")
    seen = [value for corner in kept["corners"] for value in corner]
    true = [value for corner in photo("square").corners for value in corner]
    assert seen == pytest.approx(true, abs=3)
    page = office.get(PATH)
    assert page.status_code == 200
    assert not faults_of_html(page.text)
    assert all(f'name="{field}"' in page.text for field in FIELDS)
    shown = office.get(f"{PATH}/picture?file={kept['preview']}")
    assert shown.headers["content-type"] == "image/jpeg"
    assert office.get(f"{PATH}/picture?file={kept['file']}").status_code == 404


def test_what_is_told_lays_the_sheet_under_a_draft_of_its_rooms(office):
    bring(office)
    answer = office.post(PATH, data=told(office))
    assert (answer.status_code, answer.headers["location"]) == (303, "/houses/maple-lane/draw")
    drawn = office.book.document(DRAFT, "maple-lane")["drawn"]
    assert len(drawn["rooms"]) == 4
    laid = office.book.document(UNDERLAY, "maple-lane")
    assert laid["m_per_px"] * laid["width_px"] == pytest.approx(21.0, rel=0.002)  # A3 at 1:50
    asks = {one["code"] for one in office.book.document(READING, "maple-lane")["notes"]}
    assert "names" in asks
    assert not {"scale", "corners"} & asks
    assert office.get("/houses/maple-lane/draw").status_code == 200


def test_without_a_scale_the_sheet_is_laid_and_nothing_is_drawn(office):
    bring(office)
    assert office.post(PATH, data=told(office, paper="", drawn="")).status_code == 303
    assert office.book.document(DRAFT, "maple-lane")["drawn"]["rooms"] == []
    assert office.book.document(UNDERLAY, "maple-lane")["file"]


def test_all_mistakes_come_back_at_once_with_what_was_filled(office):
    bring(office)
    wrong = told(office, ul_x="", paper="", drawn="1:50", length="long")
    answer = office.post(PATH, data=wrong)
    assert answer.status_code == 422
    assert answer.text.count("<li>") >= 3
    assert 'value="long"' in answer.text


@pytest.mark.parametrize("content", [b"\xff\xd8\xff" + bytes(900), b"\x89PNG\r\n\x1a\n" + bytes(9)])
def test_a_broken_photo_is_refused_and_nothing_kept(office, content):
    answer = bring(office, content)
    assert answer.status_code == 422
    assert not office.book.documents(DRAFT)


def test_a_house_without_a_photo_has_no_such_page(office):
    assert office.get(PATH).status_code == 404
    assert office.post(PATH, data={}).status_code == 404


def test_a_scale_is_told_once():
    filled = begun({"width_px": 100, "height_px": 80})
    with pytest.raises(Refused, match="twice"):
        hints_of({**filled, "paper": "A3", "drawn": "1:50", "length": "4 m"})
