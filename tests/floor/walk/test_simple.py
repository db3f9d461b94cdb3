import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies.walks import walks

from farwall.floor.walk.lay import lay_of
from farwall.floor.walk.nouns import Walk, WalkRoom, WalkWall
from farwall.floor.walk.simple import bowditch, legs_of, misclosure

legs = st.lists(
    st.tuples(st.floats(-50, 50), st.floats(-50, 50)).filter(lambda leg: abs(leg[0]) > 0.01),
    min_size=3,
    max_size=12,
)


@given(legs)
def test_what_is_added_takes_the_misclosure_away(told):
    miss, added = misclosure(told), bowditch(told)
    assert sum(x for x, _ in added) == pytest.approx(-miss.x, abs=1e-9)
    assert sum(y for _, y in added) == pytest.approx(-miss.y, abs=1e-9)


@given(walks)
def test_an_exact_walk_closes(walk):
    told = legs_of(walk, lay_of(walk), 0)
    assert misclosure(told).far < 1e-9


def test_by_hand_the_longer_leg_takes_the_larger_share():
    """By hand: legs of 3, 1 and 4 m, end 0.08 m too far right: 3/8, 1/8 and 4/8 of it go back."""
    added = bowditch([(3.04, 0.0), (1.0, 0.0), (-3.96, 0.0)])
    assert [x for x, _ in added] == pytest.approx([-0.08 * one / 8.0 for one in (3.04, 1.0, 3.96)])


def test_legs_without_length_have_no_shares():
    with pytest.raises(ValueError, match="no shares"):
        bowditch([(0.0, 0.0)])


def test_a_wall_that_was_not_measured_leaves_no_legs():
    room = WalkRoom("Den", tuple(WalkWall(one) for one in (3.0, None, 3.0, 4.0)))
    walk = Walk((room,))
    assert legs_of(walk, lay_of(walk), 0) is None
