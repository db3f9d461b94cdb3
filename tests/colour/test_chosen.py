"""The choice among outlooks, whatever they are: the bound is kept, one colour or two."""

from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.next_coat import CLOSED, WORTH, Outlook, Way, chosen_of

CHANCE = st.floats(0, 1)
LAB = (40.0, 5.0, 9.0)


@st.composite
def outlooks(draw, stains):
    gap = draw(st.floats(-6, 20))
    way = Way(draw(st.integers(0, stains - 1)), draw(st.floats(0, 15)), draw(st.floats(0.05, 0.3)))
    return Outlook(way, draw(CHANCE), gap, gap - 1, gap + 1, draw(st.floats(0, 20)), LAB)


def stopped(gap, away):
    return Outlook(None, 0.0, gap, gap - 1, gap + 1, away, LAB)


CASES = st.tuples(
    st.integers(1, 2).flatmap(lambda stains: st.lists(outlooks(stains), min_size=1, max_size=8)),
    st.floats(-6, 20), st.floats(0, 20), CHANCE,
)  # fmt: skip


@given(CASES)
def test_no_way_above_the_bound_is_ever_laid(case):
    ways, gap, away, bound = case
    found = chosen_of(stopped(gap, away), tuple(ways), most_too_dark=bound)
    assert (found.chosen.way is None) == (found.verdict == "stop")
    if found.verdict == "lay":
        assert found.chosen.too_dark <= bound
        assert found.chosen in ways


@given(CASES, CHANCE)
def test_a_wider_bound_never_turns_a_coat_into_a_stop(case, other):
    ways, gap, away, bound = case
    low, high = sorted((bound, other))
    strict, wide = (
        chosen_of(stopped(gap, away), tuple(ways), most_too_dark=one) for one in (low, high)
    )
    if strict.verdict == "lay" and len({one.way.stain for one in ways}) > 1:
        assert wide.verdict == "lay"


@given(CASES)
def test_of_one_colour_nothing_weaker_and_safe_closes_the_gap(case):
    ways, gap, away, bound = case
    ways = tuple(one for one in ways if one.way.stain == 0)
    if not ways:
        return
    found = chosen_of(stopped(gap, away), ways, most_too_dark=bound)
    if found.verdict == "lay":
        laid = found.chosen.way.laid.l_per_m2
        closing = [one for one in ways if one.too_dark <= bound and one.gap <= CLOSED]
        assert all(one.way.laid.l_per_m2 >= laid for one in closing)
        assert closing or gap - found.chosen.gap >= WORTH
