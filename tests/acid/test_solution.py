"""One strength said in several ways: there and back, and worked by hand."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid import solution as s
from farwall.acid.density import density_kg_l
from farwall.errors import Refused

PERCENTS = st.floats(0, 38)


@given(PERCENTS)
def test_there_and_back(percent):
    assert s.percent_from_molality(s.molality_from_percent(percent)) == pytest.approx(percent)
    assert s.percent_from_baume(s.baume_from_percent(percent)) == pytest.approx(percent, abs=1e-6)
    litre = s.solution(hcl_percent=percent, temperature_c=25).molarity
    back = s.percent_from_molarity(litre, temperature_c=25)
    assert back == pytest.approx(percent, abs=1e-6)


def test_by_hand():
    """10 % holds 100 g in 900 g of water: 111.11 g/kg over 36.458 g/mol = 3.0476 mol/kg."""
    assert s.molality_from_percent(10) == pytest.approx(3.0476, abs=1e-4)
    assert s.baume_from_percent(0) == pytest.approx(0, abs=1e-9)


def test_a_hydrometer_reads_less_in_warm_acid():
    warm = s.solution(hcl_percent=31.45, temperature_c=30)
    assert warm.baume < warm.baume_60f
    cool = s.solution(hcl_percent=31.45, temperature_c=s.SIXTY_F_C)
    assert cool.baume == pytest.approx(cool.baume_60f, abs=0.01)


def test_the_trades_own_strengths_are_met_and_nothing_jumps_between():
    for baume, percent in s.TRADE_PERCENT.items():
        assert s.percent_from_baume(baume) == pytest.approx(percent)
    steps = [s.percent_from_baume(n / 10) for n in range(236)]
    rises = [b - a for a, b in pairwise(steps)]
    assert all(0.1 < rise < 0.25 for rise in rises)


@given(st.floats(0, 37.5), st.floats(0.1, 0.5), st.floats(0, 59))
def test_denser_with_strength_lighter_with_warmth(percent, more, celsius):
    here = density_kg_l(hcl_percent=percent, temperature_c=celsius)
    assert density_kg_l(hcl_percent=percent + more, temperature_c=celsius) > here
    if percent > 1 and celsius > 5:
        assert density_kg_l(hcl_percent=percent, temperature_c=celsius + 1) < here


@pytest.mark.parametrize(("percent", "celsius"), [(38.5, 20), (-1, 20), (10, 61), (10, -1)])
def test_outside_is_refused(percent, celsius):
    with pytest.raises(Refused, match="38 % by mass and 0 to 60"):
        s.solution(hcl_percent=percent, temperature_c=celsius)


def test_no_acid_is_sold_so_strong():
    with pytest.raises(Refused, match="outside what is known"):
        s.percent_from_baume(26)
    with pytest.raises(Refused, match="outside"):
        s.percent_from_molarity(13, temperature_c=20)
