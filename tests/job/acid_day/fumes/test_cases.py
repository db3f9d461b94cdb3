"""What is not known, tried at its ends and joined in squares."""

import numpy as np
import pytest

from farwall.job.acid_day.fumes.cases import DOUBTS, cases, ends
from farwall.job.acid_day.fumes.course import stays_below_from


def test_case_0_is_likely_and_each_doubt_has_its_two_ends():
    tried = cases(extra=2)
    assert len(tried) == 1 + 2 * len(DOUBTS) + 2
    for n, doubt in enumerate(DOUBTS):
        values = tried[doubt]
        assert values[0] == values[-1] == doubt.likely
        assert (values[1 + 2 * n], values[2 + 2 * n]) == (doubt.low, doubt.high)
        others = np.delete(values, [1 + 2 * n, 2 + 2 * n])
        assert (others == doubt.likely).all()


def test_two_doubts_that_triple_make_a_factor_of_nearly_five():
    """By hand: √2·ln 3 = ln 4.73; a doubt that moves nothing adds nothing."""
    found = np.full(1 + 2 * len(DOUBTS), 2.0)
    found[1], found[2], found[3], found[4] = 2 / 3, 6.0, 6.0, 2 / 3
    low, likely, high = (float(one) for one in ends(found))
    assert likely == 2
    assert high == pytest.approx(2 * 4.728, rel=1e-3)
    assert low == pytest.approx(2 / 4.728, rel=1e-3)


def test_clear_is_the_minute_after_the_last_one_above():
    minutes, ppm = np.arange(5.0), np.array([0.0, 3.0, 1.0, 4.0, 1.0])
    assert stays_below_from(minutes, ppm, 2.0) == 4.0
    assert stays_below_from(minutes, ppm, 0.5) is None
    assert stays_below_from(minutes, ppm, 9.0) == 0.0
    assert stays_below_from(minutes, ppm, 9.0, after_min=3.0) == 3.0
