"""What chromate on a sheet changes, and how a sheet names it."""

import re
from pathlib import Path

import pytest

from farwall.acid.chromium import ACTION_UG_M3, CHANGES, LIMIT_UG_M3, OBJECTIVE_UG_M3, SILICA
from farwall.facts.contents import Content
from farwall.facts.job import Stain
from farwall.readers.job_sense import sense_mistakes

SOURCES = (Path(__file__).parents[2] / "docs" / "sources.md").read_text(encoding="utf-8")


def test_every_change_has_its_own_key_and_a_source_of_the_bibliography():
    assert len({one.key for one in CHANGES}) == len(CHANGES) > 7
    for one in CHANGES:
        assert one.source == "common-practice" or f"| {one.source} |" in SOURCES


def test_the_figures_of_29_cfr_1926_1126_stand_in_the_words():
    told = next(one.says for one in CHANGES if one.key == "exposure")
    assert re.findall(r"\d+(?:\.\d+)?", told) == [
        f"{OBJECTIVE_UG_M3:g}", "8", f"{LIMIT_UG_M3:g}", f"{ACTION_UG_M3:g}",
    ]  # fmt: skip


def test_dust_controls_name_filter_and_air():
    assert "99 %" in SILICA[0]
    assert "25 cfm" in SILICA[1]


@pytest.mark.parametrize(
    ("chromate", "listed", "names"),
    [
        (None, None, None),
        (False, None, False),
        (True, None, True),
        (None, "sodium dichromate", True),
        (False, "potassium dichromate", True),
        (None, "chromium(III) chloride", None),
    ],
)
def test_a_sheet_names_chromate_by_word_or_by_list(chromate, listed, names):
    contents = () if listed is None else (Content(listed, 5, 10),)
    assert Stain("s", chromate=chromate, contents=contents).names_chromate is names


def test_no_acid_goes_to_a_stain_that_lists_dichromate():
    raw = {
        "stains": [{"id": "s", "contents": [{"substance": "sodium dichromate"}]}],
        "coats": [{"id": "c", "stain": "s", "cut": "1:1", "added_acid_fl_oz_per_gal": 8}],
    }
    assert [one.where for one in sense_mistakes(raw)] == ["coats[0]"]
    raw["stains"][0]["contents"] = []
    assert sense_mistakes(raw) == []
