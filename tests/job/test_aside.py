"""A house set aside and brought back, as entries of its log."""

from __future__ import annotations

from itertools import count

import pytest

from farwall.facts.log import Entry, Kept
from farwall.job.aside import (
    Hand,
    bring_back,
    of_the_floor,
    over_by,
    set_aside,
    standing_aside,
)
from farwall.job.story.noun import Story
from farwall.job.story.order import in_order
from farwall.readers.log_json import entries_from, entry_to_dict

AT = "2026-06-08T08:00:00+00:00"


@pytest.fixture
def hand():
    numbers = count(1)
    return Hand("Ann", "desk", AT, lambda: f"id-{next(numbers)}")


def kept(*entries):
    return [Kept(one, place, AT) for place, one in enumerate(entries, 1)]


def test_it_is_set_aside_once_and_brought_back_once(hand):
    log = set_aside("elm", [], hand, why="fell through")
    (one,) = log
    assert (one.word, one.who, one.about) == ("set-aside", "Ann", {"why": "fell through"})
    assert standing_aside(kept(*log)) == (one.id,)
    assert set_aside("elm", kept(*log), hand) == ()
    back = bring_back("elm", kept(*log), hand)
    assert [(each.word, each.about) for each in back] == [("struck", {"entry": one.id})]
    log += back
    assert standing_aside(kept(*log)) == ()
    assert bring_back("elm", kept(*log), hand) == ()
    again = set_aside("elm", kept(*log), hand)
    assert standing_aside(kept(*log, *again)) == (again[0].id,)


def test_set_aside_on_two_devices_one_strike_each_brings_it_back(hand):
    log = [Entry(name, "elm", "set-aside", AT, device=name) for name in ("red", "blue")]
    back = bring_back("elm", kept(*log), hand)
    assert {one.about["entry"] for one in back} == {"red", "blue"}
    assert [one.number for one in back] == [1, 2]
    assert standing_aside(kept(*log, *back)) == ()


def test_what_is_told_of_the_floor_is_all_but_setting_aside_and_its_strikes(hand):
    note = Entry("note", "elm", "note", AT, about={"text": "x"})
    slip = Entry("slip", "elm", "struck", AT, about={"entry": "note"})
    log = [note, *set_aside("elm", [], hand)]
    log += [*bring_back("elm", kept(*log), hand), slip]
    log.append(Entry("again", "elm", "struck", AT, about={"entry": log[2].id}))
    assert [one.entry for one in of_the_floor(kept(*log))] == [note, slip]
    assert of_the_floor(kept(note)) == tuple(kept(note))


def test_a_house_set_aside_or_handed_over_is_over_and_aside_is_told_first(hand):
    over = Entry("over", "elm", "handed-over", AT)
    aside = set_aside("elm", [], hand)
    for log, word in (((), ""), ((over,), "handed-over"), ((*aside, over), "set-aside")):
        told = Story(AT, in_order(of_the_floor(kept(*log)), starts_at=AT).happened)
        assert over_by(kept(*log), told) == word


def test_its_entries_are_such_as_the_log_takes(hand):
    log = set_aside("elm", [], hand, why="entered twice")
    log += bring_back("elm", kept(*log), hand)
    assert tuple(entries_from([entry_to_dict(one) for one in log])) == log
