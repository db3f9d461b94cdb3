"""What both sides of a strip are like: steep at both, even along it, on level ground; or not."""

from dataclasses import replace

import numpy as np
import pytest
from tests.colour.marks.drawn import grid, plain, sheet_of, soft

from farwall.colour.marks.ground import ground_of
from farwall.colour.marks.sides import TURN, Sides, Strip, best_ways, chance_of, sides_of

AT_M, WIDE_M = 1.4, 0.15
LIKE = Sides(gentler=1.2, steeper=1.6, steady=2.0, step=0.5)


def likes(more, of_m=AT_M, seed=5):
    """Sides of a strip across the floor at 1.4 m from its top; more: added by place."""
    depth = plain(seed)
    _, y = grid(depth, 0.004)
    ground = ground_of(sheet_of(depth + more(y)))
    columns = np.arange(30.0, ground.dark.shape[1] - 30.0)
    points = np.stack([np.full(len(columns), of_m / ground.step_m), columns], axis=1)
    return sides_of(ground.dark, ground.seen, ground.step_m, [Strip(points, WIDE_M)])[0]


def strip(deep, blur_m=0.006):
    return lambda y: deep * soft(WIDE_M / 2 - np.abs(y - AT_M), blur_m)


def test_a_strip_with_two_edges_is_likelier_than_a_cloud_a_shadow_and_nothing():
    lap = likes(strip(0.12))
    cloud = likes(lambda y: 0.12 * np.exp(-(((y - AT_M) / 0.12) ** 2)))
    shadow = likes(lambda y: 0.12 * soft(y - AT_M - WIDE_M / 2, 0.006))
    nothing = likes(lambda y: 0.0 * y)
    chances = [chance_of(30.0, one) for one in (lap, cloud, shadow, nothing)]
    assert chances[0] > 2 * max(chances[1:])
    assert lap.gentler > max(cloud.gentler, shadow.gentler, nothing.gentler)
    assert shadow.step > 2 * lap.step


def test_where_both_sides_fall_the_wrong_way_it_is_no_lap():
    light, dark = likes(strip(-0.12)), likes(strip(0.12))
    assert light.steady < 0 < dark.steady
    assert light.steeper < dark.gentler


def test_the_sides_are_followed_a_few_centimetres_off_and_not_further():
    near, far = likes(strip(0.12), AT_M + 0.02), likes(strip(0.12), AT_M + 0.10)
    assert near.gentler > 1.3 * far.gentler


def test_a_brighter_photo_changes_nothing():
    one, other = likes(strip(0.12)), likes(lambda y: strip(0.12)(y) - 0.3)
    assert other.gentler == pytest.approx(one.gentler, rel=1e-3)
    assert other.steady == pytest.approx(one.steady, rel=1e-3)


def test_where_too_little_is_seen_nothing_is_told_and_nothing_proposed():
    ground = ground_of(sheet_of(plain(4)))
    points = np.stack([np.full(300, 300.0), np.arange(100.0, 400.0)], axis=1)
    hidden = np.zeros_like(ground.seen)
    assert sides_of(ground.dark, hidden, ground.step_m, [Strip(points, WIDE_M)]) == [None]
    assert sides_of(ground.dark, ground.seen, ground.step_m, []) == []
    assert chance_of(80.0, None) == 0.0


@pytest.mark.parametrize("field", ["gentler", "steeper", "steady"])
def test_what_speaks_for_a_lap_never_makes_it_less_likely(field):
    more = replace(LIKE, **{field: getattr(LIKE, field) + 0.5})
    assert chance_of(30.0, more) > chance_of(30.0, LIKE)
    assert chance_of(31.0, LIKE) > chance_of(30.0, LIKE) > chance_of(30.0, replace(LIKE, step=2.0))


def test_ways_followed_together_come_to_what_each_comes_to_alone():
    throws = np.random.default_rng(3)
    gains = [throws.normal(0, 1, (rows, 9)) for rows in (1, 7, 30, 12)]
    assert best_ways(gains) == pytest.approx([best_ways([one])[0] for one in gains])
    straight = np.zeros((20, 9))
    straight[:10, 3], straight[10:, 4] = 1.0, 1.0
    assert best_ways([straight]) == pytest.approx([20 - TURN])
    assert best_ways([]) == []
