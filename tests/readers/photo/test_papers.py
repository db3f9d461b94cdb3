"""Sheets by name and by size."""

import pytest

from farwall.errors import Refused
from farwall.readers.photo.papers import PAPERS_MM, paper_mm


def test_sizes_by_hand() -> None:
    assert paper_mm("ARCH-D") == pytest.approx((914.4, 609.6))
    assert paper_mm("arch d") == paper_mm("ARCHD") == paper_mm("36x24 in")
    assert paper_mm("a3") == (420, 297)
    assert paper_mm("297 × 420 mm") == (420, 297)


def test_each_a_size_is_half_of_the_next_larger() -> None:
    """ISO 216: the long side halves, to the millimetre below."""
    for larger, smaller in (("A0", "A1"), ("A1", "A2"), ("A2", "A3"), ("A3", "A4")):
        assert PAPERS_MM[smaller][0] == PAPERS_MM[larger][1]
        assert PAPERS_MM[smaller][1] == PAPERS_MM[larger][0] // 2


@pytest.mark.parametrize("text", ["", "A9", "10x10 mm", "9999x9999 cm", "x"])
def test_unknown_sheets_are_refused_with_those_known(text: str) -> None:
    with pytest.raises(Refused, match="ARCH-D"):
        paper_mm(text)
