"""Files of closed jobs and of lessons: there and back, and every mistake at once."""

import json

import pytest
from hypothesis import given, settings
from tests.strategies.closed import firms

from farwall.bench.learn_firms import closed_jobs, firm
from farwall.errors import Refused
from farwall.facts.plain import plain
from farwall.learn.lessons import lessons_of
from farwall.readers.lessons_json import (
    closed_from,
    closed_text,
    is_lessons,
    lessons_text,
    read_closed,
    read_lessons,
)

JOBS = tuple(one.job for one in closed_jobs(firm(7), count=4))


def test_lessons_come_back_the_same(tmp_path):
    lessons = lessons_of(JOBS)
    (tmp_path / "l.json").write_text(lessons_text(lessons))
    assert read_lessons(tmp_path / "l.json") == lessons
    assert is_lessons(tmp_path / "l.json")


@settings(max_examples=20, deadline=None)
@given(firms(least=1, most=3))
def test_closed_jobs_come_back_the_same_from_plain_values(jobs):
    assert closed_from([plain(one) for one in jobs], "it") == tuple(jobs)


def test_one_a_list_and_one_a_line_are_read_alike(tmp_path):
    (tmp_path / "lines.json").write_text(closed_text(JOBS))
    (tmp_path / "list.json").write_text(json.dumps(plain(JOBS)))
    (tmp_path / "one.json").write_text(json.dumps(plain(JOBS[0]), indent=1))
    assert read_closed(tmp_path / "lines.json") == read_closed(tmp_path / "list.json") == JOBS
    assert read_closed(tmp_path / "one.json") == JOBS[:1]
    assert not is_lessons(tmp_path / "lines.json")


def test_all_mistakes_come_at_once_with_their_places():
    bad = [
        {"version": 1, "id": "a", "closed_on": "yesterday"},
        {"version": 1, "id": "b", "closed_on": "2027-05-14", "sprayed": [
            {"coat": "one", "feild": "x", "field": "x", "area_m2": 0, "used_l": "3"}]},
        {"version": 9, "id": "c", "closed_on": "2027-05-14"},
        "elm",
    ]  # fmt: skip
    with pytest.raises(Refused) as refused:
        closed_from(bad, "jobs")
    told = "\n".join(map(str, refused.value.mistakes))
    assert '[0].closed_on: "yesterday" is no date.' in told
    assert "[1].sprayed[0]: `feild` is not a key here. Did you mean `field`?" in told
    assert "[1].sprayed[0].area_m2" in told
    assert '[1].sprayed[0].used_l: A number is expected here, not "3".' in told
    assert "[2].version: This was made by a later Farwall (version 9)." in told
    assert '[3]: A closed job is an object, not "elm".' in told
    assert refused.value.about == "jobs tells no closed jobs yet: 6 mistakes."


def test_a_broken_line_is_named(tmp_path):
    (tmp_path / "x.json").write_text(closed_text(JOBS[:1]) + '{"version": 1,}\n')
    with pytest.raises(Refused, match="line 2"):
        read_closed(tmp_path / "x.json")


def test_lessons_that_are_none_are_refused(tmp_path):
    (tmp_path / "x.json").write_text('{"version": 1, "lessons": [{"name": "a"}]}')
    with pytest.raises(Refused, match="missing"):
        read_lessons(tmp_path / "x.json")
