"""The three cuts of a ladder, and what is measured into the jug for one of them."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.facts.cut import parse_cut
from farwall.job.colour.sample_day.cuts import ladder_cuts, parts_of
from farwall.job.colour.sample_day.jug import MARK_ML, MORE, STAYS_ML, jug_mix

CUTS = st.builds(
    lambda stain, water: f"{stain}:{water}",
    st.sampled_from((1, 2, 3)),
    st.sampled_from((0, 1, 2, 3, 4, 5, 6, 1.5, 0.5)),
)


@pytest.mark.parametrize(
    ("planned", "three"),
    [
        ("1:1", ("1:3", "1:1", "neat")),  # the ladder of the trade, common practice
        ("1:2", ("1:5", "1:2", "2:1")),
        ("1:4", ("1:9", "1:4", "2:3")),
        ("neat", ("1:3", "1:1", "neat")),
        ("2:1", ("1:5", "1:2", "2:1")),
    ],
)
def test_the_cuts_around_a_planned_one(planned, three):
    assert tuple(cut for _, cut in ladder_cuts(planned)) == three


@given(CUTS)
def test_each_cut_is_stronger_than_the_one_before_and_the_planned_one_is_among_them(cut):
    rungs = ladder_cuts(cut)
    shares = [parse_cut(one).stain_share for _, one in rungs]
    assert shares == sorted(set(shares))
    assert [one for rung, one in rungs if rung == "planned"] == [cut]
    assert len(rungs) == 3


@given(CUTS, st.floats(0.1, 2), st.floats(2, 20))
def test_the_jug_holds_the_cut_to_the_mark_and_enough_of_it(cut, area_m2, m2_per_l):
    mix = jug_mix(cut, area_m2=area_m2, m2_per_l=m2_per_l)
    stain, water = parts_of(parse_cut(cut))
    assert mix.stain_ml % MARK_ML == mix.water_ml % MARK_ML == 0
    both_ml = mix.stain_ml + mix.water_ml
    assert Fraction(mix.stain_ml, both_ml) == Fraction(stain, stain + water)
    wanted_ml = area_m2 / m2_per_l * 1000 * MORE + STAYS_ML
    assert wanted_ml - 1e-6 <= both_ml < wanted_ml + (stain + water) * MARK_ML + 1e-6


def test_a_square_by_hand():
    # 0.72 m² at 4.7 m²/L are 153 mL; a quarter more is 191, with 100 in the hose 291: three of
    # four parts at 73, so 80 to the mark
    mix = jug_mix("1:3", area_m2=0.72, m2_per_l=4.7)
    assert (mix.stain_ml, mix.water_ml) == (80, 240)


def test_what_is_no_cut_is_refused():
    with pytest.raises(Refused):
        jug_mix("water", area_m2=1, m2_per_l=5)
