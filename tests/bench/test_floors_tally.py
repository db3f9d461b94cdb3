"""What is counted of clocks that were foretold, by hand."""

import pytest

from farwall.air.learned import Factor
from farwall.bench.floors_tally import Foretold, tallied


def told(share, low, likely, high):
    return Foretold(share, Factor(low, likely, high), Factor(low, share, high))


def test_the_score_by_hand():
    """By hand: of four floors three within, one too soon; errors 0, 50, 0 and 75 %."""
    many = [
        told(1.0, 0.5, 1.0, 2.0),
        told(2.0, 0.5, 1.0, 2.0),
        told(1.0, 0.5, 1.0, 2.0),
        told(4.0, 0.5, 1.0, 2.0),
    ]
    found = tallied("x", many)
    assert found.floors == 4
    assert found.within_before == 75.0
    assert found.too_soon_before == 25.0
    assert found.error_before == pytest.approx(50.0)
    assert found.error_after == 0.0
