"""A stranger's photo of a floor goes through the process of its own, marks and all."""

from __future__ import annotations

import pytest
from tests.colour_photos import laid, shot
from tests.floor_photos import ROOM, camera, jpeg, pairs

from farwall.colour.marks.nouns import KnownEdge
from farwall.errors import Refused
from farwall.readers.apart.floor_photos import floor_look_of, floor_seen_of
from farwall.readers.floor_photo.nouns import Ground, TargetAt
from farwall.readers.floor_photo.seen import floor_seen, pairs_text


def test_a_photo_is_laid_and_looked_over_behind_the_walls():
    seen = floor_seen_of(jpeg(), points=pairs_text(pairs(camera())), room=ROOM)
    assert seen.told.pairs == 5
    assert seen.told.rms_mm < 2
    assert all(0 <= one.confidence <= 1 for one in seen.marks)
    assert seen.picture_base64


def test_known_edges_go_through_the_wall_and_change_nothing_else_than_lap_lines():
    points = pairs_text(pairs(camera()))
    edge = KnownEdge(((0.0, 2.0), (4.0, 2.0)), 0.12, 2, 3)
    bare = floor_seen_of(jpeg(), points=points, room=ROOM)
    told = floor_seen_of(jpeg(), points=points, room=ROOM, edges=(edge,))
    assert told.told == bare.told
    lines = [one for one in told.marks if one.kind == "lap line"]
    assert all(one.confidence > 0.5 or "band 3 of coat 2" in one.why for one in lines)


def test_points_that_fix_nothing_and_files_that_are_no_photo_are_refused_from_there():
    with pytest.raises(Refused, match="a plane needs 4"):
        floor_seen_of(jpeg(), points="1,2=3,4", room=ROOM)
    with pytest.raises(Refused):
        floor_look_of(b"no photo" * 40, name="hall.jpg")
    assert floor_look_of(jpeg()).width_px == 1600


def test_the_values_of_a_measured_print_go_through_the_wall():
    """As the same photo is read on this side with them."""
    photo, room = shot("own"), Ground((((1, 0), (4, 0), (4, 2), (1, 2), (1, 0)),))
    told = "target=2,1,0"
    with_print, without = (
        floor_seen_of(photo.data, points=told, room=room, own_values=values)
        for values in (laid("own").values, None)
    )
    here = floor_seen(photo.data, (), room, lambda _: (), TargetAt((2.0, 1.0), 0.0),
                      own_values=laid("own").values)  # fmt: skip
    assert with_print.picture_base64 == here.picture_base64 != without.picture_base64
