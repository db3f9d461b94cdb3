"""How near two come, by hand: one stands, the other goes past."""

from types import SimpleNamespace

import numpy as np
import pytest

from farwall.spray.check.collision import collisions
from farwall.spray.check.nouns import Piece
from farwall.spray.check.people import Person

WORLD = SimpleNamespace(place=lambda x, y: "in the hall")
DAY = (0.0, 10.0)


def person(who, *rows, sprays):
    return Person(who, (Piece(who, "A", "a way", np.array(rows), sprays=sprays),), DAY)


def told(gap_m, *, sprays=(False, False)):
    """Faults of two: one on its spot for 10 min, one going past it at `gap_m` in the middle."""
    one = person("sprayer", (0.0, 0.0, 0.0), (0.0, 0.0, 10.0), sprays=sprays[0])
    two = person("sprayer 2", (-3.0, gap_m, 0.0), (3.0, gap_m, 10.0), sprays=sprays[1])
    return list(collisions((one, two), WORLD))


@pytest.mark.parametrize(
    ("gap_m", "sprays", "near"),
    [
        # two bodies of 0.25 m each need half a metre
        (0.45, (False, False), True),
        (0.51, (False, False), False),
        (0.45, (True, False), True),
        (0.51, (True, False), False),
        # both spraying, half a metre more
        (0.95, (True, True), True),
        (1.01, (True, True), False),
    ],
)
def test_two_bodies_on_their_way_and_half_a_metre_more_where_both_spray_by_hand(
    gap_m, sprays, near
):
    assert bool(told(gap_m, sprays=sprays)) is near


def test_the_moment_is_that_of_the_least_gap_by_hand():
    """By hand: the second is beside the first half-way, at 5 min, and 0.3 m off."""
    (fault,) = told(0.3)
    assert fault.at_min == pytest.approx(5.0, abs=1e-3)
    assert "0.30 m apart, on their way" in fault.what
