"""Onto the phone: a square that holds the address, its secret behind the #, and three ways."""

from __future__ import annotations

import html
from urllib.parse import quote

import pytest
import segno
from tests.web.pages.office import KEY, START, Office, two_rooms

from farwall.web.authority import authority_of


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.put(two_rooms(), name="Two rooms")
    found.ask("POST", "/enter", data={"key": KEY, "to": "/"}, headers={"origin": found.here})
    yield found
    found.close()


def drawn(text):
    """What stands in the square that holds this text."""
    made = segno.make_qr(text, error="m").svg_inline(
        border=4, dark="#000", light="#fff", omitsize=True, svgclass=None, lineclass=None
    )
    return made.partition("<svg ")[2]


def test_the_page_asks_for_a_session(office):
    office.cookies.clear()
    assert office.ask("GET", "/houses/two/phone").status_code == 303
    assert office.ask("GET", "/houses/two/slab.html").status_code == 303


def test_the_square_holds_the_address_with_the_key_behind_the_hash_and_words_hold_no_key(office):
    told = office.ask("GET", "/houses/two/phone")
    assert told.status_code == 200
    assert drawn(f"{office.here}/slab/two#{quote(KEY, safe='')}") in told.text
    assert KEY not in told.text
    assert quote(KEY, safe="") not in told.text
    assert f"{office.here}/slab/two" in told.text
    assert "plain http" in told.text
    assert told.headers["cache-control"] == "no-store"


def test_over_https_it_says_that_it_is_safe(tmp_path):
    office = Office(tmp_path, scheme="https")
    office.put(two_rooms())
    office.ask("POST", "/enter", data={"key": KEY, "to": "/"}, headers={"origin": office.here})
    told = office.ask("GET", "/houses/two/phone").text
    office.close()
    assert "safe for a phone that knows its certificate" in told


@pytest.mark.parametrize("here", [("10.0.0.7", "fd00::2"), ()])
def test_from_this_machine_itself_the_square_names_an_address_that_a_phone_can_reach(
    office, monkeypatch, here
):
    monkeypatch.setattr("farwall.web.pages.phone_ways.addresses", lambda: here)
    told = office.ask("GET", "/houses/two/phone", headers={"host": "localhost:8750"}).text
    if here:
        assert drawn(f"http://10.0.0.7:8750/slab/two#{quote(KEY, safe='')}") in told
        assert "farwall serve --host 0.0.0.0" in told
    else:
        assert "on no network" in told


def test_the_authority_is_shown_with_its_fingerprint_and_fetched_without_a_key(office, tmp_path):
    assert "no authority yet" in office.ask("GET", "/houses/two/phone").text
    assert office.ask("GET", "/authority.crt").status_code == 404
    known = authority_of(tmp_path / "book", START)
    told = office.ask("GET", "/houses/two/phone").text
    assert known.fingerprint in told
    assert drawn(f"{office.here}/authority.crt") in told
    office.cookies.clear()
    public = office.ask("GET", "/authority.crt")
    assert public.headers["content-type"] == "application/x-x509-ca-cert"
    assert public.content == known.public.read_bytes()
    assert b"PRIVATE" not in public.content


def test_the_file_is_the_run_sheet_with_its_paper(office):
    assert office.ask("GET", "/houses/two/phone").status_code == 200  # has it planned
    told = office.ask("GET", "/houses/two/slab.html")
    assert told.status_code == 200
    assert told.headers["content-disposition"] == 'attachment; filename="slab.html"'
    assert 'id="sheet"' in told.text
    assert 'id="paper-packed"' in told.text
    assert KEY not in told.text


def test_it_is_said_in_spanish_to_who_asks_for_it(office):
    told = office.ask("GET", "/houses/two/phone", headers={"accept-language": "es-MX"}).text
    assert "Una autoridad propia" in html.unescape(told)


def test_a_house_that_is_not_there_is_told_calmly(office):
    assert office.ask("GET", "/houses/nowhere/phone").status_code == 404
