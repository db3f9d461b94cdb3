"""How long edges live in a field, each where it lies. Hand-worked on a hall with one cut."""

import pytest
from tests.spray.hand_floors import hall, job

from farwall.job.edge_lives import lives_on
from farwall.job.ground import ground_of


def test_each_room_of_a_field_has_its_own_floor_and_its_open_time():
    ground = ground_of(job(hall(9, 5)), None)
    coat = ground.settled.coats[0]
    lives_of = lives_on(ground.world, ground.lasting, coat)
    lives = lives_of(frozenset(ground.world.pieces), 0.0, 30.0)
    rooms = {piece.room for piece in ground.world.pieces.values()}
    assert set(lives.floors) == rooms == {one.room for one in lives.open_times}
    area = sum(piece.shape.area for piece in ground.world.pieces.values())
    assert sum(shape.area for shape in lives.floors.values()) == pytest.approx(area)
    assert lives.tightest.low == ground.lasting.shortest(tuple(rooms), coat, 0.0).low
