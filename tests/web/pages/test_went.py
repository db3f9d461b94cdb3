"""The day as it went: done bands at their logged minutes, all else behind what was entered."""

import pytest
from tests.web.pages.shown_house import bands, house, kept, logged

from farwall.job.moments import moment_at
from farwall.readers.plan_json import plan_to_dict
from farwall.web.pages.went import went


@pytest.fixture(scope="module")
def shown():
    return house()


def test_nothing_entered_is_no_log(shown):
    assert went(shown.plan, [], now_min=5.0, rest=None) is None


def test_a_note_alone_moves_nothing(shown):
    told = logged(shown, ("note", 30.0, {"text": "all quiet"}))
    assert told.floor_plan == shown.plan


def test_a_band_that_was_done_late_lies_where_it_was_logged_and_the_rest_behind_it(shown):
    first, second = bands(shown)[:2]
    late = first.end_min + 3.0
    told = logged(shown, ("band-done", late, {"band": first.id}))
    mine = {band.id: band for field in told.floor_plan.fields for band in field.bands}
    assert mine[first.id].end_min == pytest.approx(late)
    assert mine[first.id].path[-1][2] == pytest.approx(late)
    assert mine[second.id].start_min == pytest.approx(second.start_min + 3.0, abs=1.01)
    assert mine[second.id].start_min >= late


def test_what_nobody_logged_is_not_shown_as_sprayed_however_late_it_is(shown):
    first = bands(shown)[0]
    told = logged(shown, ("band-done", first.end_min, {"band": first.id}), now_min=55.0)
    last = max(field.end_min for field in shown.plan.fields)
    moment = moment_at(told.floor_plan, shown.plan.fields[0].coat, 54.0)
    floor = sum(field.area_m2 for field in shown.plan.fields if field.coat == moment.coat)
    assert last < 54.0  # by the plan all would be sprayed
    assert moment.sprayed_share == pytest.approx(first.polygon.shape.area / floor, rel=0.05)


def test_all_done_as_planned_is_the_plan_itself(shown):
    told = logged(shown, *(("band-done", one.end_min, {"band": one.id}) for one in bands(shown)))
    for field, was in zip(told.floor_plan.fields, shown.plan.fields, strict=True):
        assert field.end_min == pytest.approx(was.end_min, abs=1.0)


def test_the_rest_laid_anew_stands_in_the_plans_place_only_where_it_is_of_these_facts(shown):
    document = plan_to_dict(shown.plan)
    entries = kept(("band-done", 1.0, {"band": bands(shown)[0].id}))
    rest = {"upto": 1, "plan": document}
    assert went(shown.plan, entries, now_min=1.0, rest=rest).laid_anew
    other = {"upto": 1, "plan": document | {"inputs_hash": "of others"}}
    assert not went(shown.plan, entries, now_min=1.0, rest=other).laid_anew


def test_every_entry_changes_its_mark_and_every_minute_what_is_drawn(shown):
    entries = kept(("mixed", 1.0, {}), ("filled", 2.0, {}))
    told = [
        went(shown.plan, entries[:n], now_min=now, rest=None)
        for n in (1, 2) for now in (5.0, 6.0)
    ]  # fmt: skip
    assert len({one.mark for one in told}) == 2
    assert len({(one.mark, one.now_min) for one in told}) == 4
