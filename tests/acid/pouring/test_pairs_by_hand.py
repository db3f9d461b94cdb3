"""The gate against a table written by hand, and against the groups of the federal appendix."""

from typing import get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.acid.pouring.mixtures import thing
from tests.acid.pouring.pairs_by_hand import ALONE, never_pairs

from farwall.acid.pouring.gate import may_pour
from farwall.acid.pouring.nouns import VESSELS
from farwall.facts.materials import MaterialKind

KINDS = get_args(MaterialKind)


def test_the_table_by_hand_is_long_enough_to_mean_something():
    assert len(never_pairs()) > 300


@pytest.mark.parametrize("vessel", VESSELS)
def test_no_pair_of_the_table_by_hand_is_allowed_in_any_vessel_in_either_order(vessel):
    let_through = [
        (one, other)
        for one, other in never_pairs()
        for tub in ([thing(one), thing(other)], [thing(other), thing(one)])
        if may_pour(tub, vessel).word != "refused"
    ]
    assert let_through == []


@pytest.mark.parametrize("kind", ALONE)
def test_what_the_table_refuses_alone_is_refused_alone(kind):
    assert all(may_pour([thing(kind)], vessel).word == "refused" for vessel in VESSELS)


@given(st.sampled_from(never_pairs()), st.lists(st.sampled_from(KINDS), max_size=4), st.data())
def test_nothing_poured_beside_makes_a_pair_of_the_table_allowed(pair, others, data):
    order = data.draw(st.permutations([*pair, *others]))
    left = data.draw(st.lists(st.booleans(), min_size=len(order), max_size=len(order)))
    vessel = data.draw(st.sampled_from(VESSELS))
    tub = [thing(kind, left=was) for kind, was in zip(order, left, strict=True)]
    assert may_pour(tub, vessel).word == "refused"
