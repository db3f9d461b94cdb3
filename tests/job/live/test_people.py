"""People on a live day: each alarm and advice once when it speaks and once when it is silent."""

from dataclasses import replace

import pytest
from tests.job.live.test_now import JOB, PLAN, morning
from tests.job.story.entries import Log

from farwall.facts.workers import Cartridge, Emergency, Worker
from farwall.job.live import now
from farwall.job.story import story

ADA = Worker("ada", "Ada", ("sprays",), cartridge=Cartridge(change_after_min=60, used_min=20))
CREW = replace(JOB, workers=(ADA,))


def at(log, minute, job=CREW):
    return now(job, PLAN, story(PLAN, log.kept), at_min=minute)


def alarm(found, kind):
    return [(one.at_min, one.what) for one in found.alarms if one.kind == kind]


def rules(found):
    return {one.rule for one in found.advice}


def spraying(until=16.0):
    """Begun at minute 2, the third field done at `until`; more to come."""
    log = Log(PLAN)
    log("field-started", 2.0, field="first.1")
    log("field-done", 4.0, field="first.1")
    log("field-started", 5.0, field="first.2")
    log("field-done", until, field="first.2")
    return log


def test_the_next_look_is_called_for_while_somebody_sprays_by_hand():
    """Begun at 2: by the guess of 15 min at 17; by the firm's 5 and a look at 12, at 17 too."""
    log = spraying()
    assert alarm(at(log, 16.1), "look in") == [(17.0, "look in on Ada, and enter looked-in")]
    every = replace(CREW, emergency=Emergency(look_in_min=5))
    log("looked-in", 12.0, person="Ada", by="Cy")
    assert alarm(at(log, 16.1, every), "look in")[0][0] == 17.0
    assert alarm(at(log, 16.1), "look in")[0][0] == 27.0


def test_a_look_at_the_very_start_of_the_plan_counts():
    """Sprayed from 10 min before the planned start, looked in at minute 0: the next at 15."""
    log = Log(PLAN)
    log("field-started", -10.0, field="first.1")
    log("looked-in", 0.0, person="Ada", by="Cy")
    log("field-done", 4.0, field="first.1")
    log("field-started", 4.5, field="first.2")
    assert alarm(at(log, 5.5), "look in") == [(15.0, "look in on Ada, and enter looked-in")]
    assert "look in" not in rules(at(log, 6.0))


def test_nobody_is_looked_in_on_before_after_and_long_after_the_last_entry():
    assert alarm(at(Log(PLAN), 10.0), "look in") == []
    assert alarm(at(spraying(), 47.0), "look in") == []
    done = spraying()
    done("coat-done", 60.0, coat="first")
    assert alarm(at(done, 61.0), "look in") == []


def test_a_look_that_is_not_entered_is_asked_after_and_stops_nothing():
    log = spraying(until=30.0)
    found = at(log, 31.0)
    assert "look in" in rules(found)
    assert not any(one.stop for one in found.advice if one.rule == "look in")
    log("looked-in", 30.5, person="ada")
    assert "look in" not in rules(at(log, 31.0))


def test_a_look_at_the_helper_is_none_at_the_sprayer():
    crew = replace(CREW, workers=(ADA, Worker("bo", "Bo", ("helps",))))
    log = spraying(until=30.0)
    log("looked-in", 30.5, person="Bo")
    assert "look in" in rules(at(log, 31.0, crew))


def test_two_who_spray_are_each_looked_in_on():
    crew = replace(CREW, workers=(ADA, Worker("di", "Di", ("sprays",))))
    log = spraying()
    log("looked-in", 12.0, person="Ada")
    assert [one[1].split(",")[0] for one in alarm(at(log, 16.1, crew), "look in")] == [
        "look in on Di", "look in on Ada",
    ]  # fmt: skip


def test_where_nobody_told_of_people_only_the_next_look_is_called_for():
    found = at(spraying(until=30.0), 31.0, JOB)
    assert not rules(found) & {"look in", "respirator", "cartridges"}
    assert alarm(found, "look in")


def test_spraying_without_a_respirator_entered_is_advice_and_no_stop():
    log = spraying()
    found = at(log, 16.1)
    assert "respirator" in rules(found)
    assert not any(one.stop for one in found.advice if one.rule == "respirator")
    log("respirator-on", 1.0, person="Ada", counted=0)
    assert "respirator" not in rules(at(log, 16.1))
    log("respirator-off", 16.05, person="Ada")
    assert "respirator" in rules(at(log, 16.1))


def test_cartridges_are_called_for_before_their_schedule_ends_by_hand():
    """20 of 60 used; on from 0: 40 left, so 15 are left at minute 25, none at 40."""
    log = spraying()
    log("respirator-on", 0.0, person="Ada", counted=0)
    assert alarm(at(log, 16.1), "cartridges") == [(25.0, "cartridges of Ada: 15 min left")]
    found = at(log, 30.0)
    assert alarm(found, "cartridges")[0][0] == 40.0
    assert found.people[0].pair_left_min == 10.0
    late = at(log, 45.0)
    assert alarm(late, "cartridges") == []
    assert "cartridges" in rules(late)
    log("cartridge-changed", 44.0, person="Ada")
    changed = at(log, 45.0)
    assert "cartridges" not in rules(changed)
    assert changed.people[0].pair_left_min == 59.0


