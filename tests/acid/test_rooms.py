"""Rooms joined by doors against analytic solutions, and the laws that hold for every house."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from farwall.acid import room
from farwall.acid.rooms import Rooms, air_of, doorway_m3_min, mean_over, step_of
from farwall.errors import Refused


def house(volumes, out, doors):
    count = len(volumes)
    between = np.zeros((count, count))
    for a, b, flow in doors:
        between[a, b] = between[b, a] = flow
    return Rooms(np.array(volumes, float), np.array(out, float), between)


@st.composite
def houses(draw, most=6):
    count = draw(st.integers(1, most))
    volumes = draw(st.lists(st.floats(5, 200), min_size=count, max_size=count))
    out = draw(st.lists(st.floats(0, 20), min_size=count, max_size=count))
    doors = [
        (a, b, draw(st.floats(0, 30))) for a in range(count) for b in range(a + 1, count)
        if draw(st.booleans())
    ]  # fmt: skip
    return house(volumes, out, doors)


def releases(rooms, seed, steps=20):
    drawn = np.random.default_rng(seed)
    return drawn.random((steps, len(rooms.volume_m3))) * (drawn.random(steps) > 0.5)[:, None]


def test_one_room_is_the_closed_form_within_a_thousandth():
    rooms = house([108.0], [10.0], [])
    held = air_of(rooms, np.full((60, 1), 1000.0), step_min=1.0)[:, 0]
    for minute in (1, 10, 32, 60):
        wanted = room.held_mg_m3(
            release_g_min=1.0, flow_m3_min=10.0, volume_m3=108.0, minutes=minute
        )
        assert held[minute] == pytest.approx(wanted, rel=1e-9)


def test_two_rooms_by_hand_within_a_thousandth():
    """Two equal rooms, q between, o out of each, G in the first.

    By hand: the sum s = C1 + C2 and the difference d = C1 - C2 part: V s' = G - o s and
    V d' = G - (o + 2q) d, so both are exponentials.
    """
    volume, out, between, given_off = 40.0, 2.0, 3.0, 5.0
    held = air_of(
        house([volume, volume], [out, out], [(0, 1, between)]),
        np.tile([given_off, 0.0], (90, 1)), step_min=1.0,
    )  # fmt: skip
    for minute in (1, 7, 30, 90):
        total = given_off / out * -np.expm1(-out * minute / volume)
        apart = given_off / (out + 2 * between) * -np.expm1(-(out + 2 * between) * minute / volume)
        assert held[minute] == pytest.approx([(total + apart) / 2, (total - apart) / 2], rel=1e-9)


@settings(max_examples=40)
@given(houses(), st.integers(0, 99))
def test_any_house_as_a_plain_integration_says(rooms, seed):
    """Within a thousandth of steps a hundred times as fine by another way (Crank-Nicolson)."""
    given_off = releases(rooms, seed)
    held = air_of(rooms, given_off, step_min=3.0)
    leaving = rooms.out_m3_min + rooms.between_m3_min.sum(axis=1)
    change = (rooms.between_m3_min - np.diag(leaving)) / rooms.volume_m3[:, None]
    fine, now = 0.03, np.zeros(len(rooms.volume_m3))
    half = np.eye(len(now)) * 1.0
    ahead = np.linalg.inv(half - change * fine / 2)
    back = half + change * fine / 2
    for release in given_off:
        for _ in range(100):
            now = ahead @ (back @ now + release / rooms.volume_m3 * fine)
    assert held[-1] == pytest.approx(now, rel=1e-3, abs=1e-4 * held.max() + 1e-12)


@given(houses(), st.integers(0, 99))
def test_what_is_in_the_air_is_what_was_given_less_what_left(rooms, seed):
    """With nothing let out, all of it hangs in the house."""
    shut = Rooms(rooms.volume_m3, np.zeros_like(rooms.out_m3_min), rooms.between_m3_min)
    given_off = releases(shut, seed)
    held = air_of(shut, given_off, step_min=2.0)
    assert (held[-1] * shut.volume_m3).sum() == pytest.approx(2.0 * given_off.sum(), rel=1e-9)


@given(houses(), st.integers(0, 99), st.floats(0.1, 20), st.integers(0, 5))
def test_more_air_never_raises_what_any_room_holds(rooms, seed, more, where):
    given_off = releases(rooms, seed)
    out = rooms.out_m3_min.copy()
    out[where % len(out)] += more
    aired = air_of(Rooms(rooms.volume_m3, out, rooms.between_m3_min), given_off, step_min=2.0)
    before = air_of(rooms, given_off, step_min=2.0)
    assert (aired <= before + 1e-9 * (1 + before)).all()


@given(houses(), st.integers(0, 99), st.floats(0.1, 10))
def test_twice_the_release_is_twice_the_air_and_parts_add_up(rooms, seed, times):
    given_off, other = releases(rooms, seed), releases(rooms, seed + 1)
    one, two = (air_of(rooms, each, step_min=2.0) for each in (given_off, other))
    assert air_of(rooms, times * given_off, step_min=2.0) == pytest.approx(times * one, abs=1e-12)
    assert air_of(rooms, given_off + other, step_min=2.0) == pytest.approx(one + two, abs=1e-12)


@given(houses())
def test_two_half_steps_are_one_step(rooms):
    held = np.linspace(1.0, 2.0, len(rooms.volume_m3))
    release = np.ones_like(held)
    half, whole = step_of(rooms, 2.5), step_of(rooms, 5.0)
    assert half.after(half.after(held, release), release) == pytest.approx(
        whole.after(held, release), rel=1e-9
    )


def test_cases_are_carried_side_by_side():
    volume, between = np.array([30.0, 50.0]), np.array([[0.0, 2.0], [2.0, 0.0]])
    out = np.array([[1.0, 1.0], [5.0, 0.0]])
    both = step_of(Rooms(volume, out, np.stack([between, between])), 3.0)
    for n in range(2):
        alone = step_of(Rooms(volume, out[n], between), 3.0)
        assert both.keeps[n] == pytest.approx(alone.keeps)
        assert both.gains[n] == pytest.approx(alone.gains)


def test_a_house_that_cannot_be_is_refused_with_all_its_mistakes():
    with pytest.raises(Refused) as refused:
        Rooms(np.array([0.0, 3.0]), np.array([-1.0, 0.0]), np.array([[0.0, 1.0], [2.0, 0.0]]))
    assert len(refused.value.mistakes) == 3


def test_a_doorway_by_hand():
    """0.6/3·0.8·2·√(9.81·2·0.5/294.15) = 0.0584 m³/s."""
    assert doorway_m3_min(width_m=0.8, warmer_k=0.5) == pytest.approx(0.0584 * 60, rel=2e-3)
    assert doorway_m3_min(width_m=0.8, warmer_k=0.0) == 0


def test_the_mean_over_minutes_by_hand():
    """A ramp of 0 to 4 in steps of a minute: the last two minutes hold 2 to 4, mean 3."""
    assert mean_over(2.0, np.arange(5.0)[:, None], step_min=1.0) == pytest.approx([3.0])
