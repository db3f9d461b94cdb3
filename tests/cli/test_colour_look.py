"""`farwall colour look` tells the target, its error, what spoils it and the colour of a spot."""

import json

import pytest
from tests.colour_photos import laid, shot

from farwall.cli.colour_photo import corners_told
from farwall.cli.main import main
from farwall.errors import Refused


@pytest.fixture
def photo(tmp_path):
    path = tmp_path / "floor.jpg"
    path.write_bytes(shot("24").data)
    return path


def test_the_spot_is_told_as_json_and_in_words(photo, capsys):
    piece = shot("24").pieces[0]
    spot = ",".join(f"{v:.0f}" for at in piece.polygon_px for v in at)
    words = ["colour", "look", str(photo), "--values", "average-of-30", "--spot", spot]
    assert main([*words, "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["rank"] == "measured here"
    assert found["target"]["name"] == "24 patches"
    assert len(found["target"]["patches"]) == 24
    assert found["spot"]["lab"] == pytest.approx(piece.lab, abs=5)
    assert main(words) == 0
    told = capsys.readouterr().out
    assert "24 patches" in told
    assert f"L {found['spot']['lab'][0]:.1f}" in told


def test_values_of_a_file_are_taken(tmp_path, capsys):
    path, table = tmp_path / "own.jpg", tmp_path / "print.csv"
    path.write_bytes(shot("own").data)
    rows = [f"{name},{lab[0]},{lab[1]},{lab[2]}" for name, lab in laid("own").values.items()]
    table.write_text("\n".join(["patch,L,a,b", *rows]), encoding="utf-8")
    assert main(["colour", "look", str(path), "--values", str(table), "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["rank"] == "measured here"
    assert main(["colour", "look", str(path), "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["rank"] == "guess"


def test_mistakes_are_the_callers(photo, tmp_path, capsys):
    assert main(["colour", "look", str(photo), "--values", str(tmp_path / "none.csv")]) == 2
    assert main(["colour", "look", str(photo), "--spot", "1,2,3"]) == 2
    assert "--spot" in capsys.readouterr().err


def test_two_places_are_corners_of_a_box():
    assert corners_told("1,2,5,8") == ((1, 2), (5, 2), (5, 8), (1, 8))
    with pytest.raises(Refused):
        corners_told("1,2,x,4")
