"""40 CFR part 265 appendix V, "Examples of Potentially Incompatible Waste", group against group.

Groups 1 to 4 as quoted by stored pages (a university's and two states' copies); group 6 from
memory, marked so. The appendix says itself that acid may be poured into water and that a base may
neutralise an acid: lime and soda ash may therefore meet acid with a warning, never without.
"""

import pytest
from tests.acid.pouring.mixtures import thing

from farwall.acid.pouring.gate import may_pour
from farwall.acid.pouring.nouns import VESSELS

GROUP_1A = ("lye", "alkaline cleaner", "trisodium phosphate")
"""Caustic liquids, alkaline cleaner."""
GROUP_1A_LIME = ("lime", "soda ash", "cement")
"""Lime sludge and other corrosive alkalies; lime and water."""
GROUP_1B = ("stain", "mixed stain", "muriatic acid", "etching acid", "acid cleaner")
"""Acid and water, chemical cleaners, etching acid."""
CONCENTRATED = ("stain", "muriatic acid", "etching acid", "lye")
GROUP_4A = ("alcohol", "solvent", "solvent stripper")
"""Alcohols, halogenated hydrocarbons, other reactive organic compounds and solvents."""
GROUP_6A = ("bleach", "pool chlorine", "peroxide", "oxygen bleach")
"""Hypochlorites, chlorine, peroxides."""
GROUP_6B = ("vinegar", *GROUP_1B, *GROUP_4A, "gasoline", "sawdust", "rags")
"""Acetic acid, concentrated mineral acids, group 4-A, other flammable and combustible wastes."""


def both_orders(one, other):
    return [[thing(one), thing(other)], [thing(other), thing(one)]]


def refused_everywhere(one, other):
    return all(
        may_pour(tub, vessel).word == "refused"
        for tub in both_orders(one, other)
        for vessel in VESSELS
    )


@pytest.mark.parametrize("acid", GROUP_1B)
def test_cfr_265_v_group_1a_alkaline_with_1b_acid_is_refused(acid):
    assert [one for one in GROUP_1A if not refused_everywhere(one, acid)] == []


@pytest.mark.parametrize("acid", GROUP_1B)
@pytest.mark.parametrize("base", GROUP_1A_LIME)
def test_cfr_265_v_lime_that_neutralises_is_never_allowed_without_a_warning(acid, base):
    words = {may_pour(tub, vessel).word for tub in both_orders(base, acid) for vessel in VESSELS}
    assert "allowed" not in words
    assert may_pour([thing(acid), thing(base)], "closed drum").word == "refused"


@pytest.mark.parametrize("kind", [*GROUP_1A, *GROUP_1A_LIME, *GROUP_1B])
def test_cfr_265_v_group_2a_metals_with_group_1_is_refused(kind):
    """Aluminium, zinc: flammable hydrogen. A metal pail may be either."""
    assert may_pour([thing(kind)], "metal pail").word == "refused"


@pytest.mark.parametrize("kind", CONCENTRATED)
def test_cfr_265_v_group_3a_water_onto_concentrated_group_1_is_refused(kind):
    assert may_pour([thing(kind), thing("water")]).word == "refused"


@pytest.mark.parametrize("kind", CONCENTRATED)
def test_cfr_265_v_group_4a_organics_with_concentrated_group_1_is_refused(kind):
    assert [one for one in GROUP_4A if not refused_everywhere(one, kind)] == []


@pytest.mark.parametrize("fuel", GROUP_6B)
def test_cfr_265_v_group_6a_oxidisers_with_6b_is_refused_from_memory(fuel):
    assert [one for one in GROUP_6A if not refused_everywhere(one, fuel)] == []
