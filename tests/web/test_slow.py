"""Slow work beside the answers: one piece of a key at a time, its trouble told, nothing held up."""

import asyncio
from concurrent.futures import ThreadPoolExecutor
from threading import Event

import pytest

from farwall.errors import Unanswerable
from farwall.web.slow import Slow


@pytest.fixture
def slow():
    found = Slow(lambda: ThreadPoolExecutor(1))
    yield found
    found.close()


def test_one_piece_of_a_key_runs_at_a_time_and_the_loop_goes_on(slow):
    go, done = Event(), []

    async def day():
        assert slow.begin("a", lambda hands: done.append(hands.submit(go.wait, 30).result()))
        assert not slow.begin("a", lambda _: done.append("never"))
        await asyncio.sleep(0.01)  # the loop is free while it runs
        assert slow.busy("a")
        assert not slow.busy("b")
        go.set()
        await slow.settled()

    asyncio.run(day())
    assert done == [True]
    assert not slow.busy("a")


def test_what_cannot_be_answered_is_told_until_the_next_piece_begins(slow):
    def no(_hands):
        raise Unanswerable("No days.", remedies=["Warm it."])

    async def one(work):
        slow.begin("a", work)
        await slow.settled()

    asyncio.run(one(no))
    assert "No days." in slow.trouble["a"]
    asyncio.run(one(lambda _: None))
    assert slow.trouble == {}


def test_hands_that_broke_are_replaced(slow):
    first = []

    async def one(work):
        slow.begin("a", work)
        await slow.settled()

    def broken(hands):
        from concurrent.futures.process import BrokenProcessPool

        first.append(hands)
        raise BrokenProcessPool("it died")

    asyncio.run(one(broken))
    assert slow.trouble["a"] == "it died"
    asyncio.run(one(first.append))
    assert first[0] is not first[1]
    first[0].shutdown()
