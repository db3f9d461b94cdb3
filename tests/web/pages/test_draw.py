"""A floor drawn and corrected: new facts, faults at their places, notes, a picture under it."""

from __future__ import annotations

import copy
import json
import struct
import time
import zlib

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.errors import Mistake, Refused
from farwall.readers.job_json import job_from
from farwall.store.nouns import BookTrouble
from farwall.web.pages.brought import brought
from farwall.web.pages.drafts import DRAFT, UNDERLAY, floor_of
from farwall.web.pages.drawn import drawn_of, with_drawn
from farwall.web.pages.picture import MOST_PICTURE_BYTES, picture_of
from farwall.web.pages.repairs import READING


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


def drawn(office, job="two"):
    """The floor as the page gives it, to be changed and posted."""
    return copy.deepcopy(floor_of(office.book, job).now)


def keep(office, floor, *, version=1, job="two", **more):
    data = {"version": str(version), "drawn": json.dumps(floor), **more}
    return office.post(f"/houses/{job}/draw", data=data)


def wider(floor, by=0.5):
    """The outer wall of the last room moved along x."""
    ring = floor["rooms"][-1]["polygon"]["coordinates"][0]
    far = max(x for x, _ in ring)
    floor["rooms"][-1]["polygon"]["coordinates"][0] = [
        [x + by if x == far else x, y] for x, y in ring
    ]
    return floor


def test_the_page_is_well_formed_and_gives_the_floor(office):
    office.put(two_rooms())
    page = office.get("/houses/two/draw")
    assert page.status_code == 200
    assert faults_of_html(page.text) == []
    assert "data-given" in page.text


def test_what_is_drawn_becomes_new_facts_and_is_planned(office):
    office.put(two_rooms())
    office.get("/houses/two")
    answer = keep(office, wider(drawn(office)))
    assert (answer.status_code, answer.json()["version"]) == (200, 2)
    assert office.book.versions("two")[-1].version == 2
    state = office.get("/houses/two/state").json()
    assert (state["fresh"], state["no"]) == (True, [])
    before = office.book.facts("two", 1)
    after = office.book.facts("two", 2)
    assert before["floor"]["rooms"][0] == after["floor"]["rooms"][0]
    assert before["floor"]["rooms"][-1] != after["floor"]["rooms"][-1]
    assert {key: value for key, value in after.items() if key != "floor"} == {
        key: value for key, value in before.items() if key != "floor"
    }
    assert "Against facts 1" in office.get("/houses/two").text


def test_a_window_that_its_wall_has_left_is_told(office):
    facts = two_rooms()
    ring = facts["floor"]["rooms"][-1]["polygon"]["coordinates"][0]
    far = max(x for x, _ in ring)
    facts["floor"]["windows"] = [{"line": [[far, 4.2], [far, 4.8]]}]
    office.put(facts)
    assert "no longer lie in a wall: 1." in keep(office, wider(drawn(office), 1.5)).json()["said"]
    assert office.book.facts("two")["floor"]["windows"] == facts["floor"]["windows"]


def test_nothing_drawn_is_no_new_version(office):
    office.put(two_rooms())
    answer = keep(office, drawn(office))
    assert answer.status_code == 200
    assert len(office.book.versions("two")) == 1


def test_who_draws_what_somebody_else_changed_meanwhile_is_told_so(office):
    office.put(two_rooms())
    floor = wider(drawn(office))
    office.put(two_rooms(name="Changed"))
    answer = keep(office, floor, version=1)
    assert answer.status_code == 409
    told = answer.json()
    assert "somebody else" in told["said"]
    assert len(office.book.versions("two")) == 2
    assert told["version"] == 2
    assert {**told["theirs"], "answers": {}} == {**drawn(office), "answers": {}}


def test_a_book_that_takes_nothing_does_not_say_that_it_kept_the_drawing(office, monkeypatch):
    office.put(two_rooms())

    def full(*_, **__):
        raise BookTrouble(Mistake("book", "The disk is full."))

    monkeypatch.setattr(office.book, "put_facts", full)
    answer = keep(office, wider(drawn(office), 1.5))
    assert answer.status_code == 503
    assert "kept as a drawing" not in answer.text
    assert floor_of(office.book, "two").changed is False


def test_a_drawing_that_is_no_job_yet_is_not_kept_over_by_who_did_not_see_it(office):
    office.put(two_rooms())
    floor, sound = drawn(office), wider(drawn(office), 1.5)
    floor["exits"] = []
    seen = floor_of(office.book, "two").seen
    mine = keep(office, floor, seen=seen)
    assert mine.status_code == 422
    other = keep(office, sound, seen=seen)
    assert other.status_code == 409
    assert other.json()["theirs"]["exits"] == []
    assert floor_of(office.book, "two").now == floor
    again = keep(office, sound, seen=other.json()["seen"])
    assert again.status_code == 200


