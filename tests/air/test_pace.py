import pytest
from hypothesis import example, given
from tests.strategies import air

from farwall.air.conditions import REFERENCE, Conditions
from farwall.air.pace import OPEN_TIME_MIN, RECOAT_MIN, recoat_min, sheen_loss_min
from farwall.air.relations import IN_MOVING_AIR, RELATIONS
from farwall.facts import default_table as table

USUAL = table.FIRST_COAT_M2_PER_L.usual


def test_the_model_is_sized_by_practice_and_by_nothing_else():
    """On the mild day it gives back exactly what common practice says."""
    assert sheen_loss_min(REFERENCE, m2_per_l=USUAL, drop_s=None, finish=None) == pytest.approx(
        OPEN_TIME_MIN
    )
    assert recoat_min(REFERENCE, m2_per_l=USUAL) == pytest.approx(RECOAT_MIN)


@given(air.conditions, air.m2_per_l, air.drop_s)
def test_twice_the_film_lasts_twice_as_long(now, m2_per_l, drop_s):
    """The law of a steady uptake: what it gives up against the square root is said in suction."""
    once = sheen_loss_min(now, m2_per_l=m2_per_l, drop_s=drop_s, finish=None)
    twice = sheen_loss_min(now, m2_per_l=m2_per_l / 2, drop_s=drop_s, finish=None)
    assert twice == pytest.approx([2 * one for one in once])


def test_the_safe_end_takes_no_comfort_from_a_cold_slab():
    """Cooled from 21 to 11 °C in wet air that takes up nothing: likely lengthens, fast does not."""
    soaked = [Conditions(surface_c=slab_c, air_c=25, rh_percent=100) for slab_c in (21, 11)]
    mild, cold = (sheen_loss_min(n, m2_per_l=USUAL, drop_s=12, finish=None) for n in soaked)
    assert cold[0] == pytest.approx(mild[0])
    assert cold[1] > 1.2 * mild[1]


def test_where_no_relation_sees_evaporation_the_wait_has_no_end():
    assert recoat_min(Conditions(surface_c=12, air_c=30, rh_percent=95), m2_per_l=USUAL) == (
        float("inf"),
        None,
        None,
    )


@given(air.conditions, air.m2_per_l)
@example(Conditions(surface_c=12, air_c=15, rh_percent=70), USUAL)  # rivals 2.5 times apart
@example(Conditions(surface_c=26, air_c=40, rh_percent=45), USUAL)  # 8 times apart
def test_the_wait_spans_what_each_relation_that_knows_air_speed_would_say(now, m2_per_l):
    """The mild day needs 2 h by Uno; the same films' worth by every rival lies in the range."""
    fast, _, slow = recoat_min(now, m2_per_l=m2_per_l)
    films_kg_m2 = 2.0 * RELATIONS["uno"].rate(REFERENCE) * USUAL / m2_per_l
    for name in IN_MOVING_AIR:
        rate = RELATIONS[name].positive(now)
        wait_min = films_kg_m2 / rate * 60 if rate > 0 else float("inf")
        assert fast <= wait_min * (1 + 1e-9)
        assert slow is None or wait_min <= slow * (1 + 1e-9)
        assert not (wait_min == float("inf") and slow is not None)
