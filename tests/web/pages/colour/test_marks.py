"""Marks on the mopped floor, as the user meets them: photo, points, yes or no, mended."""

from __future__ import annotations

import json
import re
from dataclasses import replace
from types import SimpleNamespace

import pytest
from tests.floor_photos import PATCH, camera, photograph, seen_at
from tests.shapes import box, outside, place
from tests.spray.hand_floors import job
from tests.web.pages.office import START, Office, faults_of_html

from farwall.colour.marks.nouns import Mark
from farwall.facts.plain import plain
from farwall.floor.nouns import Room
from farwall.job.colour.band_edges import band_edges
from farwall.job.plan_job import plan_job
from farwall.readers.apart import floor_photos
from farwall.readers.floor_photo.seen import floor_seen, pairs_from
from farwall.readers.job_json import job_from
from farwall.web.firm import keep_print_values
from farwall.web.pages.colour.marks_keep import Floors
from farwall.web.people.roles import NEEDS, TAP

PATH = "/houses/mopped/colour/marks"
FROM = camera((3.0, -3.6, 2.6), (3.0, 1.4), focal=0.6)
HALL = place([Room("hall", box(0, 0, 6, 4), "Hall")], [outside("front", ((1, 0), (2, 0)), "hall")])
CORNERS = {"A": (0, 0), "B": (6, 0), "C": (6, 4), "D": (0, 4)}


def mark(kind="light patch", at=PATCH, confidence=0.8, long=0.3, wide=0.3):
    x, y = at
    ring = tuple((x + dx * long / 2, y + dy * wide / 2) for dx, dy in ((-1, -1), (1, -1), (1, 1),
                                                                       (-1, 1)))  # fmt: skip
    return Mark(kind, at, ring, confidence, 9.0, long, wide, "it is lighter than what is round it")


FOUND = [mark(), mark("lap line", (1.0, 2.0), 0.6, 0.05, 3.1), mark("crack", (4.5, 1.0), 0.9)]


VALUES = {"paper": (94.0, 0.0, 2.0)}


@pytest.fixture
def office(tmp_path, monkeypatch):
    def here(content, *, name="", points, room, edges=(), own_values=None):
        assert own_values is None  # nobody measured a print
        return floor_seen(content, pairs_from(points), room, lambda _: tuple(FOUND))

    monkeypatch.setattr(floor_photos, "floor_seen_of", here)
    found = Office(tmp_path)
    found.enter()
    facts = plain(job(HALL, id="mopped", starts_at=START.isoformat()), omit_empty=True)
    found.put(json.loads(json.dumps(facts)), name="Mopped")
    yield found
    found.close()


def file(view=FROM):
    import cv2

    done, data = cv2.imencode(".jpg", photograph(view, shine=False)[..., ::-1])
    assert done
    return bytes(data)


def bring(office, content=None, room="hall"):
    files = {"file": ("hall.jpg", file() if content is None else content)}
    return office.post(PATH, data={"room": room}, files=files)


def letters(office, path):
    """Which letter stands for which corner, by the words of the page's own form."""
    text = office.get(path).text
    return re.findall(r'name="([A-Z])_x"', text)


def laid(office, view=FROM):
    path = bring(office, file(view)).headers["location"]
    from farwall.floor.nouns import Floor
    from farwall.web.pages.colour.marks_points import landmarks

    floor: Floor = HALL.floor
    told = {"do": "place"}
    for one in landmarks(floor, "hall"):
        x, y = seen_at(view, one.at)
        told |= {f"{one.letter}_x": f"{x * 0.8:.1f}", f"{one.letter}_y": f"{y * 0.8:.1f}"}
    answer = office.post(path, data=told)
    assert answer.status_code == 303, answer.text
    return path


def words(office):
    return [one.entry.word for one in office.book.entries("mopped")]


