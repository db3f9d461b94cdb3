import numpy as np
import pytest
from tests.floor.walk.test_net import solved
from tests.strategies.walks import rectangle

from farwall.floor.walk.nouns import Walk
from farwall.floor.walk.system import matrix, tangent


def test_a_diagonal_says_nothing_before_there_are_corners():
    net, fit = solved(Walk((rectangle(3.0, 4.0, diagonals=((0, 2),)),)))
    at = next(i for i, row in enumerate(net.rows) if row.kind == "diagonal")
    a, b = matrix(net, None)
    assert not a[at].any()
    assert b[at] == 0.0
    a, _ = matrix(net, fit.x)
    assert np.hypot(*a[at, [0, 1]]) == pytest.approx(1.0)


def test_a_tangent_meets_the_diagonal_at_its_own_place():
    """By hand: 3 by 4 m, its diagonal is 5 m, which the tangent there gives and is told."""
    net, fit = solved(Walk((rectangle(3.0, 4.0, diagonals=((0, 2),)),)))
    at = next(i for i, row in enumerate(net.rows) if row.kind == "diagonal")
    places, row, told = tangent(net, at, fit.x)
    assert float(fit.x[places] @ row) == pytest.approx(5.0, abs=1e-6)
    assert told == pytest.approx(5.0, abs=1e-6)


def test_a_wall_has_no_tangent():
    net, fit = solved(Walk((rectangle(3.0, 4.0),)))
    with pytest.raises(ValueError, match="no diagonal"):
        tangent(net, 0, fit.x)
