"""The jobs that are priced are frozen: who changes one changes a digest here, and says why."""

import hashlib
from dataclasses import asdict, replace
from statistics import fmean

import rfc8785

from farwall.bench.price_jobs import TEST, TUNING, Dice, priced_job

DIGEST = "773564bb2fe4b5e34918de325395d93f78aed78e0a3106edea20817bbbec60b8"
WHY = "a frozen job has changed: its figures can no longer be laid beside those of before"


def rounded(value):
    """Nine figures: what another machine's logarithm may change is not looked at."""
    if isinstance(value, dict):
        return {key: rounded(one) for key, one in value.items()}
    if isinstance(value, list | tuple):
        return [rounded(one) for one in value]
    return float(f"{value:.9g}") if isinstance(value, float) else value


def digest(jobs):
    told = [[asdict(job), asdict(true)] for job, true in jobs]
    return hashlib.sha256(rfc8785.dumps(rounded(told))).hexdigest()


def test_the_recorded_digest_holds():
    assert digest(priced_job(seed) for seed in [*TUNING[:50], *TEST[:50]]) == DIGEST, WHY


def test_the_digest_would_see_a_hair():
    job, true = priced_job(7)
    assert digest([(job, true)]) != digest([(replace(job, per_h=job.per_h * 1.000001), true)])


def test_the_halves_share_no_job_and_are_two_thousand_each():
    assert not set(TUNING) & set(TEST)
    assert len(TUNING) == len(TEST) == 2000


def test_a_typical_house_takes_what_it_is_said_to_take():
    """Two coats on 1,200 to 1,800 ft²: 45 to 81 hours are said; the mean lies well inside."""
    found = [
        true.hours
        for job, true in map(priced_job, range(1, 600))
        if 1200 < job.area_ft2 < 1800 and len(job.spray_min) == 2
    ]
    assert 52 < fmean(found) < 78


def test_call_backs_come_as_often_as_meant():
    """0.08 + 0.035 signed, 0.08 + 0.08 not: about one job in eight."""
    found = [true.called_back for _, true in map(priced_job, TUNING)]
    assert 0.10 < fmean(found) < 0.16


def test_a_poisson_number_has_its_mean_and_variance():
    dice = Dice(1)
    drawn = [dice.count(0.7) for _ in range(20000)]
    mean = fmean(drawn)
    assert abs(mean - 0.7) < 0.03
    assert abs(fmean([(one - mean) ** 2 for one in drawn]) - 0.7) < 0.05
