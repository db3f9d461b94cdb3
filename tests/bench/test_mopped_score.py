"""What single floors come to: recall by kind and contrast, false alarms, trust."""

import pytest

from farwall.bench.mopped_match import Proposed, Sought
from farwall.bench.mopped_score import ALL, Looked, report


def looked(sought=(), proposed=(), *, marked=True, cpu_s=0.1):
    return Looked(1, marked, 9.0, tuple(sought), tuple(proposed), cpu_s)


def test_recall_by_kind_and_contrast_and_what_is_hidden():
    told = report([
        looked([
            Sought("lap line", -3.0, seen=True, found=True, called=("stripe",)),
            Sought("lap line", -1.5, seen=True, found=False, called=()),
            Sought("ring", -4.0, seen=False, found=False, called=()),
        ])
    ])  # fmt: skip
    by_kind = {one.kind: one for one in told.recalls}
    assert (by_kind["lap line"].marks, by_kind["lap line"].found) == (2, 1)
    assert by_kind["lap line"].named == 0
    assert by_kind["lap line"].by_class == ((0, 0), (0, 1), (1, 1), (0, 0))
    assert by_kind[ALL].marks == 2
    assert told.hidden == 1


def test_false_alarms_on_marked_and_unmarked_floors_without_what_lies_on_cracks():
    false = Proposed("drip", 0.4, "", on_line=False)
    on_crack = Proposed("lap line", 0.8, "", on_line=True)
    crack = Proposed("crack", 0.9, "", on_line=True)
    told = report([
        looked(proposed=[false, false, on_crack]),
        looked(proposed=[false, crack], marked=False),
        looked(marked=False),
    ])  # fmt: skip
    assert told.false_marked == 2
    assert told.false_free == pytest.approx(0.5)
    assert told.clean_free_percent == pytest.approx(50)
    assert told.false_kinds == (("drip", 3),)
    assert told.apart == (1, 0, 1)


def test_trust_counts_those_that_met_a_mark():
    met = Proposed("ring", 0.8, "ring", on_line=False)
    false = Proposed("ring", 0.8, "", on_line=False)
    told = report([looked(proposed=[met, met, false])])
    (own,) = [one for one in told.trusts if one.proposals]
    assert (own.least, own.proposals, own.met) == (0.7, 3, 2)
