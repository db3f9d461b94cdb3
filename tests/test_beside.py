"""Work gathered and begun together: done once, each asks for its own."""

from __future__ import annotations

from farwall.beside import AtLeisure, Gathered, at_once


def test_gathered_work_is_begun_in_one_go_and_each_gets_its_own():
    begun, done = [], []

    def beside(work):
        begun.append(work)
        return work

    def say(word):
        done.append(word)
        return word

    gathered = Gathered(beside)
    first, second = (gathered.later(lambda word=word: say(word)) for word in ("one", "two"))
    gathered.begin()
    after = gathered.later(lambda: say("three"))
    assert len(begun) == 1
    assert isinstance(begun[0], AtLeisure)
    assert (second(), first(), second()) == ("two", "one", "two")
    assert done == ["one", "two"]
    assert after() == "three"  # nobody began it: done when asked for
    gathered.begin()
    assert len(begun) == 2


def test_nothing_is_begun_where_nothing_was_gathered():
    Gathered(lambda work: 1 / 0).begin()
    gathered = Gathered(at_once)
    assert gathered.later(lambda: 7)() == 7
