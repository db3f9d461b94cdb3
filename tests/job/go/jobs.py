"""A job of two rooms about which everything was told and is in order, to be spoilt one by one."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.job import Job, RoomSurvey, Stain, Survey
from farwall.facts.slab import Hidden, MixTicket, MoistureTest

ROOMS = {"front": RoomSurvey(drop_s=10.0), "back": RoomSurvey(drop_s=12.0)}
SURVEY = Survey(
    slab_age_days=60,
    sheet_slab_age_days=28,
    slab_c=20.0,
    air_c=21.0,
    rooms=ROOMS,
    film="nothing",
    covering="bare",
    acid_before="nowhere",
    burnished="nowhere",
    bare_sand_percent=0,
    mix=MixTicket(fly_ash_percent=0, slag_percent=0, chloride_accelerator=False, cement_kg_m3=300),
    pours=1,
    patched=False,
    cracks_accepted=True,
    moisture=(
        MoistureTest("meter", meter="even"),
        MoistureTest("F1869", vapour_ug_m2_s=100.0),
        MoistureTest("F2170", slab_rh_percent=70),
        MoistureTest("D4263", sheet="dry"),
    ),
    slab_ph=10,
    efflorescence=False,
    ground_frozen=False,
    hidden=Hidden(False, False, False),
    sample_scrub="holds",
    sample_signed=True,
    colour_wanted="range",
    trades="closed",
    waste="drums",
)
GOOD = job(TWO_ROOMS, survey=SURVEY, stains=(Stain("sand", chromate=False),))


def surveyed(**told: Any) -> Job:
    """The good job with these answers of the survey instead."""
    return replace(GOOD, survey=replace(SURVEY, **told))


def with_parts(**parts: Any) -> Job:
    """The good job with these parts instead."""
    return replace(GOOD, **parts)


def moist(kind: str, **read: Any) -> Job:
    """The good job with one moisture test, of this kind and reading, and no other."""
    return surveyed(moisture=(MoistureTest(kind, **read),))  # type: ignore[arg-type]
