from tests.floor.walk.test_lay import joined
from tests.strategies.walks import rectangle

from farwall.floor.walk.lay import lay_of
from farwall.floor.walk.net import net_of
from farwall.floor.walk.nouns import Walk
from farwall.readers.walk.said import added_text, row_words, small_text, tape_text


def test_lengths_as_on_a_tape():
    assert tape_text(3.8227, us=True) == "12' 6 1/2\""
    assert tape_text(3.8227, us=False) == "3.823 m"
    assert tape_text(-0.3048, us=True) == "-1' 0\""
    assert [small_text(one, us=True) for one in (0.0254, 0.0095, -0.04, 0.0)] == [
        "1 in", "3/8 in", "1 5/8 in", "0 in",
    ]  # fmt: skip
    assert small_text(0.0123, us=False) == "12 mm"


def test_what_is_added_has_its_sign_or_is_nothing():
    assert [added_text(one, us=True) for one in (0.0254, -0.0254, 0.0005)] == [
        "+1 in",
        "−1 in",
        "0",
    ]


def test_each_reading_has_words():
    walk = joined()
    said = {row_words(walk, row) for row in net_of(walk, lay_of(walk)).rows if row.kind != "pin"}
    assert "wall 2 of Den" in said
    assert "the place of the opening to Hall in Den" in said
    checks = Walk((rectangle(3, 4, diagonals=((0, 2),)),))
    said = {
        row_words(checks, row) for row in net_of(checks, lay_of(checks)).rows if row.kind != "pin"
    }
    assert "diagonal 1 to 3 of Room" in said
