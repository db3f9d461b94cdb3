"""Fill the gaps of a survey: slab, air, and what is known of each room."""

from __future__ import annotations

from dataclasses import fields

from farwall.evidence import Rank
from farwall.facts import default_table as table
from farwall.facts.degrees import air_like_slab
from farwall.facts.job import Finish, Job, RoomSurvey, Survey
from farwall.facts.ledger import Ledger
from farwall.facts.settled import SettledRoom, SettledSurvey

DEFAULT_FINISH: Finish = "trowel"


def settled_survey(ledger: Ledger, job: Job) -> SettledSurvey:
    """Slab, air and rooms with every gap filled, each figure noted in the ledger."""
    survey = job.survey
    drop_s = ledger.settle(survey.drop_s, table.DROP_S)
    finish = survey.finish or DEFAULT_FINISH
    if survey.finish is None:
        ledger.note("survey.finish", finish, "", Rank.PRACTICE, table.PRACTICE)
    else:
        ledger.note("survey.finish", finish, "", Rank.MEASURED, "told as survey.finish")
    slab_c, air_c = _settled_temperatures(ledger, survey)
    known = set(survey.rooms)
    for room_id, found in survey.rooms.items():
        _note_room(ledger, room_id, found)
    bare = RoomSurvey()
    rooms = {
        room.id: SettledRoom(
            drop_s=found.drop_s if found.drop_s is not None else drop_s,
            finish=found.finish or finish,
            sun=found.sun,
            draught=found.draught,
            drop_told=found.drop_s is not None or survey.drop_s is not None,
        )
        for room in job.floor.rooms
        for found in [survey.rooms[room.id] if room.id in known else bare]
    }
    return SettledSurvey(
        slab_c=slab_c,
        air_c=air_c,
        rh_percent=ledger.settle(survey.rh_percent, table.RH_PERCENT),
        air_speed_m_s=ledger.settle(survey.air_speed_m_s, table.AIR_SPEED_M_S),
        drop_s=drop_s,
        finish=finish,
        slab_age_days=survey.slab_age_days,
        rooms=rooms,
    )


def _settled_temperatures(ledger: Ledger, survey: Survey) -> tuple[float, float]:
    """Slab and air in C: when one is told and the other not, the other is guessed equal."""
    slab_c, air_c = survey.slab_c, survey.air_c
    if (slab_c is None) == (air_c is None):
        return ledger.settle(slab_c, table.SLAB_C), ledger.settle(air_c, table.AIR_C)
    if slab_c is None:
        air_c = ledger.settle(air_c, table.AIR_C)
        ledger.note("survey.slab_c", air_c, "C", Rank.GUESS, "taken like the air; a slab lags it")
        return air_c, air_c
    slab_c = ledger.settle(slab_c, table.SLAB_C)
    air_c = air_like_slab(slab_c)
    ledger.note("survey.air_c", air_c, "C", Rank.GUESS, "taken like the slab")
    return slab_c, air_c


def _note_room(ledger: Ledger, room_id: str, found: RoomSurvey) -> None:
    bare = RoomSurvey()
    for entry in fields(found):
        value = getattr(found, entry.name)
        if value != getattr(bare, entry.name):
            unit = "s" if entry.name == "drop_s" else ""
            name = f"survey.rooms.{room_id}.{entry.name}"
            ledger.note(name, value, unit, Rank.MEASURED, f"told as {name}")
