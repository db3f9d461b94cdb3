"""What rinses teach of a floor, and how many more it takes."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from farwall.acid.rinse_belief import More, Round, chances_of_more, more_rinses
from farwall.acid.rinse_ph import TAP_PH, rinse_ph

RAGS = st.sampled_from(["clean", "grey", "coloured", ""])
PHS = st.lists(st.floats(3, 9), max_size=2).map(tuple)
WATER = st.floats(0.3, 6)
ROUNDS = st.lists(st.builds(Round, WATER, RAGS, PHS, st.booleans()), max_size=4).map(tuple)


FEW = settings(max_examples=25)


def shape(c):
    return np.cumsum(c)


@FEW
@given(ROUNDS, WATER, st.floats(1.01, 4))
def test_more_water_never_needs_more_rinses(room, water, times):
    little = shape(chances_of_more(room, l_per_m2=water))
    much = shape(chances_of_more(room, l_per_m2=water * times))
    assert (much >= little - 1e-9)[:-1].all()


@FEW
@given(ROUNDS, ROUNDS)
def test_a_room_with_the_same_readings_gets_the_same_answer(room, other):
    first = chances_of_more(room, [other], l_per_m2=1.2)
    again = chances_of_more(tuple(room), [tuple(other)], l_per_m2=1.2)
    assert (first == again).all()


@FEW
@given(st.lists(ROUNDS, min_size=2, max_size=3))
def test_the_order_of_other_rooms_says_nothing(rooms):
    one = chances_of_more((), rooms, l_per_m2=1.2)
    assert one == pytest.approx(chances_of_more((), rooms[::-1], l_per_m2=1.2))


@FEW
@given(ROUNDS, ROUNDS, WATER)
def test_chances_are_chances(room, other, water):
    found = chances_of_more(room, [other], l_per_m2=water)
    assert found.sum() == pytest.approx(1)
    assert (found >= 0).all()
    more = more_rinses(found)
    assert 1 <= more.low <= more.likely <= more.high <= 20


@pytest.mark.common_practice
def test_before_anything_is_read_three_to_six_rinses_are_usual():
    """12 gal on 100 ft² in four rinses are 1.22 L/m² each."""
    found = chances_of_more((), l_per_m2=1.22)
    assert found[2:6].sum() > 0.75
    assert more_rinses(found).likely in {3, 4}


@pytest.mark.parametrize("true", [0.1, 3.0])
def test_rooms_of_one_floor_move_the_guess_toward_its_truth(true):
    """A made-up floor that holds `true` L/m² after the vacuum: powder 100, nothing from pores.

    A coloured rag is scrubbed, as is a grey one from the third rinse on: half of it goes.
    """

    def rounds():
        powder, found, scrub = 100.0, [], False
        while not found or found[-1].rag != "clean":
            powder *= (0.5 if scrub else 1.0) * true / (true + 1.22)
            rag = "clean" if powder < 1 else "grey" if powder < 4 else "coloured"
            found.append(Round(1.22, rag, (7.5,), scrub))
            scrub = rag == "coloured" or len(found) >= 3
        return tuple(found)

    takes = len(rounds())
    mean = [
        float((chances_of_more((), [rounds()] * n, l_per_m2=1.22) * np.arange(1, 21)).sum())
        for n in (0, 1, 3, 6)
    ]
    off = [abs(one - takes) for one in mean]
    assert off[1] < off[0]
    assert off[-1] < 0.8 * off[0]
    assert off[-1] < 1


def test_a_sour_first_rinse_tells_of_more_rinses_than_a_neutral_one():
    sour = chances_of_more((Round(1.2, "clean", (4.0,)),), l_per_m2=1.2)
    even = chances_of_more((Round(1.2, "clean", (7.5,)),), l_per_m2=1.2)
    assert sour[0] < even[0]


def test_powder_next_morning_tells_of_pores_that_still_give():
    after = (Round(1.2, "coloured"), Round(1.2, "clean", (7.5,), powder=True))
    without = (after[0], Round(1.2, "clean", (7.5,), powder=False))
    assert (
        shape(chances_of_more(after, l_per_m2=1.2))[0]
        < (shape(chances_of_more(without, l_per_m2=1.2))[0])
    )


def test_the_range_is_the_one_nearest_to_four_in_five():
    """By hand: 2 to 4 hold 0.8; one wider would hold more, one narrower less."""
    chances = np.zeros(20)
    chances[:6] = [0.1, 0.2, 0.4, 0.2, 0.05, 0.05]
    assert more_rinses(chances) == More(2, 3, 4)


@pytest.mark.parametrize(("acid", "ph"), [(0.0, 7.5), (0.5, 6.293), (2.0, 2.699), (10.0, 1.745)])
def test_ph_of_what_is_left(acid, ph):
    """By hand: half of 2 meq/L: 6.35 + log10(0.5 / 0.5708) = 6.292; twice it leaves 2 mmol/L of
    free acid: 2.699; ten times 18 mmol/L: 1.745."""
    assert float(rinse_ph(acid)) == pytest.approx(ph, abs=0.002)


@given(st.floats(0, 20), st.floats(0.001, 5), st.floats(6.5, 9))
def test_more_acid_is_never_a_higher_ph(acid, more, tap):
    assert rinse_ph(acid + more, tap_ph=tap) <= rinse_ph(acid, tap_ph=tap)


def test_no_acid_is_the_tap():
    assert float(rinse_ph(0.0)) == pytest.approx(TAP_PH, abs=0.001)
