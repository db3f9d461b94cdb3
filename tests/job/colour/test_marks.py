"""Marks: proposed by photos, judged by persons."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.marks.nouns import Mark
from farwall.facts.log_colour import MARKS, UNKNOWN
from farwall.job.colour.mark_remedies import MOST_TOUCHED, REMEDIES, remedy_of
from farwall.job.colour.marks import (
    MISSED_SHARE,
    Photo,
    Proposed,
    blocks_sealing,
    judged_marks,
    still_asked,
    together,
    touched,
)
from farwall.job.story.noun import Happened

FIRST, SECOND = "a" * 64, "b" * 64


def mark(kind="drip", at=(2.0, 1.0), confidence=0.6, size=0.2):
    x, y = at
    half = size / 2
    ring = ((x - half, y - half), (x + half, y - half), (x + half, y + half), (x - half, y + half))
    return Mark(kind, at, ring, confidence, -4.0, size, size, "it is small and round")


def said(name, kind="drip", there=True, at=(2.0, 1.0), minute=0.0, **more):
    about = {"mark": name, "kind": kind, "there": there, "room": "hall", "x_m": at[0],
             "y_m": at[1], **more}  # fmt: skip
    return Happened(f"id-{name}-{minute}", "mark-judged", minute, about)


def mended(name, minute=9.0, **more):
    return Happened(f"id-mend-{minute}", "mark-mended", minute, {"mark": name, **more})


def sees(*_):
    return True


def sees_not(*_):
    return False


def photo(sha, *marks, saw=sees):
    return Photo(sha, marks, saw)


def test_a_mark_that_two_photos_show_is_one_and_surer():
    found = together("hall", [photo(FIRST, mark()), photo(SECOND, mark(at=(2.1, 1.0)))])
    assert len(found) == 1
    assert found[0].mark.confidence == pytest.approx(1 - 0.4 * 0.4)
    assert set(found[0].photos) == {FIRST, SECOND}


def test_another_name_for_it_makes_a_mark_no_surer():
    found = together("hall", [photo(FIRST, mark()), photo(SECOND, mark("ring", confidence=0.7))])
    assert [(one.mark.kind, one.mark.confidence) for one in found] == [("ring", 0.7)]


def test_a_mark_that_the_other_photo_should_show_and_does_not_is_less_sure():
    found = together("hall", [photo(FIRST, mark()), photo(SECOND)])
    assert found[0].mark.confidence == pytest.approx(0.6 * MISSED_SHARE)
    assert found[0].unseen_by == 1


def test_what_one_photo_parts_stays_apart_and_a_crack_is_no_mark():
    """A crack through a light patch is both."""
    found = together("hall", [photo(FIRST, mark("light patch"), mark("crack"), mark("drip"))])
    assert len(found) == 3
    other = together("hall", [photo(FIRST, mark("light patch")), photo(SECOND, mark("crack"))])
    assert {one.mark.kind for one in other} == {"light patch", "crack"}


def test_what_lay_under_the_glare_of_one_photo_is_taken_from_the_other():
    found = together("hall", [photo(FIRST, saw=sees_not), photo(SECOND, mark())])
    assert found[0].mark.confidence == 0.6
    assert found[0].photos == (SECOND,)


def test_names_are_of_the_place_and_no_two_are_alike():
    found = together("hall", [photo(FIRST, mark(), mark(at=(4.0, 3.0)), mark(at=(2.02, 1.4)))])
    names = [one.name for one in found]
    assert len(set(names)) == 3
    assert "hall 2.0,1.0" in names


@given(st.lists(st.tuples(st.floats(0, 6), st.floats(0, 4), st.floats(0.05, 0.95)), max_size=8))
def test_no_photo_makes_a_mark_surer_than_sure_and_names_stay_apart(places):
    marks = [mark(at=(x, y), confidence=c) for x, y, c in places]
    found = together("hall", [photo(FIRST, *marks), photo(SECOND, *marks[::2])])
    assert all(0 <= one.mark.confidence <= 1 for one in found)
    assert len({one.name for one in found}) == len(found)
    assert len(found) <= len(marks)


def test_what_a_person_said_no_to_is_not_proposed_again():
    """By the same photo under any name, by another photo under the same name."""
    no = judged_marks([said("hall 2.0,1.0", there=False, file=FIRST)])
    for sha, kind, asked in ((FIRST, "drip", False), (FIRST, "ring", False),
                             (SECOND, "drip", False), (SECOND, "ring", True)):  # fmt: skip
        one = Proposed("hall 2.1,1.0", "hall", mark(kind, at=(2.1, 1.0)), (sha,))
        assert bool(still_asked([one], no)[0]) is asked, (sha, kind)
    far = Proposed("hall 3.0,1.0", "hall", mark(at=(3.0, 1.0)), (FIRST,))
    assert still_asked([far], no)[0] == (far,)
    other_room = Proposed("hall 2.0,1.0", "bath", mark(), (FIRST,))
    assert still_asked([other_room], no)[0] == (other_room,)


def test_nothing_stands_before_a_person_said_yes():
    one = Proposed("hall 2.0,1.0", "hall", mark(confidence=0.99), (FIRST,))
    asked, answered = still_asked([one], ())
    assert (asked, answered) == ((one,), ())
    yes = judged_marks([said("hall 2.0,1.0")])
    asked, answered = still_asked([one], yes)
    assert (asked, answered) == ((), ((one, yes[0]),))
    assert yes[0].stands


def test_the_last_word_counts_and_a_mended_mark_may_come_back():
    assert judged_marks([said("m"), said("m", there=False, minute=1)])[0].stands is False
    told = [said("m", length_m=0.3, width_m=0.1), mended("m", how="feathered")]
    assert judged_marks(told)[0].mended == "feathered"
    again = judged_marks([*told, said("m", minute=20)])[0]
    assert again.stands
    assert again.length_m == 0.3  # what was told before and not again stays
    assert judged_marks([mended("nobody")]) == ()


def test_one_patch_is_touched_up_and_many_ask_for_the_whole_field():
    """20 m² of field: 5 % is 1 m²; an ellipse of 0.8 by 0.4 is 0.251 m², touched twice that."""
    patch = {"length_m": 0.8, "width_m": 0.4}
    field = [("a.1", ("hall",), 20.0)]
    one = touched(judged_marks([said("m1", "light patch", **patch)]), field)[0]
    assert one.share == pytest.approx(2 * 0.7854 * 0.8 * 0.4 / 20.0, rel=1e-4)
    assert not one.whole_field
    two = [said("m1", "light patch", **patch), said("m2", "light patch", at=(4, 1), **patch)]
    both = touched(judged_marks(two), field)[0]
    assert both.share > MOST_TOUCHED
    assert both.whole_field
    gone = touched(judged_marks([*two, mended("m1"), mended("m2")]), field)[0]
    assert gone.share == both.share  # touched is touched


def test_a_lap_line_asks_for_the_whole_field_until_it_is_mended():
    line = [said("m", "lap line", length_m=3.0, width_m=0.05)]
    found = touched(judged_marks(line), [("a.1", ("hall",), 20.0), ("a.2", ("bath",), 5.0)])
    assert [(one.field, one.whole, one.whole_field) for one in found] == [("a.1", ("m",), True)]
    assert not touched(judged_marks([*line, mended("m")]), [("a.1", ("hall",), 20.0)])[
        0
    ].whole_field


@pytest.mark.common_practice
@pytest.mark.parametrize("kind", [*MARKS, UNKNOWN])
def test_every_mark_has_a_remedy_in_words(kind):
    assert REMEDIES[kind].says
    assert not (REMEDIES[kind].touch_up and REMEDIES[kind].whole_field)


@pytest.mark.common_practice
def test_the_remedies_of_the_trade():
    assert remedy_of("lap line").says[0] == "None truly."
    assert "same day" in " ".join(remedy_of("missed crescent").says)
    assert "Do not seal" in remedy_of("something new").says[0]
    unnamed = judged_marks([said("m", UNKNOWN)])
    assert blocks_sealing(unnamed) == unnamed
    assert blocks_sealing(judged_marks([said("m")])) == ()


def test_cracks_and_joints_are_not_asked_of():
    assert not Proposed("n", "hall", mark("crack"), (FIRST,)).asks
    assert Proposed("n", "hall", mark("lap line"), (FIRST,)).asks
