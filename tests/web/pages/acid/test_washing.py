"""The wash day on its page, and the form of its facts."""

from datetime import datetime

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.facts.log import Entry
from farwall.web.words import words


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put_planned(name="Two")
    yield found
    found.close()


def enter(office, n, word, **about):
    at = f"2026-06-08T08:{10 + n:02d}:00+00:00"
    entry = Entry(
        f"01900000-0000-7000-8000-{n:012d}", "two", word, at, number=n, device="d", about=about
    )
    office.clock = datetime.fromisoformat(at)
    office.book.keep([entry], received_at=at)


TOLD = {
    "version": "1", "washing.water_from": "outside tap", "washing.base": "bicarbonate",
    "washing.tap_ph": "7.6", "washing.unstained_ph": "9", "washing.water_l_per_m2": "12",
    "washing.rinses": "4", "washing.ground_fault": "yes", "washing.drums.count": "3",
    "washing.drums.size_l": "55", "washing.floor_load_kg_m2": "50", "washing.upstairs": "yes",
    "washing.van_load_kg": "1500",
}  # fmt: skip


def test_what_is_told_becomes_facts_in_si_and_stands_in_the_form(office):
    """By hand: 12 gal on 100 ft² are 4.889 L/m², 50 lb/ft² are 244.1 kg/m², 1,500 lb 680.4 kg."""
    answer = office.post("/houses/two/washing", data=TOLD)
    assert answer.headers["location"] == "/houses/two/washing?kept=yes"
    washing = office.book.facts("two")["washing"]
    assert washing["water_l_per_m2"] == pytest.approx(4.8894, abs=1e-3)
    assert washing["floor_load_kg_m2"] == pytest.approx(244.12, abs=0.01)
    assert washing["van_load_kg"] == pytest.approx(680.39, abs=0.01)
    assert washing["drums"]["size_l"] == pytest.approx(208.198, abs=0.001)
    assert (washing["ground_fault"], washing["tap_ph"]) == (True, 7.6)
    text = office.get("/houses/two/washing").text
    assert 'value="outside tap"' in text
    assert faults_of_html(text) == []


def test_the_page_tells_order_water_and_what_is_still_to_be_told(office):
    text = office.get("/houses/two/acid/washing").text
    for told in (
        "Begin ", "All rinses: likely", "Before the first pail", "/houses/two/washing",
        "Read a strip in the tap water first", "About 4 rinses, 3 to 6.",
    ):  # fmt: skip
        assert told in text
    assert "After rinse" not in text
    assert faults_of_html(text) == []


def test_as_the_wash_goes_on_each_room_says_what_comes_next(office):
    room = two_rooms()["floor"]["rooms"][0]["id"]
    enter(office, 0, "rinsed", room=room, round=1, ph=7.5, rag="coloured")
    text = office.get("/houses/two/acid/washing").text
    assert "After rinse 1, pH 7.5, rag coloured" in text
    assert "Scrub every spot again, not only a rinse." in text
    assert "2 of 2 rooms still to do, by the log." in text
    enter(office, 1, "rinsed", room=room, round=2, ph=7.5, rag="clean")
    enter(office, 2, "strip-read", room=room, of="rinse water", ph=7.5)
    assert "1 of 2 rooms still to do, by the log." in office.get("/houses/two/acid/washing").text


def test_in_spanish_all_of_it_is_spanish(office):
    room = two_rooms()["floor"]["rooms"][0]["id"]
    enter(office, 0, "rinsed", room=room, round=1, ph=5.0, rag="clean")
    text = office.get("/houses/two/acid/washing", headers={"accept-language": "es"}).text
    assert "Talle otra vez con neutralizador, no solo enjuague." in text
    assert "Tras el enjuague 1" in text
    assert "Scrub" not in text
    english, spanish = words("en"), words("es")
    own = [key for key in english if "wash" in key]
    assert [key for key in own if key not in spanish] == []