def test_all_faults_come_at_once_each_with_its_place_and_the_drawing_is_kept(office):
    office.put(two_rooms())
    floor = drawn(office)
    floor["exits"] = []
    floor["rooms"][0]["polygon"]["coordinates"][0][1] = [40.0, 60.0]
    floor["fixtures"].append({
        "id": "tub-1", "kind": "tub",
        "polygon": {"type": "Polygon", "coordinates": [[[90, 90], [91, 90], [91, 91], [90, 90]]]},
    })  # fmt: skip
    answer = keep(office, floor)
    faults = answer.json()["faults"]
    assert answer.status_code == 422
    assert len(faults) >= 3
    tub = next(one for one in faults if "tub" in one["what"])
    assert tub["thing"] == {"list": "fixtures", "id": "tub-1"}
    assert tub["at"] == [90.5, 90.5]
    way = next(one for one in faults if "way out" in one["what"])
    assert way["thing"]["list"] == "openings"
    assert "tick" in way["remedy"]
    assert "{" not in way["remedy"]  # no key of a job file
    assert (way["act"], way["act_told"]) == ("way-out", "The outside door is the way out")
    assert len(office.book.versions("two")) == 1
    assert floor_of(office.book, "two").now == floor
    assert "not planned yet" in office.get("/houses/two/draw").text


def test_what_is_wrong_with_a_drawing_is_told_in_the_language_of_the_page(office):
    office.put(two_rooms())
    floor = drawn(office)
    floor["exits"] = []
    data = {"version": "1", "drawn": json.dumps(floor)}
    told = office.post("/houses/two/draw", data=data, headers={"accept-language": "es"}).json()
    (fault,) = told["faults"]
    assert fault["what"] == "Un trabajo necesita una salida."
    assert fault["remedy"].startswith("¿Por qué puerta exterior")
    assert fault["act_told"] == "La puerta exterior es la salida"


def test_a_draft_of_older_facts_is_passed_over(office):
    office.put(two_rooms())
    broken = drawn(office)
    broken["exits"] = []
    keep(office, broken)
    office.put(two_rooms(name="Changed"))
    assert floor_of(office.book, "two").changed is False


def test_what_other_facts_say_of_a_room_that_is_gone_goes_only_when_told(office):
    facts = two_rooms()
    out = facts["floor"]["openings"]
    way = next(one["rooms"][0] for one in out if one["kind"] == "outside")
    name = next(one["id"] for one in facts["floor"]["rooms"] if one["id"] != way)
    office.put({**facts, "survey": {"rooms": {name: {"drop_s": 60}}, "slab_c": 20}})
    floor = drawn(office)
    gone = {one["id"] for one in floor["openings"] if name in one["rooms"]}
    floor["rooms"] = [one for one in floor["rooms"] if one["id"] != name]
    floor["openings"] = [one for one in floor["openings"] if one["id"] not in gone]
    floor["exits"] = [one for one in floor["exits"] if one["opening"] not in gone]
    refused = keep(office, floor)
    assert [one["where"] for one in refused.json()["faults"]] == [f"survey.rooms.{name}"]
    assert refused.json()["faults"][0]["elsewhere"] is True
    assert keep(office, floor, drop="yes").status_code == 200
    assert office.book.facts("two")["survey"] == {"rooms": {}, "slab_c": 20}


def test_keys_that_the_screen_does_not_show_stay_to_the_letter():
    facts = two_rooms()
    facts["floor"]["openings"][0]["width_in"] = 36
    facts["floor"]["openings"][0].pop("width_m", None)
    facts["floor"]["windows"] = [{"line": [[0, 1], [0, 2]], "sill_m": 0.9}]
    facts["floor"]["north_deg"] = 12
    was = drawn_of(job_from(copy.deepcopy(facts), "it"))
    now = wider(copy.deepcopy(was))
    changed = with_drawn(facts, was, now)
    assert changed["floor"]["windows"] == facts["floor"]["windows"]
    assert changed["floor"]["north_deg"] == 12
    assert changed["floor"]["rooms"][-1] != facts["floor"]["rooms"][-1]
    now["openings"][0]["width_m"] = 1.0
    assert "width_in" not in with_drawn(facts, was, now)["floor"]["openings"][0]


