"""Our own target: what is on it and where."""

import numpy as np
import pytest

from farwall.colour.lab import lab_of_srgb
from farwall.colour.targets.own import COLOURS, GREYS, asked_srgb, own_target

TARGET = own_target()


def test_each_grey_stands_twice_and_far_apart_and_each_colour_once():
    greys = [one for one in TARGET.patches if one.grey]
    assert len(greys) == 2 * len(GREYS)
    assert len(TARGET.patches) - len(greys) == len(COLOURS)
    for step in GREYS:
        one, other = (p for p in greys if abs(p.lab[0] - step) < 1)
        assert np.hypot(*np.subtract(one.at_mm, other.at_mm)) > 60
    assert len({one.name for one in TARGET.patches}) == len(TARGET.patches)


def test_nothing_lies_on_anything_else_and_all_within():
    places = [(one.at_mm, one.side_mm) for one in (*TARGET.patches, *TARGET.markers)]
    for k, (at, side) in enumerate(places):
        assert side / 2 <= at[0] <= TARGET.size_mm[0] - side / 2
        assert side / 2 <= at[1] <= TARGET.size_mm[1] - side / 2
        for other, other_side in places[:k]:
            assert max(abs(at[0] - other[0]), abs(at[1] - other[1])) >= (side + other_side) / 2


@pytest.mark.parametrize("patch", TARGET.patches, ids=lambda one: one.name)
def test_what_the_printer_is_asked_for_is_the_value_told(patch):
    coded = asked_srgb(patch)
    assert all(0 < one < 255 for one in coded)  # nothing is cut off at the edge of sRGB
    assert lab_of_srgb(np.array(coded) / 255) == pytest.approx(np.array(patch.lab), abs=1e-9)


def test_its_markers_are_those_of_the_open_dictionary():
    import cv2

    book = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    for marker in TARGET.markers:
        drawn = cv2.aruco.generateImageMarker(book, marker.number, 6) > 0
        assert (drawn == np.array(marker.cells)).all()
    assert len({one.number for one in TARGET.markers}) == 4
