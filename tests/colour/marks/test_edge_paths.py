"""The best path in the corridor of a known edge: by hand on little sheets, and by all paths."""

from itertools import product

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays

from farwall.colour.marks import edge_paths
from farwall.colour.marks.edge_paths import CLIP, HIDDEN, TOLL, TURN, TURNS, best_path, best_paths

FREE = np.zeros(5)


def flat(pieces=14, places=5, of=0.0):
    return np.full((1, pieces, places), of), np.ones((pieces, places), bool)


def test_a_strip_along_one_place_gives_its_pieces_times_what_is_over_the_toll():
    answers, seen = flat(of=-1.0)
    answers[0, 1:13, 2] = 2.0
    found = best_path(answers, seen, FREE)
    assert found.score == pytest.approx(12 * (2.0 - TOLL))
    assert found.pieces.tolist() == list(range(1, 13))
    assert set(found.places.tolist()) == {2}


def test_a_step_aside_costs_by_its_square_and_a_stone_counts_no_more_than_the_clip():
    answers, seen = flat(of=-2.0)
    answers[0, :7, 1], answers[0, 7:, 3] = 1.0, 1.0
    answers[0, 3, 1] = 50.0
    found = best_path(answers, seen, FREE)
    assert found.score == pytest.approx(13 * (1 - TOLL) + CLIP - TOLL - 4 * TURN)
    assert found.places.tolist() == [1] * 7 + [3] * 7


def test_a_short_strip_is_no_lap_and_nothing_gives_nothing():
    answers, seen = flat(of=-3.0)
    answers[0, 2:6, 2] = 3.0
    assert best_path(answers, seen, FREE) is None
    answers, seen = flat(of=-1.0)
    assert best_path(answers, seen, FREE) is None


def test_what_is_hidden_is_passed_at_little_cost():
    answers, seen = flat(of=-2.0)
    answers[0, :, 2] = 1.5
    answers[0, 5:8, :], seen[5:8] = -9.0, False
    found = best_path(answers, seen, FREE)
    assert found.score == pytest.approx(11 * (1.5 - TOLL) - 3 * HIDDEN)


def test_lying_off_the_edge_is_weighed():
    answers, seen = flat()
    answers[0, :, 0] = answers[0, :, 2] = 1.5
    found = best_path(answers, seen, np.array([0.3, 0.1, 0.0, 0.1, 0.3]))
    assert set(found.places.tolist()) == {2}


def of_all(answers, seen, beside):
    """The best sum by trying every path."""
    gain = np.where(seen, np.clip(answers[0], -CLIP, CLIP) - TOLL - beside, -HIDDEN)
    pieces, places = gain.shape
    best = 0.0
    for way in product(range(places), repeat=pieces):
        steps = np.abs(np.diff(way))
        if steps.max(initial=0) > TURNS:
            continue
        own = gain[np.arange(pieces), way]
        for begins, ends in ((0, pieces), (0, pieces - 1), (1, pieces)):
            cost = TURN * (np.diff(way[begins:ends]) ** 2).sum()
            if ends - begins >= edge_paths.LEAST_PIECES:
                best = max(best, own[begins:ends].sum() - cost)
    return best


@given(arrays(float, (1, 5, 3), elements=st.floats(0.5, 4)))
def test_no_path_gives_more_where_no_sum_falls_below_nothing(answers):
    seen = np.ones((5, 3), bool)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(edge_paths, "LEAST_PIECES", 4)
        found = best_path(answers, seen, np.zeros(3))
        told = found.score if found else 0.0
        assert told == pytest.approx(of_all(answers, seen, np.zeros(3)))


def test_corridors_carried_together_come_to_what_each_comes_to_alone():
    throws = np.random.default_rng(2)
    gains = [throws.normal(0.1, 1, (2, pieces, places)) for pieces, places in ((14, 5), (30, 9))]
    together = best_paths(gains)
    for one, gain in zip(together, gains, strict=True):
        alone = best_paths([gain])[0]
        assert one.score == pytest.approx(alone.score)
        assert one.width == alone.width
        assert one.pieces.tolist() == alone.pieces.tolist()
        assert one.places.tolist() == alone.places.tolist()
    assert best_paths([]) == []
