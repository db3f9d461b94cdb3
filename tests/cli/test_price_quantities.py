"""`farwall price --part quantities`: the list in calm lines, in the user's units."""

from __future__ import annotations

import json

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.main import main
from farwall.facts.job import Wishes
from farwall.facts.plain import plain


@pytest.fixture
def house(tmp_path):
    """A job of two rooms as a file, in the units told."""

    def written(**wishes):
        path = tmp_path / "job.json"
        facts = plain(job(TWO_ROOMS, id="two", wishes=Wishes(**wishes)), omit_empty=True)
        path.write_text(json.dumps(facts))
        return str(path)

    return written


def test_lines_have_amount_range_rule_and_rank(house, capsys):
    assert main(["price", house(), "--part", "quantities"]) == 0
    out = capsys.readouterr().out
    assert out.startswith("Quantities\n  To stain\n")
    assert " gal, likely " in out
    assert "(common practice, no source)" in out
    assert "The sheet of the material in hand wins over every figure here." in out


def test_metric_is_told_in_litres_and_metres(house, capsys):
    assert main(["price", house(units="metric"), "--part", "quantities"]) == 0
    out = capsys.readouterr().out
    assert " L, likely " in out
    assert " gal" not in out


def test_json_has_every_line_in_si_with_its_shares(house, capsys):
    assert main(["price", house(), "--json"]) == 0
    found = json.loads(capsys.readouterr().out)["quantities"]
    stain = next(one for one in found["lines"] if one["id"] == "stain:sand")
    assert stain["unit"] == "l"
    assert sum(one["ready"] for one in stain["shares"]) == pytest.approx(stain["ready"])
    assert {one["moment"] for one in found["lines"]} == {
        "stain", "mask", "wash", "seal", "wear", "tools",
    }  # fmt: skip
