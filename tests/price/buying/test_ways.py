"""Ways within a limit, and one of each material together: what trying all finds."""

from __future__ import annotations

from itertools import product

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.price.buying.kit import NONE, Kit
from farwall.price.buying.together import Offer, best_together
from farwall.price.buying.ways import least_ways, ways_within

wares = st.lists(
    st.tuples(st.integers(1, 9), st.integers(1, 30), st.integers(0, 3), st.booleans()),
    min_size=1,
    max_size=4,
)


def kit(rows, takes=(0, 7), lots=None, exactly=None):
    """Wares (size, price, how many, paid to the watched seller); his prices count half."""
    size, price, most, watched = (np.array(one, dtype=np.int64) for one in zip(*rows, strict=True))
    return Kit(
        size, price * (4 - 2 * watched), price, most, (price * watched)[:, None],
        np.array(lots or [0] * len(rows)), np.array(takes), exactly, tuple(range(len(rows))),
    )  # fmt: skip


def all_ways(rows, wanted=7, exactly=None):
    """Weighed cost, plain cost, paid, of everything that holds enough."""
    for counts in product(*(range(most + 1) for _, _, most, _ in rows)):
        held = sum(row[0] * n for row, n in zip(rows, counts, strict=True))
        if held >= wanted and (exactly is None or held == exactly):
            plain = sum(row[1] * n for row, n in zip(rows, counts, strict=True))
            paid = sum(row[1] * n * row[3] for row, n in zip(rows, counts, strict=True))
            yield 4 * plain - 2 * paid, plain, paid


@given(wares, st.integers(1, 40))
def test_each_sensible_way_within_the_limit_is_there(rows, room):
    """Or one that is no dearer and pays the watched seller as much."""
    here = kit(rows)
    every = list(all_ways(rows))
    found = least_ways(here)
    if not every:
        assert not len(found.cost)
        assert found.beyond == NONE
        return
    assert found.cost.min() == min(cost for cost, _, _ in every)
    assert here.least <= found.cost.min()
    limit = int(found.cost.min()) + room
    ways = ways_within(here, limit)
    told = {(int(c @ here.plain), int(p[0])) for c, p in zip(ways.counts, ways.paid, strict=True)}
    assert told <= {(plain, paid) for _, plain, paid in every}
    for cost, plain, paid in every:
        if cost <= limit:
            assert any(much <= plain and own >= paid for much, own in told)


@given(wares, st.integers(7, 20))
def test_exactly_so_much_is_held(rows, exactly):
    every = [cost for cost, _, _ in all_ways(rows, exactly=exactly)]
    found = least_ways(kit(rows, exactly=exactly))
    assert (int(found.cost.min()) if len(found.cost) else None) == (min(every) if every else None)


def test_each_field_takes_one_lot_by_hand():
    """Fields of 3 and 4. One lot of 5 and 2 at 1 each holds both; the other's 3 at 9 and 4 at 9."""
    takes = (0, 3, 4, 7)
    one = kit([(5, 1, 1, 0), (2, 1, 1, 0)], takes)
    assert least_ways(one).cost.tolist() == [8]
    two = kit([(5, 1, 1, 0), (3, 9, 1, 0)], takes, [0, 1])
    assert least_ways(two).cost.tolist() == [40]
    split = kit([(5, 1, 1, 0), (2, 1, 1, 0)], takes, [0, 1])
    assert not len(least_ways(split).cost)


def test_too_many_ways_are_cut_short_and_say_so(monkeypatch):
    monkeypatch.setattr("farwall.price.buying.ways.MOST_WAYS", 2)
    monkeypatch.setattr("farwall.price.buying.ways.FEW", 1)
    rows = [(size, 10 * size + 3 * (size % 2), 3, 0) for size in range(1, 8)]
    every = min(cost for cost, _, _ in all_ways(rows, 20))
    found = ways_within(kit(rows, (0, 20)), every + 60)
    assert found.beyond < NONE
    assert min(found.beyond, *found.cost.tolist(), NONE) <= every


offers = st.lists(
    st.lists(
        st.tuples(st.integers(0, 20), st.integers(0, 9), st.integers(0, 9)), min_size=1, max_size=4
    ),
    min_size=1,
    max_size=4,
)


@pytest.mark.parametrize("sums", [(12,), (10, 8)])
@given(told=offers)
def test_one_way_of_each_is_the_cheapest_that_pays_the_sums(told, sums):
    def paid(ways):
        return [sum(one[1 + n] for one in ways) for n in range(len(sums))]

    every = [
        sum(one[0] for one in ways)
        for ways in product(*told)
        if all(much >= sum_ for much, sum_ in zip(paid(ways), sums, strict=True))
    ]
    rows = [np.array(one, dtype=np.int64) for one in told]
    found = best_together(
        [Offer(one[:, 0], one[:, 0], one[:, 1 : 1 + len(sums)]) for one in rows], sums, 99, 99
    )
    assert found.beyond == NONE
    if found.places is None:
        assert every == []
        return
    ways = [one[place] for one, place in zip(told, found.places, strict=True)]
    assert sum(one[0] for one in ways) == min(every)
    assert all(much >= sum_ for much, sum_ in zip(paid(ways), sums, strict=True))
