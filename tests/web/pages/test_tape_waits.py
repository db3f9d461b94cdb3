"""Where the words of a wait stand: beside its wedge before across it."""

from types import SimpleNamespace

from farwall.web.pages import tape_waits
from farwall.web.pages.tape_rule import wide

LONG, SHORT = "dry to recoat 5:50 pm to 8:32 pm, likely 6:49 pm", "dry to recoat"
WEDGE = (150.0, 210.0)


def places(monkeypatch, ways, width=358.0):
    monkeypatch.setattr(tape_waits, "_ways_to_say", lambda *_: list(ways))
    ruled = SimpleNamespace(svg=SimpleNamespace(width=width))
    return list(tape_waits._places(ruled, None, WEDGE))


def test_on_a_phone_fewer_words_beside_the_wedge_come_before_all_of_them_across(monkeypatch):
    """The longest lay across their wedge, where neither is seen."""
    words, x = places(monkeypatch, [LONG, SHORT])[0]
    assert words == SHORT
    assert x >= WEDGE[1] or x + wide(words) <= WEDGE[0]


def test_what_fits_nowhere_beside_lies_across_and_all_of_it_before_less(monkeypatch):
    found = places(monkeypatch, [LONG])
    assert [words for words, _ in found] == [LONG, ""]
    assert found[0][1] < WEDGE[1]


def test_with_room_all_of_it_stands_beside(monkeypatch):
    words, x = places(monkeypatch, [LONG, SHORT], width=860.0)[0]
    assert (words, x) == (LONG, WEDGE[1] + 6)
