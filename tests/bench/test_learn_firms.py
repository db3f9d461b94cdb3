"""The firms that learn are frozen: who changes one changes a digest here, and has to say why."""

import hashlib
import math
from dataclasses import asdict, replace

import pytest
import rfc8785

from farwall.bench.learn_firms import TEST, TUNING, Dice, closed_jobs, firm

DIGEST = "14deba730315cc5eb532c750c56a0c473245debe3bc529d40e9059235c62c08b"
WHY = "a frozen firm has changed: its figures can no longer be laid beside those of before"


def rounded(value):
    """Nine figures: what another machine's logarithm may change is not looked at."""
    if isinstance(value, dict):
        return {key: rounded(one) for key, one in value.items()}
    if isinstance(value, list | tuple):
        return [rounded(one) for one in value]
    return float(f"{value:.9g}") if isinstance(value, float) else value


def said(job):
    """A closed job without what closed jobs learned to say after the freeze, where it is silent."""
    told = asdict(job)
    if not told["job"]["stains"]:
        del told["job"]["stains"]
    for one in told["job"]["called_back"]:
        for later in ("cause", "for_it", "for_others"):
            if not one[later]:
                del one[later]
    return told


def digest(firms):
    """Of what is so of each firm, and of its first ten jobs as they were and as they are told."""
    told = [(asdict(one), [said(job) for job in closed_jobs(one, count=10)]) for one in firms]
    return hashlib.sha256(rfc8785.dumps(rounded(told))).hexdigest()


def test_the_recorded_digest_holds():
    assert digest(firm(seed) for seed in [*TUNING[:10], *TEST[:10]]) == DIGEST, WHY


def test_the_digest_would_see_a_hair():
    one = firm(7)
    assert digest([one]) != digest([replace(one, called_back=one.called_back * 1.000001)])


def test_the_halves_share_no_firm():
    assert set(TUNING) & set(TEST) == set()
    assert len(TUNING) == len(TEST) == 500


def test_one_record_in_thirty_is_wrong_by_three_to_ten_times():
    dice = Dice(3)
    thrown = [abs(math.log(dice.odd())) for _ in range(30_000)]
    wrong = [one for one in thrown if one > 0]
    assert len(wrong) / len(thrown) == pytest.approx(1 / 30, abs=0.004)
    assert min(wrong) >= math.log(3.0)
    assert max(wrong) <= math.log(10.0)
