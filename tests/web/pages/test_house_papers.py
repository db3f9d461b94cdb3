"""All papers of a house: what there is, what each is for, the same bytes as the commands write."""

from __future__ import annotations

import json
import re

import pypdfium2
import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms_planned

from farwall.cli.main import main
from farwall.floor.geojson import BESIDE
from farwall.papers.office.bundles import BY_FILE
from farwall.readers.any_plan import read_bytes
from farwall.readers.job_json import job_from
from farwall.web.pages.house_papers import ACID, DAYS, OPEN, SLAB
from farwall.web.words import words


@pytest.fixture(scope="module")
def office(tmp_path_factory):
    found = Office(tmp_path_factory.mktemp("office"))
    found.enter()
    found.put_planned("Two rooms")
    found.app.state.live.replanning.tapped = lambda job: None
    found.post("/days/ask", data={"house": "two", "begins": "2026-06-08"})
    found.post("/houses/two/log", data={"word": "note", "text": "x"}, files={"x": ("", b"")})
    yield found
    found.close()


def paper(office, name):
    return office.get(f"/houses/two/papers/{name}")


def test_every_paper_stands_in_the_list_with_a_sentence_and_can_be_had(office):
    text = office.get("/houses/two/papers").text
    assert faults_of_html(text) == []
    links = re.findall(r'href="(/houses/two/[^"]+\.[a-z]+)"', text)
    # Nobody told who pays, no place has two photos: what lacks stands in place of the file.
    lacks = {"invoice.xml", "before-after.pdf"}
    there = [one for one in BY_FILE if one not in lacks]
    assert [one.rpartition("/")[2] for one in links] == [*there, *SLAB, *ACID, *DAYS, *OPEN]
    assert words("en")["papers-lacks"] in text
    for one in links:
        answer = office.get(one)
        assert answer.status_code == 200, one
        assert answer.content
    for name in (*SLAB, *ACID, *DAYS, *OPEN):
        assert words("en")[f"papers-for-{name.replace('.', '-')}"] in text.replace("&#39;", "'")


def test_papers_are_what_their_names_say(office):
    for name in ("go.pdf", "chain.pdf", "seal-sheet.pdf", *(n for n in ACID if n.endswith("pdf"))):
        answer = paper(office, name)
        assert answer.content.startswith(b"%PDF")
        assert answer.headers["content-type"] == "application/pdf"
    assert paper(office, "days.ics").content.startswith(b"BEGIN:VCALENDAR\r\n")
    assert json.loads(paper(office, "floor.geojson").content)["type"] == "FeatureCollection"


def test_facts_plan_and_log_are_those_of_the_book(office, capsys):
    main(["book", "show", "two", "--facts", "--book", str(office.book.where.folder)])
    assert paper(office, "job.json").text == capsys.readouterr().out
    job_from(paper(office, "job.json").json(), "again")
    assert paper(office, "plan.json").json() == json.loads(json.dumps(two_rooms_planned()))
    (line,) = paper(office, "log.jsonl").text.splitlines()
    assert json.loads(line)["entry"]["about"] == {"text": "x"}


def test_floors_are_those_of_the_open_format_with_the_marks_of_the_plan(office, tmp_path):
    office.book.out(tmp_path / "out")
    (floor,) = (tmp_path / "out" / "floors").iterdir()
    kept, handed = json.loads(floor.read_bytes()), paper(office, "floor.geojson").json()
    of_plan = [one for one in handed["features"] if one["properties"]["kind"] in BESIDE]
    assert {one["properties"]["kind"] for one in of_plan} == {"stop line", "band"}
    assert [one for one in handed["features"] if one not in of_plan] == kept["features"]


def test_the_floor_in_layers_is_read_back_as_the_same_floor(office):
    floor = read_bytes(paper(office, "floor.geojson").content).floor
    for name, kind in (("floor.dxf", "image/vnd.dxf"), ("floor-layers.svg", "image/svg+xml")):
        answer = paper(office, name)
        assert answer.headers["content-type"].startswith(kind)
        assert answer.headers["content-disposition"] == f'attachment; filename="{name}"'
        assert read_bytes(answer.content).floor == floor


def test_the_calendar_file_of_a_house_has_the_ids_and_counts_of_the_firms(office):
    whole = office.get("/days/farwall.ics").text
    own = paper(office, "days.ics").text
    assert own.count("BEGIN:VEVENT") == whole.count("UID:two.")
    assert set(re.findall(r"UID:\S+", own)) <= set(re.findall(r"UID:\S+", whole))


def test_what_cannot_be_made_says_why_and_is_no_link(tmp_path):
    office = Office(tmp_path)
    office.enter()
    bad = {"version": 1, "id": "bad", "floor": {"rooms": []}}
    office.book.put_facts("bad", bad, who="", at="2026-06-08T08:00:00+00:00", name="Bad")
    text = office.get("/houses/bad/papers").text
    assert faults_of_html(text) == []
    assert "comes with the plan" in text
    assert "ask for one under Days" in text
    assert 'href="/houses/bad/run-sheet.pdf"' not in text
    for name in ("plan.json", "chain.pdf"):
        assert office.get(f"/houses/bad/papers/{name}").status_code == 409
    office.close()


def test_no_other_name_is_a_paper(office):
    assert paper(office, "price.pdf").status_code == 404


def test_in_spanish_the_page_is_sound_and_no_key_lacks(office):
    text = office.get("/houses/two/papers", headers={"accept-language": "es"}).text
    assert faults_of_html(text) == []
    assert "Hoja de trabajo (PDF)" in text
    own = [key for key in words("en") if key.startswith(("papers-", "book-", "log-"))]
    assert [key for key in own if key not in words("es")] == []


@pytest.mark.parametrize(
    ("name", "said"),
    [("seal-sheet.pdf", "Día de sellado"), ("chain.pdf", "Los demás oficios se quedan fuera")],
)
def test_who_reads_spanish_gets_these_papers_in_spanish(office, name, said):
    answer = office.get(f"/houses/two/papers/{name}", headers={"accept-language": "es"})
    page = pypdfium2.PdfDocument(answer.content)[0].get_textpage().get_text_range()
    assert said in page
    assert "datos 1 · entradas " in page
    english = pypdfium2.PdfDocument(paper(office, name).content)[0]
    assert "facts 1 · inputs " in english.get_textpage().get_text_range()
