"""What a van takes on."""

from hypothesis import given
from hypothesis import strategies as st

from farwall.days.columns import Column
from farwall.days.nouns import DayCrew
from farwall.days.vans import Van, Way, bits, guards


def way(*, at=(), fresh=(), sprays=()):
    return Way.of(Column(0, 2, 0, (0, 0), frozenset(at), frozenset(fresh), frozenset(sprays), 1.0))


def test_one_place_in_a_half_day():
    van = Van(DayCrew("a"))
    van.load(way(at={1, 2}))
    assert not van.takes(way(at={2}))
    assert van.takes(way(at={3}))


def test_one_floor_is_sprayed_in_a_van_day():
    van = Van(DayCrew("a", people=4))
    van.load(way(at={1}, sprays={5}))
    assert not van.takes(way(at={2}, sprays={5}))


def test_two_people_guard_one_fresh_floor_and_three_guard_two():
    for people in (2, 3, 4):
        van = Van(DayCrew("a", people))
        for n in range(guards(van.crew)):
            one = way(at={n}, fresh={7})
            assert van.takes(one)
            van.load(one)
        assert not van.takes(way(at={90}, fresh={7}))
        assert van.takes(way(at={90}, fresh={8}))


@given(st.lists(st.sets(st.integers(0, 9)), max_size=6), st.integers(2, 5))
def test_levels_count_the_fresh_floors_of_each_half_day(floors, people):
    van = Van(DayCrew("a", people))
    for fresh in floors:
        van.load(way(fresh=fresh))
    for place in range(10):
        held = sum(place in fresh for fresh in floors)
        told = sum(level >> place & 1 for level in van.fresh)
        assert told == min(held, people - 1)


def test_bits_are_places():
    assert bits([0, 3]) == 9
