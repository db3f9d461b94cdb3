"""Printed scales as metres of house to a millimetre of paper, worked by hand."""

import pytest

from farwall.errors import Refused
from farwall.readers.photo.ratio import m_per_mm


@pytest.mark.parametrize(
    ("text", "by_hand"),
    [
        ("1:50", 0.05), ("1 : 100", 0.1),
        ("1/4in", 0.048),  # a quarter inch is a foot: 1 to 48
        ('1/8" = 1\'-0"', 0.096), ("3/16in", 0.064), ("1in", 0.012), ("1 1/2in", 0.008),
    ],
)  # fmt: skip
def test_scales_by_hand(text: str, by_hand: float) -> None:
    assert m_per_mm(text) == pytest.approx(by_hand, rel=1e-12)


@pytest.mark.parametrize(
    "text", ["", "50", "1:0", "1:99999", "1/0in", "0in", "0/4in", "big", "1/4"]
)
def test_other_words_are_refused(text: str) -> None:
    with pytest.raises(Refused, match="no scale of a drawing"):
        m_per_mm(text)
