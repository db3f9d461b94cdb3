"""The record of washing: how many rinses a room had, as the closed job and the wash day tell it."""

from __future__ import annotations

from tests.job.story.entries import Log
from tests.papers.office import houses
from tests.papers.office.houses import House

from farwall.job.closed import closed_job
from farwall.job.story import story
from farwall.papers.office.blocks import Own, Rows
from farwall.papers.office.wash_record import wash_record


def test_record_wash_day_and_closed_job_tell_one_count():
    """By hand: the whole floor twice, the first room once more; the second from its fifth on."""
    house = houses.twelve()
    first, second = (room.id for room in house.job.floor.rooms[:2])
    log = Log(house.plan)
    for minute in (1400, 1430):
        log("rinsed", minute, rag="grey", ph=7.0)
    log("rinsed", 1460, room=first, rag="clean", ph=7.5)
    log("rinsed", 1470, room=second, round=5, rag="clean", ph=7.5)
    ground = House(house.job, house.plan, tuple(log.kept)).ground()
    table = next(one for one in wash_record(ground).blocks if isinstance(one, Rows))
    record = [row[3].text if isinstance(row[3], Own) else row[3] for row in table.rows[:3]]
    assert record == ["3", "5", "2"]
    assert [one.so_far.rinses for one in sorted(
        ground.acid.washing.rooms, key=lambda one: [r.id for r in house.job.floor.rooms].index(
            one.room))[:3]] == [3, 5, 2]  # fmt: skip
    told = story(house.plan, log.kept)
    closed = closed_job(house.job, house.plan, told, job_id="sorrel")
    assert {one.room: one.rounds for one in closed.rinsed} == {first: 3, second: 5}
