"""The bibliography as data: what the screens show is what docs/sources.md says."""

import importlib.util
import json
from pathlib import Path

from farwall.evidence import Rank
from farwall.web.pages.sources import rank_told, ranks_told, sources, sources_in

ROOT = Path(__file__).parents[3]


def lines_now():
    spec = importlib.util.spec_from_file_location("told_sources", ROOT / "tools" / "sources.py")
    tool = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(tool)
    return tool.lines_of((ROOT / "docs" / "sources.md").read_text(encoding="utf-8"))


def test_the_data_are_the_lines_of_the_page():
    data = json.loads((ROOT / "src/farwall/web/sources.json").read_text(encoding="utf-8"))
    assert data == lines_now(), "run: python tools/sources.py"
    assert len(data) > 60


def test_a_source_of_several_keys_has_a_line_for_each_once():
    found = sources_in("sample timed on this slab, uno-1998, house-guess, uno-1998")
    assert [one.key for one in found] == ["uno-1998", "house-guess"]
    assert "Uno" in found[0].source
    assert sources_in("told as survey.drop_s") == ()


def test_every_rank_is_explained_once():
    told = list(ranks_told())
    assert len(told) == len(set(told)) == len(Rank)
    assert rank_told("guess") in told
    assert rank_told("no rank") == ""
    assert sources()["common-practice"].key == "common-practice"
