"""The colour of a marked spot."""

import numpy as np
import pytest

from farwall.errors import Refused
from farwall.evidence import Rank
from farwall.readers.colour_photo.nouns import ColourPhoto, TargetSeen
from farwall.readers.colour_photo.spot import spot_of
from farwall.readers.colour_photo.tube import FLOOR_OFF_DE, SAID

BOX = ((10, 10), (40, 10), (40, 40), (10, 40))


def photo(lab):
    return ColourPhoto(np.asarray(lab, np.float32), None, Rank.GUESS)


def test_an_even_spot_is_its_colour():
    found = spot_of(photo(np.full((60, 60, 3), (45.0, 12.0, 20.0))), BOX)
    assert found.lab == pytest.approx((45, 12, 20), abs=1e-4)
    assert found.spread_lightness == pytest.approx(0, abs=1e-4)
    assert found.error_de is None
    look = found.look("clean wet", light="day")
    assert (look.state, look.light, look.spots) == ("clean wet", "day", 1)


def test_what_lies_outside_does_not_count_and_a_speck_of_glare_hardly():
    lab = np.full((60, 60, 3), (90.0, 0.0, 0.0))
    lab[8:43, 8:43] = (40.0, 10.0, 15.0)
    lab[12:15, 12:20] = (99.0, 0.0, 0.0)
    found = spot_of(photo(lab), BOX)
    assert found.lab == pytest.approx((40, 10, 15), abs=0.6)
    assert found.warnings


@pytest.mark.parametrize("polygon", [(), ((1, 1), (2, 2)), ((1, 1), (3, 1), (1, 3)),
                                     ((900, 900), (990, 900), (990, 990))])  # fmt: skip
def test_too_small_a_spot_is_refused(polygon):
    with pytest.raises(Refused):
        spot_of(photo(np.zeros((60, 60, 3))), polygon)


@pytest.mark.parametrize(
    ("left", "told", "error"),
    [(0.6, (), 0.6), (0.6, (SAID,), FLOOR_OFF_DE), (5.0, (SAID,), 5.0)],
)
def test_under_a_tube_a_spot_is_no_surer_than_floors_were_found_to_be(left, told, error):
    target = TargetSeen("own", ((0, 0), (5, 0), (5, 5), (0, 5)), (), left, 2 * left, told)
    lab = np.full((60, 60, 3), (45.0, 12.0, 20.0), np.float32)
    assert spot_of(ColourPhoto(lab, target, Rank.MEASURED), BOX).error_de == error
