"""The leaner way: its mixes, its gates, and the table of what to mix by what is left."""

import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.mix.gate import budget
from farwall.mix.lean import (
    AHEAD_SHARE,
    LEAN_SHARE,
    Ahead,
    begin_need_l,
    lean_mixes,
    look_tables,
    looks_of,
    mix_at_line_l,
    morning_lean_l,
)
from farwall.mix.look import LEAST_BOX_L, BandNeed
from farwall.mix.thirst import first_belief
from farwall.mix.ways import FieldNeed, way_of

BELIEF = first_belief(20)
BANDS = tuple(BandNeed(f"b{n}", 0.5, n * 0.9, (n + 1) * 0.9) for n in range(20))


def ahead(litres=(3.0, 2.5, 4.0), seen=False):
    chances = budget(0.01, len(litres) + 1)
    return [
        *(Ahead(one, chance, seen) for one, chance in zip(litres, chances, strict=False)),
        Ahead(10.0, chances[-1], seen, BANDS),
    ]


def test_the_morning_takes_two_thirds_and_the_last_field_its_likely_need():
    fields = ahead()
    assert morning_lean_l(fields, BELIEF) == pytest.approx(LEAN_SHARE * 19.5)
    assert begin_need_l(fields[-1:], BELIEF) == pytest.approx(10.0)
    no_bands = [Ahead(10.0, fields[-1].chance_dry)]
    assert begin_need_l(no_bands, BELIEF) > 12


def test_a_field_seen_beside_what_is_done_keeps_something_to_box_with():
    open_, closed = ahead(seen=True), ahead()
    assert begin_need_l(open_, BELIEF) == pytest.approx(begin_need_l(closed, BELIEF) + LEAST_BOX_L)


@given(
    st.lists(st.floats(0.3, 8.0), max_size=8), st.floats(5, 30), st.booleans(),
)  # fmt: skip
def test_as_believed_no_gate_is_passed_with_too_little_and_all_is_covered(litres, cv, seen):
    belief, fields = first_belief(cv), ahead(tuple(litres), seen)
    mixes = lean_mixes(fields, belief)
    have, known = 0.0, belief
    for number, one in enumerate(fields):
        at_line = [m.litres for m in mixes if m.before == number and not m.band]
        if number and at_line and seen:
            assert have >= LEAST_BOX_L - 1e-9
        have += math.fsum(at_line)
        assert have >= begin_need_l(fields[number:], known) * (1 - 1e-9)
        have -= one.likely_l * known.factor
        known = known.after(likely_l=one.likely_l, used_l=one.likely_l * known.factor)
    inside = [m for m in mixes if m.band]
    assert have + math.fsum(m.litres for m in inside) >= -1e-6
    assert len(inside) <= 1


def test_a_stop_line_mixes_not_quite_all_ahead():
    fields = ahead()
    assert mix_at_line_l(0.0, fields, BELIEF) == pytest.approx(AHEAD_SHARE * 19.5)
    assert mix_at_line_l(50.0, fields, BELIEF) == 0


def test_the_table_says_less_the_more_is_left_and_nothing_from_go_on_up():
    tables = look_tables(ahead(), BELIEF)
    assert tables
    for place, ifs in tables:
        assert [one.factor for one in ifs] == [1.0, 1.1, 1.2, 1.3, 1.5]
        for one in ifs:
            mixes = [row.mix_l for row in one.rows]
            assert mixes == sorted(mixes, reverse=True)
            assert all(one.keep_l <= row.left_l < one.go_on_l for row in one.rows)
            assert all(row.mix_l > 0 for row in one.rows)
        assert place.band in {band.id for band in BANDS}


def test_a_thirstier_slab_begins_on_more_and_goes_on_with_more():
    for _, ifs in look_tables(ahead(), BELIEF):
        begins = [one.begin_l for one in ifs]
        go_on = [one.go_on_l for one in ifs]
        assert begins == sorted(begins)
        assert go_on == sorted(go_on)


def test_a_look_begins_on_what_all_fields_before_have_taught_by_hand():
    """Hand-worked: four fifths of the variance are the job's, so that three fields which took 1.5
    times teach 3 x 0.8 / (3 x 0.8 + 0.2) = 0.923077 of ln 1.5: 10 L x exp(0.374276) = 14.5394 L."""
    _, ifs = look_tables(ahead(), BELIEF)[0]
    assert ifs[0].begin_l == pytest.approx(10.0)
    assert ifs[-1].begin_l == pytest.approx(14.5394, abs=1e-4)


def test_rows_of_what_is_left_lie_a_pint_apart_up_to_going_on():
    pint = 0.473176473
    gaps = 0
    for _, ifs in look_tables(ahead(), BELIEF):
        for one in ifs:
            lefts = [row.left_l for row in one.rows]
            assert not lefts or one.go_on_l - lefts[-1] < pint + 1e-6
            for low, high in itertools.pairwise(lefts):
                assert high - low == pytest.approx(pint)
                gaps += 1
    assert gaps > 10


def needs(bands=BANDS):
    return [FieldNeed("f1", "c", 3.0), FieldNeed("f2", "c", 10.0, bands=bands)]


@pytest.mark.parametrize(
    ("helper", "lots", "bands", "way"),
    [
        (True, ("A",), BANDS, "look inside"),
        (True, (), BANDS, "look inside"),
        (False, ("A",), BANDS, "at stop lines"),
        (True, ("A", "B"), BANDS, "at stop lines"),
        (True, ("A",), (), "at stop lines"),
        (True, ("A",), tuple(BandNeed(b.id, 0.5, b.start_min / 9, b.end_min / 9) for b in BANDS),
         "in parts"),
    ],
)  # fmt: skip
def test_the_way_is_chosen_by_the_facts(helper, lots, bands, way):
    found = way_of("c", needs(bands), BELIEF, budget(0.01, 2), helper=helper, lots=lots)
    assert found.way == way
    assert found.why


def test_a_single_small_field_stays_with_its_reserve():
    own = [FieldNeed("f1", "c", 1.0, bands=BANDS[:2])]
    found = way_of("c", own, BELIEF, budget(0.01, 1), helper=True, lots=())
    assert found.way == "at stop lines"


def test_looks_are_none_without_bands():
    assert looks_of(Ahead(10.0, 0.004), BELIEF) == ()
