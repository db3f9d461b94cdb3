"""Pieces of a mask: where they are, how large, what their rims weigh."""

import numpy as np

from farwall.colour.marks.areas import LEAST_WEIGHT, _Cut, _pieces

STEP_M = 0.005


def cut(shape, steep=3.0, hidden=()):
    near = np.zeros(shape, bool)
    for place in hidden:
        near[place] = True
    return _Cut(np.full(shape, steep, np.float32).ravel(), near.ravel(), STEP_M, 0.012)


def boxes(shape, *corners):
    mask = np.zeros(shape, bool)
    for top, left, high, wide in corners:
        mask[top : top + high, left : left + wide] = True
    return mask


def test_each_piece_has_its_box_and_the_weightiest_comes_first():
    mask = boxes((80, 90), (3, 4, 10, 12), (30, 40, 30, 30), (70, 80, 2, 2))
    found = list(_pieces(mask, cut(mask.shape), LEAST_WEIGHT))
    assert [(box[0], box[1], box[2].shape) for box, _, _ in found] == [
        (30, 40, (30, 30)), (3, 4, (10, 12)),
    ]  # fmt: skip
    weights = [weight for _, weight, _ in found]
    assert weights == sorted(weights, reverse=True)
    for (row, column, inside), _, _ in found:
        high, wide = inside.shape
        assert (inside == mask[row : row + high, column : column + wide]).all()


def test_a_piece_with_another_in_its_box_holds_itself_alone():
    mask = boxes((60, 60), (10, 10, 40, 40))
    mask[14:46, 14:46] = False
    mask[22:38, 22:38] = True
    ring = max(_pieces(mask, cut(mask.shape), LEAST_WEIGHT), key=lambda one: one[0][2].size)
    assert not ring[0][2][20, 20]
    assert ring[0][2].sum() == 40 * 40 - 32 * 32


def test_what_glare_hides_is_left_out_and_what_weighs_less_than_asked():
    mask = boxes((60, 60), (10, 10, 30, 30))
    assert not list(_pieces(mask, cut(mask.shape, hidden=[np.s_[10, :]]), LEAST_WEIGHT))
    weight = next(_pieces(mask, cut(mask.shape), LEAST_WEIGHT))[1]
    assert not list(_pieces(mask, cut(mask.shape), weight + 0.01))
