"""Muriatic acid by Baumé, by hand and by the remembered table."""

import pytest

from farwall.acid.trade_acid import density_kg_l, hcl_kg_l, percent
from farwall.errors import Refused


def test_a_gallon_of_trade_acid_by_hand():
    """145/125 = 1.16, by 0.99903 kg/L of water at 60 °F, by 31.45 %, by 3.7854 L: 1.380 kg."""
    assert hcl_kg_l(20) * 3.785411784 == pytest.approx(1.380, abs=0.0005)
    assert density_kg_l(20) == pytest.approx(1.1589, abs=0.0001)


def test_strength_rises_straight_between_the_trade_strengths():
    assert percent(19) == pytest.approx((27.92 + 31.45) / 2)
    assert percent(22) == 35.21


@pytest.mark.parametrize("baume", [17.9, 22.1, 0])
def test_other_degrees_are_refused(baume):
    with pytest.raises(Refused, match="no trade strength"):
        percent(baume)
