"""Looks worked by hand, with a pocket calculator: a grey slab, one coat, each form.

Bare body 0.3 in every channel; strength 10; M 0.4; dose 0.05 L/m². Counted by share:
0.4·(1 - exp(-0.125)) = 0.04700; to its end: 0.05/(1 + 0.125³)^⅓ = 0.04997. Face of water:
0.98·0.53·body/(1 - 0.47·body). Greys: L = 116·∛(reflectance) - 16.
"""

import numpy as np
import pytest

from farwall.colour.dose import Form, Laid, schedules
from farwall.colour.looks import looks

CASES = [
    # K/S 0.8167 + 0.4700 = 1.2867; body 2.2867 - √4.2290 = 0.2302; 0.11957/0.8918 = 0.1341
    (Form("scattering", "by share"), 0.49 / 0.6, 43.37),
    # 0.8167 + 0.4997 = 1.3164; 2.3164 - √4.3657 = 0.2270; 0.11790/0.8933 = 0.1320
    (Form("scattering", "to its end"), 0.49 / 0.6, 43.06),
    # -ln 0.3 = 1.2040; 1.2040 + 0.4700 = 1.6740; exp(-1.6740) = 0.1875; 0.09739/0.9119 = 0.1068
    (Form("absorbing", "by share"), -np.log(0.3), 39.04),
]


@pytest.mark.parametrize(("form", "bare", "lightness"), CASES, ids=lambda one: str(one)[:60])
def test_one_coat_on_a_grey_slab(form, bare, lightness):
    theta = np.array([[np.log(10.0)] * 3 + [np.log(0.4)] + [np.log(bare)] * 3 + [0.0] * 4])
    found = looks(form, theta, schedules([[Laid(0, 0.05)]]), 1, places=np.array([0]))[0, 0]
    assert found[0] == pytest.approx(lightness, abs=0.03)
    assert found[1:] == pytest.approx([0, 0], abs=1e-6)


def test_a_floor_that_drinks_a_tenth_more_is_a_tenth_more_dose():
    """Change of thirst log 1.1: 0.05 L counts as 0.055."""
    form = Form("scattering", "by share")
    usual = np.array([[np.log(10.0)] * 3 + [np.log(0.4)] + [np.log(0.8)] * 3 + [0.0] * 4])
    thirsty = usual.copy()
    thirsty[0, 10] = np.log(1.1)
    at = np.array([0])
    one = looks(form, thirsty, schedules([[Laid(0, 0.05)]]), 1, places=at)
    other = looks(form, usual, schedules([[Laid(0, 0.055)]]), 1, places=at)
    assert one == pytest.approx(other, abs=1e-9)
