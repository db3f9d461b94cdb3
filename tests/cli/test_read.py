"""`farwall read`: the promised keys, the exit codes, a summary a person can read."""

import json
from itertools import pairwise
from pathlib import Path
from typing import Any

import ezdxf
import pytest
from tests.drawings import Manner, as_bytes, drawn
from tests.shapes import WALLED_ROOMS
from tests.strategies.floors import House

from farwall.cli.main import main
from farwall.floor.geojson import floor_collection

HOUSE = (
    Path(__file__).parents[1] / "published" / "data" / "plans" / "single_storey_house_inches.dxf"
)

KEYS = {
    "": {
        "format", "length_unit", "header_unit", "scale_m_per_unit", "storeys", "rooms", "openings",
        "exits", "fixtures", "saw_cuts", "windows", "north_deg", "steps", "mended", "left", "asks",
    },
    "storeys": {"id", "name", "elevation_m"},
    "rooms": {
        "id", "name", "storey", "area_m2", "area_ft2", "stated_area_m2", "stated_kind",
        "perimeter_m", "holes", "ceiling_m", "level_m", "polygon",
    },
    "openings": {"id", "kind", "width_m", "rooms", "line"},
    "exits": {"id", "opening"},
    "fixtures": {"kind", "polygon"},
    "windows": {"line", "sill_m", "height_m"},
    "mended": {"code", "where", "what"},
    "left": {"code", "where", "what"},
    "asks": {"code", "what"},
}  # fmt: skip


@pytest.fixture
def read(capsys: pytest.CaptureFixture[str]) -> Any:
    """Run `farwall read` and hand back exit code, stdout, stderr."""

    def run(*words: object) -> tuple[int, str, str]:
        code = main(["read", *map(str, words)])
        said = capsys.readouterr()
        return code, said.out, said.err

    return run


def test_the_real_house_gives_the_promised_keys(read: Any) -> None:
    code, out, err = read(HOUSE, "--json")
    document = json.loads(out)
    assert (code, err) == (0, "")
    assert set(document) == KEYS[""]
    for part, keys in KEYS.items():
        if part and part != "asks":
            assert document[part], part
            assert all(set(item) == keys for item in document[part]), part
    assert (document["format"], document["length_unit"], document["header_unit"]) == (
        "DXF",
        "in",
        "mm",
    )
    assert document["scale_m_per_unit"] == 0.0254


def test_frames_are_as_promised(read: Any) -> None:
    document = json.loads(read(HOUSE, "--json")[1])
    ids = {room["id"] for room in document["rooms"]}
    corners = []
    for room in document["rooms"]:
        (ring, *_) = room["polygon"]["coordinates"]
        assert ring[0] == ring[-1]
        turn = sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise(ring))
        assert turn > 0  # counter-clockwise
        assert room["area_m2"] == pytest.approx(turn / 2, abs=1e-3)
        assert room["area_ft2"] == pytest.approx(room["area_m2"] / 0.3048**2, abs=2e-3)
        assert room["storey"] == document["storeys"][0]["id"]
        corners += ring
    assert min(x for x, _ in corners) == 0
    assert min(y for _, y in corners) == 0
    for opening in document["openings"]:
        assert set(opening["rooms"]) <= ids
        assert len(opening["rooms"]) == (1 if opening["kind"] == "outside" else 2)
    openings = {opening["id"]: opening for opening in document["openings"]}
    assert {openings[way["opening"]]["kind"] for way in document["exits"]} == {"outside"}


def test_the_same_file_gives_the_same_document(read: Any) -> None:
    assert read(HOUSE, "--json") == read(HOUSE, "--json")


def test_the_summary_names_rooms_repairs_and_questions(read: Any) -> None:
    code, out, _ = read(HOUSE)
    assert code == 0
    for words in ("Master bedroom", "191.3 ft²", "17.78 m²", "13'8 x 14'", "unit-overruled",
                  "outside-slab", "way out"):  # fmt: skip
        assert words in out


def test_one_of_a_kind_is_told_as_one(read: Any, tmp_path: Path) -> None:
    walk = tmp_path / "walk.txt"
    walk.write_text("walk, tape in metres\nroom Shed\n4, right, 3, right, 4, right, 3\n"
                    "door in wall 1 at 1 wide 0.9 to outside\n")  # fmt: skip
    _, told, _ = read(walk)
    assert "1 room, 1 opening, 1 way out, 0 windows, 0 fixtures." in told
    assert "-0.00" not in told


def test_the_summary_names_the_farthest_floor(read: Any) -> None:
    """Recorded: bedroom 3, some 10.8 m of walk; on the finer lattice of a field 10.84 m."""
    out = read(HOUSE)[1]
    assert "Farthest floor: bedroom-3, 35 ft 10.8 m of walk from the nearest way out" in out
    assert "No walk leads out of" not in out


