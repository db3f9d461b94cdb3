"""When the tank is filled: by hand, against every choice, and where edges stay young."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.spray.hand_floors import LARGE_HALL, ROUND, hall
from tests.spray.sweeping import swept

from farwall.errors import Unanswerable
from farwall.spray.refills import DIP, TANK_RESERVE, Flow, age_with_min, refill_stops

L_PER_M2 = 0.5


def flow(found, *, helper=False, tools=ROUND):
    return Flow("one", L_PER_M2, helper, tools, found.wetted_m2 * L_PER_M2)


def tank(litres):
    return replace(ROUND, tank_l=litres)


def stops(place, *, tank_l=40.0, holds_l=0.0, helper=False):
    tools = tank(tank_l)
    found = swept(place, tools=tools)
    return refill_stops(found, holds_l, flow(found, helper=helper, tools=tools))


def test_a_full_tank_needs_no_filling():
    assert stops(hall(8, 2), holds_l=40.0) == frozenset()


def test_an_empty_tank_is_filled_before_the_first_band():
    """A filling there costs no live edge."""
    assert stops(hall(8, 2)) == {0}


def test_one_refill_inside_by_hand():
    """By hand: 8 bands of 1 L and a tank of 6 L that gives 5.1: filled at the door and once
    more, after three to five bands."""
    inside = stops(hall(8, 2), tank_l=6.0) - {0}
    assert len(inside) == 1
    assert inside <= {3, 4, 5}


def test_a_part_used_tank_is_topped_up_before_the_first_band_or_sprayed_out_by_hand():
    """By hand: 5.5 L left of which 0.9 are reserve serve four bands; four more need one filling."""
    found = stops(hall(8, 2), tank_l=6.0, holds_l=5.5)
    assert len(found - {0}) == 1
    assert stops(hall(4, 2), tank_l=6.0, holds_l=5.5) == frozenset()


def test_a_band_that_takes_more_than_a_tank_is_refused_with_the_figures():
    """By hand: a band of 1 L against a tank of 1 L of which 0.85 are used."""
    with pytest.raises(Unanswerable, match=r"0\.3 gal \(1\.0 L\).*\(0\.[89] L\)") as no:
        stops(hall(8, 2), tank_l=1.0)
    assert no.value.remedies


@pytest.mark.parametrize("bands_a_tank", [1, 2, 3])
def test_many_small_tanks_are_many_fillings_and_no_refusal_by_hand(bands_a_tank):
    """By hand: 12 bands of 1 L and a tank that gives 1.4, 2.4 or 3.4 L: 12, 6 or 4 fillings."""
    litres = (bands_a_tank + 0.4) / (1 - TANK_RESERVE)
    assert len(stops(hall(12, 2), tank_l=litres)) == 12 / bands_a_tank


def test_bands_of_a_large_hall_are_parted_to_what_an_ordinary_tank_covers():
    tools = replace(ROUND, tank_l=7.57)
    found = swept(LARGE_HALL, tools=tools, l_per_m2=0.2)
    thirst = Flow("one", 0.2, False, tools, found.wetted_m2 * 0.2)
    needs = [each.wetted_m2 * 0.2 for each in found.passes]
    places = refill_stops(found, 0.0, thirst)
    assert lasts(needs, 0.0, 7.57 * (1 - TANK_RESERVE + DIP), places)


def lasts(needs, first, usable, places):
    """Whether no tank runs into its reserve when it is filled before these bands."""
    left = first
    for index, need in enumerate(needs):
        if index in places:
            left = usable
        left -= need
        if left < -1e-6:
            return False
    return True


HALLS = {length: swept(hall(length, 2)) for length in (3, 5, 8)}


@settings(max_examples=60)
@given(st.sampled_from(sorted(HALLS)), st.floats(1.3, 9.0), st.floats(0.0, 1.0), st.booleans())
def test_no_choice_keeps_the_edge_younger_and_none_as_young_has_fewer_fillings(
    length, tank_l, part, helper
):
    """Against all choices of a real sweep, a tank filled before the first pass or not."""
    found, tools = HALLS[length], tank(tank_l)
    needs = [each.wetted_m2 * L_PER_M2 for each in found.passes]
    usable, first = tank_l * (1 - TANK_RESERVE), (part - TANK_RESERVE) * tank_l
    if max(needs) > usable:
        return
    thirst = flow(found, helper=helper, tools=tools)
    places = refill_stops(found, part * tank_l, thirst)
    dip = DIP * tank_l
    assert lasts(needs, first + dip, usable + dip, places)
    age = age_with_min(found, places, thirst)
    for count in range(len(needs) + 1):
        for other in combinations(range(len(needs)), count):
            if lasts(needs, first, usable, other):
                others = age_with_min(found, other, thirst)
                assert age <= others + 0.011
                assert others > age or count >= len(places)


@settings(max_examples=40)
@given(st.sampled_from(sorted(HALLS)), st.floats(1.3, 6.0), st.booleans())
def test_no_other_places_for_as_many_fillings_keep_the_edge_younger(length, tank_l, helper):
    found, tools = HALLS[length], tank(tank_l)
    needs = [each.wetted_m2 * L_PER_M2 for each in found.passes]
    usable = tank_l * (1 - TANK_RESERVE)
    if max(needs) > usable:
        return
    thirst = flow(found, helper=helper, tools=tools)
    inside = refill_stops(found, 0.0, thirst) - {0}
    age = age_with_min(found, inside, thirst)
    for other in combinations(range(1, len(needs)), len(inside)):
        if lasts(needs, 0.0, usable, {0, *other}):
            assert age <= age_with_min(found, other, thirst) + 0.011


@settings(max_examples=40)
@given(st.sampled_from(sorted(HALLS)), st.floats(1.3, 9.0), st.floats(1.0, 3.0))
def test_a_larger_tank_never_gives_more_fillings_in_the_same_sweep(length, tank_l, larger):
    found = HALLS[length]

    def fillings(litres):
        return len(refill_stops(found, 0.0, flow(found, tools=tank(litres))))

    if max(each.wetted_m2 for each in found.passes) * L_PER_M2 <= tank_l * (1 - TANK_RESERVE):
        assert fillings(tank_l * larger) <= fillings(tank_l)


def test_the_pause_of_each_filling_ages_the_edge_by_hand():
    """By hand: 2 m² at 3 m² a minute, and back along the front, √(1.49² + 1²) = 1.8 m: 0.697 min.

    The last two bands are a few hundredths deeper, for the lattice is. One swap adds 0.5 min;
    alone it is 3 min and 4 m of walk out and in again.
    """
    found, tools = HALLS[8], tank(6.0)
    plain = 2 / 3 + 1.8 / 60
    unbroken = age_with_min(found, (), flow(found, tools=tools))
    helped = age_with_min(found, (4,), flow(found, helper=True, tools=tools))
    alone = age_with_min(found, (4,), flow(found, tools=tools))
    assert unbroken == pytest.approx(plain, abs=0.03)
    assert helped == pytest.approx(plain + 0.5, abs=0.005)
    assert alone == pytest.approx(plain + 3.0 + 2 * 4 / 60, abs=0.005)


def test_a_helper_who_takes_longer_than_filling_is_left_at_the_tub():
    slow = replace(tank(6.0), swap_min=4.0)
    found = HALLS[8]
    with_helper = flow(found, helper=True, tools=slow)
    alone = flow(found, tools=slow)
    for stops in ((3,), (4,), (2, 5)):
        assert age_with_min(found, stops, with_helper) == age_with_min(found, stops, alone)


@settings(max_examples=60)
@given(st.sampled_from(sorted(HALLS)), st.floats(1.3, 6.0), st.floats(0.3, 6.0))
def test_a_helper_never_makes_the_edge_older(length, tank_l, swap_min):
    found, tools = HALLS[length], replace(tank(tank_l), swap_min=swap_min)
    if max(each.wetted_m2 for each in found.passes) * L_PER_M2 > tank_l * (1 - TANK_RESERVE):
        return
    ages = []
    for helper in (True, False):
        thirst = flow(found, helper=helper, tools=tools)
        ages.append(age_with_min(found, refill_stops(found, 0.0, thirst), thirst))
    assert ages[0] <= ages[1] + 0.011


def test_a_part_used_tank_is_changed_at_the_stop_line_when_that_saves_a_filling_inside_by_hand():
    """By hand: two fields of 3 L each and a tank that gives 5.1: what is left of it after the first
    serves two bands of the second. Changed in the doorway it serves all three."""
    found, tools = HALLS[3], tank(6.0)
    thirst = Flow("one", 1.0 / 2, True, tools, 6.0)
    left = 6.0 - 3.0
    assert refill_stops(found, left, thirst) == {0}


def test_the_whole_coat_is_looked_at_by_hand():
    """By hand: fields of 8 L and of 3 L, a tank that gives 5.1 L. The first field needs one filling
    inside, before its 4th, 5th or 6th band, all alike to its edges. Before the 4th, 0.1 L are left
    at the end; before the 5th 1.1, before the 6th 2.1: never enough for 3 L. With a tank that
    gives 6.4 L the first filling inside may fall before the 3rd to the 7th band, and 0.4 to 4.4
    L are left: only after the 6th or 7th does the second field need none."""
    first, second = HALLS[8], HALLS[3]
    tools = tank(6.4 / (1 - TANK_RESERVE))
    thirst = Flow("one", L_PER_M2, True, tools, 11.0, (second,))
    inside = refill_stops(first, 0.0, thirst) - {0}
    assert inside <= {5, 6}
    assert len(inside) == 1


def test_a_filling_that_only_spares_the_reserve_a_dip_is_left_out():
    """By hand: three bands of 1 L, a tank that gives 0.02 L less before its reserve, then 0.2 L."""
    found = HALLS[3]
    litres = sum(each.wetted_m2 * L_PER_M2 for each in found.passes)
    nearly, short = (tank((litres - less) / (1 - TANK_RESERVE)) for less in (0.02, 0.2))
    assert refill_stops(found, 0.0, flow(found, tools=nearly)) == {0}
    assert len(refill_stops(found, 0.0, flow(found, tools=short))) == 2
