"""What closed jobs teach, made beside: the learner's lessons, and their ranges job by job."""

import json

import pytest

from farwall.bench.learn_firms import closed_jobs, firm
from farwall.facts.plain import plain
from farwall.learn.forgetting import Forgetting
from farwall.learn.lessons import lessons_of, switched_off
from farwall.web.teaching import MOST_STEPS, counts_of, taught

JOBS = [one.job for one in closed_jobs(firm(3), count=6)]
CLOSED = json.loads(json.dumps([plain(one, omit_empty=True) for one in JOBS]))


def test_the_lessons_are_those_of_the_learner():
    assert taught(CLOSED, {})["lessons"] == plain(lessons_of(JOBS))


def test_forgetting_leaving_out_and_switching_off_are_the_learners_own():
    how = {"forget_jobs": 4.0, "without": [JOBS[1].id], "off": ["spray rate"]}
    due = lessons_of(
        JOBS, forgetting=Forgetting(4.0, None), without=[JOBS[1].id], off=["spray rate"]
    )
    assert taught(CLOSED, how)["lessons"] == plain(due)


def test_names_and_jobs_that_are_no_more_are_passed_over():
    how = {"without": ["gone"], "off": ["no such lesson"]}
    assert taught(CLOSED, how)["lessons"] == plain(lessons_of(JOBS))
    assert switched_off((), ()) == ()


def test_the_last_step_is_what_all_jobs_teach_and_the_first_what_one_did():
    steps = taught(CLOSED, {})["steps"]
    assert [one["jobs"] for one in steps] == counts_of(6)
    for one in lessons_of(JOBS).lessons:
        assert steps[-1]["ranges"][one.name][:3] == [one.low, one.likely, one.high]
    first = lessons_of([min(JOBS, key=lambda one: (one.closed_on, one.id))])
    assert steps[0]["ranges"].keys() == {one.name for one in first.lessons}


def test_the_quantity_itself_is_known_better_after_more_jobs():
    steps = [one["ranges"]["spray rate"] for one in taught(CLOSED, {})["steps"]]
    widths = [high / low for *_, low, high in steps]
    assert widths[-1] < widths[0]


@pytest.mark.parametrize("jobs", [0, 1, 2, 7, 50, 1000])
def test_steps_rise_end_with_all_and_are_few(jobs):
    found = counts_of(jobs)
    assert found == sorted(set(found))
    assert len(found) <= MOST_STEPS
    assert found[-1:] == ([jobs] if jobs else [])


def test_no_job_teaches_nothing():
    found = taught([], {})
    assert found["steps"] == []
    assert found["lessons"]["jobs"] == 0
