"""`farwall bench colour --marks`: tables or a document; real surfaces from a folder."""

import json
import sys
from types import ModuleType

import numpy as np
import pytest

from farwall.cli.main import main
from farwall.colour.marks.nouns import Mark


@pytest.fixture(autouse=True)
def one_lap(monkeypatch):
    """A finder that always proposes a lap across the middle, and keeps what edges it is told."""
    told = []

    def marks_in(sheet, edges):
        told.append(edges)
        wide, middle = sheet.floor.shape[1] * sheet.m_per_px, sheet.top_m / 2
        ring = ((0.0, middle), (wide, middle), (wide, middle + 0.1), (0.0, middle + 0.1))
        return (Mark("lap line", (wide / 2, middle), ring, 0.8, -2.0, wide, 0.1, ""),)

    finder = ModuleType("farwall.colour.marks.find")
    finder.marks_in = marks_in
    monkeypatch.setitem(sys.modules, "farwall.colour.marks.find", finder)
    return told


def test_one_floor_as_tables_and_as_a_document(capsys):
    assert main(["bench", "colour", "--marks", "--once"]) == 0
    said = capsys.readouterr().out
    assert "1 invented mopped floors (judging)" in said
    assert "false alarms a photo" in said
    assert main(["bench", "colour", "--marks", "--once", "--tuning", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["half"] == "tuning"
    assert sum(one["proposals"] for one in told["trusts"]) + told["apart"][2] == 1


def test_the_edges_are_told_only_where_they_are_asked_for(one_lap, capsys):
    assert main(["bench", "colour", "--marks", "--once"]) == 0
    assert main(["bench", "colour", "--marks", "--once", "--edges"]) == 0
    assert "(judging, edges of bands known)" in capsys.readouterr().out
    assert [len(edges) > 0 for edges in one_lap] == [False, True]


def test_floors_rich_in_one_kind_from_any_seed_by_lightness_step(one_lap, capsys):
    rich = ["bench", "colour", "--marks", "--once", "--seed", "40", "--first", "missed crescent"]
    assert main(rich) == 0
    said = capsys.readouterr().out
    assert "(from seed 40, first mark a missed crescent)" in said
    assert "from 3 L to 4" in said
    assert main([*rich, "--json"]) == 0
    steps = dict(json.loads(capsys.readouterr().out)["steps"])
    assert [one["most"] for one in steps["missed crescent"]] == [1.5, 2.0, 3.0, 4.0, None, None]
    assert steps["missed crescent"][-1]["found"] == 0
    assert main(["bench", "colour", "--marks", "--once", "--first", "crescent"]) != 0
    assert "missed crescent" in capsys.readouterr().err


def test_real_surfaces_are_all_false_and_read_at_both_scales(tmp_path, capsys):
    import cv2

    cv2.imwrite(str(tmp_path / "grey.png"), np.full((200, 300, 3), 120, np.uint8))
    main(["bench", "colour", "--surfaces", str(tmp_path), "--json"])
    told = json.loads(capsys.readouterr().out)
    assert [one["marks"] for one in told] == [["lap line"], ["lap line"]]
    assert told[0]["area_m2"] == pytest.approx(0.24)


def test_a_folder_without_pictures_is_refused(tmp_path, capsys):
    assert main(["bench", "colour", "--marks", "--surfaces", str(tmp_path)]) != 0
    assert "holds no picture" in capsys.readouterr().err
