"""What water holds over a hydroxide, against PHREEQC: where the simple sum holds, and where not.

`phreeqc.dat` as it comes, with copper hydroxide of log K 8.640 as `wateq4f.dat` has it, in salt of
0.1 mol/kg and more, pH held by hydrochloric acid. It counts activity and complexes with hydroxide
and chloride that our sum leaves out.
"""

from functools import cache

import pytest
from phreeqpython import PhreeqPython

from farwall.acid.masses import ATOMIC_WEIGHT
from farwall.acid.settling import holds_mg_l

WATER = """
PHASES
Fix_H+
 H+ = H+
 log_k 0
Cupric
 Cu(OH)2 + 2H+ = Cu+2 + 2H2O
 log_k 8.640
SOLUTION 1
 units mmol/kgw
 pH {ph}
 Na 100
 Cl 100 charge
EQUILIBRIUM_PHASES 1
 Fix_H+ -{ph} HCl 10
 {phase} 0 10
SELECTED_OUTPUT
 -reset false
 -totals {element}
END
"""


@cache
def engine():
    return PhreeqPython(database="phreeqc.dat")


def held_mg_l(phase, element, ph):
    """mg of the element in a kilogram of water over the solid."""
    pp = engine()
    pp.ip.run_string(WATER.format(phase=phase, element=element, ph=ph))
    return pp.ip.get_selected_output_array()[-1][0] * 1000 * ATOMIC_WEIGHT[element]


@pytest.mark.parametrize("ph", [8.5, 9.0, 9.5, 10.0])
def test_manganese_is_told_too_low_by_a_factor_of_two_to_four(ph):
    """Ksp from memory against log K 15.2 of the database; salt and chloride hold more of it."""
    assert 1 < held_mg_l("Pyrochroite", "Mn", ph) / holds_mg_l("manganese", ph) < 4


@pytest.mark.parametrize("ph", [8.0, 8.5, 9.0])
def test_iron_stays_below_every_local_limit_both_ways(ph):
    """Fresh iron(III) hydroxide, which dissolves more than what our constant is of."""
    assert held_mg_l("Fe(OH)3(a)", "Fe", ph) < 0.1
    assert holds_mg_l("iron", ph) < 0.1


@pytest.mark.parametrize("ph", [8.0, 8.5, 9.0])
def test_bare_copper_may_stay_above_the_lowest_local_limit(ph):
    """The simple sum tells too little of copper: with its complexes with hydroxide, of constants
    that are in dispute, up to half a milligram stays. So `falls out` is never `below a limit`."""
    assert 0.06 < held_mg_l("Cupric", "Cu", ph) < 1.0
    assert holds_mg_l("copper", ph) < 0.06
