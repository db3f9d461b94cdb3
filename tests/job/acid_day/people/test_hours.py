"""Spells, looks, cartridges and who stays out, worked by hand on days made for it."""

from dataclasses import replace
from datetime import datetime, timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.midday import EXAMPLES, day_of

from farwall.acid.look_in import look_in_of
from farwall.facts.plan import Field
from farwall.facts.workers import Cartridge, Emergency
from farwall.job.acid_day.people.hours import (
    cartridge_day,
    keep_out,
    looks_of,
    moment,
    spells_of,
)
from farwall.readers.job_json import read_job

PLAN = day_of("quince-street")
FLOOR = read_job(EXAMPLES / "quince-street" / "job.json").floor


def day(*spans):
    """A day with fields of these begin and end minutes, each with its coat."""
    one: Field = PLAN.fields[0]
    fields = tuple(
        replace(one, id=f"f{n}", coat=coat, start_min=begin, end_min=end)
        for n, (coat, begin, end) in enumerate(spans)
    )
    return replace(PLAN, fields=fields)


def test_fields_so_near_that_nobody_takes_it_off_are_one_spell_by_hand():
    """Gaps of 10 and 10.1 min: the first is bridged, the second is not; coats are never joined."""
    told = day(("a", 0, 20), ("a", 30, 40), ("a", 50.1, 60), ("b", 61, 70))
    assert spells_of(told) == (("a", (0, 40)), ("a", (50.1, 60)), ("b", (61, 70)))


def test_looks_come_every_so_many_minutes_and_once_at_the_end_by_hand():
    """40 min by 15: 15, 30, and out at 40; none in the last minute."""
    told = day(("a", 0, 40))
    assert [(one.at_min, one.last) for one in looks_of(told, 15)] == [
        (15, False), (30, False), (40, True),
    ]  # fmt: skip
    assert [one.at_min for one in looks_of(day(("a", 0, 31)), 15)] == [15, 31]


@given(st.floats(1, 120), st.floats(0.5, 300))
def test_nobody_is_left_alone_for_longer_than_the_firm_says_and_a_minute(every, lasts):
    found = [0.0, *(one.at_min for one in looks_of(day(("a", 0, lasts)), every))]
    gaps = [after - before for before, after in pairwise(found)]
    assert max(gaps) <= every + 1.02
    assert found[-1] == pytest.approx(lasts, abs=0.01)


def test_the_firm_s_own_minutes_win_and_fifteen_are_a_guess():
    usual = look_in_of(Emergency())
    assert (usual.value, usual.rank) == (15.0, "guess")
    assert look_in_of(Emergency(look_in_min=5)).value == 5


def test_a_pair_that_ends_within_the_day_is_told_with_its_minute_by_hand():
    """90 less 20 used leave 70: 40 in the first spell, 30 into the second that begins at 100."""
    pair = Cartridge(change_after_min=90, used_min=20)
    found = cartridge_day(pair, [(0, 40), (100, 180)], PLAN)
    assert (found.planned_min, found.left_min, found.change_by_min) == (120, -50, 130)
    assert found.change_by_at == moment(PLAN, 130)
    enough = cartridge_day(replace(pair, change_after_min=140), [(0, 40), (100, 180)], PLAN)
    assert (enough.left_min, enough.change_by_min, enough.change_by_at) == (0, None, "")
    gone = cartridge_day(replace(pair, used_min=95), [(5, 40)], PLAN)
    assert gone.change_by_min == 5
    assert cartridge_day(Cartridge(), [(0, 40)], PLAN).left_min is None


def test_everybody_else_stays_out_until_rinsed_and_aired():
    out = keep_out(PLAN, FLOOR)
    rinsed = next(c for c in PLAN.clocks if c.name == "dry-down before sealing").begins_min
    assert out.rinsed_likely_min == rinsed
    assert out.free_likely_at == moment(PLAN, rinsed + 60)
    start = datetime.fromisoformat(PLAN.starts_at)
    late = datetime.fromisoformat(out.free_late_at)
    dwell = next(c for c in PLAN.clocks if c.name == "dwell")
    assert late >= start + timedelta(minutes=dwell.begins_min + dwell.high_min + 60)
    assert out.rinsed_late_min >= out.rinsed_likely_min


def test_a_floor_that_is_not_done_that_day_has_no_hour():
    left = replace(PLAN, left=PLAN.fields[:1])
    assert (keep_out(left, FLOOR).free_likely_at, keep_out(left, FLOOR).free_late_at) == ("", "")
    no_clock = replace(PLAN, clocks=())
    assert keep_out(no_clock, FLOOR).free_likely_at == ""


def test_moments_keep_the_offset_of_the_house():
    for starts, told in (
        ("2026-05-14T08:00:00-06:00", "2026-05-14T08:16:00-06:00"),
        ("2026-05-14T23:50:00+05:30", "2026-05-15T00:06:00+05:30"),
    ):
        assert moment(replace(PLAN, starts_at=starts), 15.6) == told
