"""What drawings of whole storeys share. Hand-worked."""

from farwall.papers.drawing.whole_storey import Manner, letter_of, stacked
from farwall.papers.lettering import PAPER_LETTERING
from farwall.papers.svg import Svg


def test_storeys_stand_one_above_the_other_each_with_its_share():
    shares = []

    def draw(part: Svg, height: float) -> None:
        shares.append(part.height)
        part.height = height

    manner = Manner("us", PAPER_LETTERING, 100.0, 220.0)
    svg = stacked([30.0, 50.0], "floor", manner, draw, between=20.0)
    assert shares == [100.0, 100.0]
    assert svg.height == 30.0 + 20.0 + 50.0
    assert "translate(0 0)" in str(svg)
    assert "translate(0 50)" in str(svg)


def test_no_storey_gives_a_drawing_all_the_same():
    manner = Manner("metric", PAPER_LETTERING, 100.0, 220.0)
    assert stacked([], "floor", manner, lambda _part, _storey: None, between=20.0).height == 1.0


def test_letters_go_on_after_z():
    assert [letter_of(k) for k in (0, 25, 26, 51, 52)] == ["a", "z", "aa", "zz", "aaa"]
