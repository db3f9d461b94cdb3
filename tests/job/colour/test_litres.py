"""Litres of the next coat: by field, and by its bands where a part of a field is asked about."""

from dataclasses import replace

import pytest
from tests.papers.office.grounds import planned

from farwall.colour.next_coat import Way
from farwall.facts.defaults import settle
from farwall.job.colour.litres import litres_of

JOB, PLAN = planned()
SETTLED = settle(JOB)
COAT = SETTLED.coats[0]


def likely(plan, *rooms):
    way = Way(0, 1.0, plan.inputs.l_per_m2[COAT.id])
    return litres_of(SETTLED, plan, COAT, way, rooms)


def test_the_litres_of_rooms_come_to_those_of_the_whole_floor():
    every = [room.id for room in PLAN.inputs.floor.rooms]
    planned_l = sum(band.litres for one in PLAN.fields if one.coat == COAT.id for band in one.bands)
    assert likely(PLAN, *every).likely_l == pytest.approx(planned_l)
    alone = [likely(PLAN, room).likely_l for room in every]
    assert sum(alone) == pytest.approx(planned_l, rel=1e-3)


def test_a_room_of_a_field_takes_the_litres_of_the_bands_that_lie_in_it():
    """Two fields of one room each, told as one field; of the second every other band is kept dry.
    By the sizes of the rooms, as it once was, the second would take far more than its bands."""
    first, second = [one for one in PLAN.fields if one.coat == COAT.id and len(one.rooms) == 1][:2]
    left = second.bands[::2]
    both = replace(first, rooms=(*first.rooms, *second.rooms), bands=(*first.bands, *left))
    found = likely(replace(PLAN, fields=(both,)), *second.rooms)
    assert found.likely_l == pytest.approx(sum(band.litres for band in left), rel=1e-3)
    assert found.area_m2 == pytest.approx(sum(band.polygon.shape.area for band in left), rel=1e-3)