def test_a_photo_is_kept_for_its_room_and_asks_for_its_points(office):
    answer = bring(office)
    assert answer.status_code == 303
    assert words(office) == ["photo"]
    page = office.get(answer.headers["location"])
    assert page.status_code == 200
    assert not faults_of_html(page.text)
    assert set(letters(office, answer.headers["location"])) >= set("ABCD")
    picture = office.get(answer.headers["location"] + "/picture")
    assert picture.headers["content-type"] == "image/jpeg"
    listed = office.get(PATH)
    assert not faults_of_html(listed.text)
    assert "not laid on the plan yet" in listed.text
    assert "53° from the plumb line" in listed.text  # the published angle of water


def test_laid_on_the_plan_the_photo_asks_and_names_nothing_a_fault(office):
    path = laid(office)
    assert words(office) == ["photo", "photo-placed"]
    page = office.get(path)
    assert page.status_code == 200
    assert not faults_of_html(page.text)
    assert "Light patch?" in page.text
    assert "Lap line?" in page.text
    assert "Crack?" not in page.text
    assert "likelihood 0.80" in page.text
    assert "None truly." in page.text
    assert "it is lighter than what is round it" in page.text
    assert "<h2>Confirmed</h2>" not in page.text
    above = office.get(path + "/picture?which=above")
    assert above.content.startswith(b"\xff\xd8\xff")
    assert "What persons have confirmed" not in office.get(PATH).text


def test_the_edges_of_the_bands_of_the_plan_are_known_by_room_and_asked_anew(office):
    path = laid(office)
    assert "No edge of a band is known here" in office.get(path).text
    facts = job_from(office.book.facts("mopped", 1), "The job")
    shown = SimpleNamespace(plan=plan_job(facts), went=None)
    state = SimpleNamespace(shown=shown)
    floors = Floors(SimpleNamespace(book=office.book), SimpleNamespace(state=lambda _: state))
    house = floors.house("mopped")
    assert house.edges["hall"] == band_edges(shown.plan, "hall")
    assert house.edges["hall"]
    (photo,) = house.photos
    assert floors.seen_before(house, photo) is None
    assert floors.seen_before(replace(house, edges={}), photo) is not None


def test_a_photo_laid_by_the_target_is_read_by_the_print_that_the_firm_measured(
    office, monkeypatch
):
    asked = []

    def told(content, *, points, room, edges=(), own_values=None):
        asked.append(own_values)
        return floor_seen(content, pairs_from(points), room, lambda _: ())

    monkeypatch.setattr(floor_photos, "floor_seen_of", told)
    path = laid(office)
    state = SimpleNamespace(shown=None)
    floors = Floors(SimpleNamespace(book=office.book), SimpleNamespace(state=lambda _: state))
    house = floors.house("mopped")
    (photo,) = house.photos
    by_target = replace(photo, points=f"target=2,1,0;{photo.points}")
    keep_print_values(office.book, VALUES)
    floors.seen(house, photo)  # no target among its points: read before, and not anew
    assert asked == [None]
    for values in (VALUES, {**VALUES, "paper": (90.0, 0.0, 1.0)}):
        keep_print_values(office.book, values)
        floors.seen(house, by_target)
        floors.seen(house, by_target)
        assert asked[-1] == values
    assert len(asked) == 3
    assert path


def test_yes_no_and_something_else_are_kept_and_not_asked_again(office):
    path = laid(office)
    patch, line = re.findall(r'name="mark" value="(.*?)"', office.get(path).text)
    said = office.post(path, data={"do": "judge", "mark": patch, "answer": "no"})
    assert said.status_code == 303
    page = office.get(path).text
    assert "Light patch?" not in page
    assert "Lap line?" in page
    refused = office.post(path, data={"do": "judge", "mark": line, "answer": "other"})
    assert refused.status_code == 422
    told = {"do": "judge", "mark": line, "answer": "other", "other": "stripe"}
    assert office.post(path, data=told).status_code == 303
    page = office.get(path).text
    assert "No mark is left to ask about." in page
    assert "Stripe" in page
    entry = office.book.entries("mopped")[-1].entry
    assert entry.about == {
        "mark": "hall 1.0,2.0", "kind": "stripe", "there": True, "room": "hall", "x_m": 1.0,
        "y_m": 2.0, "length_m": 0.05, "width_m": 3.1, "file": entry.about["file"],
    }  # fmt: skip
    assert "nothing less than a coat over the whole field" in office.get(PATH).text


