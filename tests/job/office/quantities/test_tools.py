"""Sprayers and what is carried beside them."""

from __future__ import annotations

import pytest
from tests.job.office.quantities.grounds import ground, lines

from farwall.facts.job import Crew
from farwall.facts.supplies import Supplies
from farwall.facts.van import Flow, Van, VanSprayer


def _sound(name):
    return VanSprayer(name, "acid-proof", 7.6, uses=2, flows=(Flow("2026-05-01", 0.7, 1),))


@pytest.mark.common_practice
def test_two_alike_are_wanted_and_one_more_for_a_second_who_sprays():
    """Common practice, no source: always a spare."""
    assert lines(ground())["sprayer"].ready == 2
    assert lines(ground(crew=Crew(2, helper=True)))["sprayer"].ready == 3


def test_sound_ones_in_the_van_are_not_bought_again():
    spent = VanSprayer("old", "cheap", 7.6, uses=2)
    assert lines(ground(van=Van((_sound("blue"), spent))))["sprayer"].ready == 1
    both = Van((_sound("blue"), _sound("red"), _sound("grey")))
    assert lines(ground(van=both))["sprayer"].ready == 0


def test_how_many_are_bought_may_be_told():
    assert lines(ground(supplies=Supplies(sprayers=4)))["sprayer"].ready == 4


def test_spares_and_help_are_carried_whatever_the_floor():
    found = lines(ground())
    for id_ in ("spare-tip", "spare-wand", "seals", "spill-kit", "eyewash"):
        assert found[id_].ready == 1


def test_the_eyewash_runs_a_quarter_of_an_hour_by_hand():
    """15 min at 0.4 gal a minute are 6 gal [eyewash]."""
    assert "6 gal" in lines(ground())["eyewash"].rule
