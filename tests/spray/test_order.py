"""The order of fields: by hand, refused by name, and against all permutations."""

from __future__ import annotations

from dataclasses import replace
from itertools import permutations
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import HALL_OF_THREE, ROUND, TWO_WAYS_OUT, row, sweeps, world
from tests.spray.pretend_sweeps import PretendSweeps, drawn_age, small_world

from farwall.errors import Unanswerable
from farwall.spray.order import TIRED_PER_H, order_fields

EQUAL = 0.05
"""Shares of a budget nearer to each other than this are equal (a guess of the planner)."""


def plenty(pieces, at_min):
    return 100.0


def each_alone(of):
    return [frozenset([piece]) for piece in of.pieces]


def named(order):
    return ["+".join(sorted(step.pieces)) for step in order.steps]


def ordered(of, **options):
    return order_fields(each_alone(of), sweeps(of), plenty, **options)


def test_a_row_of_rooms_goes_from_the_far_end_by_hand():
    """By hand: each room's only way out leads through the next one."""
    found = ordered(world(row(3, 3, 3, 3)))
    assert named(found) == ["d", "c", "b", "a"]
    assert [step.exit.id for step in found.steps] == ["cd", "bc", "ab", "front"]
    assert found.proved


def test_rooms_around_a_hall_come_before_the_hall_by_hand():
    found = ordered(world(HALL_OF_THREE))
    assert set(named(found)[:3]) == {"left", "middle", "right"}
    assert named(found)[3] == "hall"


def test_of_two_open_rooms_the_larger_comes_last_by_hand():
    found = ordered(world(TWO_WAYS_OUT))
    assert named(found) == ["small", "large"]
    assert found.steps[-1].exit.id == "east"


def test_a_narrow_margin_goes_before_the_size_of_the_last_field():
    """The large room's budget shrinks with the hour: then it must come first."""

    def sunny(pieces, at_min):
        return 10.0 if pieces == {"small"} or at_min < 1 else 2.1

    of = world(TWO_WAYS_OUT)
    pretend = PretendSweeps(of, lambda pieces, seam: 2.0)
    assert named(order_fields(each_alone(of), pretend, sunny)) == ["large", "small"]
    assert named(order_fields(each_alone(of), pretend, plenty)) == ["small", "large"]


def test_a_tired_arm_makes_later_edges_older_by_hand():
    """By hand: 24 m² at 3 m² a minute are 8 min before the second field: 3 % an hour x 8/60 h."""
    of = world(TWO_WAYS_OUT)
    pretend = PretendSweeps(of, lambda pieces, seam: 2.0 if pieces == {"large"} else 1.0)
    found = order_fields(each_alone(of), pretend, plenty)
    minutes = of.pieces["small"].shape.area / ROUND.spray_m2_min
    assert found.worst_share == pytest.approx(0.02 * (1 + TIRED_PER_H * minutes / 60))


def test_the_door_with_the_younger_edge_is_taken():
    of = world(TWO_WAYS_OUT)
    by_door = {"west": 3.0, "between": 1.0, "east": 1.0}
    pretend = PretendSweeps(of, lambda pieces, seam: by_door[seam.id])
    found = order_fields(each_alone(of), pretend, lambda pieces, at_min: 4.0)
    small = next(step for step in found.steps if step.pieces == {"small"})
    assert small.exit.id == "between"


def test_a_wanted_order_is_kept():
    of = world(HALL_OF_THREE)
    found = ordered(of, wanted=("right", "left"))
    assert named(found)[:2] == ["right", "left"]
    assert named(found)[-1] == "hall"


def test_a_wanted_order_that_shuts_somebody_in_is_refused():
    with pytest.raises(Unanswerable, match=r"Hall, Left shuts somebody in") as no:
        ordered(world(HALL_OF_THREE), wanted=("hall", "left"))
    assert no.value.remedies


def test_a_field_that_nobody_can_spray_is_refused_by_name():
    of = world(TWO_ROOMS)

    def age(pieces, seam):
        if "back" in pieces:
            raise Unanswerable("nobody can stand there")
        return 1.0

    with pytest.raises(Unanswerable, match=r"works: Back room\.") as no:
        order_fields(each_alone(of), PretendSweeps(of, age), plenty)
    assert "doorway" in no.value.remedies[0]


