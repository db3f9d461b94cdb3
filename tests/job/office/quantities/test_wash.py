"""What the wash day takes."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from tests.job.office.quantities.grounds import ground, lines, of_rooms

from farwall.facts.washing import Drums, Washing
from farwall.job.acid_day.neutralising import neutralising_of
from farwall.job.acid_day.washing import washing_of
from farwall.units import L_PER_US_GAL, M2_PER_FT2


def test_bicarbonate_is_the_acid_days_floor_pail_and_a_spilled_tank():
    of = ground()
    part = neutralising_of(of.acid_ground)
    line = lines(of)["bicarbonate"]
    assert line.likely == pytest.approx(part.floor.base + part.standing_by_kg)
    worst = max(one.base_kg_high / one.litres for one in part.tubs)
    most_l = max(one.litres for one in part.tubs)
    assert line.ready <= part.floor.base + part.standing_by_kg + worst * most_l + 1e-9
    assert line.ready > line.likely
    assert line.high >= part.floor.base_high + max(one.base_kg_high for one in part.tubs)
    assert math.fsum(one.ready for one in line.shares) == pytest.approx(line.ready)


def test_another_base_has_its_own_line_and_bicarbonate_stays_for_spills():
    of = ground(washing=Washing(base="ammonia water"))
    found = lines(of)
    floor = neutralising_of(of.acid_ground).floor
    line = found["neutraliser:ammonia water"]
    assert (line.likely, line.unit) == (pytest.approx(floor.base), "l")
    assert 0 < found["bicarbonate"].likely < lines(ground())["bicarbonate"].likely


@pytest.mark.common_practice
def test_water_and_drums_are_the_wash_days():
    """Common practice, no source: 12 gal on 100 ft² for all rinses."""
    of = ground()
    part, found = washing_of(of.acid_ground), lines(of)
    rinses = next(one for one in found["water"].shares if one.of == "rinses")
    area_ft2 = of.measured.net_m2 / M2_PER_FT2
    assert rinses.likely == pytest.approx(area_ft2 * 0.12 * L_PER_US_GAL, rel=1e-3)
    assert found["drums"].ready == part.drums.full + part.drums.spares
    for one in ("low", "likely", "high", "ready"):
        summed = math.fsum(getattr(each, one) for each in found["water"].shares)
        assert summed == pytest.approx(getattr(found["water"], one))


def test_drums_that_are_there_are_not_asked_for_again():
    had = lines(ground(washing=Washing(drums=Drums(count=1))))["drums"]
    assert had.ready == lines(ground())["drums"].ready - 1
    many = lines(ground(washing=Washing(drums=Drums(count=40))))["drums"]
    assert (many.low, many.ready, many.high) == (0, 0, 0)


def test_strips_are_never_fewer_than_the_readings():
    of = of_rooms(1.0, 1.0, 1.0, 1.0)
    readings = sum(one.strips for one in washing_of(of.acid_ground).rooms)
    assert lines(of)["ph-strips"].ready >= readings
    assert readings >= 4


@pytest.mark.common_practice
def test_what_goes_by_the_floor_by_hand():
    """Common practice, no source: on 258 ft² a quarter of what 1,000 ft² take, up to a whole one:
    5 pads 2, 2.5 mop heads 1, 15 rags 4, 8 bags 3."""
    found = lines(ground())
    told = {id_: found[id_].ready for id_ in ("pads", "mops", "rags", "bags")}
    assert told == {"pads": 2, "mops": 1, "rags": 4, "bags": 3}


def test_cleaner_is_a_cup_half_full_in_a_gallon_by_hand():
    """Two passes of 0.6 L/m² on 24 m² are 28.8 L; a 32nd of it is 0.9 L."""
    of = ground()
    assert lines(of)["cleaner"].ready == pytest.approx(of.measured.net_m2 * 1.2 / 32)


def test_added_floor_adds_water():
    small, large = of_rooms(3.0), of_rooms(3.0, 4.0)
    assert replace(lines(large)["water"]).ready > lines(small)["water"].ready
