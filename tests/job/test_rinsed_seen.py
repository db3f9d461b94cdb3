"""pH and rag of a log's rooms as what is watched on the floor: the worst room decides."""

from dataclasses import replace

import pytest
from tests.job.live.test_now import JOB, PLAN
from tests.job.story.entries import Log

from farwall.facts.checks import Watch
from farwall.facts.sealer import Sealer
from farwall.job.rinsed_seen import as_rinsed
from farwall.job.seal_day.ready import reasons_of
from farwall.job.story import story

ROOMS = [room.id for room in PLAN.inputs.floor.rooms]
TYPED = replace(JOB, watch=Watch(rinse_ph=7.5, rag="clean"))


def watched(*entries, job=TYPED):
    log = Log(PLAN)
    for n, (word, about) in enumerate(entries):
        log(word, 1000 + n, **about)
    return as_rinsed(job, PLAN, story(PLAN, log.kept)).watch


def every(ph=7.5, rag="clean", **but):
    """A rinse of every room, some read otherwise."""
    return [("rinsed", {"room": room, "ph": ph, "rag": rag, **but.get(room, {})}) for room in ROOMS]


def test_without_a_rinse_in_the_log_what_was_typed_stands():
    assert watched(("scrubbed", {"room": ROOMS[0]})) == TYPED.watch
    assert as_rinsed(TYPED, PLAN, None) is TYPED


def test_the_worst_room_decides():
    assert watched(*every()) == Watch(rinse_ph=7.5, rag="clean")
    sour = watched(*every(**{ROOMS[2]: {"ph": 6.0}}))
    assert (sour.rinse_ph, sour.rag) == (6.0, "clean")
    high = watched(*every(**{ROOMS[1]: {"ph": 10.0}, ROOMS[2]: {"ph": 8.9}}))
    assert high.rinse_ph == 10.0
    assert watched(*every(**{ROOMS[3]: {"rag": "grey"}})).rag == "dirty"
    assert watched(*every(), ("dry-swiped", {"room": ROOMS[0], "powder": True})).rag == "dirty"


@pytest.mark.parametrize("ph", [7.5, 10.0])
def test_what_would_pass_is_not_known_while_a_room_was_not_read(ph):
    found = watched(*every(ph=ph)[:-1])
    assert (found.rinse_ph, found.rag) == (None, None)
    codes = {(one.code, one.word) for one in reasons_of(replace(TYPED, watch=found))}
    assert {("pH", "ask"), ("residue", "ask")} <= codes


def test_what_no_rule_lets_pass_is_told_at_once():
    found = watched(("rinsed", {"room": ROOMS[0], "ph": 5.0, "rag": "coloured"}))
    assert (found.rinse_ph, found.rag) == (5.0, "dirty")
    bears = replace(TYPED, sealer=Sealer(least_ph=6.0))
    assert watched(("rinsed", {"room": ROOMS[0], "ph": 6.5}), job=bears).rinse_ph is None


def test_only_the_last_rinse_of_a_room_counts_and_the_rest_stays_as_typed():
    job = replace(TYPED, watch=replace(TYPED.watch, fizz=True, wet_look="right"))
    found = watched(*every(ph=5.0, rag="coloured"), *every(), job=job)
    assert found == job.watch
