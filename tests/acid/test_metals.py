"""Grams of metal and mg/L in rinse water: by hand, and laws that hold for every sheet."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid.metals import (
    Grams,
    StainLaid,
    grams_laid,
    grams_washed_off,
    metal_share,
    mg_l_in,
    share_washed_off,
)
from farwall.facts.contents import Content
from farwall.units import L_PER_US_GAL

TRADE_L = (100 / 200 + 100 / 300) / 2 * L_PER_US_GAL
"""Concentrate on 100 ft²: a coat at 200 and one at 300 ft²/gal, both cut 1:1."""
TRADE_WATER_L = 12 * L_PER_US_GAL


def one(substance, low, high=None, **more):
    return StainLaid(contents=(Content(substance, low, high),), **more)


@pytest.mark.common_practice
def test_copper_of_the_trade_figure_by_hand():
    """Common practice, no source: 10 % copper chloride, density 1.3, about 1.6 L on 100 ft², so
    about 96 g of copper; 1 % and 30 % of it in 12 gal are about 21 and 640 mg/L. Their own
    rounding: 3 %."""
    stain = one("copper(II) chloride", 10, 10, litres=TRADE_L, density_kg_l=1.3)
    assert grams_laid(stain)["copper"].high_g == pytest.approx(96, rel=0.03)
    water = (TRADE_WATER_L, TRADE_WATER_L)
    for share, told in ((0.01, 21), (0.30, 640)):
        off = grams_laid(stain)["copper"].high_g * share
        assert mg_l_in(Grams(off, off), water)[1] == pytest.approx(told, rel=0.03)


@pytest.mark.common_practice
def test_manganese_of_the_trade_figure_by_hand():
    """Common practice, no source: 15 % manganese chloride, density 1.25: about 130 g, and 1 % of it
    is about 29 mg/L. Their own rounding: 3 %."""
    stain = one("manganese(II) chloride", 15, 15, litres=TRADE_L, density_kg_l=1.25)
    laid = grams_laid(stain)["manganese"].high_g
    assert laid == pytest.approx(130, rel=0.03)
    assert 1000 * laid * 0.01 / TRADE_WATER_L == pytest.approx(29, rel=0.03)


@pytest.mark.parametrize(
    ("substance", "metal", "crystals", "dry"),
    [
        ("copper(II) chloride", "copper", 63.546 / 170.476, 63.546 / 134.446),
        ("manganese(II) chloride", "manganese", 54.938 / 197.898, 54.938 / 125.838),
        ("iron(III) chloride", "iron", 55.845 / 270.285, 55.845 / 162.195),
        ("sodium dichromate", "chromium(VI)", 103.992 / 297.995, 103.992 / 261.965),
        ("potassium dichromate", "chromium(VI)", 103.992 / 294.181, 103.992 / 294.181),
    ],
)
def test_share_of_the_metal_by_hand(substance, metal, crystals, dry):
    """By hand, of the weights in `acid.masses`: the crystals and the dry salt."""
    assert metal_share(substance) == (
        metal,
        pytest.approx(crystals, rel=1e-4),
        pytest.approx(dry, rel=1e-4),
    )


def test_what_holds_no_metal_adds_none():
    assert metal_share("calcium chloride") is None
    assert grams_laid(one("ammonium chloride", 5, 10, litres=2)) == {}


def test_chromium_of_every_kind_counts_chromium_six_too():
    stain = StainLaid(
        1.0,
        (Content("sodium dichromate", 5, 5), Content("chromium(III) chloride", 5, 5)),
        1.0,
    )
    laid = grams_laid(stain)
    three = 50 * 51.996 / 158.346
    assert laid["chromium"].high_g == pytest.approx(laid["chromium(VI)"].high_g + three, rel=1e-4)


def test_a_sheet_without_a_high_end_leaves_it_open():
    laid = grams_laid(one("sodium dichromate", 5, litres=1, density_kg_l=1.3))
    assert laid["chromium"].high_g is None
    assert laid["chromium"].low_g > 20
    off = grams_washed_off([one("sodium dichromate", 5, litres=1, density_kg_l=1.3)])
    assert mg_l_in(off["chromium"], (40, 60))[1] is None


shares = st.floats(0, 1)
percents = st.floats(0, 40)
litres = st.floats(0.01, 100)


@given(litres, litres, percents, shares)
def test_two_lots_are_one_of_both(first, second, percent, share):
    stains = [
        one("iron(III) chloride", percent, percent, litres=each, washed_off=(0, share))
        for each in (first, second, first + second)
    ]
    apart, whole = grams_washed_off(stains[:2])["iron"], grams_washed_off(stains[2:])["iron"]
    assert apart.low_g == pytest.approx(whole.low_g)
    assert apart.high_g == pytest.approx(whole.high_g)


@given(litres, percents, st.floats(1, 500), st.floats(1, 5))
def test_never_more_than_was_laid_and_more_water_is_thinner(stain_l, percent, water_l, more):
    stain = one("copper(II) chloride", 0, percent, litres=stain_l)
    laid, off = grams_laid(stain)["copper"], grams_washed_off([stain])["copper"]
    assert off.high_g <= laid.high_g
    thick, thin = mg_l_in(off, (water_l, water_l)), mg_l_in(off, (water_l * more, water_l * more))
    assert thin[1] <= thick[1]
    assert thick[1] * water_l / 1000 == pytest.approx(off.high_g)


@given(st.floats(0.01, 1), litres, st.floats(1, 40))
def test_a_test_gives_the_share_back(share, water_l, percent):
    """What a known share makes of the water is read back from the water."""
    stain = one("potassium dichromate", percent, percent, litres=3, density_kg_l=1.2)
    laid = grams_laid(stain)["chromium"]
    found = 1000 * share * laid.high_g / water_l
    low, high = share_washed_off(found, water_l, laid)
    assert low == pytest.approx(share)
    assert high == pytest.approx(share)


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: grams_laid(one("other", 1, litres=-1)),
        lambda: grams_washed_off([one("other", 1, litres=1, washed_off=(0.4, 0.2))]),
        lambda: grams_washed_off([one("other", 1, litres=1, washed_off=(0.4, 1.2))]),
        lambda: mg_l_in(Grams(1, 1), (0, 5)),
        lambda: mg_l_in(Grams(1, 1), (6, 5)),
        lambda: share_washed_off(-1, 5, Grams(1, 1)),
    ],
)
def test_what_cannot_be_is_refused(wrong):
    with pytest.raises(ValueError, match=r"nothing|share|test tells"):
        wrong()
