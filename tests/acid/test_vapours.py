"""The tables of pressure are the functions they were made from."""

import numpy as np
import pytest
from tests.acid.film_ground import VAPOURS, hcl_pa, water_pa

from farwall.acid.vapours import STRONGEST_PERCENT, percent_of_molal


def test_the_table_is_the_function_between_whole_percents_too():
    """The invented HCl is straight in the logarithm: exact but for rounding; water within 0.1 %."""
    percent = np.array([0.35, 5.05, 10.0, 20.2, 33.33])
    assert VAPOURS.hcl_pa(percent) == pytest.approx(
        [hcl_pa(one, 21.0) for one in percent], rel=1e-6
    )
    assert VAPOURS.water_pa(percent) == pytest.approx(
        [water_pa(one, 21.0) for one in percent], rel=1e-3
    )


def test_stronger_than_the_table_is_its_end():
    assert VAPOURS.hcl_pa(np.array([50.0])) == VAPOURS.hcl_pa(np.array([STRONGEST_PERCENT]))


def test_percent_of_molal_by_hand():
    """6.945 mol on a kilogram: 253.2 g in 1253.2 g, 20.2 %, the constant-boiling acid."""
    assert percent_of_molal(np.array([6.945]))[0] == pytest.approx(20.2, abs=0.01)
    assert percent_of_molal(np.array([0.0]))[0] == 0
