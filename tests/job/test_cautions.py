"""Cautions: the standing ones on every plan, others by what is in the tub."""

from __future__ import annotations

import pytest
from tests.shapes import PLAIN_ROOM
from tests.spray.hand_floors import job

from farwall.facts.contents import Content
from farwall.facts.defaults import settle
from farwall.facts.job import Coat, Stain, Tools
from farwall.job.cautions import (
    ADDED_ACID,
    ALWAYS,
    CHROMATE,
    NO_SPARE,
    OXIDISER,
    SPARE,
    UNKNOWN_SHEET,
    cautions_for,
)
from farwall.job.plan_job import plan_job


def told(*stains, acid=None):
    coats = tuple(
        Coat(f"c{n}", stain.id, "1:1", added_acid_fl_oz_per_gal=acid)
        for n, stain in enumerate(stains, 1)
    )
    return cautions_for(settle(job(PLAIN_ROOM, stains=stains, coats=coats)))


READ = Stain("sand", hcl_percent_high=10.0, chromate=False)


def test_the_standing_cautions_come_first_and_always():
    assert told(READ) == (*ALWAYS, SPARE)


def test_what_a_failing_sprayer_asks_for_depends_on_whether_there_is_a_spare():
    settled = settle(job(PLAIN_ROOM, stains=(READ,), tools=Tools(spare_sprayer=False)))
    assert NO_SPARE in cautions_for(settled)
    assert SPARE not in cautions_for(settled)


@pytest.mark.parametrize(
    "words",
    [
        "sheet of the material in hand, local codes and licensed practice win",
        "Acid into water, never water into acid",
        "Never with bleach",
        "ammonia only aired and never into an acid tub",
        "Goggles",
        "respirator",
        "Eyewash within 10 seconds",
        "Nobody works alone",
        "never gained by shutting out the air",
        "Rinse water is waste",
    ],
)
def test_what_can_hurt_is_named(words):
    assert any(words in caution for caution in ALWAYS)


def test_the_sheet_in_hand_wins_is_the_first_word():
    assert "win over this plan" in told(READ)[0]


def test_chromate_changes_the_whole_job():
    found = told(Stain("green", chromate=True))
    assert CHROMATE in found
    assert "No acid is added" in CHROMATE


def test_an_oxidiser_that_is_listed_is_named():
    found = told(Stain("green", chromate=False, contents=(Content("hydrogen peroxide"),)))
    assert OXIDISER in found
    assert "chlorine" in OXIDISER
    assert OXIDISER not in told(READ)


def test_a_sheet_that_nobody_read_is_asked_for_by_the_name_of_the_stain():
    found = told(Stain("s1", name="moss"))
    assert UNKNOWN_SHEET.format(stain="moss") in found
    assert "chromate" in found[-1]


def test_a_stain_without_a_name_is_called_by_its_id():
    assert UNKNOWN_SHEET.format(stain="s1") in told(Stain("s1"))


def test_added_acid_is_never_passed_over():
    found = told(READ, acid=4.0)
    assert ADDED_ACID.format(coat="c1") in found
    for words in ("maker's sheet does not cover it", "sample it first", "fumes rise"):
        assert words in found[-1]


def test_nothing_is_said_twice():
    found = told(Stain("a", chromate=True), Stain("b", chromate=True))
    assert found.count(CHROMATE) == 1


def test_every_plan_carries_them():
    plan = plan_job(job(PLAIN_ROOM, stains=(Stain("sand", chromate=True),)))
    assert plan.cautions[: len(ALWAYS)] == ALWAYS
    assert CHROMATE in plan.cautions
