"""The cut of a house into fields: by hand, by the rule, and against all partitions."""

from __future__ import annotations

import copy
import pickle
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import (
    ISLAND_KITCHEN,
    PLAIN_ROOM,
    SLIVER_CLOSET,
    TWO_ROOMS,
    box,
    door,
    outside,
    place,
)
from tests.spray.hand_floors import (
    BLOCKED_DOOR,
    HALL_OF_THREE,
    ROUND,
    hall,
    row,
    seam,
    sweeps,
    without_opening,
    world,
)
from tests.spray.pretend_sweeps import PretendSweeps, drawn_age, drawn_refusal, small_world

from farwall.errors import Unanswerable
from farwall.floor.nouns import Exit, Room, SawCut
from farwall.spray import fields as rule
from farwall.spray.building import build_world
from farwall.spray.fields import COMFORT, SMALL_ROOM_M2, cut_into_fields
from farwall.spray.sweep import one_tank_m2
from farwall.spray.unparted import FIELD_COST, SEAM_COST


def cut(of, budget_min=100.0, **options):
    return cut_into_fields(sweeps(of, **options), lambda pieces: budget_min)


def named(found):
    return sorted("+".join(sorted(pieces)) for pieces in found.fields)


def test_a_room_alone_is_one_field():
    found = cut(world(PLAIN_ROOM))
    assert named(found) == ["room"]
    assert found.cost == pytest.approx(FIELD_COST)


def test_two_large_rooms_stop_under_the_door_by_hand():
    """By hand: two fields and one door, 2 x 0.4 + 1."""
    found = cut(world(TWO_ROOMS))
    assert named(found) == ["back", "front"]
    assert found.cost == pytest.approx(2 * FIELD_COST + SEAM_COST["door"])


def test_a_closet_shares_the_field_of_its_room():
    assert named(cut(world(SLIVER_CLOSET))) == ["closet+room"]


def test_a_closet_stops_under_its_door_when_one_tank_is_not_enough_for_both():
    of = world(SLIVER_CLOSET)
    small_tank = replace(ROUND, tank_l=2.5)
    assert named(cut(of, tools=small_tank)) == ["closet", "room"]


def test_a_closet_stops_under_its_door_when_the_edge_would_wait_too_long():
    """The room alone needs all of its budget: the closet may not make that worse."""
    of = world(SLIVER_CLOSET)
    ages = {"room": 1.0, "closet": 0.1, "closet+room": 1.3}
    pretend = PretendSweeps(of, lambda pieces, _: ages["+".join(sorted(pieces))])
    assert named(cut_into_fields(pretend, lambda _: 1.0)) == ["closet", "room"]


def test_rooms_joined_by_a_bare_frame_share_a_field():
    """A colour change under a cased opening is seen: it is not made where the edge allows."""
    assert named(cut(world(row(3, 3, kind="cased")))) == ["a+b"]
    assert named(cut(world(row(3, 3, kind="door")))) == ["a", "b"]


def test_a_cased_opening_costs_more_than_a_door():
    """By hand: of a - frame - b - door - c any two rooms fit in one go, not all three."""
    of = world(
        place(
            [Room("a", box(0, 0, 2, 2)), Room("b", box(2, 0, 4, 2)), Room("c", box(4, 0, 6, 2))],
            [
                outside("front", ((0, 0.5), (0, 1.4)), "a"),
                door("frame", ((2, 0.5), (2, 1.3)), "a", "b", kind="cased"),
                door("leaf", ((4, 0.5), (4, 1.3)), "b", "c"),
            ],
        )
    )
    pretend = PretendSweeps(of, lambda pieces, _: 9.0 if len(pieces) == 3 else 0.3)
    found = cut_into_fields(pretend, lambda _: 1.0)
    assert named(found) == ["a+b", "c"]
    assert found.cost == pytest.approx(2 * FIELD_COST + SEAM_COST["door"])
    assert SEAM_COST["cased"] > SEAM_COST["door"] == SEAM_COST["saw cut"]


@pytest.mark.parametrize("budget_min", [100.0, 1.0, 0.01])
def test_a_wide_opening_is_never_a_stop_line(budget_min):
    """However short the budget: nothing hides a seam there."""
    assert named(cut(world(row(3, 4, kind="wide")), budget_min)) == ["a+b"]


def test_a_bare_frame_becomes_a_stop_line_when_the_edge_would_die():
    of = world(row(3, 3, kind="cased"))
    together = sweeps(of).best_age_min(frozenset("ab"))
    alone = max(sweeps(of).best_age_min(frozenset(room)) for room in "ab")
    assert alone < together
    assert named(cut(of, budget_min=0.99 * together)) == ["a", "b"]


def test_a_saw_cut_is_a_stop_line():
    of = world(hall(9, 4), SawCut(((4.5, 0.0), (4.5, 4.0)), id="cut"))
    assert named(cut(of)) == ["hall/1", "hall/2"]


