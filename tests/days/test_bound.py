"""Lagrange's bound: true whatever the prices, and what it leaves out is in no better answer."""

from __future__ import annotations

from hypothesis import given, settings
from tests.days.shop import small_shops

from farwall.bench.day_houses import day_question
from farwall.days.bound import kept, pool, priced
from farwall.days.columns import columns
from farwall.days.search import Search, cost_of, first_answer, improved
from farwall.days.solve import settle


@settings(max_examples=15)
@given(small_shops)
def test_no_bound_is_above_what_is_done(question):
    ways = columns(question)
    search = Search.of(question, ways)
    first = first_answer(search)
    assert first is not None
    known = cost_of(improved(search, first, rounds=200))
    pooled = pool(ways, question.crews)
    for steps in (1, 10, 300):
        assert priced(pooled, best_known=known, steps=steps).bound <= known + 1e-6


def test_what_the_bound_leaves_out_is_in_no_better_answer():
    question = day_question(10, 2)
    ways = columns(question)
    search = Search.of(question, ways)
    known = cost_of(first_answer(search))
    pooled = pool(ways, question.crews)
    left = kept(priced(pooled, best_known=known), best_known=known)
    best = settle(question)
    assert best.proof.cost_days < known
    places = {(pooled.columns[int(n)].house, pooled.columns[int(n)].start) for n in left}
    assert {(n, one.way.column.start) for n, one in best.choices.items()} <= places
