"""HiGHS over a few ways, against every choice of them."""

from __future__ import annotations

from itertools import product

import pytest
from hypothesis import given, settings
from tests.days.shop import shop, small_shops

from farwall.days.columns import columns
from farwall.days.exact import chosen
from farwall.days.search import cost_of
from farwall.days.solve import settle
from farwall.days.vans import Van, Way


def every_choice(question, ways):
    """The least cost over all choices of way and van, tried one by one (few ways each)."""
    best = float("inf")
    crews = range(len(question.crews))
    options = [[(way, n) for way in mine for n in crews] for mine in ways]
    for choice in product(*options):
        cost = sum(way.column.cost_days for way, _ in choice)
        if cost >= best:
            continue
        vans = [Van(crew) for crew in question.crews]
        for way, n in choice:
            if not vans[n].takes(way):
                break
            vans[n].load(way)
        else:
            best = cost
    return best


@settings(max_examples=15)
@given(small_shops)
def test_a_small_shop_gets_the_best_of_every_choice_of_its_cheapest_ways(question):
    ways = [
        [Way.of(one) for one in sorted(columns(question), key=lambda c: c.cost_days)
         if one.house == n][:24]
        for n in range(len(question.houses))
    ]  # fmt: skip
    best = every_choice(question, ways)
    flat = [way for mine in ways for way in mine]
    vans = [Van(crew) for crew in question.crews]
    found = chosen(question, flat, vans, range(len(vans)), time_limit_s=20)
    assert found.solved
    assert (cost_of(found.choices) if found.choices else float("inf")) == pytest.approx(best)
    assert settle(question).proof.cost_days <= best + 1e-6


def test_a_loaded_van_has_no_room_twice():
    question = shop(2)
    ways = [Way.of(one) for one in columns(question)]
    first = min((way for way in ways if way.column.house == 0), key=lambda w: w.column.start)
    van = Van(question.crews[0])
    van.load(first)
    others = [way for way in ways if way.column.house == 1]
    found = chosen(question, others, [van], [0], time_limit_s=20)
    assert found.choices is not None
    assert not found.choices[1].way.at & first.at
    same = [way for way in others if way.at & first.at]
    assert chosen(question, same, [van], [0], time_limit_s=20).choices is None
