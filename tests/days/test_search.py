"""The quick search: whole answers, never worse, always the same."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from farwall.bench.day_houses import day_question
from farwall.days.columns import columns
from farwall.days.nouns import DayCrew, House, Question
from farwall.days.search import Draw, Search, cost_of, due_at, first_answer, improved
from farwall.days.vans import Van

SHOP = day_question(10, 2)
SEARCH = Search.of(SHOP, columns(SHOP))
FIRST = first_answer(SEARCH)


def fits(choices):
    vans = [Van(crew) for crew in SHOP.crews]
    for one in choices.values():
        if not vans[one.van].takes(one.way):
            return False
        vans[one.van].load(one.way)
    return True


def test_every_house_is_placed_and_fits():
    assert set(FIRST) == set(range(10))
    assert fits(FIRST)


def test_trying_longer_never_costs_more_and_still_fits():
    costs = []
    for rounds in (1, 50, 800):
        found = improved(SEARCH, FIRST, rounds=rounds)
        assert fits(found)
        costs.append(cost_of(found))
    assert costs == sorted(costs, reverse=True)
    assert costs[-1] <= cost_of(FIRST)


def test_the_cheapest_way_of_an_empty_van_is_the_cheapest_way():
    choice = SEARCH.place(0, [Van(DayCrew("crew 1"))])
    assert choice.cost_days == min(way.column.cost_days for way in SEARCH.ways[0])


def test_a_house_due_on_the_first_day_comes_before_all_that_are_due_later():
    told = [House(f"h{n}", f"h{n}", 100.0, due_day=due) for n, due in enumerate((None, 3, 0, 1))]
    assert [house.due_day for house in sorted(told, key=due_at)] == [0, 1, 3, None]


def test_one_crew_begins_with_the_house_that_is_due_on_the_first_day():
    # The larger house is the urgent one, and it comes free later: no other order puts it first.
    houses = (
        House("plain", "plain", 90.0),
        House("urgent", "urgent", 150.0, free_from_day=1, due_day=0),
    )
    shop = Question(houses, (DayCrew("crew 1"),), SHOP.ahead)
    found = first_answer(Search.of(shop, columns(shop)))
    assert found[1].way.column.start < found[0].way.column.start


@given(st.integers(0, 2**40), st.integers(1, 1000))
def test_what_is_drawn_lies_below_and_comes_again(seed, count):
    one, other = Draw(seed), Draw(seed)
    drawn = [one.below(count) for _ in range(5)]
    assert drawn == [other.below(count) for _ in range(5)]
    assert all(0 <= n < count for n in drawn)
