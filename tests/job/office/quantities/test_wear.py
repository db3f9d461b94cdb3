"""What people wear, by person and day."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest
from tests.job.office.quantities.grounds import ground, lines, planned, warnings

from farwall.facts.job import Crew
from farwall.facts.supplies import Supplies
from farwall.facts.washing import Washing
from farwall.facts.workers import Cartridge, Worker
from farwall.job.acid_day.people.hours import spells_of
from farwall.job.acid_day.washing import washing_of
from farwall.job.office.masking import masked_of
from farwall.job.office.quantities.basis import Basis
from farwall.job.office.quantities.wear import acid_days


def _days():
    """Days of spraying, and of spraying and washing, from the plan's own hours."""
    of = ground()
    start = datetime.fromisoformat(of.plan.starts_at)
    ends = [start + timedelta(minutes=one.end_min) for one in of.plan.fields]
    spraying = {start.date(), *(one.date() for one in ends)}
    washing = datetime.fromisoformat(washing_of(of.acid_ground).begins_at[1]).date()
    return len(spraying), len(spraying | {washing})


@pytest.mark.common_practice
def test_gear_of_a_sprayer_and_a_helper_by_hand():
    """Common practice, no source: three pairs of gloves, a suit a person and day."""
    spraying, days = _days()
    found = lines(ground())
    assert found["gloves"].ready == 3 * 2 * days
    assert found["gloves"].low == 2 * 2 * days
    assert found["suit"].ready == 2 * days
    assert found["cartridges"].ready == 2 * spraying
    assert found["goggles"].ready == found["boots"].ready == 2


def test_who_is_told_counts_by_what_they_do():
    """One who sprays on the first day, one who only scrubs, one who stands by outside."""
    spraying, days = _days()
    crew = (
        Worker("ana", duties=("mixes", "sprays")), Worker("bo", duties=("scrubs",)),
        Worker("cy", duties=("stands by",)),
    )  # fmt: skip
    found = acid_days(Basis(of := ground(workers=crew), masked_of(of)))
    assert found.people == 2
    assert found.person_days == spraying + (days - spraying or 1)
    assert found.breathing_days == spraying


def test_ammonia_asks_cartridges_of_the_one_who_scrubs():
    scrubs = (Worker("bo", duties=("scrubs",)),)
    with_soda = lines(ground(workers=scrubs))
    with_ammonia = lines(ground(workers=scrubs, washing=Washing(base="ammonia water")))
    assert with_soda["cartridges"].ready == 0
    assert with_ammonia["cartridges"].ready == 1


def test_person_days_as_told_take_the_place_of_the_plans():
    found = lines(ground(supplies=Supplies(person_days=7)))
    assert (found["gloves"].ready, found["suit"].ready) == (21, 7)
    assert "as told" in found["suit"].rule


def test_a_schedule_says_how_many_pairs_are_new_by_hand():
    """Spraying lasts t minutes; a pair good for t/2.5 of them, none used: three pairs, two new."""
    minutes = sum(end - begin for _, (begin, end) in spells_of(planned()[1]))
    pair = Cartridge(change_after_min=minutes / 2.5)
    found = lines(ground(workers=(Worker("ana", duties=("sprays",), cartridge=pair),)))
    assert (found["cartridges"].likely, found["cartridges"].ready) == (2, 3)
    assert found["cartridges"].rank == "measured here"
    fresh = Cartridge(change_after_min=minutes + 1)
    spared = lines(ground(workers=(Worker("ana", duties=("sprays",), cartridge=fresh),)))
    assert (spared["cartridges"].likely, spared["cartridges"].ready) == (0, 1)


def test_without_a_schedule_it_is_asked_for():
    assert any("schedule" in one for one in warnings(ground()))
    pair = Cartridge(change_after_min=300)
    told = warnings(ground(workers=(Worker("ana", duties=("sprays",), cartridge=pair),)))
    assert not any("schedule" in one for one in told)


def test_a_hand_more_is_never_less():
    alone, two, three = (
        lines(ground(crew=Crew(sprayers, helper=helper)))
        for sprayers, helper in ((1, False), (1, True), (2, True))
    )
    for id_ in ("gloves", "suit", "goggles", "cartridges", "boots"):
        assert alone[id_].ready < two[id_].ready < three[id_].ready
