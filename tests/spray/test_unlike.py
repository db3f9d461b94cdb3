"""Floor that takes stain unlike other floor: the pieces, and the cut that keeps them apart."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import SLIVER_CLOSET
from tests.spray.hand_floors import row, world
from tests.spray.pretend_sweeps import PretendSweeps, drawn_age, small_world

from farwall.spray.fields import cut_into_fields
from farwall.spray.partition import cheapest_cover
from farwall.spray.unlike import LEAP, unlike
from farwall.spray.unparted import FIELD_COST, SEAM_COST, SEEN_MORE, Units, unparted
from farwall.spray.world import Piece


def piece(drop_s=None, pour=""):
    return Piece("p", "p", shapely.box(0, 0, 1, 1), drop_s, pour)


@pytest.mark.common_practice
def test_more_than_four_times_is_unlike_by_hand():
    """By hand: 4 s and 16 s are four times apart, 4 and 17 more; the factor has no source."""
    assert not unlike(piece(4.0), piece(16.0))
    assert unlike(piece(4.0), piece(17.0))
    assert unlike(piece(17.0), piece(4.0))
    assert not unlike(piece(4.0), piece())
    assert not unlike(piece(), piece())


def test_two_pours_are_unlike_whatever_their_drops():
    assert unlike(piece(4.0, "new"), piece(4.0))
    assert not unlike(piece(4.0, "new"), piece(4.0, "new"))


def with_drops(of, told):
    return replace(
        of, pieces={name: replace(one, drop_s=told.get(name)) for name, one in of.pieces.items()}
    )


def with_sight(of, told):
    return replace(of, seams=tuple(replace(s, sight=told.get(s.id, 0.0)) for s in of.seams))


def cut(of, age=0.3):
    return cut_into_fields(PretendSweeps(of, lambda pieces, _: age), lambda _: 1.0)


def named(found):
    return sorted("+".join(sorted(pieces)) for pieces in found.fields)


@pytest.mark.parametrize(
    ("kind", "drop_s", "stands"),
    [("cased", 16.0, ["a+b"]), ("cased", 17.0, ["a", "b"]), ("wide", 17.0, ["a+b"])],
)
def test_a_leap_parts_a_frame_and_nothing_parts_a_wide_opening(kind, drop_s, stands):
    of = with_drops(world(row(3, 3, kind=kind)), {"a": 4.0, "b": drop_s})
    assert named(cut(of)) == stands


def test_a_closet_that_takes_stain_unlike_its_room_is_a_field_of_its_own():
    assert named(cut(world(SLIVER_CLOSET))) == ["closet+room"]
    told = with_drops(world(SLIVER_CLOSET), {"closet": 3.0, "room": 13.0})
    assert named(cut(told)) == ["closet", "room"]


def test_a_room_that_nobody_can_do_alone_joins_even_unlike_floor():
    """A rule of suction is no use where it leaves floor undone: the plan warns instead."""
    of = with_drops(world(row(3, 3, kind="cased")), {"a": 4.0, "b": 40.0})
    found = PretendSweeps(of, lambda p, _: float("inf") if p == frozenset("b") else 0.3)
    assert named(cut_into_fields(found, lambda _: 1.0)) == ["a+b"]


drops = st.lists(st.sampled_from([None, 2.0, 5.0, 9.0, 21.0, 50.0]), min_size=5, max_size=5)


@settings(max_examples=50)
@given(st.integers(0, 3000), st.integers(0, 10**6), drops)
def test_no_field_holds_a_leap_that_a_stop_could_part(seed, ages, told):
    """A law of drawn houses: within a field only what a wide opening joins may differ so."""
    of = small_world(seed)
    of = with_drops(of, dict(zip(sorted(of.pieces), told, strict=False)))
    pretend = PretendSweeps(of, drawn_age(ages))
    found = cut_into_fields(pretend, lambda _: 1.0)
    units = unparted(of)
    for field in found.fields:
        inside = [unit for unit in units if unit <= field]
        for one, two in combinations(inside, 2):
            ends = [of.pieces[a].drop_s for a in one], [of.pieces[b].drop_s for b in two]
            for a in ends[0]:
                for b in ends[1]:
                    assert a is None or b is None or max(a, b) <= LEAP * min(a, b)
    assert found.proved


def test_a_stop_in_sight_costs_more_by_hand():
    """By hand: two fields and a leaf wholly in sight, 2 x 0.4 + 1 x 1.8."""
    of = with_sight(world(row(3, 3)), {"ab": 1.0})
    assert cut(of).cost == pytest.approx(2 * FIELD_COST + SEAM_COST["door"] * (1 + SEEN_MORE))
    assert cut(of).cost == pytest.approx(2.6)
    assert cut(with_sight(world(row(3, 3)), {})).cost == cut(world(row(3, 3))).cost


@pytest.mark.parametrize(("seen", "stands"), [("ab", ["a+b", "c"]), ("bc", ["a", "b+c"])])
def test_of_two_frames_the_stop_goes_where_it_is_not_seen(seen, stands):
    """By hand: of a - frame - b - frame - c only two rooms fit in one go. Frames cost 6 each;
    the one in sight costs 10.8."""
    of = with_sight(world(row(3, 3, 3, kind="cased")), {seen: 1.0})
    found = cut_into_fields(
        PretendSweeps(of, lambda p, _: 9.0 if len(p) == 3 else 0.3), lambda _: 1.0
    )
    assert named(found) == stands
    assert found.cost == pytest.approx(2 * FIELD_COST + SEAM_COST["cased"])


@settings(max_examples=40)
@given(st.integers(0, 3000), st.lists(st.sampled_from([0.0, 0.25, 0.5, 0.75, 1.0]), min_size=12))
def test_the_cover_stays_proved_with_what_is_seen(seed, told):
    """Costs stay whole tenths, so both ways of finding the cover prove the same one."""
    of = small_world(seed)
    ids = sorted({seam.id for seam in of.seams})
    of = with_sight(of, {name: told[n % len(told)] for n, name in enumerate(ids)})
    units = Units(unparted(of), of)
    count = len(units.groups)
    columns = [frozenset(c) for k in range(1, count + 1) for c in combinations(range(count), k)]
    cost = {column: units.cost(column) for column in columns}
    assert all(round(value * 10, 6) == round(value * 10) for value in cost.values())
    exact = cheapest_cover(count, cost)
    highs = cheapest_cover(count, cost, exact_units=0)
    assert exact.proved
    assert highs.proved
    assert highs.cost == pytest.approx(exact.cost, abs=1e-6)
    assert len(highs.columns) == len(exact.columns)
