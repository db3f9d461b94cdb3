"""Laws of lessons: order, odd jobs, what is left out, what is switched off, forgetting."""

import math
from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.strategies.closed import closed_jobs, firms

from farwall.bench.learn_firms import closed_jobs as drawn_jobs
from farwall.bench.learn_firms import firm
from farwall.errors import Refused
from farwall.facts.closed import ClosedJob, Sprayed, TaskHours
from farwall.learn.forgetting import Forgetting
from farwall.learn.lessons import lessons_of

ODD_MOVES = {0: 0.36, 1: 0.16, 5: 0.1, 10: 0.06, 20: 0.045}
"""So far, as a logarithm, may one job that is five times off in litres and ten times in hours move
a likely value after so many ordinary ones; docs/learning.md states it."""


def jobs_of(seed, count):
    return [one.job for one in drawn_jobs(firm(seed), count=count)]


def odd(job, *, by=5.0, hours_by=10.0):
    return replace(
        job,
        sprayed=tuple(replace(one, used_l=one.used_l * by) for one in job.sprayed),
        hours=tuple(replace(one, hours=one.hours * hours_by) for one in job.hours),
    )


@settings(max_examples=25, deadline=None)
@given(firms(), st.randoms(use_true_random=False))
def test_the_order_in_which_jobs_are_told_changes_nothing(jobs, random):
    mixed = list(jobs)
    random.shuffle(mixed)
    assert lessons_of(mixed) == lessons_of(jobs)


def ordinary(random, number, *, by=1.0, hours_by=1.0):
    """A job about common practice: litres and hours within a third of it, fields within a tenth."""
    thirst, pace = (math.exp(random.uniform(-0.3, 0.3)) for _ in range(2))
    finish, drop_s = random.choice(["hard trowel", "trowel", "float"]), random.uniform(3, 60)
    fields = []
    for n in range(4):
        area_m2 = random.uniform(5, 60)
        used_l = area_m2 / 4.91 * thirst * by * math.exp(random.uniform(-0.1, 0.1))
        fields.append(
            Sprayed("first", f"f{n}", area_m2, used_l, area_m2 / 4.91, finish=finish, drop_s=drop_s)
        )
    return ClosedJob(
        version=1,
        id=f"j{number}",
        closed_on=(date(2027, 1, 4) + timedelta(days=9 * number)).isoformat(),
        sprayed=tuple(fields),
        hours=(TaskHours("rinse", 8.4 * pace * hours_by, 139.4),),
    )


@settings(max_examples=60, deadline=None)
@given(
    st.randoms(use_true_random=False),
    st.sampled_from(sorted(ODD_MOVES)),
    st.sampled_from([(5.0, 10.0), (0.2, 0.1)]),
)
def test_one_odd_job_moves_no_lesson_far(random, count, off):
    jobs = [ordinary(random, n) for n in range(count)]
    silent = ClosedJob(1, "odd", "2030-01-01")
    odd_one = ordinary(random, count, by=off[0], hours_by=off[1])
    odd_one = replace(odd_one, id="odd", closed_on="2030-01-01")
    before = {one.name: one for one in lessons_of([*jobs, silent]).lessons}
    for lesson in lessons_of([*jobs, odd_one]).lessons:
        if lesson.unit.startswith("%"):
            continue  # a rate is bounded by its count of jobs
        was = before.get(lesson.name)
        if was is not None or count == 0:
            base = lesson.practice if was is None else was.likely
            assert abs(math.log(lesson.likely / base)) <= ODD_MOVES[count], lesson.name


def test_an_honest_job_does_move_what_it_tells():
    jobs = jobs_of(5, 10)
    more = [replace(odd(one, by=1 / 1.25, hours_by=1.25), id=f"{one.id}-x") for one in jobs]
    before, after = lessons_of(jobs), lessons_of(more)
    assert (
        after.named("coverage of coat 1").likely > 1.1 * before.named("coverage of coat 1").likely
    )
    assert after.named("hours to rinse").likely > 1.1 * before.named("hours to rinse").likely


