"""The floors that dry are frozen: who changes one changes a digest here, and has to say why."""

import hashlib
import math
from dataclasses import asdict, replace

import numpy as np
import rfc8785

from farwall.bench.floors_drawn import AFTER_H, BEFORE_H, TEST, TUNING, Chance, drawn

DIGEST = "f2557d929aa72d6977a5f3521de1533d46047958b187d2f0dec7debcd019bf65"
SECOND = "cd1c1a28f08a0266ab9fc54822c48fbc4c3c792fd76262ebd4778da2a4c61a5c"
WHY = "a frozen floor has changed: its figures can no longer be laid beside those of before"


def rounded(value):
    """Nine figures: what another machine's logarithm may change is not looked at."""
    if isinstance(value, dict):
        return {key: rounded(one) for key, one in value.items()}
    if isinstance(value, list | tuple):
        return [rounded(one) for one in value]
    if isinstance(value, float):
        return "-" if math.isnan(value) else float(f"{value:.9g}")
    return value


def digest(floors):
    return hashlib.sha256(rfc8785.dumps([rounded(asdict(one)) for one in floors])).hexdigest()


def test_the_recorded_digest_holds():
    assert digest(drawn(seed) for seed in [*TUNING[:60], *TEST[:60]]) == DIGEST, WHY


def test_the_recorded_digest_of_the_second_thousand_holds():
    assert digest(drawn(seed) for seed in TEST[1000:1060]) == SECOND, WHY


def test_the_digest_would_see_a_hair():
    one = drawn(7)
    other = replace(one, true=replace(one.true, leaving=one.true.leaving * 1.000001))
    assert digest([one]) != digest([other])


def test_the_halves_share_no_floor():
    assert set(TUNING) & set(TEST) == set()
    assert len(TUNING) == 1000
    assert len(TEST) == 2000


def test_hours_are_whole_and_sensible():
    for seed in (1, 500, 1001, 2000, 3000):
        floor = drawn(seed)
        assert len(floor.true.air_c) == len(floor.known.rh_percent) == BEFORE_H + AFTER_H
        assert all(5 <= one <= 99 for one in floor.known.rh_percent)
        assert all(one > 0 for one in floor.true.air_speed_m_s)


def test_the_factors_spread_as_they_say():
    dice = Chance(1)
    told = np.log([dice.factor(0.3) for _ in range(20_000)])
    assert abs(np.mean(told)) < 0.01
    assert abs(np.std(told) - 0.3) < 0.006
    uneven = np.array([dice.uneven(0.18) for _ in range(20_000)])
    assert abs(np.mean(uneven) - 1) < 0.005
    assert abs(np.std(uneven) - 0.18) < 0.005
