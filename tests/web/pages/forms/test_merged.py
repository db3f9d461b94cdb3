"""What was typed into older facts is laid over the newest, and empties nothing of theirs."""

import copy

import pytest
from tests.web.pages.forms.test_told import FACTS, FORMS, typed_of
from tests.web.pages.office import two_rooms

from farwall.web.pages.forms.asked import asked_of
from farwall.web.pages.forms.merged import merged
from farwall.web.pages.forms.survey import SURVEY
from farwall.web.pages.forms.told import changed_facts


def facts(**survey):
    return two_rooms(survey=survey, wishes={"units": "metric"})


def after(before, now, **typed):
    """The facts once what was typed into those before is kept on those now, and the slips."""
    asked = asked_of(SURVEY, before)
    told = typed_of(asked) | {name.replace("__", "."): text for name, text in typed.items()}
    found = merged(asked, asked_of(SURVEY, now), told)
    kept = changed_facts(asked_of(SURVEY, now), now, found.told)
    return (now if kept is None else kept)["survey"], [one.name for one in found.slips if one.name]


@pytest.mark.parametrize("name", FORMS)
def test_a_page_sent_as_it_stood_takes_all_that_is_told_now(name):
    now = copy.deepcopy(FACTS)
    now["survey"]["air_c"] = 21
    asked = asked_of(FORMS[name], FACTS)
    found = merged(asked, asked_of(FORMS[name], now), typed_of(asked))
    assert found.told == {}
    assert len(found.slips) == 1


def test_a_blank_that_another_filled_stays_filled():
    survey, slips = after(facts(), facts(drop_s=14), survey__slab_c="18")
    assert survey == {"drop_s": 14, "slab_c": 18}
    assert slips == []


def test_where_both_told_otherwise_it_is_said_beside_the_blank():
    survey, slips = after(facts(drop_s=8), facts(drop_s=14), survey__drop_s="9")
    assert survey["drop_s"] == 9
    assert slips == ["survey.drop_s"]


def test_a_room_is_found_by_its_id_when_another_came_before_it():
    now = facts()
    now["floor"]["rooms"].reverse()
    room = facts()["floor"]["rooms"][0]["id"]
    survey, _ = after(facts(), now, survey__rooms__0__drop_s="9")
    assert survey["rooms"] == {room: {"drop_s": 9}}


def test_a_new_row_of_each_is_two_rows():
    row = {"kind": "meter", "meter": "even"}
    survey, _ = after(
        facts(), facts(moisture=[row]), survey__moisture__0__kind="meter",
        survey__moisture__0__meter="wet",
    )  # fmt: skip
    assert len(survey["moisture"]) == 2
    assert survey["moisture"][0]["meter"] == "even"


def test_a_row_that_went_meanwhile_is_told_and_no_other_is_changed_for_it():
    rows = [{"kind": "meter", "meter": "even"}, {"kind": "meter", "meter": "even"}]
    before, now = facts(moisture=rows), facts(moisture=rows[:1])
    asked = asked_of(SURVEY, before)
    told = typed_of(asked) | {"survey.moisture.0.room": before["floor"]["rooms"][0]["id"]}
    found = merged(asked, asked_of(SURVEY, now), told)
    assert found.told == {}
    assert "no longer there" in str(found.slips[1])
