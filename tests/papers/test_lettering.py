"""Widths of words: the table against the font that is shipped, and breaking lines."""

from __future__ import annotations

from importlib.resources import files

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.papers.lettering import clipped, text_width, wrap

FONTS = files("farwall.papers.run_sheet").joinpath("fonts")


@pytest.mark.parametrize(("name", "bold"), [("Regular", False), ("Bold", True)])
def test_the_table_holds_the_advance_widths_of_the_shipped_font(name: str, bold: bool):
    """Read from the font's own tables; thousandths of the size, rounded to whole ones."""
    from fontTools.ttLib import TTFont

    font = TTFont(str(FONTS.joinpath(f"OpenSans-{name}.ttf")))
    advance, code = font["hmtx"], font.getBestCmap()
    for letter in map(chr, range(32, 127)):
        told = 1000 * advance[code[ord(letter)]][0] / font["head"].unitsPerEm
        assert text_width(letter, 1000, bold=bold) == pytest.approx(told, abs=0.51), letter


def test_figures_are_tabular():
    assert len({text_width(digit, 10) for digit in "0123456789"}) == 1
    assert len({text_width(digit, 10, bold=True) for digit in "0123456789"}) == 1


def test_the_licence_of_the_font_is_shipped_with_it():
    text = FONTS.joinpath("LICENSE-Apache-2.0.txt").read_text(encoding="utf-8")
    assert "Apache License" in text


def test_a_name_breaks_at_its_spaces():
    lines = wrap("Kitchen + Great room + Dining room", text_width("Great room +", 11) + 1, 11)
    assert lines == ("Kitchen +", "Great room +", "Dining room")


def test_a_word_wider_than_the_room_does_not_break():
    assert wrap("Laundry/Utility/Mud", 20, 11) is None


@given(st.text(min_size=1, max_size=60), st.floats(1, 300), st.sampled_from([9.0, 11.0, 15.0]))
def test_law_broken_lines_fit_and_lose_nothing(text: str, width: float, size: float):
    lines = wrap(text, width, size)
    if lines is not None:
        assert all(text_width(line, size) <= width for line in lines)
        assert " ".join(lines).split() == text.split()


@given(st.text(max_size=60), st.floats(20, 300))
def test_law_clipped_text_fits_and_begins_alike(text: str, width: float):
    short = clipped(text, width, 9)
    assert text_width(short, 9) <= width
    assert text.startswith(short.removesuffix("…"))
