"""The people of an acid day over HTTP: words, stops, papers; in both languages."""

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

ADA = {
    "id": "ada", "name": "Ada", "duties": ["mixes", "sprays"], "respirator": "half face",
    "fit_tested": "2025-07-01", "cleared": "2025-06-01", "clean_shaven": False, "gloves": "nitrile",
    "goggles": True, "apron": True, "boots": True, "trained": "2026-06-01",
    "cartridge": {"acid_gas": True, "p100": True, "opened": "2026-06-01", "change_after_min": 240},
}  # fmt: skip
SPANISH = {"accept-language": "es"}


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    facts = {"workers": [ADA], "emergency": {"number": "555 0142"}}
    found.put(two_rooms(**facts), name="Two")
    yield found
    found.close()


def part(office, **more):
    office.get("/houses/two")  # the plan is made meanwhile
    text = office.get("/houses/two/acid/people", **more).text
    assert faults_of_html(text) == []
    return text[text.index('id="acid-people"') :]


def test_what_stops_stands_first_with_its_reason_and_the_firm_s_number_stands_there(office):
    text = part(office)
    assert text.index("Ada may not mix a batch yet: hair under") < text.index("Looked in on")
    for one in ("555 0142", "Owner, pets and other trades stay out", "/houses/two/workers"):
        assert one in text
    assert "911" not in text


def test_in_spanish_it_is_spanish(office):
    text = part(office, headers=SPANISH)
    assert "Ada todavía no puede hacer la mezcla: pelo bajo" in text
    for english in ("stay out", "Looked in", "may not", "while somebody", "Rinse the mouth"):
        assert english not in text


def test_both_papers_are_on_the_list_and_made(office):
    office.get("/houses/two")
    listed = office.get("/houses/two/papers").text
    for name in ("people.pdf", "keep-out.pdf"):
        assert f"/houses/two/papers/{name}" in listed
        made = office.get(f"/houses/two/papers/{name}")
        assert made.headers["content-type"] == "application/pdf"
        assert made.content.startswith(b"%PDF")
