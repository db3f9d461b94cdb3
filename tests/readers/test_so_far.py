"""A day so far from a file or from words, every mistake at once."""

import json

import pytest
from jsonschema import Draft202012Validator

from farwall.errors import Refused
from farwall.facts.plain import plain
from farwall.facts.so_far import ClosedRoom, Done, SoFar
from farwall.readers.schemas import so_far_schema
from farwall.readers.so_far import read_so_far_values, so_far_from, with_words

START = "2026-05-14T08:00:00-06:00"
FULL = {
    "version": 1,
    "at_min": 42.5,
    "done": [{"id": "c1.1"}, {"id": "c1.2.1", "start_min": 30, "end_min": 31.5}],
    "in_hand": {"id": "c1.2.2", "start_min": 41},
    "at": [3.5, 1],
    "tank_l": 6,
    "tub_gal": 2,
    "mixed_l": 30,
    "closed": [{"room": "bath", "until_min": 60}, {"room": "hall"}],
}


def said(*words):
    return so_far_from(with_words({}, words, START))


def test_a_file_becomes_the_noun():
    found = so_far_from(FULL)
    assert found.done == (Done("c1.1"), Done("c1.2.1", 30, 31.5))
    assert found.in_hand == Done("c1.2.2", 41)
    assert found.closed == (ClosedRoom("bath", 60), ClosedRoom("hall"))
    assert found.tub_l == pytest.approx(7.570823568)
    assert so_far_from(plain(found, omit_empty=True)) == found


def test_what_the_reader_takes_the_schema_takes():
    Draft202012Validator(so_far_schema()).validate(FULL)


def test_words_are_enough():
    found = said("now=8:42", "done=c1.1.5", "tank_l=6", "tub_l=10", "closed=bath1")
    assert found == SoFar(
        42.0, done_up_to="c1.1.5", tank_l=6, tub_l=10, closed=(ClosedRoom("bath1"),)
    )


def test_a_closed_room_may_have_an_end_by_the_clock_or_in_minutes():
    found = said("at_min=42", "closed=bath:9:40,hall:65,closet")
    assert found.closed == (
        ClosedRoom("bath", 100.0),
        ClosedRoom("hall", 65.0),
        ClosedRoom("closet"),
    )


def test_an_afternoon_hour_may_be_told_by_twelve():
    assert said("now=1:30").at_min == 330
    assert said("now=13:30").at_min == 330
    assert said("now=1:30pm").at_min == 330
    assert said("at_min=1", "closed=bath:1:30 pm").closed[0].until_min == 330


def test_a_later_day_is_told_with_its_date():
    """By hand: the plan starts at 8:00 on 14 May."""
    assert said("now=2026-05-15T07:30").at_min == 23.5 * 60
    assert said("now=2026-05-15T08:30-05:00").at_min == said("now=2026-05-15T07:30").at_min
    assert said("at_min=1", "closed=bath:2026-05-15T09:00").closed[0].until_min == 25 * 60


def test_words_win_over_the_file():
    assert so_far_from(with_words(dict(FULL), ["at_min=50"], START)).at_min == 50


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["nowx=8:10"], "Did you mean `now`?"),
        (["now=7:59"], "before the start"),
        (["now=8:75"], "no time of day"),
        (["now=2026-05-13T09:00"], "before the start"),
        (["now=2026-15-03T09:00"], "no date and time"),
        (["at_min=x"], "not a number"),
        (["at_min=nan"], "out of range"),
        (["at_min=1", "at_min=2"], "twice"),
        (["at_min=1", "now=8:10"], "Keep one"),
        (["done="], "nothing is named"),
        (["closed=bath,"], "nothing is named"),
        (["at=1"], "two numbers"),
        (["bath"], "no key=value"),
        (["at_min=-1"], "at least 0"),
        (["at_min=1", "tank_l=1", "tank_gal=1"], "tank"),
    ],
)
def test_a_word_that_cannot_be_used_is_told(words, says):
    with pytest.raises(Refused, match=says.replace("?", r"\?")):
        said(*words)


def test_all_mistakes_come_at_once():
    bad = {"at_min": -3, "tank": 3, "done": [{"id": ""}], "closed": [{"rom": "x"}]}
    with pytest.raises(Refused) as refusal:
        so_far_from(bad)
    text = str(refusal.value)
    for word in ("`tank`", "`rom`", "at_min", "done[0].id", "`room` is missing"):
        assert word in text
    assert not Draft202012Validator(so_far_schema()).is_valid(bad)


def test_a_later_version_is_refused():
    with pytest.raises(Refused, match="later Farwall"):
        so_far_from({"version": 2, "at_min": 1})


@pytest.mark.parametrize("text", ["[]", "{", '{"at_min": 1, "at_min": 2}', "3"])
def test_a_file_that_is_no_object_is_refused(tmp_path, text):
    path = tmp_path / "day.json"
    path.write_text(text)
    with pytest.raises(Refused):
        so_far_from(read_so_far_values(path))


def test_a_file_is_read(tmp_path):
    path = tmp_path / "day.json"
    path.write_text(json.dumps(FULL))
    assert so_far_from(read_so_far_values(path)) == so_far_from(FULL)


@pytest.mark.parametrize(("us", "told"), [(True, "8:00 am"), (False, "8:00")])
def test_an_hour_before_the_start_is_refused_in_the_manner_of_the_job(us, told):
    with pytest.raises(Refused) as no:
        with_words({}, ["now=7:30am"], "2027-05-04T08:00:00-06:00", us=us)
    assert f"is before the start of the plan, {told}." in str(no.value)


def test_nothing_sprayed_yet_is_told_in_words():
    assert said("now=9:30", "done=none") == SoFar(at_min=90, nothing_done=True)