def test_a_floor_given_as_geojson_stays_one_with_its_foreign_members():
    from farwall.floor.geojson import floor_collection

    facts = two_rooms()
    job = job_from(copy.deepcopy(facts), "it")
    collection = floor_collection(job.floor)
    collection["surveyed_by"] = "a tape"
    collection["features"][0]["properties"]["ceiling"] = "high"
    facts["floor"] = collection
    was = drawn_of(job_from(copy.deepcopy(facts), "it"))
    changed = with_drawn(facts, was, wider(copy.deepcopy(was)))
    assert changed["floor"]["surveyed_by"] == "a tape"
    assert changed["floor"]["features"][0]["properties"]["ceiling"] == "high"
    moved = job_from(changed, "it")
    assert moved.floor.rooms[-1].polygon != job.floor.rooms[-1].polygon
    assert moved.exits == job.exits


@pytest.mark.parametrize("told", ["", "no", "[]", '{"rooms": 1}', '{"rooms": [{}]}', "[" * 5000])
def test_what_is_no_drawing_is_refused_calmly(office, told):
    office.put(two_rooms())
    answer = office.post("/houses/two/draw", data={"version": "1", "drawn": told})
    assert answer.status_code == 422
    answer = office.post("/houses/two/draw/preview", data={"version": "1", "drawn": told})
    assert answer.status_code == 422


def test_without_the_key_and_from_elsewhere_nothing_is_drawn(office):
    office.put(two_rooms())
    data = {"version": "1", "drawn": json.dumps(wider(drawn(office)))}
    for path in ("/houses/two/draw", "/houses/two/draw/preview", "/draw"):
        other = office.ask("POST", path, data=data, headers={"origin": "http://elsewhere"})
        assert other.status_code == 403
    office.cookies = type(office.cookies)()
    assert office.get("/houses/two/draw").status_code == 303
    assert len(office.book.versions("two")) == 1


def test_a_preview_says_verdict_and_age_and_is_the_stricter_where_unsure(office):
    office.put(two_rooms())
    office.get("/houses/two/draw")

    def ask(floor, version="1"):
        data = {"version": version, "drawn": json.dumps(floor), "moving": "yes"}
        return office.post("/houses/two/draw/preview", data=data)

    told = {"waiting": True}
    while told.get("waiting"):  # the full plan that it needs is being made
        time.sleep(0.05)
        told = ask(drawn(office)).json()
    assert told["head"] == "Every field fits."
    assert all("min" in one["text"] for one in told["rooms"].values())
    moved = ask(wider(drawn(office))).json()
    assert "weighed as" in " ".join(moved["lines"])
    cut = drawn(office)
    cut["openings"] = [one for one in cut["openings"] if len(one["rooms"]) == 1]
    assert ask(cut).json()["no"] is True
    assert ask(drawn(office), version="9").status_code == 409


def test_a_house_is_begun_by_its_name_and_two_lengths(office):
    form = {"name": "Plover Lane", "room": "Great room", "wide": "18' 6\"", "deep": "4.2 m"}
    answer = office.post("/draw", data=form)
    assert (answer.status_code, answer.headers["location"]) == (303, "/houses/plover-lane/draw")
    assert office.get("/houses/plover-lane/draw").status_code == 200
    floor = drawn(office, "plover-lane")
    assert floor["rooms"][0]["polygon"]["coordinates"][0][2] == [5.6388, 4.2]
    assert "Plover Lane" in office.get("/draw").text
    assert office.get("/").status_code == 200
    line = [[2, 4.2], [3, 4.2]]
    floor["openings"] = [{"id": "front", "kind": "outside", "line": line, "rooms": ["great-room"]}]
    assert keep(office, floor, version=0, job="plover-lane").status_code == 422
    floor["exits"] = [{"id": "out", "opening": "front"}]
    assert keep(office, floor, version=0, job="plover-lane").json()["version"] == 1
    assert "Plover Lane" in office.get("/").text
    assert "Begun, not planned yet" not in office.get("/draw").text
    assert office.post("/draw", data=form).headers["location"] == "/houses/plover-lane-2/draw"


@pytest.mark.parametrize(
    ("told", "wrong"),
    [({"name": ""}, "needs a name"), ({"name": "A", "wide": "12"}, "no length"),
     ({"name": "A", "wide": "wide", "deep": "3"}, "no length"),
     ({"name": "A", "wide": "0", "deep": "3"}, "no length")],
)  # fmt: skip
def test_a_house_begun_wrongly_is_told_all_and_not_kept(office, told, wrong):
    answer = office.post("/draw", data=told)
    assert answer.status_code == 422
    assert wrong in answer.text
    assert office.book.documents(DRAFT) == {}


