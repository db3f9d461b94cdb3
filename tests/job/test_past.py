"""What is told of a day laid over the plan's minutes."""

from itertools import pairwise

import pytest
from tests.midday import after, band, bands_of, codes, day_of, day_of_two

from farwall.errors import Refused
from farwall.facts.so_far import ClosedRoom, Done, SoFar
from farwall.job.half_told import halves_by_id
from farwall.job.past import settle_past
from farwall.job.replan import replan
from farwall.job.rest_of_day import is_closed_at
from farwall.job.told_times import bands_done

QUINCE = "quince-street"


def test_told_minutes_are_kept_and_untold_ones_are_the_plans():
    plan = day_of(QUINCE)
    told = SoFar(at_min=11.0, done_up_to="first.3", done=(Done("first.3.5", 10.0, 10.6),))
    done = bands_done(plan, told)
    assert (done["first.3.5"].start_min, done["first.3.5"].end_min) == (10.0, 10.6)
    assert done["first.3.5"].path[0][2] == 10.0
    assert done["first.3.5"].path[-1][2] == 10.6
    assert done["first.3.4"] == band(plan, "first.3.4")


def test_a_band_done_as_the_day_began_ended_at_minute_0():
    """Told by its end alone, which is 0: it takes its planned time before, and ends there."""
    plan = day_of(QUINCE)
    first = band(plan, "first.1.1")
    done = bands_done(plan, SoFar(at_min=1.0, done=(Done(first.id, end_min=0.0),)))
    lasts = first.end_min - first.start_min
    assert done[first.id].end_min == pytest.approx(0.0, abs=1e-9)
    assert done[first.id].start_min == pytest.approx(-lasts, abs=1e-6)


@pytest.mark.parametrize(("until", "closed"), [(None, True), (0.0, False), (20.0, True)])
def test_a_room_closed_until_the_start_is_open_later(until, closed):
    assert is_closed_at(until, 10.0) is closed


def test_a_field_told_as_one_shares_its_minutes_out():
    """By hand: told from 6 to 12 min, its bands take (12 − 6) / (planned length) of theirs."""
    plan = day_of(QUINCE)
    told = SoFar(at_min=12.0, done_up_to="first.2", done=(Done("first.3", 6.0, 12.0),))
    done = bands_done(plan, told)
    own = [b for b in bands_of(plan) if b.id.startswith("first.3.")]
    scale = 6.0 / (own[-1].end_min - own[0].start_min)
    second = done["first.3.2"]
    assert second.start_min == pytest.approx(
        6.0 + (own[1].start_min - own[0].start_min) * scale, abs=1e-3
    )
    assert done["first.3.5"].end_min == pytest.approx(12.0, abs=1e-3)


def test_ahead_of_the_plan_the_minutes_are_shared_out_and_end_now():
    plan = day_of(QUINCE)
    last = band(plan, "first.5.5")
    done = bands_done(plan, SoFar(at_min=last.end_min - 1.0, done_up_to=last.id))
    assert done[last.id].end_min == pytest.approx(last.end_min - 1.0, abs=1e-3)
    ordered = sorted(done.values(), key=lambda b: b.start_min)
    assert all(a.end_min <= b.start_min + 1e-3 for a, b in pairwise(ordered))


def test_behind_the_plan_what_is_done_was_done_on_time():
    plan = day_of(QUINCE)
    done = bands_done(plan, after(plan, "first.5.2", late_min=4.0))
    assert done["first.5.2"] == band(plan, "first.5.2")


def test_the_band_in_hand_is_done_when_it_takes_its_planned_time():
    plan = day_of(QUINCE)
    one = band(plan, "first.5.3")
    told = SoFar(
        at_min=one.start_min + 2.0, done_up_to="first.5.2", in_hand=Done(one.id, one.start_min + 1)
    )
    state = settle_past(plan, told)
    assert state.now_min == pytest.approx(one.end_min + 1.0, abs=1e-3)
    still_l = one.litres * (state.now_min - told.at_min) / (one.end_min - one.start_min)
    assert state.tank_l - state.tank_then_l == pytest.approx(still_l, abs=0.01)


