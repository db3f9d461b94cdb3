"""Rules on damp: each test by its standard, its reading against its limits; salts and pH."""

from __future__ import annotations

from farwall.air.slab_tests import RH_LIMITS_PERCENT, UG_M2_S_PER_LB, VAPOUR_LIMITS_LB
from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.facts.slab import MoistureTest
from farwall.job.go.noun import Rule, Says, named

OLD_SKIN_PH = 9.0
VAPOUR = (
    "3 lb/(1,000 ft²·24 h) (films by one specification)",
    "5 lb/(1,000 ft²·24 h) (films by another)",
    "5 to 8 lb for breathable acrylics (from memory)",
)
SLAB_RH = ("75 % (the low end of usual limits)", "90 % (the high end)")
_WAIT = "Wait with moving air and read again; a breathable sealer, whose label wins."


def _tests(job: Job, kind: str) -> list[MoistureTest]:
    return [one for one in job.survey.moisture if one.kind == kind]


def _where(job: Job, tests: list[MoistureTest]) -> tuple[tuple[str, ...], str]:
    known = job.floor.room_by_id
    rooms = tuple(dict.fromkeys(one.room for one in tests if one.room in known and one.room))
    return rooms, f" in {named(job, rooms)}" if rooms else ""


def _vapour(job: Job) -> Says | None:
    read = [one for one in _tests(job, "F1869") if one.vapour_ug_m2_s is not None]
    if not read:
        return None
    chosen = job.choices.most_vapour_ug_m2_s
    most_lb = VAPOUR_LIMITS_LB[0] if chosen is None else chosen / UG_M2_S_PER_LB
    worst = max(read, key=lambda one: one.vapour_ug_m2_s or 0.0)
    rate_lb = (worst.vapour_ug_m2_s or 0.0) / UG_M2_S_PER_LB
    rooms, at = _where(job, [worst])
    told = f"Calcium chloride (F1869) reads {rate_lb:.1f} lb/(1,000 ft²·24 h){at}"
    if rate_lb <= most_lb + 1e-9:
        return Says("go", f"{told}, at most {most_lb:g}.")
    if rate_lb > max(VAPOUR_LIMITS_LB[1], most_lb) + 1e-9:
        return Says("no", f"{told}, above what films bear ({most_lb:g}).", _WAIT, where=rooms)
    return Says("go with", f"{told}, above {most_lb:g}.", _WAIT, where=rooms)


def _probes(job: Job) -> Says | None:
    read = [one for one in _tests(job, "F2170") if one.slab_rh_percent is not None]
    if not read:
        return None
    chosen = job.choices.most_slab_rh_percent
    most = RH_LIMITS_PERCENT[0] if chosen is None else chosen
    worst = max(read, key=lambda one: one.slab_rh_percent or 0.0)
    percent = worst.slab_rh_percent or 0.0
    rooms, at = _where(job, [worst])
    told = f"A probe (F2170) reads {percent:g} %{at}"
    if percent <= most:
        return Says("go", f"{told}, at most {most:g} %.")
    if percent > max(RH_LIMITS_PERCENT[1], most):
        return Says("no", f"{told}, above every usual limit.", _WAIT, where=rooms)
    return Says("go with", f"{told}, above {most:g} %.", _WAIT, where=rooms)


def _sheet(job: Job) -> Says | None:
    read = [one for one in _tests(job, "D4263") if one.sheet is not None]
    if not read:
        return None
    damp = [one for one in read if one.sheet != "dry"]
    rooms, at = _where(job, damp)
    if any(one.sheet == "wet" for one in damp):
        return Says(
            "no",
            f"The sheet (D4263) is wet below{at}.",
            "Wait, find where the water comes from, and lay it again.",
            where=rooms,
        )
    if damp:
        return Says("go with", f"The sheet (D4263) is damp below{at}.", _WAIT, where=rooms)
    return Says("go", "The sheets (D4263) stayed dry; a dry sheet proves no dry slab.")


def _meter(job: Job) -> Says | None:
    read = [one for one in _tests(job, "meter") if one.meter is not None]
    if not read:
        return None
    uneven = [one for one in read if one.meter != "even"]
    rooms, at = _where(job, uneven)
    if any(one.meter == "wet" for one in uneven):
        return Says("no", f"The meter finds the slab wet{at}.", "Wait, fans; read again.", rooms)
    if uneven:
        return Says(
            "go with",
            f"The meter finds damp islands{at}: much water lightens stain, a little darkens it.",
            "Wait, fans; read the 3 ft grid again; a breathable sealer.",
            where=rooms,
        )
    return Says("go", "The meter reads even.")


def _any(job: Job) -> Says | None:
    if job.survey.moisture:
        return Says("go", "Moisture was tried.")
    return None


def _salts(job: Job) -> Says | None:
    found = job.survey.efflorescence
    if found is None:
        return None
    if found:
        return Says(
            "no",
            "White salts come back after brushing: water comes up through the slab.",
            "Find the water first: drains, ground, a missing barrier. An engineer's question.",
        )
    return Says("go", "No salts come back.")


def _ph(job: Job) -> Says | None:
    ph = job.survey.slab_ph
    if ph is None:
        return None
    if ph < OLD_SKIN_PH:
        return Says(
            "go with",
            f"The bare slab reads pH {ph:g}: little lime is left in its skin.",
            "Expect pale, patchy colour; the sample decides.",
        )
    return Says("go", f"The bare slab reads pH {ph:g}.")


RULES = (
    Rule(
        "moisture",
        "survey",
        88,
        "Is the slab dry and evenly so? The tests to do are listed.",
        _any,
        vital=True,
    ),
    Rule(
        "vapour (F1869)",
        "survey",
        78,
        "",
        _vapour,
        source="astm-f1869, trade-press",
        advised=VAPOUR,
    ),
    Rule(
        "slab humidity (F2170)",
        "survey",
        78,
        "",
        _probes,
        source="astm-f2170",
        advised=SLAB_RH,
    ),
    Rule("plastic sheet (D4263)", "survey", 79, "", _sheet, source="astm-d4263, common-practice"),
    Rule("meter", "survey", 77, "", _meter, source="trade-press, common-practice"),
    Rule(
        "salts",
        "survey",
        76,
        "Do white salts come back after brushing?",
        _salts,
    ),
    Rule(
        "slab pH",
        "survey",
        42,
        "What pH does the bare, wetted slab read?",
        _ph,
        rank=Rank.PRACTICE,
    ),
)
