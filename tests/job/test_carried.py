"""Pieces of a floor carried by a drawing: what is told where some have gone."""

import pytest

from farwall.job.carried import Piece, gone_since

ONE = Piece({"kind": "room", "id": "hall"}, (((0.0, 0.0), (1.0, 0.0), (1.0, 1.0)),), closed=True)


def test_as_many_as_were_drawn_need_no_word():
    assert gone_since([ONE], {"pieces": 1}) == ()


def test_fewer_are_told_with_both_counts():
    (note,) = gone_since([ONE], {"pieces": 3})
    assert note.what.startswith("3 things were drawn in it when it was exported, 1 are in it now")


@pytest.mark.parametrize("told", [None, "three", 2.5])
def test_a_count_that_cannot_be_read_is_told_in_words(told):
    (note,) = gone_since([ONE], {"pieces": told})
    assert note.what == (
        "How many things were drawn in it when it was exported cannot be read; 1 are in it now."
    )
