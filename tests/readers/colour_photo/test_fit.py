"""The fit finds what was done to known colours, and does not trust one that does not belong."""

import numpy as np
import pytest

from farwall.colour.lab import XYZ_OF_SRGB, lab_of_xyz, xyz_of_lab
from farwall.colour.targets.common24 import common_24
from farwall.readers.colour_photo.fit import Seen, best_fit, straight

PATCHES = [one for one in common_24().patches if one.name != "cyan"]  # outside of sRGB
LAB = np.array([one.lab for one in PATCHES])
COUNT = len(LAB)
PLACE = np.column_stack(
    [[one.at_mm[0] / 138 - 1 for one in PATCHES],
     [one.at_mm[1] / 138 - 0.67 for one in PATCHES], np.zeros(COUNT)]
)  # fmt: skip


def light_of(mix, *, slope=(0.0, 0.0, 0.0)):
    linear = np.maximum(xyz_of_lab(LAB) @ np.linalg.inv(mix).T, 1e-4)
    return linear * np.exp(PLACE @ np.array(slope))[:, None]


def test_channels_mixed_and_light_aslant_come_out_to_the_last_bit_of_sense():
    mix = XYZ_OF_SRGB @ np.array([[1.3, 0.1, 0.0], [0.05, 0.9, 0.05], [0.0, 0.2, 0.6]])
    fit, errors = best_fit(Seen(light_of(mix, slope=(0.15, -0.08, 0)), PLACE, None, LAB))
    assert np.median(errors) < 0.4
    assert fit.lie[:2] == pytest.approx([0.15, -0.08], abs=0.02)


def test_a_patch_under_a_thumb_does_not_spoil_the_others():
    light = light_of(XYZ_OF_SRGB)
    light[3] = (0.5, 0.3, 0.25)
    seen = Seen(light, PLACE, None, LAB)
    _, errors = best_fit(seen)
    rest = np.arange(COUNT) != 3
    assert errors[3] > 10
    assert np.median(errors[rest]) < 1.5


def test_greys_alone_give_three_gains():
    greys = slice(17, 23)
    light = light_of(XYZ_OF_SRGB)[greys] * (1.4, 1.0, 0.6)
    fit, errors = best_fit(Seen(light, PLACE[greys], None, LAB[greys]))
    assert fit.mixing == "grey"
    assert np.median(errors) < 2
    found = lab_of_xyz(fit.xyz(fit.even(Seen(light, PLACE[greys], None, LAB[greys]))))
    assert np.hypot(found[:, 1] - LAB[greys, 1], found[:, 2] - LAB[greys, 2]).max() < 3


def test_white_stays_white_whatever_the_tones():
    tones = np.array([0.3, -0.2, 0.1, 0.05])
    assert float(straight(np.array(1.0), tones)) == pytest.approx(1.0)
