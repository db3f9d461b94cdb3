"""Lessons in a job: they win over practice, lose to the measured, and change nothing unasked."""

import json
from dataclasses import replace
from pathlib import Path

import pytest

from farwall.bench.learn_firms import closed_jobs, firm
from farwall.days.work_hours import TYPICAL_M2
from farwall.evidence import Rank
from farwall.facts.defaults import settle
from farwall.facts.job import Coat, Sighting, Survey, Tools, Wishes
from farwall.facts.lessons import Lessons
from farwall.facts.plain import plain
from farwall.facts.samples import Sample
from farwall.floor.takeoff import take_off
from farwall.job.lasting import lasting_of
from farwall.job.lessons import labour_of, path_of, with_lessons
from farwall.job.patches import planned_floor
from farwall.job.plan_days import Ask, plan_days
from farwall.job.plan_job import plan_job
from farwall.job.waits import Waits
from farwall.learn.lessons import lessons_of
from farwall.readers.job_json import read_job

ROOT = Path(__file__).resolve().parents[2]
JOBS = [one.job for one in closed_jobs(firm(7), count=25)]
LESSONS = lessons_of(JOBS)


@pytest.fixture(scope="module")
def bare():
    """A house that tells its floor and nothing else."""
    job = read_job(ROOT / "examples" / "thistle-end" / "job.json")
    return replace(
        job, survey=Survey(), samples=(), coats=(), stains=(), tools=Tools(), wishes=Wishes(),
        seen=(), starts_at=None,
    )  # fmt: skip


def ground(settled, name):
    return next(one for one in settled.grounds if one.name == name)


def test_without_lessons_the_very_same_job_comes_back(bare):
    settled = settle(bare)
    assert with_lessons(settled, None) is settled
    assert with_lessons(settled, Lessons(1)) is settled


def test_without_lessons_a_plan_is_the_same_to_the_last_digit(bare):
    was = json.dumps(plain(plan_job(bare)))
    assert json.dumps(plain(plan_job(bare, lessons=None))) == was
    assert json.dumps(plain(plan_job(bare, lessons=lessons_of([])))) == was
    assert json.dumps(plain(plan_job(bare, lessons=LESSONS))) != was


def test_a_lesson_wins_over_common_practice_and_says_from_how_many_jobs(bare):
    settled = with_lessons(settle(bare), LESSONS, person="person 1")
    first = settled.coats[0]
    lesson = LESSONS.find("coverage of coat 1")
    assert first.m2_per_l == lesson.likely
    assert first.l_per_m2 == pytest.approx(1 / lesson.likely)
    assert first.spread_percent == lesson.spread_percent
    found = ground(settled, f"coats.{first.id}.m2_per_l")
    assert (found.rank, found.source) == (Rank.LEARNED.value, "learned from 25 jobs")
    rate = LESSONS.find("spray rate", "person 1")
    assert settled.tools.spray_m2_min == rate.likely
    assert (
        ground(settled, "tools.spray_m2_min").source == f"learned from {rate.jobs} jobs (person 1)"
    )
    assert len({one.name for one in settled.grounds}) == len(settled.grounds)


def test_a_coat_that_no_job_told_of_keeps_common_practice(bare):
    settled = with_lessons(settle(bare), LESSONS)
    assert settled.coats[1].rank == Rank.PRACTICE.value
    assert settled.coats[1].m2_per_l == settle(bare).coats[1].m2_per_l


def test_a_floors_own_finish_is_looked_for(bare):
    job = replace(bare, survey=Survey(finish="hard trowel", drop_s=12.0))
    assert path_of(job) == ("hard trowel", "usual drops")
    found = with_lessons(settle(job), LESSONS).coats[0].m2_per_l
    assert found == LESSONS.find("coverage of coat 1", "hard trowel", "usual drops").likely


def test_what_was_measured_or_told_on_this_job_wins(bare):
    job = replace(
        bare,
        coats=(Coat("one", "tan", "1:1"), Coat("two", "tan", "1:2", m2_per_l=8.1)),
        samples=(Sample("s", coat="one", m2_per_l=4.2, sheen_loss_min=9.0),),
        tools=Tools(spray_m2_min=2.0),
        wishes=Wishes(spread_percent=12.0),
    )
    settled = with_lessons(settle(job), LESSONS)
    assert settled.coats[0].m2_per_l == pytest.approx(4.2)
    assert settled.coats[1].m2_per_l == 8.1
    assert settled.tools.spray_m2_min == 2.0
    assert {coat.spread_percent for coat in settled.coats} == {12.0}
    timed = [lasting_of(one, None).open_time((job.floor.rooms[0].id,), one.coats[0], 0.0)
             for one in (settle(job), settled)]  # fmt: skip
    assert timed[0] == timed[1]


