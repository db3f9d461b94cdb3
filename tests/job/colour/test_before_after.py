"""Which photos of a log make a pair."""

import pytest

from farwall.errors import Refused
from farwall.job.colour.before_after import MOST_PAIRS, pairs_of, places_of
from farwall.job.story.noun import Happened


def told(at_min, sha, word="photo", **about):
    return Happened(f"{at_min}-{sha}", word, at_min, {"file": sha, **about})


def test_the_first_and_the_last_of_a_room_and_of_a_sample():
    log = [
        told(30, "c", room="hall"), told(10, "a", room="hall"), told(20, "b", room="hall"),
        told(5, "d", "sample-seen", sample="s1", room="hall"), told(6, "e", sample="s1"),
        told(7, "f", room="den"), told(8, "g"), Happened("n", "note", 9, {"room": "den"}),
    ]  # fmt: skip
    found = pairs_of(log)
    assert [(one.room, one.sample) for one in found] == [("hall", ""), ("", "s1")]
    hall = found[0]
    assert (hall.before.text("file"), hall.after.text("file")) == ("a", "c")


def test_the_same_photo_twice_is_no_pair_and_there_are_not_too_many():
    assert pairs_of([told(1, "a", room="hall"), told(2, "a", room="hall")]) == ()
    many = [told(k, f"{k}", room=f"r{k // 2}") for k in range(40)]
    assert len(pairs_of(many)) == MOST_PAIRS


def test_two_states_are_told_apart_and_two_unsaid_ones_are_not_alike():
    wet, dry = {"state": "clean wet", "room": "hall"}, {"state": "dry", "room": "hall"}
    assert pairs_of([told(1, "a", **wet), told(2, "b", **wet)])[0].alike
    assert not pairs_of([told(1, "a", **wet), told(2, "b", **dry)])[0].alike
    assert not pairs_of([told(1, "a", room="hall"), told(2, "b", room="hall")])[0].alike


def test_a_person_chooses_two_of_a_place():
    log = [told(k, name, room="hall") for k, name in enumerate("abc")] + [told(9, "d", room="den")]
    (pair,) = pairs_of(log, ("1-b", "2-c"))
    assert (pair.room, pair.before.text("file"), pair.after.text("file")) == ("hall", "b", "c")
    (back,) = pairs_of(log, ("2-c", "0-a"))
    assert back.before.text("file") == "c"
    assert [len(one.photos) for one in places_of(log)] == [3, 1]


@pytest.mark.parametrize("chosen", [("0-a", "9-d"), ("0-a", "none"), ("0-a", "0-a")])
def test_two_places_or_one_photo_are_no_choice(chosen):
    log = [told(0, "a", room="hall"), told(1, "b", room="hall"), told(9, "d", room="den")]
    with pytest.raises(Refused, match="not two different photos"):
        pairs_of(log, chosen)
