"""By which door a field is left, in words a person knows."""

from __future__ import annotations

from dataclasses import replace

from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.job.plan_job import plan_job
from farwall.job.way_words import way_words


def test_a_door_is_told_by_what_lies_beyond_it_and_never_by_its_id():
    plan = plan_job(job(TWO_ROOMS))
    told = [way_words(plan, field) for field in plan.fields]
    label = {room.id: room.label for room in plan.inputs.floor.rooms}
    for words, field in zip(told, plan.fields, strict=True):
        assert field.exit not in words
        assert any(words.endswith(f" {name}") for name in label.values())
    assert any(words.startswith("the outside door of ") for words in told)


def test_what_is_no_door_is_told_as_it_stands():
    plan = plan_job(job(TWO_ROOMS))
    field = replace(plan.fields[0], exit="nowhere")
    assert way_words(plan, field) == "nowhere"
