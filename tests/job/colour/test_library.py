"""A firm's library of stains: what a closed job tells, and what the next one makes of it."""

from dataclasses import replace

import pytest
from tests.job.colour.fennel import asked, first_coat, job, plan, with_samples

from farwall.colour.prior import Prior
from farwall.job.closed import closed_job
from farwall.job.colour.fit import colour_fit
from farwall.job.colour.library import absorbing_of, prior_of, stains_seen
from farwall.job.colour.next_coat import colour_next
from farwall.job.story import story
from farwall.learn.kinds import STRENGTH
from farwall.learn.lessons import lessons_of

LOG = first_coat(("great-room", 44.7, {}), ("bath", 43.0, {}))
STAINS = ("umber", "moss")


@pytest.fixture(scope="module")
def closed():
    return closed_job(job(), plan(), story(plan(), LOG), job_id="fennel", kept=LOG)


@pytest.fixture(scope="module")
def lessons(closed):
    return lessons_of([replace(closed, id=f"job-{n}") for n in range(4)])


def test_a_job_tells_of_a_stain_that_its_samples_settled_and_not_of_another(closed):
    """Five patches hold umber at several doses, one holds moss."""
    (umber,) = closed.stains
    assert umber.stain == "umber"
    assert umber.samples >= 5
    assert all(2 < one < 60 for one in umber.strength)


def test_without_samples_it_tells_of_none():
    assert stains_seen(with_samples(), plan(), LOG, story(plan(), LOG)) == ()


def test_lessons_have_each_channel_of_the_stain_by_its_name(lessons, closed):
    own = [lessons.named(f"{what}: umber") for what in STRENGTH]
    assert [one.likely for one in own] == pytest.approx(closed.stains[0].strength, rel=0.15)
    assert all(one.jobs == 4 for one in own)


def test_the_prior_is_nearer_and_surer_than_the_guess(lessons):
    prior, jobs = prior_of(job(), STAINS, lessons)
    assert jobs == 4
    assert prior.strengths[0].spread < Prior().strength(0).spread / 2
    assert prior.strengths[1] == Prior().strength(1)


def test_without_lessons_or_with_them_switched_off_it_is_the_guess(lessons):
    off = replace(lessons, lessons=tuple(replace(one, on=False) for one in lessons.lessons))
    assert prior_of(job(), STAINS, None) == prior_of(job(), STAINS, off) == (Prior(), 0)


def test_a_stain_of_another_name_learns_nothing(lessons):
    other = replace(job(), stains=tuple(replace(one, name="ash") for one in job().stains))
    assert prior_of(other, STAINS, lessons)[1] == 0


def test_from_one_sample_the_library_makes_the_verdict_surer(lessons):
    """The same single sample, with and without the firm's other jobs."""
    approved = replace(job().samples[0], approved_by="T. Alder", approved_on="2026-06-02")
    of = with_samples(approved)
    alone, taught = (colour_fit(asked(of=of, lessons=one)) for one in (None, lessons))
    wide, narrow = (
        next(one.high / one.low for one in fit.unknown if one.name == "strength of umber")
        for fit in (alone, taught)
    )
    assert narrow < wide
    assert colour_next(asked(LOG, of=of, lessons=lessons)).learned_from == 4


def test_both_ways_of_darkening_grow_together():
    found = [absorbing_of(one) for one in (1.0, 5.0, 10.0, 30.0)]
    assert found == sorted(found)
    assert found[0] == pytest.approx(1.0, rel=0.25)
