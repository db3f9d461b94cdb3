from dataclasses import replace

import pytest
from tests.floor.walk.test_lay import joined
from tests.strategies.walks import rectangle

from farwall.floor.walk.adjust import adjusted
from farwall.floor.walk.lay import lay_of
from farwall.floor.walk.net import net_of
from farwall.floor.walk.nouns import Across, Shared, Walk, WalkWay


def solved(walk):
    net = net_of(walk, lay_of(walk))
    return net, adjusted(net)


def told(net, fit, kind):
    return [float(fit.design[i] @ fit.x) for i, row in enumerate(net.rows) if row.kind == kind]


def test_both_sides_of_a_door_have_the_same_jambs():
    net, fit = solved(joined())
    assert net.jambs[0, 0] == tuple(reversed(net.jambs[1, 0]))
    assert told(net, fit, "at") == pytest.approx([1.0, 1.2], abs=1e-4)
    assert told(net, fit, "width") == pytest.approx([0.8, 0.8], abs=1e-4)


def test_the_wall_between_two_rooms_has_its_depth():
    walk = joined()
    ways = [replace(one.ways[0], depth_m=0.2) for one in walk.rooms]
    deep = Walk(tuple(replace(one, ways=(way,)) for one, way in zip(walk.rooms, ways, strict=True)))
    net, fit = solved(deep)
    right = net.first[0] + 4  # third corner of the den, on the wall of the door
    left = net.first[1]
    assert fit.x[left] - fit.x[right] == pytest.approx(0.2, abs=1e-4)


def test_what_is_left_beyond_a_door_closes_the_wall():
    way = WalkWay(1, 1.0, 0.9, "outside", rest_m=2.1)
    net, fit = solved(Walk((replace(rectangle(3.0, 4.0), ways=(way,)),)))
    assert told(net, fit, "rest") == pytest.approx([2.1], abs=1e-4)
    assert fit.chi2 < 1e-6
    at = next(i for i, row in enumerate(net.rows) if row.kind == "at")
    assert fit.r[at] > 0.2  # held by the wall, and not without it


def test_a_width_across_is_the_distance_of_the_faces():
    net, fit = solved(Walk((replace(rectangle(3.0, 4.0), across=(Across(0, 2, 4.0),)),)))
    assert fit.chi2 < 1e-6
    assert told(net, fit, "across") == pytest.approx([4.0], abs=1e-6)


def test_shared_walls_keep_their_depth_between():
    walk = Walk((rectangle(3.0, 4.0, name="Den"), rectangle(3.0, 2.0, name="Bath")),
                shared=(Shared(0, 2, 1, 0, 0.15),))  # fmt: skip
    net, fit = solved(walk)
    assert fit.x[net.first[1]] - fit.x[net.first[0] + 4] == pytest.approx(0.15, abs=1e-3)
