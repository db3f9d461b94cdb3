"""All lines together: order, switches, own figures, what scales."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from tests.job.office.quantities.grounds import ground, lines, of_rooms, warnings

from farwall.facts.supplies import Supplies
from farwall.job.office.masking import masked_of
from farwall.job.office.quantities import quantities_of

IDS = sorted(lines(ground()))


def test_lines_come_in_the_order_in_which_they_are_needed():
    found = quantities_of(of := ground(), masked_of(of)).lines
    order = ["stain", "mask", "wash", "seal", "wear", "tools"]
    places = [order.index(one.moment) for one in found]
    assert places == sorted(places)
    assert set(places) == set(range(6))
    assert len({one.id for one in found}) == len(found)


def test_every_line_has_its_rule_rank_and_source_and_its_ends_in_order():
    for one in lines(ground()).values():
        assert one.rule.endswith(".")
        assert one.rank
        assert one.source
        assert 0 <= one.low <= one.likely <= one.high
        assert one.ready >= one.likely
        assert one.on
        assert not one.told


def test_a_count_is_whole():
    for one in lines(of_rooms(3.3, 4.7)).values():
        if one.unit == "count":
            assert one.ready == int(one.ready)


@settings(max_examples=20, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.sets(st.sampled_from(IDS)))
def test_a_switched_off_line_is_nowhere_among_what_is_wanted(off):
    of = ground(supplies=Supplies(left_out=tuple(sorted(off))))
    found = quantities_of(of, masked_of(of))
    assert {one.id for one in found.wanted} == set(IDS) - off
    assert {one.id for one in found.lines} == set(IDS)


@settings(max_examples=20, deadline=None)
@given(st.sampled_from(IDS), st.floats(0, 500))
def test_the_users_own_figure_wins(id_, own):
    before, after = lines(ground()), lines(ground(supplies=Supplies(amounts={id_: own})))
    line = after.pop(id_)
    assert (line.ready, line.likely, line.told) == (own, own, True)
    assert line.ruled == before[id_].ready
    if line.shares and before[id_].ready:
        assert sum(one.ready for one in line.shares) == pytest.approx(own)
    before.pop(id_)
    assert after == before


@pytest.mark.parametrize("wide", [2.0, 3.5, 5.0])
def test_twice_the_floor_is_never_less_of_anything(wide):
    one, two = lines(of_rooms(wide, depth=2.5)), lines(of_rooms(2 * wide, depth=2.5))
    assert set(one) == set(two)
    for id_, line in one.items():
        assert two[id_].ready >= line.ready, id_
        assert two[id_].likely >= line.likely, id_
    assert two["stain:earth"].ready > 1.5 * one["stain:earth"].ready
    assert two["water"].ready == pytest.approx(2 * one["water"].ready, rel=0.05)


def test_a_room_more_is_never_less_of_anything():
    few, more = lines(of_rooms(3.0, 4.0)), lines(of_rooms(3.0, 4.0, 2.0))
    for id_, line in few.items():
        assert more[id_].ready >= line.ready, id_


def test_what_leaves_a_person_bare_or_a_floor_dry_is_told():
    told = warnings(
        ground(supplies=Supplies(("gloves", "stain:earth", "nothing"), {"stain:slate": 0.1}))
    )
    assert "Pairs of gloves switched off: no acid is opened where none is there." in told
    assert "Earth switched off: so much must be there already." in told
    assert any(one.startswith("Slate: your own 0.03 gal is less than the likely") for one in told)
    assert any("There is no line nothing" in one for one in told)


def test_the_sheet_wins_is_said():
    assert (
        warnings(ground())[-1] == "The sheet of the material in hand wins over every figure here."
    )


def test_shares_sum_to_their_line():
    shared = {id_: one for id_, one in lines(of_rooms(3.3, 4.7)).items() if one.shares}
    wanted = {"stain:earth", "tape", "film", "bicarbonate", "water", "sealer", "finish"}
    assert wanted <= set(shared)
    for id_, one in shared.items():
        assert sum(each.likely for each in one.shares) == pytest.approx(one.likely), id_
        assert sum(each.ready for each in one.shares) == pytest.approx(one.ready), id_
