"""Records of a room out of its log, by hand: pH, rag, margin over the dew point, litres."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.job.story.entries import Log
from tests.midday import EXAMPLES, day_of

from farwall.job.call_back import Call, triage_of
from farwall.job.call_back.records import RoomRecords
from farwall.job.story import story
from farwall.readers.job_json import read_job

PLAN = day_of("quince-street")
JOB = read_job(EXAMPLES / "quince-street" / "job.json")
ROOM, OTHER = JOB.floor.rooms[0].id, JOB.floor.rooms[1].id


def signs(log, room=ROOM, job=JOB):
    found = RoomRecords(job, PLAN, story(PLAN, log.kept), room).signs()
    return {one.kind: one for one in found}


def test_ph_rag_and_rinses_are_those_of_the_room():
    log = Log(PLAN)
    for number in (1, 2):
        log("rinsed", 1400 + number, room=ROOM, ph=6.1, rag="grey", round=number)
    for number in (1, 2, 3):
        log("rinsed", 1500 + number, room=OTHER, ph=7.5, rag="clean", round=number)
    log("dry-swiped", 2000, room=OTHER, powder=False)
    mine, other = signs(log), signs(log, OTHER)
    assert (mine["ph"].value, mine["rag"].value, mine["rinses"].value) == ("low", "dirty", "few")
    assert "6.1" in mine["ph"].told
    assert (other["ph"].value, other["rag"].value, other["rinses"].value) == (
        "in", "clean", "enough",
    )  # fmt: skip
    assert other["powder"].value == "none"
    whole = signs(log, "")
    assert (whole["ph"].value, whole["rag"].value) == ("low", "dirty")


def test_the_margin_at_sealing_by_hand():
    """Air 24 °C at 70 %: dew point 18.2 °C (Magnus by hand); slab 20 °C is 1.8 K above, 3 wanted.

    At 40 % the dew point is 9.6 °C and the margin 10.4 K.
    """
    damp, dry = Log(PLAN), Log(PLAN)
    for log, rh in ((damp, 70.0), (dry, 40.0)):
        log("reading", 2900, air_c=24.0, rh_percent=rh, slab_c=20.0)
        log("sealed", 2960, round=1, room=ROOM)
    assert signs(damp)["margin"].value == "small"
    assert "above the dew point; a sealer wants 5 °F (3 K)" in signs(damp)["margin"].told
    assert signs(dry)["margin"].value == "enough"
    assert signs(dry)["slab"].value == "warm"


def test_a_reading_of_another_hour_or_room_is_none_of_it():
    log = Log(PLAN)
    log("reading", 2000, air_c=24.0, rh_percent=70.0, slab_c=20.0)
    log("reading", 2950, air_c=24.0, rh_percent=70.0, slab_c=20.0, room=OTHER)
    log("sealed", 2960, round=1, room=ROOM)
    assert "margin" not in signs(log)
    assert signs(log)["dried"].value == "not seen"


def test_sealer_against_its_label_by_hand():
    """10 m²/L on the label: a room of so many m² wants a tenth in litres; twice that is thick."""
    job = replace(JOB, sealer=replace(JOB.sealer, m2_per_l=10.0))
    area_m2 = JOB.floor.room_by_id[ROOM].polygon.shape.area
    for share, value in ((1.0, "usual"), (2.0, "thick"), (0.5, "thin")):
        log = Log(PLAN)
        log("sealed", 2960, round=1, room=ROOM, litres=share * area_m2 / 10.0)
        assert signs(log, job=job)["sealer"].value == value


def test_finish_is_known_once_the_job_is_handed_over():
    log = Log(PLAN)
    log("hours", 3000, task="seal", hours=4.0)
    assert "finish" not in signs(log)
    log("handed-over", 3100)
    assert signs(log)["finish"].value == "none"
    log("hours", 3050, task="finish", hours=2.0)
    assert signs(log)["finish"].value == "laid"


@pytest.mark.parametrize("rag", ["clean", "grey"])
def test_a_dirty_rag_of_this_room_brings_residue_before_all_else(rag):
    log = Log(PLAN)
    log("rinsed", 1400, room=ROOM, ph=7.5, rag=rag, round=1)
    call = Call(look="peeling", room=ROOM, months=2.0, where="lanes")
    found = triage_of(JOB, PLAN, story(PLAN, log.kept), call)
    assert (found.likely[0].cause == "residue") is (rag == "grey")
