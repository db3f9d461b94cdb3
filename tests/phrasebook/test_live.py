"""What is said on the live day beyond single sentences is whole in Spanish too."""

import pytest

from farwall.evidence import Rank
from farwall.job.go.watch_rules import RULES
from farwall.phrasebook import in_spanish

NAMES = frozenset({"Bath", "Great room"})
STOPPING = (
    "wet-below", "sealed wet", "dead edge", "slab", "drop", "sealer cold", "dew point", "hurt",
    "not well",
)  # fmt: skip


@pytest.mark.parametrize("rank", [one.value for one in Rank])
def test_an_advice_is_told_with_its_rank(rank):
    found = in_spanish(f"Nothing is entered since band 1.1.2 was due, 40 min ago. ({rank})")
    assert found is not None
    assert rank not in found


@pytest.mark.parametrize("rule", [*STOPPING, *(one.id for one in RULES)])
def test_a_no_tells_its_rule(rule):
    assert in_spanish(rule) is not None


WAITS = [
    "Coat 1, dry to recoat: likely 9:14 am (8:18 am to not in sight), by the plan 10:10 am; guess.",
    (
        "Coat 1, dry to recoat: likely not in sight (8:18 am (day 2) to not in sight), by the plan "
        "10:10 am (day 2); common practice."
    ),
    "Coat 1, dry to recoat: likely 9:14 am (8:18 am to 1 pm), by the plan not in sight; learned.",
]


@pytest.mark.parametrize("text", WAITS)
def test_a_wait_whose_end_is_not_in_sight(text):
    found = in_spanish(text)
    assert found is not None
    assert "sin fecha" in found
    assert found.startswith("Mano 1, secado entre manos: probable ")


SAID = [
    "0.6 gal (2.1 L) are enough for the rest of 1.2.",
    "Somebody is said to stand on wet floor, in Bath, Great room: look at it.",
    "The rest is worth planning again: spraying stopped at 11:39 pm (the day before).",
    "The rest is worth planning again: spraying stopped at 11:39 pm (3 days before).",
    "Somebody was hurt 8:10 am (day 2): acid in an eye.",
    "The sprayer was not well 8:10 am.", "cartridges of the sprayer: 15 min left",
    "cartridges of the sprayer are at the end of their schedule: a new pair",
    "The cartridges of the sprayer are 4 min past their schedule.",
    "The respirator of the sprayer is told to be off, and was not on.",
    "The respirator of the sprayer is told to be on twice; the first counts.",
    "The respirator of the sprayer is told to be on for longer than 12 h; 12 h are counted.",
]  # fmt: skip


@pytest.mark.parametrize("text", SAID)
def test_each_is_said_whole(text):
    found = in_spanish(text, NAMES)
    assert found is not None
    assert "sprayer" not in found


def test_what_a_person_typed_of_a_hurt_stays_as_it_is():
    assert in_spanish("Somebody was hurt 8:10 am: acid in an eye.").endswith(": acid in an eye.")