def test_the_tank_is_reckoned_when_nobody_looked():
    """By hand: what was filled less what the bands took."""
    plan = day_of(QUINCE)
    state = settle_past(plan, after(plan, "first.4.5"))
    fields = [f for f in plan.fields if f.id in ("first.1", "first.2", "first.3", "first.4")]
    filled = sum(r.litres for f in fields for r in f.refills)
    sprayed = sum(b.litres for f in fields for b in f.bands)
    assert state.tank_l == pytest.approx(filled - sprayed, abs=1e-3)


def test_a_tank_read_nearly_as_reckoned_is_taken_for_it():
    plan = day_of(QUINCE)
    reckoned = settle_past(plan, after(plan, "first.4.5")).tank_l
    near = settle_past(plan, after(plan, "first.4.5", tank_l=reckoned + 0.05))
    far = settle_past(plan, after(plan, "first.4.5", tank_l=reckoned - 1.0))
    assert near.as_planned
    assert near.tank_l == reckoned
    assert not far.as_planned
    assert far.tank_l == pytest.approx(reckoned - 1.0)


@pytest.mark.parametrize(
    ("told", "says"),
    [
        (SoFar(10.0, done_up_to="first.99"), "no band or field 1.99"),
        (SoFar(10.0, in_hand=Done("first.x")), "no band 1.x"),
        (SoFar(10.0, done=(Done("first.1.2"),)), "1.1.1 before it is not"),
        (SoFar(10.0, done=(Done("first.1.1", 3.0, 2.0),)), "before it begins"),
        (SoFar(10.0, done=(Done("first.1.1", 3.0, 12.0),)), "now is 10 min"),
        (SoFar(10.0, done=(Done("first.1.1"), Done("first.1.1"))), "told twice"),
        (SoFar(10.0, closed=(ClosedRoom("nowhere"),)), "no room nowhere"),
        (SoFar(10.0, closed=(ClosedRoom("bath", 9.0),)), "which is past"),
        (SoFar(10.0, tank_l=99.0), "more than the tank takes"),
        (SoFar(10.0, tank_l=4.0, tub_l=9.0, mixed_l=5.0), "only 5 L were mixed"),
        (SoFar(2.0, done_up_to="first.6"), "Tell the minute now"),
        (
            SoFar(10.0, done=(Done("first.1.1", 1.0, 3.0), Done("first.1.2", 2.0, 4.0))),
            "one band at a time",
        ),
        (SoFar(400.0, done=(Done("second.1"),)), "of coat 1 is not done"),
    ],
)
def test_what_cannot_be_so_is_told(told, says):
    with pytest.raises(Refused, match=says):
        settle_past(day_of(QUINCE), told)


def test_all_that_cannot_be_so_is_told_at_once():
    told = SoFar(10.0, done_up_to="first.99", closed=(ClosedRoom("bth"),), tank_l=99.0)
    with pytest.raises(Refused) as refusal:
        settle_past(day_of(QUINCE), told)
    assert len(refusal.value.mistakes) == 3


def test_behind_the_coats_last_field_nobody_walks_out_while_another_is_to_do():
    """Only the last field was tapped: from it the sprayer goes on to those before it."""
    plan = day_of("sorrel-rise")
    own = [field for field in plan.fields if field.coat == plan.fields[0].coat]
    done = tuple(Done(b.id, b.start_min, b.end_min) for b in own[-1].bands)
    again = replan(plan, SoFar(at_min=own[-1].end_min + 1.0, done=done))
    assert "jump" not in codes(again)


def test_the_half_nobody_told_is_begun_once_its_sprayer_is_done_with_his_last_band():
    """The second's band was tapped late: his half of the next was begun after it, not with the
    first's, and nobody sprays two bands at a time."""
    plan = day_of_two("quince-street")
    pairs = halves_by_id(plan)
    every = {one.id: one for one in bands_of(plan, 0)}
    halved = [one for one in every.values() if one.sprayer == 1 and one.id in pairs]
    before, then = halved[:2]
    late = every[pairs[before.id]]
    done = [
        Done(one.id, one.start_min, one.end_min) for one in every.values()
        if one.start_min < then.start_min and one.id != late.id
    ]  # fmt: skip
    done += [Done(late.id, late.start_min, then.start_min + 0.1)]
    done += [Done(then.id, then.start_min, then.end_min)]
    found = bands_done(plan, SoFar(at_min=then.end_min, done=tuple(done)))
    assert found[pairs[then.id]].start_min == pytest.approx(then.start_min + 0.12, abs=1e-3)