@settings(max_examples=25, deadline=None)
@given(firms(least=1))
def test_low_likely_high_are_in_order_and_shares_are_shares(jobs):
    for lesson in lessons_of(jobs).lessons:
        assert lesson.low <= lesson.likely <= lesson.high
        assert lesson.own_low <= lesson.likely <= lesson.own_high
        assert sum(one.share for one in lesson.shares) <= 1 + 1e-9


def test_what_jobs_moved_multiplies_to_what_the_lesson_moved():
    lessons = lessons_of(jobs_of(9, 12))
    for name in ("coverage of coat 1", "hours to mask", "clock: open time"):
        lesson = lessons.named(name)
        made = math.prod(1 + one.moved_by / 100 for one in lesson.shares)
        assert made == pytest.approx(lesson.likely / lesson.practice, rel=1e-6)


def test_a_job_left_out_is_as_if_it_had_never_been():
    jobs = jobs_of(2, 8)
    left = lessons_of(jobs, without=(jobs[3].id,))
    assert left.lessons == lessons_of([*jobs[:3], *jobs[4:]]).lessons
    assert left.without == (jobs[3].id,)


def test_a_lesson_switched_off_is_told_and_not_found():
    lessons = lessons_of(jobs_of(2, 8), off=("spray rate", "coverage of coat 1: trowel"))
    assert lessons.find("spray rate") is None
    assert lessons.named("spray rate").jobs == 8
    assert lessons.find("coverage of coat 1", "trowel").of == ()


def test_unknown_names_ids_and_doubled_jobs_are_refused_together():
    jobs = jobs_of(2, 2)
    with pytest.raises(Refused) as refused:
        lessons_of([*jobs, jobs[0]], without=("nobody",))
    assert len(refused.value.mistakes) == 2
    with pytest.raises(Refused, match="no lesson"):
        lessons_of(jobs, off=("rinsing songs",))


def test_a_new_firm_has_no_lessons_at_all():
    assert lessons_of([]).lessons == ()


def test_forgetting_follows_a_firm_that_changed():
    job = jobs_of(4, 1)[0]
    jobs = [
        replace(
            job,
            id=f"j{n:02}",
            closed_on=f"20{20 + n // 12}-{n % 12 + 1:02}-15",
            hours=(TaskHours("rinse", 8.0 if n < 20 else 12.0, 139.4),),
        )
        for n in range(30)
    ]
    steady = lessons_of(jobs).named("hours to rinse").likely
    by_jobs = lessons_of(jobs, forgetting=Forgetting(jobs=4)).named("hours to rinse").likely
    by_months = lessons_of(jobs, forgetting=Forgetting(months=4)).named("hours to rinse").likely
    assert steady < by_jobs < 12.6
    assert by_jobs == pytest.approx(by_months, rel=0.02)
    assert Forgetting(jobs=4).counts(jobs)["j25"] == pytest.approx(0.5)


def test_three_jobs_that_agree_move_their_finish_and_say_how_many_they_are():
    job = jobs_of(4, 1)[0]
    jobs = [
        replace(
            job,
            id=f"j{n}",
            sprayed=tuple(Sprayed("a", field, 45.0, 5.0, finish="float") for field in "fg"),
        )
        for n in range(3)
    ]
    lesson = lessons_of(jobs).named("coverage of coat 1: float")
    assert lesson.practice < lesson.likely < 9.0
    assert lesson.jobs == 3
    assert lesson.source == "learned from 3 jobs"


@settings(max_examples=10, deadline=None)
@given(st.data())
def test_more_of_the_same_narrows_the_quantity_itself(data):
    job = data.draw(closed_jobs(1))
    few = lessons_of([replace(job, id=f"j{n}") for n in range(3)]).named("hours to rinse")
    many = lessons_of([replace(job, id=f"j{n}") for n in range(30)]).named("hours to rinse")
    assert math.log(many.own_high / many.own_low) < 0.6 * math.log(few.own_high / few.own_low)
