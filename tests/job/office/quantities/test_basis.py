"""Amounts in words, switches and own figures."""

from __future__ import annotations

import pytest

from farwall.facts.quantities import Share
from farwall.job.office.quantities.basis import amount_said, figure, line, switched


@pytest.mark.parametrize(
    ("value", "said"),
    [(0, "0"), (0.126, "0.13"), (2.58, "2.58"), (6.27, "6.3"), (99.94, "99.9"), (142.4, "142"),
     (1194.6, "1,195"), (4.0, "4"), (0.001, "0")],
)  # fmt: skip
def test_figures_by_hand(value, said):
    assert figure(value) == said


def test_amounts_in_both_systems_by_hand():
    assert amount_said(3.785411784, "l", "us") == "1 gal"
    assert amount_said(3.785411784, "l", "metric") == "3.8 L"
    assert amount_said(0.45359237, "kg", "us") == "1 lb"
    assert amount_said(30.48, "m", "us") == "100 ft"
    assert amount_said(12, "count", "metric") == "12"


def test_counts_are_whole_and_what_is_ready_is_the_likely_one():
    one = line("rags", "rags", (10.2, 15.0, 20.1), "Rule.")
    assert (one.low, one.likely, one.high, one.ready, one.id) == (11, 15, 21, 15, "rags")


def test_an_own_figure_is_shared_as_the_rules_was():
    from dataclasses import replace

    one = line("stain", "earth", (1, 2, 3), "Rule.", id_="stain:earth", unit="l", ready=4.0)
    shares = (Share(0.5, 1, 1.5, 3.0, field="a"), Share(0.5, 1, 1.5, 1.0, field="b"))
    told = switched(replace(one, shares=shares), left_out=("x",), own={"stain:earth": 8.0})
    assert [each.ready for each in told.shares] == [6.0, 2.0]
    assert (told.on, told.told, told.ruled) == (True, True, 4.0)
    assert not switched(one, left_out=("stain:earth",), own={}).on
