"""All 24 patches of the three sets are those of the library."""

import numpy as np
import pytest

from farwall.colour.library import science
from farwall.colour.targets.common24 import SETS, common_24


@pytest.mark.parametrize("values", SETS)
def test_the_library_carries_the_same_figures(values):
    carried = [np.array(list(one.data.values())) for one in science().CCS_COLOURCHECKERS.values()]
    ours = np.array(SETS[values])
    assert any(one.shape == ours.shape and np.abs(one - ours).max() < 2e-5 for one in carried)


def test_greys_are_the_last_row_from_white_to_black():
    greys = [one for one in common_24().patches if one.grey]
    lightness = [one.lab[0] for one in greys]
    assert len(greys) == 6
    assert lightness == sorted(lightness, reverse=True)
    assert len({one.at_mm[1] for one in greys}) == 1


def test_there_is_no_other_set():
    with pytest.raises(KeyError):
        common_24("2099")