def png(wide, high):
    """The smallest PNG of a size: its header and no more."""
    head = struct.pack(">II5B", wide, high, 8, 0, 0, 0, 0)
    chunk = b"IHDR" + head
    return (
        b"\x89PNG\r\n\x1a\n" + struct.pack(">I", 13) + chunk + struct.pack(">I", zlib.crc32(chunk))
    )


def jpeg(wide, high):
    """A JPEG's markers up to its frame header."""
    return (
        b"\xff\xd8\xff\xe0\x00\x04ab\xff\xc0\x00\x11\x08"
        + struct.pack(">HH", high, wide)
        + bytes(12)
    )


def turned(order, orientation):
    """A JPEG of 1200 x 800 whose Exif segment says how it is to be turned."""
    long, short = ("<" if order == b"II" else ">") + "HI", ("<" if order == b"II" else ">")
    tiff = (
        order
        + struct.pack(long, 42, 8)
        + struct.pack(f"{short}HHHIHH", 1, 0x112, 3, 1, orientation, 0)
    )
    segment = b"Exif\x00\x00" + tiff
    return (
        jpeg(1200, 800)[:2]
        + b"\xff\xe1"
        + struct.pack(">H", len(segment) + 2)
        + segment
        + jpeg(1200, 800)[2:]
    )


@pytest.mark.parametrize("order", [b"II", b"MM"])
@pytest.mark.parametrize(
    ("orientation", "sides"),
    [(1, (1200, 800)), (3, (1200, 800)), (6, (800, 1200)), (8, (800, 1200)), (99, (1200, 800))],
)
def test_a_photo_taken_upright_is_as_wide_as_it_is_shown(order, orientation, sides):
    found = picture_of(turned(order, orientation))
    assert (found.width_px, found.height_px) == sides


@given(st.binary(max_size=60), st.integers(0, 60))
def test_whatever_stands_in_a_photo_s_head_it_is_read_or_refused(noise, at):
    content = turned(b"MM", 6)
    try:
        found = picture_of(content[:at] + noise + content[at:])
    except Refused:
        return
    assert 0 < found.width_px <= 12_000


def lay(office, content, name="plan.bin"):
    return office.post("/houses/two/draw/underlay", files={"picture": (name, content)})


@pytest.mark.parametrize(("make", "kind"), [(png, "image/png"), (jpeg, "image/jpeg")])
def test_a_picture_is_laid_under_placed_and_taken_away(office, make, kind):
    office.put(two_rooms())
    content = make(1200, 800)
    assert lay(office, content, "it.txt").status_code == 303
    laid = office.book.document(UNDERLAY, "two")
    assert (laid["kind"], laid["width_px"], laid["height_px"]) == (kind, 1200, 800)
    path = f"/houses/two/draw/underlay?file={laid['file']}"
    got = office.get(path)
    assert (got.content, got.headers["content-type"]) == (content, kind)
    assert got.headers["x-content-type-options"] == "nosniff"
    place = {"file": laid["file"], "at": [1, 2], "m_per_px": 0.01, "opacity": 0.3}
    put = {"place": json.dumps(place)}
    assert office.post("/houses/two/draw/underlay/place", data=put).status_code == 200
    assert office.book.document(UNDERLAY, "two")["m_per_px"] == 0.01
    assert faults_of_html(office.get("/houses/two/draw").text) == []
    office.post("/houses/two/draw/underlay", data={"away": "yes"})
    assert office.get(path).status_code == 404


def test_no_other_file_of_the_book_is_given_as_a_picture(office):
    office.put(two_rooms())
    sha = office.book.put_file(b"a photo of the log")
    lay(office, png(10, 10))
    assert office.get(f"/houses/two/draw/underlay?file={sha}").status_code == 404


@pytest.mark.parametrize(
    "content",
    [b"", b"GIF89a and more", b"\x89PNG\r\n\x1a\n", png(60_000, 60_000), png(12_000, 11_000),
     png(0, 5), jpeg(65_000, 20), b"\xff\xd8\xff\xda", b"<svg onload='x'/>", b"\xff\xd8\xff" * 9],
)  # fmt: skip
def test_what_is_no_picture_or_too_large_a_one_is_refused(office, content):
    office.put(two_rooms())
    assert lay(office, content).status_code == 422
    assert office.book.document(UNDERLAY, "two") is None


def test_a_picture_too_heavy_is_refused(office):
    office.put(two_rooms())
    assert lay(office, png(10, 10) + bytes(MOST_PICTURE_BYTES)).status_code in {413, 422}


