"""What is sent: judged by its content and never by its name, and never larger than can be borne."""

import hashlib
import json
import struct
import zlib

import pytest
from tests.web.pages.office import KEY, two_rooms

from farwall.errors import Refused
from farwall.readers import any_plan
from farwall.readers.dxf import gather
from farwall.web import bombs
from farwall.web.bombs import insist_bearable_file, insist_bearable_json

BEARER = {"authorization": f"Bearer {KEY}"}
PACKED = [b"PK\x03\x04" + b"0" * 100, b"\x1f\x8b" + b"0" * 100, b"7z\xbc\xaf\x27\x1c", b"Rar!\x1a"]


def png(wide, high):
    """A PNG whose header says so; a few bytes whatever it says."""
    head = b"IHDR" + struct.pack(">IIBBBBB", wide, high, 8, 2, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + struct.pack(">I", 13) + head + struct.pack(">I", zlib.crc32(head))


def jpeg(wide, high):
    """The head of a JPEG of that size."""
    frame = b"\xff\xc0" + struct.pack(">HBHHB", 11, 8, high, wide, 1) + b"\x01\x11\x00"
    return b"\xff\xd8\xff\xe0" + struct.pack(">H", 4) + b"JF" + frame + b"\xff\xda" + b"\0" * 20


@pytest.mark.parametrize("content", [b"", b"\xff\xd8 a photo", png(4000, 3000), jpeg(8000, 6000)])
def test_a_photo_is_taken(content):
    insist_bearable_file(content)


@pytest.mark.parametrize("content", [png(60_000, 60_000), jpeg(65_000, 65_000), *PACKED])
def test_a_picture_that_would_be_huge_and_an_archive_are_refused(office, content):
    with pytest.raises(Refused):
        insist_bearable_file(content)
    sha = hashlib.sha256(content).hexdigest()
    answer = office.ask("PUT", f"/api/files/{sha}", headers=BEARER, content=content)
    assert answer.status_code == 422
    assert office.book.missing_files([sha]) == [sha]


@pytest.mark.parametrize(
    "body",
    [
        b"[" * 100_000,
        b"[" * 65 + b"]" * 65,
        b'{"a":' * 65 + b"1" + b"}" * 65,
        b"[" + b"[]," * 500_001 + b"1]",
        b'{"facts": NaN}',
        b'{"facts": 1' + b"0" * 5000 + b"}",
    ],
    ids=["torn deep", "deep", "deep objects", "many", "no number", "long number"],
)
def test_json_that_would_be_huge_is_refused_calmly(office, body):
    answer = office.ask("PUT", "/api/jobs/two/facts", headers=BEARER, content=body)
    assert answer.status_code == 422
    assert answer.json()["mistakes"]


@pytest.mark.parametrize(
    "body",
    [
        b"[" * 64 + b"]" * 64,
        json.dumps(["[" * 1000 + '\\"']).encode(),
        b'"' + b"[" * 999,
        b'"' + b"[" * 999 + b"\\",
        b"",
        b"]" * 99,
        b'"' + b'\\"' * 2_000_000 + b"[" * 99,
    ],
    ids=["as deep as may be", "in a text", "not closed", "escaped end", "none", "closed", "long"],
)
def test_brackets_in_texts_are_no_depth(body):
    insist_bearable_json(body)


def test_a_job_of_ours_is_far_below_the_limits():
    body = json.dumps(two_rooms()).encode()
    insist_bearable_json(body)
    assert body.count(b"[") + body.count(b"{") < bombs.MOST_BRACKETS / 100


def bring(office, content, name):
    return office.post("/houses/bring", files={"file": (name, content)})


@pytest.mark.parametrize(
    ("content", "name"),
    [
        *((one, "house.dxf") for one in PACKED[:2]),
        (b"[" * 100_000, "house.geojson"),
        (b'{"floor":' * 99 + b"1" + b"}" * 99, "job.json"),
        (b'{"type":"FeatureCollection","features":[' + b"[]," * 500_001 + b"1]}", "floor.geojson"),
        (b"\x89PNG\r\n\x1a\n" + b"0" * 50, "house.dxf"),
        (b"<html><p>a page</p></html>", "house.dxf"),
        (b"MZ\x90", "house.dxf"),
        (b"", "house.json"),
        (b"\x00" * 1000, "job.json"),
    ],
    ids=[
        "zip",
        "gz",
        "deep",
        "deep job",
        "many points",
        "picture",
        "page",
        "program",
        "empty",
        "zeros",
    ],
)
def test_what_a_house_is_brought_by_is_known_by_its_content(office, content, name):
    office.enter_as("office")
    answer = bring(office, content, name)
    assert answer.status_code == 422
    assert "Traceback" not in answer.text
    assert office.book.jobs() == []


def test_a_drawing_of_more_things_than_a_floor_has_is_refused(office, monkeypatch):
    """The true limit is 400,000; a block that is set often reaches it by a small file.

    Read in this process, for another one would not know of the smaller limit.
    """
    assert gather.MOST_ENTITIES == 400_000
    monkeypatch.setattr(any_plan, "read_content", any_plan.read_bytes)
    monkeypatch.setattr(gather, "MOST_ENTITIES", 2_000)
    line = "0\nLINE\n8\n0\n10\n0\n20\n0\n11\n1\n21\n1\n"
    block = "0\nBLOCK\n2\nB\n10\n0\n20\n0\n" + line * 50 + "0\nENDBLK\n"
    insert = "0\nINSERT\n8\n0\n2\nB\n10\n0\n20\n0\n"
    text = (
        f"0\nSECTION\n2\nBLOCKS\n{block}0\nENDSEC\n"
        f"0\nSECTION\n2\nENTITIES\n{insert * 50}0\nENDSEC\n0\nEOF\n"
    )
    office.enter_as("office")
    answer = bring(office, text.encode(), "house.dxf")
    assert answer.status_code == 422
    assert "2,000" in answer.text


@pytest.mark.parametrize(
    "name", ["../../etc/passwd.json", "..\\..\\x.json", "/x/y.json", "a\x00b.json", "." * 300]
)
def test_a_name_that_climbs_leads_nowhere(office, tmp_path, name):
    facts = two_rooms()
    del facts["id"]
    office.enter_as("office")
    bring(office, json.dumps(facts).encode(), name)
    for one in office.book.jobs():
        assert "/" not in one.id
        assert ".." not in one.id
    below = {str(one.relative_to(tmp_path)) for one in tmp_path.rglob("*") if one.is_file()}
    assert all(one.startswith("book/") for one in below)


@pytest.mark.parametrize(
    "path",
    ["/api/files/..%2f..%2fbook.sqlite", "/api/files/%2e%2e", "/static/..%2f..%2fapp.py",
     "/slab/files/..%2f..%2fapp.py", "/houses/two/..%2f..%2fbook.sqlite", "/api/files/" + "A" * 64],
)  # fmt: skip
def test_a_path_that_climbs_gives_nothing(office, path):
    office.put(two_rooms())
    office.enter_as("lead")
    answer = office.get(path, headers=BEARER)
    assert answer.status_code in {404, 422}
    assert b"SQLite format" not in answer.content
    assert b"def app_for" not in answer.content


def test_a_file_of_the_book_is_never_shown_as_a_page(office):
    page = b"<script>alert(1)</script>"
    sha = office.book.put_file(page)
    answer = office.get(f"/api/files/{sha}", headers=BEARER)
    assert answer.headers["content-disposition"] == "attachment"
    assert answer.headers["content-type"] == "application/octet-stream"
    assert answer.headers["x-content-type-options"] == "nosniff"
