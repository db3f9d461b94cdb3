"""Scales printed in words, against ratios worked by hand."""

import pytest

from farwall.readers.lines.printed import not_to_scale, printed_scales
from farwall.readers.lines.sheet import Words


def ratios(*texts: str) -> list[float]:
    return [one.ratio for one in printed_scales([Words(t, (0, 0), 1, 0, "") for t in texts])]


@pytest.mark.parametrize(
    ("text", "ratio"),
    [
        ("1:50", 50),
        ("M 1:100", 100),
        ("Scale 1/75", 75),
        ("ESCALA 1 : 20", 20),
        ("Maßstab 1:33", 33),
        ('1/4" = 1\'-0"', 48),
        ("SCALE: 1/8 IN = 1 FT", 96),
        ("3/16”=1’-0”", 64),
        ('1 1/2" = 1\'-0"', 8),
        ("1\" = 20'", 240),
        ("1 inch equals 8 feet", 96),
        ("1 cm = 1 m", 100),
        ("2 cm = 1 m", 50),
    ],
)
def test_a_scale_in_words(text: str, ratio: float) -> None:
    assert ratios(text) == pytest.approx([ratio])


@pytest.mark.parametrize(
    "text",
    ["RAMP 1:12", "SLOPE 1:20", "1:1.5", "12/1/2024", "SCALE: AS NOTED", "2 1/4\" x 3 1/2\"",
     "13'8 x 14'", "1/2\" GYPSUM", "0\" = 1'", "1:0", "1/0\" = 1'", ""],
)  # fmt: skip
def test_what_is_no_scale(text: str) -> None:
    assert ratios(text) == []


def test_several_are_told_once_each() -> None:
    assert ratios("1:50", "DETAIL 1:10 scale 1:5", "M 1:50") == [50, 10, 5]


def test_not_to_scale() -> None:
    def says(text: str) -> bool:
        return not_to_scale([Words(text, (0, 0), 1, 0, "")])

    assert says("Not to scale")
    assert says("N.T.S.")
    assert not says("DO NOT SCALE FROM THIS DRAWING")
    assert not says("UNITS")
