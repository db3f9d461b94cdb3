"""Stain bought over all coats: amounts, boxing, and what is told of it."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.strategies.jobs import row_of_rooms

from farwall.facts.defaults import settle
from farwall.facts.job import Coat, Container, Job, Prices, Stain
from farwall.floor.nouns import Exit
from farwall.mix.batch import make_batch
from farwall.mix.buying import CoatDemand, buying_dict, purchases
from farwall.mix.cut import Cut

JOB = Job(
    version=1,
    floor=row_of_rooms([4.0]),
    exits=(Exit("out", "door-0"),),
    stains=(Stain("sand"), Stain("bark"), Stain("unused")),
    coats=(
        Coat("first", "sand", "1:1"),
        Coat("second", "sand", "1:3"),
        Coat("third", "bark", "1:1"),
    ),
    prices=Prices("EUR", (Container(5.0, "40.00"), Container(1.0, "10.00", "bark"))),
)


def demand(coat, stain, cut, likely_l, ready_l):
    batch = make_batch(cut=cut, total_l=10)
    return CoatDemand(coat, stain, batch, likely_l, ready_l, usual_reserve=0.25, chance_usual=0.9)


DEMANDS = [
    demand("first", "sand", Cut(1, 1), 8.0, 10.0),
    demand("second", "sand", Cut(1, 3), 8.0, 12.0),
    demand("third", "bark", Cut(1, 1), 4.0, 5.0),
]


def test_coats_of_one_stain_are_bought_together_by_their_share_of_stain():
    sand, bark = purchases(DEMANDS, settle(JOB))
    # Hand-worked: 8/2 + 8/4 = 6 L likely; 10/2 + 12/4 = 8 L to be ready for.
    assert (sand.likely_l, sand.ready_l) == (pytest.approx(6.0), pytest.approx(8.0))
    assert sand.usual_l == pytest.approx(7.5)
    assert [(one.size_l, count) for one, count in sand.pack.containers] == [(5.0, 2)]
    assert [(one.size_l, count) for one, count in bark.pack.containers] == [(1.0, 3)]


def test_a_stain_that_no_coat_uses_is_not_bought():
    assert [one.stain for one in purchases(DEMANDS, settle(JOB))] == ["sand", "bark"]


def test_added_acid_takes_its_part_of_what_is_sprayed():
    batch = make_batch(cut=Cut(1, 1), total_l=16, acid_ml_per_l=62.5, chromate=False)
    one = replace(DEMANDS[2], batch=batch, likely_l=17.0)
    assert one.likely_l * one.stain_share == pytest.approx(8.0)  # hand-worked: 8 of 17 L


def test_more_than_one_container_or_lot_is_boxed():
    sand, _ = purchases(DEMANDS, settle(JOB))
    single = purchases([replace(DEMANDS[0], ready_l=4.0)], settle(JOB))[0]
    lots = replace(JOB, stains=(Stain("sand", lots=("A", "B")),), coats=JOB.coats[:1])
    one_lot = replace(lots, stains=(Stain("sand", lots=("A",)),))
    assert sand.boxed
    assert not single.boxed
    assert purchases([replace(DEMANDS[0], ready_l=4.0)], settle(lots))[0].boxed
    assert not purchases([replace(DEMANDS[0], ready_l=4.0)], settle(one_lot))[0].boxed


def test_it_is_told_in_plain_values_with_money_as_text():
    told = buying_dict(purchases(DEMANDS, settle(JOB)), certainty_percent=99)
    first = told["stains"][0]
    assert first["currency"] == "EUR"
    assert first["cost"] == "80.00"
    assert first["left_over_l"] == pytest.approx(2.0)
    assert first["usual_reserve"]["chance_enough"] == 0.9
