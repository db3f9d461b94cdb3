"""Words that take their places: never on each other, never outside."""

from __future__ import annotations

import shapely
from hypothesis import given
from hypothesis import strategies as st

from farwall.papers.drawing.board import Board, Words, centres_inside, middle_of

WORDS = st.builds(
    Words,
    lines=st.lists(st.text("abc W", min_size=1, max_size=12), min_size=1, max_size=3).map(tuple),
    size=st.sampled_from([9.0, 11.0]),
    bold=st.booleans(),
)


@given(st.lists(WORDS, max_size=25), st.floats(60, 300), st.floats(40, 200))
def test_law_placed_words_lie_apart_and_on_the_page(many: list[Words], wide: float, high: float):
    board = Board((0, 0, wide, high))
    placed = []
    for words in many:
        centre = board.place_inside(words, shapely.box(0, 0, wide, high))
        if centre is not None:
            placed.append(shapely.box(*words.box(centre)))
    page = shapely.box(-1e-6, -1e-6, wide + 1e-6, high + 1e-6)
    assert all(page.contains(box) for box in placed)
    for k, box in enumerate(placed):
        assert all(box.intersection(other).area < 1e-6 for other in placed[k + 1 :])


@given(WORDS)
def test_law_words_offered_a_room_lie_wholly_in_it(words: Words):
    hall = shapely.union(shapely.box(0, 0, 160, 40), shapely.box(0, 0, 40, 160))
    for centre in centres_inside(words, hall)[:50]:
        left, top, right, bottom = words.box(centre)
        assert hall.buffer(1e-6).contains(shapely.box(left, top, right, bottom))


def test_the_middle_of_a_square_is_its_middle_and_of_an_l_lies_in_it():
    assert middle_of(shapely.box(0, 0, 10, 10)) == (5, 5)
    hall = shapely.union(shapely.box(0, 0, 100, 10), shapely.box(0, 0, 10, 100))
    assert hall.contains(shapely.Point(middle_of(hall)))