def walked(of, fields, order, pretend, budget_at):
    """The worst share of one order with the best door at each step, or None: told once more."""
    home = {piece: field for field in fields for piece in field}
    dry, begun, worst = set(fields), 0.0, 0.0
    for field in order:
        dry.remove(field)
        out = {home[s.a] for s in of.seams if s.is_way_out} & dry
        while True:
            more = {
                there
                for s in of.seams
                if s.b
                for here, there in ((home[s.a], home[s.b]), (home[s.b], home[s.a]))
                if here in out and there in dry - out
            }
            if not more:
                break
            out |= more
        doors = [
            s
            for s in of.seams
            if (s.is_way_out and home[s.a] == field)
            or (s.b and {home[s.a], home[s.b]} - {field} <= out and home[s.a] != home[s.b]
                and field in (home[s.a], home[s.b]))
        ]  # fmt: skip
        if not doors:
            return None
        tired = 1 + TIRED_PER_H * begun / 60
        age = min(age_of(pretend, field, s) for s in doors)
        if age == float("inf"):
            return None
        worst = max(worst, age * tired / budget_at(field, begun))
        begun += sum(of.pieces[piece].shape.area for piece in field) / pretend.tools.spray_m2_min
    return worst


def age_of(pretend, field, door):
    """The age by this door, infinite when no body can spray toward it."""
    try:
        return pretend.age_min(field, door)
    except Unanswerable:
        return float("inf")


def sometimes_blocked(seed, share):
    """Drawn ages, where `share` of the doors cannot be sprayed toward."""

    def age(pieces, seam):
        if Random(f"{seed} {sorted(pieces)} {seam}").random() < share:
            raise Unanswerable("nobody can stand there")
        return drawn_age(seed)(pieces, seam)

    return age


SLOW = replace(ROUND, spray_m2_min=0.2)
"""So slow that the rooms of a small house fill a day of hours."""


def hot_noon(seed):
    """Budgets that change from hour to hour, each field in its own way."""

    def budget_at(pieces, at_min):
        return Random(f"{seed} {min(pieces)} {int(at_min // 60)}").uniform(0.8, 1.6)

    return budget_at


@settings(max_examples=60)
@given(st.integers(0, 3000), st.integers(0, 10**6), st.booleans())
def test_no_order_of_all_has_a_better_margin(seed, ages, sunny):
    """Of houses of up to five fields every permutation is weighed."""
    of = small_world(seed)
    fields = each_alone(of)
    pretend = PretendSweeps(of, drawn_age(ages), tools=SLOW)
    budget_at = hot_noon(ages) if sunny else plenty
    found = order_fields(fields, pretend, budget_at)
    weighed = {
        order: walked(of, fields, order, pretend, budget_at) for order in permutations(fields)
    }
    possible = {order: worst for order, worst in weighed.items() if worst is not None}
    taken = tuple(step.pieces for step in found.steps)
    best = min(possible.values())
    assert taken in possible, "nobody is shut in"
    assert possible[taken] <= best + EQUAL + 1e-9
    assert best - 1e-9 <= found.worst_share <= best + EQUAL + 1e-9
    assert found.proved


@settings(max_examples=60)
@given(st.integers(0, 3000), st.integers(0, 10**6))
def test_among_equal_margins_the_largest_possible_field_is_last(seed, ages):
    of = small_world(seed)
    fields = each_alone(of)
    pretend = PretendSweeps(of, drawn_age(ages))
    found = order_fields(fields, pretend, plenty)

    def area(field):
        return sum(of.pieces[piece].shape.area for piece in field)

    weighed = {order: walked(of, fields, order, pretend, plenty) for order in permutations(fields)}
    possible = {order: worst for order, worst in weighed.items() if worst is not None}
    limit = min(possible.values()) + EQUAL - 1e-9
    largest = max(area(order[-1]) for order, worst in possible.items() if worst <= limit)
    assert area(found.steps[-1].pieces) >= largest - 1e-6


