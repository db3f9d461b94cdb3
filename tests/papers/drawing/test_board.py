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


CORNERS = st.tuples(st.floats(-40, 400), st.floats(-40, 300))
BOXES = st.builds(
    lambda at, size: (at[0], at[1], at[0] + size[0], at[1] + size[1]),
    CORNERS,
    st.tuples(st.floats(0, 200), st.floats(0, 150)),
)


@given(st.lists(BOXES, max_size=20), st.lists(BOXES, min_size=1, max_size=8), st.integers(0, 20))
def test_law_a_box_is_free_where_it_meets_nothing_taken(taken, asked, kept):
    """Asked square by square, or of every box: the same answer, also after some are given back."""
    board = Board((0, 0, 380, 280))
    for box in taken:
        board.take(box)
        board.free(asked[0])
    for held in (taken, taken[:kept]):
        board.give_back(len(held))
        for left, top, right, bottom in asked:
            on_page = left >= 0 and top >= 0 and right <= 380 and bottom <= 280
            met = any(left < b[2] and right > b[0] and top < b[3] and bottom > b[1] for b in held)
            assert board.free((left, top, right, bottom)) == (on_page and not met)
