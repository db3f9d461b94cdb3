"""The score of the clocks on the invented floors: what it counts, and that watching helps."""

import pytest

from farwall.air.learned import Factor
from farwall.bench.floors_score import _Foretold, _score, score_floors, score_second_coat


def told(share, low, likely, high):
    return _Foretold(share, Factor(low, likely, high), Factor(low, share, high))


def test_the_score_by_hand():
    """By hand: of four floors three within, one too soon; errors 0, 50, 0 and 75 %."""
    many = [
        told(1.0, 0.5, 1.0, 2.0),
        told(2.0, 0.5, 1.0, 2.0),
        told(1.0, 0.5, 1.0, 2.0),
        told(4.0, 0.5, 1.0, 2.0),
    ]
    found = _score("x", many)
    assert found.floors == 4
    assert found.within_before == 75.0
    assert found.too_soon_before == 25.0
    assert found.error_before == pytest.approx(50.0)
    assert found.error_after == 0.0


def test_watching_a_closet_helps_its_drying_clocks():
    scores = {one.clock: one for one in score_floors(range(1, 61))}
    for name in ("dry to recoat", "dry to neutralise", "dry-down before sealing"):
        assert scores[name].error_after < 0.8 * scores[name].error_before


def test_a_first_coat_tells_of_the_second():
    found = score_second_coat(range(1, 61))
    assert found.floors == 60
    assert found.error_after < found.error_before
