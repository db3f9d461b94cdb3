"""Paths across a map of answers: their sums by hand, the ways back, and that none is told twice."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from farwall.colour.marks.paths import (
    SLOPES,
    STRIP,
    TOLL,
    TURN,
    Answers,
    Ways,
    best_paths,
    carried,
    strips_of,
)


def means(seed, strips=4, layers=2, rows=14):
    throws = np.random.default_rng(seed)
    return throws.normal(1, 1.5, (strips, layers, len(SLOPES), rows)).astype(np.float32)


def by_hand(mean):
    """The same sums, each end and each way to it for itself."""
    strips, layers, slopes, rows = mean.shape
    sums = np.zeros(mean.shape)
    for strip, layer, slope, row in np.ndindex(strips, layers, slopes, rows):
        came = [0.0]
        for turn in (-1, 0, 1):
            own = slope + turn
            if strip and 0 <= own < slopes and 0 <= row - SLOPES[own] < rows:
                came.append(sums[strip - 1, layer, own, row - SLOPES[own]] - TURN * abs(turn))
        sums[strip, layer, slope, row] = mean[strip, layer, slope, row] - TOLL + max(came)
    return sums


@given(st.integers(0, 200))
@settings(max_examples=10)
def test_sums_are_the_best_of_all_ways(seed):
    mean = means(seed)
    assert carried(mean) == pytest.approx(by_hand(mean), abs=1e-4)


@given(st.integers(0, 200))
@settings(max_examples=10)
def test_a_way_back_comes_to_the_sum_at_its_end_and_shares_what_was_told(seed):
    mean = means(seed, strips=9)
    sums = carried(mean)[:, 0]
    ways, alone = Ways(sums), []
    for row in range(sums.shape[2]):
        points, shared = ways.to(8, row)
        assert points == pytest.approx(Ways(sums).to(8, row)[0])
        assert shared == 0 or any((points[:shared] == one[:shared]).all() for one in alone)
        alone.append(points)
        slopes = np.diff(points[:, 0]).astype(int)
        begins = int(points[0, 1]) // STRIP
        told = sum(
            float(mean[begins + n, 0, SLOPES.index(slope), int(points[n, 0])]) - TOLL
            for n, slope in enumerate(slopes)
        )
        turned = TURN * np.count_nonzero(np.diff(slopes))
        assert told - turned == pytest.approx(float(sums[8, :, row].max()), abs=1e-3)


def flat(answer):
    """Answers that are the same at any slope, as a step's along x is at none."""
    return Answers(np.zeros_like(answer), None, answer.astype(np.float32))


def test_lines_apart_are_each_told_once_and_what_is_dark_is_the_second_layer():
    answer = np.zeros((60, 80))
    answer[20], answer[45] = 3.0, -3.0
    sums = carried(strips_of([flat(answer)], np.zeros(answer.shape, bool)))
    found = best_paths(sums, least=10.0, most=9, shape=answer.shape, reach=3)
    assert sorted((one.layer, int(one.points[3, 0])) for one in found) == [(0, 20), (1, 45)]
    assert found[0].score == pytest.approx(20 * (3.0 - TOLL), rel=0.01)


def test_what_is_hidden_gives_nothing_and_no_more_is_told_than_wished():
    answer = np.zeros((60, 80))
    answer[10::12] = 3.0
    hidden = np.zeros(answer.shape, bool)
    hidden[:, 40:] = True
    sums = carried(strips_of([flat(answer)], hidden))
    found = best_paths(sums, least=10.0, most=2, shape=answer.shape, reach=3)
    assert len(found) == 2
    assert found[0].score == pytest.approx(10 * (3.0 - TOLL), rel=0.01)
    assert best_paths(sums, least=100.0, most=2, shape=answer.shape, reach=3) == []