def test_without_a_scale_metre_values_are_null(read: Any, tmp_path: Path) -> None:
    path = tmp_path / "bare.dxf"
    path.write_bytes(drawn(House((4.0,), (3.0,), 0.1, ()), Manner(unit="m", header="")))
    code, out, _ = read(path, "--json")
    document = json.loads(out)
    assert code == 0
    (room,) = document["rooms"]
    assert {room[key] for key in ("area_m2", "area_ft2", "perimeter_m")} == {None}
    assert (room["polygon"], document["length_unit"], document["scale_m_per_unit"]) == (None,) * 3
    assert "scale" in {ask["code"] for ask in document["asks"]}
    assert "(no scale)" in read(path)[1]


def test_a_scale_from_the_user_is_used(read: Any, tmp_path: Path) -> None:
    path = tmp_path / "bare.dxf"
    path.write_bytes(drawn(House((4.0,), (3.0,), 0.1, ()), Manner(unit="m", header="")))
    (room,) = json.loads(read(path, "--json", "--scale", "2")[1])["rooms"]
    assert room["area_m2"] == pytest.approx(48)


def test_a_drawing_without_a_floor_is_a_no(read: Any, tmp_path: Path) -> None:
    path = tmp_path / "empty.dxf"
    path.write_bytes(as_bytes(ezdxf.new("R2010")))
    code, out, _ = read(path, "--json")
    assert code == 1
    assert "tracing" in {ask["code"] for ask in json.loads(out)["asks"]}


@pytest.mark.parametrize(
    ("name", "data", "words"),
    [
        ("a.dxf", b"no drawing at all", "no plan that is known"),
        ("a.dwg", b"AC1027", "Save it as DXF"),
        ("a.json", b"{}", "no GeoJSON"),
    ],
)
def test_a_file_that_cannot_be_read_is_refused(
    read: Any, tmp_path: Path, name: str, data: bytes, words: str
) -> None:
    path = tmp_path / name
    path.write_bytes(data)
    code, out, err = read(path, "--json")
    assert (code, out) == (2, "")
    assert words in err
    assert "Traceback" not in err


def test_a_missing_file_is_the_callers_mistake(read: Any, tmp_path: Path) -> None:
    code, _, err = read(tmp_path / "none.dxf")
    assert code == 2
    assert "none.dxf" in err


def test_a_storey_is_chosen_by_name_or_refused(read: Any, tmp_path: Path) -> None:
    collection = floor_collection(WALLED_ROOMS.floor, WALLED_ROOMS.exits)
    for feature, storey in zip(collection["features"], ("ground", "upper"), strict=False):
        feature["properties"]["storey"] = storey
    path = tmp_path / "floor.geojson"
    path.write_text(json.dumps(collection), encoding="utf-8")
    document = json.loads(read(path, "--json", "--storey", "Ground")[1])
    assert [room["id"] for room in document["rooms"]] == ["front"]
    assert [storey["id"] for storey in document["storeys"]] == ["ground"]
    assert len(json.loads(read(path, "--json")[1])["rooms"]) == 2
    code, _, err = read(path, "--storey", "attic")
    assert code == 2
    assert "It has: ground, upper." in err


def test_notes_are_numbered_and_answered_one_by_one(read: Any) -> None:
    _, text, _ = read(HOUSE)
    (porch,) = [line for line in text.splitlines() if "Covered porch" in line]
    number = porch.split(".")[0].strip()
    code, told, err = read(HOUSE, "--refuse", number)
    assert (code, err) == (0, "")
    assert "→ Refused: “covered-porch” is a room of 2.9 m²" in told
    assert "17 rooms" in told.splitlines()[0]


def test_answers_are_told_in_json_too(read: Any) -> None:
    before = json.loads(read(HOUSE, "--json")[1])
    number = 1 + len(before["mended"]) + [n["code"] for n in before["left"]].index("no-leaf")
    after = json.loads(read(HOUSE, "--refuse", number, "--json")[1])
    (answered,) = [n for n in after["left"] if "answer" in n]
    assert answered["code"] == "no-leaf"
    assert [o["kind"] for o in before["openings"]].count("cased") == 1
    assert [o["kind"] for o in after["openings"]].count("cased") == 0


def test_the_unit_is_refused_alone_and_all_is_read_anew(read: Any) -> None:
    code, out, _ = read(HOUSE, "--refuse", "1", "--json")
    assert code == 1  # by its header the house is 19 mm long, and no room is found in it
    document = json.loads(out)
    assert document["scale_m_per_unit"] == 0.001
    assert [note["code"] for note in document["mended"]][:2] == ["scale-told", "scale-doubted"]
    code, _, err = read(HOUSE, "--refuse", "1,6")
    assert code == 2
    assert "Refuse it alone" in err


@pytest.mark.parametrize("words", ["x", "1,", "-1", "999", "1234567"])
def test_numbers_that_are_none_are_refused(words: str, read: Any) -> None:
    code, out, err = read(HOUSE, f"--refuse={words}")
    assert (code, out) == (2, "")
    assert "note" in err


def test_a_picture_is_drawn_whole(read: Any, tmp_path: Path) -> None:
    out = tmp_path / "new" / "house.svg"
    assert read(HOUSE, "--picture", out)[0] == 0
    assert out.read_text().rstrip().endswith("</svg>")
    assert "Master bedroom" in out.read_text()
