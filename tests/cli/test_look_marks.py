"""`farwall colour look --points`: marks on a mopped floor, from the command line."""

from __future__ import annotations

import json

import pytest
from tests.floor_photos import PATCH, camera, jpeg, pairs
from tests.shapes import box, outside, place
from tests.spray.hand_floors import job

from farwall.cli.main import main
from farwall.colour.marks.nouns import Mark
from farwall.facts.plain import plain
from farwall.floor.nouns import Room
from farwall.readers.apart import floor_photos
from farwall.readers.floor_photo.seen import floor_seen, pairs_from, pairs_text

HALL = place([Room("hall", box(0, 0, 6, 4), "Hall")], [outside("front", ((1, 0), (2, 0)), "hall")])
RING = ((3.0, 2.2), (3.4, 2.2), (3.4, 2.6), (3.0, 2.6))
FOUND = (
    Mark("light patch", PATCH, RING, 0.8, 9.0, 0.3, 0.3, "it is lighter than what is beside it"),
    Mark("crack", (4.0, 3.0), RING, 0.9, -4.0, 1.0, 0.0, "it is thin and dark"),
)


@pytest.fixture
def words(tmp_path, monkeypatch):
    def here(content, *, name="", points, room, edges=(), own_values=None):
        return floor_seen(content, pairs_from(points), room, lambda _: FOUND)

    monkeypatch.setattr(floor_photos, "floor_seen_of", here)
    photo, facts = tmp_path / "hall.jpg", tmp_path / "job.json"
    photo.write_bytes(jpeg())
    facts.write_text(json.dumps(plain(job(HALL, id="hall"), omit_empty=True)), encoding="utf-8")
    return ["colour", "look", str(photo), "--job", str(facts), "--room", "Hall",
            "--points", pairs_text(pairs(camera(), 1.0))]  # fmt: skip


def test_the_edges_of_the_plan_are_handed_to_the_finder_and_told(words, capsys, monkeypatch):
    handed = []
    before = floor_photos.floor_seen_of

    def here(content, *, name="", points, room, edges=(), own_values=None):
        handed.extend(edges)
        return before(content, name=name, points=points, room=room)

    monkeypatch.setattr(floor_photos, "floor_seen_of", here)
    assert main(words) == 0
    assert handed
    assert f"along {len(handed)} edges of bands by the run sheet" in capsys.readouterr().out


def test_each_mark_is_asked_with_its_place_and_what_can_be_done(words, capsys):
    assert main(words) == 0
    told = capsys.readouterr().out
    assert "Laid by 5 points" in told
    assert "1 Light patch? 0.30 m by 0.30 m at 3.20, 2.40; likelihood 0.80, because it is" in told
    assert "Same batch, same day" in told
    assert "not asked: crack 1." in told
    assert "before a person has said so" in told


def test_json_tells_the_same_and_a_picture_is_written(words, tmp_path, capsys):
    out = tmp_path / "floor.svg"
    assert main([*words, "--json", "--out", str(out)]) == 0
    found = json.loads(capsys.readouterr().out)["marks"]
    assert found["room"] == "hall"
    assert found["laid"]["pairs"] == 5
    assert [(one["kind"], one["asks"]) for one in found["marks"]] == [
        ("crack", False), ("light patch", True),
    ]  # fmt: skip
    drawn = out.read_text(encoding="utf-8")
    assert drawn.startswith("<svg")
    assert "data:image/jpeg;base64," in drawn


def test_half_a_question_is_refused_with_what_lacks(words, capsys):
    assert main([*words[:3], "--room", "hall"]) != 0
    told = capsys.readouterr()
    assert "--job" in told.err + told.out
    assert "--points" in told.err + told.out
    assert main([*words[:6], "attic", *words[7:]]) != 0
