"""Looks gathered into watchings: the end with the last look before it, or the last look alone."""

from farwall.facts.job import Sighting
from farwall.job.looks import paired


def look(after_min, *, ended, room="closet"):
    return Sighting("open time", after_min, ended=ended, room=room)


def test_a_look_before_the_end_is_told_with_it():
    told = list(paired([look(5.0, ended=False), look(8.0, ended=True), look(3.0, ended=False)]))
    assert [(one.after_min, one.ended, since) for one, since in told] == [(8.0, True, 5.0)]


def test_a_look_that_never_saw_the_end_stands_alone():
    told = list(paired([look(5.0, ended=False, room="bath"), look(9.0, ended=False, room="bath")]))
    assert [(one.after_min, one.ended, since) for one, since in told] == [(9.0, False, 0.0)]