def test_a_cut_under_an_island_is_one_stop_line_by_hand():
    """By hand: two fields and one cut, though it shows on both sides of the island."""
    of = world(ISLAND_KITCHEN, SawCut(((2.5, 0.0), (2.5, 4.0)), id="cut"))
    found = cut(of)
    assert len(found.fields) == 2
    assert found.cost == pytest.approx(2 * FIELD_COST + SEAM_COST["saw cut"])


def test_both_stretches_of_a_cut_are_ways_out_of_their_own():
    """Swept toward one side of the island or toward the other, the field ends there."""
    of = world(ISLAND_KITCHEN, SawCut(((2.5, 0.0), (2.5, 4.0)), id="cut"))
    found = sweeps(of)
    far = next(piece for piece in of.pieces if piece != seam(of, "patio").a)
    both = [s for s in found.ways_out(frozenset([far])) if s.id == "cut"]
    assert len(both) == 2
    ends = [found.of(frozenset([far]), s).passes[-1].path[0] for s in both]
    assert ends[0][1] < 1.5, "before the island"
    assert ends[1][1] > 2.4, "behind it"


def test_the_worst_share_is_that_of_the_oldest_edge():
    of = world(TWO_ROOMS)
    ages = {"front": 3.0, "back": 2.0}
    pretend = PretendSweeps(of, lambda pieces, _: ages[min(pieces)] if len(pieces) == 1 else 99.0)
    found = cut_into_fields(pretend, lambda pieces: 4.0 if "front" in pieces else 2.0)
    assert found.worst_share == pytest.approx(1.0), "2 of 2 min in the back, 3 of 4 in front"


def test_a_room_without_a_door_is_refused_by_name():
    with pytest.raises(Unanswerable, match="No way in to Middle:") as no:
        cut(world(without_opening(HALL_OF_THREE, "middle-door")))
    assert any("door" in remedy for remedy in no.value.remedies)


def test_who_reads_of_a_room_without_a_door_reads_what_people_call_it():
    shut = without_opening(HALL_OF_THREE, "middle-door")
    rooms = tuple(replace(one, name=f"The {one.id}") for one in shut.floor.rooms)
    named = replace(shut, floor=replace(shut.floor, rooms=rooms))
    with pytest.raises(Unanswerable, match="No way in to The middle: no opening"):
        cut(world(named))


def test_a_room_behind_a_blocked_door_is_refused_by_name():
    with pytest.raises(Unanswerable, match="No way in to Back:"):
        cut(world(BLOCKED_DOOR))


def test_a_house_without_an_exit_on_a_wall_is_refused():
    of = build_world(PLAIN_ROOM.floor, (Exit("x", "nowhere"),))
    with pytest.raises(Unanswerable, match="No way out") as no:
        cut(of)
    assert any("outside opening" in remedy for remedy in no.value.remedies)


def test_ways_out_of_a_room_behind_another():
    of = world(row(3, 3, 3))
    found = sweeps(of)
    assert [s.id for s in found.ways_out(frozenset("c"))] == ["bc"]
    assert [s.id for s in found.ways_out(frozenset("b"))] == ["ab"], "c leads nowhere else"
    assert [s.id for s in found.ways_out(frozenset("c"), frozenset("a"))] == []


def test_a_tank_too_small_for_the_field_adds_the_pause_of_a_refill_by_hand():
    """By hand: 3.0 min of filling and a walk as long as the bands are deep, 60 m a minute."""
    of = world(hall(8, 2))
    roomy = sweeps(of).age_min(frozenset(["hall"]), seam(of, "end"))
    tight = sweeps(of, replace(ROUND, tank_l=3.0)).age_min(frozenset(["hall"]), seam(of, "end"))
    assert tight - roomy == pytest.approx(3.0 + 8 / 60, abs=0.05)


# Against all partitions, by the same rule told once more.


def groups_of(of):
    """Pieces that wide openings hold together."""
    groups = [{piece} for piece in of.pieces]
    for s in of.seams:
        if s.kind == "wide" and s.b:
            one = next(g for g in groups if s.a in g)
            two = next(g for g in groups if s.b in g)
            if one is not two:
                groups.remove(two)
                one |= two
    return [frozenset(group) for group in groups]


def fits_by_rule(of, found, groups, tank_m2):
    """Every field of one or more groups that the rule lets stand, grown a group at a time."""
    share = {frozenset([g]): found.best_age_min(g) for g in groups}
    kept = set(share)
    front = list(kept)

    def area(field):
        return sum(of.pieces[piece].shape.area for group in field for piece in group)

    def bare(field):
        """Whether frames alone, without doors and cuts, hold the groups together."""
        reached, todo = set(), [next(iter(field))]
        while todo:
            here = todo.pop()
            reached.add(here)
            todo += [g for g in field - reached if joined(here, g, hidden=False)]
        return reached == field

    def joined(one, two, *, hidden):
        return any(
            s.b
            and ((s.a in one and s.b in two) or (s.a in two and s.b in one))
            and (hidden or s.kind not in ("door", "saw cut"))
            for s in of.seams
        )

    while front:
        field = front.pop()
        for more in set(groups) - field:
            grown = field | {more}
            if grown in kept or not any(joined(more, g, hidden=True) for g in field):
                continue
            small = min(area(field), area(frozenset([more]))) <= SMALL_ROOM_M2
            lost = any(share[frozenset([g])] == float("inf") for g in grown)
            if not lost and not bare(grown) and (area(grown) > tank_m2 or not small):
                continue
            age = found.best_age_min(frozenset().union(*grown))
            limit = max(COMFORT, *(share[frozenset([g])] for g in grown))
            if age < float("inf") and age <= limit + rule._ROUGHLY:
                kept.add(grown)
                front.append(grown)
    return kept


