"""Four corners go to a rectangle, and the sheet's own shape comes back."""

import numpy as np
import pytest
from tests.photos import A3_MM, photo

from farwall.readers.photo.flatten import flatten
from farwall.readers.photo.opening import opened


def test_a_square_view_by_hand() -> None:
    """A sheet of 400 by 200 pixels that is 100 mm wide: 4 pixels to a millimetre, moved only."""
    grey = np.full((300, 500), 30, np.uint8)
    grey[50:250, 60:460] = 200
    corners = ((60.0, 50.0), (460.0, 50.0), (460.0, 250.0), (60.0, 250.0))
    flat = flatten(grey, corners, (100.0, 50.0))
    assert flat.grey.shape == (200, 400)
    assert flat.px_per_mm == pytest.approx(4.0)
    assert flat.place((160.0, 150.0)) == pytest.approx((100.0, 100.0), abs=1e-6)
    assert flat.grey.min() >= 199


@pytest.mark.parametrize("hardship", ["square", "tailgate", "rough"])
def test_the_shape_of_the_sheet_comes_back_without_its_size(hardship: str) -> None:
    """However it is tilted: the sheet is A3, 420 by 297. 3 %: bent sheets are longer than flat."""
    taken = photo(hardship)
    high, wide = flatten(opened(taken.data)[0], taken.corners).grey.shape
    assert wide / high == pytest.approx(A3_MM[0] / A3_MM[1], rel=0.03)


def test_lines_off_the_level_are_turned() -> None:
    """A square of 400 pixels drawn 3 degrees off."""
    import cv2

    grey = np.full((800, 800), 255, np.uint8)
    box = cv2.boxPoints(((400, 400), (400, 400), 3.0))
    cv2.polylines(grey, [box.astype(np.int32)], isClosed=True, color=0, thickness=5)
    flat = flatten(grey)
    assert flat.turned_deg == pytest.approx(3.0, abs=0.15)
    assert flat.place((400.0, 400.0)) == pytest.approx((400.0, 400.0))
