"""What stays dissolved: hydroxides by hand, ammonia with copper, chromium(VI) at every pH."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid.metals import Grams
from farwall.acid.settling import (
    HYDROXIDES,
    free_ammonia_mol_l,
    holds_mg_l,
    sludge_l,
)

alkaline = st.floats(7, 10)


def test_manganese_and_copper_hydroxide_by_hand():
    """By hand at pH 9, [OH] = 1e-5: 2e-13/1e-10 = 2 mmol/L of manganese, 109.9 mg/L; copper
    2.2e-20/1e-10 = 2.2e-10 mol/L."""
    assert holds_mg_l("manganese", 9) == pytest.approx(109.876, rel=1e-6)
    assert holds_mg_l("copper", 9) == pytest.approx(2.2e-10 * 63546, rel=1e-6)


def test_ammonia_keeps_copper_by_hand():
    """By hand at pH 9.25: half of 0.1 mol/L is free, 0.05. The four terms are 548, 73,781,
    2.328e6 and 3.515e6, together 5.917e6 times the bare copper."""
    assert free_ammonia_mol_l(0.1, 9.25) == pytest.approx(0.05)
    bare = holds_mg_l("copper", 9.25)
    assert holds_mg_l("copper", 9.25, ammonia_mol_l=0.1) / bare == pytest.approx(5.917e6, rel=2e-3)


@pytest.mark.common_practice
def test_what_the_trade_says_of_ph_8_and_9_no_source():
    """Common practice, no source: iron falls out, much manganese stays, ammonia keeps copper."""
    assert holds_mg_l("iron", 8) < 0.001
    assert holds_mg_l("manganese", 8) > 1000
    assert holds_mg_l("manganese", 9) > 4.0
    assert holds_mg_l("copper", 8.5) < 0.06
    assert holds_mg_l("copper", 8.5, ammonia_mol_l=0.05) > 1.0


@given(st.floats(0, 14))
def test_chromium_six_falls_out_at_no_ph(ph):
    assert holds_mg_l("chromium(VI)", ph) is None


@given(st.sampled_from(sorted(HYDROXIDES)), alkaline, st.floats(0, 1))
def test_a_higher_ph_holds_less_of_a_bare_metal(what, ph, more):
    assert holds_mg_l(what, ph + more) <= holds_mg_l(what, ph)


@given(alkaline, st.floats(0, 0.5), st.floats(0, 0.5))
def test_more_ammonia_never_holds_less_copper(ph, less, more):
    few = holds_mg_l("copper", ph, ammonia_mol_l=less)
    assert holds_mg_l("copper", ph, ammonia_mol_l=less + more) >= few


def test_sludge_by_hand():
    """By hand: 100 g of iron are 191.4 g of Fe(OH)3; at 1 to 3 % of solids 6.3 to 18.8 L."""
    low, high = sludge_l({"iron": Grams(100, 100)})
    assert low == pytest.approx(191.4 / 30 / 1.02, rel=1e-3)
    assert high == pytest.approx(191.4 / 10 / 1.02, rel=1e-3)
    assert sludge_l({"iron": Grams(100, None)})[1] is None


def test_chromium_six_makes_no_sludge():
    six = Grams(10, 10)
    assert sludge_l({"chromium": six, "chromium(VI)": six}) == (0, 0)
    more = sludge_l({"chromium": Grams(15, 15), "chromium(VI)": six})
    assert more[0] == pytest.approx(5 * 103.017 / 51.996 / 30 / 1.02, rel=1e-3)


def test_what_no_strip_shows_is_refused():
    with pytest.raises(ValueError, match="between 0 and 14"):
        holds_mg_l("copper", 15)
    with pytest.raises(ValueError, match="nothing"):
        free_ammonia_mol_l(-0.1, 9)
