"""The Bayesian step: against the closed form, against plain counting, and its laws."""

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.learned import Spread, Watched, factor

SPREAD = Spread(floor=0.5, room=0.12, watch=0.1)
TIMES = Spread(floor=0.5, room=0.12, watch=0.1, occasion=0.2)
Z = 1.2815515655446004


def closed(spread, told, room):
    """Posterior mean and sd of floor + room by the conjugate normal: matrices, no grid."""
    rooms = sorted({name for name, _ in told} | {room})
    prior = np.diag([spread.floor**2] + [spread.room**2] * len(rooms))
    if told:
        picks = np.array([[1.0] + [float(name == one) for one in rooms] for name, _ in told])
        y = np.array([math.log(share) for _, share in told])
        noise = np.eye(len(told)) * (spread.watch**2 + spread.occasion**2)
        gain = prior @ picks.T @ np.linalg.inv(picks @ prior @ picks.T + noise)
        mean, cov = gain @ y, prior - gain @ picks @ prior
    else:
        mean, cov = np.zeros(len(rooms) + 1), prior
    pick = np.array([1.0] + [float(one == room) for one in rooms])
    return float(pick @ mean), math.sqrt(float(pick @ cov @ pick) + spread.occasion**2)


@pytest.mark.parametrize("spread", [SPREAD, TIMES])
@pytest.mark.parametrize(
    ("told", "room"),
    [
        ([], "bath"),
        ([("closet", 1.6)], "bath"),
        ([("closet", 1.6)], "closet"),
        ([("closet", 0.5), ("bath", 0.7), ("hall", 0.55)], "bath"),
        ([("closet", 0.5), ("closet", 0.6), ("closet", 0.52)], "bath"),
    ],
)
def test_waits_seen_to_their_end_follow_the_closed_form(told, room, spread):
    mean, sd = closed(spread, told, room)
    found = factor(spread, [Watched(*one) for one in told], room=room)
    assert math.log(found.likely) == pytest.approx(mean, abs=0.01 * SPREAD.floor)
    assert math.log(found.low) == pytest.approx(mean - Z * sd, abs=0.01 * SPREAD.floor)
    assert math.log(found.high) == pytest.approx(mean + Z * sd, abs=0.01 * SPREAD.floor)
    assert found.seen == len(told)


def test_what_is_seen_of_the_very_coat_counts_as_another_of_its_own_spread():
    """One coat's looks differ by less: as if all looks had the smaller spread, to the digit."""
    split = Spread(floor=0.5, room=0.12, watch=0.1, occasion=0.2, within=0.05)
    small = Spread(floor=0.5, room=0.12, watch=0.1, occasion=0.05)
    for ended in (True, False):
        seen = Watched("closet", 1.6, ended)
        assert factor(split, [replace(seen, now=True)], room="bath") == factor(
            small, [seen], room="bath"
        )
        assert factor(split, [seen], room="bath") == factor(TIMES, [seen], room="bath")
    assert factor(TIMES, [replace(seen, now=True)]) == factor(TIMES, [seen])


def test_an_unfinished_wait_follows_plain_counting():
    """Two million floors thrown: of those still damp at 1.5 usual waits in the closet, the bath."""
    dice = np.random.default_rng(3)
    many = 2_000_000
    floor = dice.normal(0, SPREAD.floor, many)
    closet = floor + dice.normal(0, SPREAD.room, many) + dice.normal(0, SPREAD.watch, many)
    bath = (floor + dice.normal(0, SPREAD.room, many))[closet > math.log(1.5)]
    found = factor(SPREAD, [Watched("closet", 1.5, ended=False)], room="bath")
    for ours, share in ((found.low, 0.1), (found.likely, 0.5), (found.high, 0.9)):
        assert math.log(ours) == pytest.approx(np.quantile(bath, share), abs=0.01)


@pytest.mark.parametrize("since", [1.1, 1.45])
def test_an_end_between_two_looks_follows_plain_counting(since):
    """As above, of those that ended between the last look that found it damp and 1.5 waits."""
    dice = np.random.default_rng(5)
    many = 4_000_000
    floor = dice.normal(0, SPREAD.floor, many)
    closet = floor + dice.normal(0, SPREAD.room, many) + dice.normal(0, SPREAD.watch, many)
    between = (closet > math.log(since)) & (closet <= math.log(1.5))
    bath = (floor + dice.normal(0, SPREAD.room, many))[between]
    found = factor(SPREAD, [Watched("closet", 1.5, since=since)], room="bath")
    for ours, share in ((found.low, 0.1), (found.likely, 0.5), (found.high, 0.9)):
        assert math.log(ours) == pytest.approx(np.quantile(bath, share), abs=0.01)


