"""Squares that may be a target's: a family of them ends, whatever stands beside whatever."""

from __future__ import annotations

import io

import numpy as np
import pytest
from PIL import Image

from farwall.readers.colour_photo.lattice import _family
from farwall.readers.colour_photo.read import read_colour_photo

RIGHT, LEFT, DOWN = (1, 0), (-1, 0), (0, 1)


def grain(seed):
    """A picture of nothing but grain, as a PNG."""
    grey = np.random.default_rng(seed).normal(128, 12, (400, 600)).clip(0, 255).astype("uint8")
    file = io.BytesIO()
    Image.fromarray(grey).convert("RGB").save(file, "png")
    return file.getvalue()


def test_two_that_each_see_the_other_to_the_right_are_a_family_of_two():
    assert _family(0, [[(1, RIGHT)], [(0, RIGHT)]]) == {(0, 0): 0, (1, 0): 1}


def test_a_family_takes_all_that_hang_together_and_no_square_twice():
    near = [[(1, RIGHT), (2, DOWN)], [(0, LEFT), (3, DOWN)], [(3, RIGHT)], [(0, DOWN)], []]
    found = _family(0, near)
    assert found == {(0, 0): 0, (1, 0): 1, (0, 1): 2, (1, 1): 3}
    assert _family(4, near) == {(0, 0): 4}


@pytest.mark.parametrize("seed", [0, 1, 4])
def test_a_grainy_photo_holds_no_target_and_is_read(seed):
    """0 and 4 have squares that lead on and on from each other: once they were read for ever."""
    photo = read_colour_photo(grain(seed))
    assert photo.target is None
    assert photo.lab.shape == (400, 600, 3)