def test_a_mark_is_drawn_by_hand_and_mended(office):
    path = laid(office)
    drawn = {"do": "drawn", "kind": "unknown", "x_m": "2,5 m", "y_m": "1.5 m", "length_m": "1' 4\""}
    assert office.post(path, data=drawn).status_code == 303
    assert "Do not seal." in office.get(path).text
    mended = {"do": "mended", "mark": "hall 2.5,1.5", "how": "it was soap"}
    assert office.post(path, data=mended).status_code == 303
    assert "mended: it was soap" in office.get(path).text
    again = {"do": "drawn", "kind": "drip", "x_m": "13.12", "y_m": "1 m"}
    assert office.post(path, data=again).status_code == 303
    assert office.post(path, data={"do": "away", "mark": "hall 4.0,1.0"}).status_code == 303
    assert office.book.entries("mopped")[-1].entry.about["there"] is False
    assert "Drip</h3>" not in office.get(path).text
    assert office.post(path, data={"do": "away", "mark": "nobody"}).status_code == 422
    wrong = office.post(path, data={"do": "drawn", "kind": "smear", "x_m": "far", "y_m": "1"})
    assert wrong.status_code == 422
    assert wrong.text.count("<li>") >= 2
    assert 'name="x_m" inputmode="decimal" size="7" autocomplete="off" value="far"' in wrong.text
    assert "required> ft</p>" in wrong.text
    assert " mm" not in wrong.text


def test_two_photos_of_a_room_are_looked_at_together(office):
    first = laid(office)
    other = camera((2.2, -3.4, 2.7), (3.0, 1.4), focal=0.6)
    second = laid(office, other)
    assert first != second
    text = office.get(second).text
    assert "Looked at together with 1 more of this room" in text
    assert "likelihood 0.96, in 2 photos" in text  # 1 - 0.2 * 0.2
    assert text.count("Light patch?") == 1


def test_three_points_are_refused_and_what_was_set_comes_back(office):
    path = bring(office).headers["location"]
    told = {"do": "place", "A_x": "100", "A_y": "200", "B_x": "300", "B_y": "210", "C_x": "x"}
    answer = office.post(path, data=told)
    assert answer.status_code == 422
    assert 'name="A_x" value="100"' in answer.text
    assert words(office) == ["photo"]


def test_without_script_a_click_on_the_picture_sets_the_chosen_letter(office):
    path = bring(office).headers["location"]
    told = {"do": "place", "letter": "B", "at.x": "321", "at.y": "123", "A_x": "5", "A_y": "6"}
    answer = office.post(path, data=told)
    assert answer.status_code == 200
    assert 'name="B_x" value="321"' in answer.text
    assert 'name="A_y" value="6"' in answer.text


def test_what_is_no_photo_or_no_room_is_refused(office):
    assert bring(office, b"no photo" * 50).status_code == 422
    assert bring(office, room="attic").status_code == 422
    assert office.post(PATH, data={"room": "hall"}).status_code == 422
    assert words(office) == []
    assert office.get(f"{PATH}/{'0' * 64}").status_code == 404


def test_all_of_it_is_said_in_spanish(office):
    path = laid(office)
    office.cookies.set("tongue", "es")
    text = office.get(path, headers={"accept-language": "es"}).text
    assert "¿Parche claro?" in text
    assert "En verdad, ninguno." in text
    assert "Probabilidad" not in text
    assert "probabilidad 0.80" in text


def test_only_who_may_tap_may_judge():
    assert NEEDS["POST /houses/{job}/colour/marks/{photo}"] == TAP
    assert NEEDS["POST /houses/{job}/colour/marks"] == TAP
