"""A set in a few figures."""

from dataclasses import replace

import pytest

from farwall.bench.score import FieldScore, Score
from farwall.bench.summary import spread, summary


def field(name, ratio, *, bands=5, realised=1.2, verdict="fits"):
    return FieldScore(name, "", ("room",), 10.0, bands, 1.0, 3.0 * ratio, 3.0, ratio, 1.0, 1.2,
                      realised, 0, verdict, 0.1)  # fmt: skip


def test_median_least_and_worst_by_hand():
    found = spread([3.0, 1.0, 2.0, 10.0])
    assert (found.median, found.least, found.worst) == (2.5, 1.0, 10.0)
    assert spread([]) is None


def test_the_ten_worst_fields_come_worst_first():
    told = summary([Score(str(n), 1.0, (field(str(n), 1 + n / 10),)) for n in range(12)])
    assert [name for name, _ in told.worst] == [str(n) for n in range(11, 1, -1)]
    assert told.worst[0][1] == pytest.approx(2.1)
    assert told.seconds == 12.0


def test_fields_of_one_band_are_counted_and_left_out_of_the_ratios():
    told = summary([Score("a", 1, (field("a", 9.0, bands=1, realised=None), field("b", 1.5)))])
    assert (told.fields, told.one_band) == (2, 1)
    assert told.ratio.worst == 1.5
    assert told.realised.worst == 1.2


def test_what_has_no_plan_or_went_wrong_is_kept():
    scores = [Score("a", 1, unplanned="No way in."), Score("b", 1, broke="it broke"),
              Score("c", 1, (field("c", 0.9, verdict="two"),))]  # fmt: skip
    told = summary(scores)
    assert told.unplanned == (("a", "No way in."),)
    assert told.verdicts == {"two": 1}
    assert len(told.failures) == 2


def test_the_best_fronts_have_a_spread_of_their_own_where_they_were_sought():
    sought = [replace(field(str(n), 2.0), best_m=3.0 * (1 + n / 10)) for n in range(3)]
    told = summary([Score("a", 1, (*sought, field("unsought", 1.5)))])
    assert told.best.median == pytest.approx(1.1)
    assert told.worst_best[0][0] == "2"
    assert summary([Score("a", 1, (field("unsought", 1.5),))]).best is None
