import pytest
from hypothesis import given
from tests.strategies import air

from farwall.air.conditions import Conditions
from farwall.air.evaporation import chosen, evaporation
from farwall.air.relations import RELATIONS
from farwall.errors import Refused
from farwall.evidence import Rank


@given(air.conditions)
def test_the_range_holds_the_rate_and_every_relation_made_for_the_conditions(now):
    found = evaporation(now)
    assert 0 <= found.low_kg_m2_h <= found.rate_kg_m2_h <= found.high_kg_m2_h
    for one in RELATIONS.values():
        if not one.strays(now):
            assert found.low_kg_m2_h <= one.positive(now) <= found.high_kg_m2_h


def test_the_chooser_takes_the_published_relation_where_it_was_made_to_hold():
    assert chosen(Conditions()).name == "uno"
    assert evaporation(Conditions()).rank is Rank.PUBLISHED


def test_where_none_was_made_to_hold_the_one_on_vapour_pressure_answers_with_a_warning():
    found = evaporation(Conditions(air_c=45))
    assert found.relation == "menzel"
    assert found.warnings


def test_condensing_water_is_no_negative_evaporation():
    found = evaporation(Conditions(surface_c=12, air_c=30, rh_percent=90))
    assert found.rate_kg_m2_h == 0
    assert any("condenses" in one for one in found.warnings)


def test_an_unknown_relation_is_refused_with_the_known_ones():
    with pytest.raises(Refused, match="uno_ip"):
        evaporation(Conditions(), relation="dalton")


def test_a_relation_made_for_other_conditions_widens_no_range():
    """In air at 1 m/s the one for quiet air is too low and the one for pools too high: both ends
    are those of the fitting ones, or 40 % either side of the one used."""
    now = Conditions(surface_c=24.0, air_c=22.0, rh_percent=45.0, air_speed_m_s=1.0)
    found = evaporation(now)
    ends = [one.positive(now) for one in RELATIONS.values() if not one.strays(now)]
    astray = [one.positive(now) for one in RELATIONS.values() if one.strays(now)]
    assert min(astray) < found.low_kg_m2_h < found.high_kg_m2_h < max(astray)
    assert found.low_kg_m2_h == min([*ends, 0.6 * found.rate_kg_m2_h])
    assert found.high_kg_m2_h == max([*ends, 1.4 * found.rate_kg_m2_h])