def test_a_new_pair_with_a_schedule_of_its_own_is_held_to_that():
    log = spraying()
    log("respirator-on", 0.0, person="Ada", counted=0)
    log("cartridge-changed", 10.0, person="Ada", change_after_min=30, counted=0)
    assert at(log, 20.0).people[0].pair_left_min == 20.0


def test_without_a_schedule_nothing_is_reckoned_of_a_pair():
    log = spraying()
    log("respirator-on", 0.0, person="Ada", counted=0)
    bare = replace(JOB, workers=(replace(ADA, cartridge=None),))
    found = at(log, 16.1, bare)
    assert (found.people[0].pair_left_min, alarm(found, "cartridges")) == (None, [])
    assert found.people[0].worn_min == pytest.approx(16.1)


def test_somebody_not_well_stops_the_day_until_it_is_told_to_be_well():
    log = spraying()
    log("looked-in", 16.0, person="Ada", well=False)
    assert at(log, 16.1).stops[0].rule == "not well"
    log("looked-in", 16.05, person="Ada", well=True)
    assert "not well" not in rules(at(log, 16.1))


def test_who_sprays_is_called_so_where_the_phone_was_told_no_name():
    log = spraying()
    log("looked-in", 16.0, person="sprayer", well=False)
    nobody = replace(JOB, workers=())
    assert at(log, 16.1, nobody).stops[0].reason.startswith("The sprayer was not well ")


@pytest.mark.parametrize(
    ("about", "short"),
    [({"reached_s": 10}, False), ({"reached_s": 11}, True), ({"flow_l_min": 1.5}, False),
     ({"flow_l_min": 1.4}, True), ({"ran_min": 1}, False)],
)  # fmt: skip
def test_an_eyewash_that_is_short_of_the_standard_is_told(about, short):
    """29 CFR 1926.50(g) and ANSI/ISEA Z358.1: 10 s, 0.4 gal (1.5 L) a minute."""
    log = morning()
    log("eyewash-tried", 1.0, counted=0, **about)
    assert ("eyewash" in rules(at(log, 16.4))) is short


def test_others_let_in_before_a_rinse_are_told():
    log = Log(PLAN)
    log("kept-out", 0.0, out="everybody")
    assert "let in" not in rules(at(log, 500))
    log("let-in", 600)
    assert "let in" in rules(at(log, 601))
    log("kept-out", 602)
    assert "let in" not in rules(at(log, 603))
    log("rinsed", 700, ph=7, rag="clean")
    log("let-in", 760, aired_min=60)
    assert "let in" not in rules(at(log, 761))


def test_a_struck_entry_counts_not():
    log = spraying()
    made = log("respirator-on", 1.0, person="Ada", counted=0)
    log("struck", 16.05, entry=made.entry.id)
    found = at(log, 16.1)
    assert found.people == ()
    assert "respirator" in rules(found)


def test_a_respirator_of_one_who_sprays_is_none_on_the_other():
    crew = replace(CREW, workers=(ADA, Worker("di", "Di", ("sprays",))))
    log = spraying()
    log("respirator-on", 1.0, person="Ada", counted=0)
    told = [one.reason for one in at(log, 16.1, crew).advice if one.rule == "respirator"]
    assert len(told) == 1
    assert told[0].startswith("Di sprays since")


def test_a_pair_that_is_used_up_and_taken_off_is_no_news_and_at_its_last_minute_it_is_by_hand():
    """By hand: 20 of 60 used and on from 0: used up at minute 40."""
    log = spraying(until=39.0)
    log("respirator-on", 0.0, person="Ada", counted=0)
    assert "cartridges" not in rules(at(log, 39.9))
    last = at(log, 40.0)
    assert "cartridges" in rules(last)
    assert alarm(last, "cartridges") == []
    log("respirator-off", 45.0, person="Ada")
    assert "cartridges" not in rules(at(log, 46.0))


def test_a_firm_that_told_how_often_it_looks_in_is_asked_after_it_without_names():
    every = replace(JOB, emergency=Emergency(look_in_min=5))
    assert "look in" in rules(at(spraying(until=30.0), 31.0, every))


def test_after_a_long_pause_a_look_counts_from_the_field_begun_after_it_by_hand():
    """By hand: the second field is done at 16, the third begun at 60, 44 min later: more than half
    an hour. The next look is due 15 min after that; with a pause of 24 min, 15 after the first."""
    for begun, due in ((60.0, 75.0), (40.0, 17.0)):
        log = spraying()
        log("field-started", begun, field="first.3")
        assert alarm(at(log, begun + 0.1), "look in")[0][0] == due


def test_who_was_let_in_and_put_out_again_is_no_news():
    log = spraying()
    log("let-in", 16.0, who="the painter")
    assert "let in" in rules(at(log, 16.05))
    log("kept-out", 16.1)
    assert "let in" not in rules(at(log, 16.2))
