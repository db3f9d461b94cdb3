"""Looks into the last field: always early enough to be boxed, never a mix without need."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from farwall.mix.look import (
    LEAST_BOX_L,
    SLACK_MIN,
    STIRRING_MIN,
    BandNeed,
    lasts_until_l,
    late_and_rest,
    looks_into,
    mix_at_look_l,
    sprayed_l,
)
from farwall.mix.thirst import first_belief, inside

CHANCE = 0.004


def evenly(count, litres=0.5, minutes=1.0):
    return [BandNeed(f"b{n}", litres, n * minutes, (n + 1) * minutes) for n in range(count)]


@st.composite
def fields(draw):
    bands, at = [], 0.0
    for number in range(draw(st.integers(2, 25))):
        lasts = draw(st.floats(0.2, 4.0))
        bands.append(BandNeed(f"b{number}", draw(st.floats(0.05, 2.0)), at, at + lasts))
        at += lasts + draw(st.floats(0.0, 1.0))
    return bands


@st.composite
def away(draw):
    begins = draw(st.lists(st.floats(0, 60), max_size=4))
    return [(one, one + draw(st.floats(0.1, 3.0))) for one in begins]


@given(
    bands=fields(), busy=away(), cv=st.floats(3, 30), share=st.floats(0.7, 1.3),
    factor=st.floats(0.6, 1.6),
)  # fmt: skip
def test_the_first_look_is_early_enough_but_for_its_chance(bands, busy, cv, share, factor):
    """By hand: at the point of the belief that the chance leaves, half a litre is left to box."""
    belief = first_belief(cv).after(likely_l=5.0, used_l=5.0 * factor)
    begin_l = share * math.fsum(b.litres for b in bands) * belief.factor
    late, _ = late_and_rest(CHANCE)
    places = looks_into(bands, belief=belief, begin_l=begin_l, chance_late=late, busy=busy)
    assume(places)
    first = places[0]
    thirsty = belief.enough_l(1.0, chance_dry=late)
    assert begin_l - thirsty * sprayed_l(bands, first.ready_min) >= LEAST_BOX_L - 1e-9
    assert first.ready_min >= first.at_min + STIRRING_MIN + SLACK_MIN - 1e-9
    for place in places:
        assert place.ready_min <= bands[-1].end_min + 1e-9
        assert place.done_l + place.to_do_l == pytest.approx(sum(b.litres for b in bands))
        working = (
            place.ready_min
            - place.at_min
            - sum(max(min(b, place.ready_min) - max(a, place.at_min), 0.0) for a, b in merged(busy))
        )
        assert working == pytest.approx(STIRRING_MIN + SLACK_MIN, abs=1e-6)


def merged(spans):
    found = []
    for a, b in sorted(spans):
        if found and a <= found[-1][1]:
            found[-1][1] = max(found[-1][1], b)
        else:
            found.append([a, b])
    return found


@given(bands=fields(), cv=st.floats(3, 30), seen=st.floats(0.6, 1.5), left=st.floats(0.6, 20))
def test_who_goes_on_can_still_box_at_the_next_look(bands, cv, seen, left):
    belief = first_belief(cv)
    begin_l = math.fsum(b.litres for b in bands)
    places = looks_into(bands, belief=belief, begin_l=begin_l, chance_late=0.001)
    assume(len(places) > 1)
    rest = inside(belief, done_l=places[0].done_l, used_l=places[0].done_l * seen)
    mixed = mix_at_look_l(places, 0, left_l=left, rest=rest, chance_dry=CHANCE)
    late, dry = late_and_rest(CHANCE)
    until = places[1].until_ready_l - places[0].done_l
    enough = rest.enough_l(places[0].to_do_l, chance_dry=dry)
    if mixed == 0:
        can_wait = left - rest.enough_l(until, chance_dry=late) >= LEAST_BOX_L
        assert can_wait or left >= enough
        go_on = lasts_until_l(places, 0, rest=rest, chance_dry=CHANCE)
        assert left >= go_on - 1e-9
    else:
        assert left + mixed == pytest.approx(enough)


def test_a_field_that_is_done_before_a_batch_is_boxed_has_no_look():
    belief = first_belief(20)
    assert looks_into(evenly(4), belief=belief, begin_l=9.0, chance_late=0.001) == ()
    assert looks_into(evenly(1), belief=belief, begin_l=9.0, chance_late=0.001) == ()
    assert looks_into((), belief=belief, begin_l=9.0, chance_late=0.001) == ()


def test_by_hand_bands_of_a_minute_and_a_sure_slab():
    """20 bands of 0.5 L, 10 L begun on, no doubt of the slab: a batch takes 4.5 min. The latest
    look that leaves half a litre is where 19 bands' litres are used at the end of it."""
    belief = first_belief(0.0)
    places = looks_into(evenly(20), belief=belief, begin_l=10.0, chance_late=0.001)
    assert (places[0].band, places[0].after, places[0].at_min) == ("b14", "b13", 14.0)
    assert places[0].until_ready_l == pytest.approx(9.25)
    assert places[0].bears(10.0) == pytest.approx(9.5 / 9.25)


def test_the_helper_at_a_tank_makes_the_look_earlier():
    belief = first_belief(10)
    free = looks_into(evenly(24), belief=belief, begin_l=12.0, chance_late=0.001)
    kept = looks_into(
        evenly(24), belief=belief, begin_l=12.0, chance_late=0.001, busy=[(10.0, 14.0)]
    )
    assert kept[0].at_min < free[0].at_min


def test_two_who_spray_at_once_are_counted_by_the_minute():
    both = [BandNeed(f"{n}{who}", 0.5, float(n), n + 1.0) for n in range(20) for who in "ab"]
    places = looks_into(both, belief=first_belief(0.0), begin_l=20.0, chance_late=0.001)
    assert places[0].done_l == pytest.approx(places[0].at_min)