def test_damp_at_three_hours_then_dry_at_four_narrows_to_between():
    usual = 2.0
    damp = Watched("closet", 3 / usual, ended=False)
    found = factor(SPREAD, [Watched("closet", 4 / usual, since=3 / usual)], room="closet")
    assert 2.8 < usual * found.low < usual * found.likely < 4.0
    alone = factor(SPREAD, [damp], room="closet")
    assert usual * alone.low > 2.9
    assert alone.high / alone.low > found.high / found.low


def test_a_surprise_far_out_still_gives_an_answer():
    late = factor(SPREAD, [Watched("a", 60.0, ended=False)], room="b")
    soon = factor(SPREAD, [Watched("a", 1e-4)], room="b")
    assert 2 < late.low < late.likely < late.high < 60
    assert 1e-3 < soon.low < soon.likely < soon.high < 0.5


@given(
    st.lists(st.tuples(st.sampled_from("abc"), st.floats(0.1, 8), st.booleans()), max_size=3),
    st.floats(1.05, 2.0),
    st.sampled_from("abx"),
)
def test_a_longer_wait_never_shortens_the_factor(told, longer, room):
    short = factor(SPREAD, [Watched(*one) for one in told], room=room)
    long = factor(SPREAD, [Watched(r, s * longer, e) for r, s, e in told], room=room)
    # One step of the grid of the answer.
    hair = 1 + 0.02 * (SPREAD.floor + SPREAD.room)
    assert long.low * hair >= short.low
    assert long.likely * hair >= short.likely
    assert long.high * hair >= short.high


def test_what_tells_nothing_is_left_out():
    bare = factor(SPREAD)
    assert factor(SPREAD, [Watched("a", 0.0), Watched("a", math.inf)]) == bare
    assert bare.likely == pytest.approx(1.0, rel=0.01)


def test_an_occasion_keeps_the_same_room_from_being_known_for_sure():
    """By hand: watched a thousand times, the room is known, the next occasion is not."""
    found = factor(TIMES, [Watched("bath", 1.0)] * 1000, room="bath")
    assert math.log(found.high / found.low) == pytest.approx(2 * Z * TIMES.occasion, rel=0.03)


def test_kin_seen_in_a_closet_with_its_own_end_tells_what_the_kind_differs_by():
    """By hand, all but certain: kin in the closet 1, own there 1.5, kin in the bath 2: so 3."""
    sure = Spread(floor=2.0, room=0.02, watch=0.02)
    seen = [
        Watched("closet", 1.0, blur=0.5),
        Watched("closet", 1.5),
        Watched("bath", 2.0, blur=0.5),
    ]
    wide = Spread(floor=2.0, room=1.0, watch=0.02)
    assert factor(wide, seen, room="bath").likely == pytest.approx(3.0, rel=0.1)
    assert factor(sure, seen[1:2], room="bath").likely == pytest.approx(1.5, rel=0.02)


@pytest.mark.parametrize("room", ["closet", "bath"])
def test_kin_follow_the_closed_form(room):
    """Normal against normal with the kind's own part as one more unknown of the floor."""
    told = [("closet", 1.2, 0.0), ("closet", 0.9, 0.4), ("bath", 1.6, 0.4), ("hall", 1.5, 0.4)]
    rooms = sorted({name for name, *_ in told})
    prior = np.diag([SPREAD.floor**2, 0.4**2] + [SPREAD.room**2] * len(rooms))
    picks = np.array(
        [[1.0, float(blur > 0)] + [float(name == x) for x in rooms] for name, _, blur in told]
    )
    y = np.log([share for _, share, _ in told])
    gain = (
        prior
        @ picks.T
        @ np.linalg.inv(picks @ prior @ picks.T + np.eye(len(told)) * SPREAD.watch**2)
    )
    mean, cov = gain @ y, prior - gain @ picks @ prior
    pick = np.array([1.0, 0.0] + [float(x == room) for x in rooms])
    sd = math.sqrt(float(pick @ cov @ pick))
    found = factor(SPREAD, [Watched(n, s, blur=b) for n, s, b in told], room=room)
    assert math.log(found.likely) == pytest.approx(float(pick @ mean), abs=0.01 * SPREAD.floor)
    assert math.log(found.low) == pytest.approx(
        float(pick @ mean) - Z * sd, abs=0.01 * SPREAD.floor
    )
