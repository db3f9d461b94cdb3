"""The list in calm lines."""

from __future__ import annotations

import re
from dataclasses import replace

from tests.job.office.quantities.grounds import ground

from farwall.evidence import rank_words
from farwall.facts.job import Wishes
from farwall.facts.supplies import Supplies
from farwall.job.office.masking import masked_of
from farwall.job.office.quantities import quantities_of, quantities_said


def _said(**more):
    of = ground(**more)
    return quantities_said(quantities_of(of, masked_of(of)))


def test_heads_stand_before_their_lines_and_every_line_shows_its_rank():
    said = _said()
    heads = [one for one in said if one.startswith("To ") or one == "Sprayers and tools"]
    assert heads == [
        "To stain", "To mask", "To neutralise and wash", "To seal", "To wear",
        "Sprayers and tools",
    ]  # fmt: skip
    found = quantities_of(of := ground(), masked_of(of))
    for one in found.lines:
        assert any(f"({rank_words(one.rank, one.source)})" in each for each in said)


def test_a_range_stands_beside_the_figure():
    line = next(one for one in _said() if one.startswith("  earth:"))
    assert " gal, likely " in line
    assert " to " in line


def test_metric_has_no_gallon_foot_or_pound():
    text = "\n".join(_said(wishes=Wishes(units="metric")))
    found = re.findall(r"\d (?:gal|ft|lb|in|ft²|ft²/gal)\b|gallon", text)
    assert found == []
    assert " L" in text


def test_what_is_switched_off_or_told_says_so():
    said = _said(supplies=Supplies(("rags",), {"tape": 30.48}))
    assert "  white rags: switched off (rags)" in said
    at = said.index("  tape: 100 ft")
    assert said[at + 1].startswith("    your own figure; the rule has ")


def test_an_amount_that_is_equal_at_all_ends_stands_alone():
    of = ground()
    found = quantities_of(of, masked_of(of))
    alone = replace(found, lines=tuple(one for one in found.lines if one.id == "boots"))
    assert "  pairs of rubber boots: 2" in quantities_said(alone)
