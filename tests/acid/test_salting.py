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


@pytest.mark.parametrize(
    ("name", "brought"),
    [
        ("calcium chloride", 5.149),
        ("iron(II) chloride", 4.508),
        ("iron(III) chloride", 5.285),
        ("manganese(II) chloride", 4.541),
        ("copper(II) chloride", 4.250),
        ("chromium(III) chloride", 5.413),
        ("ammonium chloride", 5.341),
    ],
)
def test_high_end_by_hand(name, brought):
    """10 % acid and 20 % salt in 70 of water: 3.918 mol of acid to a kg of water, and of chloride
    from the salt its charge times 20/70 kg over its mass, such as 2 x 285.71 / 110.98 = 5.149."""
    found = pressed_out(hcl_percent=10, salt_percent={name: 20})
    acid, plain = (1000 * 10 / water / 36.458 for water in (70, 90))
    assert acid == pytest.approx(3.918, abs=1e-3)

    def squared(m):
        return float(np.exp(2 * ln_activity_coefficient(np.asarray(m))))

    chloride = acid + brought
    high = acid * chloride * squared(chloride) / (plain**2 * squared(plain))
    assert found.high == pytest.approx(high, rel=1e-3)
    assert found.likely == pytest.approx((found.low * found.high) ** 0.5)


def test_the_ends_of_what_can_be_guessed():
    assert pressed_out(hcl_percent=38, salt_percent={"calcium chloride": 42}).low > 1
    for percent, share in ((38.1, 10), (38, 42.1)):
        with pytest.raises(Refused):
            pressed_out(hcl_percent=percent, salt_percent={"calcium chloride": share})
