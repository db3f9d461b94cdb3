"""Sessions in memory: a key opens one, few tries a minute, twelve hours at most."""

import pytest

from farwall.web.session import LASTS_S, MOST_TRIES, Sessions, TooManyTries, WrongKey

KEY = "a key of our own, invented"


class Clock:
    now_s = 0.0

    def __call__(self):
        return self.now_s


@pytest.fixture
def clock():
    return Clock()


def test_the_key_opens_a_session_that_ends_after_its_time(clock):
    sessions = Sessions(clock)
    token = sessions.enter(KEY, KEY, address="a")
    clock.now_s = LASTS_S - 1
    assert sessions.open(token)
    clock.now_s = LASTS_S
    assert not sessions.open(token)


def test_leaving_ends_it_and_no_other(clock):
    sessions = Sessions(clock)
    one, two = (sessions.enter(KEY, KEY, address="a") for _ in range(2))
    sessions.leave(one)
    assert (sessions.open(one), sessions.open(two)) == (False, True)


@pytest.mark.parametrize("shown", ["", "another", KEY[:-1], KEY + "x", "ключ"])
def test_another_key_opens_nothing(clock, shown):
    with pytest.raises(WrongKey):
        Sessions(clock).enter(shown, KEY, address="a")


def test_after_too_many_tries_even_the_key_waits_a_minute_and_only_there(clock):
    sessions = Sessions(clock)
    for _ in range(MOST_TRIES):
        with pytest.raises(WrongKey):
            sessions.enter("no", KEY, address="a")
    with pytest.raises(TooManyTries):
        sessions.enter(KEY, KEY, address="a")
    assert sessions.enter(KEY, KEY, address="b")
    clock.now_s = 61
    assert sessions.enter(KEY, KEY, address="a")


def test_many_addresses_together_are_held_up_too(clock):
    sessions = Sessions(clock)
    for k in range(60):
        with pytest.raises(WrongKey):
            sessions.enter("no", KEY, address=str(k))
    with pytest.raises(TooManyTries):
        sessions.enter(KEY, KEY, address="new")


def test_an_empty_token_is_no_session(clock):
    assert not Sessions(clock).open("")
