"""The list of houses: a sentence each, pages of fifty; a house is brought whole or not at all."""

import json
import re
from pathlib import Path

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.facts.log import Entry
from farwall.job.plan_job import plan_job
from farwall.papers.words import area
from farwall.readers.job_json import read_job
from farwall.web.pages.brought import MOST_MB
from farwall.web.pages.lines import facts_told

START = "2026-06-08T08:00:00+00:00"


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


def bring(office, content, name="job.json", **data):
    return office.post("/houses/bring", files={"file": (name, content)}, data=data)


def test_an_empty_book_says_so_and_shows_two_ways_on(office):
    text = office.get("/").text
    assert faults_of_html(text) == []
    assert "no house yet" in text
    assert 'action="/houses/sample"' in text
    assert 'action="/houses/bring"' in text


def test_a_job_is_brought_planned_and_told_in_a_sentence(office):
    answer = bring(office, json.dumps(two_rooms(name="Two rooms")))
    assert (answer.status_code, answer.headers["location"]) == (303, "/houses/two")
    text = office.get("/").text
    assert '<a href="/houses/two">Two rooms</a>: coat 1, Mon 8 Jun, 8:00 am.<br>' in text
    assert "set for 8 June 2026, 2 rooms, " in text
    assert "to spare" in text


def test_a_metric_house_tells_its_next_hour_by_24_hours(office):
    bring(office, json.dumps(two_rooms(name="Two rooms", wishes={"units": "metric"})))
    page = office.get("/").text
    assert '<a href="/houses/two">Two rooms</a>: coat 1, Mon 8 Jun, 8:00.<br>' in page


def test_all_mistakes_come_at_once_and_nothing_is_kept(office):
    facts = two_rooms()
    del facts["floor"]["rooms"]
    facts["crew"] = {"sprayers": 9}
    answer = bring(office, json.dumps(facts))
    assert answer.status_code == 422
    assert "rooms" in answer.text
    assert "sprayers" in answer.text
    assert faults_of_html(answer.text) == []
    assert office.book.jobs() == []


@pytest.mark.parametrize(
    ("content", "told"),
    [(b"", "empty"), (b"%PDF-1.4", "PDF"), (b"\x89PNG\r\n\x1a\n", "picture"), (b"<html>", "XML"),
     (b"hello", "no plan"), (b"[" * 100_000, ""), (b'{"floor":' * 50_000, "")],
)  # fmt: skip
def test_what_is_no_house_is_refused_by_what_it_holds(office, content, told):
    answer = bring(office, content, name="house.dxf")
    assert answer.status_code == 422
    assert told in answer.text
    assert office.book.jobs() == []


def test_a_form_that_cannot_be_read_is_refused(office):
    kind = {"content-type": "multipart/form-data; boundary=b"}
    answer = office.post("/houses/bring", headers=kind, content=b"--b nothing of the kind")
    assert answer.status_code == 422
    assert office.book.jobs() == []


def test_no_file_is_told(office):
    answer = office.post("/houses/bring", files={"other": ("x", b"y")})
    assert answer.status_code == 422
    assert "No file was chosen" in answer.text


def test_more_than_is_taken_is_refused_with_its_size(office):
    answer = bring(office, b"x" * (MOST_MB * 1_000_000 + 30_000))
    assert answer.status_code == 413
    assert office.book.jobs() == []


def test_a_known_id_asks_first_and_then_becomes_new_facts(office):
    office.put(two_rooms())
    content = json.dumps(two_rooms(name="Two, once more"))
    refused = bring(office, content)
    assert refused.status_code == 422
    assert "Two, once more is in the book already. Tick the box under the file" in refused.text
    assert '<a href="#bring">' in refused.text
    assert len(office.book.versions("two")) == 1
    assert bring(office, content, again="yes").status_code == 303
    assert len(office.book.versions("two")) == 2


def test_a_file_that_is_no_plan_is_told_by_its_name(office):
    refused = bring(office, "hello", name="C:\\plans\\notes.txt")
    assert refused.status_code == 422
    assert "notes.txt: This is no plan that is known here." in refused.text


def test_a_geojson_floor_becomes_a_house_called_by_its_file(office):
    from farwall.floor.geojson import floor_collection
    from farwall.readers.job_json import job_from

    job = job_from(two_rooms(), "two")
    content = json.dumps(floor_collection(job.floor, job.exits))
    answer = bring(office, content, name="C:\\plans\\Elm Row 3.geojson")
    assert answer.headers["location"] == "/houses/elm-row-3/first"
    assert ">Elm Row 3</a>" in office.get("/").text


def test_an_id_that_is_no_part_of_an_address_is_written_as_one(office):
    answer = bring(office, json.dumps(two_rooms(id="../two/rooms")))
    assert answer.headers["location"] == "/houses/two-rooms"