@settings(max_examples=40)
@given(st.integers(0, 3000), st.randoms())
def test_a_wanted_order_is_kept_or_refused_and_nothing_between(seed, dice):
    of = small_world(seed)
    fields = each_alone(of)
    pretend = PretendSweeps(of, lambda pieces, seam: 1.0)
    wanted = list(dict.fromkeys(of.pieces[p].room for p in sorted(of.pieces)))
    dice.shuffle(wanted)
    if len(wanted) != len(fields):
        return
    order = tuple(frozenset([room]) for room in wanted)
    possible = walked(of, fields, order, pretend, plenty) is not None
    try:
        found = order_fields(fields, pretend, plenty, wanted=wanted)
    except Unanswerable:
        assert not possible
    else:
        assert tuple(step.pieces for step in found.steps) == order
        assert possible


@settings(max_examples=60)
@given(st.integers(0, 3000), st.integers(0, 10**6))
def test_with_blocked_doors_an_order_is_found_whenever_there_is_one(seed, ages):
    """A body may still walk through a door toward which it cannot spray."""
    of = small_world(seed)
    fields = each_alone(of)
    pretend = PretendSweeps(of, sometimes_blocked(ages, 0.3), tools=SLOW)
    budget_at = hot_noon(ages)
    weighed = [walked(of, fields, order, pretend, budget_at) for order in permutations(fields)]
    possible = [worst for worst in weighed if worst is not None]
    try:
        found = order_fields(fields, pretend, budget_at)
    except Unanswerable:
        assert possible == []
    else:
        assert min(possible) - 1e-9 <= found.worst_share <= min(possible) + EQUAL + 1e-9


@settings(max_examples=60)
@given(st.integers(0, 3000), st.integers(0, 10**6))
def test_the_worst_share_told_is_that_of_the_order_taken(seed, ages):
    """Not that of another order which is a little better and less tidy."""
    of = small_world(seed)
    fields = each_alone(of)
    pretend = PretendSweeps(of, drawn_age(ages), tools=SLOW)
    found = order_fields(fields, pretend, hot_noon(ages))
    taken = tuple(step.pieces for step in found.steps)
    assert found.worst_share == pytest.approx(walked(of, fields, taken, pretend, hot_noon(ages)))
    assert found.gap == max(found.worst_share - found.least_share, 0.0)
    assert found.gap <= EQUAL + 1e-9


def test_a_wanted_order_tells_the_floor_and_is_not_called_proved():
    of = world(TWO_WAYS_OUT)
    pretend = PretendSweeps(of, lambda pieces, seam: 2.0)
    found = order_fields(
        each_alone(of), pretend, lambda pieces, at_min: 4.0, wanted=("large", "small")
    )
    assert named(found) == ["large", "small"]
    assert found.worst_share > found.least_share >= 0.5
    assert not found.proved


def test_twenty_rooms_get_an_order_with_a_floor():
    """A row of twenty: one order only, and by the hour a budget that grows again."""
    of = world(row(*[2.0] * 20))
    pretend = PretendSweeps(of, drawn_age(3), tools=SLOW)
    found = order_fields(each_alone(of), pretend, hot_noon(3))
    assert named(found) == sorted(of.pieces, reverse=True)
    assert found.proved
    assert found.least_share == found.worst_share


def test_of_too_many_fields_the_order_says_how_much_better_another_could_be(monkeypatch):
    """As if two sets were too many: the floor stands in for the orders that were not weighed."""
    of = world(HALL_OF_THREE)
    ages = {"hall": 1.0, "left": 2.0, "middle": 2.0, "right": 2.0}
    pretend = PretendSweeps(of, lambda pieces, seam: ages[min(pieces)], tools=SLOW)

    def dips(pieces, at_min):
        """Best in the second hour, for whichever room comes then."""
        return 8.0 if 60 <= at_min < 120 else 4.0

    monkeypatch.setattr("farwall.spray.order.MOST_SETS", 2)
    found = order_fields(each_alone(of), pretend, dips)
    assert found.least_share < 0.5 < found.worst_share
    assert not found.proved
    assert found.gap == pytest.approx(found.worst_share - found.least_share)
    assert named(found)[-1] == "hall"
