"""The book on a page: looked through, backed up to a file, what has not come from phones."""

from __future__ import annotations

import io
import json
import re
import zipfile

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.cli.main import main
from farwall.facts.log import Entry
from farwall.store.book import Book, restore
from farwall.store.nouns import BookTrouble

AT = "2026-06-08T08:00:00+00:00"


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put(two_rooms(), name="Two rooms")
    yield found
    found.close()


def looked(office):
    office.get("/book")  # begins the first look, which is waited for here
    return office.get("/book").text


def test_a_whole_book_is_told_whole_as_the_command_tells_it(office, capsys):
    code = main(["book", "check", "--book", str(office.book.where.folder)])
    assert (code, "is whole." in capsys.readouterr().out) == (0, True)
    text = looked(office)
    assert faults_of_html(text) == []
    assert "The book is whole" in text
    assert "1 house, 0 of them handed over; 0 entries" in text
    assert str(office.book.where.shown) in text


def test_faults_are_those_of_the_command_and_come_first(office, capsys):
    sha = office.book.put_file(b"a photo")
    office.book.keep(
        [Entry("e-1", "two", "photo", AT, device="p", number=1, about={"file": sha})],
        received_at=AT,
    )
    path = office.book.where.files / sha[:2] / sha[2:]
    path.write_bytes(b"another")
    code = main(["book", "check", "--book", str(office.book.where.folder), "--json"])
    faults = json.loads(capsys.readouterr().out)["faults"]
    assert code == 1
    text = looked(office).replace("&#39;", "'")
    assert "1 fault. Keep this book as it is" in text
    for one in faults:
        assert f"{one['code']} {one['where']}: {one['what']}" in text


def test_it_is_looked_through_again_when_asked(office):
    looked(office)
    office.book.put_file(b"nobody names it")
    assert "loose-file" not in office.get("/book").text
    office.post("/book/check")
    assert "loose-file" in office.get("/book").text


@pytest.mark.parametrize("kind", ["open", "store"])
def test_a_backup_that_was_fetched_makes_the_same_book_again(office, tmp_path, kind):
    office.book.put_file(b"a photo")
    office.book.put_document("van", "firm", {"version": 1})
    answer = office.post("/book/backup", data={"kind": kind})
    assert answer.headers["content-type"] == "application/zip"
    name = re.search(r'filename="(farwall-book-.+)\.zip"', answer.headers["content-disposition"])[1]
    zipfile.ZipFile(io.BytesIO(answer.content)).extractall(tmp_path / "fetched")
    restore(tmp_path / "fetched" / name, tmp_path / "again")
    with Book.open(tmp_path / "again") as again:
        assert again.jobs() == office.book.jobs()
        assert again.facts("two") == office.book.facts("two")
        assert again.documents("van") == office.book.documents("van")
        assert [one for one in again.check() if one.harm] == []


def test_nothing_of_a_backup_stays_on_the_disk(office, tmp_path, monkeypatch):
    monkeypatch.setattr("tempfile.tempdir", str(tmp_path / "aside"))
    (tmp_path / "aside").mkdir()
    office.post("/book/backup", data={"kind": "open"})
    assert list((tmp_path / "aside").iterdir()) == []

    def full(_folder):
        raise BookTrouble()

    monkeypatch.setattr(office.book, "out", full)
    assert office.post("/book/backup", data={"kind": "open"}).status_code == 503
    assert list((tmp_path / "aside").iterdir()) == []


def test_a_backup_is_only_for_a_form_of_this_site_and_of_two_kinds(office):
    elsewhere = office.ask("POST", "/book/backup", headers={"origin": "http://evil.example"})
    assert elsewhere.status_code == 403
    assert office.post("/book/backup", data={"kind": "all"}).status_code == 422
    assert office.get("/book/backup").status_code == 405


def test_phones_say_when_they_were_last_heard_and_what_has_not_come(office):
    notes = [Entry(f"e-{n}", "two", "note", AT, device="phone-1", number=n, about={"text": "x"})
             for n in (1, 2, 4)]  # fmt: skip
    office.book.keep(notes, received_at=AT, clock_off_s={("phone-1", 0): 300.0})
    text = looked(office)
    assert "<strong>phone-1</strong>: last heard Mon 8 Jun 2026, 8:00 am UTC; 3 entries" in text
    assert "its clock is 5 min ahead" in text
    assert "1 entry of it has not come yet: number 3." in text


def test_restoring_is_by_the_command_line_and_says_so(office):
    text = looked(office)
    assert "farwall book restore FOLDER --book NEW" in text
    assert 'action="/book/restore"' not in text


def test_in_spanish_the_page_is_sound(office):
    looked(office)
    text = office.get("/book", headers={"accept-language": "es"}).text
    assert faults_of_html(text) == []
    assert "El libro está entero" in text


def test_only_a_lead_takes_the_whole_book_along(office):
    office.enter_as("office")
    text = office.get("/book").text
    assert "Only a lead takes the whole book along" in text
    assert 'action="/book/backup"' not in text
    assert office.post("/book/backup", data={"kind": "open"}).status_code == 403
    office.enter_as("helper")
    assert office.get("/book").status_code == 403
    assert 'href="/book"' not in office.get("/").text
