"""Mixtures classed by the rules of addition; by hand where a number decides."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid.hazards import HAZARDS
from farwall.acid.mixture_hazards import HYDROCHLORIC_ACID, NEAT, hazard_codes


def test_acid_of_the_trade_burns_eats_metal_and_irritates_airways():
    assert hazard_codes({HYDROCHLORIC_ACID: 31.45}) == ("H290", "H314", "H335")


@pytest.mark.parametrize(("percent", "airways"), [(10.0, True), (9.9, False), (1.0, False)])
def test_airways_from_ten_percent_as_annex_vi_has_it_from_memory(percent, airways):
    codes = hazard_codes({HYDROCHLORIC_ACID: percent})
    assert ("H335" in codes) is airways
    assert "H314" in codes


def test_a_trace_below_ph_2_is_no_burn_by_hand():
    """0.01 mol/L x 36.46 g/mol is 0.36 g/L, 0.036 % of a litre of water: 0.04 % is the limit."""
    assert "H314" not in hazard_codes({HYDROCHLORIC_ACID: 0.03})
    assert "H314" in hazard_codes({HYDROCHLORIC_ACID: 0.05})


@pytest.mark.parametrize(
    ("percent", "oral", "mist"),
    [
        (4.9, None, "H332"),
        (5.0, "H302", "H331"),
        (34.0, "H301", "H330"),
        (100.0, "H301", "H330"),
    ],
)
def test_dichromate_swallowed_and_breathed_by_hand(percent, oral, mist):
    """Estimates 100 mg/kg and 0.05 mg/L: at 5 % 2,000 mg/kg and 1.0 mg/L; at 34 % 294, 0.147."""
    codes = hazard_codes({"sodium dichromate": percent})
    assert ("H302" if "H302" in codes else "H301" if "H301" in codes else None) == oral
    assert mist in codes


def test_a_tenth_of_a_percent_of_chromate_is_cancer_on_the_label():
    assert {"H350", "H340", "H360", "H334", "H317"} <= set(hazard_codes({"sodium dichromate": 0.1}))
    assert "H350" not in hazard_codes({"sodium dichromate": 0.09})


@pytest.mark.parametrize(
    ("percent", "codes"),
    [
        (25.0, {"H410"}),
        (24.9, {"H400", "H411"}),
        (2.5, {"H400", "H411"}),
        (2.4, {"H412"}),
        (0.25, {"H412"}),
        (0.24, set()),
    ],
)
def test_copper_in_water_by_hand(percent, codes):
    """At once ten times as much (M 10), in time once, ten and a hundred times: each against 25."""
    found = set(hazard_codes({"copper(II) chloride": percent}))
    assert found & {"H400", "H410", "H411", "H412"} == codes


@pytest.mark.parametrize(
    ("name", "percent", "codes"),
    [
        # Strong acid from 0.04 % burns; a salt that irritates skin does from 10 %, tables 3.2.3.
        ("iron(III) chloride", 10.0, {"H315", "H318"}),
        ("iron(III) chloride", 9.9, {"H318"}),
        # Serious damage to the eye: from 3 %, and ten times its share irritates from 10 %, 3.3.3.
        ("iron(III) chloride", 3.0, {"H318"}),
        ("iron(III) chloride", 2.9, {"H319"}),
        ("iron(III) chloride", 1.0, {"H319"}),
        ("iron(III) chloride", 0.9, set()),
        ("calcium chloride", 10.0, {"H319"}),
        ("calcium chloride", 9.9, set()),
        # A base that burns, and no acid: 5 % for skin, ten times its share irritates from 10 %.
        ("ammonia water", 5.0, {"H314"}),
        ("ammonia water", 4.9, {"H315", "H318"}),
        ("ammonia water", 2.9, {"H315", "H319"}),
        ("ammonia water", 0.9, set()),
    ],
)
def test_skin_and_eyes_by_hand(name, percent, codes):
    """The stronger word stands for the weaker: H314 for the rest, H318 for H319."""
    found = set(hazard_codes({name: percent}))
    assert found & {"H314", "H315", "H318", "H319"} == codes


def test_organs_from_one_percent():
    assert "H373" in hazard_codes({"manganese(II) chloride": 1.0})
    assert "H373" not in hazard_codes({"manganese(II) chloride": 0.9})


def test_what_is_not_listed_counts_for_nothing():
    assert hazard_codes({"other": 100.0}) == ()
    assert hazard_codes({}) == ()


SHARES = st.dictionaries(st.sampled_from(sorted(NEAT)), st.floats(0, 20), max_size=5)
WORSE = {
    "H300": 4, "H301": 3, "H302": 2, "H330": 4, "H331": 3, "H332": 2, "H314": 4, "H315": 2,
    "H410": 4, "H411": 3, "H412": 2,
}  # fmt: skip
FAMILIES = ("H30", "H33", "H31", "H41")


def worst(codes, family):
    return max((WORSE.get(one, 0) for one in codes if one.startswith(family)), default=0)


@given(SHARES)
def test_every_code_has_its_words(shares):
    assert set(hazard_codes(shares)) <= HAZARDS.keys()


@given(SHARES, st.floats(0.05, 1))
def test_water_never_makes_it_worse(shares, part):
    whole = hazard_codes(shares)
    cut = hazard_codes({name: share * part for name, share in shares.items()})
    for family in FAMILIES:
        assert worst(cut, family) <= worst(whole, family)


@given(SHARES, st.sampled_from(sorted(NEAT)), st.floats(0, 10))
def test_more_of_anything_never_makes_it_better(shares, name, more):
    added = hazard_codes({**shares, name: shares.get(name, 0) + more})
    for family in FAMILIES:
        assert worst(added, family) >= worst(hazard_codes(shares), family)