def test_a_sampled_coat_takes_the_learned_spread_of_sampled_coats(bare):
    job = replace(bare, samples=(Sample("s", coat="coat-1", m2_per_l=4.2),))
    coat = with_lessons(settle(job), LESSONS).coats[0]
    lesson = LESSONS.named("litres over planned, sampled")
    assert (coat.m2_per_l, coat.spread_percent) == (pytest.approx(4.2), lesson.spread_percent)
    assert coat.field_share == lesson.field_share


def test_a_tip_still_holds_a_quick_person_back(bare):
    job = replace(bare, tools=Tools(tip_l_min=0.3))
    settled = with_lessons(settle(job), LESSONS)
    most = 0.3 * min(coat.m2_per_l for coat in settled.coats)
    assert settled.tools.spray_m2_min <= most + 1e-12


def slow(factor):
    """A firm all of whose waits take so many times the usual."""
    clocks = [one for one in LESSONS.lessons if one.what.startswith("clock: ")]
    return Lessons(1, 25, lessons=tuple(
        replace(one, low=factor * 0.7, likely=factor, high=factor * 1.4,
                own_low=factor * 0.95, own_high=factor * 1.05)
        for one in clocks
    ))  # fmt: skip


def test_a_firms_clock_moves_the_wait_in_full_and_is_learned(bare):
    settled = settle(bare)
    usual = Waits(lasting_of(settled, None)).dry(settled.coats[0], 0.0)
    taught = Waits(lasting_of(with_lessons(settled, slow(1.5)), None)).dry(settled.coats[0], 0.0)
    assert taught.likely_min == pytest.approx(1.5 * usual.likely_min, rel=0.01)
    assert taught.rank == Rank.LEARNED.value
    assert taught.source.endswith("learned from 25 jobs")


def test_what_was_watched_on_this_floor_still_pulls_the_wait(bare):
    watched = replace(bare, seen=(Sighting("dry to recoat", 60.0, room="closet"),))
    one, other = (
        Waits(lasting_of(with_lessons(settle(job), slow(1.5)), None)).dry(settle(job).coats[0], 0.0)
        for job in (watched, bare)
    )
    assert one.likely_min < 0.75 * other.likely_min


@pytest.mark.parametrize(("factor", "by"), [(0.6, 0.6), (1.5, 1.5 * 0.95), (1.02, 1.0)])
def test_an_edge_is_shortened_in_full_and_lengthened_only_as_far_as_is_sure(bare, factor, by):
    settled = settle(bare)
    room, coat = bare.floor.rooms[0].id, settled.coats[0]
    usual = lasting_of(settled, None).open_time((room,), coat, 0.0)
    taught = lasting_of(with_lessons(settled, slow(factor)), None).open_time((room,), coat, 0.0)
    assert taught.low == pytest.approx(by * usual.low, abs=0.006)


def test_the_calendar_takes_learned_hours(bare):
    labour = dict(labour_of(LESSONS))
    assert set(labour) == {"mask", "neutralise"}
    rinse = LESSONS.named("hours to rinse").likely
    assert labour["neutralise"].likely == pytest.approx(1.5 + 5.6 + rinse)
    assert labour_of(None) == ()
    tasks = [one for one in LESSONS.lessons if one.what == "hours to mask"]
    slow_to_mask = Lessons(
        1, 25, lessons=tuple(replace(one, likely=30.0, high=40.0) for one in tasks)
    )
    ends = [
        plan_days([bare], Ask(), lessons=lessons).calendar.houses[0].steps
        for lessons in (None, slow_to_mask)
    ]
    masked = [next(s for s in steps if s.id == "mask") for steps in ends]
    people = 2
    share = 0.2 + 0.8 * take_off(planned_floor(bare)).net_m2 / TYPICAL_M2
    assert masked[1].minutes == pytest.approx(30.0 * 60 * share / people, abs=15)
    assert masked[1].minutes > 2 * masked[0].minutes
