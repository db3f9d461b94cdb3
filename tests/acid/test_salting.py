"""Salts press acid out: never less than plain acid, more with more salt, nothing without."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid.activity import ln_activity_coefficient
from farwall.acid.salting import CHLORIDES, pressed_out
from farwall.errors import Refused


def test_no_salt_is_plain_acid():
    found = pressed_out(hcl_percent=12, salt_percent={})
    assert (found.low, found.likely, found.high) == pytest.approx((1, 1, 1))


@given(st.floats(0.5, 20), st.sampled_from(sorted(CHLORIDES)), st.floats(0.1, 20))
def test_more_salt_presses_out_more(percent, name, share):
    some = pressed_out(hcl_percent=percent, salt_percent={name: share})
    more = pressed_out(hcl_percent=percent, salt_percent={name: share * 1.5})
    assert 1 <= some.low <= some.likely <= some.high
    assert more.low > some.low
    assert more.likely > some.likely


def test_low_end_by_hand():
    """10 % acid and 20 % salt: 10 in 70 of water is as strong as 12.5 % plain acid."""
    found = pressed_out(hcl_percent=10, salt_percent={"calcium chloride": 20})
    strong, plain = (1000 * 10 / water / 36.458 for water in (70, 90))

    def product(m):
        return (m * np.exp(ln_activity_coefficient(np.asarray(m)))) ** 2

    assert found.low == pytest.approx(float(product(strong) / product(plain)))


def test_what_is_no_chloride_is_passed_over():
    found = pressed_out(hcl_percent=10, salt_percent={"phosphoric acid": 20})
    assert found.high == pytest.approx(1)


@pytest.mark.parametrize(
    ("percent", "salts"),
    [(0, {}), (39, {}), (30, {"calcium chloride": 60}), (10, {"calcium chloride": -1})],
)
def test_nonsense_is_refused(percent, salts):
    with pytest.raises(Refused):
        pressed_out(hcl_percent=percent, salt_percent=salts)
