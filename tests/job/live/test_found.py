"""What looks found: a wait is over by its slowest room, not by the look that came last."""

from dataclasses import replace

import pytest
from tests.job.live.test_now import PLAN
from tests.job.story.entries import Log

from farwall.job.live.found import found_over
from farwall.job.story import story

CLOCK = "dry to recoat"


def found(*looks, **asked):
    """What the looks at the first coat, done at 65 min, come to: (word, minute, room or empty)."""
    log = Log(PLAN)
    log("coat-done", 65, coat="first")
    for word, minute, room in looks:
        log(word, minute, coat="first", clock="recoat", **({"room": room} if room else {}))
    told = story(PLAN, log.kept)
    assert not told.contradictions
    return found_over(PLAN, told, **{"clock": CLOCK, "coat": "first"} | asked)


@pytest.mark.parametrize(
    ("looks", "over"),
    [
        ((), None),
        ((("dry", 200, "hall"),), True),
        ((("still-damp", 200, "study"), ("dry", 210, "hall")), False),
        ((("still-damp", 200, "study"), ("dry", 210, "hall"), ("dry", 250, "study")), True),
        ((("dry", 200, "study"), ("still-damp", 210, "study")), False),
        ((("still-damp", 200, "study"), ("dry", 260, "")), True),
        ((("still-damp", 200, ""), ("dry", 260, "study")), False),
    ],
)
def test_a_room_last_found_damp_holds_the_whole_floor_back(looks, over):
    assert found(*looks) is over


def test_once_every_room_was_found_dry_an_older_look_at_the_whole_floor_holds_nothing_back():
    rooms = sorted({room for field in PLAN.fields for room in field.rooms})
    looks = [("still-damp", 200, ""), *[("dry", 300 + n, room) for n, room in enumerate(rooms)]]
    assert found(*looks[:-1]) is False
    assert found(*looks) is True


def test_looks_at_another_coat_another_wait_or_in_other_minutes_tell_nothing():
    looks = (("dry", 200, "study"), ("still-damp", 300, "study"))
    assert found(*looks, coat="second") is None
    assert found(*looks, clock="dry to neutralise") is None
    assert found(*looks, since_min=200, until_min=299) is True
    assert found(*looks, since_min=300, until_min=300) is False
    assert found(*looks, coat=None) is False


def test_a_look_at_another_coat_ends_nothing_and_rooms_of_another_coat_are_not_waited_for():
    """The second coat was looked at first; and of a coat of the study alone the study is all."""
    log = Log(PLAN)
    for coat in ("first", "second"):
        log("coat-done", 65, coat=coat)
    log("dry", 200, coat="second", clock="recoat", room="hall")
    log("still-damp", 210, coat="first", clock="recoat")
    log("dry", 220, coat="first", clock="recoat", room="study")
    told = story(PLAN, log.kept)
    assert found_over(PLAN, told, clock=CLOCK, coat="first") is False
    study = tuple(f for f in PLAN.fields if f.coat == "second" or f.rooms == ("study",))
    alone = replace(PLAN, fields=study)
    assert found_over(alone, told, clock=CLOCK, coat="first") is True
