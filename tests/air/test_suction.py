import pytest
from hypothesis import given
from tests.strategies import air

from farwall.air.suction import FINISH_DROP_S, REFERENCE_DROP_S, drop_seconds, thirst, warmth
from farwall.evidence import Rank


def test_a_drop_that_was_timed_wins_over_the_finish():
    assert drop_seconds(drop_s=9, finish="broom").value == 9
    assert drop_seconds(drop_s=9, finish="broom").rank is Rank.MEASURED
    assert drop_seconds(drop_s=None, finish="broom").rank is Rank.GUESS
    assert drop_seconds(drop_s=None, finish=None).value == REFERENCE_DROP_S


@pytest.mark.common_practice
def test_an_open_finish_drinks_more_than_a_hard_trowel():
    """Common practice, no source for the seconds: open below 5-10 s, good 5-20, tight above 20."""
    seconds = [FINISH_DROP_S[one] for one in ("broom", "float", "trowel", "hard trowel")]
    assert seconds == sorted(seconds)
    assert FINISH_DROP_S["broom"] < 5 < FINISH_DROP_S["trowel"] < 20 < FINISH_DROP_S["hard trowel"]


def test_half_the_seconds_drink_twice_as_fast():
    assert thirst(drop_s=REFERENCE_DROP_S) == 1
    assert thirst(drop_s=REFERENCE_DROP_S / 2) == 2


@given(air.slab_c, air.slab_c)
def test_a_warmer_slab_drinks_faster(one, other):
    cool, warm = sorted((one, other))
    assert warmth(surface_c=cool) <= warmth(surface_c=warm)
    assert warmth(surface_c=21) == pytest.approx(1)


def test_the_thickness_of_water_from_memory():
    """1.307 mPa·s and 74.2 mN/m at 10 °C, 0.978 and 72.6 at 21 °C: 0.765, from memory, 3 %."""
    assert warmth(surface_c=10) == pytest.approx(74.2 / 1.307 / (72.6 / 0.978), rel=0.03)
