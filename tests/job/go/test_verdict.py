"""The verdict of a whole job: the strictest word wins, and nothing unknown is guessed."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st
from tests.job.go.jobs import GOOD, SURVEY, surveyed
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.checks import Morning, Readiness
from farwall.facts.job import RoomSurvey, Survey
from farwall.job.go import go_of_plan, go_or_no_go
from farwall.job.go.drop_rules import leaps_inside
from farwall.job.go.say import in_short, parts, said
from farwall.job.go.table import RULES
from farwall.job.plan_job import plan_job

BARE = job(TWO_ROOMS, survey=Survey())


def test_all_told_and_in_order_is_a_go():
    go = go_or_no_go(GOOD)
    assert go.verdict == "go"
    assert {one.verdict for one in go.findings} == {"go"}
    assert "every rule is in order" in in_short(go)


def test_nothing_told_is_not_yet_and_every_vital_question_is_asked():
    go = go_or_no_go(BARE)
    assert go.verdict == "not yet"
    asked = {one.rule for one in go.findings if one.verdict == "ask"}
    assert {rule.id for rule in RULES if rule.vital} <= asked
    assert not any(one.verdict in {"no", "go with"} for one in go.findings)


def test_one_no_is_the_verdict_and_stands_first():
    go = go_or_no_go(replace(BARE, survey=Survey(acid_before="whole")))
    assert go.verdict == "no"
    assert go.findings[0].rule == "past acid"
    assert said(go).splitlines()[0].endswith("No.")
    assert "No-go" in in_short(go)


def test_reasons_stand_in_order_of_weight():
    go = go_or_no_go(surveyed(acid_before="whole", efflorescence=True, colour_wanted="chart"))
    noes = [one for one in go.findings if one.verdict == "no"]
    assert [one.rule for one in noes] == ["past acid", "colour wished for", "salts"]
    for _, found in parts(go_or_no_go(BARE)):
        weights = [one.weight for one in found]
        assert weights == sorted(weights, reverse=True)


def test_the_call_and_the_morning_are_asked_once_somebody_began_to_tell():
    silent = {one.stage for one in go_or_no_go(BARE).findings}
    assert silent == {"survey"}
    begun = replace(GOOD, readiness=Readiness(water=True), morning=Morning(fan=True))
    asked = [one for one in go_or_no_go(begun).findings if one.verdict == "ask"]
    assert {one.stage for one in asked} == {"day before", "morning"}
    assert go_or_no_go(begun).verdict == "go"


def test_suction_inside_one_field_is_told_with_the_plan():
    """By hand: 4 s and 17 s are more than four times apart, 4 and 16 are not."""
    rooms = {"front": RoomSurvey(drop_s=4.0), "back": RoomSurvey(drop_s=17.0)}
    uneven = surveyed(rooms=rooms)
    assert leaps_inside([("front",), ("back",)], uneven) is None
    says = leaps_inside([("front", "back"), ("back", "front")], uneven)
    assert says.where == ("front", "back")
    assert "4 to 17 s" in says.reason
    nearer = surveyed(rooms={**rooms, "back": RoomSurvey(drop_s=16.0)})
    assert leaps_inside([("front", "back")], nearer) is None
    one_field = replace(plan_job(GOOD).fields[0], rooms=("front", "back"))
    found = {one.rule for one in go_of_plan(uneven, [one_field]).findings}
    assert "suction in one field" in found


FIELDS = ["film", "covering", "acid_before", "waste", "trades", "sample_scrub", "slab_age_days"]


@given(st.sets(st.sampled_from(FIELDS)))
def test_forgetting_an_answer_never_makes_a_go(forgotten):
    """A law: with fewer facts the verdict is a go only when nothing vital was forgotten."""
    go = go_or_no_go(replace(GOOD, survey=replace(SURVEY, **dict.fromkeys(forgotten))))
    assert go.verdict == ("not yet" if forgotten else "go")


@given(st.floats(0, 100), st.floats(0, 100))
def test_an_older_slab_is_never_worse(one, other):
    """A law of the age rule alone."""
    order = ["no", "go with", "go"]

    def word(days):
        found = go_or_no_go(surveyed(slab_age_days=days)).findings
        return order.index(next(f.verdict for f in found if f.rule == "slab age"))

    young, old = sorted((one, other))
    assert word(young) <= word(old)