def partitions(groups):
    if not groups:
        yield []
        return
    first, *rest = groups
    for smaller in partitions(rest):
        yield [frozenset([first]), *smaller]
        for index, part in enumerate(smaller):
            yield [*smaller[:index], part | {first}, *smaller[index + 1 :]]


def cost_of(of, parts):
    """Each field, and from either side half of each opening or cut that it ends at."""
    whole = FIELD_COST * len(parts)
    for part in parts:
        own = {piece for group in part for piece in group}
        ends = {s.id: s.kind for s in of.seams if s.b and (s.a in own) != (s.b in own)}
        whole += sum(SEAM_COST.get(kind, 0.0) / 2 for kind in ends.values())
    return whole


@settings(max_examples=60)
@given(st.integers(0, 3000), st.integers(0, 10**6))
def test_the_cut_is_as_cheap_as_the_cheapest_of_all_partitions(seed, ages):
    of = small_world(seed)
    pretend = PretendSweeps(of, drawn_age(ages))
    groups = groups_of(of)
    kept = fits_by_rule(of, pretend, groups, one_tank_m2(ROUND, 0.2))
    best = min(cost_of(of, parts) for parts in partitions(groups) if set(parts) <= kept)
    found = cut_into_fields(pretend, lambda _: 1.0)
    assert found.cost == pytest.approx(best, abs=1e-5)
    assert sorted(piece for field in found.fields for piece in field) == sorted(of.pieces)


@settings(max_examples=40)
@given(st.integers(0, 3000), st.integers(0, 10**6), st.sampled_from([0.2, 0.6]))
def test_a_field_that_nobody_can_walk_is_left_out_of_the_cheapest_cut(seed, ages, share):
    """The guess at an age knows no walk: what is refused then is cut otherwise, as cheaply as can
    be. A single room has no other cut: it stays, and is refused when it is planned."""
    of = small_world(seed)
    refuses = drawn_refusal(ages, share)
    pretend = PretendSweeps(of, drawn_age(ages), no_walk=refuses)
    groups = groups_of(of)
    kept = fits_by_rule(of, pretend, groups, one_tank_m2(ROUND, 0.2))
    walked = {part for part in kept if len(part) == 1 or not refuses(frozenset().union(*part))}
    best = min(cost_of(of, parts) for parts in partitions(groups) if set(parts) <= walked)
    found = cut_into_fields(pretend, lambda _: 1.0)
    assert found.cost == pytest.approx(best, abs=1e-5)
    assert not any(refuses(field) for field in found.fields if field not in groups)


@settings(max_examples=40)
@given(st.integers(0, 3000), st.integers(0, 10**6))
def test_no_field_of_several_rooms_needs_more_than_it_may(seed, ages):
    of = small_world(seed)
    pretend = PretendSweeps(of, drawn_age(ages))
    for field in cut_into_fields(pretend, lambda _: 1.0).fields:
        groups = [g for g in groups_of(of) if g <= field]
        if len(groups) > 1:
            limit = max(COMFORT, *(pretend.best_age_min(g) for g in groups))
            assert pretend.best_age_min(field) <= limit + rule._ROUGHLY


@settings(max_examples=10)
@given(st.integers(0, 3000))
def test_every_field_of_a_house_hangs_together_and_has_a_way_out(seed):
    of = small_world(seed, most=4)
    found = sweeps(of)
    for field in cut_into_fields(found, lambda _: 5.0).fields:
        assert found.ways_out(field)
        reached, todo = set(), [min(field)]
        while todo:
            here = todo.pop()
            reached.add(here)
            todo += [s.other(here) for s in of.seams_of(here) if s.other(here) in field - reached]
        assert reached == field


def in_a_copy(work):
    """Work on a copy of all that it holds, as a forked process does it."""
    found = pickle.loads(pickle.dumps(copy.deepcopy(work)()))
    return lambda: found


def test_fields_tried_beside_others_are_swept_the_same():
    """Half of the fields are tried in a copy, and what comes back answers as if tried here."""
    of = world(TWO_ROOMS)
    fields = [frozenset([name]) for name in of.pieces]
    here = sweeps(of)
    beside = replace(sweeps(of), beside=in_a_copy)
    assert beside.failing(fields) == here.failing(fields)
    for pieces in fields:
        for way in here.ways_out(pieces):
            assert beside.walked(pieces, way) == here.walked(pieces, way)
            if here.walked(pieces, way):
                one, two = here.of(pieces, way), beside.of(pieces, way)
                assert [each.path for each in one.passes] == [each.path for each in two.passes]
                assert one.bound_m == two.bound_m
