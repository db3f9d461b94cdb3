"""What warns of harm is stronger than plain text in a print in grey too."""

from __future__ import annotations

import re
from importlib.resources import files

import pytest

PAPERS = files("farwall.papers")
TEMPLATES = sorted(
    (path for path in PAPERS.rglob("*.typ")),  # type: ignore[attr-defined]
    key=str,
)
PARTS = (PAPERS / "run_sheet" / "parts.typ").read_text()


def grey(name):
    """Luma of a colour of the papers by the weights of ITU-R BT.601, 0 black to 255 white."""
    red, green, blue = bytes.fromhex(re.search(rf'#let {name} = rgb\("#(\w+)"\)', PARTS)[1])
    return 0.299 * red + 0.587 * green + 0.114 * blue


def test_the_colour_of_danger_is_paler_than_ink_where_it_has_none():
    """Why the rule and the weight are there at all."""
    assert grey("danger") > 1.5 * grey("ink")
    assert grey("danger-dark") < 1.3 * grey("ink")


@pytest.mark.parametrize("path", TEMPLATES, ids=lambda path: path.name)
def test_no_line_of_plain_weight_is_set_in_the_paler_colour(path):
    """Bold, or `heed`, which is darker and has a rule beside it."""
    plain = [
        line
        for line in path.read_text().splitlines()
        if re.search(r"text\([^)]*fill: danger\b(?!-)", line) and "bold" not in line
    ]
    assert plain == []