def test_a_place_that_is_no_place_is_refused(office):
    office.put(two_rooms())
    lay(office, png(10, 10))
    file = office.book.document(UNDERLAY, "two")["file"]
    for wrong in ({"at": [1]}, {"m_per_px": 0}, {"m_per_px": 1e9}, {"opacity": 2}, {"file": "x"}):
        place = {"file": file, "at": [0, 0], "m_per_px": 0.01, "opacity": 0.5, **wrong}
        answer = office.post("/houses/two/draw/underlay/place", data={"place": json.dumps(place)})
        assert answer.status_code == 422


def rooms_of_others():
    """A floor of somebody else's GeoJSON, in degrees: it says no way out, and a bench is left."""
    square = [[0, 0], [5e-5, 0], [5e-5, 4e-5], [0, 4e-5], [0, 0]]
    room = {"type": "Feature", "properties": {"type": "room", "name": "Hall"},
            "geometry": {"type": "Polygon", "coordinates": [square]}}  # fmt: skip
    bench = copy.deepcopy(room)
    bench["properties"] = {"type": "bench"}
    return json.dumps({"type": "FeatureCollection", "features": [room, bench]}).encode()


def test_a_drawing_without_a_way_out_is_brought_to_be_corrected_with_its_notes(office):
    answer = office.post("/houses/bring", files={"file": ("lot_7.geojson", rooms_of_others())})
    assert (answer.status_code, answer.headers["location"]) == (303, "/houses/lot-7/draw")
    reading = office.book.document(READING, "lot-7")
    codes = [one["code"] for one in reading["notes"]]
    assert [code for code in codes if code in {"degrees-to-metres", "not-read", "way-out"}] == [
        "degrees-to-metres", "not-read", "way-out",
    ]  # fmt: skip
    page = office.get("/houses/lot-7/draw")
    assert "What the import found" in page.text
    floor = drawn(office, "lot-7")
    ring = floor["rooms"][0]["polygon"]["coordinates"][0]
    (x0, y0), (x1, y1) = ring[0], ring[1]
    line = [
        [x0 + 0.3 * (x1 - x0), y0 + 0.3 * (y1 - y0)],
        [x0 + 0.5 * (x1 - x0), y0 + 0.5 * (y1 - y0)],
    ]
    floor["openings"] = [
        {"id": "front", "kind": "outside", "line": line, "rooms": [floor["rooms"][0]["id"]]}
    ]
    floor["exits"] = [{"id": "out", "opening": "front"}]
    told = json.dumps({"2": "yes", "0": "yes", "1": "perhaps", "77": "no"})
    assert keep(office, floor, version=0, job="lot-7", answers=told).status_code == 200
    assert office.book.document(READING, "lot-7")["answers"] == {"0": "yes", "2": "yes"}


def test_what_is_brought_again_asks_first_also_where_it_is_only_drawn(office):
    files = {"file": ("lot_7.geojson", rooms_of_others())}
    office.post("/houses/bring", files=files)
    assert office.post("/houses/bring", files=files).status_code == 422
    again = office.post("/houses/bring", files=files, data={"again": "yes"})
    assert again.status_code == 303


def test_a_drawing_is_read_again_by_another_unit_and_the_facts_stay(office):
    """By hand: 12 by 10 units are 12 m by 10 m, and 3.6576 m by 3.048 m when they are feet."""
    told = json.loads(rooms_of_others())
    ring = [[0, 0], [12, 0], [12, 10], [0, 10], [0, 0]]
    for feature in told["features"]:
        feature["geometry"]["coordinates"] = [ring]
    files = {"file": ("lot_8.geojson", json.dumps(told).encode())}
    office.post("/houses/bring", files=files)
    assert drawn(office, "lot-8")["rooms"][0]["polygon"]["coordinates"][0][2] == [12, 10]
    answer = office.post("/houses/lot-8/draw/unit", data={"unit": "ft"})
    assert (answer.status_code, answer.headers["location"]) == (303, "/houses/lot-8/draw")
    again = drawn(office, "lot-8")["rooms"][0]["polygon"]["coordinates"][0][2]
    assert again == pytest.approx([3.6576, 3.048])
    assert office.post("/houses/lot-8/draw/unit", data={"unit": "ell"}).status_code == 422
    office.put(two_rooms())
    assert office.post("/houses/two/draw/unit", data={"unit": "ft"}).status_code == 422


def test_a_job_that_is_brought_has_no_notes():
    found = brought(json.dumps(two_rooms()).encode(), "two.json")
    assert (found.facts["id"], dict(found.notes), found.is_drawing) == ("two", {}, False)
