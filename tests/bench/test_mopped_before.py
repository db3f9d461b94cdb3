"""The slab before the stain: of the same slab, frozen, and not the stained floor's own photo."""

from functools import cache

import numpy as np
import pytest

from farwall.bench.mopped_before import PARTS, before
from farwall.bench.mopped_camera import photograph
from farwall.bench.mopped_floors import mopped
from farwall.bench.mopped_score import before_sheet
from farwall.bench.mopped_sheet import clicks_of

LOOKS = {
    (0, "bare"): (0.2795, 0.2559, 0.2385, 0.2624, 0.2296, 0.2297, 0.2639, 0.2781, 0.2387),
    (1, "bare"): (0.1996, 0.1891, 0.2351, 0.2086, 0.1995, 0.1977, 0.2035, 0.2059, 0.2102),
    (1, "first coat"): (0.1002, 0.0981, 0.1138, 0.1046, 0.1007, 0.1015, 0.1006, 0.1052, 0.1039),
}
"""Mean of the linear red, green, blue, in nine blocks by rows."""
WHY = "a frozen slab has changed: its figures can no longer be laid beside those of before"

drawn = cache(mopped)


def blocks(picture):
    import cv2

    return cv2.resize(picture, (3, 3), interpolation=cv2.INTER_AREA).mean(axis=2).ravel()


def test_a_floor_of_one_coat_has_no_first_coat_before_it():
    assert before(drawn(0), "first coat") is None


@pytest.mark.parametrize(("seed", "when"), list(LOOKS))
def test_the_slab_before_holds(seed, when):
    was = before(drawn(seed), when)
    assert was.marks == ()
    assert (was.wide_m, was.high_m) == (drawn(seed).wide_m, drawn(seed).high_m)
    assert blocks(was.look) == pytest.approx(LOOKS[seed, when], abs=0.001), WHY


def test_a_first_coat_foretells_more_of_the_floor_than_the_bare_slab():
    import cv2

    def grain(floor):
        dark = -np.log(floor.look.mean(axis=2))
        return (cv2.GaussianBlur(dark, (0, 0), 8) - cv2.GaussianBlur(dark, (0, 0), 30)).ravel()

    alike = {
        when: np.corrcoef(grain(drawn(1)), grain(before(drawn(1), when)))[0, 1] for when in PARTS
    }
    assert 0.3 < alike["bare"] < alike["first coat"] < 0.99


def test_it_is_photographed_and_clicked_anew():
    was = before(drawn(0), "bare")
    photo = photograph(was, long_px=320, part=PARTS["bare"] + 1)
    assert photo.corners != photograph(drawn(0), long_px=320).corners
    again = clicks_of(was, photo, part=PARTS["bare"] + 2)
    assert again == clicks_of(was, photo, part=PARTS["bare"] + 2) != clicks_of(was, photo)


def test_it_is_laid_on_the_same_plan():
    floor = drawn(0)
    sheet = before_sheet(floor, "bare")
    assert before_sheet(floor, "first coat") is None
    assert sheet.top_m == pytest.approx(floor.high_m, abs=0.1)
    assert sheet.left_m == pytest.approx(0, abs=0.1)
    assert sheet.floor.mean() > 0.6