def test_the_sample_house_is_taken_once(office):
    office.put(two_rooms(id="quince-street"))
    answer = office.post("/houses/sample")
    assert answer.headers["location"] == "/houses/quince-street"
    assert len(office.book.versions("quince-street")) == 1


def test_fifty_houses_a_page_the_newest_first(office):
    for k in range(53):
        office.put(two_rooms(id=f"house-{k:02d}"), name=f"House {k:02d}")
    first = office.get("/").text
    assert first.count("<li><a href=") == 50
    assert first.index("House 52") < first.index("House 51")
    assert "not planned yet" in first
    assert 'href="/?after=house-03"' in first
    rest = office.get("/?after=house-03").text
    assert rest.count("<li><a href=") == 3
    assert faults_of_html(rest) == []
    assert office.get("/?after=nobody").status_code == 404


def test_a_name_that_is_markup_is_only_a_name(office):
    office.put(two_rooms(), name="<script>alert(1)</script>")
    text = office.get("/").text
    assert "<script>alert" not in text
    assert "&lt;script&gt;alert(1)&lt;/script&gt;" in text
    assert faults_of_html(text) == []


def filled(office):
    for n, name in enumerate(("Peñón Alto", "Elm Row 1", "Elm Row 2", "Quince Street")):
        office.put(two_rooms(id=f"house-{n}"), name=name)
    office.book.put_document("plan-of", "house-1", {"facts": 1, "faults": [], "no": []})
    office.book.keep([Entry("e-1", "house-3", "handed-over", START, device="p")], received_at=START)


def names_in(office, path):
    text = office.get(path).text
    assert faults_of_html(text) == []
    return re.findall(r'<li><a href="/houses/house-[0-9]">([^<]+)</a>', text)


@pytest.mark.parametrize(
    ("asked", "names"),
    [
        ("?q=elm", ["Elm Row 2", "Elm Row 1"]),
        ("?q=ROW+elm+1", ["Elm Row 1"]),
        ("?q=penon", ["Peñón Alto"]),
        ("?q=house-3", ["Quince Street"]),
        ("?q=nobody", []),
        ("?show=done", ["Quince Street"]),
        ("?show=week", ["Elm Row 2", "Elm Row 1", "Peñón Alto"]),
        ("?show=plan", ["Elm Row 2", "Peñón Alto"]),
        ("?show=plan&q=elm", ["Elm Row 2"]),
        ("?show=work", []),
        ("?show=no-such", ["Quince Street", "Elm Row 2", "Elm Row 1", "Peñón Alto"]),
    ],
)
def test_houses_are_sought_by_name_and_by_where_they_stand(office, asked, names):
    filled(office)
    assert names_in(office, f"/{asked}") == names


def test_every_filter_says_how_many_and_what_was_sought_stays(office):
    filled(office)
    text = office.get("/?q=elm&show=plan").text
    assert 'value="elm"' in text
    assert '<a href="/?show=plan&amp;q=elm" aria-current="true">to plan (1)</a>' in text
    assert "this week (2)" in text
    assert "handed over (0)" in text
    assert 'type="hidden" name="show" value="plan"' in text
    markup = office.get("/", params={"q": '"><script>x'}).text
    assert "<script>x" not in markup
    assert "No house is so." in markup


def test_pages_keep_what_was_sought(office):
    for k in range(53):
        office.put(two_rooms(id=f"house-{k:02d}"), name=f"House {k:02d}")
    office.put(two_rooms(id="other"), name="Other")
    first = office.get("/?q=house&show=plan").text
    assert 'href="/?after=house-03&amp;show=plan&amp;q=house"' in first
    rest = office.get("/?after=house-03&show=plan&q=house").text
    assert rest.count("<li><a href=") == 3


def test_one_house_that_cannot_be_read_hides_no_other(office):
    office.put(two_rooms(), name="Two rooms")
    bad = {"version": 1, "floor": {"rooms": []}}
    office.book.put_facts("bad", bad, who="", at=START, name="Bad")
    text = office.get("/").text
    assert "its facts cannot be read as they stand" in text
    assert ">Two rooms</a>" in text


def test_in_spanish_the_list_is_sound(office):
    filled(office)
    text = office.get("/?q=elm", headers={"accept-language": "es"}).text
    assert faults_of_html(text) == []
    assert "por planear (1)" in text


def test_a_house_is_as_large_as_its_run_sheet_says():
    """The floor under the doors is stained as well, and counts."""
    job = read_job(Path(__file__).resolve().parents[3] / "examples" / "fennel-court" / "job.json")
    stained = sum(one.area_m2 for one in plan_job(job).fields if one.coat == "first")
    assert f"4 rooms, {area(stained, 'us')}" in facts_told(job)
