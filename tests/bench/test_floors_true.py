"""The truth of the bench's floors: frozen, and sensible where it can be looked at by hand."""

import hashlib
from dataclasses import replace

import numpy as np
import pytest
import rfc8785

from farwall.bench.floors_drawn import BEFORE_H, TEST, TUNING, drawn
from farwall.bench.floors_true import truth_of

DIGEST = "16754f55283c107bd8fa93021a1e501d29b6771442c0c0fc4bba3fa177efd003"
WHY = "the truth of a frozen floor has changed: figures can no longer be laid beside earlier ones"
CLOCKS = ("open_time", "recoat", "neutralise", "dry_down", "sealer")


@pytest.fixture(scope="module")
def some():
    return truth_of([drawn(seed) for seed in [*TUNING[:60], *TEST[:60]]])


def test_the_recorded_digest_holds(some):
    truth, floors = some
    told = [[round(float(one.known.slab_c), 4) for one in floors]]
    for name in CLOCKS:
        told += [["never" if np.isinf(x) else round(float(x), 2) for x in part]
                 for part in getattr(truth, name)]  # fmt: skip
    assert hashlib.sha256(rfc8785.dumps(told)).hexdigest() == DIGEST, WHY


def changed(**facts):
    floor = drawn(3)
    return replace(floor, true=replace(floor.true, **facts))


def test_twice_the_leaving_water_nearly_halves_the_wait():
    slow, quick = (changed(leaving=one) for one in (0.5, 1.0))
    truth, _ = truth_of([slow, quick])
    # A film that gives off more is cooler: less than half the time is not to be had.
    assert 0.5 < truth.recoat[1][1] / truth.recoat[1][0] < 0.85


def test_a_steady_slab_stays_as_it_is():
    hours = len(drawn(3).true.air_c)
    truth, floors = truth_of([changed(air_c=(20.0,) * hours, ground_c=20.0)])
    assert truth.slab_c == pytest.approx(20.0)
    assert floors[0].known.slab_c == pytest.approx(20.0 + floors[0].true.reading_error_c)


def test_a_slab_lags_a_sudden_warmth():
    hours = len(drawn(3).true.air_c)
    air = tuple(10.0 if n < BEFORE_H else 20.0 for n in range(hours))
    truth, _ = truth_of([changed(air_c=air, ground_c=10.0)])
    after = truth.slab_c[0, BEFORE_H:]
    assert 10 < after[3] < 15
    assert np.all(np.diff(after) >= -1e-9)
    assert after[-1] < 20


@pytest.mark.common_practice
def test_a_mild_day_lands_near_what_finishers_say():
    """Common practice, no source: 2 h between coats, 5-15 min of open time, a day of dry-down."""
    truth, floors = truth_of([drawn(seed) for seed in TUNING[:400]])
    mild = np.array(
        [
            abs(one.true.air_c[BEFORE_H + 3] - 21) < 2
            and abs(one.true.rh_percent[BEFORE_H + 3] - 45) < 8
            for one in floors
        ]
    )
    assert mild.sum() > 20
    assert np.median(truth.recoat[1][mild]) / 60 == pytest.approx(2, rel=0.25)
    assert 7 < np.median(truth.open_time[1][mild]) < 14
    assert np.median(truth.dry_down[1][mild]) / 60 == pytest.approx(24, rel=0.25)
    assert 2 < np.median(truth.sealer[1][mild]) / 60 < 4
