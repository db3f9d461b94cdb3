"""Means over boxes, as the filter of the large library has them."""

import cv2
import numpy as np
import pytest

from farwall.colour.marks.boxes import Boxes


def test_means_over_boxes_are_those_of_the_filter_at_every_fifth_point_seen():
    dark = np.random.default_rng(4).normal(1, 0.2, (203, 157)).astype(np.float32)
    seen = np.ones(dark.shape, bool)
    seen[:60] = False
    for wide in (1, 21, 79):
        theirs = cv2.boxFilter(dark, cv2.CV_32F, (wide, 100), borderType=cv2.BORDER_REFLECT)
        ours = Boxes(dark, seen, 0.005).means(wide)
        assert ours == pytest.approx(theirs[::5, ::5][seen[::5, ::5]], abs=1e-5)
